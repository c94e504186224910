"""Charts that an item names as its own, among those of its notice.

At its end in brackets, `Wreck - P [611, 612]`, or in words: `On chart 611 only: insert …`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from noticeparse.build.all_charts import give_to_all, given
from noticeparse.build.charts_in_words import hold_back_of_charts
from noticeparse.build.extents import quoting
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.readers.heads import read_parts

_PARTS = frozenset({"CHART_WORD", "CHART_NUMBER", "COMMA", "STOP"})


def by_item_charts(context: Context, sections: Sequence[Section]) -> list[Section]:
    """The sections, each without the items that name other charts of the notice alone."""
    known = {section.head.chart for section in sections if section.head.chart is not None}
    hold_back_of_charts(context, sections, known)
    sections = give_to_all(context, sections, known)
    items = [item for section in sections for item in section.items]
    if not any(item.tail or item.charts for item in items):
        return list(sections)
    sections = _with_all(context, sections, known)
    owned = [
        [(item, _own(context, item, section.head.chart, known)) for item in section.items]
        for section in sections
    ]
    kept = {id(item) for pairs in owned for item, own in pairs if own is not None}
    return [
        section._replace(items=[*_own_or_held(context, pairs, kept)])
        for section, pairs in zip(sections, owned, strict=True)
    ]


def _own_or_held(
    context: Context, pairs: Sequence[tuple[Item, Item | None]], kept: set[int]
) -> Iterator[Item]:
    """The items of a section; one for a chart under whose head it does not stand is held."""
    for item, own in pairs:
        if own is not None:
            yield own
        elif id(item) not in kept:
            kept.add(id(item))
            piece = item.charts or item.pieces[0]
            yield replace(
                item, faults=[*item.faults, quoting(context, "item-of-one-chart", piece)]
            )


def _is_of_all(context: Context, item: Item) -> bool:
    """Whether an item says that it is for all charts: `Both charts: insert …`."""
    words = context.text[slice(*item.charts)] if item.charts is not None else ""
    return bool(words) and not any(map(str.isdigit, words))


def _with_all(context: Context, sections: Sequence[Section], known: set[str]) -> Sequence[Section]:
    """The sections, items that say that they are for all charts also under the others."""
    holders: dict[int, tuple[Item, set[str | None]]] = {}
    for section in sections:
        for item in section.items:
            if _is_of_all(context, item):
                holders.setdefault(id(item), (item, set()))[1].add(section.head.chart)
    for item, charts in holders.values():
        if len(known) != 2 and item.charts and "both" in context.text[slice(*item.charts)].lower():
            item.faults.append(quoting(context, "item-of-one-chart", item.charts))
            continue
        if item.charts and item.refers and known - charts:
            # A letter may be that of another item on the other chart.
            item.faults.append(quoting(context, "item-of-one-chart", item.charts))
            continue
        sections = given(sections, item, known - charts)
    return sections


def _own(context: Context, item: Item, chart: str | None, known: set[str]) -> Item | None:
    """The item without the charts it names; None where this chart is not among them."""
    if _is_of_all(context, item):
        return item
    if item.charts is not None:
        words = context.text[slice(*item.charts)]
        named = _numbers(words)
        is_alike = any(len(number) == len(one) for number in named for one in known)
        is_bare = len(named) == 1 and "chart" not in words.lower()
        if is_bare and known.isdisjoint(named) and not is_alike:
            # `12: Insert …` counts the items.
            return item
        if named and named <= known:
            return item if chart in named else None
        values = {"written": context.written(*item.charts)}
        return replace(
            item, faults=[*item.faults, Fault("item-of-one-chart", *item.charts, values)]
        )
    if not item.tail:
        return item
    named = _named(context.text[slice(*item.tail[-1])])
    if not named or not named <= known:
        written = context.text[slice(*item.tail[-1])].strip(" .,;")
        if len(known) > 1 and written[:1] + written[-1:] == "()" and written[1:-1] in known:
            # A figure in round brackets that is the number of one of the charts.
            fault = Fault("item-of-one-chart", *item.tail[-1], {"written": written})
            return replace(item, faults=[*item.faults, fault])
        return item
    return replace(item, tail=item.tail[:-1]) if chart in named else None


def _named(words: str) -> set[str]:
    """The charts that a bracket holds and nothing else; empty for other words."""
    inner = words.strip(" .,;)")
    # A figure in round brackets may be the height of what stands before it.
    if inner[:1] + inner[-1:] != "[]":
        return set()
    if any(part.kind not in _PARTS for part in read_parts(inner)):
        return set()
    return _numbers(inner)


def _numbers(words: str) -> set[str]:
    return {part.text for part in read_parts(words) if part.kind == "CHART_NUMBER"}
