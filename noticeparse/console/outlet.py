"""Where data goes: standard output or a file, always as UTF-8, whole lines at a time.

A file appears whole or not at all: it is written beside its place and moved there at the end.  A
reader that goes away (`| head -1`) is no fault of anyone's: the program ends quietly.  A full disk
is said in one line.  Talk goes to standard error and never stops the work.
"""

from __future__ import annotations

import contextlib
import errno
import os
import sys
from types import TracebackType
from typing import IO

STANDARD_OUTPUT = "standard output"

# Windows has no broken pipe and reports an invalid argument.
_GONE = {errno.EPIPE} | ({errno.EINVAL} if sys.platform == "win32" else set())


class ReaderGone(Exception):
    """Nobody reads the output any more."""


class NotWritable(Exception):
    """The output cannot be written; its words say why."""


class Outlet:
    """Standard output, or the file at `path`, which is opened when there is something to write.

    With a path, use it in a `with` block: the file is in its place when the block has ended well.
    """

    def __init__(self, path: str | None = None) -> None:
        self._path = path
        self._file: IO[bytes] | None = None
        self._beside: str | None = None

    def __enter__(self) -> Outlet:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        at: TracebackType | None,
    ) -> None:
        """Put the file in its place, or leave what stood there.

        Raises NotWritable.
        """
        if self._file is None or self._path is None:
            return
        try:
            self._file.close()
            if self._beside is not None and kind is None:
                os.replace(self._beside, _place(self._path))
                self._beside = None
        except OSError as failure:
            if kind is None:
                raise self._not_writable(failure) from failure
        finally:
            if self._beside is not None:
                with contextlib.suppress(OSError):
                    os.remove(self._beside)

    def is_terminal(self) -> bool:
        """Whether a person sees the data appear."""
        return self._path is None and sys.stdout is not None and sys.stdout.isatty()

    def write(self, text: str) -> None:
        """Write and hand over at once.

        Raises ReaderGone and NotWritable.
        """
        self.write_bytes(text.encode(self._encoding(), "backslashreplace"))

    def write_bytes(self, data: bytes) -> None:
        """The same with text that is encoded.

        Raises ReaderGone and NotWritable.
        """
        try:
            stream = self._stream()
            stream.write(data)
            stream.flush()
        except OSError as error:
            self._drop_what_is_left()
            if error.errno in _GONE:
                raise ReaderGone from None
            raise self._not_writable(error) from error

    def _not_writable(self, error: OSError) -> NotWritable:
        return NotWritable(f"{self._path or STANDARD_OUTPUT}: {cannot_be_written(error)}")

    def _stream(self) -> IO[bytes]:
        if self._file is None:
            if self._path is not None:
                self._file = self._open(self._path)
            elif sys.stdout is None:
                raise NotWritable(f"{STANDARD_OUTPUT} is closed")
            else:
                sys.stdout.flush()
                self._file = sys.stdout.buffer
        return self._file

    def _open(self, path: str) -> IO[bytes]:
        place = _place(path)
        if os.path.exists(place) and not os.path.isfile(place):
            return open(path, "wb")  # a device or a pipe, which stays where it is
        file = self._open_beside(place)
        if os.path.isfile(place):
            import shutil  # slow to import

            with contextlib.suppress(OSError):
                shutil.copymode(place, file.name)
        return file

    def _open_beside(self, place: str) -> IO[bytes]:
        number = 0
        while True:
            beside = f"{place}.{os.getpid()}-{number}.part"
            try:
                file = open(beside, "xb")  # noqa: SIM115 - closed by __exit__
            except FileExistsError:
                number += 1  # left by a run that was killed and had the same number
            else:
                self._beside = beside
                return file

    def _encoding(self) -> str:
        # A terminal says what it can show; files and pipes get the same bytes everywhere.
        return sys.stdout.encoding if self.is_terminal() else "utf-8"

    def _drop_what_is_left(self) -> None:
        if self._path is None:
            silence(sys.stdout)


def _place(path: str) -> str:
    """Where a file really stands: a link to it stays a link."""
    return os.path.realpath(path)


def cannot_be_written(error: OSError) -> str:
    """What is said of a full disk and the like."""
    return f"cannot be written: {error.strerror}"


def silence(stream: IO[str] | None) -> None:
    """Let the rest of a standard stream go nowhere, so that Python's exit does not fail on it."""
    if stream is None:
        return
    with contextlib.suppress(OSError, ValueError):
        os.dup2(os.open(os.devnull, os.O_WRONLY), stream.fileno())


def say(line: str) -> None:
    """One line to standard error, where there is one."""
    if sys.stderr is None:
        return
    try:
        sys.stderr.write(line + "\n")
        sys.stderr.flush()
    except OSError:
        silence(sys.stderr)
