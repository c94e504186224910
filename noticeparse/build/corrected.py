"""What the front of an edition says of its charts: `Charts last corrected: 61 by 140/26, 62 by …`.

It holds for the first notice of the edition that corrects a chart; those behind it follow on that.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.build.charts_of_rows import give_all
from noticeparse.build.extents import quoting
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Piece
from noticeparse.layout.head.asides import lead_of_previous
from noticeparse.layout.line.elements import Line
from noticeparse.readers.head_values import ChartHead
from noticeparse.readers.heads import read_head
from noticeparse.readers.references import read_number
from noticeparse.records.reference import NoticeRef

_NUMBER = r"[0-9]{1,5}(?:\([TP]\))?/(?:19|20)?[0-9]{2}(?![0-9/])"
_EACH = re.compile(
    r"(?:charts? )?([A-Z]{0,3} ?[0-9]{1,6}[A-Z]?)(?: by | with | - |: ?| ?= ?| \(|, ?| )"
    rf"({_NUMBER})\)?",
    re.IGNORECASE,
)
_LEAD = re.compile(
    r"\b(?:charts (?:were |are )?(?:last )?(?:corrected|updated|amended)(?: before)?"
    r"|(?:last|previous) (?:corrections?|notices?|updates?)(?: (?:of|for|on) (?:the )?charts)?)"
    r"(?: are)?(?: ?:| -)? ",
    re.IGNORECASE,
)
_JOINT = re.compile(r"(?:[,;]|,? and) ")
_MOST = 60
"""Charts of one line."""


def corrected_before(context: Context, front: Sequence[Line]) -> dict[str, tuple[NoticeRef, str]]:
    """The notice that the front lines say was last on each chart, and how it is written."""
    found: dict[str, tuple[NoticeRef, str]] = {}
    for line in front:
        words = context.text[line.start : line.end]
        lead = _LEAD.search(words)
        if lead is not None:
            _read_pairs(words[lead.end() :], context.year, found)
    return found


def told_at_the_end(context: Context, pieces: Sequence[Piece]) -> dict[str, tuple[NoticeRef, str]]:
    """The notice last on each chart, as lines below the items of a notice say it."""
    found: dict[str, tuple[NoticeRef, str]] = {}
    for start, end in pieces:
        words = " ".join(context.text[start:end].split())
        if (behind := lead_of_previous(words)) is not None:
            _read_pairs(words[behind:], context.year, found)
    return found


def set_listed(
    context: Context, charts: Sequence[ChartHead], listed: Piece
) -> list[tuple[Fault, None]]:
    """Give each chart the notice that a list beside it tells: `Last: 30/26 (chart 802), …`."""
    names = " and ".join(chart.chart for chart in charts if chart.chart)
    words = f"Charts {names}. {context.text[slice(*listed)]}"
    told = {one.chart: one for one in read_head(words, context.year).charts}
    found = [told.get(chart.chart) for chart in charts]
    for chart, one in zip(charts, found, strict=True):
        if one is not None:
            give_all([chart], one.previous, one.previous_written)
    is_whole = all(one is not None and one.previous is not None for one in found)
    return [] if is_whole else [(quoting(context, "previous-unread", listed), None)]


def _read_pairs(words: str, year: int | None, found: dict[str, tuple[NoticeRef, str]]) -> None:
    at = 0
    for _ in range(_MOST):
        pair = _EACH.match(words, at)
        ref = read_number(pair[2], year) if pair else None
        if pair is None or ref is None:
            return
        found.setdefault(pair[1].replace(" ", ""), (ref, pair[2]))
        joint = _JOINT.match(words, pair.end())
        if joint is None:
            return
        at = joint.end()
