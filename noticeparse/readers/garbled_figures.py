"""Tells where the figure of a depth, clearance or height breaks off: `14,x m`, `10.a m`, `5.9 x`.

What stands behind a figure without blank or sign is of the figure, and where it is no figure and
no unit, the value that was read before it is none.  In come the items of a phrase; out come faults
(common practice, no published source).
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.words import Item

_AMOUNTS = frozenset(("depth", "measure", "clearance", "height"))
_UNIT = r"(?:m|met(?:re|er)s?|mtrs?|ft|feet|foot|fms?|fath(?:om)?s?)"
_HAS_UNIT = re.compile(rf"[-0-9½¼¾ (]{_UNIT}\.?\)?$", re.IGNORECASE)
_DECIMALS_LOST = re.compile(
    rf"[.,·](?!SD|N|S|E|W)[A-Za-z?*#]{{1,2}}(?![A-Za-z.(])(?: ?{_UNIT}(?![A-Za-z]))?"
    rf"|[.,·][^\s0-9A-Za-z]{{1,2}} ?{_UNIT}(?![A-Za-z])"
    rf"|[?*#%&@$~]{{1,3}}[0-9A-Za-z]{{0,4}}(?: ?{_UNIT}(?![A-Za-z]))?",
)
"""Behind a figure: a point with a letter or sign in the place of the next figure."""
# In capitals it may be a side of the compass or the nature of the bottom.
_UNIT_LOST = re.compile(r" ?[b-eg-ln-z](?![A-Za-z0-9.°'(-])")
"""Behind a figure: a letter where the unit stands; `f` is told elsewhere."""
_OTHER_FIGURE = re.compile(
    rf"(?:/|[ ]?\()[0-9]{{1,3}}(?:[.,][0-9]{{1,2}})?\)?[ ]?{_UNIT}(?![A-Za-z])", re.IGNORECASE
)
"""Behind a figure without unit: another one with it, `9/9.9 m`, `1.1 (2.2) m`."""
_SECOND_UNIT = re.compile(rf" ?\(?{_UNIT}(?![A-Za-z])\)?", re.IGNORECASE)


def garbled_figures(text: str, items: tuple[Item, ...]) -> Iterator[Fault]:
    """Faults of figures with something behind them that is no part of an amount."""
    for item in items:
        if item.role in _AMOUNTS and any(map(str.isdigit, item.text)):
            yield from _behind(text, item)
    for item, behind in pairwise(items):
        is_next = behind.role == "measure" and not behind.bracketed
        gap = text[item.end : behind.start]
        if item.role in ("depth", "clearance") and is_next and gap and not gap.strip(" "):
            # `least depth 1 2.8 m`, `least depth 15 15.6 m`: one figure in two pieces, or two.
            yield _fault("depth-several", text, item.start, behind.end)


def _behind(text: str, item: Item) -> Iterator[Fault]:
    has_unit = _HAS_UNIT.search(item.text) is not None
    if has_unit:
        second = _SECOND_UNIT.match(text, item.end)
        if second is not None:
            yield _fault("depth-unit-unread", text, item.start, second.end())
        return
    other = _OTHER_FIGURE.match(text, item.end)
    if other is not None:
        yield _fault("depth-several", text, item.start, other.end())
        return
    lost = _DECIMALS_LOST.match(text, item.end)
    if lost is not None:
        yield _fault("depth-unread", text, item.start, lost.end())
        return
    letter = _UNIT_LOST.match(text, item.end)
    if letter is not None:
        yield _fault("depth-unit-unread", text, item.start, letter.end())


def _fault(code: str, text: str, start: int, end: int) -> Fault:
    return Fault(code, start, end, {"written": shown(text[start:end])})
