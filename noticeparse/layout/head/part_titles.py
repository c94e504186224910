"""Titles of the parts of an edition: its lists, corrections to books, the notices themselves."""

from __future__ import annotations

import re

from noticeparse.layout.line.elements import Line
from noticeparse.rare import Rare
from noticeparse.readers.editions import read_line_words
from noticeparse.readers.heads import head_kinds

_PART_TITLES = ("SECTION_TITLE", "BOOK_TITLE")
# What every title of corrections to a book says; most lines are not read further for one.
_CHANGES_OF = Rare(
    r"\b(?:correction|amendment|change|addition|alteration|update)s (?:to|in|of|for) ",
    "additions alterations amendments changes corrections updates",
    re.IGNORECASE,
)


def _behind_letter(text: str, line: Line) -> str | None:
    """The words of a line, without the letter of a part before its title: `B.  IN FORCE`."""
    if not line.has("label"):
        return text[line.start : line.end]
    rest = text[line.elements[0].end : line.end].strip()
    is_title = rest.isupper() or (rest[:1].isupper() and read_line_words(rest).list_kind)
    return rest if line.elements[0].kind == "label" and is_title else None


def list_title(text: str, line: Line) -> str | None:
    """The kind of the list that this line is the title of, or None."""
    words = _behind_letter(text, line)
    # Two titles side by side stand over two lists, whose lines are not told apart.
    is_double = sum(element.kind == "label" for element in line.elements) > 1
    if words is None or len(words) > 100 or is_double:
        return None
    if line.has("point", "half", "reference", "passive", "number", "chart"):
        return None
    found = read_line_words(words)
    kind = found.list_kind
    if line.has("verb") and found.first(*_PART_TITLES) is None:
        # `Struck out` alone stands over items; `III. STRUCK OUT` is the title of a part.
        return None
    return kind if kind is not None and found.plain_words <= 2 else None


_BESIDE = re.compile(
    r"(?P<force>(?:notices? )?(?:still |remaining |now )?in force"
    r"(?: \(T\)(?: and | & |, ?|/)\(P\))?)"
    r"|(?:now )?(?:cancelled|withdrawn|no longer in force)(?: notices)?|notices cancelled",
    re.IGNORECASE,
)
_OF_ENTRIES = frozenset(
    "CHART_WORD CHART_NUMBER INTERNATIONAL NOTICE_NUMBER BARE_NUMBER COMMA STOP".split()
)


def title_beside_entries(text: str, line: Line) -> str | None:
    """The kind of the list whose title a line opens with, its first entry behind a colon.

    `In force:    Chart 1101   455(P)/26`; behind the title stand charts and notices alone.
    """
    first, *entry = line.elements
    words = text[first.start : entry[0].start].rstrip() if entry else ""
    title = _BESIDE.fullmatch(words.rstrip(" :")) if words.endswith(":") else None
    if title is None or not line.has("number"):
        return None
    kinds = head_kinds(text[entry[0].start : entry[-1].end])
    if "NOTICE_NUMBER" not in kinds or not kinds <= _OF_ENTRIES:
        return None
    return "in_force" if title["force"] else "cancelled"


_OF_INDEX = re.compile(
    r"(?P<title>(?:charts? (?:touched|affected|concerned|corrected)"
    r"(?: (?:by|in) this (?:edition|list|issue|bulletin|week))"
    r"|(?:chart )?index(?: of charts)?)[ ]?:)"
    r"(?P<charts>(?:[ ,;]{1,4}(?:and )?[A-Z]{0,3} ?[0-9]{2,6}[A-Z]?(?![0-9/]|\.[0-9])){1,200})"
    r"[. ]{0,4}$",
    re.IGNORECASE,
)
_CHART = re.compile(r"(?!and\b)[A-Z]{0,3} ?[0-9]{2,6}[A-Z]?", re.IGNORECASE)


def charts_beside_title(text: str, line: Line) -> tuple[Line, list[Line]] | None:
    """The title of an index with bare charts behind its colon, and a line for each of these."""
    found = _OF_INDEX.match(text, line.start, line.end) if line.has("chart", "words") else None
    if found is None:
        return None
    first = line.elements[0]
    title = line._replace(
        elements=(first._replace(kind="words", end=found.end("title")),), end=found.end("title")
    )
    entries = [
        line._replace(
            elements=(first._replace(kind="words", start=one.start(), end=one.end()),),
            start=one.start(),
            end=one.end(),
        )
        for one in _CHART.finditer(text, found.start("charts"), found.end("charts"))
    ]
    return title, entries


def is_part_title(text: str, line: Line) -> bool:
    """Whether this line is the title of a part of the edition: `PART B`, `IV. NEW EDITIONS`."""
    words = read_line_words(text[line.start : line.end])
    return words.first(*_PART_TITLES) is not None and words.first("NOTICES") is None


def is_book_title(text: str, line: Line) -> bool:
    """Whether a line is the title of corrections to a book: `SECTION IV - LIST OF LIGHTS`."""
    words = text[line.start : line.end]
    if _CHANGES_OF.search(words) is None:
        return False
    return read_line_words(words).first("BOOK_TITLE") is not None


def is_capital_title(text: str, line: Line) -> bool:
    """Whether a line is a numbered title in capitals of a list, or of the notices themselves."""
    words = text[line.start : line.end]
    if not words.isupper() or (
        not is_notices_title(text, line) and list_title(text, line) is None
    ):
        return False
    found = read_line_words(words)
    named = found.list_kind is not None or found.first("NOTICES") is not None
    return named and found.first(*_PART_TITLES) is not None


def is_notices_title(text: str, line: Line) -> bool:
    """Whether this line is the title of the part that holds the notices, or of another part."""
    if line.has("point", "half", "verb", "reference", "passive", "number", "chart"):
        return False
    title = _behind_letter(text, line)
    words = read_line_words(text[line.start : line.end] if title is None else title)
    if words.first(*_PART_TITLES) is not None and words.list_kind is None:
        return True
    named = words.first("NOTICES", "NUMBER_RANGE")
    # `Corrections` alone may also stand above the items of a notice.
    is_title = named is not None and (named.lower() != "corrections" or line.has("label"))
    return is_title and words.plain_words <= 3
