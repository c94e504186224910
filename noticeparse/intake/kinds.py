"""What kind of file bytes are: told by the bytes first, then by the name of the file.

A text that is only pasted out of a mail or a page stays plain text.
"""

from __future__ import annotations

import codecs
import re
from typing import Literal

Kind = Literal["pdf", "html", "mail", "docx"]

MEDIA_TYPES: dict[Kind, str] = {
    "pdf": "application/pdf",
    "html": "text/html",
    "mail": "message/rfc822",
    "docx": "application/vnd.openxmlformats-officedocument.wordprocessingml.document",
}

ENDINGS: dict[str, Kind | None] = {
    ".txt": None,
    ".text": None,
    ".pdf": "pdf",
    ".html": "html",
    ".htm": "html",
    ".xhtml": "html",
    ".eml": "mail",
    ".docx": "docx",
}
"""Endings of the names of files that are read, with the kind that each promises."""

HEAD = 8192
"""How many bytes at the start of a file tell its kind."""

_PDF_WITHIN = 1024
_HTML = re.compile(
    rb"\s*(?:<\?xml[^>]{0,200}>\s*|<!--.{0,4000}?-->\s*){0,5}<(?:!doctype\s+html|html)[\s>]",
    re.I | re.S,
)
_TAG = re.compile(rb"<(?:html|head|body|div|p|br|table|ul|ol|h[1-6])(?:\s[^<>]{0,300})?/?>", re.I)
_HEADER = re.compile(rb"[!-9;-~]{1,70}:[ \t].{0,2000}|[ \t].{0,2000}|From [^\r\n]{1,200}")
_OF_MAIL = re.compile(
    rb"^(?:mime-version|received|message-id|dkim-signature|return-path)[ \t]*:", re.I | re.M
)
_FROM = re.compile(rb"^(?:from|subject)[ \t]*:", re.I | re.M)


def kind_of(head: bytes, name: str | None = None) -> Kind | None:
    """The kind of a file of these first bytes and this name; None for text and the unknown."""
    # The norm lets other bytes stand before the mark of a PDF file, and readers take them.
    if b"%PDF-" in head[:_PDF_WITHIN] and not head[:_PDF_WITHIN].lstrip().startswith(b"<"):
        return "pdf"
    if head.startswith(b"PK\x03\x04"):
        is_docx = b"word/" in head or b"[Content_Types].xml" in head[:100]
        return "docx" if is_docx or _promised(name) == "docx" else None
    plain = _without_mark(head)
    if _HTML.match(plain) or (_promised(name) == "html" and _TAG.search(plain)):
        return "html"
    return "mail" if _is_mail(plain, _promised(name) == "mail") else None


def _promised(name: str | None) -> Kind | None:
    ending = f".{name.rpartition('.')[2].lower()}" if name and "." in name else ""
    return ENDINGS.get(ending)


def _without_mark(head: bytes) -> bytes:
    for mark, encoding in ((codecs.BOM_UTF16_LE, "utf-16-le"), (codecs.BOM_UTF16_BE, "utf-16-be")):
        if head.startswith(mark):
            return head[2:].decode(encoding, "ignore").encode("ascii", "replace")
    return head.removeprefix(codecs.BOM_UTF8)


def _is_mail(head: bytes, is_promised: bool) -> bool:
    """Whether the bytes begin with the head of a message (RFC 5322) that no person typed."""
    block = re.split(rb"\r?\n\r?\n", head.lstrip(b"\r\n"), maxsplit=1)[0]
    lines = re.split(rb"\r?\n", block)
    # The last line may be cut by the end of what is looked at.
    if len(lines) < 2 or not all(_HEADER.fullmatch(line) for line in lines[:-1]):
        return False
    if is_promised:
        return True
    return _OF_MAIL.search(block) is not None and _FROM.search(block) is not None
