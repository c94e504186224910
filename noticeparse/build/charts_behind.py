"""Chart sections from the charts that stand in brackets behind the items of a notice.

`Wreck, P [204 (last correction 66-26), 210 (last correction 58-26)]`: where no head names a chart,
each chart that an item names is a section, with the items that name it.  Where heads do, an item
stands under those of their charts that it names.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import chain

from noticeparse.build.announced import announced_letters
from noticeparse.build.extents import item_extent
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.layout.drafts import Item
from noticeparse.layout.head.charts_behind import charts_unread
from noticeparse.readers.charts_behind import read_charts_behind
from noticeparse.readers.head_values import ChartHead

Named = list[tuple[Item, list[ChartHead]]]
"""Items with the charts behind them; none where these cannot be read."""


def by_charts_behind(context: Context, sections: Sequence[Section]) -> list[Section]:
    """The sections, each with the items that are for its chart; new ones where heads name none."""
    items = list({id(one): one for section in sections for one in section.items}.values())
    if not any(item.behind for item in items):
        return list(sections)
    named = [(item, list(_read(context, item))) for item in items]
    headed = [one for one in sections if one.head.chart or one.head.international]
    if headed:
        return list(_under_heads(context, sections, named))
    return [*_told_by_items(context, named), *(s for s in sections if not s.items)]


def _read(context: Context, item: Item) -> Iterator[ChartHead]:
    if item.behind is not None:
        head = read_charts_behind(context.text[slice(*item.behind)], context.year)
        yield from head.charts if head is not None else ()


def _under_heads(context: Context, sections: Sequence[Section], named: Named) -> Iterator[Section]:
    """The sections of the heads of a notice, each without the items for other charts."""
    known = {section.head.chart for section in sections}
    charts = {id(item): charts for item, charts in named}
    for section in sections:
        kept: list[Item] = []
        for item in section.items:
            own = [one for one in charts[id(item)] if one.chart == section.head.chart]
            if item.behind is None:
                kept.append(item)
            elif not charts[id(item)]:
                kept.append(_in_doubt(context, item, "not all of it is read"))
            elif not {one.chart for one in charts[id(item)]} <= known:
                kept.append(_in_doubt(context, item, "the notice names other charts"))
            elif own:
                kept.append(_agreeing(context, item, section.head, own[0]))
        yield section._replace(items=kept)


def _told_by_items(context: Context, named: Named) -> Iterator[Section]:
    """A section for each chart that items name, in the order in which they do.

    Items without a chart, or with one that cannot be read, are for none of them; the positions
    of a list are there for all.
    """
    listed = [item for item, _ in named if item.behind is None and _is_list(context, item)]
    heads: list[ChartHead] = []
    for head in chain.from_iterable(charts for _, charts in named):
        if not any(_is_same(head, one) for one in heads):
            heads.append(replace(head))
    for head in heads:
        own = [(item, one) for item, charts in named for one in charts if _is_same(head, one)]
        told = next((one for _, one in own if one.previous_written is not None), head)
        head.previous, head.previous_written = told.previous, told.previous_written
        items = [_agreeing(context, item, head, one) for item, one in own]
        yield Section(head, [*listed, *items], _extent(items))
    free = [
        _in_doubt(
            context, item, "not all of it is read" if item.behind else "no chart stands behind it"
        )
        for item, charts in named
        if not charts and item not in listed
    ]
    if free:
        yield Section(ChartHead(), [*listed, *free], _extent(free))


def _is_list(context: Context, item: Item) -> bool:
    """Whether an item says not what is to be done, and gives letters to positions for others."""
    return item.verb is None and bool(announced_letters(context, item))


def _is_same(one: ChartHead, other: ChartHead) -> bool:
    return (one.chart, one.panel) == (other.chart, other.panel)


def _extent(items: Iterable[Item]) -> tuple[int, int]:
    """From the first of some items to the last, with the charts behind them."""
    ends = [piece for item in items for piece in (item_extent(item), item.behind or (0, 0))]
    return min(start for start, end in ends if end), max(end for _, end in ends)


def _agreeing(context: Context, item: Item, head: ChartHead, own: ChartHead) -> Item:
    """The item, in doubt where it tells another notice before than stands with the chart."""
    if head.previous_written is None:
        head.previous, head.previous_written = own.previous, own.previous_written
    if own.previous_written is not None and own.previous != head.previous:
        return _in_doubt(
            context, item, f"chart {own.chart} has another notice before it elsewhere"
        )
    return item


def _in_doubt(context: Context, item: Item, reason: str) -> Item:
    piece = item.behind or item_extent(item)
    return replace(item, faults=[*item.faults, charts_unread(context.text, piece, reason)])
