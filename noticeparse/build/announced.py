"""Positions that a list names for the items below: `Positions (1) P`, `Insert wreck at (1)`."""

from __future__ import annotations

from noticeparse.context import Context
from noticeparse.layout.drafts import Item
from noticeparse.readers.places import is_connector
from noticeparse.stretch import gather

# What may stand between a list of positions and what is to be done at them.
_TITLES = frozenset("action actions changes corrections details matter particulars text".split())


def announced_letters(context: Context, item: Item) -> tuple[str, ...]:
    """The letters of `Positions (1) P (2) Q`, to which later items refer; else none."""
    places = [place for group in item.groups for place in group.places]
    words = gather(context.text, item.words).text.strip(" :.,")
    behind = gather(context.text, item.tail).text.strip(" :.,").lower()
    if not is_connector(words) or not words.lower().startswith("pos"):
        return ()
    if behind and behind not in _TITLES:
        return ()
    letters = tuple(place.label for place in places if place.label is not None)
    return letters if len(letters) == len(places) else ()
