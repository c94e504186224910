"""Marks that a text brings along from where it was copied, and that say nothing of the chart.

Quote marks of mail, line numbers of a fax, the stars and hashes of plain-text markup, the quotes
and commas of exported tables, tags.  Each is taken away only where the text shows it several
times; what is taken away becomes blank, or a bar where it parts cells, so that no offset moves.
"""

from __future__ import annotations

import re
from itertools import pairwise

from noticeparse.layout.copied.blank_forms import without_blank_forms
from noticeparse.layout.copied.blanking import blanked
from noticeparse.layout.copied.exports import with_bars
from noticeparse.layout.copied.key_columns import with_colons_behind_keys
from noticeparse.layout.copied.keys_below_items import with_keys_in_sentences
from noticeparse.layout.copied.split_coordinates import with_whole_coordinates
from noticeparse.layout.copied.stacked_rows import with_stacked_rows
from noticeparse.layout.drafts import Piece

_LEAST = 3
"""Lines that must show a mark before it is taken for one."""


def without_marks(text: str) -> tuple[str, list[Piece]]:
    """The text with such marks blanked out, and where they stood."""
    marks: list[Piece] = []
    for step in (
        _mail,
        without_blank_forms,
        _line_numbers,
        with_stacked_rows,
        _stars,
        _quoted_cells,
        _doubled_quotes,
        with_bars,
        with_whole_coordinates,
        _tags,
        with_keys_in_sentences,
        with_colons_behind_keys,
        _dittos,
    ):
        text, found = step(text)
        marks += found
    return text, sorted(marks)


_SIGN_OF_VERB = re.compile(
    r"[A-Za-z)][,;]? {1,9}[(\[\"']?>[)\]\"']?(?: {0,3}[=:] {0,3}| means | {1,4})"
    r"(?:to )?(?:mov|shift|relocat|transfer|amend|chang|replac)",
    re.IGNORECASE,
)
"""In a key to signs: `= amend   > move`; there the mark opens no line of mail."""


def _mail(text: str) -> tuple[str, list[Piece]]:
    """`>` before the lines of forwarded mail; the blank behind it belongs to it."""
    if ("\n>" not in text and not text.startswith(">")) or _SIGN_OF_VERB.search(text):
        return text, []
    parts, marks, at = [], [], 0
    for line in text.split("\n"):
        body = line.lstrip("> \t")
        depth = len(line) - len(body)
        head = line[:depth]
        if line.lstrip(" ").startswith(">"):
            marks += [(at + i, at + i + 1) for i, c in enumerate(head) if c == ">"]
            last = head.rfind(">")
            # Wider indents are the text's own.
            line = " " * (last + 1) + head[last + 1 :] + body
        parts.append(line)
        at += len(line) + 1
    return "\n".join(parts), marks


_NUMBERED_LINE = re.compile(r"^[ ]{0,3}0?[0-9]{1,3}(?=[ ]{2}|$)", re.MULTILINE)


def _line_numbers(text: str) -> tuple[str, list[Piece]]:
    """`07  ` at the margin of a fax: figures that count the lines."""
    found = list(_NUMBERED_LINE.finditer(text))
    figures = [int(match.group()) for match in found]
    runs_on = all(b == a + 1 for a, b in pairwise(figures))
    if len(found) < 2 * _LEAST or not runs_on or figures[0] > 1:
        return text, []
    return blanked(text, _NUMBERED_LINE, lambda match: " " * len(match.group()))


_HASHES = re.compile(r"^#{1,6}(?= )", re.MULTILINE)
_EXPORT_ROW = re.compile(
    r"^(?!#)(?:[^;\n]{0,120};){3}|^(?!#)(?:[^\t\n]{0,120}\t){3}", re.MULTILINE
)
_STARS = re.compile(r"(?<![*\w])(\*{1,2}|_{2})(?=\S)([^*_\n]{1,60}?)(?<=\S)\1(?![*\w])")


