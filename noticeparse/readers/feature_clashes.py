"""Tells where one phrase names two features, or states one value twice in unlike words.

In come the items of a phrase with its kind settled; out come faults.  A record holds one kind, one
shape and one topmark, so that the second would be lost without a word.  What goes with a feature
(`with topmark`, `on the pier`) has been taken for a companion before.
"""

from __future__ import annotations

import re
from bisect import bisect_left
from collections.abc import Iterator, Sequence
from itertools import pairwise
from operator import attrgetter

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.told import RELATIONS, Told
from noticeparse.readers.words import Item
from noticeparse.vocabulary import DANGERS, kinds

_JOINTS = frozenset(("and", "or", "&", "/"))
_QUARTERS = frozenset(("n", "e", "s", "w", "north", "east", "south", "west"))
_OF_A_PART = frozenset(("kind", "light", "light_words", "drawing", "topmark", "sound", "racon"))
_LIGHTS = frozenset(("light", "light_words"))
_PART_WORDS = frozenset(("name", "number", "character", "structure", "colour", "depth", "part"))
_BUILT = frozenset(
    ("LNDMRK", "PILPNT", "DAYMAR", "OFSPLF", "PYLONS", "BUISGL", "SLCONS", "LITFLT", "LITVES")
)
"""What carries a light: behind a light it describes the structure."""
_CATEGORISED = frozenset("BOYLAT BOYCAR BOYISD BOYSAW BCNLAT BCNCAR BCNISD BCNSAW".split())
"""Marks that tell a ship on which side to pass."""


def clashes(text: str, told: Told, kind: str) -> Iterator[Fault]:
    """Faults of two kinds, two quarters of a cardinal mark, two shapes and two topmarks."""
    yield from _second_kinds(text, told)
    yield from _wordings(text, told)
    yield from _parts_alone(text, told)
    yield from _second_quarters(told, kind)
    yield from _other_guesses(text, told)
    known = kinds().get(kind)
    if known is not None and known.form:
        yield from _second_shapes(told, "BOYSHP" if known.form == "buoy" else "BCNSHP")
    yield from _unlike([item for item in told.roles("topmark") if item.value])


def stated_twice(item: Item) -> Fault:
    """The fault of a value that stands for the second time, unlike the first."""
    return _fault("feature-stated-twice", item)


def _fault(code: str, item: Item) -> Fault:
    return Fault(code, item.start, item.end, {"written": shown(item.text)})


def _second_kinds(text: str, told: Told) -> Iterator[Fault]:
    items = [item for item in told.items if not item.bracketed]
    named = [item for item in items if item.role == "kind" and not kinds()[item.value].part]
    if told.head is not None and told.first_words and told.first_words[0].role == "depth":
        yield from _beside_depth(text, told.items, told.head)
    for first, second in pairwise(named):
        is_two = _are_two_marks(first, second) or _begins_anew(text, items, first, second)
        if is_two or _is_name_like(text, first, second) or _is_for(text, first, second):
            yield _fault("feature-kinds-several", second)
        elif second is named[-1] and _is_structure(text, first, second):
            continue
        elif _is_other(first, second):
            code = _relation(text, items, first, second)
            if code is not None:
                yield _fault(code, second)


_FOR = re.compile(r"[ ,]{1,2}for (?:the |an? )?(?:[a-z]+ )?", re.IGNORECASE)


def _is_for(text: str, first: Item, second: Item) -> bool:
    """Whether one thing is for another that is charted too: `light for buoy`, `buoy for wreck`.

    It marks the second, or takes its place.  `berth for ferries` tells only its use.
    """
    one, other = kinds()[first.value], kinds()[second.value]
    are_charted = all(k.form or k.s57 in DANGERS | {"LIGHTS"} for k in (one, other))
    return are_charted and _FOR.fullmatch(text, first.end, second.start) is not None


_OF_BOTTOM = frozenset(("SOUNDG", "DEPCNT", "SBDARE"))


