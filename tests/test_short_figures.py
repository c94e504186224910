"""Minutes and seconds of one figure among others that all have two: a figure may be lost.

Common practice, no published source: an office writes noughts before
small figures, or it does not.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, actions_of

FORMS = {
    "seconds": ("46°12'00.3\"S 122°45'{}.1\"W", "10", "1"),
    "minutes": ("46°02.50'S 122°{}.10'W", "14", "4"),
    "leading blank": ("46° 02.50'S 122° {}.10'W", "14", " 4"),
    "hyphens": ("46-02.50S 122-{}.10W", "14", "4"),
    "blanks and signs": ("46° 02' 50\" S 122° {}' 10\" W", "14", "4"),
}


def told(place: str, *figures: str) -> list[str]:
    lines = "".join(
        f"Insert depth {at}.1 m {place.format(figure)}\n" for at, figure in enumerate(figures)
    )
    bulletin = parse(HEAD + lines)
    assert all(action.usable for action in actions_of(bulletin))
    found = [one for one in bulletin.findings if one.code == "position-figure-missing"]
    return [one.message.split("`")[1] for one in found]


@pytest.mark.parametrize(("place", "whole", "short"), FORMS.values(), ids=FORMS)
def test_one_figure_among_two_is_told(place: str, whole: str, short: str) -> None:
    found = told(place, whole, short, whole)
    assert [" ".join(one.split()) for one in found] == [" ".join(place.format(short).split())]
    assert told(place, whole, whole, whole) == []


def test_an_office_that_writes_no_noughts_has_lost_none() -> None:
    assert told("46°2.50'S 122°{}.10'W", "4", "14", "8") == []
    assert told("46°12.50'S 122°{}.10'W", "4", "14", "18", "15") == []


def test_a_mixed_way_of_writing_proves_nothing() -> None:
    assert told("46°12.50'S 122°{}.10'W", "4", "04", "8", "03") == []
