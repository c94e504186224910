"""Keys of a head that stand side by side, each with its value, in two columns of a printed form.

    Notice ..... 31/26                Chart ........ 802
    Edition .... 5, 14 March 2021     Previous ..... 28/26

Each pair is put on a line of its own: the blank before the second key becomes a line end, so that
no offset moves.  Keys of records, `Lat: … Long: …`, stay together, and so does what stands behind
the colon of a chart or notice, which its head is read with.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.layout.column.columns import key_role
from noticeparse.layout.drafts import Piece

_FEWEST = 2
"""Lines with two such keys before a text is taken for one of them."""
_MOST_COLUMNS = 6
_KEY = (
    r"(?P<key>[A-Za-z][A-Za-z/]{0,14}\.?(?: [A-Za-z][A-Za-z/]{0,14}\.?){0,3})"
    r"(?P<sign> {0,2}\.{3,60} ?:?| \.\.:?| {0,20}:)(?= )"
)
_FIRST = re.compile(rf"^[ \t]{{0,8}}{_KEY}", re.MULTILINE)
_FURTHER = re.compile(rf"(?<=  ){_KEY}")
_AT = re.compile(_KEY)
_OF_HEADS = frozenset(
    "notice chart previous heading edition edition_date datum panel international source cancels"
    " validity status date remark".split()
)
_READ_TOGETHER = frozenset({"notice", "chart"})
_BESIDE = {
    "chart": "chart",
    "charts": "chart",
    "chart no": "chart",
    "chart number": "chart",
    "datum": "datum",
    "horizontal datum": "datum",
    "international": "international",
    "int": "international",
    "international no": "international",
    "international number": "international",
    "panel": "panel",
    "plan": "panel",
}
"""Keys of heads that are read where they stand, and need no role of a column."""


def head_role(key: str) -> str | None:
    """The role of a key that stands in heads of notices and charts; None for all others."""
    plain = " ".join(key.lower().split()).strip(" .:")
    role = _BESIDE.get(plain) or key_role(plain, has_places=False)
    return role if role in _OF_HEADS else None


class _Pair(NamedTuple):
    """A key behind another on its line: the line it stands on, and where in the text."""

    line: int
    at: int
    is_first_empty: bool = False
    """Whether dots and nothing else stand behind the key that opens the line."""


def with_keys_below_each_other(text: str) -> tuple[str, list[Piece]]:
    """The text with each of such keys on a line of its own; a led key without a value is blank."""
    if "  " not in text or (".." not in text and ":" not in text):
        return text, []
    firsts = [match for match in _FIRST.finditer(text) if _opens(match)]
    found = [pair for first in firsts for pair in _behind(text, first)]
    if len({pair.line for pair in found}) < _FEWEST:
        return text, []
    counts = Counter(pair.at - pair.line for pair in found)
    columns = [column for column, _ in counts.most_common(_MOST_COLUMNS)]
    told = {pair.line for pair in found}
    for first in firsts:
        if first.start() not in told:
            found += _in_columns(text, first, columns)
    letters = list(text)
    empty: list[Piece] = []
    for pair in found:
        letters[pair.at - 1] = "\n"
        if pair.is_first_empty:
            empty.append((pair.line, pair.at - 1))
            letters[pair.line : pair.at] = " " * (pair.at - pair.line)
    return "".join(letters), empty


def _opens(first: re.Match[str]) -> bool:
    """Whether a line opens with the key of a head whose value ends before another key."""
    role = head_role(first["key"])
    return role is not None and (".." in first["sign"] or role not in _READ_TOGETHER)


def _behind(text: str, first: re.Match[str]) -> Iterator[_Pair]:
    """The keys that wide gaps part from the value before them, on the line of the first."""
    end = text.find("\n", first.end())
    for match in _FURTHER.finditer(text, first.end(), end if end >= 0 else len(text)):
        if head_role(match["key"]) is not None:
            is_empty = not text[first.end() : match.start()].strip()
            yield _Pair(first.start(), match.start(), is_empty and ".." in first["sign"])


def _in_columns(text: str, first: re.Match[str], columns: Sequence[int]) -> Iterator[_Pair]:
    """The key that one blank parts from a value as wide as its column, in the column of others."""
    for column in columns:
        at = first.start() + column
        match = _AT.match(text, at) if at > first.end() and text[at - 1 : at] == " " else None
        if match is None or "\n" in text[first.start() : at] or head_role(match["key"]) is None:
            continue
        if ".." in match["sign"]:
            yield _Pair(first.start(), at)
            return
