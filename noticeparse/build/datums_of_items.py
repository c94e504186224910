"""Datums named with the positions of an item: `wreck P [Q on ED50]`, `P (WGS84), Q (NAD27)`.

A position on another datum than that of its chart lies up to hundreds of metres off.  The record
states one datum for a chart and none for a position: an item on another one is held back, and what
is named where the chart states none is told (common practice, no published source).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import zip_longest
from typing import NamedTuple

from noticeparse.build.extents import item_extent, quoting
from noticeparse.context import Context
from noticeparse.layout.drafts import Item, Piece
from noticeparse.rare import Rare
from noticeparse.readers.head_values import read_datum
from noticeparse.readers.heads import read_parts
from noticeparse.records.chart import Datum
from noticeparse.stretch import unquoted

_MAY_TELL = re.compile(
    r"[A-Za-z]{2,7}[ -]?[0-9]{2,4}(?![0-9])|\b(?:datum|geodetic|[Tt]okyo|[Pp]ulkovo)\b",
    re.IGNORECASE,
)
_OTHER = Rare(
    r"\b(?:old|other|another|former|previous|earlier|different|european|national)[ \n]datum\b",
    "another different earlier european former national old other previous",
    re.IGNORECASE,
)
_NAME = re.compile(r"[0-9]|datum|geodetic", re.IGNORECASE)
"""What tells a datum from a place of its name: `Tokyo Maru`."""
_NEXT_CHART = re.compile(r"\bcharts?\b", re.IGNORECASE)


class _Told(NamedTuple):
    item: Item
    at: Piece
    name: str


def tell_datums(context: Context, items: Sequence[Item], own: Datum | None) -> None:
    """Give the items of a chart section, in text order, a fault where they name another datum."""
    told = [
        one
        for item, below in zip_longest(items, items[1:])
        for one in _named(context, item, below)
    ]
    names = {one.name for one in told} | ({own.name} if own is not None else set())
    for one in told:
        if own is not None and one.name == own.name:
            continue
        other = (
            own.name
            if own is not None
            else next((n for n in sorted(names) if n != one.name), None)
        )
        if other is not None:
            fault = quoting(context, "position-datum-differs", one.at, datum=other)
        else:
            fault = quoting(context, "position-datum-not-kept", one.at)
        if not any(had.code == fault.code for had in one.item.faults):
            one.item.faults.append(fault)


def _named(context: Context, item: Item, below: Item | None) -> Iterator[_Told]:
    """The datums that stand on the lines of an item."""
    if item.verb is None or not item.has_place:
        return
    start, last = item_extent(item)
    end = context.text.find("\n", last)
    end = len(context.text) if end < 0 else end
    if below is not None:
        end = max(last, min(end, item_extent(below)[0]))
    chart = _NEXT_CHART.search(context.text, last, end)
    words = unquoted(context.text[start : chart.start() if chart else end])
    if _MAY_TELL.search(words) is None:
        return
    for part in read_parts(words):
        if part.kind == "DATUM" and _NAME.search(part.text):
            name = part.text.strip("() ")
            first = start + words.index(name, part.start)
            yield _Told(item, (first, first + len(name)), read_datum(name).name)
    for found in _OTHER.finditer(words):
        yield _Told(item, (start + found.start(), start + found.end()), found.group().lower())
