"""Inputs that are too long to be held: their bytes on disk, their text in pieces.

What is the encoding, and whether the bytes are text at all, is decided by the rules of `intake`
from all of the bytes, in a first pass; the text is handed out in a second one.  Standard input and
pipes are copied to a temporary file for that.
"""

from __future__ import annotations

import codecs
import hashlib
import io
import os
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from typing import IO, NamedTuple

from noticeparse.faults import Fault
from noticeparse.intake import STANDARD_INPUT, NotReadable, readable
from noticeparse.intake.plain import (
    CONTROLS,
    FIRST_BYTES,
    HIGH_CONTROLS,
    MARKS,
    declared_encoding,
    is_empty,
    refuse_controls,
    refuse_other_kinds,
    standard_input,
)

_BLOCK = 1 << 20


@contextmanager
def opened(name: str, held: int) -> Iterator[IO[bytes]]:
    """The bytes of an input, of which no more than `held` are in memory.

    Raises NotReadable, also for what goes wrong within the block.
    """
    with readable(name):
        if name != STANDARD_INPUT and os.path.isfile(name):
            with open(name, "rb") as file:
                yield file
            return
        with _source(name) as source:
            head = source.read(held + 1)
            if len(head) <= held:
                yield io.BytesIO(head)
                return
            with tempfile.TemporaryFile() as copy:
                copy.write(head)
                shutil.copyfileobj(source, copy, _BLOCK)
                copy.seek(0)
                yield copy


@contextmanager
def _source(name: str) -> Iterator[IO[bytes]]:
    if name == STANDARD_INPUT:
        yield standard_input()
    else:
        with open(name, "rb") as file:
            yield file


class Survey(NamedTuple):
    """What the first pass over the bytes tells."""

    sha256: str
    encoding: str
    errors: str
    mark: int
    """Bytes of the mark at the start, which are no text."""
    characters: int
    faults: tuple[Fault, ...]
    """Faults of the bytes, at offsets of the text."""


def survey(file: IO[bytes], name: str) -> Survey:
    """Find out how the bytes of a file are to be read; `name` only serves the exception.

    Raises NotReadable where they are no text or hold nothing.
    """
    head = _at(file, 0).read(FIRST_BYTES)
    sha256, length, controls, has_high = _counted(file)
    mark, encoding = next((one for one in MARKS if head.startswith(one[0])), (b"", "utf-8"))
    if encoding == "utf-8":
        refuse_other_kinds(head[len(mark) :])
        refuse_controls(controls, length - len(mark))
    found = _Decoded(file, encoding, "strict", len(mark))
    faults: tuple[Fault, ...] = ()
    if found.bad is not None:
        byte, offset = found.bad
        other = None if mark else declared_encoding(head, has_high_controls=has_high)
        declared = _Decoded(file, other, "strict", 0) if other else None
        if declared is not None and declared.bad is None:
            values = {"encoding": declared.encoding}
            found, faults = declared, (Fault("text-other-encoding", 0, 0, values),)
        else:
            values = {"encoding": encoding.upper(), "offset": str(byte)}
            faults = (Fault("text-not-utf8", offset, offset, values),)
            found = _Decoded(file, encoding, "replace", len(mark))
    if encoding != "utf-8":
        refuse_controls(found.controls, found.bytes_in_utf8)
    if found.is_blank:
        raise is_empty(name)
    return Survey(sha256, found.encoding, found.errors, len(mark), found.characters, faults)


def pieces(file: IO[bytes], known: Survey) -> Iterator[str]:
    """The text of a file that was surveyed.

    Raises NotReadable where it is not the same any more.
    """
    characters = 0
    decoder = codecs.getincrementaldecoder(known.encoding)(known.errors)
    try:
        for block, is_last in _blocks(file, known.mark):
            text = decoder.decode(block, is_last)
            characters += len(text)
            yield text
    except UnicodeDecodeError:
        characters = -1
    if characters != known.characters:
        raise NotReadable("was changed while it was read; the records so far are of no use")


def _at(file: IO[bytes], offset: int) -> IO[bytes]:
    file.seek(offset)
    return file


def _blocks(file: IO[bytes], begin: int) -> Iterator[tuple[bytes, bool]]:
    """The bytes from `begin` on, at last an empty block that is marked as the last."""
    _at(file, begin)
    while block := file.read(_BLOCK):
        yield block, False
    yield b"", True


def _counted(file: IO[bytes]) -> tuple[str, int, int, bool]:
    """SHA-256, length, controls, and whether there are bytes from 80 to 9F hex."""
    digest, length, controls, has_high = hashlib.sha256(), 0, 0, False
    for block, _ in _blocks(file, 0):
        digest.update(block)
        length += len(block)
        controls += len(block) - len(block.translate(None, CONTROLS))
        has_high = has_high or block.translate(None, HIGH_CONTROLS) != block
    return digest.hexdigest(), length, controls, has_high


class _Decoded:
    """What the bytes are in one encoding."""

    def __init__(self, file: IO[bytes], encoding: str, errors: str, mark: int) -> None:
        self.encoding = encoding
        self.errors = errors
        self.characters = self.controls = self.bytes_in_utf8 = 0
        self.is_blank = True
        self.bad: tuple[int, int] | None = None
        """Where the first byte stands that is no character, and how many characters before it."""
        decoder = codecs.getincrementaldecoder(encoding)(errors)
        at = mark
        for block, is_last in _blocks(file, mark):
            held = len(decoder.getstate()[0])
            try:
                text = decoder.decode(block, is_last)
            except UnicodeDecodeError as error:
                before = error.object[: error.start].decode(encoding)
                self.bad = at - held + error.start, self.characters + len(before)
                return
            at += len(block)
            self._count(text)

    def _count(self, text: str) -> None:
        self.characters += len(text)
        self.is_blank = self.is_blank and (not text or text.isspace())
        if self.encoding != "utf-8":
            data = text.encode("utf-8", "replace")
            self.bytes_in_utf8 += len(data)
            self.controls += len(data) - len(data.translate(None, CONTROLS))
