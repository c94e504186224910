"""One amended sector written alone: the others of the light stay, and that is told."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.changes import read_change
from tests.short_notices import HEAD, P, codes, errors

PARTS = [
    ("white sector to 045°-060°", [("W", None)]),
    ("white sector of light to 045°-060°", [("W", None)]),
    ("limits of red sector to 045°-060°", [("R", None)]),
    ("light Fl.WRG.5s: white sector to W 045°-060°", [("W", None)]),
    ("G sector of Fl.WRG.5s to 045°-060°", [("G", None)]),
    ("sectors of light to R 045°-060°", [("R", None)]),
    ("light to sector W 045°-060°", [("W", None)]),
    ("obscured sector to 045°-060°", [(None, "obscured")]),
    ("white and red sectors to 045°-060° and 060°-100°", [("W", None), ("R", None)]),
    ("white and red sectors to W 045°-060°, R 060°-100°", [("W", None), ("R", None)]),
]


@pytest.mark.parametrize(("words", "told"), PARTS)
def test_a_sector_named_alone_is_not_all_of_them(words: str, told: list[object]) -> None:
    reading = read_change(words, None)
    (change,) = reading.changes
    assert change.property == "light.sectors"
    assert [(one.colour, one.visibility) for one in change.new] == told  # type: ignore[union-attr]
    warned = {one.code for one in reading.faults}
    assert "sector-others-unsaid" in warned
    assert "light-colour-without-sector" not in warned


@pytest.mark.parametrize(
    "words",
    [
        "sectors to W 000°-180°, R 180°-000°",
        "sector to W 000°-180°, R 180°-000°",
        "sectors to W 045°-060°, R 060°-100°, G 100°-180°",
        "light Fl.R.5s: sectors to R 045°-180°",
    ],
)
def test_a_whole_list_is_all_of_them(words: str) -> None:
    assert codes(parse(f"{HEAD}Amend {words} {P}\n")) <= {"light-colour-without-sector"}


@pytest.mark.parametrize(
    "words",
    [
        "white sector to R 045°-060°",
        "white and red sectors to 045°-060°",
        "white, red and green sectors to 045°-060°, 060°-080°",
        "obscured sector to W 045°-060°",
    ],
)
def test_sectors_that_do_not_fit_their_names_are_held(words: str) -> None:
    assert errors(parse(f"{HEAD}Amend {words} {P}\n"))
