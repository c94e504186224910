"""An amount told a second time in another unit: `depth 9.1m (30ft)`, `5 fathoms (9.1m)`.

In come the items of a phrase; out come those without the second amounts that say the same within
their rounding, and a fault for each that says something else.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.numbers import FATHOM_M, FOOT_M
from noticeparse.readers.amounts import shown
from noticeparse.readers.depths import read_depth
from noticeparse.readers.words import Item

_FIRST = frozenset(("depth", "clearance", "height", "measure"))
_BRACKET = re.compile(r" ?[(\[] ?")
_END = re.compile(r" ?[)\]]")
_STROKE = re.compile(r" ?/ ?")
_WRITTEN = re.compile(
    r"(?P<figure>[0-9]{1,5}(?:[.,][0-9]{1,2})?|[0-9]{1,4} ?[½¼¾]) ?-?"
    r"(?P<unit>m|met(?:re|er)s?|ft|feet|foot|fms?|fath(?:om)?s?)\.?$",
    re.IGNORECASE,
)
_BOTH = re.compile(r"(?P<one>[^()\[\]/]{1,40}?)(?: ?[(\[] ?(?P<other>[^()\[\]]{1,20})[)\]])\.?")
_UNITS = {"m": Decimal(1), "ft": FOOT_M, "fm": FATHOM_M}


class _Amount(NamedTuple):
    """An amount in metres, between which bounds the figure as written may lie, and its unit."""

    least: Decimal
    most: Decimal
    unit: str


def without_second_units(
    text: str, items: Sequence[Item]
) -> tuple[tuple[Item, ...], tuple[Fault, ...]]:
    """The items without the amounts told again, and the faults of those that contradict."""
    again: set[int] = set()
    faults: list[Fault] = []
    told = [item for item in items if item.role != "other"]
    for item, behind in pairwise(told):
        if (
            item.role not in _FIRST
            or behind.role != "measure"
            or not _is_beside(text, item, behind)
        ):
            continue
        one, other = _amount(item.text), _amount(behind.text)
        if one is None or other is None or one.unit == other.unit:
            continue
        again.add(behind.start)
        if one.most < other.least or other.most < one.least:
            written = {"written": shown(text[item.start : behind.end])}
            faults.append(Fault("depth-several", item.start, behind.end, written))
    return tuple(item for item in items if item.start not in again), tuple(faults)


def without_second_unit(words: str) -> tuple[str, tuple[Fault, ...]]:
    """One amount in the first of its two units, `9.1m (30ft)`, and a fault of two that differ."""
    both = _BOTH.fullmatch(words.strip())
    one, other = (_amount(both["one"]), _amount(both["other"])) if both else (None, None)
    if both is None or one is None or other is None or one.unit == other.unit:
        return words, ()
    if one.most < other.least or other.most < one.least:
        written = {"written": shown(words)}
        return words, (Fault("depth-several", 0, len(words), written),)
    return words[: words.index(both["one"]) + len(both["one"])], ()


def _is_beside(text: str, item: Item, behind: Item) -> bool:
    """Whether an amount stands alone in a bracket behind another, or behind a stroke."""
    gap = text[item.end : behind.start]
    if _BRACKET.fullmatch(gap) is not None:
        return _END.match(text, behind.end) is not None
    return _STROKE.fullmatch(gap) is not None


def _amount(words: str) -> _Amount | None:
    """The amount at the end of some words; feet may have been cut off and not rounded."""
    written = _WRITTEN.search(words)
    value = read_depth(words[written.start() :]).depth if written is not None else None
    if written is None or value is None or value.value_m is None:
        return None
    unit = next(name for name in ("ft", "fm", "m") if _is_in(written["unit"].lower(), name))
    figure = re.split("[.,]", written["figure"])
    step = _UNITS[unit] / (10 ** len(figure[1]) if len(figure) > 1 else 1)
    step = step / 4 if written["figure"][-1] in "½¼¾" else step
    above = step if unit == "ft" else step / 2
    return _Amount(value.value_m - step / 2, value.value_m + above, unit)


def _is_in(written: str, unit: str) -> bool:
    return written.startswith({"ft": ("ft", "fe", "fo"), "fm": ("fm", "fath"), "m": ("m",)}[unit])
