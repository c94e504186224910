"""Entries of a list of lights: its numbers, places in front of the light, states on rows below."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.features import read_feature
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, codes, errors, told

ROWS = (
    "AMEND    {}   Corvane Head, head of mole, light   {}\n"
    "              old   Fl.R.5s9m5M\n              new   Fl(2)R.6s9m7M\n"
    "DELETE   {}   Quill Sound, port-hand buoy   {}\n"
)


@pytest.mark.parametrize("numbers", [("2208", "2209.5"), ("880", "912"), ("2208", "2208.1")])
def test_numbers_of_the_list_are_not_of_the_aid(numbers: tuple[str, str]) -> None:
    bulletin = parse(HEAD + ROWS.format(numbers[0], P, numbers[1], Q))
    assert told(bulletin) == [("amend", "light", [AT_P]), ("delete", "buoy_lateral_port", [AT_Q])]
    assert codes(bulletin) == set()
    assert bulletin.coverage.unread == 0


@pytest.mark.parametrize(
    ("head", "rows"),
    [
        # A row without a number, numbers that go back, and one number for all.
        (HEAD, f"AMEND   2208   Corvane light   {P}\n   new   Fl.R.2s\nDELETE   buoy   {Q}\n"),
        (HEAD, ROWS.format("2209", P, "2208", Q)),
        (HEAD, ROWS.format("2208", P, "2208", Q)),
        # Of what is no aid the figure may be a value.
        (HEAD, f"INSERT   215   Corvane wreck   {P}\nINSERT   218   Corvane rock   {Q}\n"),
        # Without a chart it may be that of the row.
        ("12/26 Quill Sound.\n", ROWS.format("2208", P, "2209", Q)),
    ],
)
def test_other_figures_are_told(head: str, rows: str) -> None:
    told_of = codes(parse(head + rows))
    assert told_of & {"feature-figure-unread", "feature-figure-unclear"}


@pytest.mark.parametrize(
    ("words", "kind"),
    [
        ("Corvane Head, head of mole, light", "light"),
        ("Corvane Head, crane quay, light, 2F.R(vert)5m2M", "light"),
        ("pier head, light, Fl.R.2s", "light"),
        ("Brack Mole, light", "light"),
        ("Brack Mole, front leading light", "leading_lights"),
        # No name and no part of it: the pier may be meant with its light.
        ("pier, light, Fl.R.2s", "pier"),
        ("Stone pier, light, Fl.R.2s", "pier"),
        ("Corvane, new pier, light, Fl.R.2s", "pier"),
        ("Quill Sound, wreck, light", "wreck"),
        ("Mole, light and fog signal", "breakwater"),
        ("Brack Mole with light", "breakwater"),
        ("Brack Mole, lights", "breakwater"),
    ],
)
def test_a_light_behind_its_place_is_the_thing(words: str, kind: str) -> None:
    assert read_feature(words, None).feature.kind == kind


SECTORS = "sectors G 300°-312°, W 312°-318°, R 318°-330°"


@pytest.mark.parametrize("rows", [SECTORS, "sectors G 300°-312°, W 312°-318°,\n    R 318°-330°"])
def test_sectors_below_a_state_are_of_its_light(rows: str) -> None:
    bulletin = parse(
        f"{HEAD}INSERT  Corvane light   {P}\n    new   Oc.WRG.6s11m10-7M\n    {rows}\n"
    )
    light = actions_of(bulletin)[0].feature.light
    assert light is not None
    assert [(one.colour, str(one.from_deg)) for one in light.sectors] == [
        ("G", "300"), ("W", "312"), ("R", "318"),
    ]  # fmt: skip
    assert errors(bulletin) == set()


@pytest.mark.parametrize("words", ["G 300°-312° over the bar", "sectors G 300°-312°, rock"])
def test_words_below_a_state_that_are_more_than_sectors_are_told(words: str) -> None:
    bulletin = parse(
        f"{HEAD}INSERT  Corvane light   {P}\n    new   Oc.WRG.6s11m10-7M\n    {words}\n"
    )
    light = actions_of(bulletin)[0].feature.light
    assert light is not None
    assert light.sectors == []
    assert codes(bulletin)
