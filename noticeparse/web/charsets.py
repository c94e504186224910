"""From the bytes of a plain-text body and the charset it states to its text.

Without a stated charset a body is read as a file is.  A stated one is held against the bytes, and
a contradiction is refused: text in a wrong charset looks right but for the symbol beside a figure.
"""

from __future__ import annotations

import codecs
import hashlib

from noticeparse.faults import Fault
from noticeparse.intake import Intake, NotReadable, decode
from noticeparse.web.problems import Refused

CHARSETS = {
    "utf-8": "utf-8",
    "utf8": "utf-8",
    "us-ascii": "ascii",
    "iso-8859-1": "iso8859-1",
    "iso-8859-15": "iso8859-15",
    "windows-1252": "cp1252",
    "utf-16": "utf-16",
}
"""The charsets that are read, by name; a text in UTF-16 must begin with its byte order mark."""

_MARKS_16 = (codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)


def text_of(body: bytes, charset: str | None) -> Intake:
    """The text of a body with the faults of decoding it.

    Raises Refused where it is no text, is empty, or is not in its charset.
    """
    try:
        if charset is None:
            return decode(body)
        text, encoding = _decoded(body, charset)
        intake = decode(text.encode("utf-8"))
    except NotReadable as error:
        words = str(error).replace("the file", "the body")
        raise Refused("text-unreadable", words) from None
    if encoding in ("utf-8", "ascii"):
        return intake
    # Only a person can see whether the symbols are those that were meant.
    fault = Fault("text-other-encoding", 0, 0, {"encoding": encoding})
    return intake._replace(sha256=hashlib.sha256(body).hexdigest(), faults=(fault,))


def _decoded(body: bytes, charset: str) -> tuple[str, str]:
    encoding = CHARSETS[charset]
    if encoding == "utf-16":
        if not body.startswith(_MARKS_16):
            raise _contradicted(charset, "it does not begin with a byte order mark")
    elif encoding not in ("utf-8", "ascii") and _is_unicode(body):
        raise _contradicted(charset, "it is UTF-8 or UTF-16; say so, or leave the charset out")
    if encoding == "iso8859-1" and body.translate(None, bytes(range(0x80, 0xA0))) != body:
        # As in `intake`: who says ISO 8859-1 means Windows-1252 (WHATWG Encoding Standard, 4.2).
        encoding = "cp1252"
    try:
        return body.decode(encoding), encoding
    except UnicodeDecodeError as error:
        raise _contradicted(charset, f"the first other byte is number {error.start}") from None


def _is_unicode(body: bytes) -> bool:
    """Whether the bytes, other than ASCII, are so arranged as only Unicode arranges them."""
    if body.startswith(_MARKS_16):
        return True
    if body.isascii():
        return False
    try:
        body.decode("utf-8")
    except UnicodeDecodeError:
        return False
    return True


def _contradicted(charset: str, words: str) -> Refused:
    return Refused("charset-contradicted", f"the body is not {charset}: {words}")
