"""The borders of the checks: what is just told, what is just passed over, and where it points."""

from __future__ import annotations

import re

import pytest

from noticeparse import parse
from noticeparse.catalogue import ENTRIES, sheets
from noticeparse.chart_list import read_list
from noticeparse.checks.features import amended
from noticeparse.records import Bulletin
from noticeparse.records.action import Amend
from tests.short_notices import HEAD, P
from tests.specimens import AGAINST_A_LIST, OF_A_VALUE, bad_text
from tests.test_edition_checks import EDITION, notice

OF_THE_WHOLE = {
    "datum-not-stated", "depth-unit-not-stated", "item-of-one-chart", "item-without-chart",
}  # fmt: skip
"""Told once, of several charts or of an item without one."""


def codes(bulletin: Bulletin) -> list[str]:
    return [one.code for one in bulletin.findings if one.severity != "info"]


@pytest.mark.parametrize("code", sorted(set(ENTRIES) - OF_A_VALUE - OF_THE_WHOLE))
def test_finding_names_the_notice_and_the_chart_it_points_at(code: str) -> None:
    """Contract, Finding: `notice` and `chart` say where the record is to which `paths` lead."""
    charts = read_list(sheets.SPECIMEN_LIST) if code in AGAINST_A_LIST else None
    bulletin = parse(bad_text(code), charts=charts)
    for finding in bulletin.findings:
        if finding.code in OF_THE_WHOLE or len(finding.paths) != 1:
            continue
        place = re.match(r"/notices/([0-9]+)(?:/charts/([0-9]+))?", finding.paths[0])
        if place is not None:
            pointed = bulletin.notices[int(place[1])]
            assert finding.notice == pointed.id
            if place[2] is not None:
                assert finding.chart == pointed.charts[int(place[2])].chart


# Lists of an edition

PROSE = "{} Quill Sound.\nThe light is out.\nChart {}\n\n"


def test_what_a_warning_cancels_stands_in_no_list() -> None:
    cancelled = "NOTICES CANCELLED\n3(T)/26\n\n"
    text = notice("12/26", "802 [2/26]", more="Notice 3(T)/26 is cancelled.\n")
    warning = "TAVRENNE COASTAL WARNING 41/26\nLIGHT OUT IN 46-13.05S 122-44.20W.\n"
    bulletin = parse(EDITION + cancelled + text + warning + "CANCEL WARNING 38/26.\n")
    assert [[ref.number for ref in one.cancels] for one in bulletin.notices] == [[3], [38]]
    assert codes(bulletin) == []


def test_an_index_with_temporary_notices_has_them_all() -> None:
    index = "INDEX OF CHARTS\n802 .... 12\n803 .... 13(T)\n\n"
    text = EDITION + index + notice("12/26", "802 [7/26]") + PROSE.format("13(T)/26", 803)
    assert codes(parse(text)) == []
    (finding,) = parse(text + PROSE.format("14(P)/26", 804)).findings
    assert (finding.code, finding.notice, finding.chart) == (
        "index-without-chart", "14(P)/26", "804",
    )  # fmt: skip


def test_a_chart_of_two_plans_is_missed_once() -> None:
    index = "INDEX OF CHARTS\n802 .... 12\n\n"
    text = notice("12/26", "802 [7/26]", "803, plan A [7/26]", "803, plan B [7/26]")
    assert codes(parse(EDITION + index + text)) == ["index-without-chart"]


def test_a_chart_word_before_the_chart_of_an_index() -> None:
    index = "INDEX OF CHARTS\nChart 802 .... 12\nChart 804 .... 13\n\n"
    text = notice("12/26", "802 [7/26]") + notice("13/26", "803 [7/26]")
    assert codes(parse(EDITION + index + text)) == [
        "index-chart-not-in-notice", "index-without-chart",
    ]  # fmt: skip


INTERNATIONAL = [
    ("INT 9802 .... 12", "INT 9802", [12], []),
    ("INT 9802  12", "INT 9802", [12], []),
    ("INT 9802: 12, 12", "INT 9802", [12, 12], []),
    ("802 (INT 9802) .... 12", "802", [12], []),
    ("INT 9802 (802) .... 12", "802", [12], []),
    ("INT 9802  802 .... 12", "802", [12], []),
    ("INT 9803 .... 12", "INT 9803", [12], ["index-chart-not-in-notice", "index-without-chart"]),
]


@pytest.mark.parametrize(("line", "chart", "numbers", "told"), INTERNATIONAL)
def test_an_index_by_international_numbers(
    line: str, chart: str, numbers: list[int], told: list[str]
) -> None:
    text = f"{EDITION}INDEX OF CHARTS\n{line}\n\n{notice('12/26', '802 (INT 9802) [7/26]')}"
    bulletin = parse(text)
    (entry,) = bulletin.lists[0].entries
    assert (entry.chart, [ref.number for ref in entry.notices]) == (chart, numbers)
    assert codes(bulletin) == told


