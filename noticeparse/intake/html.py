"""HTML: the text that a person sees, by an own walk over the elements.

Lowered and raised figures keep their level, cells become tabs, rows lines.  Scripts and styles are
no text; what is struck out or hidden is left out with a finding.
"""

from __future__ import annotations

import codecs
import re
from typing import NamedTuple

from selectolax.lexbor import LexborHTMLParser, LexborNode

from noticeparse.intake.composing import Composed
from noticeparse.intake.records import NotReadable
from noticeparse.intake.small_figures import Level
from noticeparse.intake.styling import (
    USUAL_SIZE,
    Style,
    is_underlined,
    left_out,
    level_of,
    rules_of,
    size_of,
    style_of,
)
from noticeparse.intake.walking import Walker

_LINES = frozenset(
    "p h1 h2 h3 h4 h5 h6 ul ol dl table blockquote pre section article hr form fieldset".split()
)
_BLOCKS = frozenset(
    "html body div li dt dd tr caption thead tbody tfoot header footer main nav aside address"
    " figure figcaption details summary center option legend".split()
)
_NO_TEXT = frozenset("script style template noscript head title".split())
_NOT_READ = {
    "img": "a picture", "svg": "a drawing", "math": "a formula", "object": "a file put in",
    "iframe": "a page put in", "embed": "a file put in", "canvas": "a drawing",
    "input": "a field to fill in", "video": "a film", "audio": "a sound",
}  # fmt: skip
_ENCODING = re.compile(rb"<meta[^>]{0,300}?charset\s*=\s*[\"']?\s*([A-Za-z0-9._:-]{2,40})", re.I)
_XML_ENCODING = re.compile(rb"<\?xml[^>]{0,200}?encoding\s*=\s*[\"']([A-Za-z0-9._:-]{2,40})", re.I)
_LOOKED_THROUGH = 4096
_MARKS = (
    (codecs.BOM_UTF8, "utf-8"), (codecs.BOM_UTF16_LE, "utf-16-le"),
    (codecs.BOM_UTF16_BE, "utf-16-be"),
)  # fmt: skip
_MOST_LINES = 6


def read_html(data: bytes, charset: str | None = None) -> Composed:
    """The text of an HTML file; `charset` is what the mail that holds it declares.

    Raises NotReadable.
    """
    text, is_lossy = decoded(data, charset)
    return read_elements(text, is_lossy=is_lossy)


def read_elements(text: str, *, is_lossy: bool = False) -> Composed:
    """The text of HTML that is decoded; `is_lossy` where characters were lost in that.

    Raises NotReadable.
    """
    parser = LexborHTMLParser(text)
    root = parser.root
    if root is None:
        raise NotReadable("cannot be read: the HTML file holds no element")
    walker = Walker()
    _walk(walker, root, rules_of(parser))
    if parser.css_first('link[rel~="stylesheet"]') is not None:
        walker.remark("part-not-read", "a style sheet in another file")
    made = walker.made()
    if is_lossy:
        from noticeparse.faults import Fault

        at = max(made.text.find("\ufffd"), 0)
        values = {"encoding": "in the encoding that it declares", "offset": "unknown"}
        made = made._replace(doubts=(Fault("text-not-utf8", at, at + 1, values), *made.doubts))
    return made


def decoded(data: bytes, charset: str | None = None) -> tuple[str, bool]:
    """The text of bytes, by their mark, what is declared, UTF-8; whether characters were lost."""
    for mark, encoding in _MARKS:
        if data.startswith(mark):
            return _in(data[len(mark) :], encoding)
    head = data[:_LOOKED_THROUGH]
    match = _ENCODING.search(head) or _XML_ENCODING.search(head)
    declared = charset or (match[1].decode("ascii") if match else None)
    try:
        return data.decode("utf-8"), False
    except UnicodeDecodeError:
        return _in(data, _known(declared) or "utf-8")


def _in(data: bytes, encoding: str) -> tuple[str, bool]:
    try:
        return data.decode(encoding), False
    except UnicodeDecodeError:
        return data.decode(encoding, "replace"), True


def _known(name: str | None) -> str | None:
    """Python's name of a declared encoding; ISO 8859-1 is Windows-1252 (WHATWG Encoding, 4.2)."""
    try:
        encoding = codecs.lookup(name or "").name
        if "a<".encode(encoding) != b"a<":
            return None
    except (LookupError, ValueError, TypeError):
        return None
    return "cp1252" if encoding in ("iso8859-1", "ascii") else encoding


class _Words(NamedTuple):
    """How the words of an element look."""

    level: Level = "plain"
    is_kept: bool = False
    is_inserted: bool = False
    is_underlined: bool = False
    size: float = USUAL_SIZE


def _walk(walker: Walker, root: LexborNode, rules: dict[int, Style]) -> None:
    """Go through all elements, with a stack of our own, since a file may nest them very deep."""
    stack: list[tuple[LexborNode | None, str, _Words]] = [(root, "", _Words())]
    while stack:
        node, end, look = stack.pop()
        walker.is_inserted = look.is_inserted
        if node is None:
            _end(walker, end)
            continue
        tag = node.tag or ""
        if tag == "-text":
            walker.size, walker.is_underlined = look.size, look.is_underlined
            walker.words(node.text_content or "", look.level, keeps_lines=look.is_kept)
            continue
        if tag in _NO_TEXT or tag.startswith(("-", "!", "_")):
            continue
        style = style_of(node, rules)
        code = left_out(node, tag, style)
        if code is not None:
            walker.leave_out(code, node.text(deep=True) or "")
            continue
        if tag in _NOT_READ:
            if not _is_empty(node):
                walker.no_text(_NOT_READ[tag])
            continue
        _begin(walker, node, tag)
        stack.append((None, tag, look))
        inner = _Words(
            level_of(tag, style, look.level),
            look.is_kept or tag in ("pre", "textarea"),
            look.is_inserted or tag == "ins",
            look.is_underlined or is_underlined(tag, style),
            size_of(node, tag, style, look.size),
        )
        children = list(node.iter(include_text=True))
        stack += [(child, "", inner) for child in reversed(children)]


def _is_empty(node: LexborNode) -> bool:
    """Whether a person sees nothing of what is no text: a picture of one point, a hidden field."""
    attributes = node.attributes
    sizes = (attributes.get("width"), attributes.get("height"))
    return attributes.get("type") == "hidden" or any(one in ("0", "1") for one in sizes)


def _has_lines(node: LexborNode) -> bool:
    """Whether a cell is no cell of a table but a part of the page, which keeps its lines."""
    if node.css_first("table") is not None:
        return True
    return len(node.css("p, div, br, li, h1, h2, h3, h4")) > _MOST_LINES


def _begin(walker: Walker, node: LexborNode, tag: str) -> None:
    if tag in ("td", "th"):
        walker.begin_cell(has_lines=_has_lines(node))
    elif tag in _LINES:
        walker.end_paragraph()
    elif tag in _BLOCKS or tag == "br":
        walker.end_line()
    if tag == "tr":
        walker.begin_row()
    elif tag == "li" and node.parent is not None and node.parent.tag == "ol":
        walker.count_item()


def _end(walker: Walker, tag: str) -> None:
    if tag in ("td", "th"):
        walker.end_cell()
    elif tag == "tr":
        walker.end_row()
    elif tag in _LINES:
        walker.end_paragraph()
    elif tag in _BLOCKS:
        walker.end_line()
