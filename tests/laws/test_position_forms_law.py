"""Every form of a position reads back as it: the same where exact, else within half its digit."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from noticeparse import parse_position
from noticeparse.records import Position
from noticeparse.writers.position_forms import forms_of

WIDTHS = (2, 3)


@st.composite
def positions(draw: st.DrawFn) -> Position:
    """Any position on the globe, in degrees, minutes or seconds with up to nine decimals."""
    halves = []
    for last, width in zip((90, 180), WIDTHS, strict=True):
        unit, decimals = draw(st.integers(0, 2)), draw(st.integers(0, 9))
        scale = 60**unit * 10**decimals
        steps = draw(st.one_of(st.integers(0, last * scale), st.just(last * scale)))
        whole, rest = divmod(steps, 10**decimals)
        fields = [whole // 60**unit]
        fields += [whole // 60 ** (unit - place) % 60 for place in range(1, unit + 1)]
        digits = f"{fields[0]:0{width}d}" + "".join(f"{one:02d}" for one in fields[1:])
        halves.append(draw(st.sampled_from("+-")) + digits)
        halves[-1] += f".{rest:0{decimals}d}" if decimals else ""
    mark = draw(st.sampled_from(("", " (PA)", " (PD)", " (rep)")))
    return parse_position("".join(halves) + "/" + mark)


def last_digits(position: Position) -> list[Fraction]:
    """What one unit of the last digit of each half amounts to in degrees."""
    cut = max(position.iso6709.rfind("+"), position.iso6709.rfind("-"))
    found = []
    for half, width in zip(
        (position.iso6709[:cut], position.iso6709[cut:-1]), WIDTHS, strict=True
    ):
        whole, _, decimals = half[1:].partition(".")
        unit = (len(whole) - width) // 2
        found.append(Fraction(1, 60**unit * 10 ** len(decimals)))
    return found


@given(positions())
def test_every_form_reads_back(position: Position) -> None:
    forms = forms_of(position).forms
    assert forms
    for form in forms:
        again = parse_position(form.text)
        gaps = [
            abs(one - other) for one, other in zip(again.exact(), position.exact(), strict=True)
        ]
        assert form.exact == (not any(gaps)), form
        assert (form.rounded_to is None) == form.exact
        assert all(
            2 * gap <= digit for gap, digit in zip(gaps, last_digits(position), strict=True)
        ), form
        assert again.quality in (position.quality, None)
        if again.quality is None and position.quality is not None:
            assert form.text[0] in "+-", "only a form of signs has no room for the quality"


@given(positions())
def test_no_form_has_more_digits_than_it_takes(position: Position) -> None:
    """With one decimal less a form would be coarser than what was written."""
    for form in forms_of(position).forms:
        pairs = zip(last_digits(parse_position(form.text)), last_digits(position), strict=True)
        for digit, written in pairs:
            assert digit <= written
            assert digit * 10 > written or digit in (1, Fraction(1, 60), Fraction(1, 3600))


@given(positions())
def test_its_own_unit_is_among_the_forms(position: Position) -> None:
    """What was written is given back to the letter, in whatever unit, if both halves share it."""
    isos = [form.text for form in forms_of(position).forms if form.name.startswith("ISO")]
    one, other = last_digits(position)
    if any(one == other == Fraction(1, 60**u * 10**d) for u in range(3) for d in range(10)):
        assert position.iso6709 in isos
