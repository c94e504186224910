"""Whole layouts as offices, ports and chart rooms set them, each cut down to what is its own."""

from __future__ import annotations

from noticeparse import parse
from noticeparse.records import Bulletin
from noticeparse.records.action import Move

P, Q, R = "46-00.00S 122-00.00W", "46-00.50S 122-00.00W", "46-00.10S 122-00.20W"
AT_P, AT_Q, AT_R = "-4600.00-12200.00/", "-4600.50-12200.00/", "-4600.10-12200.20/"
HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84, depths in metres\n"
TITLES = "No.  Change    Object                 Lat. S      Long. W\n"


def places(bulletin: Bulletin) -> list[list[str]]:
    return [
        [position.iso6709 for position in action.geometry.positions]
        for notice in bulletin.notices
        for chart in notice.charts
        for action in chart.actions
    ]


def kinds(bulletin: Bulletin) -> list[tuple[str, str]]:
    return [
        (action.verb, action.feature.kind)
        for notice in bulletin.notices
        for chart in notice.charts
        for action in chart.actions
    ]


def codes(bulletin: Bulletin) -> set[str]:
    return {one.code for one in bulletin.findings if one.severity != "info"}


class TestMinutesBelowDegrees:
    """Rows that leave out the degrees of the row above."""

    ROWS = (
        "1    Insert    oil pipeline, joining  47 08.00    124 40.20\n"
        "                                         08.45        40.75\n"
        "                                         09.10        41.00\n"
    )

    def test_rows_of_minutes(self) -> None:
        bulletin = parse(HEAD + TITLES + self.ROWS)
        assert places(bulletin) == [
            ["-4708.00-12440.20/", "-4708.45-12440.75/", "-4709.10-12441.00/"]
        ]
        assert codes(bulletin) == set()

    def test_rows_of_degrees_stay_degrees(self) -> None:
        rows = self.ROWS.replace("08.45        40.75", "47.14       124.67")
        assert places(parse(HEAD + TITLES + rows))[0][1] == "-47.14-124.67/"

    def test_what_could_be_both_is_doubted(self) -> None:
        rows = (
            "1    Insert    oil pipeline, joining  47 08.00     12 40.20\n"
            "                                         47.14        12.67\n"
        )
        assert "position-shared-degrees-doubtful" in codes(parse(HEAD + TITLES + rows))

    def test_bare_figures_beside_a_rule_are_no_furniture(self) -> None:
        rule = "-" * 60 + "\n"
        first = "1    Insert    cable, joining         47 18.50    123 48.00\n"
        second = "2    Insert    pipeline, joining      47 19.50    123 49.00\n"
        more = "                                         17.20        46.30\n"
        text = HEAD + rule + TITLES + rule + first + more + rule + second + more + rule
        assert [len(found) for found in places(parse(text))] == [2, 2]


def test_cells_wrapped_with_their_position() -> None:
    rows = (
        "1    Replace   anchor berth P3 with\n"
        "               mooring buoy           47 07.35    124 36.40\n"
        "2    Amend     light 2F.R(vert)6m3M:  47 06.80    124 31.10\n"
        "               elevation to 9m\n"
        "3    Delete    special buoy           47 11.25    124 41.60\n"
    )
    bulletin = parse(HEAD + TITLES + rows)
    assert kinds(bulletin) == [
        ("replace", "anchor_berth"), ("amend", "light"), ("delete", "buoy_special"),
    ]  # fmt: skip
    assert codes(bulletin) == set()


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


