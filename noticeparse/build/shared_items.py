"""Charts whose heads stand one right below the other, and the items below the last of them."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from noticeparse.build.extents import extent_of
from noticeparse.context import Context
from noticeparse.layout.drafts import ChartDraft, Piece
from noticeparse.layout.evidence import opens_a_line
from noticeparse.readers.heads import head_kinds, read_head
from noticeparse.stretch import gather

_COUNTS_CHART = re.compile(r"\(?(?:[2-9]|[1-9][0-9])[.)][ \t]{0,12}\Z")
"""The number of the second chart of a list, or a later one."""


def share_items(context: Context, drafts: Sequence[ChartDraft]) -> None:
    """Give each such chart the items; `Chart 802 only:` below `Charts 802 and 803` is no such.

    Nor is `On chart 802:` below a head for each: a chart of the list stands again over its items.
    """
    for at, (above, below) in reversed(list(enumerate(pairwise(drafts)))):
        if above.items or not (above.head and below.head and below.items):
            continue
        if _named(context, below) <= _named(context, above):
            continue
        if any(_named(context, below) <= _named(context, one) for one in drafts[:at]):
            continue
        cells = [*above.head, *([above.previous] if above.previous else [])]
        between = context.text[extent_of(cells)[1] : extent_of(below.head)[0]]
        between = _COUNTS_CHART.sub("", between)
        if not between.strip(" .;\n-") and between.count("\n") == 1:
            above.items = below.items
            above.head += _told_of_all(context, above, below)


def _told_of_all(context: Context, above: ChartDraft, below: ChartDraft) -> list[Piece]:
    """Datum and unit on a line of their own below the last chart, where the one above has none."""
    known = head_kinds(gather(context.text, above.head).text)
    found: list[Piece] = []
    for piece in below.head[1:]:
        told = head_kinds(context.text[slice(*piece)]) - {"STOP"}
        if told and told <= _OF_ALL - known and opens_a_line(context.text, piece[0]):
            found.append(piece)
    return found


_OF_ALL = frozenset({"DATUM", "DEPTH_UNIT"})


def _named(context: Context, draft: ChartDraft) -> set[str | None]:
    if draft.number is not None:
        return {draft.number}
    head = read_head(gather(context.text, draft.head).text, context.year)
    return {chart.chart for chart in head.charts}
