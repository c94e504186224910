"""Directions, bearings, distances and arcs in the words before a position, as figures."""

from __future__ import annotations

import re
from decimal import Decimal
from functools import cache
from typing import Any, NamedTuple

from lark import Token
from lark.exceptions import LarkError

from noticeparse import grammar
from noticeparse.numbers import CABLE_M, KILOMETRE_M, NAUTICAL_MILE_M, YARD_M
from noticeparse.records.geometry import Arc, Bearings

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


def direction_in(text: str) -> str | None:
    """The compass point named in a phrase, as its letters."""
    plain = text.replace("-", "").replace(".", "").replace(",", " ")
    for word in reversed(plain.split()):
        letters = _LETTERS.get(word.lower().removesuffix("ward"))
        if letters:
            return letters
    return None


_WORDS = {"n": "north", "e": "east", "s": "south", "w": "west"}
_LETTERS = {
    **{point.lower(): point for point in COMPASS},
    **{"".join(_WORDS[letter] for letter in point.lower()): point for point in COMPASS},
}


class _OffsetCallbacks:
    def miles(self, figure: Token, _unit: Token) -> tuple[str, Decimal, int]:
        return "distance", _decimal(figure), _decimals(figure)

    def cables(self, figure: Token, _unit: Token) -> tuple[str, Decimal, int]:
        return "distance", _decimal(figure) * CABLE_M / NAUTICAL_MILE_M, _decimals(figure) + 1

    def metres(self, figure: Token, _unit: Token) -> tuple[str, Decimal, int]:
        return "distance", _decimal(figure) / NAUTICAL_MILE_M, _decimals(figure) + 3

    def kilometres(self, figure: Token, _unit: Token) -> tuple[str, Decimal, int]:
        return "distance", _decimal(figure) * KILOMETRE_M / NAUTICAL_MILE_M, _decimals(figure)

    def yards(self, figure: Token, _unit: Token) -> tuple[str, Decimal, int]:
        return "distance", _decimal(figure) * YARD_M / NAUTICAL_MILE_M, _decimals(figure) + 3

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
    return _figures(figure)[0]


def _decimals(figure: str) -> int:
    return max(0, -int(_decimal(figure).as_tuple().exponent))


@cache
def _offset_parser() -> grammar.PhraseParser:
    return grammar.build("offset", "offset", callbacks=_OffsetCallbacks())


def read_offset(text: str) -> Offset | None:
    """Bearing and distance of `0.6 miles 240° from`; miles of 1852 m, cables a tenth of that."""
    try:
        offset: Offset = _offset_parser().parse(text)
    except LarkError:
        return None
    return offset


_UNIT = re.compile(r"[0-9½¼¾] ?([A-Za-z]+)")
_THOUSANDS = re.compile(r"(?<=[0-9]),(?=[0-9]{3} ?(?:m(?![a-z])|met|ya?r?d))", re.IGNORECASE)
_DECIMAL_COMMA = re.compile(r"(?<=[0-9]),(?=[0-9])")
_STROKES = (("1/2", "½"), ("1/4", "¼"), ("3/4", "¾"))
_FRACTIONS = {"½": Decimal("0.5"), "¼": Decimal("0.25"), "¾": Decimal("0.75")}


def _figures(text: str) -> list[Decimal]:
    """The figures of a phrase; `1½` is one and a half."""
    found: list[Decimal] = []
    text = _DECIMAL_COMMA.sub(".", text)
    for written, sign in _STROKES:
        text = text.replace(written, sign)
    cleaned = "".join(c if c.isdecimal() or c == "." or c in _FRACTIONS else " " for c in text)
    for word in cleaned.split():
        whole = word.rstrip("½¼¾").strip(".")
        fraction = sum((_FRACTIONS[c] for c in word if c in _FRACTIONS), Decimal(0))
        if whole or fraction:
            found.append(Decimal(whole or 0) + fraction)
    return found


def length_nm(text: str) -> Decimal:
    """The length of `radius 2 miles`, `500 metres radius` or `0.5km` in nautical miles.

    Miles are nautical miles; a yard is that of 1959, of 0.9144 m.
    """
    text = _THOUSANDS.sub("", text)
    unit = _UNIT.search(text)
    return _figures(text)[0] * _unit_m(unit.group(1) if unit else "") / NAUTICAL_MILE_M


def _unit_m(words: str) -> Decimal:
    plain = words.lower()
    if plain.startswith("cable"):
        return CABLE_M
    if plain.startswith(("km", "kilo")):
        return KILOMETRE_M
    if plain.startswith("y"):
        return YARD_M
    return Decimal(1) if words == "m" or plain.startswith("met") else NAUTICAL_MILE_M


def read_arc(text: str) -> Arc:
    """The stretch of a circle in `between the bearings 225° and 315° (from seaward)`."""
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
