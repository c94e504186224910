"""Run-on sentences with the place in front: `in P insert rock; in Q delete buoy`."""

from __future__ import annotations

from noticeparse import parse
from noticeparse.records import Move
from tests.short_notices import AT_P, AT_Q, AT_R, P, Q, R, errors, told


def test_each_clause_keeps_its_own_place() -> None:
    text = (
        f"2101/26. Quill Sound. Chart 812 (2044/26): in {P} insert a\n"
        f"north cardinal light-buoy, Q; in {Q} insert a wreck, least depth 13.2 m;\n"
        f"in {R} delete the rock.\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [
        ("insert", "buoy_cardinal_north", [AT_P]),
        ("insert", "wreck_least_depth", [AT_Q]),
        ("delete", "rock", [AT_R]),
    ]
    assert errors(bulletin) == set()


def test_a_line_end_between_place_and_verb_parts_nothing() -> None:
    text = (
        f"2101/26. Quill Sound. Chart 812: in {P} insert a wreck; in {Q}\ndelete the rock; from\n"
        f"{Q} to {R} move the mooring buoy.\n"
    )
    bulletin = parse(text)
    wreck, rock, buoy = bulletin.notices[0].charts[0].actions
    assert [one.verb for one in (wreck, rock, buoy)] == ["insert", "delete", "move"]
    assert isinstance(buoy, Move)
    assert [p.iso6709 for p in buoy.destination.positions] == [AT_R]
    assert errors(bulletin) == set()


def test_a_relation_behind_the_chart_belongs_to_the_first_clause() -> None:
    text = (
        f"2104/26. Port Ellory. Chart 820 (2090/26): in the area bounded by\n{P}, {Q} and {R}\n"
        f'insert an anchorage area; in {P} insert the legend "Small Craft".\n'
    )
    bulletin = parse(text)
    area, legend = bulletin.notices[0].charts[0].actions
    assert (area.geometry.shape, len(area.geometry.positions)) == ("area", 3)
    assert (legend.feature.legend, len(legend.geometry.positions)) == ("Small Craft", 1)
    assert errors(bulletin) == set()


def test_a_verb_in_a_column_between_feature_and_place_is_of_its_own_row() -> None:
    for lead in (" . ", " ........ ", "      "):
        text = (
            f"204/26 Quill Sound\nChart 23\nWreck{lead}insert{lead}{P}\n"
            f"Rock{lead}delete{lead}{Q}\nDepth 2.2 m{lead}insert{lead}{R}\n"
        )
        bulletin = parse(text)
        assert told(bulletin) == [
            ("insert", "wreck", [AT_P]),
            ("delete", "rock", [AT_Q]),
            ("insert", "sounding", [AT_R]),
        ]
        assert errors(bulletin) == set()
