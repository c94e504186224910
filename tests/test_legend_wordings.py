"""Where the wording of a legend ends, and legends that have none of their own."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, actions_of, codes, errors


def legends(item: str) -> list[tuple[str | None, bool]]:
    return [(one.feature.legend, one.usable) for one in actions_of(parse(HEAD + item))]


@pytest.mark.parametrize(
    "manner",
    [
        ", orientated N/S,",
        " orientated NE-SW",
        " (orientated N/S)",
        ", in magenta",
        " in magenta",
        ", magenta,",
        ", in two lines",
        ", parallel to the coast",
        ", running along the pier,",
        ", N/S,",
        ", in italics",
    ],
)
def test_how_a_legend_is_written_is_not_of_its_wording(manner: str) -> None:
    assert legends(f"Insert legend, Numerous wrecks{manner} {P}") == [("Numerous wrecks", True)]
    assert codes(parse(f"{HEAD}Insert legend, Numerous wrecks{manner} {P}")) == set()


@pytest.mark.parametrize("place", ["at light", "off the pier", "on wreck"])
def test_what_a_legend_stands_at_is_told(place: str) -> None:
    for item in (f"Insert legend, Works, {place} {P}", f"Insert legend Works ({place}) {P}"):
        assert legends(item) == [("Works", True)]
        assert codes(parse(HEAD + item)) == {"feature-words-unread"}


@pytest.mark.parametrize(
    "words",
    [
        "Works at north end",
        "Restricted area (see Note 3)",
        "Ferry to N and S",
        "Works in progress (2026)",
        "Dredged 9.1 m, 2026",
        "Speed limit 5 knots in harbour",
    ],
)
def test_the_wording_itself_stays(words: str) -> None:
    assert legends(f"Insert legend, {words}, {P}") == [(words, True)]


def test_a_mark_behind_a_wording_without_a_comma_is_held_back() -> None:
    assert legends(f"Insert legend Fl.Y.5s at light-buoy {P}") == [(None, False)]
    assert legends(f"Insert legend Anchorage near pier {P}") == [("Anchorage near pier", True)]


def test_a_new_legend_ends_there_too() -> None:
    (action,) = actions_of(parse(f"{HEAD}Amend legend, Foul, to Works, orientated N/S {P}"))
    assert [(one.old, one.new) for one in action.changes] == [("Foul", "Works")]
    (action,) = actions_of(parse(f"{HEAD}Move legend, Foul, orientated N/S, from {P} to {Q}"))
    assert action.feature.legend == "Foul"
    told = parse(f"{HEAD}Amend legend to Works, at light {P}")
    assert actions_of(told)[0].changes[0].new == "Works"
    assert codes(told)


@pytest.mark.parametrize("words", ["Works and Foul", "Works, Foul", "Works & Foul"])
def test_of_several_legends_none_is_taken(words: str) -> None:
    assert legends(f"Delete legends, {words}, {P}") == [(None, False)]
    assert "feature-legends-several" in errors(parse(f"{HEAD}Delete legends, {words}, {P}"))
    assert legends(f"Delete legends, Foul, {P}") == [("Foul", True)]
    assert legends(f"Delete legend, Works and Foul, {P}") == [("Works and Foul", True)]


@pytest.mark.parametrize(
    ("words", "kind", "legend"),
    [
        ("legend, Works, with Marina", "legend", "Marina"),
        ("legend, Works, by Foul ground", "legend", "Foul ground"),
        ('legend "Works" with "Marina"', "legend", "Marina"),
        ("legend Works with legend Marina", "legend", "Marina"),
        ("legend, Works, with marina", "small_craft_facility", None),
        ('legend, Works, with wreck "Halcyon"', "wreck", None),
    ],
)
def test_a_wording_replaces_a_wording(words: str, kind: str, legend: str | None) -> None:
    (action,) = actions_of(parse(f"{HEAD}Replace {words} {P}"))
    assert (action.replacement.kind, action.replacement.legend) == (kind, legend)
    assert action.feature.legend == "Works"


@pytest.mark.parametrize(
    ("words", "kind", "wording"),
    [
        ('wreck and legend, "Wk"', "legend", "Wk"),
        ("wreck and legend, Wk,", "legend", "Wk"),
        ("wreck, with legend, Foul ground,", "legend", "Foul ground"),
        ("restricted area and note, CAUTION", "note", "CAUTION"),
        ('pier and legend: "Ferry"', "legend", "Ferry"),
        ("wreck and legend, Wk, depth 5m", "legend", "Wk"),
    ],
)
def test_a_legend_beside_a_thing_has_its_wording(words: str, kind: str, wording: str) -> None:
    (action,) = actions_of(parse(f"{HEAD}Insert {words} {P}"))
    (beside,) = action.feature.companions
    assert (beside.feature.kind, beside.feature.legend) == (kind, wording)
    assert action.feature.name is None
    assert action.usable


def test_an_abbreviation_in_quotes_is_no_name() -> None:
    (action,) = actions_of(parse(f'{HEAD}Insert wreck with "PA" {P}'))
    assert action.feature.name is None
    assert codes(parse(f'{HEAD}Insert wreck with "PA" {P}')) == {"feature-words-unread"}
    (named,) = actions_of(parse(f'{HEAD}Insert wreck "Halcyon" {P}'))
    assert named.feature.name == "Halcyon"


def test_a_legend_without_words_is_held_back() -> None:
    held = {"item-without-feature"}
    assert errors(parse(f"{HEAD}Insert legend {P}")) == held
    circle = f"Insert circle radius 0.25M centred on {P}"
    assert errors(parse(f"{HEAD}{circle}, legend, Historic Wk")) == held
    assert legends(f'{circle}, legend, "Historic Wk"') == [("Historic Wk", True)]
    assert errors(parse(f"{HEAD}Delete legend {P}")) == set()


@pytest.mark.parametrize("sign", ["/", "//"])
def test_strokes_around_a_legend_part_it_from_the_rest(sign: str) -> None:
    assert legends(f'Insert {sign} legend "Foul" {sign} {P}') == [("Foul", True)]


@pytest.mark.parametrize("manner", [", over", ", across", " over", ", below"])
def test_how_a_legend_lies_to_its_place_is_none_of_its_words(manner: str) -> None:
    text = f"Insert legend, Works{manner} {P}"
    assert legends(text) == [("Works", True)]
    assert "feature-words-unread" in codes(parse(HEAD + text))


@pytest.mark.parametrize("wording", ["Works", "Overfalls", "Crossover", "Pass over wreck"])
def test_other_words_end_a_legend(wording: str) -> None:
    assert legends(f"Insert legend, {wording} {P}") == [(wording, True)]
