"""Sheets with room for what is filled in by hand: boxes to tick, names, days."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.layout.copied.blank_forms import without_blank_forms
from tests.short_notices import AT_P, AT_Q, AT_R, P, Q, R, codes, told

SHEET = (
    "CHART 802   Quill Sound         NOTICE 311/26   Datum WGS84\n"
    "Check that 287/26 is already on the chart:  yes [ ]  no [ ]\n"
    f"  [ ] 1   Draw in    light-buoy, Fl.G.4s, No 7              {P}\n"
    f"  [ ] 2   Overwrite  depth 9.6 m with depth 8.7 m           {Q}\n"
    f'  [ ] 3   Write      the legend "Unexploded ordnance"       {R}\n'
    "  Jobs on this chart: 3         Done by .............  Date ..........\n"
)


def test_a_work_sheet_is_read_without_its_boxes() -> None:
    bulletin = parse(SHEET)
    assert told(bulletin) == [
        ("insert", "light_buoy_generic", [AT_P]), ("replace", "sounding", [AT_Q]),
        ("insert", "legend", [AT_R]),
    ]  # fmt: skip
    (section,) = bulletin.notices[0].charts
    assert section.previous is not None
    assert section.previous.number == 287
    assert section.actions[0].feature.name == "No 7"
    assert codes(bulletin) == set()


def test_what_is_left_out_is_furniture() -> None:
    coverage = parse(SHEET).coverage
    assert coverage.unread == 0
    assert coverage.ignored >= len("[][][]yes[]no[]Doneby")


@pytest.mark.parametrize(
    "line",
    [
        "[x] new   [ ] taken away   [ ] moved",
        "  [ ] new   [x] taken away",
        "insert light, Fl.5s [ ]",
        "Date 5 May 2026",
        "Entered by the master",
    ],
)
def test_other_lines_are_left_as_they_stand(line: str) -> None:
    text = f"{line}\n{line}\n{line}\n"
    assert without_blank_forms(text) == (text, [])


def test_rows_keep_what_stands_before_room_for_a_name() -> None:
    head = SHEET.partition("Check")[0].replace("\n", "    Entered by ........\n")
    bulletin = parse(
        f"{head}Insert wreck {P}    Done ........\nDelete rock {Q}    Done ........\n"
    )
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


@pytest.mark.parametrize(
    "line",
    [
        f"Delete wreck name ______ {P}",
        f"Insert obstruction, position corrected .......... {P}",
        f"Delete rock {Q} ..... done by ....... not yet",
        f"[x] Delete buoy {R}\n[ ] Insert wreck {P}\n[ ] Insert rock {Q}",
    ],
)
def test_what_holds_a_command_is_left_as_it_stands(line: str) -> None:
    assert without_blank_forms(line) == (line, [])


def test_one_box_alone_is_none() -> None:
    assert without_blank_forms("[ ] wreck\n")[1] == []


@pytest.mark.parametrize(
    "line",
    [
        "Drawn: EK     Checked: RMD",
        "  Drawn by EK, checked by R.M.D.",
        "Compiled by: AB / Examined by: CD / Approved by: EF",
        "Entered: EK; verified: RMD",
    ],
)
def test_who_drew_and_checked_a_notice_is_left_out(line: str) -> None:
    text = (
        "Notice:       118/26\nChart:        802\nDatum:        WGS 84\n\n"
        f"Action:       Insert\nObject:       Wreck\nPosition:     {P}\n\n{line}\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert codes(bulletin) == set()
    assert bulletin.coverage.unread == 0


@pytest.mark.parametrize(
    "line",
    [
        "Drawn: EK",
        "Drawn: wreck   Checked: RMD",
        "Drawn: EK   Entered: WK",
        f"Drawn: WK {P}   Checked: RMD",
        "Approved by the Board",
    ],
)
def test_a_line_with_more_than_such_initials_stays(line: str) -> None:
    assert without_blank_forms(f"{line}\n") == (f"{line}\n", [])
