"""From the bytes of a file to its text: byte order mark, UTF-8, declared encoding, in this order.

An encoding is never guessed from how the bytes look: a byte of one code page is another symbol in
the next, and a wrong symbol beside a figure looks right.  What is no character is lost openly,
with a fault.  What is no text at all is refused.  Line ends and symbols are left as they are.
"""

from __future__ import annotations

import codecs
import hashlib
import re
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO

from noticeparse.faults import Fault
from noticeparse.intake.records import Intake, NotReadable
from noticeparse.text import repair

STANDARD_INPUT = "-"

MEDIA_TYPE = "text/plain"

# The longer marks first: the mark of UTF-32 begins with that of UTF-16.
MARKS = (
    (codecs.BOM_UTF8, "utf-8"),
    (codecs.BOM_UTF32_LE, "utf-32-le"),
    (codecs.BOM_UTF32_BE, "utf-32-be"),
    (codecs.BOM_UTF16_LE, "utf-16-le"),
    (codecs.BOM_UTF16_BE, "utf-16-be"),
)

_OTHER_KINDS = (
    (b"%PDF-", "a PDF file: its text is wanted here"),
    (b"{\\rtf", "an RTF file: save it as .docx or as plain text first"),
    (b"\xd0\xcf\x11\xe0", "an old office or mail file: save it as .docx, .eml or text"),
    (b"PK\x03\x04", "a zip archive or an office file: save it as .docx or as plain text first"),
    (b"\x1f\x8b", "a compressed file: unpack it first"),
)

# Mail heads, HTML and XML name the encoding near the top.
_DECLARED = re.compile(
    rb"(?:charset|encoding)[ \t]{0,4}=[ \t]{0,4}[\"']?([A-Za-z0-9._:-]{2,40})", re.I
)
FIRST_BYTES = 4096
"""How many bytes are looked through for the name of an encoding."""
HIGH_CONTROLS = bytes(range(0x80, 0xA0))
_PLAIN = bytes(range(0x20, 0x5B)) + bytes(range(0x61, 0x7B))
# Those with escapes turn a text into something else than what a person sees; the others depend on
# the machine or stand for no one code page.
_NOT_FOR_TEXT = frozenset(
    {"charmap", "idna", "mbcs", "oem", "punycode", "raw-unicode-escape", "unicode-escape", "utf-7"}
)

CONTROLS = bytes([*range(0x07), 0x08, *range(0x0E, 0x1B), *range(0x1C, 0x20), 0x7F])
_FEW_CONTROLS = 8
_CONTROL_SHARE = 20


def read_bytes(name: str) -> bytes:
    """The bytes of the file `name`, of standard input for `-`.

    Raises NotReadable.
    """
    with readable(name):
        return standard_input().read() if name == STANDARD_INPUT else Path(name).read_bytes()


def standard_input() -> IO[bytes]:
    """Standard input as bytes.

    Raises NotReadable where it is closed.
    """
    if sys.stdin is None:
        raise NotReadable("standard input is closed")
    return sys.stdin.buffer


@contextmanager
def readable(name: str) -> Iterator[None]:
    """What goes wrong with the file `name` in here is said as NotReadable."""
    try:
        yield
    except NotReadable:
        raise
    except FileNotFoundError:
        raise NotReadable("no such file") from None
    except IsADirectoryError:
        raise NotReadable("a directory, not a file") from None
    except PermissionError as error:
        # Windows answers with this for a directory.
        is_directory = name != STANDARD_INPUT and Path(name).is_dir()
        words = "a directory, not a file" if is_directory else "no permission to read it"
        raise NotReadable(words) from error
    except (OSError, ValueError) as error:
        words = getattr(error, "strerror", None) or str(error)
        raise NotReadable(f"cannot be read: {words}") from error


def as_text(words: str) -> str:
    """A file name or argument as text: what the system could not decode becomes U+FFFD."""
    return words.encode("utf-16", "surrogatepass").decode("utf-16", "replace")


def decode(data: bytes, name: str | None = None) -> Intake:
    """The text of `data`; `name` only serves the words of the exception.

    Raises NotReadable where the bytes are no text or hold nothing.
    """
    text, faults = _text_of(data)
    if not text or text.isspace():
        raise is_empty(name)
    return Intake(text, hashlib.sha256(data).hexdigest(), MEDIA_TYPE, faults)


