"""Keeps between two runs what was worked out from grammar and data files.

In goes a plain value under a name and a key: texts, numbers, bytes, rows and tables of them.  Out
comes the same in a later run, or None.  A copy is only ever a shorter way: what cannot be kept, or
was kept for another key, by another user, by a program that others may write to, or is damaged, is
worked out anew without a word.  The form is that in which Python keeps compiled modules; JSON
takes twice as long to read.

The copies lie in the user's cache folder.  `NOTICEPARSE_CACHE` names another folder, or is `off`.
"""

from __future__ import annotations

import contextlib
import hashlib
import marshal
import os
import stat
import sys
import threading
import zlib
from functools import cache
from typing import Any

VARIABLE = "NOTICEPARSE_CACHE"
OFF = ("", "0", "off", "no")

FORM = 5
"""To be raised when the code makes something else of the same grammar and data files."""

# Windows has no users in the sense of this check; its cache folder is the user's own.
_user = getattr(os, "geteuid", None)


# What a file is opened with, as far as the system knows it: a name is no link and nothing waits.
_PLAIN = sum(getattr(os, flag, 0) for flag in ("O_NOFOLLOW", "O_NONBLOCK", "O_BINARY"))


def folder() -> str | None:
    """The folder of the copies, one for each version of Python; None where nothing is kept."""
    return _folder(*map(os.environ.get, (VARIABLE, "LOCALAPPDATA", "XDG_CACHE_HOME", "HOME")))


@cache
def _folder(
    chosen: str | None, local: str | None, xdg: str | None, home: str | None
) -> str | None:
    del home  # read by expanduser; here it tells one environment from another
    if chosen is not None:
        base = "" if chosen.lower() in OFF else os.path.abspath(os.path.expanduser(chosen))
    elif sys.platform == "win32":
        base = os.path.join(local, "noticeparse") if local else ""
    elif _is_own(os.path.expanduser("~")):
        xdg = xdg if xdg and os.path.isabs(xdg) else os.path.expanduser("~/.cache")
        base = os.path.join(xdg, "noticeparse")
    else:
        base = ""  # another user's home, as under sudo: what we left there would be in the way
    if not os.path.isabs(base):
        return None
    return os.path.join(base, sys.implementation.cache_tag or sys.implementation.name)


def _is_own(path: str) -> bool:
    try:
        return _user is None or os.stat(path).st_uid == _user()
    except OSError:
        return False


def read(name: str, key: str) -> Any:
    """The value kept under a name, where it was kept for the same key; else None."""
    place = folder()
    if place is None:
        return None
    try:
        handle = os.open(os.path.join(place, name), os.O_RDONLY | _PLAIN)
        with open(handle, "rb") as file:
            status = os.fstat(handle)
            if not stat.S_ISREG(status.st_mode) or not _is_trusted(status):
                return None
            seal, _, body = file.read().partition(b"\n")
        return marshal.loads(body) if seal == _seal(name, key, body) else None
    except (OSError, EOFError, ValueError, TypeError):
        return None


def write(name: str, key: str, value: Any) -> None:
    """Keep a plain value under a name, in the place of what was kept there before."""
    place = folder()
    if place is None:
        return
    body = marshal.dumps(value)
    path = os.path.join(place, name)
    beside = f"{path}.{os.getpid()}-{threading.get_ident()}"
    try:
        os.makedirs(place, mode=0o700, exist_ok=True)
        if not _is_trusted(os.stat(place)):
            return
        handle = os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_EXCL | _PLAIN, 0o600)
        try:
            with open(handle, "wb") as file:
                file.write(_seal(name, key, body) + b"\n" + body)
            os.replace(beside, path)
        except OSError:
            with contextlib.suppress(OSError):
                os.remove(beside)
    except OSError:
        return


def _seal(name: str, key: str, body: bytes) -> bytes:
    """Says what a copy is for, and shows damage: a wrong table would misread in silence."""
    told = f"{FORM}.{marshal.version}\n{name}\n{key}\n".encode("utf-8", "surrogatepass")
    # For damage a check sum does, which takes a fifth of the time.
    return f"{hashlib.blake2b(told, digest_size=32).hexdigest()} {zlib.crc32(body):08x}".encode()


def _is_trusted(status: os.stat_result) -> bool:
    """Whether a file or folder belongs to this user, and to nobody else."""
    if _user is None:
        return True
    return status.st_uid == _user() and not status.st_mode & (stat.S_IWGRP | stat.S_IWOTH)
