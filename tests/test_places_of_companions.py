"""Places, things and ends that words name beside a thing, and that are not its own."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, codes, errors, told


@pytest.mark.parametrize(
    ("item", "code"),
    [
        (f"Insert light-buoy, Fl.R.4s, marking wreck ({P}), in {Q}", "place-of-another"),
        (f"Insert light-buoy, Fl.R.4s, near the rock ({P}) in {Q}", "relation-unclear"),
        (f"Insert E cardinal light-buoy, marking wreck, {P}, {Q}", "place-of-another"),
        (f"Move buoy marking wreck ({P}) to {Q}", "place-of-another"),
        (f"Insert light-buoy, Fl.R.4s, close E of wreck ({P}), in {Q}", "relation-unclear"),
        (f"Insert wreck close N of rock ({P}) and in {Q}", "relation-unclear"),
        (f"Delete all buoys between No 1 ({P}) and No 7 ({Q})", "relation-unclear"),
    ],
)
def test_a_place_of_what_is_named_beside_a_thing_is_not_given_to_it(item: str, code: str) -> None:
    bulletin = parse(HEAD + item)
    assert told(bulletin) == []
    assert code in errors(bulletin)


@pytest.mark.parametrize(
    ("item", "expected"),
    [
        (f"Insert buoys marking the channel {P}, {Q}", [AT_P, AT_Q]),
        (f"Insert beacon with topmark {P}, {Q}", [AT_P, AT_Q]),
        (f"Insert light on pier {P} and {Q}", [AT_P, AT_Q]),
        (f"Insert mooring buoys off quay ({P}) and ({Q})", [AT_P, AT_Q]),
        (f"Insert buoy marking wreck {P}", [AT_P]),
        (f"Move buoy marking wreck from {P} to {Q}", [AT_P]),
        (f"Move buoy near pier head {P} to {Q}", [AT_P]),
    ],
)
def test_places_of_the_thing_itself_stay_its_own(item: str, expected: list[str]) -> None:
    bulletin = parse(HEAD + item)
    assert [places for *_, places in told(bulletin)] == [expected]


@pytest.mark.parametrize(
    "item",
    [
        f"Insert front light, Q.R, {P} and rear light, Iso.R.4s, 0.3M 225° from front.",
        f"Insert wreck {P}, 010° 1.2M from which lies a rock",
        f"Insert jetty from {P} to {Q} and light, F.R, at the latter",
        f"Insert pier joining {P} and {Q}, and a light, F.R",
        f"Delete jetty between {P} and {Q}, also light, F.R, on its end",
    ],
)
def test_a_second_thing_behind_the_places_is_not_taken_for_a_part(item: str) -> None:
    bulletin = parse(HEAD + item)
    assert told(bulletin) == []
    assert errors(bulletin) == {"feature-kinds-several"}


@pytest.mark.parametrize(
    ("item", "kind"),
    [
        (f"Insert beacon {P} and light, Fl.R.3s", "light_beacon"),
        (f"Insert wreck {P}, and associated 10m contour", "wreck"),
        (f"Insert rear light, F.R, {P}, 0.3M 225° from front light", "light"),
        (f"Insert light, Fl.R.3s, {P} (1.2 miles 045° from Quill Point)", "light"),
    ],
)
def test_what_goes_with_a_thing_at_one_place_stays_with_it(item: str, kind: str) -> None:
    assert told(parse(HEAD + item)) == [("insert", kind, [AT_P])]


@pytest.mark.parametrize(
    "item",
    [
        f"Insert restricted area {P} to {Q} (NW and SE corners)",
        f"Insert restricted area, opposite corners {P} and {Q}",
        f"Insert cable from shore {P} due west to the chart edge",
    ],
)
def test_an_extent_that_words_tell_lacks_its_places(item: str) -> None:
    bulletin = parse(HEAD + item)
    assert told(bulletin) == []
    assert "geometry-too-few-positions" in errors(bulletin)


def test_a_line_that_runs_on_to_the_edge_of_the_chart_is_told() -> None:
    bulletin = parse(f"{HEAD}Insert submarine cable joining {P}, {Q} and the chart edge\n")
    assert told(bulletin) == [("insert", "cable_submarine", [AT_P, AT_Q])]
    assert codes(bulletin) == {"geometry-along-coast"}


def test_a_corner_of_something_else_takes_nothing_away() -> None:
    bulletin = parse(
        f"{HEAD}Insert restricted area, NW corner of harbour, joining {P}, {Q}, {R}\n"
    )
    assert told(bulletin) == [("insert", "restricted_area", [AT_P, AT_Q, AT_R])]
