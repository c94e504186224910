"""Figures with their units, as the canonical layout writes them: positions, depths, lengths.

In come exact values of records, out come words; nothing is rounded.  Where no way of writing holds
a value exactly the answer is None, and the caller must find other words.
"""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction

from noticeparse.numbers import FATHOM_M, FOOT_M, NAUTICAL_MILE_M, as_number
from noticeparse.records.depth import DepthUnit
from noticeparse.records.position import Position

_ISO_HALF = re.compile(r"([+-])([0-9]+)(\.[0-9]+)?")
_MARKS = ("°", "'", '"')
_QUALITY = {"approximate": "PA", "doubtful": "PD", "reported": "rep"}
_FRACTIONS = {
    Fraction(1, 2): "½", Fraction(1, 4): "¼", Fraction(3, 4): "¾", Fraction(1, 3): "⅓",
    Fraction(2, 3): "⅔", Fraction(1, 8): "⅛", Fraction(3, 8): "⅜", Fraction(5, 8): "⅝",
    Fraction(7, 8): "⅞",
}  # fmt: skip
_DECIMALS_OF_A_DEPTH = 2
_DECIMALS_OF_A_LENGTH = 3


def plain(value: Decimal | int) -> str:
    """A figure without exponent and without noughts behind its last decimal: `8.6`, `120`."""
    written = format(value, "f") if isinstance(value, Decimal) else str(value)
    return written.rstrip("0").rstrip(".") if "." in written else written


def position(one: Position) -> str:
    """`47°13.05'S 123°44.20'W (PA)`: the unit and the digits of its `iso6709`."""
    lat, lon = _ISO_HALF.findall(one.iso6709)
    words = f"{_half(lat, 2, 'NS')} {_half(lon, 3, 'EW')}"
    return f"{words} ({_QUALITY[one.quality]})" if one.quality else words


def _half(written: tuple[str, str, str], width: int, letters: str) -> str:
    sign, digits, decimals = written
    fields = [digits[:width], *(digits[at : at + 2] for at in range(width, len(digits), 2))]
    fields[-1] += decimals
    marked = "".join(field + mark for field, mark in zip(fields, _MARKS, strict=False))
    return marked + letters[sign == "-"]


def depth(value_m: Decimal, unit: DepthUnit | None) -> str | None:
    """A depth or drying height without its sign, in the unit in which it was written.

    Metres keep their digits, for `12.0m` is charted otherwise than `12m`.
    """
    size = abs(value_m)
    if unit is None or unit == "m":
        return f"{size:f}{unit or ''}"
    if unit == "ft":
        return _in(size, FOOT_M, "ft")
    if unit == "fm":
        return _in(size, FATHOM_M, "fm")
    feet = Fraction(size) / Fraction(FOOT_M)
    if feet.denominator > 1:
        return None
    return f"{int(feet) // 6}fm {int(feet) % 6}ft"


def _in(size: Decimal, metres: Decimal, unit: str) -> str | None:
    count = Fraction(size) / Fraction(metres)
    whole, rest = divmod(count, 1)
    if not rest:
        return f"{whole}{unit}"
    if rest in _FRACTIONS:
        return f"{whole or ''}{_FRACTIONS[rest]}{unit}"
    decimal = (count * 10**_DECIMALS_OF_A_DEPTH).limit_denominator(1)
    is_exact = decimal == count * 10**_DECIMALS_OF_A_DEPTH
    return (
        f"{plain(Decimal(int(decimal)).scaleb(-_DECIMALS_OF_A_DEPTH))}{unit}" if is_exact else None
    )


def metres(value: Decimal) -> str:
    """A height or elevation; one that was given in feet stays in feet: 12.192 is `40ft`."""
    _, _, decimals = plain(value).partition(".")
    if len(decimals) > 1:
        feet = Fraction(value) / Fraction(FOOT_M)
        if feet.denominator == 1:
            return f"{feet}ft"
    return f"{plain(value)}m"


def miles(value: Decimal) -> str | None:
    """A distance or radius: `0.24 miles`, or `500 metres` where that is the exact value."""
    if as_number(round(value, _DECIMALS_OF_A_LENGTH)) == as_number(value):
        return f"{plain(round(value, _DECIMALS_OF_A_LENGTH))} miles"
    return metres_of(value)


def metres_of(value: Decimal) -> str | None:
    """A distance in nautical miles as exact metres: `500 metres`."""
    size = round(value * NAUTICAL_MILE_M, _DECIMALS_OF_A_LENGTH)
    if as_number(size / NAUTICAL_MILE_M) == as_number(value):
        return f"{plain(size)} metres"
    return None