def _stars(text: str) -> tuple[str, list[Piece]]:
    """`## ` before headings and `**` round words."""
    hashes = len(_HASHES.findall(text)) >= _LEAST - 1
    if hashes and len(_EXPORT_ROW.findall(text)) >= _LEAST:
        # Among the rows of an export a hash opens a remark on them, or a row put aside.
        hashes = False
    stars = (hashes or "**" in text) and len(_STARS.findall(text)) >= _LEAST
    marks: list[Piece] = []
    if hashes:
        text, marks = blanked(text, _HASHES, lambda match: " " * len(match.group()))
    if stars:
        text, more = blanked(text, _STARS, lambda m: " " * len(m[1]) + m[2] + " " * len(m[1]))
        marks = marks + more
    return text, marks


_QUOTED_ROW = re.compile(r'^"(?:[^"\n]|"")*"(?:[,;]"(?:[^"\n]|"")*"){2,}[ \t]*$', re.MULTILINE)
# The last row of a text may break off within a cell.
_OPEN_ROW = re.compile(r'^"(?:[^"\n]|"")*"(?:[,;]"(?:[^"\n]|"")*"?){2,}[ \t]*$', re.MULTILINE)
_CELL_END = re.compile(r'^"|"[,;]"|"(?=[ \t]*$)|""')


def _quoted_cells(text: str) -> tuple[str, list[Piece]]:
    """`"Notice","Chart","Action"`: the rows of an exported table become cells between bars."""
    if len(_QUOTED_ROW.findall(text)) < _LEAST:
        return text, []
    return blanked(text, _OPEN_ROW, lambda row: _CELL_END.sub(_bar, row.group()))


_DOUBLED = re.compile(
    r'(?:(?<=[;\t])|^)"(?=[^;\t\n]{0,200}"")(?:[^";\t\n]|""){1,200}"(?=[;\t]|$)', re.MULTILINE
)


def _doubled_quotes(text: str) -> tuple[str, list[Piece]]:
    """`;"buoy ""No 4"" (red)";`: a cell in quotes, in which the quotes of its own stand twice."""
    if '""' not in text or len(_EXPORT_ROW.findall(text)) < _LEAST:
        return text, []
    return blanked(text, _DOUBLED, lambda cell: f" {_CELL_END.sub(_bar, cell.group()[1:-1])} ")


def _bar(match: re.Match[str]) -> str:
    mark = match.group()
    if mark == '""':
        # The quote mark keeps to its words.
        return ' "' if match.string[match.end() : match.end() + 1].isalnum() else '" '
    return "|" if len(mark) == 1 else " | "


_TAG = re.compile(r"<(/?)([A-Za-z][A-Za-z0-9_-]{0,30})((?:\s[^<>\n]{0,300})?)(/?)>")
_CLOSING = re.compile(r"</[A-Za-z]")


def _tags(text: str) -> tuple[str, list[Piece]]:
    """`<chart no="41" datum="WGS84">` becomes its words; a closing tag becomes blank."""
    if len(_CLOSING.findall(text)) < _LEAST:
        return text, []
    return blanked(text, _TAG, _words_of_tag)


def _words_of_tag(match: re.Match[str]) -> str:
    closing, name, rest, _ = match.groups()
    whole = match.group()
    if closing or name.lower() in _SILENT_TAGS:
        return " " * len(whole)
    inner = name + rest
    words = "".join(" " if c in '"=' else c for c in inner)
    return f" {words}{' ' * (len(whole) - len(words) - 1)}"


_SILENT_TAGS = frozenset(
    "pos position heading title text p br td tr th table body html div span b i em strong li ul ol"
    " h1 h2 h3 h4 pre font a item action feature notices".split()
)


# The mark stands first, and then what is before it: the search leaps to the mark.
_DITTO = re.compile(
    r""""(?<=\s")(?=[ \t]{1,4}[0-9]{1,2}(?:'?[.,][0-9]{1,4})?'?[ ]?[NSEW](?![A-Za-z]))"""
)


def _dittos(text: str) -> tuple[str, list[Piece]]:
    """`"  14'.55 S` below `47° 14'.30 S`: the mark stands for the degrees of the row above."""
    if len(_DITTO.findall(text)) < 2:
        return text, []
    return blanked(text, _DITTO, lambda match: " ")
