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
    assert told("46°12.50'S 122°{}.10'W", "4", "14", "18", "9") == []


def test_a_mixed_way_of_writing_proves_nothing() -> None:
    assert told("46°12.50'S 122°{}.10'W", "4", "04", "8", "03") == []


@pytest.mark.parametrize("short", ["46°12'.60S 122°4.02W", "46°2.60S 122°14'.02W"])
def test_a_lost_mark_beside_one_figure_is_told(short: str) -> None:
    place = "46°12'.50S 122°{}.10W"
    assert told(place, "14'", "15'") == []
    found = parse(f"{HEAD}Insert wreck 46°12'.50S 122°15'.30W\nInsert rock {short}\n").findings
    assert [one.code for one in found] == ["position-figure-missing"]


def test_a_second_figure_that_brings_it_back_is_told() -> None:
    place = "46°12'.50S 122°{}'.10W"
    assert told(place, "14", "15", "5", "16") == [place.format("5")]
    assert told(place, "14", "15", "1", "16") == [place.format("1")]
    assert told(place, "14", "19", "9", "11") == []
    assert told(place, "10", "12", "9", "8") == []


@pytest.mark.parametrize(
    "place",
    [
        "47°021.41S 124°11.18W", "47°021'.41S 124°11'.18W", "47-21.41S 124-011.18W",
        "47° 021' S 124° 11' W", "47°21'.41S 124°11'.18W and 021'.50S 11'.20W",
    ],
)  # fmt: skip
def test_minutes_of_three_figures_are_refused(place: str) -> None:
    for written, is_usable in ((place, False), (place.replace("021", "21"), True)):
        written = written if not is_usable else written.replace("011", "11")
        (action,) = actions_of(parse(f"{HEAD}Insert wrecks in {written}\n"))
        assert action.usable is is_usable