def test_numbered_clauses_with_tables_below_them() -> None:
    text = (
        "PORT CIRCULAR No 58 of 2026\nSOUTH REACH\n\n"
        "1.\tFrom 1 October 2026 chart 806 is to be corrected as set out below.\n"
        "\tPrevious circular for this chart: 51/26. All positions are on WGS84.\n\n"
        "2.\tInsert the following light-buoys:\n"
        "\tName\tKind\tLight\tLatitude\tLongitude\n"
        "\tC1\tstarboard-hand light-buoy\tFl.G.3s\t46°00.00'S\t122°00.00'W\n"
        "\t-\tsafe-water light-buoy\tIso.4s\t46°00.50'S\t122°00.00'W\n\n"
        "3.\tDelete the following marks:\n"
        "\tName\tKind\tLight\tLatitude\tLongitude\n"
        "\tNo 2\tport-hand buoy\t-\t46°00.10'S\t122°00.20'W\n\n"
        "4.\tInsert a fairway, bounded by a line joining the following points:\n"
        "\tPoint\tLatitude\tLongitude\n"
        "\tA\t46°00.00'S\t122°00.00'W\n\tB\t46°00.50'S\t122°00.00'W\n"
        "\tC\t46°00.10'S\t122°00.20'W\n\n"
        "5.\tInsert special light-buoys, Fl.Y.4s, at points A and C above.\n"
    )
    bulletin = parse(text)
    (notice,) = bulletin.notices
    (chart,) = notice.charts
    assert (notice.id, notice.series, chart.chart) == ("58/26", "PORT CIRCULAR", "806")
    assert (chart.previous.number if chart.previous else None) == 51
    assert [action.verb for action in chart.actions] == ["insert"] * 2 + ["delete"] + [
        "insert"
    ] * 2
    assert [action.feature.name for action in chart.actions] == ["C1", None, "No 2", None, None]
    assert places(bulletin)[3:] == [[AT_P, AT_Q, AT_R], [AT_P, AT_R]]
    assert codes(bulletin) == set()


class TestFeaturesBesideLetteredPlaces:
    """Lettered places with their features behind, and features that follow no letter."""

    BODY = (
        "INSERT\n"
        "  (a)  46-00.00 S  122-00.00 W   wreck\n"
        "       isolated danger buoy, close SE of (a) above\n"
        "       submarine pipeline, joining:\n"
        "  (b)  46-00.00 S  122-00.00 W\n"
        "  (c)  46-00.50 S  122-00.00 W\n"
        "  (d)  46-00.10 S  122-00.20 W   rock\n"
    )
    MOVE = (
        "MOVE\n       special buoy\n"
        "  (e)  from 46-00.00 S  122-00.00 W\n  (f)  to   46-00.50 S  122-00.00 W\n"
    )

    def test_a_feature_without_a_letter_is_an_item(self) -> None:
        bulletin = parse(HEAD + self.BODY)
        assert kinds(bulletin) == [
            ("insert", "wreck"), ("insert", "buoy_isolated_danger"), ("insert", "pipeline"),
            ("insert", "rock"),
        ]  # fmt: skip
        assert places(bulletin) == [[AT_P], [AT_P], [AT_P, AT_Q], [AT_R]]

    def test_both_ends_of_a_move_have_letters(self) -> None:
        action = parse(HEAD + self.BODY + self.MOVE).notices[0].charts[0].actions[-1]
        assert isinstance(action, Move)
        assert [one.iso6709 for one in action.geometry.positions] == [AT_P]
        assert [one.iso6709 for one in action.destination.positions] == [AT_Q]


def test_a_move_that_does_not_say_from_where_is_refused() -> None:
    bulletin = parse(f"{HEAD}Move special buoy No 4 to {P}\n")
    (action,) = bulletin.notices[0].charts[0].actions
    assert not action.usable
    assert "move-unpaired" in codes(bulletin)


def test_cumulative_list() -> None:
    title = "III. CUMULATIVE LIST (since 1 January 2026)"
    (found,) = parse(f"{HEAD}Insert wreck {P}\n\n{title}\n\nChart 88   3, 12\n").lists
    assert found.kind == "other"
    assert [(one.chart, [ref.number for ref in one.notices]) for one in found.entries] == [
        ("88", [3, 12])
    ]


