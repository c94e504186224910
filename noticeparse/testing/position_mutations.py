"""The mutations of positions: name, outcome, and the forms of writing that they apply to."""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from hypothesis import strategies as st

from noticeparse.testing import position_changes as changes
from noticeparse.testing.cases import Mutation, Outcome
from noticeparse.testing.generator.coordinates import Form
from noticeparse.testing.strategies import ALL_FORMS, positions
from noticeparse.testing.written import WrittenPosition


class PositionMutation(NamedTuple):
    """A change of a position by itself; in a notice the outcome may be another one."""

    name: str
    outcome: Outcome
    what: str
    change: Callable[[st.DrawFn, WrittenPosition], WrittenPosition]
    forms: tuple[Form, ...]
    codes: frozenset[str]
    in_notice: Outcome | None
    is_in_notices: bool = True

    def mutation(self) -> Mutation:
        """The mutation of a position that stands alone."""
        return Mutation(
            self.name, "positions", self.outcome, self.what,
            lambda: positions(forms=self.forms), self.change, self.codes,
        )  # fmt: skip


def _row(
    outcome: Outcome,
    what: str,
    change: Callable[[st.DrawFn, WrittenPosition], WrittenPosition],
    *codes: str,
    forms: Callable[[Form], bool] = lambda _: True,
    in_notice: Outcome | None = None,
    is_in_notices: bool = True,
) -> PositionMutation:
    return PositionMutation(
        change.__name__.replace("_", "-"), outcome, what, change,
        tuple(filter(forms, ALL_FORMS)), frozenset(codes), in_notice or outcome,
        is_in_notices,
    )  # fmt: skip


def _has(*signs: str) -> Callable[[Form], bool]:
    return lambda form: any(sign in form.half for sign in signs)


def _has_letter(form: Form) -> bool:
    return not form.is_signed


def _may_be_wrapped(form: Form) -> bool:
    # A semicolon at a line end may end an item.
    return _has_letter(form) and form.joint.strip() in ("", ",")


def _ends_with_letter(form: Form) -> bool:
    # One that begins with its letter is whole again with fewer decimals.
    return form.half.rstrip(".").endswith(("{h}", "{w}"))


POSITION_MUTATIONS: tuple[PositionMutation, ...] = (
    _row("same", "as written, in every form", changes.as_it_is),
    _row(
        "same", "marks of degrees, minutes, seconds as others that look like them",
        changes.look_alike_marks, forms=_has(*changes.MARKS),
    ),
    _row(
        "same", "two marks of minutes for one of seconds", changes.two_marks_for_seconds,
        forms=_has('"'),
    ),
    _row("same", "a raised or heavy dot for the decimal stop", changes.other_stop,
         forms=lambda form: ".{f}" in form.half and "}.{f}" in form.half),
    _row(
        "same", "another dash for the hyphen", changes.other_dash,
        forms=lambda form: "-" in form.half,
    ),
    _row("same", "a true minus for the hyphen", changes.true_minus,
         forms=lambda form: form.is_signed or "-" in form.half),
    _row("same", "no-break or thin blanks", changes.other_blanks,
         forms=lambda form: " " in form.half + form.joint),
    _row("same", "a line end between latitude and longitude", changes.wrapped,
         forms=_may_be_wrapped),
    _row("same", "figures as wide as East Asian letters", changes.full_width),
    _row("as-written", "another figure", changes.digit_slip),
    _row("as-written", "the other hemisphere", changes.other_hemisphere, is_in_notices=False),
    _row(
        "as-written", "a decimal of one coordinate lost", changes.decimal_lost,
        "position-precision-differs", in_notice="finding",
        forms=lambda form: 0 not in form.decimals and min(form.decimals) > 1,
    ),
    _row("finding", "longitude before latitude", changes.exchanged, "position-exchanged",
         forms=_has_letter),
    _row("finding", "the degree sign lost", changes.degree_sign_lost, "position-symbol-lost",
         forms=_has("{d}°", "{f}°")),
    _row("finding", "the leading nought of a longitude lost", changes.nought_lost,
         "position-longitude-digits", forms=lambda form: form.half.startswith("{d}-")),
    _row("finding", "a letter for a figure", changes.letter_for_figure),
    _row("finding", "something unseen between two figures", changes.figure_split),
    _row("refused", "60 minutes or more", changes.minutes_of_60,
         "position-minutes-out-of-range", forms=_has("{m}")),
    _row("refused", "60 seconds or more", changes.seconds_of_60,
         "position-seconds-out-of-range", forms=_has("{s}")),
    _row("refused", "beyond the pole or the 180th meridian", changes.off_the_globe,
         "position-degrees-out-of-range"),
    _row("refused", "a hemisphere lost", changes.hemisphere_lost, forms=_has_letter),
    _row("refused", "latitude or longitude twice", changes.hemisphere_twice, forms=_has_letter),
    _row("refused", "a sign and a letter", changes.sign_and_letter, forms=_has_letter),
    _row("refused", "one coordinate lost", changes.half_lost, forms=_has_letter),
    _row("refused", "a figure lost", changes.figure_lost),
    _row("refused", "figures of another script", changes.foreign_figures),
    _row("refused", "cut off within the longitude", changes.cut_off, forms=_ends_with_letter),
)  # fmt: skip
