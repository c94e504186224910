"""Exact figures: `Decimal` inside, a plain JSON number when written."""

from __future__ import annotations

from decimal import Decimal
from typing import Annotated

from pydantic import PlainSerializer

FOOT_M = Decimal("0.3048")
FATHOM_M = Decimal("1.8288")
NAUTICAL_MILE_M = Decimal(1852)
CABLE_M = Decimal("185.2")
KILOMETRE_M = Decimal(1000)
YARD_M = Decimal("0.9144")


COUNT_WORDS = {
    "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9,
    "ten": 10,
}  # fmt: skip
"""Words that count more than one thing."""


ROMAN = (
    "i ii iii iv v vi vii viii ix x xi xii xiii xiv xv xvi xvii xviii xix xx xxi xxii xxiii xxiv"
).split()
"""The numbers of lists, in order."""


def counted(written: str) -> int:
    """The number of a count, in a word or in figures."""
    return COUNT_WORDS.get(written.lower()) or int(written)


def as_number(value: Decimal | int) -> int | float:
    """The JSON number nearest to an exact value; whole values stay whole."""
    over, under = value.as_integer_ratio()
    return over if under == 1 else over / under


Number = Annotated[
    Decimal,
    PlainSerializer(as_number, return_type=float | int, when_used="json"),
]
"""An exact figure of a record, written to JSON as the nearest number."""
