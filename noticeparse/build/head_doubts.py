"""What chart heads of a notice say that may be of no chart: a map, a notice without its year.

`Map: 12` names a chart where an office calls its charts so; beside `Chart 802` it may be the map
of a sketch.  `CANX NR 204` names no year, and which notice it cancels is not said.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from noticeparse.build.extents import quoting, within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import ChartDraft
from noticeparse.rare import Rare
from noticeparse.readers.heads import head_kinds, read_parts
from noticeparse.stretch import Stretch, gather

_OWN_WORD = re.compile(r"\b(?:charts?|chts?)\b", re.IGNORECASE)
_OTHER_WORD = re.compile(
    r"\b(?:sheets?|maps?)(?: nos?\.?)?[ \t]{0,12}:[ \t]{1,12}(?P<number>[A-Z]{0,2}[0-9]{2,5})",
    re.IGNORECASE,
)
_NOTICE_BEFORE = Rare(
    r"\b(?:previous|prev\.?|last|NM|NTM)(?: (?:nos?|nr|notice)\b\.?)?[ :]{1,3}[0-9]{1,5}",
    "last nm ntm prev",
    re.IGNORECASE,
)
_PART_OF_SHEET = re.compile(r"\b(?<!main )(?:plan|inset|panel)\b", re.IGNORECASE)
_TELLS_OF_NOTICE = ("PREVIOUS", "CANCELS", "NOTICE", "THIS_NOTICE")
_COLUMNS = re.compile(
    r"\bcharts? [0-9]{1,5}(?:(?: {3,}| {0,12}[|\t] {0,12})charts? [0-9]{1,5})+", re.IGNORECASE
)
"""Charts as titles of columns, whose marks or places tell which rows are for that chart."""
_CANCELS = re.compile(
    r"\b(?:cancel(?:s|led|ling)?|canx|cxl|cnl|supersedes)(?: (?:notice|nm|ntm))?"
    r"(?: n[or]s?\.?)? ?:? ?[0-9]{1,5}(?![0-9/-])",
    re.IGNORECASE,
)


_PANELS = frozenset({"PANEL", "PANEL_TOO", "MAIN_PANEL"})


def head_doubts(
    context: Context, drafts: Sequence[ChartDraft]
) -> Iterator[tuple[Fault, str | None]]:
    """Faults of the heads, each with the number of its chart where it is of one."""
    yield from ((fault, None) for fault in _open_lists(context, drafts))
    heads = [gather(context.text, draft.head) for draft in drafts]
    for head in heads:
        if (found := _COLUMNS.search(head.text)) is not None:
            yield within(context, "item-of-one-chart", head, found.span()), None
    has_own = any(_OWN_WORD.search(head.text) for head in heads)
    for head in heads:
        for found in _OTHER_WORD.finditer(head.text) if has_own else ():
            yield within(context, "chart-unread", head, found.span()), found["number"]
        lost = _NOTICE_BEFORE.search(head.text)
        kinds = {part.kind for part in read_parts(head.text)} if lost else set()
        if lost and not any(kind.startswith(_TELLS_OF_NOTICE) for kind in kinds):
            yield within(context, "chart-head-unread", head, lost.span()), None
        part = _PART_OF_SHEET.search(head.text)
        if part and _PANELS.isdisjoint(one.kind for one in read_parts(head.text)):
            yield within(context, "chart-head-unread", head, part.span()), None
        yield from ((fault, None) for fault in _panels_of_others(context, head))
        undated = _CANCELS.search(head.text)
        if undated and not any(part.kind == "CANCELS" for part in read_parts(head.text)):
            yield within(context, "chart-head-unread", head, undated.span()), None


_CLOSED_ALONE = re.compile(r"[0-9]{1,5}/[0-9]{2,4}[\])]")
_COUNTS_CHART = re.compile(
    r"(?<![^\s:;,])[0-9]{1,2}\)(?=\s{1,12}(?:charts? |INT )?[A-Z]{0,3}[0-9])", re.IGNORECASE
)
"""`1) 802`: the number of a list of charts."""


def has_lost_bracket(head: str) -> bool:
    """Whether one bracket of a pair is lost: `Chart 802 [3/26`, `Chart 802 C3/26]`.

    `1)` alone is a number of a list; only behind a notice misses a closing one the other.
    """
    alone = head.count(")") - head.count("(")
    if alone > 0:
        head = _COUNTS_CHART.sub("", head, count=alone)
    more = [head.count(left) - head.count(right) for left, right in ("()", "[]")]
    return max(more) > 0 or (min(more) < 0 and _CLOSED_ALONE.search(head) is not None)


_OF_OTHER = re.compile(r"\b(?:of|on|in|from) (?:chart )?(?P<number>[A-Z]{0,3}[0-9]{2,6}[A-Z]?)\b")


def _panels_of_others(context: Context, head: Stretch) -> Iterator[Fault]:
    """A panel that is told to be of a chart which the head does not name: `plan A of 803`."""
    parts = read_parts(head.text)
    charts = {part.text for part in parts if part.kind == "CHART_NUMBER"}
    for part in parts:
        found = _OF_OTHER.search(part.text) if part.kind in _PANELS else None
        if found is not None and found["number"] not in charts:
            yield within(context, "chart-unread", head, (part.start, part.end))


_GOES_ON = re.compile(
    r"[^\n]{0,6}?(?:(?:[,;&]|\band)[ \t]{0,20}\n|\n[ \t]{0,20}(?=(?:and|&) ))(?P<below>[^\n]*\S)"
)
_OF_CHARTS = frozenset({"PREVIOUS", "PREVIOUS_IN_BRACKETS", "CHART_NUMBER"})
_BARE = re.compile(r"\s*(?:nos?\.? ?)?[0-9]{2,6}[A-Z]?[.,;]?\s*", re.IGNORECASE)


def _open_lists(context: Context, drafts: Sequence[ChartDraft]) -> Iterator[Fault]:
    """A line below a list of charts that breaks off, which may name another: `802 [3/26];`.

    So may a number alone between two charts of a list.
    """
    text = context.text
    heads = sorted(piece for draft in drafts for piece in draft.head)
    items = sorted(piece for draft in drafts for item in draft.items for piece in item.pieces)
    ends = sorted({end for _, end in heads})
    for end in ends:
        below = _GOES_ON.match(text, max(end - 4, 0))
        if below is None:
            continue
        start, stop = below.span("below")
        start = stop - len(text[start:stop].lstrip())
        is_told = any(a < stop and start < b for a, b in (*heads, *items))
        if not is_told and not _OF_CHARTS.isdisjoint(head_kinds(text[start:stop])):
            yield quoting(context, "chart-unread", (start, stop))
    for (_, end), (start, _) in pairwise(heads):
        between = text[end:start]
        if between.count("\n") == 2 and _BARE.fullmatch(between) is not None:
            yield quoting(context, "chart-unread", (end, start))
