"""Dates of editions in the head of a chart: of new ones, and those that cannot be read.

A month without its day, `Edition 4, March 2026`, and figures in an order of the office,
`51Ed. 6/15/24`, are told and not kept.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import takewhile

from noticeparse.readers.dates import MONTH, read_date
from noticeparse.readers.head_values import Head, HeadPart
from noticeparse.readers.notices_before import blame

_DATED = re.compile(
    r"\b(?:(?:new )?edition(?: date| no\.? ?[0-9]{1,3}| [0-9]{1,3})?"
    r"|[0-9]{1,3}(?:st|nd|rd|th)? ?ed(?:ition|n)?\.?|ed(?:ition|n)?\.? ?[0-9]{1,3})"
    r"[\s,:;(.-]{1,4}(?:dated |of |published )?"
    rf"(?P<date>(?:{MONTH}\b\.?,? ?(?:19|20)[0-9]{{2}}(?![0-9])"
    r"|[0-9]{1,2}[./-][0-9]{1,2}[./-](?:[0-9]{4}|[0-9]{2})(?![0-9])))",
    re.IGNORECASE,
)

_OF_NEW_EDITION = re.compile(
    r"\bnew (?:edition|chart)\b"
    rf"(?:,? (?:no\.? ?)?(?P<number>[0-9]{{1,3}})(?![0-9/]|st|nd|rd|th| {MONTH}\b))?[ ,]{{0,3}}"
    rf"(?:of |dated |published )?(?P<date>[0-9]{{1,2}}(?:st|nd|rd|th)? {MONTH}\b\.? [0-9]{{4}})?",
    re.IGNORECASE,
)


def new_edition(text: str, near: int | None) -> tuple[str | None, str | None]:
    """The number and the day of `New Edition 4, 12 March 2024`, None where not told."""
    found = _OF_NEW_EDITION.search(text)
    if found is None:
        return None, None
    day, faults = read_date(found["date"], near) if found["date"] else (None, ())
    return found["number"], None if faults else day


_MONTH_AND_YEAR = re.compile(r"\(?(?:0?[1-9]|1[0-2])/(?:19|20)?[0-9]{2}\)?")
_NUMBERS = ("PREVIOUS", "PREVIOUS_IN_BRACKETS", "NOTICE_NUMBER")


def without_months(head: Head, parts: tuple[HeadPart, ...]) -> tuple[HeadPart, ...]:
    """The parts without the months of editions, which are told: `2nd Ed. 8/24 Last NM 12/26`.

    Where no other number of a notice follows for the same chart it may be that.
    """
    made = list(parts)
    for at, part in enumerate(parts):
        if part.kind not in _NUMBERS or _MONTH_AND_YEAR.fullmatch(part.text) is None:
            continue
        beside = [parts[at - 1].kind] if at else []
        behind = parts[at + 1 : at + 2]
        is_of_edition = beside == ["EDITION"] or any(_is_edition(one) for one in behind)
        following = takewhile(lambda one: one.kind != "CHART_NUMBER", parts[at + 1 :])
        if is_of_edition and any(one.kind in _NUMBERS for one in following):
            made[at] = part._replace(kind="OTHER_WORDS")
            blame(head, "chart-head-unread", part.text, part)
    return tuple(made)


def _is_edition(part: HeadPart) -> bool:
    return part.kind == "EDITION" or part.text.lower() in ("ed", "edn", "edition")


def tell_edition_dates(head: Head, text: str, parts: Sequence[HeadPart]) -> None:
    """Tell the dates of editions that are not read."""
    if not head.charts:
        return
    dates = [(part.start, part.end) for part in parts if part.kind == "DATE"]
    dates += [
        (part.start + found.start("date"), part.start + found.end("date"))
        for part in parts
        if part.kind == "NEW_EDITION" and (found := _OF_NEW_EDITION.search(part.text))
    ]
    for found in _DATED.finditer(text):
        start, end = found.span("date")
        if not any(first < end and start < last for first, last in dates):
            near = next((part for part in parts if part.end > start), parts[-1])
            blame(head, "chart-head-unread", found["date"], near)
