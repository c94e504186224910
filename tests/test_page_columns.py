"""Pages printed in two columns and copied line by line."""

from __future__ import annotations

from noticeparse import parse
from tests.short_notices import errors

LEFT = """\
501/26  QUILL SOUND.
Chart 2417 (last notice 477/26).
Insert rock, least depth 2.6 m
                47-12.34S 123-45.67W
Delete depth 9.7 m
                47-12.83S 123-44.70W
502/26  SABLE TOOTH ROCKS.
Chart 2422 (last notice 451/26).
Insert anchorage area, bounded by
                47-26.00S 124-31.00W
                47-26.00S 124-29.50W
                47-27.20S 124-29.50W
"""
RIGHT = """\
                47-27.20S 124-31.00W
    special buoy
                47-26.91S 124-29.70W

503/26  PORT ELLORY.
Chart 2419 (last notice 470/26).
Delete crane
                47-20.75S 123-30.74W
504/26  INNER QUILL.
Chart 2418 (last notice 465/26).
Insert dolphin
                47-08.14S 124-00.31W
"""
PAGE = "".join(
    f"{left:<44}{right}".rstrip() + "\n"
    for left, right in zip(LEFT.splitlines(), RIGHT.splitlines(), strict=True)
)


def test_the_left_column_is_read_before_the_right_one() -> None:
    bulletin = parse(PAGE)
    read = [
        (n.id, c.chart, [(a.verb, a.feature.kind, len(a.geometry.positions)) for a in c.actions])
        for n in bulletin.notices
        for c in n.charts
    ]
    assert read == [
        ("501/26", "2417", [("insert", "rock", 1), ("delete", "sounding", 1)]),
        ("502/26", "2422", [("insert", "anchorage_area", 4), ("insert", "buoy_special", 1)]),
        ("503/26", "2419", [("delete", "crane", 1)]),
        ("504/26", "2418", [("insert", "dolphin", 1)]),
    ]
    assert errors(bulletin) == set()
    assert "text-in-columns" in {one.code for one in bulletin.findings}


def test_verbs_that_stand_alone_over_their_items_tell_of_columns() -> None:
    left = "501/26  QUILL SOUND.\nChart 2417 [477/26]\nInsert\n  rock\n"
    left += "  47-12.34S 123-45.67W\nDelete"
    right = "  pile\n  47-12.83S 123-44.70W\n502/26  ELLORY.\nChart 2419 [470/26]\nInsert\n"
    right += "  crane  47-20.75S 123-30.74W"
    rows = zip(left.splitlines(), right.splitlines(), strict=True)
    page = "".join(f"{one:<44}{other}\n" for one, other in rows)
    following = "\f" + page.replace("501", "503").replace("502", "504")
    bulletin = parse(page + following)
    read = [
        [(one.verb, one.feature.kind) for chart in notice.charts for one in chart.actions]
        for notice in bulletin.notices
    ]
    assert read == [[("insert", "rock"), ("delete", "pile")], [("insert", "crane")]] * 2
    assert errors(bulletin) == set()


def test_spans_count_in_the_page_as_given() -> None:
    bulletin = parse(PAGE)
    crane = bulletin.notices[2].charts[0].actions[0]
    place = crane.geometry.positions[0].span
    assert PAGE[place.start : place.end] == "47-20.75S 123-30.74W"
    assert (place.line, place.column) == (8, 61)
    assert crane.text == "Delete crane 47-20.75S 123-30.74W"
    area = bulletin.notices[1].charts[0].actions[0]
    held = PAGE[area.span.start : area.span.end]
    assert all(one.written in held for one in area.geometry.positions)
    assert bulletin.source.characters == len(PAGE)
    counted = bulletin.coverage
    solid = len("".join(PAGE.split()))
    assert counted.read + counted.ignored + counted.unread == counted.characters == solid


def test_a_finding_leads_to_its_record_and_to_the_page() -> None:
    page = PAGE.replace("47-20.75S 123-30.74W", "47-72.75S 123-30.74W")
    (found,) = [one for one in parse(page).findings if one.severity == "error"]
    assert found.paths == ["/notices/2/charts/0/actions/0"]
    assert found.span is not None
    assert page[found.span.start : found.span.end] in "47-72.75S 123-30.74W"
    assert found.span.line == 8


def test_a_table_with_its_commands_at_the_right_is_no_such_page() -> None:
    rows = "".join(
        f"47-2{i}.75S 123-30.74W             {verb}   wreck\n"
        for i, verb in enumerate(("Insert", "Delete") * 4)
    )
    bulletin = parse(f"501/26  QUILL SOUND.\nChart 2417\n{rows}502/26 Ellory\nChart 803\n{rows}")
    assert "text-in-columns" not in {one.code for one in bulletin.findings}


TITLE = "CHART OFFICE" + " " * 62 + "Week 51/2026\n" + " " * 74 + "17 December 2026\n\n"


def test_the_title_of_a_page_belongs_to_neither_column() -> None:
    bulletin = parse(TITLE + PAGE)
    assert [one.code for one in bulletin.findings if one.severity != "info"] == [
        one.code for one in parse(PAGE).findings if one.severity != "info"
    ]
    assert [one.id for one in bulletin.notices] == [one.id for one in parse(PAGE).notices]
