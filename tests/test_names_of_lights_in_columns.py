"""A column NAME beside the characters of lights: the name is that of the light.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Amend
from tests.short_notices import P, Q, R, actions_of, codes, errors

HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84\n"
TITLES = f"{'NAME':<22}{'POSITION':<25}{'OLD':<18}NEW\n"


def row(name: str, place: str, old: str, new: str) -> str:
    return f"{name:<22}{place:<25}{old:<18}{new}\n"


def seen(body: str) -> list[tuple[str, list[str], str | None, bool]]:
    bulletin = parse(HEAD + body)
    return [(a.verb, a.feature.s57, a.feature.name, a.usable) for a in actions_of(bulletin)]


@pytest.mark.parametrize(
    "name",
    [
        "Tui Reef", "Sorley Rock", "Old Pier", "Cape Orl", "Brannoch", "Loma Mole, head",
        "Point of Quill", "TUI REEF", "St. Orl Bank",
    ],
)  # fmt: skip
def test_a_name_of_land_is_that_of_the_light(name: str) -> None:
    body = (
        TITLES
        + row(name, P, "Q.R.6m3M", "Fl.R.2s6m5M")
        + row(name, Q, "-", "Fl.R.2s6m5M")
        + row(name, R, "F.G.4m2M", "-")
    )
    lights = ["LIGHTS"]
    assert seen(body) == [
        ("amend", lights, name, True),
        ("insert", lights, name, True),
        ("delete", lights, name, True),
    ]
    assert codes(parse(HEAD + body)) == set()
    (first, *_) = actions_of(parse(HEAD + body))
    assert isinstance(first, Amend)
    assert [one.property for one in first.changes] == ["light"]


def test_a_column_of_characters() -> None:
    titles = f"{'ACTION':<10}{'NAME':<22}{'POSITION':<25}LIGHT\n"
    body = f"{titles}{'Insert':<10}{'Tui Reef':<22}{P:<25}Fl.R.2s6m5M\n"
    assert seen(body) == [("insert", ["LIGHTS"], "Tui Reef", True)]


def test_a_name_with_the_word_for_a_mark_is_a_description() -> None:
    body = TITLES + row("special light-buoy", P, "Fl.Y.3s", "Fl.Y.5s3M")
    assert seen(body) == [("amend", ["BOYSPP", "LIGHTS"], None, True)]


def test_what_floats_has_a_name_too() -> None:
    # It shows neither elevation nor range.
    assert [one[-1] for one in seen(TITLES + row("Tui Reef", P, "Q.R", "Fl.R.2s"))] == [False]


def test_words_in_small_letters_are_no_name() -> None:
    read = seen(TITLES + row("dangerous rock", P, "Q.R.6m3M", "Fl.R.2s6m5M"))
    assert [one[2] for one in read] == [None]


def test_how_the_table_is_read_is_no_command() -> None:
    said = (
        "How to read the table: amend the light from OLD to NEW. Where OLD is a dash insert the\n"
        "light; where NEW is a dash delete it.\n\n"
    )
    text = f"LIGHTS ALTERED 30 April 2026\n\n{said}{HEAD}{TITLES}" + row(
        "Tui Reef", P, "Q.R.6m3M", "Fl.R.2s6m5M"
    )
    assert [notice.id for notice in parse(text).notices] == ["12/26"]
    assert errors(parse(text)) == set()
    lost = text.replace(said, "Delete the light on the new pier.\n\n")
    assert "item-without-position" in errors(parse(lost))
    lost = text.replace(said, "DELETE THE LIGHT ON THE NEW PIER.\n\n")
    assert "item-without-position" in errors(parse(lost))


@pytest.mark.parametrize("page", ["Page 1 of 2", "Page 1/2", "PAGE 1 OF 2", "p. 1 of 2"])
def test_the_number_of_a_page_among_them_all(page: str) -> None:
    title = "Lights altered         Return 4 of 2026, 30 April 2026"
    text = (
        f"TAVRENNE LIGHTS SERVICE\n{title}\n\n{HEAD}Insert wreck {P}\n\n{page}\n{title}\n\n"
        f"13/26 Quill Sound.\nChart 803 [4/26] WGS84\nDelete rock {Q}\n"
    )
    read = parse(text)
    assert [action.verb for action in actions_of(read)] == ["insert", "delete"]
    assert errors(read) == set()
    assert read.coverage.unread == 0
