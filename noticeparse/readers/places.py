"""The words before a position: which of them describe the feature and which its place.

`read_phrase` cuts a stretch of words into parts; `split_phrase` finds where the description ends
and the relation to the coming position begins.  Positions themselves are not read here.
"""

from __future__ import annotations

import re
from decimal import Decimal
from functools import cache, lru_cache
from typing import Any, Literal, NamedTuple

from noticeparse import grammar
from noticeparse.readers.offsets import Offset, direction_in, length_nm, read_arc, read_offset
from noticeparse.records.geometry import Arc

PartKind = Literal[
    "words", "separator", "joining", "bounded", "within", "centred", "between", "vicinity",
    "along", "from_", "to", "at", "close", "offset", "radius", "within_of", "arc",
    "bearings", "ring", "counted", "corners",
]  # fmt: skip


class Counted(NamedTuple):
    """One place of several: `corner 2`, `end 1`."""

    is_corner: bool
    """Whether it is that of an area."""
    number: int


class Part(NamedTuple):
    """A part of a phrase and the value it carries, if any; offsets count in the phrase."""

    kind: PartKind
    start: int
    end: int
    value: Any = None


_KINDS: dict[str, PartKind] = {
    "WORDS": "words", "OTHER": "words", "SEPARATOR": "separator", "JOINING": "joining",
    "BOUNDED": "bounded", "WITHIN": "within", "CENTRED": "centred", "BETWEEN": "between",
    "VICINITY": "vicinity", "ALONG": "along", "FROM": "from_", "TO": "to", "AT": "at",
    "CLOSE_TO": "close", "CLOSE_DIRECTION": "close", "DIRECTION_OF": "close",
    "OFFSET": "offset", "RADIUS": "radius", "WITHIN_OF": "within_of",
    "ARC": "arc", "BEARINGS": "bearings", "RING": "ring", "COUNTED": "counted",
    "CORNERS": "corners",
}  # fmt: skip
"""The part that each terminal of the place grammar is."""


@cache
def _scanner() -> grammar.Scanner:
    return grammar.scanner("place", "phrase")


@lru_cache(maxsize=8192)
def read_phrase(text: str) -> tuple[Part, ...]:
    """The parts of a phrase, in order; words that follow one another are one part."""
    parts: list[Part] = []
    for terminal, start, end in _scanner().scan(text, 0, len(text)):
        kind = _KINDS[terminal]
        if kind == "words" and parts and parts[-1].kind == "words":
            parts[-1] = Part("words", parts[-1].start, end)
        else:
            parts.append(Part(kind, start, end, _value(terminal, text[start:end])))
    return tuple(parts)


def radius_words(words: str) -> str:
    """What a column of radii says, as a phrase: `500m` under the title `Radius`."""
    return words if "radius" in words.lower() else f"radius {words}"


def _value(terminal: str, text: str) -> str | Offset | Decimal | Arc | Counted | None:
    """What a part says beyond its kind: a direction, a bearing and distance, a radius, an arc."""
    if terminal in ("CLOSE_DIRECTION", "DIRECTION_OF"):
        return direction_in(text)
    if terminal == "OFFSET":
        return read_offset(text)
    if terminal in ("RADIUS", "WITHIN_OF"):
        return length_nm(text)
    if terminal == "BEARINGS":
        return read_arc(text)
    if terminal == "COUNTED":
        return Counted(text.lower().startswith("corner"), _count(text))
    return None


def _count(text: str) -> int:
    """The count at the end of `corner 2` or `end B`."""
    written = text.rstrip(".:)").split()[-1].rpartition(".")[2]
    return int(written) if written.isdigit() else ord(written.upper()) - ord("A") + 1


class Split(NamedTuple):
    """Where the description ends, and the parts behind it that tell the place."""

    description_end: int
    parts: tuple[Part, ...]


# What may name a reference between two relation words: `centred on THE LIGHT in`.
_TAKES_REFERENCE = frozenset({"offset", "close", "centred", "from_", "vicinity", "arc"})
_LINKS = frozenset(
    {"separator", "to", "at", "from_", "joining", "along", "between", "ring", "counted"}
)


@lru_cache(maxsize=8192)
def split_phrase(text: str) -> Split:
    """The description and the relation of a phrase that stands before a position."""
    parts = read_phrase(text)
    at = len(parts)
    while at > 0:
        part = parts[at - 1]
        if part.kind != "words":
            at -= 1
            continue
        reference = at >= 2 and parts[at - 2].kind in _TAKES_REFERENCE
        if not (reference and at < len(parts)):
            break
        at -= 2
    # An arc names its circle first: `the arc of a circle of radius 2 miles centred on`.
    first = next((i for i, part in enumerate(parts) if part.kind in ("arc", "offset")), at)
    at = min(at, first)
    return Split(parts[at].start if at < len(parts) else len(text), parts[at:])


@lru_cache(maxsize=8192)
def is_connector(text: str) -> bool:
    """Whether a phrase only links positions of one list: `,` `and in` `thence to`."""
    # Most phrases say at their first word that they are none, and are read no further.
    return all(_KINDS[one] in _LINKS for one, _, _ in _scanner().scan(text, 0, len(text)))


def only_relates(text: str) -> bool:
    """Whether a phrase names nothing: it is empty, or only leads to a place, `in`."""
    return all(part.kind != "words" for part in read_phrase(text))


_CIRCLE = re.compile(r"(?:(?:with)?in )?(?:a |the )?circle(?: of| with)?", re.IGNORECASE)


def leads_to_circle(text: str) -> bool:
    """Whether a phrase names nothing but a circle with its radius: `circle of radius 2 miles`."""
    parts = read_phrase(text)
    words = [part for part in parts if part.kind == "words"]
    end = words[0].end if len(words) == 1 else 0
    is_told = any(part.kind == "radius" for part in parts)
    return is_told and _CIRCLE.fullmatch(text[:end]) is not None


_LETTER = re.compile(r"\W*(?:and )?(?:[A-Z]|[0-9]{1,2}(?=[).:]))[^\w\"]*")


def names_nothing(text: str) -> bool:
    """Whether a phrase only relates, or is the letter of a place in a list: `B)`, `) and C (`."""
    return _LETTER.fullmatch(text) is not None or only_relates(text)
