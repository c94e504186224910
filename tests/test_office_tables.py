"""Tables as offices set them: degrees left out, wrapped cells, verbs in a last column."""

from __future__ import annotations

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, codes, kinds, places

TITLES = "No.  Change    Object                 Lat. S      Long. W\n"


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