def test_verbs_over_clauses_numbered_in_three_parts() -> None:
    text = (
        "NOTICE TO SHIPPING No. 44/2026\nDated 3 November 2026\n"
        "Subject: works ended; Notice 21(T)/2026 is cancelled\n\n"
        "1     Chart 806 (corrected to 39/2026), positions WGS84\n"
        "1.1   The following are established:\n"
        "1.1.1   No 9, starboard-hand buoy, at 46°00.00' South 122°00.00' West\n"
        "1.1.2   A wreck at 46°00.50' South 122°00.00' West\n"
        "1.2   The following are removed:\n"
        "1.2.1   A rock at 46°00.10' South 122°00.20' West\n"
        "2     Chart 803 (corrected to 36/2026), positions WGS84\n"
        "2.1   The following are established:\n"
        "2.1.1   A wreck at 46°00.50' South 122°00.00' West\n"
    )
    bulletin = parse(text)
    (notice,) = bulletin.notices
    assert [(ref.number, ref.status) for ref in notice.cancels] == [(21, "temporary")]
    assert [(one.chart, len(one.actions)) for one in notice.charts] == [("806", 3), ("803", 1)]
    assert kinds(bulletin)[:3] == [
        ("insert", "buoy_lateral_starboard"), ("insert", "wreck"), ("delete", "rock"),
    ]  # fmt: skip
    assert codes(bulletin) == set()


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


def test_numbers_behind_the_headings_and_verbs_in_the_last_column() -> None:
    text = (
        "QUILL SOUND - Wreck                                                    2817/26\n"
        "Chart 802 [2744/26] WGS 84\n"
        f"   {P}    Wreck                                        Establish\n"
        f"   {Q}    Submarine cable, joining                     Establish\n"
        f"   {R}\n"
        f"   {P}    Special buoy                                 Expunge\n\n"
        "PORT ELLORY - Works                                                 2818(T)/26\n"
        f"Two barges lie in {Q}.\nChart affected: 816\n"
    )
    bulletin = parse(text)
    assert [one.id for one in bulletin.notices] == ["2817/26", "2818(T)/26"]
    assert bulletin.notices[0].heading == "QUILL SOUND - Wreck"
    assert places(bulletin) == [[AT_P], [AT_Q, AT_R], [AT_P]]
    assert [one.chart for one in bulletin.notices[1].charts] == ["816"]


class TestVerbsInBrackets:
    """`Wreck [remove] P`: each line has its own verb, none is carried down."""

    def test_they_belong_to_their_line(self) -> None:
        body = f"* Wreck [chart] {P}\n* Cable [take up] joining {Q}, {R}\n"
        bulletin = parse(HEAD + body)
        assert kinds(bulletin) == [("insert", "wreck"), ("delete", "cable_submarine")]
        assert places(bulletin) == [[AT_P], [AT_Q, AT_R]]

    def test_a_line_without_one_is_told(self) -> None:
        body = f"* Wreck [chart] {P}\n* Rock [as before] {Q}\n* Buoy [remove] {R}\n"
        bulletin = parse(HEAD + body)
        assert "item-without-verb" in codes(bulletin)
        assert [verb for verb, _ in kinds(bulletin)] == ["insert", "delete"]


def test_statements_with_the_place_in_front_and_roman_numbers() -> None:
    text = (
        "No. 58 of 2026 - QUILL SOUND\n"
        "     i.   46° 00'.00 S, 122° 00'.00 W: wreck has been found.\n"
        "     ii.  46° 00'.50 S, 122° 00'.00 W: special buoy has been moved\n"
        "          to 46° 00'.10 S, 122° 00'.20 W.\n"
        "Charts to be corrected: 802 (last notice 51/26).\n"
    )
    bulletin = parse(text)
    assert kinds(bulletin) == [("insert", "wreck"), ("move", "buoy_special")]
    assert places(bulletin) == [[AT_P], [AT_Q]]
    assert codes(bulletin) == set()


def test_route_positions_counted_below_a_cable() -> None:
    body = (
        "To be written in\n   submarine cable, joining the route positions:\n"
        "      01  BMH   S 46 00.000  W 122 00.000\n      02  FS    S 46 00.500  W 122 00.000\n"
        "   wreck, at S 46 00.100  W 122 00.200\n"
    )
    bulletin = parse(HEAD + body)
    assert kinds(bulletin) == [("insert", "cable_submarine"), ("insert", "wreck")]
    assert [len(found) for found in places(bulletin)] == [2, 1]
    assert codes(bulletin) == set()


