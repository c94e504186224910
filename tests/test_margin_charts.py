"""Charts of the head that stand in the margin before each entry."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import P, Q, R, codes, errors

HEAD = "12/26 Quill Sound.\n      Charts 802 [3/26], 803 [4/26], 804 [5/26]. All WGS84.\n"


def by_chart(bulletin: Bulletin) -> dict[str, list[tuple[str, str]]]:
    return {
        str(section.chart): [(one.verb, one.feature.kind) for one in section.actions if one.usable]
        for section in bulletin.notices[0].charts
    }


WRECK, ROCK, PILE = ("insert", "wreck"), ("delete", "rock"), ("insert", "pile")


@pytest.mark.parametrize("several", ["802, 803", "802 and 803", "802 & 803", "802; 803"])
def test_entries_are_for_the_charts_in_their_margin(several: str) -> None:
    bulletin = parse(
        f"{HEAD}{several:<14}Insert  wreck  {P}\n803         Delete  rock   {Q}\n"
        f"all         Insert  pile   {R}\n"
    )
    assert by_chart(bulletin) == {"802": [WRECK, PILE], "803": [WRECK, ROCK, PILE], "804": [PILE]}
    assert codes(bulletin) == set()


@pytest.mark.parametrize("margin", ["not 803", "all except 803"])
def test_a_margin_that_leaves_out_a_chart_is_held(margin: str) -> None:
    rows = f"{margin:<16}Insert  wreck  {P}\n802             Delete  rock   {Q}\n"
    bulletin = parse(HEAD + rows)
    assert WRECK not in [one for told in by_chart(bulletin).values() for one in told]
    assert "item-of-one-chart" in errors(bulletin)


def test_a_margin_below_the_head_of_another_chart_is_held() -> None:
    bulletin = parse(
        f"12/26 Quill Sound.\nChart 802 [3/26]\n802    Insert  wreck  {P}\n"
        f"Chart 803 [4/26]\n802    Delete  rock   {Q}\n803    Insert  pile   {R}\n"
    )
    assert by_chart(bulletin) == {"802": [WRECK], "803": [PILE]}
    assert errors(bulletin) == {"item-of-one-chart"}


def test_places_below_an_entry_are_of_it() -> None:
    bulletin = parse(
        f"{HEAD}802, 803    Insert  submarine cable, joining  {P}\n{'':38}{Q}\n"
        f"803         Move    special buoy, from        {P}\n{'':20}to{'':16}{R}\n"
    )
    cable, move = ("insert", "cable_submarine"), ("move", "buoy_special")
    assert by_chart(bulletin) == {"802": [cable], "803": [cable, move], "804": []}


def test_an_entry_without_charts_among_others_is_held() -> None:
    bulletin = parse(
        f"{HEAD}802         Insert  wreck  {P}\n            Delete  rock   {Q}\n"
        f"803         Insert  pile   {R}\n"
    )
    assert by_chart(bulletin) == {"802": [WRECK], "803": [PILE], "804": []}
    assert errors(bulletin) == {"item-of-one-chart"}


def test_a_chart_that_the_head_does_not_name_is_held() -> None:
    for margin in ("802, 899", "899"):
        bulletin = parse(f"{HEAD}{margin:<12}Insert  wreck  {P}\n")
        assert [one for told in by_chart(bulletin).values() for one in told] == []
        assert errors(bulletin)


def test_margins_of_one_head_do_not_hold_under_the_next() -> None:
    text = (
        f"{HEAD}802         Insert  wreck  {P}\n"
        f"\n13/26 Quill Sound.\nChart 805 [3/26] WGS84\nDelete  rock   {Q}\n"
    )
    assert errors(parse(text)) == set()


def test_counted_items_are_no_charts() -> None:
    head = "12/26 Quill Sound.\nCharts 1 [3/26], 2 [4/26] WGS84\n"
    bulletin = parse(f"{head}1   Insert  wreck  {P}\n2   Delete  rock   {Q}\n")
    assert by_chart(bulletin) == {"1": [WRECK, ROCK], "2": [WRECK, ROCK]}


def test_heads_on_lines_of_their_own() -> None:
    head = "12/26 Quill Sound.\nChart 802 [3/26] WGS84\nChart 803 [4/26] WGS84\n"
    bulletin = parse(f"{head}803         Insert  wreck  {P}\n802         Delete  rock   {Q}\n")
    assert by_chart(bulletin) == {"802": [ROCK], "803": [WRECK]}
    assert codes(bulletin) == set()


@pytest.mark.parametrize("gap", ["   ", " "])
@pytest.mark.parametrize("several", ["802, 803", "802 and 803"])
def test_the_place_may_stand_between_the_charts_and_the_verb(several: str, gap: str) -> None:
    bulletin = parse(
        f"{HEAD}{several}{gap}{P}   insert wreck, least depth 4.1 m\n"
        f'803{gap}{Q}   delete rock "OD 7"\nall{gap}{R}   insert pile\n'
    )
    least = ("insert", "wreck_least_depth")
    assert by_chart(bulletin) == {"802": [least, PILE], "803": [least, ROCK, PILE], "804": [PILE]}
    assert codes(bulletin) == set()


@pytest.mark.parametrize("margin", ["", "805"])
def test_a_place_without_its_chart_among_others_is_held(margin: str) -> None:
    bulletin = parse(f"{HEAD}802   {P}   insert wreck\n{margin:<6}{Q}   delete rock\n")
    assert by_chart(bulletin) == {"802": [WRECK], "803": [], "804": []}
    assert "item-of-one-chart" in errors(bulletin)


def test_a_number_within_words_before_a_place_is_no_chart() -> None:
    bulletin = parse(f"12/26 Quill Sound.\nChart 4 [3/26]\nBuoy No 4   {P}   delete\n")
    assert by_chart(bulletin) == {"4": [("delete", "buoy_generic")]}
