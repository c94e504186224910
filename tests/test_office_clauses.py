"""Clauses as offices set them: numbered, lettered, below a verb, each with a verb of its own."""

from __future__ import annotations

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, codes, kinds, places


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


def test_numbers_before_positions_with_features_are_items() -> None:
    body = f"Insert along the line\n1   {P}   wreck\n2   {Q}   rock\n"
    bulletin = parse(HEAD + body)
    assert {kind for _, kind in kinds(bulletin)} >= {"wreck", "rock"}
