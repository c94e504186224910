"""What the canonical layout says of a record is what the record says, whatever the record."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from noticeparse import parse, parse_depth, parse_position, render
from noticeparse.canonical import figures
from noticeparse.numbers import FATHOM_M, FOOT_M, NAUTICAL_MILE_M
from noticeparse.readers.places import read_phrase
from noticeparse.records import Position
from noticeparse.testing import WrittenPosition
from tests.comes_back import usable, values

from .strategies import anything, bulletins, spellings


@given(bulletins)
def test_notices_come_back_and_stay_as_written(text: str) -> None:
    for notice in parse(text).notices:
        written = render(notice)
        again = parse(written).notices
        assert [values(one) for one in again] == [values(notice)]
        assert render(again[0]) == written


@given(anything)
def test_any_text_comes_back_or_is_refused(text: str) -> None:
    for notice in parse(text).notices:
        try:
            written = render(usable(notice))
        except ValueError:
            continue
        again = parse(written).notices
        assert [values(one) for one in again] == [values(usable(notice))]


@given(spellings())
def test_a_position_keeps_its_unit_and_its_digits(written: list[WrittenPosition]) -> None:
    for one in written:
        position = _position(one.text)
        if position is not None:
            again = parse_position(figures.position(position))
            assert again.iso6709 == position.iso6709
            assert again.resolution_m == position.resolution_m
            assert (again.lat, again.lon) == (position.lat, position.lon)


def _position(text: str) -> Position | None:
    try:
        return parse_position(text)
    except ValueError:
        return None


FEET = st.integers(0, 4000)


@given(FEET)
def test_fathoms_and_feet_keep_their_value(feet: int) -> None:
    value = feet * FOOT_M
    for unit in ("fm_ft", "ft"):
        words = figures.depth(value, unit)  # type: ignore[arg-type]
        assert words is not None
        depth = parse_depth(f"depth {words}")
        assert (depth.value_m, depth.unit) == (value, unit)


@given(st.fractions(0, 900, max_denominator=8))
def test_fathoms_keep_their_fraction(fathoms: Fraction) -> None:
    metres = fathoms * Fraction(FATHOM_M)
    value = Decimal(metres.numerator) / Decimal(metres.denominator)
    words = figures.depth(value, "fm")
    if Fraction(value) == metres and words is not None:
        assert parse_depth(f"depth {words}").value_m == value


@given(st.decimals("0.01", 99, places=2), st.sampled_from(("miles", "cables", "metres")))
def test_a_radius_keeps_its_value(figure: Decimal, unit: str) -> None:
    value = {
        "miles": figure,
        "cables": figure / 10,
        "metres": figure / NAUTICAL_MILE_M,
    }[unit]
    words = figures.miles(value)
    assert words is not None
    (part,) = read_phrase(f"radius {words}")
    assert part.kind == "radius"
    assert float(part.value) == float(value)
