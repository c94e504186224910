"""The words before a position: which of them describe the feature and which its place.

`read_phrase` cuts a stretch of words into parts; `split_phrase` finds where the description ends
and the relation to the coming position begins.  Positions themselves are not read here.
"""

from __future__ import annotations

import re
from decimal import Decimal
from functools import cache, lru_cache
from typing import Any, Literal, NamedTuple

from lark import Lark, Token, Transformer, v_args
from lark.exceptions import LarkError

from noticeparse import grammar
from noticeparse.numbers import CABLE_M, NAUTICAL_MILE_M
from noticeparse.records.geometry import Arc, Bearings

PartKind = Literal[
    "words", "separator", "joining", "bounded", "within", "centred", "between", "vicinity",
    "along", "from_", "to", "at", "close", "offset", "radius", "within_of", "arc",
    "bearings", "ring", "counted", "corners",
]  # fmt: skip

COMPASS = (
    "N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE",
    "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW",
)  # fmt: skip
"""The sixteen points, 22.5 degrees apart from north."""


class Offset(NamedTuple):
    """A bearing or direction and a distance, as read; the reference stands elsewhere."""

    bearing_deg: Decimal | None
    direction: str | None
    distance_nm: Decimal | None
    distance_decimals: int
    bearing_decimals: int
    is_magnetic: bool


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
        return _length_nm(text)
    if terminal == "BEARINGS":
        return _arc(text)
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


def names_nothing(text: str) -> bool:
    """Whether a phrase only relates, or is the letter of a place in a list: `B)`, `) and C (`."""
    return _LETTER.fullmatch(text) is not None or only_relates(text)


def direction_in(text: str) -> str | None:
    """The compass point named in a phrase, as its letters."""
    plain = text.replace("-", "").replace(".", "").replace(",", " ")
    for word in reversed(plain.split()):
        letters = _LETTERS.get(word.lower().removesuffix("ward"))
        if letters:
            return letters
    return None


_LETTER = re.compile(r"\W*(?:and )?(?:[A-Z]|[0-9]{1,2}(?=[).:]))[^\w\"]*")
_WORDS = {"n": "north", "e": "east", "s": "south", "w": "west"}
_LETTERS = {
    **{point.lower(): point for point in COMPASS},
    **{"".join(_WORDS[letter] for letter in point.lower()): point for point in COMPASS},
}


@v_args(inline=True)
class _OffsetCallbacks(Transformer[Token, Any]):
    def miles(self, figure: Token, _unit: Token) -> tuple[str, Decimal, int]:
        return "distance", _decimal(figure), _decimals(figure)

    def cables(self, figure: Token, _unit: Token) -> tuple[str, Decimal, int]:
        return "distance", _decimal(figure) * CABLE_M / NAUTICAL_MILE_M, _decimals(figure) + 1

    def metres(self, figure: Token, _unit: Token) -> tuple[str, Decimal, int]:
        return "distance", _decimal(figure) / NAUTICAL_MILE_M, _decimals(figure) + 3

    def bearing(self, figure: Token) -> tuple[str, Decimal, int]:
        return "bearing", _decimal(figure), _decimals(figure)

    def magnetic(self, figure: Token, _mark: Token) -> tuple[str, Decimal, int]:
        return "magnetic", _decimal(figure), _decimals(figure)

    def worded_miles(self, words: Token, _unit: Token) -> tuple[str, Decimal, int]:
        return ("distance", *_worded(words, Decimal(1)))

    def worded_cables(self, words: Token, _unit: Token) -> tuple[str, Decimal, int]:
        return ("distance", *_worded(words, CABLE_M / NAUTICAL_MILE_M))

    def compound(self, words: Token) -> tuple[str, Decimal, int]:
        miles, cables = _figures(str(words))
        return "distance", miles + cables * CABLE_M / NAUTICAL_MILE_M, 1

    def direction(self, word: Token) -> tuple[str, str | None, int]:
        return "direction", direction_in(str(word)), 0

    def magnetic_direction(self, _mark: Token, word: Token) -> tuple[str, str | None, int]:
        return "magnetic_direction", direction_in(str(word)), 0

    def magnetic_behind(self, word: Token, mark: Token) -> tuple[str, str | None, int]:
        return self.magnetic_direction(mark, word)

    def offset(self, *parts: tuple[str, Any, int]) -> Offset:
        found = {name: (value, decimals) for name, value, decimals in parts}
        bearing = found.get("bearing") or found.get("magnetic") or (None, 0)
        distance = found.get("distance") or (None, 0)
        direction = found.get("direction") or found.get("magnetic_direction") or (None, 0)
        is_magnetic = "magnetic" in found or "magnetic_direction" in found
        return Offset(bearing[0], direction[0], distance[0], distance[1], bearing[1], is_magnetic)


def _worded(words: str, unit_nm: Decimal) -> tuple[Decimal, int]:
    """The length of `half a mile` and `a cable`, and its decimals."""
    half = words.lower().startswith("half")
    length = unit_nm * Decimal("0.5") if half else unit_nm
    return length, -int(length.normalize().as_tuple().exponent)


def _decimal(figure: str) -> Decimal:
    return Decimal(figure.replace(",", "."))


def _decimals(figure: str) -> int:
    return len(figure.replace(",", ".").partition(".")[2])


@cache
def _offset_parser() -> Lark:
    return grammar.build("offset", "offset", callbacks=_OffsetCallbacks())


def read_offset(text: str) -> Offset | None:
    """Bearing and distance of `0.6 miles 240° from`; miles of 1852 m, cables a tenth of that."""
    try:
        offset: Offset = grammar.parsed(_offset_parser(), text)
    except LarkError:
        return None
    return offset


_UNIT = re.compile(r"[0-9½¼¾] ?([A-Za-z]+)")
_DECIMAL_COMMA = re.compile(r"(?<=[0-9]),(?=[0-9])")
_FRACTIONS = {"½": Decimal("0.5"), "¼": Decimal("0.25"), "¾": Decimal("0.75")}


def _figures(text: str) -> list[Decimal]:
    """The figures of a phrase; `1½` is one and a half."""
    found: list[Decimal] = []
    text = _DECIMAL_COMMA.sub(".", text)
    cleaned = "".join(c if c.isdecimal() or c == "." or c in _FRACTIONS else " " for c in text)
    for word in cleaned.split():
        whole = word.rstrip("½¼¾").strip(".")
        fraction = sum((_FRACTIONS[c] for c in word if c in _FRACTIONS), Decimal(0))
        if whole or fraction:
            found.append(Decimal(whole or 0) + fraction)
    return found


def _length_nm(text: str) -> Decimal:
    """The length of `radius 2 miles` or `500 metres radius` in nautical miles."""
    figure = _figures(text)[0]
    unit = _UNIT.search(text)
    words = unit.group(1) if unit else ""
    if words.lower().startswith("cable"):
        return figure * CABLE_M / NAUTICAL_MILE_M
    if words == "m" or words.lower().startswith("met"):
        return figure / NAUTICAL_MILE_M
    return figure


def _arc(text: str) -> Arc:
    first, second = _figures(text)[:2]
    words = text.lower()
    sense = "clockwise" if "clockwise" in words else None
    if "anti" in words:
        sense = "anticlockwise"
    bearings: Bearings = "not_stated"
    if "from seaward" in words:
        bearings = "from_seaward"
    elif "from the" in words:
        bearings = "from_centre"
    return Arc(from_deg=first, to_deg=second, sense=sense, bearings=bearings)  # type: ignore[arg-type]
