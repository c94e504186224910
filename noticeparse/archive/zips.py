"""The texts in a zip file, read into memory and never unpacked to disk.

A zip file may say anything of itself.  What it says of its sizes is checked before a byte is
unpacked, and no more than that is ever unpacked; its names are only names of outputs.
"""

from __future__ import annotations

import zipfile
import zlib
from typing import NamedTuple

from noticeparse.intake import NotReadable, readable
from noticeparse.intake.kinds import ENDINGS

_MOST_MEMBERS = 100_000
_MOST_BYTES = 64 << 20
_MOST_IN_ALL = 2 << 30
_MOST_TIMES, _SMALL = 200, 1 << 20
_ENCRYPTED = 0x1
_FAULTS = (zipfile.BadZipFile, zlib.error, EOFError, NotImplementedError, RuntimeError, OSError)


class Members(NamedTuple):
    """The texts of a zip file by name, what is refused and why, and how much is passed over."""

    texts: list[str]
    refused: list[tuple[str, str]]
    passed: int


def is_zip_name(path: str) -> bool:
    """Whether a file is a zip file by its name."""
    return path.lower().endswith(".zip")


def members_of(path: str) -> Members:
    """What a zip file says that it holds.

    Raises NotReadable where it is no zip file, or is too large as a whole.
    """
    with _opened(path) as file:
        entries = [one for one in file.infolist() if not one.is_dir()]
    if len(entries) > _MOST_MEMBERS:
        raise NotReadable(f"holds {len(entries)} files; {_MOST_MEMBERS} at most are read")
    if sum(one.file_size for one in entries) > _MOST_IN_ALL:
        raise NotReadable(f"unpacks to more than {_MOST_IN_ALL >> 30} GiB; unpack it yourself")
    found = Members([], [], 0)
    seen: set[str] = set()
    for one in entries:
        name = one.filename
        is_nested = is_zip_name(name)
        if not is_nested and not name.lower().endswith(tuple(ENDINGS)):
            found = found._replace(passed=found.passed + 1)
            continue
        why = _refusal(one, name in seen)
        if why:
            found.refused.append((name, why))
        else:
            found.texts.append(name)
        seen.add(name)
    found.texts.sort(key=lambda name: name.split("/"))
    return found


def _refusal(entry: zipfile.ZipInfo, is_second: bool) -> str | None:
    """Why an entry is not read."""
    name = entry.orig_filename
    if is_zip_name(name):
        return "a zip file in a zip file is not opened; unpack it first"
    if _leads_out(name):
        return "its path leads out of the zip file"
    if is_second:
        return "another file in the zip file has the same name"
    if entry.flag_bits & _ENCRYPTED:
        return "is encrypted; unpack it first"
    if entry.file_size > _MOST_BYTES:
        return f"unpacks to more than {_MOST_BYTES >> 20} MiB; unpack it and read it by itself"
    if entry.file_size > max(_SMALL, _MOST_TIMES * entry.compress_size):
        return f"unpacks to more than {_MOST_TIMES} times its size, as no text does"
    return None


def _leads_out(name: str) -> bool:
    parts = name.replace("\\", "/").split("/")
    odd = ":" in parts[0] or "\0" in name or "\\" in name
    return odd or any(part in ("", ".", "..") for part in parts)


class ZipReader:
    """Reads texts of zip files; holds the file of the last one open, since many come in a row."""

    def __init__(self) -> None:
        self._path: str | None = None
        self._file: zipfile.ZipFile | None = None

    def read(self, path: str, member: str) -> bytes:
        """The bytes of one text of a zip file.

        Raises NotReadable.
        """
        if self._file is None or self._path != path:
            self.close()
            self._file, self._path = _opened(path), path
        try:
            entry = self._file.getinfo(member)
            if _refusal(entry, False):
                raise NotReadable("the zip file was changed while it was read")
            return self._file.read(entry)
        except KeyError:
            raise NotReadable("the zip file was changed while it was read") from None
        except _FAULTS as error:
            raise NotReadable(f"cannot be unpacked: {error}") from error

    def close(self) -> None:
        """Let go of the open file."""
        if self._file is not None:
            self._file.close()
            self._file = None


def _opened(path: str) -> zipfile.ZipFile:
    with readable(path):
        try:
            return zipfile.ZipFile(path)
        except (zipfile.BadZipFile, NotImplementedError) as error:
            raise NotReadable(f"no zip file that can be read: {error}") from error
