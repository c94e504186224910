"""Where data goes: standard output or a file, always as UTF-8, whole lines at a time.

A reader that goes away (`| head -1`) is no fault of anyone's: the program ends quietly.  A full
disk is said in one line.  Talk goes to standard error and never stops the work.
"""

from __future__ import annotations

import contextlib
import errno
import os
import sys
from types import TracebackType
from typing import IO

# Windows has no broken pipe and reports an invalid argument.
_GONE = {errno.EPIPE} | ({errno.EINVAL} if sys.platform == "win32" else set())


class ReaderGone(Exception):
    """Nobody reads the output any more."""


class NotWritable(Exception):
    """The output cannot be written; its words say why."""


class Outlet:
    """Standard output, or the file at `path`, which is opened when there is something to write."""

    def __init__(self, path: str | None = None) -> None:
        self._path = path
        self._file: IO[bytes] | None = None

    def __enter__(self) -> Outlet:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        at: TracebackType | None,
    ) -> None:
        if self._file is not None and self._path is not None:
            self._file.close()

    def is_terminal(self) -> bool:
        """Whether a person sees the data appear."""
        return self._path is None and sys.stdout is not None and sys.stdout.isatty()

    def write(self, text: str) -> None:
        """Write and hand over at once.

        Raises ReaderGone and NotWritable.
        """
        try:
            stream = self._stream()
            stream.write(text.encode(self._encoding(), "backslashreplace"))
            stream.flush()
        except OSError as error:
            self._drop_what_is_left()
            if error.errno in _GONE:
                raise ReaderGone from None
            where = self._path or "standard output"
            raise NotWritable(f"{where}: cannot be written: {error.strerror}") from error

    def _stream(self) -> IO[bytes]:
        if self._file is None:
            if self._path is not None:
                self._file = open(self._path, "wb")  # noqa: SIM115 - closed by __exit__
            elif sys.stdout is None:
                raise NotWritable("standard output is closed")
            else:
                sys.stdout.flush()
                self._file = sys.stdout.buffer
        return self._file

    def _encoding(self) -> str:
        # A terminal says what it can show; files and pipes get the same bytes everywhere.
        return sys.stdout.encoding if self.is_terminal() else "utf-8"

    def _drop_what_is_left(self) -> None:
        if self._path is None:
            silence(sys.stdout)


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
