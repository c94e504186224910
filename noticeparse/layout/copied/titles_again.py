"""Titles of a paper that stand again at the head or foot of each page, beside what counts them.

In come the lines of a text; out come the indexes of those that say nothing of a notice.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from noticeparse.layout.line.elements import Line
from noticeparse.layout.opening.notice_openings import notice_opening
from noticeparse.readers.features import has_kind

_PAGE_BEHIND = re.compile(
    r"(?P<title>\S.*?\S) {5,160}(?P<page>[0-9]{1,3})$"
    r"|(?P<left>[0-9]{1,3}) {5,160}(?P<name>\S.*\S)$"
)


def counted_pages(text: str, lines: Sequence[Line], candidates: dict[int, str]) -> set[int]:
    """Lines that say the same each time, and far behind or before it a page that counts on."""
    found: dict[str, list[tuple[int, int]]] = {}
    for index in candidates:
        words = text[lines[index].start : lines[index].end].strip()
        match = _PAGE_BEHIND.match(words) if words[-1:].isdigit() or words[:1].isdigit() else None
        if match is None:
            continue
        title, page = match["title"] or match["name"], match["page"] or match["left"]
        if len(title) >= 10 and not has_kind(title):
            found.setdefault(title, []).append((index, int(page)))
    return {
        index
        for title, pages in found.items()
        if len(pages) > 1 and _count_on(title, [page for _, page in pages])
        for index, _ in pages
    }


def _count_on(title: str, pages: Sequence[int]) -> bool:
    """Whether pages count on; below a title with figures, `Edition 19/26`, one by one."""
    if not any(char.isdigit() for char in title):
        return all(one < two for one, two in pairwise(pages))
    return title[0].isalpha() and pages == [*range(pages[0], pages[0] + max(len(pages), 3))]


_TITLE = re.compile(
    r"(?P<title>[A-Z][^0-9\n]{8,70}?\S)(?: {3,120}|\t{1,8})(?P<beside>\S[^\n]{0,40})$"
)
_WORD = re.compile(r"[A-Za-z]{1,20}|[0-9]{1,4}")
_OF_PAGES = frozenset(
    "over cont contd continued ctd sheet page no number list issue edition of week".split()
)
"""What may stand beside the title on a later page, besides what stood there on the first."""


def titles_again(text: str, lines: Sequence[Line]) -> set[int]:
    """Lines behind a blank one that say the title of the paper again, and its number beside it.

    `LIGHTS OFFICE     sheet 18 of 2026` at the top of all, and `LIGHTS OFFICE     18/2026, over`
    where a page ends; a figure that did not stand there may be of a notice.
    """
    first = next((line for line in lines if not line.is_blank), None)
    top = None if first is None else _TITLE.match(text[first.start : first.end].strip())
    if first is None or top is None or _says_more(text, first):
        return set()
    told = {word.lower() for word in _WORD.findall(top["beside"])}
    if not any(word.isdigit() for word in told):
        return set()
    return {
        index
        for index, line in enumerate(lines)
        if index
        and lines[index - 1].is_blank
        and line.row != first.row
        and not _says_more(text, line)
        and _says_again(text, line, top["title"], told | _OF_PAGES)
    }


def _says_more(text: str, line: Line) -> bool:
    """Whether a line opens a notice or the section of a chart, or is of an item."""
    return not line.has_only("words", "number") or notice_opening(text, line) is not None


def _says_again(text: str, line: Line, title: str, known: set[str]) -> bool:
    """Whether a line is the title, and apart from it only words that are known."""
    words = text[line.start : line.end].strip()
    found = _TITLE.match(words) if words.startswith(title) else None
    if found is None or found["title"] != title:
        return False
    return {word.lower() for word in _WORD.findall(found["beside"])} <= known


_FEWEST_WORDS = 5
_OF_TITLES = re.compile(r"[A-Za-z]{2,40}|[0-9]{1,4}")


def said_at_top(text: str, lines: Sequence[Line], front: int, marks: set[int]) -> set[int]:
    """Lines right beside the mark of a page of which each word stands above the first notice.

    `Survey Bureau, Port Ellory      Week ending 12 June 2026`: what was said on several lines
    there stands on one at the head of each page.  Without a figure it may be a heading.
    """
    if not marks or not front:
        return set()
    top = text[lines[0].start : lines[front - 1].end].lower()
    known = set(_OF_TITLES.findall(top))
    found: set[int] = set()
    for mark in marks:
        for index in (mark - 1, mark + 1):
            if not front <= index < len(lines) or lines[index].is_blank:
                continue
            line = lines[index]
            words = _OF_TITLES.findall(text[line.start : line.end].lower())
            is_title = len(words) >= _FEWEST_WORDS and any(word.isdigit() for word in words)
            if not (is_title and known.issuperset(words)) or _says_more(text, line):
                continue
            if not _heads_chart(lines[index + 1 : index + 3]):
                found.add(index)
    return found


def _heads_chart(below: Sequence[Line]) -> bool:
    """Whether a chart opens below: of a list by chart it goes on with nothing above the page."""
    first = next((line for line in below if not line.is_blank), None)
    return first is not None and first.elements[0].kind == "chart"
