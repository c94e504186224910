"""Paragraphs with numbers of several parts: references to them, and what a line end parts."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, P, Q, R, actions_of, codes, errors, told

HEAD = "Notice 23 of 2026.  TAVRENNE ISLANDS, QUILL SOUND.  Buoyage.\n\n"
CHART = "1.  Chart 802 (last notice 14 of 2026), WGS84, depths in metres.\n"
LIST = (
    f"    1.1  Insert:\n         1.1.1  a wreck in {P};\n         1.1.2  a rock in {Q}.\n"
    "    1.2  Delete:\n"
)


def notice(items: str) -> str:
    return f"{HEAD}{CHART}{items}"


@pytest.mark.parametrize(
    "place",
    [
        "close N of the position in 1.1.2 above",
        "close N of 1.1.2 above",
        "close N of paragraph 1.1.2 above",
        "close N of the rock in\n                1.1.2 above",
    ],
)
def test_a_paragraph_stands_for_the_place_of_its_item(place: str) -> None:
    bulletin = parse(notice(f"{LIST}         1.2.1  the depth of 7.2 metres, {place}.\n"))
    assert told(bulletin)[2] == ("delete", "sounding", [AT_Q])
    assert actions_of(bulletin)[2].geometry.relation == "close"
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "place", ["close N of the position in 1.1.7 above", "close N of paragraph 1.3 above"]
)
def test_a_paragraph_that_is_not_there_holds_the_item(place: str) -> None:
    bulletin = parse(notice(f"{LIST}         1.2.1  the depth of 7.2 metres, {place}.\n"))
    assert len(told(bulletin)) == 2
    assert errors(bulletin) == {"letter-unknown"}


def test_a_paragraph_of_another_chart_is_none_of_this_one() -> None:
    other = (
        "2.  Chart 803 (last notice 9 of 2026), WGS84, depths in metres.\n    2.1  Delete:\n"
        "         2.1.1  the depth of 7.2 metres, close N of the position in 1.1.2 above.\n"
    )
    bulletin = parse(notice(f"{LIST}         1.2.1  the beacon in {R}.\n{other}"))
    assert [one[:2] for one in told(bulletin)] == [
        ("insert", "wreck"), ("insert", "rock"), ("delete", "beacon_generic"),
    ]  # fmt: skip
    assert errors(bulletin) == {"letter-unknown"}


def test_a_figure_of_two_parts_is_no_paragraph() -> None:
    item = f"         1.2.1  the rock that dries, of 1.1 above datum, {R}.\n"
    bulletin = parse(notice(LIST + item))
    assert AT_Q not in [place for one in told(bulletin)[2:] for place in one[2]]
    assert "letter-unknown" not in errors(bulletin)


@pytest.mark.parametrize(
    ("new", "kind"),
    [
        ("a\n         depth of 0.3 metres", "sounding"),
        ("a south\n         cardinal light-buoy, Q", "buoy_cardinal_south"),
    ],
)
def test_a_sentence_below_a_list_goes_on_over_its_line(new: str, kind: str) -> None:
    """The verb is that of the sentence, not that of the heading above."""
    text = (
        f"    1.1  Move:\n         1.1.1  the mooring buoy from {P} to {Q}.\n"
        f"    1.2  The drying height of 1.1 metres in {R} is replaced by {new}.\n"
    )
    bulletin = parse(notice(text))
    assert [one[:2] for one in told(bulletin)] == [
        ("move", "buoy_mooring"), ("replace", "drying_height"),
    ]  # fmt: skip
    assert told(bulletin)[1][2] == [AT_R]
    replacement = actions_of(bulletin)[1].replacement  # type: ignore[union-attr]
    assert replacement.kind == kind
    assert errors(bulletin) == set()


def test_a_thing_on_the_next_line_of_a_list_is_no_part_of_the_sentence_above() -> None:
    text = (
        f"    1.1  Delete:\n         1.1.1  the beacon in {P};\n"
        f"    1.2  The wreck in {Q} is replaced by a rock\n         a depth of 5 metres in {R}.\n"
    )
    bulletin = parse(notice(text))
    assert told(bulletin)[0] == ("delete", "beacon_generic", [AT_P])
    assert not any(one[0] == "replace" and AT_R in one[2] for one in told(bulletin))
