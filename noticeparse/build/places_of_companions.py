"""Places that may be those of a thing named beside another: `buoy marking wreck (P), in Q`.

The wreck has a place of its own, and the buoy has one.  Which of them is meant is told by brackets
and commas alone, and a record holds the places of one thing; such items are held back.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.build.extents import over, quoting
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.line.elements import Element
from noticeparse.rare import Rare
from noticeparse.readers.places import read_phrase
from noticeparse.readers.verbs import Verb
from noticeparse.records.feature import Feature
from noticeparse.records.geometry import Geometry
from noticeparse.vocabulary import primitives

_BESIDE = Rare(
    r"\b(?:marking|marks|to mark|which marks|guarding|near|beside|alongside|off|over|at|on"
    r"|opposite|adjacent to) (?:the |an? )?[^,;()]{3,60}[ ,:(]*(?:in|at|position|[ ,:(])*$",
    "adjacent alongside at beside guarding mark near off on opposite over which",
    re.IGNORECASE,
)
_MARKING = Rare(
    r"\b(?:mark(?:s|ing)?|guarding|near|off|opposite|adjacent to) [^,;()]{3,60}[ ,:]*$",
    "adjacent guarding mark near off opposite",
    re.IGNORECASE,
)
"""Words behind which a thing has a place of its own, and is not what the first stands on."""
_BETWEEN_NAMES = Rare(
    r"\bbetween (?:the )?(?:[Nn]os?\b\.? ?[0-9]{1,3}[A-Z]?|[A-Z]{0,3}[0-9]{1,3}|[A-Z]"
    r"|\"[^\"]{1,40}\"|[A-Z][a-z]+(?: [A-Z][a-z]+)*)[ ,(]*$",
    "between",
)


def places_of_companions(
    context: Context, item: Item, verb: Verb, feature: Feature, geometry: Geometry
) -> Iterator[Fault]:
    """The fault of a place that may be that of another thing than the item is about."""
    places = [place.element for place in item.places]
    if not places or not item.words:
        return
    first = places[0]
    words = context.joined([piece for piece in item.words if piece[1] <= first.start])
    is_point = primitives(feature.kind).isdisjoint({"L", "A"})
    if is_point and _BETWEEN_NAMES.search(words):
        # `all buoys between No 1 (P) and No 7 (Q)`: those between have no places here.
        yield over(context, item, "relation-unclear")
    if len(places) < 2 or geometry.shape not in ("point", "points"):
        return
    in_brackets = _stands_in_brackets(context.text, first) and not all(
        _stands_in_brackets(context.text, one) for one in places[1:]
    )
    if geometry.relation in ("close", "vicinity") and verb != "move":
        if any(_leads_to_own(context, item, at, in_brackets) for at in range(1, len(item.groups))):
            # `close E of wreck (P), in Q`
            yield over(context, item, "relation-unclear")
        return
    is_one = not _are_many(words) and _MARKING.search(words) is not None
    is_doubtful = in_brackets or (is_one and geometry.relation == "at" and verb != "move")
    if is_doubtful and _ends_beside(words, feature):
        yield quoting(context, "place-of-another", (first.start, first.end))


def _stands_in_brackets(text: str, place: Element) -> bool:
    """Whether a place has brackets around it: `wreck (P)`."""
    start, end = place.start, place.end
    while start > 0 and text[start - 1].isspace():
        start -= 1
    while end < len(text) and text[end].isspace():
        end += 1
    return text[start - 1 : start] == "(" and text[end : end + 1] == ")"


def _leads_to_own(context: Context, item: Item, at: int, in_brackets: bool) -> bool:
    """Whether words before a later place lead to one that is the thing's own: `, in Q`."""
    parts = read_phrase(context.joined(item.groups[at].lead).lstrip(" ,;)"))
    return any(part.kind == "at" for part in (parts if in_brackets else parts[:1]))


def _ends_beside(words: str, feature: Feature) -> bool:
    """Whether the words before the first place end with what goes with the thing."""
    found = _BESIDE.search(words)
    if found is None or not feature.companions:
        return False
    named = feature.companions[-1].feature.text
    return named.lower() in " ".join(found.group().split()).lower()


def _are_many(words: str) -> bool:
    """Whether the first noun is of several: `buoys marking the channel`."""
    before = re.split(r"[,;(]| (?:marking|near|off|on|at|over)\b", words.strip())[0]
    return before.lower().rstrip().endswith("s")
