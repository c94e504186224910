"""Dates of an edition in the head of a chart that are none which can be read.

A month without its day, `Edition 4, March 2026`, and figures in an order of the office,
`51Ed. 6/15/24`, are told and not kept.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.readers.dates import MONTH
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


def tell_edition_dates(head: Head, text: str, parts: Sequence[HeadPart]) -> None:
    """Tell the dates of editions that are not read."""
    if not head.charts:
        return
    dates = [(part.start, part.end) for part in parts if part.kind == "DATE"]
    for found in _DATED.finditer(text):
        start, end = found.span("date")
        if not any(first < end and start < last for first, last in dates):
            near = next((part for part in parts if part.end > start), parts[-1])
            blame(head, "chart-head-unread", found["date"], near)