def test_temporary_notices_do_not_widen_the_range_of_an_edition() -> None:
    rest = notice("12/26", "802 [10/26]") + notice("13/26", "803 [2/26]")
    for first, told in (("9(T)/26", False), ("9/26", True)):
        found = parse(EDITION + notice(first, "804") + rest).findings
        assert ("previous-gap" in [one.code for one in found]) is told


def test_warnings_are_outside_the_range_stated() -> None:
    text = f"{EDITION}Notices 12 to 12 of 2026\n\n{notice('12/26', '802 [3/26]')}"
    warning = "TAVRENNE COASTAL WARNING 41/26\nLIGHT OUT IN 46-13.05S 122-44.20W.\n"
    assert "notice-outside-range" not in codes(parse(text + warning))
    local = "PORT ELLORY LOCAL NOTICE No 41/26\nChart 802\nInsert wreck 46-13.05S 122-44.20W\n"
    assert "notice-outside-range" not in codes(parse(text + local))
    assert "notice-outside-range" in codes(parse(text + notice("14/26", "803 [3/26]")))


def test_missing_notices_are_told_in_runs() -> None:
    front = f"{EDITION}Notices 12 to 18 of 2026\n\n"
    text = front + notice("12/26", "802 [3/26]") + notice("14/26", "803 [3/26]")
    (message,) = [one.message for one in parse(text).findings if one.code == "notice-missing"]
    assert message == "`13, 15 to 18` of the notices 12 to 18/26 stated is not here"


def test_beside_the_antimeridian_either_letter_may_be_right() -> None:
    west = "".join(f"Insert wreck 46-00.{at}0S 178-30.00W\n" for at in range(4))
    east = "Insert rock 46-00.50S 178-30.00E\nInsert stump 46-00.60S 179-50.00E\n"
    (finding,) = parse(HEAD + west + east).findings
    assert finding.span is not None
    assert (finding.code, finding.span.line) == ("position-hemisphere-differs", 7)


# Marks: IALA Maritime Buoyage System

MARKS = [
    ("north cardinal light-buoy, Q.R", ["mark-cardinal-light"]),
    ("west cardinal light-buoy, Q(9)G.15s", ["mark-cardinal-light"]),
    ("west cardinal light-buoy, Q(9)15s", []),
    ("west cardinal light-buoy, Q(9)10s", ["mark-cardinal-light"]),
    ("preferred channel to port light-beacon, red and green", ["mark-preferred-colours"]),
    ("safe water light-buoy, Oc.R.4s", ["mark-light"]),
    ("isolated danger light-buoy, Fl(2)R.5s", ["mark-light"]),
]


@pytest.mark.parametrize(("phrase", "told"), MARKS, ids=[row[0] for row in MARKS])
def test_marks(phrase: str, told: list[str]) -> None:
    assert codes(parse(f"{HEAD}Insert {phrase} {P}\n")) == told


def test_a_chart_list_takes_no_finding_of_a_notice_away() -> None:
    text = f"{HEAD}Insert north cardinal light-buoy, Q.R {P}\nInsert bridge, depth 12m {P}\n"
    charts = read_list(sheets.SPECIMEN_LIST)
    assert {"mark-cardinal-light", "depth-of-overhead"} <= {*codes(parse(text, charts=charts))}


def test_amended_passes_over_what_it_does_not_hold() -> None:
    text = f"{HEAD}Amend light-buoy, Fl.R.10s: shape to pillar, period to 5s {P}\n"
    action = parse(text).notices[0].charts[0].actions[0]
    assert isinstance(action, Amend)
    assert [change.property for change in action.changes] == ["shape", "light.period_s"]
    light = amended(action.feature, action.changes).light
    assert light is not None
    assert light.period_s == 5


def test_the_first_two_sides_that_cross_are_named() -> None:
    # A star of five corners: its first side crosses the third and the fourth.
    star = (
        "46-00.00S 122-10.00W, 46-10.00S 122-06.00W, 46-00.00S 122-02.00W, "
        "46-06.00S 122-11.00W and 46-06.00S 122-01.00W"
    )
    (finding,) = parse(f"{HEAD}Insert foul area bounded by {star}\n").findings
    assert finding.message == (
        "the side from `46-00.00S 122-02.00W` crosses the side from `46-00.00S 122-10.00W`"
    )


LETTERS = [
    ("a b c d e", None),
    ("i ii iii iv v", None),
    ("h i j", None),
    ("a b c e", "(e) follows (c)"),
    ("i ii iv", "(iv) follows (ii)"),
    # `v` is a letter here and no Roman five, and `x` behind `i` no ten.
    ("a b c d v", "(v) follows (d)"),
    ("g h i x", "(x) follows (i)"),
]


@pytest.mark.parametrize(("letters", "told"), LETTERS)
def test_letters_run_on_in_one_row(letters: str, told: str | None) -> None:
    places = (f"({one}) wreck 46-0{at}.00S {P[-11:]}" for at, one in enumerate(letters.split()))
    found = parse(f"{HEAD}Insert " + "\n".join(places) + "\n").findings
    assert [one.message for one in found] == ([f"the letter {told}"] if told else [])