def test_quoted_table_with_titles_in_underscores() -> None:
    text = (
        '"notice";"chart";"last_applied";"action";"object";"position";"to_position"\n'
        '"46/26";"802";"45/26";"move";"special buoy";"-4600.00-12200.00/";"-4600.50-12200.00/"\n'
        '"47(T)/26";"816";"";"note";"A barge is at work.";"-4600.10-12200.20/";""\n'
    )
    bulletin = parse(text)
    move = bulletin.notices[0].charts[0].actions[0]
    assert isinstance(move, Move)
    assert [one.iso6709 for one in move.destination.positions] == [AT_Q]
    previous = bulletin.notices[0].charts[0].previous
    assert previous is not None
    assert previous.number == 45
    assert [one.iso6709 for one in bulletin.notices[1].remarks[0].positions] == [AT_R]


class TestLoneFiguresUnderHemispheres:
    """Two figures under `Lat. S` and `Long. W` are degrees only where nothing else is likely."""

    ROW = "1    Insert    wreck                  12.34       45.67\n"

    def test_without_degrees_above_they_are_refused(self) -> None:
        bulletin = parse(HEAD + TITLES + self.ROW)
        assert places(bulletin) == [[]]
        assert codes(bulletin) == {"position-shared-degrees-unknown"}

    def test_whole_degrees_in_a_row_of_their_own_are_not_taken(self) -> None:
        degrees = "                                      47°         123°\n"
        assert places(parse(HEAD + TITLES + degrees + self.ROW))[-1] == []

    def test_a_new_item_that_leaves_out_its_degrees_is_told(self) -> None:
        above = "1    Insert    rock                   47 12.30    123 45.60\n"
        bulletin = parse(HEAD + TITLES + above + self.ROW)
        assert places(bulletin)[-1] == ["-4712.34-12345.67/"]
        assert "position-degrees-from-above" in [one.code for one in bulletin.findings]

    def test_a_row_that_cannot_be_read_lends_no_degrees(self) -> None:
        rows = (
            "1    Insert    rock                   47 12.30    123 45.60\n"
            "2    Insert    wreck                  48 7l.00    123 45.60\n"
        )
        bulletin = parse(HEAD + TITLES + rows + self.ROW)
        assert places(bulletin)[1:] == [[], []]

    def test_minutes_beside_degrees_and_minutes_are_refused(self) -> None:
        row = "1    Insert    wreck                  12.34       123 45.67\n"
        bulletin = parse(HEAD + TITLES + row)
        assert places(bulletin) == [[]]
        assert "position-shared-degrees-unknown" in codes(bulletin)

    def test_decimal_degrees_are_read(self) -> None:
        row = self.ROW.replace("12.34 ", "47.20567").replace("45.67", "123.76117")
        assert places(parse(HEAD + TITLES + row)) == [["-47.20567-123.76117/"]]


def test_marks_of_quality_behind_the_places_are_no_codes_of_sources() -> None:
    rows = "".join(f"Insert    wreck    {place}   ED\n" for place in (P, Q, R))
    for action in parse(HEAD + rows).notices[0].charts[0].actions:
        assert "ED" in action.feature.text


def test_a_replacement_by_nothing_is_refused() -> None:
    rows = "ACTION\tOBJECT\tOLD\tNEW\tPOSITION\nReplace\tWreck\tdepth unknown\tnil\t" + P
    (action,) = parse(HEAD + rows).notices[0].charts[0].actions
    assert not action.usable


def test_numbers_before_positions_with_features_are_items() -> None:
    body = f"Insert along the line\n1   {P}   wreck\n2   {Q}   rock\n"
    bulletin = parse(HEAD + body)
    assert {kind for _, kind in kinds(bulletin)} >= {"wreck", "rock"}