def _beside_depth(text: str, items: Sequence[Item], head: Item) -> Iterator[Fault]:
    """`depth 5m, pile`, `depth 5m (wreck)`: the thing behind a depth, or one that lies beside it.

    A danger that a comma parts from its depth has been taken for the thing before.
    """
    depth = next((item for item in items if item.role == "depth"), None)
    if depth is None or (head.start > depth.end and ";" not in text[depth.end : head.start]):
        return
    for before, item in pairwise(items):
        known = kinds()[item.value] if item.role == "kind" and item.start >= depth.end else None
        if known is None or known.part or known.s57 in _OF_BOTTOM:
            continue
        is_parted = any(sign in text[depth.end : item.start] for sign in ",;(")
        if is_parted and before.text.lower() not in RELATIONS:
            yield _fault("feature-kinds-several" if known.form else "feature-kind-apposed", item)
        return


_GUESS = re.compile(
    r"[ ,;(]{1,3}(?:or|possibly|perhaps|probably|maybe|may be|might be|could be|else)"
    r"(?: (?:an?|the))?(?: [a-z]+)? ",
    re.IGNORECASE,
)


def _other_guesses(text: str, told: Told) -> Iterator[Fault]:
    """`wreck (or rock)`, `wreck, possibly rock`: what it is is not sure; the record has one."""
    named = [item for item in told.items if item.role == "kind" and not kinds()[item.value].part]
    for first, second in pairwise(named):
        is_guess = _GUESS.fullmatch(text, first.end, second.start) is not None
        if is_guess and first.value != second.value:
            yield _fault("feature-kinds-several", second)


def _wordings(text: str, told: Told) -> Iterator[Fault]:
    """`circle, legend Anchorage`: what is written on the chart was read as the thing."""
    head = told.head
    for item in told.items:
        is_legend = item.role == "kind" and item.value in ("legend", "note")
        if not is_legend or head is None or head.start < item.end:
            continue
        if not text[item.end : head.start].strip(" :"):
            yield _fault("feature-kinds-several", head)


def _is_name_like(text: str, first: Item, second: Item) -> bool:
    """`Light Stack`, `Buoy Fairway`: the second may be the name of the first."""
    words = text[first.start : second.end].split()
    if second.value in ("light", "tower"):
        return False
    marks = ("Light", "Buoy", "Beacon")
    return (
        len(words) > 1 and first.text in marks and words[1][1:2].islower() and words[1].istitle()
    )


def _is_other(first: Item, second: Item) -> bool:
    one, other = kinds()[first.value], kinds()[second.value]
    if one.form and one.form == other.form:
        return False
    # A light, then its structure; a mark, then its light.
    if "LIGHTS" in (one.s57, other.s57) or one.lit:
        built = other if one.s57 == "LIGHTS" or one.lit else one
        if built.form or built.s57 in _BUILT or other.s57 == "LIGHTS":
            return False
    return bool(one.s57 or one.form) and (one.s57 or one.form) != (other.s57 or other.form)


_STRUCTURE = re.compile(
    r"[^;]{0,80}, ?(?:(?:white|black|red|green|yellow|grey|square|round) ){0,2}"
    r"(?:wood(?:en)?|timber|steel|iron|metal|concrete|stone|masonry|brick|lattice|tubular) "
    r"(?:lattice |framework )?(?:post|pile|column|tower|pillar|pole)"
)


def _is_structure(text: str, first: Item, second: Item) -> bool:
    """Whether the second is what a beacon is built as: `port-hand beacon, wooden post`."""
    if kinds()[first.value].form != "beacon" or kinds()[second.value].s57 not in _BUILT:
        return False
    return _STRUCTURE.fullmatch(text[first.end : second.end].lower()) is not None


def _are_two_marks(first: Item, second: Item) -> bool:
    """Whether the words name marks of two meanings: `port hand buoy starboard-hand buoy`."""
    one, other = kinds()[first.value], kinds()[second.value]
    both_tell = one.s57 in _CATEGORISED and other.s57 in _CATEGORISED
    return both_tell and (one.s57, one.attributes) != (other.s57, other.attributes)


