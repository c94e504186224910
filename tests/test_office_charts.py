"""Charts as offices set them: stacked, in a title, in a table, at the foot, in a list."""

from __future__ import annotations

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, codes, kinds, places


def test_charts_stacked_above_the_items_they_share() -> None:
    text = (
        "12/26 Quill Sound.\nChart 802 (a, b) [3/26]\nChart 805 (b) [4/26]\n\n"
        f"Insert   (a) wreck   {P}\nDelete   (b) rock    {Q}\n"
    )
    charts = parse(text).notices[0].charts
    assert [(one.chart, [action.verb for action in one.actions]) for one in charts] == [
        ("802", ["insert", "delete"]), ("805", ["delete"]),
    ]  # fmt: skip


def test_a_chart_without_items_above_a_blank_line_shares_none() -> None:
    text = f"12/26 Quill Sound.\nChart 802 [3/26]\n\nChart 805 [4/26]\nInsert wreck   {P}\n"
    assert [len(one.actions) for one in parse(text).notices[0].charts] == [0, 1]


def test_the_number_of_a_chart_opens_its_title() -> None:
    text = (
        "Notice 12/26\n802 - Quill Bank to Sable Spit - Edition 4 - 12 June 2020 - WGS84\n"
        f"Last notice: 3/26\n\nInsert\nWreck\n{P}\n(File 26-0412-01)\n"
    )
    (chart,) = parse(text).notices[0].charts
    assert (chart.chart, chart.edition, chart.edition_date) == ("802", "4", "2020-06-12")
    assert chart.previous is not None
    assert [action.feature.text for action in chart.actions] == ["Wreck"]


def test_one_number_for_all_charts_and_codes_at_the_margin() -> None:
    text = (
        "LOCAL NOTICE TO MARINERS 33/26\nWeek of 17 August 2026\n\n"
        "SECTION IV  CHART CORRECTIONS\n\n"
        "Chart     Edition    Edition date    Last notice    Datum\n"
        "802       4th ed.    12-JUN-20       29/26          WGS84\n"
        "QUILL BANK TO SABLE SPIT\n"
        f"ADD         wreck                     at {P}    TWD\n"
        f"RELOCATE    special buoy            from {P}    TWD\n"
        f"                                      to {Q}\n"
        f"ADD         spoil ground,     bounded by {P}    NAV\n"
        f"                                         {Q}\n"
        f"                                         {R}\n"
    )
    bulletin = parse(text)
    assert [one.id for one in bulletin.notices] == ["33/26"]
    assert places(bulletin) == [[AT_P], [AT_P], [AT_P, AT_Q, AT_R]]
    move = bulletin.notices[0].charts[0].actions[1]
    assert isinstance(move, Move)
    assert [one.iso6709 for one in move.destination.positions] == [AT_Q]
    assert codes(bulletin) == set()


def test_cumulative_list() -> None:
    title = "III. CUMULATIVE LIST (since 1 January 2026)"
    (found,) = parse(f"{HEAD}Insert wreck {P}\n\n{title}\n\nChart 88   3, 12\n").lists
    assert found.kind == "other"
    assert [(one.chart, [ref.number for ref in one.notices]) for one in found.entries] == [
        ("88", [3, 12])
    ]


def test_dashes_before_what_is_to_be_done_and_charts_at_the_foot() -> None:
    text = (
        "204/26. — Vellis Bay. — Rocks.\n"
        "— A rock awash to be written in, in Lat. 46° 34' 22\" S., Long. 124° 50' 31\" W.\n"
        "— The sounding of 7 fathoms to be erased, in Lat. 46° 34' 44\" S.,\n"
        "  Long. 124° 51' 12\" W.\n"
        "Chart: No. 88 (fathoms and feet), last correction 188/26, WGS 84.\n"
    )
    bulletin = parse(text)
    assert bulletin.notices[0].charts[0].chart == "88"
    assert kinds(bulletin) == [("insert", "rock_awash"), ("delete", "sounding")]
    assert codes(bulletin) == set()