def is_empty(name: str | None) -> NotReadable:
    """What is said of a file that holds nothing but blanks."""
    return NotReadable(f"{'standard input' if name == STANDARD_INPUT else 'the file'} is empty")


def _text_of(data: bytes) -> tuple[str, tuple[Fault, ...]]:
    for mark, encoding in MARKS:
        if data.startswith(mark):
            return _marked(data[len(mark) :], encoding, len(mark))
    _refuse_binary(data)
    try:
        return data.decode("utf-8"), ()
    except UnicodeDecodeError as error:
        return _declared(data) or _lossy(error, "utf-8", 0)


def _marked(body: bytes, encoding: str, mark_length: int) -> tuple[str, tuple[Fault, ...]]:
    if encoding == "utf-8":
        _refuse_binary(body)
    faults: tuple[Fault, ...] = ()
    try:
        text = body.decode(encoding)
    except UnicodeDecodeError as error:
        text, faults = _lossy(error, encoding, mark_length)
    if encoding != "utf-8":
        _refuse_binary(text.encode("utf-8"))
    return text, faults


def _declared(data: bytes) -> tuple[str, tuple[Fault, ...]] | None:
    """The text in the encoding that its head declares, if every byte fits it."""
    high_controls = data.translate(None, HIGH_CONTROLS) != data
    encoding = declared_encoding(data[:FIRST_BYTES], has_high_controls=high_controls)
    if encoding is None:
        return None
    try:
        text = data.decode(encoding)
    except UnicodeError:
        return None
    return text, (Fault("text-other-encoding", 0, 0, {"encoding": encoding}),)


def declared_encoding(head: bytes, *, has_high_controls: bool) -> str | None:
    """The encoding that the first bytes declare; bytes 80 to 9F hex tell where it is another."""
    match = _DECLARED.search(head)
    encoding = _known_encoding(match.group(1).decode("ascii")) if match else None
    if encoding == "iso8859-1" and has_high_controls:
        # Mail declares ISO 8859-1 and means Windows-1252 (WHATWG Encoding Standard, 4.2): the
        # minute mark would turn into an invisible control character.
        return "cp1252"
    return encoding


def _known_encoding(name: str) -> str | None:
    """Python's name of an encoding in which ASCII letters and figures stand for themselves."""
    try:
        encoding = codecs.lookup(name).name
        as_text = _PLAIN.decode(encoding)
    except (LookupError, UnicodeError, ValueError):
        return None
    if encoding.replace("_", "-") in _NOT_FOR_TEXT or as_text != _PLAIN.decode("ascii"):
        return None
    return encoding


def _lossy(
    error: UnicodeDecodeError, encoding: str, mark_length: int
) -> tuple[str, tuple[Fault, ...]]:
    """The text with U+FFFD for what is no character, and the fault that says where it begins."""
    good = error.object[: error.start].decode(encoding)
    # From the first lost character on; what stands before it has just been decoded.
    text = good + error.object[error.start :].decode(encoding, "replace")
    at = _repaired_offset(text, len(good))
    values = {"encoding": encoding.upper(), "offset": str(error.start + mark_length)}
    return text, (Fault("text-not-utf8", at, at + 1, values),)


def _repaired_offset(text: str, offset: int) -> int:
    """Where the U+FFFD at `offset` stands after `repair`, which keeps each of them."""
    before = text.count("\ufffd", 0, offset)
    repaired = repair(text).text
    at = repaired.find("\ufffd")
    for _ in range(before):
        at = repaired.find("\ufffd", at + 1)
    return max(at, 0)


def _refuse_binary(data: bytes) -> None:
    refuse_other_kinds(data)
    refuse_controls(len(data) - len(data.translate(None, CONTROLS)), len(data))


def refuse_other_kinds(head: bytes) -> None:
    """Raise NotReadable where the first bytes are those of a file of another kind."""
    for start, words in _OTHER_KINDS:
        if head.startswith(start):
            raise NotReadable(words)


def refuse_controls(controls: int, length: int) -> None:
    """Raise NotReadable where so many of the bytes are controls that they are no text."""
    many = controls > _FEW_CONTROLS and controls * _CONTROL_SHARE > length
    if many or controls * 2 > length:
        raise NotReadable("not a text file (binary data, or text in UTF-16 without its mark)")
