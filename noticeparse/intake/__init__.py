"""From the bytes of a file to its text, whatever kind of file it is.

Plain text is read here and now (`plain.py`).  PDF, HTML, mail and .docx are read in a process of
their own (`apart.py`), whose time and memory are bounded.  Nothing of a notice is read here.
"""

from __future__ import annotations

import hashlib

from noticeparse.intake.kinds import HEAD, MEDIA_TYPES, kind_of
from noticeparse.intake.plain import (
    MEDIA_TYPE,
    STANDARD_INPUT,
    as_text,
    decode,
    read_bytes,
    readable,
)
from noticeparse.intake.records import Intake, NotReadable, Place

__all__ = [
    "MEDIA_TYPE", "STANDARD_INPUT", "Intake", "NotReadable", "Place", "as_text", "decode",
    "kind_of", "read", "read_bytes", "readable",
]  # fmt: skip


def read(data: bytes, name: str | None = None) -> Intake:
    """The text of a file of any kind; `name` serves to tell the kind, and the exception.

    Raises NotReadable where it cannot be read, or where a library that it takes is not installed.
    """
    kind = kind_of(data[:HEAD], name)
    if kind is None:
        return decode(data, name)
    from noticeparse.intake.apart import read_apart

    found = read_apart(data, kind)
    if not found.text or found.text.isspace():
        raise NotReadable("holds no text")
    return Intake(
        text=found.text,
        sha256=hashlib.sha256(data).hexdigest(),
        media_type=MEDIA_TYPES[kind],
        faults=(),
        doubts=found.doubts,
        furniture=found.furniture,
        places=found.places,
    )
