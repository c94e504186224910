"""A light that stands last, behind the names of the place and of what it stands on.

In `Corvane Head, head of mole, light` the mole tells where the light is, as lists of lights name
them: the general place first, the thing last.  In come the items of the segments between commas
with the one that names the kind; out comes the light where it is the thing, else what came.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.readers.words import Item
from noticeparse.vocabulary import kinds

_PLACES = frozenset(("SLCONS", "UWTROC", "LNDARE", "LNDRGN", "LNDELV"))
"""Classes of what lights stand on, and are named after."""
_ENDS = frozenset(("head", "end", "corner", "elbow", "root", "extremity"))
_OF_LIGHTS = frozenset(("light", "light_words", "sectors", "part"))


def light_behind_place(
    segments: Sequence[Sequence[Item]], head: Item | None, run: Sequence[Item]
) -> tuple[Item | None, Sequence[Item]]:
    """The light that names the kind, and its segment; `pier, light, Fl.R.2s` stays a pier."""
    if head is None or kinds()[head.value].s57 not in _PLACES:
        return head, run
    at = next((at for at, one in enumerate(segments) if head in one), None)
    if at is None or not _is_named(segments[: at + 1], head):
        return head, run
    behind = segments[at + 1] if at + 1 < len(segments) else ()
    light = _lone_light(behind)
    return (head, run) if light is None else (light, behind)


def _is_named(segments: Sequence[Sequence[Item]], head: Item) -> bool:
    """Whether a place is named before what carries the light, or its part, or it has a name.

    `Brack Mole` is a name, and `Stone pier` may be what is new there.
    """
    ahead = [item for one in segments[:-1] for item in one]
    if any(item.role == "kind" for item in ahead):
        return False
    beside = [item for item in segments[-1] if item is not head]
    if any(item.text.lower() == "new" for item in beside):
        return False
    is_part = any(item.text.lower() in _ENDS for item in beside)
    is_proper = head.text[:1].isupper() and head.text[1:].islower()
    return is_part or any(map(_is_name, [*ahead, *(beside if is_proper else ())]))


def _is_name(item: Item) -> bool:
    return item.role in ("unknown", "proper") and item.text[:1].isupper()


def _lone_light(segment: Sequence[Item]) -> Item | None:
    """The word for a light in a segment that holds nothing besides but its character."""
    named = [item for item in segment if item.role == "kind"]
    others = [item for item in segment if item.role not in _OF_LIGHTS and item not in named]
    if len(named) != 1 or others or kinds()[named[0].value].s57 != "LIGHTS":
        return None
    is_one = not named[0].text.lower().endswith("s")
    return named[0] if is_one and not named[0].bracketed else None
