"""Places in brackets before further words of their thing: `light, Fl.WRG.4s (P), sectors W …`.

The brackets are of the places alone: what stands behind them goes on with what stands in front.
"""

from __future__ import annotations

from collections.abc import Iterable

from noticeparse.layout.drafts import Item


def settle_brackets(text: str, items: Iterable[Item]) -> None:
    """Take the brackets around the places of items off the words on both sides."""
    for item in items:
        if not (item.words and item.tail and item.has_place):
            continue
        start, end = item.words[-1]
        at, stop = item.tail[0]
        before, behind = text[start:end].rstrip(), text[at:stop]
        # A mark alone behind the places is none of the words of the thing.
        if not (before.endswith("(") and behind.startswith(")") and behind.strip(") ,.;")):
            continue
        item.words[-1] = (start, start + len(before[:-1].rstrip()))
        item.tail[0] = (at + 1, stop)
        item.words = [one for one in item.words if one[0] < one[1]]