def _begins_anew(text: str, items: Sequence[Item], first: Item, second: Item) -> bool:
    """Whether a noun stands again for a second thing: `light-buoy Fl.R.4s; light-buoy Fl.G.4s`.

    A mark behind a comma says more of the first, unless each of them has a light of its own.
    """
    one, other = kinds()[first.value], kinds()[second.value]
    if first.value != second.value and not (one.form and other.form):
        return False
    if one.s57 == "LIGHTS":
        # The record of a light keeps further ones.
        return False
    between = [item for item in items if first.start <= item.start <= second.start]
    if any(";" in text[a.end : b.start] for a, b in pairwise(between)):
        return True
    lights = [item.start for item in items if item.role in _LIGHTS]
    own = any(first.start < at < second.start for at in lights)
    return bool(one.form) and own and any(at > second.start for at in lights)


def _relation(text: str, items: Sequence[Item], first: Item, second: Item) -> str | None:
    """How the second kind stands to the first; None where a preposition or compound binds them."""
    between = list(items[_place(items, first.end) : _place(items, second.start)])
    while between and (between[-1].role == "colour" or between[-1].value == "adjective"):
        between.pop()
    if between and between[-1].text.lower() in _JOINTS:
        return "feature-kinds-several"
    if between and all(item.role == "numbered" for item in between) and kinds()[second.value].form:
        return "feature-kind-apposed"  # `Fairway No 1 light-buoy`
    end = between[-1].end if between else first.end
    gap = text[end : second.start]
    if any(sign in gap for sign in ",;:"):
        is_mark = kinds()[first.value].form or kinds()[second.value].form
        return "feature-kinds-several" if is_mark else "feature-kind-apposed"
    # `Dangerous wreck Isolated danger buoy`: a capital behind small letters begins anew.
    begins = second.text[:1].isupper() and second.text[1:2].islower()
    behind = text[first.start : end].split()[-1:]
    if not between and begins and behind and behind[0][:1].islower():
        return "feature-kinds-several"
    if _is_passive(between[-2:]) and (kinds()[first.value].form or kinds()[second.value].form):
        return "feature-kinds-several"
    return None


def _place(items: Sequence[Item], start: int) -> int:
    return bisect_left(items, start, key=attrgetter("start"))


def _is_passive(words: Sequence[Item]) -> bool:
    """Whether words tell what is done by the second thing: `buoy replaced by beacon`."""
    ends = [item.text.lower()[-2:] for item in words]
    return ends == ["ed", "by"] and words[0].role == "unknown"


def _parts_alone(text: str, told: Told) -> Iterator[Fault]:
    """`light-buoy (light only)`: what is meant is a part, and not the thing that is read."""
    for part, behind in pairwise(told.items):
        is_part = part.role in _OF_A_PART or part.text.lower() in _PART_WORDS
        if behind.text.lower() == "only" and is_part and part != told.head:
            written = shown(text[part.start : behind.end])
            yield Fault("feature-kinds-several", part.start, behind.end, {"written": written})


def _second_quarters(told: Told, kind: str) -> Iterator[Fault]:
    """`N and S cardinal buoys`, `conical or can buoy`: the first of two is lost."""
    head, items = told.head, told.items
    if head is None:
        return
    at = next((n for n, item in enumerate(items) if item.start == head.start), 0)
    if at < 2 or items[at - 1].text.lower() not in _JOINTS:
        return
    first = items[at - 2]
    quarter = "cardinal" in kind and first.text.lower() in _QUARTERS
    if quarter or (first.role == "shape" and first.value != "adjective"):
        yield _fault("feature-kinds-several", first)


def _second_shapes(told: Told, acronym: str) -> Iterator[Fault]:
    found: int | list[int] | None = None
    for item in told.items:
        if item.sense is None or item.role not in ("kind", "shape") or item.bracketed:
            continue
        code = item.sense.attributes.get(acronym)
        if found is not None and code is not None and code != found:
            yield stated_twice(item)
            return
        found = code if found is None else found


def _unlike(items: Sequence[Item]) -> Iterator[Fault]:
    second = next((item for item in items if item.value != items[0].value), None)
    if second is not None:
        yield stated_twice(second)
