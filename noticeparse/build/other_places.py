"""Words that lead to a later place of an item as to that of another thing.

`… in P, near the wreck in Q`, `… in P instead of Q`: the second place is not the item's own.
Words that only link places, and those of a relation, lead to its own.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from noticeparse.build.extents import quoting, within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Group, Item
from noticeparse.layout.item.listed_places import links_places
from noticeparse.readers.places import Part, read_phrase
from noticeparse.readers.verbs import Verb
from noticeparse.stretch import gather

_SPAN = frozenset({"between", "joining", "from_", "along"})
"""Relations of a line: `between the light in P and the pier in Q` has both as its ends."""


_LINKING = frozenset(
    "also another again as both further one others respectively second similarly too well".split()
)
"""Words that add a place to those of the same thing: `and another in Q`, `as well as in Q`."""


def places_of_others(context: Context, item: Item, verb: Verb) -> Iterator[Fault]:
    """The words before a place behind the first that name another thing, or deny the place."""
    for before, behind in (pair for group in item.groups for pair in pairwise(group.places)):
        # `P = Q`: one place, told in two ways.
        if context.text[before.element.end : behind.element.start].strip() == "=":
            start, end = behind.element.start, behind.element.end
            yield quoting(context, "place-of-another", (start, end))
    if len(item.groups) < 2:
        return
    kinds: set[str] = {part.kind for part in read_phrase(context.joined(_leads(item)))}
    for group in item.groups[1:]:
        words = gather(context.text, group.lead)
        parts = read_phrase(words.text)
        told = next((part for part in parts if _names(words.text, part)), None)
        if told is None or group.role is not None or not group.places:
            continue
        if any(part.kind == "offset" for part in parts) or _ends(words.text, parts, kinds, verb):
            continue
        yield within(context, "place-of-another", words, (told.start, told.end))


def _leads(item: Item) -> list[tuple[int, int]]:
    first: Group = item.groups[0]
    return [*item.words, *first.lead]


def _names(text: str, part: Part) -> bool:
    words = text[part.start : part.end].lower().replace(",", " ").replace("a second", "second")
    said = [word for word in words.split() if any(char.isalpha() for char in word)]
    return part.kind == "words" and not _LINKING.issuperset(said)


def _ends(text: str, parts: Sequence[Part], kinds: set[str], verb: Verb) -> bool:
    """Whether words lead to the other end of a line, or to where a thing is moved."""
    opens = next((part for part in parts if part.kind != "separator"), None)
    if verb == "move":
        return opens is not None and opens.kind == "to"
    said = text.lower().strip(" ,:")
    links = said.startswith("and ") or (opens is not None and opens.kind == "to")
    if said.startswith("with"):
        # `joining P with position Q`; `with the light in Q` is said of another thing.
        links = links_places(said) and "joining" in kinds
    return links and not _SPAN.isdisjoint(kinds)
