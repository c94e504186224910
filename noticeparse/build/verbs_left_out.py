"""Items without a verb among others that each state their own: `2.  light P` between commands.

Below a heading a verb is carried down, and nothing is lost; where every other number of a list
has its verb, that of the one may be (common practice, no published source).
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.build.extents import over
from noticeparse.context import Context
from noticeparse.layout.drafts import Item

_FEWEST = 2
"""Numbered items that state their verb."""
_ASKS = re.compile(r"(?:please|kindly)\b", re.IGNORECASE)


def tell_verbs_left_out(context: Context, items: Sequence[Item]) -> None:
    """Warn of the one numbered item without a verb of its own, and of a request for nothing."""
    numbered = [item for item in items if item.label is not None and item.label.isdigit()]
    without = [item for item in numbered if item.verb is not None and item.verb_piece is None]
    stated = len([item for item in numbered if _has_own(item)])
    # `1. Insert: (a) …` heads a list, and the numbers below it go on with that.
    is_lone = len(without) == 1 and stated >= _FEWEST and stated == len(numbered) - 1
    asking = [item for item in items if item.verb_piece is None and _asks(context, item)]
    for item in [*(without if is_lone else ()), *asking]:
        item.faults.append(over(context, item, "verb-left-out"))


def _has_own(item: Item) -> bool:
    """Whether the verb of a numbered item stands behind its number, and not above the list."""
    verb, number = item.verb_piece, item.label_piece
    return verb is not None and number is not None and number[0] < verb[0]


def _asks(context: Context, item: Item) -> bool:
    """Whether the words of an item ask for something, and do not say what: `Please the rock`."""
    return bool(item.words) and _ASKS.match(context.text, item.words[0][0]) is not None
