"""What is found in a whole edition and in several together, case by case.

Planted faults are in `tests/faults/`; here stand the borders of each rule, where nothing is found.
"""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from noticeparse import parse
from noticeparse.together import seen_together
from tests.command import invoke

EDITION = "Weekly edition 12/2026, 20 March 2026\n\n"
PLACES = iter(range(10_000))


def notice(number: str, *charts: str, more: str = "") -> str:
    """A notice with one action under each chart head."""
    heads = ""
    for chart in charts:
        at = next(PLACES)
        place = f"46-{at % 60:02d}.00S 122-{at // 60 % 60:02d}.00W"
        heads += f"Chart {chart} WGS84\nInsert wreck {place}\n"
    return f"{number} TAVRENNE ISLANDS - Quill Sound.\n{heads}{more}\n"


def codes(text: str, as_of: date | None = None) -> list[str]:
    return [one.code for one in parse(text, as_of=as_of).findings]


@pytest.mark.parametrize(
    ("text", "code"),
    [
        # One head over two notices: the second follows the first without a word.
        (
            "Chart 802 Last notice 3/26 WGS84\nNotice  Command  Feature  Position\n"
            "12/26   Insert   wreck    46-00.00S 122-00.00W\n"
            "13/26   Insert   rock     46-00.50S 122-00.00W\n",
            None,
        ),
        # Panels of a chart may have chains of their own.
        (notice("12/26", "802, plan A [3/26]") + notice("13/26", "802, plan B [3/26]"), None),
        (notice("12/26", "802, plan A [3/26]") + notice("13/26", "802 [3/26]"), "previous-fork"),
        # Other charts, other chains.
        (notice("12/26", "802 [3/26]") + notice("13/26", "803 [3/26]"), None),
        # Temporary notices are no part of the chain.
        (notice("12(T)/26", "802 [3/26]") + notice("13/26", "802 [3/26]"), None),
        # The year counts before the number.
        (notice("3/26", "802 [1190/25]"), None),
        (notice("3/26", "802 [1190/26]"), "previous-later"),
        # A new edition of the chart begins the chain anew.
        (notice("12/26", "802 [3/26]") + notice("13/26", "802 [New edition]"), None),
        # A notice of the same edition that is not for this chart.
        (
            EDITION + notice("12/26", "802 [3/26]") + notice("13/26", "803 [12/26]"),
            "previous-gap",
        ),
        # A number of the edition that does not stand in it.
        (
            EDITION
            + notice("12/26", "802 [3/26]")
            + notice("14/26", "803 [13/26]")
            + notice("15/26", "802 [12/26]"),
            "previous-gap",
        ),
    ],
)
def test_chain(text: str, code: str | None) -> None:
    assert [one for one in codes(text) if one.startswith("previous-")] == [code] * bool(code)


def test_a_column_of_previous_notices_without_years() -> None:
    text = (
        "Notice | Chart | Prev. | Action | Feature | Position\n"
        "12/26 | 802 | 3 | Insert | wreck | 46-00.00S 122-00.00W\n"
        "13/26 | 802 | 12 | Insert | rock | 46-00.50S 122-00.00W\n"
    )
    assert not [one for one in codes(text) if one.startswith("previous-")]


def test_numbers_of_two_rows() -> None:
    text = notice("12/26", "802 [3/26]") + notice("14/26", "803 [4/26]")
    text += "9(T)/26 Quill Sound.\nThe light is out.\nChart 802\n\n"
    text += "13(P)/26 Quill Sound.\nA light will be put up.\nChart 802\n"
    assert codes(text) == []


def test_an_index_of_many_weeks_is_not_held_against_one() -> None:
    index = "INDEX OF CHARTS\n802 .... 2, 3, 7, 12\n803 .... 4, 5\n\n"
    assert codes(EDITION + index + notice("12/26", "802 [7/26]")) == []
    assert codes(EDITION + index + notice("12/26", "804 [7/26]")) == ["index-without-chart"]


def test_an_index_may_leave_out_temporary_notices_and_marks() -> None:
    index = "INDEX OF CHARTS\n802 .... 12\n\n"
    prose = "13(T)/26 Quill Sound.\nThe light is out.\nChart 803\n"
    assert codes(EDITION + index + notice("12/26", "802 [7/26]") + prose) == []
    marked = "INDEX OF CHARTS\n802 .... 12\n803 .... 13\n\n"
    assert codes(EDITION + marked + notice("12/26", "802 [7/26]") + prose) == []


def test_an_index_of_international_numbers() -> None:
    index = "INDEX OF CHARTS\nINT 9802 .... 12\n\n"
    found = codes(EDITION + index + notice("12/26", "802 (INT 9802) [7/26]"))
    assert "index-without-chart" not in found


@pytest.mark.parametrize(
    ("until", "as_of", "severity"),
    [
        ("19 March 2026", None, "warning"),
        ("20 March 2026", None, None),
        ("20 March 2026", date(2026, 3, 20), None),
        ("20 March 2026", date(2026, 3, 21), "info"),
        ("19 March 2026", date(2030, 1, 1), "warning"),
    ],
)
def test_ended(until: str, as_of: date | None, severity: str | None) -> None:
    text = f"{EDITION}12(T)/26 Quill Sound.\nThe light is out until {until}.\nChart 802\n"
    found = parse(text, as_of=as_of).findings
    assert [(one.code, one.severity) for one in found] == (
        [("validity-ended", severity)] if severity else []
    )


