"""Items whose words name some of the charts that they stand under, in brackets.

`Delete rock (905) P` and `Insert wreck P (904: with depth 12m)` under charts 904 and 905: what is
said of one chart is not for the other, and the items are held back.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence, Set

from noticeparse.build.extents import item_extent, quoting
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.layout.drafts import Item, Piece
from noticeparse.stretch import gather, unquoted

_NUMBER = r"[A-Z]{0,3}[0-9]{1,6}[A-Z]?"
_BRACKET = re.compile(
    r"[(\[] ?"
    r"(?P<lead>(?:(?:only|not|except|as) )?(?:(?:for|on|in|of) )?(?:the )?(?:ch(?:art|t)s? )?)"
    rf"(?P<charts>{_NUMBER}(?:(?:, ?| and |, and | ?& ?| ?/ ?){_NUMBER}){{0,8}})"
    r"(?![0-9A-Za-z.'°/])(?P<rest>[^()\[\]\n]{0,60})",
    re.IGNORECASE,
)
_ONLY = re.compile(r"[ ,]*(?:only|alone)?[ .)\]]*")
_SHORTEST = 3
"""Figures of a chart that stands in a bracket without a word for one; fewer may be a height."""


def hold_back_of_charts(context: Context, sections: Sequence[Section], known: Set[str]) -> None:
    """Give an error to items of which something is said for some of the known charts alone."""
    if len(known) < 2:
        return
    items = {id(item): item for section in sections for item in section.items}
    ordered = sorted(items.values(), key=item_extent)
    for at, item in enumerate(ordered):
        for piece, is_first in _told(context, item, known):
            before = ordered[at - 1] if at and is_first else None
            for one in (item, before):
                # `wreck P (in 905, Q)` says where the wreck is on one of the charts.
                if one is not None and not any(f.code == "item-of-one-chart" for f in one.faults):
                    one.faults.append(quoting(context, "item-of-one-chart", piece))


def _told(context: Context, item: Item, known: Set[str]) -> Iterator[tuple[Piece, bool]]:
    """The brackets that name some charts, and whether they open the words of the item."""
    for pieces in (item.words, item.tail):
        words = gather(context.text, pieces)
        if "(" not in words.text and "[" not in words.text:
            continue
        for found in _BRACKET.finditer(unquoted(words.text)):
            named = set(re.findall(_NUMBER, found["charts"].upper()))
            if not named <= known or (named == known and _ONLY.fullmatch(found["rest"])):
                continue
            if pieces is item.tail and found[0][0] == "[" and not found["rest"].strip():
                # `P [612]`: the items are given to the charts that stand so behind them.
                continue
            if not found["lead"] and min(map(len, named)) < _SHORTEST:
                continue
            opens = pieces is item.words and not words.text[: found.start()].strip()
            yield words.extent(found.span()), opens
