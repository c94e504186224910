"""A second thing that nobody knows, joined to one that is read: `wreck and frobnicator`.

In come the items of a phrase; out come faults.  The record holds the wreck alone, and what was
joined to it would be lost without a word.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.told import RELATIONS, Told
from noticeparse.readers.words import Item
from noticeparse.vocabulary import is_known_word

_JOINT = re.compile(
    r"(?:and|&|plus|with|also)(?: (?:an?|the|its|their|some|new|also|associated|accompanying"
    r"|adjacent|surrounding)){0,3}",
    re.IGNORECASE,
)
_LINKING = RELATIONS | {"between", "from", "to", "of", "for", "joining", "connecting"}
"""Words behind which `and` joins two places or two names, and no two things."""
_GROUND = frozenset("sand shell shells clay gravel stone stones pebbles weed coral".split())
"""What the ground is of: `boulders, sand and shells`."""
_LEAST = 4
"""Letters of a word that may be the noun of a thing."""


def unknown_things(text: str, told: Told, kind: str) -> Iterator[Fault]:
    """A fault of the first words beside a joint that may be another thing."""
    head, items = told.head, told.items
    if head is None or kind == "nature_of_seabed":
        return
    for at, (before, item) in enumerate(pairwise(items), start=1):
        is_joint = _JOINT.fullmatch(text[before.end : item.start].strip()) is not None
        if not is_joint and not (
            before.role in ("plain", "unknown", "other") and _ends_joint(text, before, item)
        ):
            continue
        first = at - (1 if is_joint else 2)
        if any(one.text.lower() in _LINKING for one in items[: max(first, 0)]):
            return
        if item.start == head.start:
            run: Sequence[Item] = items[max(first, 0) : first + 1]
        else:
            run = _run(text, items[at:]) if item.start >= head.end else ()
        if _is_strange(run):
            start, end = run[0].start, run[-1].end
            yield Fault("feature-words-unread", start, end, {"written": shown(text[start:end])})
            return


def _ends_joint(text: str, before: Item, item: Item) -> bool:
    """Whether an item is a joint, with an article perhaps between it and the next."""
    return _JOINT.fullmatch(" ".join(text[before.start : item.start].split())) is not None


def _run(text: str, items: Sequence[Item]) -> Sequence[Item]:
    """The first of some items, up to a comma, a bracket or another joint."""
    for at, (one, behind) in enumerate(pairwise(items), start=1):
        gap = text[one.end : behind.start]
        if behind.bracketed or any(sign in gap for sign in ",;:()") or _JOINT.match(behind.text):
            return items[:at]
    return items


def _is_strange(run: Sequence[Item]) -> bool:
    """Whether items are words of something that nobody knows."""
    is_plain = all(one.role in ("unknown", "plain") and not one.bracketed for one in run)
    return is_plain and any(_is_noun(one.text) for one in run)


def _is_noun(word: str) -> bool:
    """Whether a word may name a thing; what has one capital is a name."""
    if len(word) < _LEAST or word.istitle():
        return False
    return word.lower() not in _GROUND and not is_known_word(word)