def test_datums_of_satellite_times_agree() -> None:
    two = "12/26 Quill Sound.\nChart 802 [3/26] WGS84\nInsert wreck 46-00.00S 122-00.00W\n"
    two += "Chart 803 [4/26] {}\nInsert wreck 46-00.00S 122-00.00W\n"
    assert codes(two.format("NZGD2000")) == []
    assert codes(two.format("WGS72")) == ["datum-differs"]
    assert codes(two.format("")) == ["datum-of-some-charts"]


def test_a_fragment_without_a_chart_needs_no_datum() -> None:
    assert "datum-not-stated" not in codes("Insert wreck 46-00.00S 122-00.00W\n")


def test_a_bulletin_given_twice_adds_nothing() -> None:
    text = notice("12/26", "802 [3/26]") + notice("13/26", "802 [3/26]")
    bulletin = parse(text)
    assert seen_together([(text, bulletin), (text, bulletin)]) == [bulletin, bulletin]


def test_the_order_of_the_files_does_not_count(tmp_path: Path) -> None:
    old, new = tmp_path / "week12.txt", tmp_path / "week13.txt"
    old.write_text(notice("12/26", "802 [3/26]"), "utf-8")
    new.write_text(notice("15/26", "802 [3/26]"), "utf-8")
    for files in ((old, new), (new, old)):
        found = invoke("check", "--brief", *map(str, files)).stdout
        words = (
            f"{new}:2:12: warning previous-fork: `3/26` is named as the one before by 12/26 too"
        )
        assert found.startswith(words)
    assert "1 warning" in invoke("charts", str(old), str(new)).stdout
    assert "warning" not in invoke("check", str(new)).stdout


def test_as_of_on_the_command_line(tmp_path: Path) -> None:
    file = tmp_path / "week.txt"
    file.write_text("12(T)/26 Quill Sound.\nThe light is out until 1 May 2026.\nChart 802\n")
    words = "info validity-ended: the notice ended on 2026-05-01, before 2026-06-01"
    assert words in invoke("check", "--brief", "--as-of", "2026-06-01", str(file)).stdout
    assert '"validity-ended"' in invoke("parse", "--as-of", "2026-06-01", str(file)).stdout
    assert "validity-ended" not in invoke("parse", str(file)).stdout
    result = invoke("check", "--as-of", "1 June", str(file))
    assert result.exit_code == 2
    assert "'1 June' does not match the format" in result.stderr


def test_the_stated_range_is_kept() -> None:
    edition = parse(
        f"{EDITION}Notices 12 to 13 of 2026\n\n{notice('12/26', '802 [3/26]')}"
    ).edition
    assert edition is not None
    assert edition.first_notice is not None
    assert edition.last_notice is not None
    assert (edition.first_notice.number, edition.last_notice.number) == (12, 13)
    assert edition.last_notice.year == 2026


def test_several_charts_on_one_line_of_the_index() -> None:
    index = "INDEX OF CHARTS\nChart 802: 12, 13    Chart 803: 12\n\n"
    both = notice("12/26", "802 [3/26]", "803 [4/26]") + notice("13/26", "802 [12/26]")
    bulletin = parse(EDITION + index + both)
    assert [one.code for one in bulletin.findings] == []
    entries = [
        (one.chart, [ref.number for ref in one.notices]) for one in bulletin.lists[0].entries
    ]
    assert entries == [("802", [12, 13]), ("803", [12])]


def test_a_warning_of_several_files_counts_for_the_exit_status(tmp_path: Path) -> None:
    names = []
    for number, previous in (("12/26", "3/26"), ("14/26", "13/26")):
        file = tmp_path / f"{number[:2]}.txt"
        file.write_text(notice(number, f"802 [{previous}]"), "utf-8")
        names.append(str(file))
    assert "previous-gap" in invoke("check", *names).stdout
    assert invoke("check", *names).exit_code == 0
    assert invoke("check", "--fail-on", "warning", *names).exit_code == 1
    assert invoke("check", "--fail-on", "warning", names[0]).exit_code == 0


class TestWordsOfWarnings:
    """What a warning says of an area in words is looked at as the area of an action is."""

    HEAD = "COASTAL WARNING 131/26\nFIRING IN AREA BOUNDED BY\n"

    def test_a_limit_that_crosses_itself(self) -> None:
        corners = (
            "48-30.0S 125-00.0W, 48-40.0S 124-40.0W, 48-30.0S 124-40.0W AND 48-40.0S 125-00.0W"
        )
        found = [one for one in parse(self.HEAD + corners).findings if "crosses" in one.code]
        assert [one.code for one in found] == ["area-crosses-itself"]

    def test_a_limit_in_order_and_a_place_beside_it(self) -> None:
        corners = (
            "48-30.0S 125-00.0W, 48-30.0S 124-40.0W, 48-40.0S 124-40.0W AND 48-40.0S 125-00.0W"
        )
        beside = "\nGUARD SHIP NEAR 48-35.0S 124-50.0W."
        found = parse(self.HEAD + corners + beside).findings
        assert "area-crosses-itself" not in [one.code for one in found]
