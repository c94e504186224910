"""One exact position in all forms of the trade, each of which reads back as that position.

In comes the record of a position, out come its forms, by arithmetic on whole numbers.  A unit that
holds the exact value gives it exactly.  In another one the value is rounded to the fewest digits
that stay within half the last digit written, and the form says so.  A form that would need more or
fewer decimals than are read in it is left out.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction
from typing import NamedTuple

from pydantic import Field

from noticeparse.records.position import Position
from noticeparse.spans import Record


class PositionForm(Record):
    """A position in one form."""

    name: str = Field(description="what the form is called")
    text: str = Field(description="the position; with its quality where the form has room for it")
    exact: bool = Field(description="false where the form cannot hold the exact value")
    rounded_to: str | None = Field(description="the last digit of a value that is not exact")


class PositionForms(Record):
    """A position with all its forms."""

    position: Position
    forms: list[PositionForm]


class _Form(NamedTuple):
    """A form: its unit (0 degrees, 1 minutes, 2 seconds), the pattern of a half, what it takes.

    Of a pattern `d` are padded degrees, `n` plain ones, `m` minutes, `s` seconds, `f` the decimals
    with their point, `h` the letter and `g` the sign.
    """

    name: str
    unit: int
    half: str
    joint: str = " "
    end: str = ""
    decimals: tuple[int, int] = (0, 6)
    """The fewest and the most with which the form is read."""
    has_quality: bool = True


_FORMS = (
    _Form("degrees and decimal minutes, as on charts", 1, "{d}°{m}'{f}{h}.", ", "),
    _Form("degrees and decimal minutes", 1, "{d}°{m}{f}'{h}"),
    _Form("degrees and decimal minutes, hyphens", 1, "{d}-{m}{f}{h}"),
    _Form("degrees and decimal minutes, blanks", 1, "{d} {m}{f}{h}"),
    _Form("degrees and decimal minutes, letters first", 1, "{h}{d} {m}{f}"),
    _Form("degrees and decimal minutes, in one", 1, "{d}{m}{f}{h}", decimals=(0, 9)),
    _Form("degrees, minutes, seconds", 2, "{d}°{m}'{s}{f}\"{h}", decimals=(0, 4)),
    _Form("degrees, minutes, seconds, hyphens", 2, "{d}-{m}-{s}{f}{h}"),
    _Form("degrees, minutes, seconds, letters first", 2, "{h}{d}-{m}-{s}{f}"),
    _Form("decimal degrees", 0, "{d}{f}°{h}", decimals=(0, 9)),
    _Form("decimal degrees, signs", 0, "{g}{n}{f}", ", ", "", (2, 9), False),
    _Form("ISO 6709, degrees", 0, "{g}{d}{f}", "", "/", (0, 9), False),
    _Form("ISO 6709, degrees and minutes", 1, "{g}{d}{m}{f}", "", "/", (0, 9), False),
    _Form("ISO 6709, degrees, minutes, seconds", 2, "{g}{d}{m}{s}{f}", "", "/", (0, 9), False),
)

_HALF = re.compile(r"[+-]([0-9]+)(?:\.([0-9]+))?")
_MARKS = ("°", "'", '"')
_QUALITY = {"approximate": " (PA)", "doubtful": " (PD)", "reported": " (rep)", None: ""}


def forms_of(position: Position) -> PositionForms:
    """All forms in which a position can be written: degrees, minutes, seconds, ISO 6709.

    A position that was worked out has the digits that its resolution supports, and no more here.
    """
    found = [one for form in _FORMS if (one := _written(form, position)) is not None]
    return PositionForms(position=position, forms=found)


class _Half(NamedTuple):
    """A latitude or longitude in the unit of a form: steps of its last digit, without sign."""

    steps: int
    decimals: int
    is_exact: bool

    def fields(self, unit: int) -> Iterator[int]:
        """Degrees, minutes and seconds as far as the unit has them, then what is left in steps."""
        rest = self.steps
        for place in range(unit + 1):
            value, rest = divmod(rest, 60 ** (unit - place) * 10**self.decimals)
            yield value
        yield rest


def _written(form: _Form, position: Position) -> PositionForm | None:
    sizes = [abs(value) for value in position.exact()]
    written = _HALF.findall(position.iso6709)
    halves = [
        _half(size, _last_digit(digits, decimals, width), form.unit)
        for size, (digits, decimals), width in zip(sizes, written, (2, 3), strict=True)
    ]
    least, most = form.decimals
    if not all(least <= half.decimals <= most for half in halves):
        return None
    is_south, is_west = (sign == "-" for sign in re.findall("[+-]", position.iso6709))
    words = form.joint.join(
        (
            _spelled(form, halves[0], 2, "S" if is_south else "N"),
            _spelled(form, halves[1], 3, "W" if is_west else "E"),
        )
    )
    quality = _QUALITY[position.quality] if form.has_quality else ""
    is_exact = all(half.is_exact for half in halves)
    return PositionForm(
        name=form.name,
        text=words + form.end + quality,
        exact=is_exact,
        rounded_to=None if is_exact else _last_place(form.unit, halves),
    )


def _last_digit(digits: str, decimals: str, width: int) -> Fraction:
    """What one unit of the last digit of an ISO 6709 half amounts to in degrees."""
    unit = (len(digits) - width) // 2
    return Fraction(1, 60**unit * 10 ** len(decimals))


def _half(size: Fraction, last_digit: Fraction, unit: int) -> _Half:
    """A size in degrees with the fewest decimals whose last one is not coarser than was written.

    Then a rounded value lies within half the last digit written.
    """
    decimals = 0
    while Fraction(1, 60**unit * 10**decimals) > last_digit:
        decimals += 1
    exact = size * 60**unit * 10**decimals
    steps = round(exact)
    return _Half(steps, decimals, steps == exact)


def _spelled(form: _Form, half: _Half, width: int, letter: str) -> str:
    degrees, *sixtieths, rest = half.fields(form.unit)
    minutes, seconds = [*sixtieths, 0, 0][:2]
    return form.half.format(
        d=f"{degrees:0{width}d}",
        n=degrees,
        m=f"{minutes:02d}",
        s=f"{seconds:02d}",
        f=f".{rest:0{half.decimals}d}" if half.decimals else "",
        h=letter,
        g="-" if letter in "SW" else "+",
    )


def _last_place(unit: int, halves: list[_Half]) -> str:
    """The last digit of the coarser half that is rounded: `0.0001°`."""
    decimals = min(half.decimals for half in halves if not half.is_exact)
    return f"{10**-decimals:.{decimals}f}{_MARKS[unit]}"
