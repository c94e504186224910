"""What stands on a work sheet: every action once, in order, with all that was found amiss."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from html.parser import HTMLParser

import pytest

import noticeparse
from noticeparse.caution import CAUTION
from noticeparse.records.action import Action
from noticeparse.records.bulletin import Bulletin
from noticeparse.worksheet.collecting import NotTouched, chart_sheets
from noticeparse.worksheet.html_out import TICKS, write_html
from noticeparse.worksheet.model import ChartSheet
from tests.golden_files import kept
from tests.worksheet.week import CORPUS, WEEK, chart_list, sheets_of, week_sheet

NOTICE = """\
{number} TAVRENNE ISLANDS - Quill Sound - Depths.
Chart 802 [{previous}] WGS84
Insert depth {depth}m 47°12'.34S., 123°45'.67W.
"""


def notice(number: str, previous: str, depth: int = 8) -> str:
    return NOTICE.format(number=number, previous=previous, depth=depth)


def actions_of(bulletin: Bulletin, chart: str) -> Iterator[Action]:
    for one in bulletin.notices:
        for section in one.charts:
            if section.chart == chart:
                yield from section.actions


class TestOrder:
    """Which notices stand on a sheet, and in which order."""

    def test_previous_notices_come_first(self) -> None:
        text = notice("12/26", "11/26", 3) + notice("10/26", "9/26", 1) + notice("11/26", "10/26")
        (sheet,) = sheets_of(text)
        assert [line.notice for line in sheet.lines()] == ["10/26", "11/26", "12/26"]
        assert [line.title for line in sheet.lines()] == ["depth 1m", "depth 8m", "depth 3m"]
        assert [line.number for line in sheet.lines()] == [1, 2, 3]

    def test_temporary_and_preliminary_come_last_and_are_told_apart(self) -> None:
        main = week_sheet().panels[0]
        assert [(block.name, block.status) for block in main.blocks] == [
            ("2430/26", "permanent"),
            ("2431(T)/26", "temporary"),
            ("2432(P)/26", "preliminary"),
            ("TAVRENNE COASTAL WARNING 41/26", "radio_warning"),
        ]
        assert [block.alarms[0].partition(":")[0] for block in main.blocks[1:]] == [
            "Temporary", "Preliminary", "Radio warning",
        ]  # fmt: skip
        assert [line.is_in_pencil for line in main.lines()].count(True) == 1
        assert "does not change the chart" in main.blocks[3].alarms[0]
        assert any("breakwater" in remark for remark in main.blocks[2].remarks)

    def test_panels_stand_apart(self) -> None:
        sheet = week_sheet()
        assert [(panel.name, panel.title) for panel in sheet.panels] == [
            (None, "Dunmarrow Point to Port Ellory, 1:50 000"),
            ("Panel A", "Port Ellory Harbour, 1:12 500"),
        ]
        numbers = [line.number for line in sheet.lines()]
        assert numbers == list(range(1, 11))
        (move,) = [line for line in sheet.lines() if line.verb == "Move"]
        assert [one.lead for one in move.where] == ["from", "to"]
        assert move.facts[0].words == "150° true, 0.081 nautical miles (150 metres)"
        on_sheet = move.where[0].places[0].on_sheet
        assert on_sheet is not None
        assert on_sheet.startswith("Panel A: upper centre, ")

    def test_charts_by_their_number_or_all(self) -> None:
        text = (CORPUS / "demo.txt").read_text("utf-8")
        assert [sheet.name for sheet in sheets_of(text)] == ["Chart 802", "Chart 803"]
        assert [sheet.name for sheet in sheets_of(text, "803", "802", "803")] == [
            "Chart 803", "Chart 802",
        ]  # fmt: skip
        international = text.replace("Chart 802 [", "Chart 802 (INT 9871) [")
        (sheet,) = sheets_of(international, "int9871")
        assert sheet.name == "Chart 802 (INT 9871)"

    def test_chart_that_one_notice_names_by_its_other_number_alone(self) -> None:
        first = notice("11/26", "10/26").replace("802", "802 (INT 9871)")
        other = notice("12/26", "11/26").replace("Chart 802", "Chart INT 9871")
        for wanted in ("802", "INT 9871"):
            sheets = sheets_of(first + other, wanted)
            assert sum(1 for sheet in sheets for _ in sheet.lines()) == 2

    @pytest.mark.parametrize("text", ["", "Nothing of a chart."])
    def test_nothing_touched(self, text: str) -> None:
        with pytest.raises(NotTouched, match="no notice touches"):
            sheets_of(text)

    def test_chart_that_is_not_touched(self) -> None:
        with pytest.raises(NotTouched, match="chart 804; those touched are 803"):
            sheets_of(WEEK, "804")


class TestChain:
    """What must be on the chart before."""

    def test_first_notice_before_is_to_be_seen_on_the_chart(self) -> None:
        (sheet,) = sheets_of(notice("11/26", "10/26") + notice("12/26", "11/26"))
        assert sheet.before == ["10/26 must be on the chart before 11/26"]
        assert not sheet.alarms

    def test_missing_link(self) -> None:
        (sheet,) = sheets_of(notice("11/26", "10/26") + notice("14/26", "13/26"))
        assert sheet.before == ["10/26 must be on the chart before 11/26"]
        (alarm,) = sheet.alarms
        assert alarm.startswith("Notice 13/26 is missing: it must be on the chart before 14/26")

    def test_against_the_chart_list(self) -> None:
        (sheet,) = sheets_of(notice("2311/26", "2310/26"), charts=chart_list())
        assert sheet.before
        assert not sheet.alarms
        assert "by the chart list it is the last one applied" in sheet.before[0]
        (sheet,) = sheets_of(notice("2313/26", "2312/26"), charts=chart_list())
        assert not sheet.before
        assert "2312/26 is missing" in sheet.alarms[0]
        assert "is 2310/26" in sheet.alarms[0]

    def test_circle(self) -> None:
        (sheet,) = sheets_of(notice("11/26", "12/26") + notice("12/26", "11/26"))
        assert any("name each other" in alarm for alarm in sheet.alarms)

    def test_notice_that_stands_twice(self) -> None:
        read = [(name, noticeparse.parse(notice("11/26", "10/26"))) for name in ("a", "b")]
        (sheet,) = chart_sheets(read, None)
        assert "is the same as that at a:1" in sheet.panels[0].blocks[1].alarms[0]

    def test_cancelled_and_ended_notices(self) -> None:
        text = (
            "2431(T)/26 TAVRENNE ISLANDS - Quill Sound - Buoy.\n"
            "(valid until 1 May 2026)\n"
            "Chart 803 WGS84\nInsert special buoy 47°14'.00S., 123°40'.00W.\n\n"
            "2440/26 TAVRENNE ISLANDS - Quill Sound - Notice cancelled.\n"
            "Cancel notice 2431(T)/26.\n"
        )
        bulletin = noticeparse.parse(text, as_of=date(2026, 6, 1))
        (sheet,) = [
            one for one in chart_sheets([("a", bulletin)], None) if one.name == "Chart 803"
        ]
        alarms = sheet.panels[0].blocks[0].alarms
        assert any(alarm.startswith("Cancelled by 2440/26") for alarm in alarms), alarms
        assert any(alarm.startswith("Ended: ") for alarm in alarms), alarms
        assert sheet.notes == ["2440/26 cancels 2431(T)/26 and names no chart."]

    def test_what_names_no_chart_is_told(self) -> None:
        text = notice("11/26", "10/26") + "12/26 Quill Sound.\nInsert rock 46-00.00S 122-00.00W\n"
        (sheet,) = sheets_of(text, "802")
        assert "1 action of these notices name no chart" in sheet.notes[0]
        assert [one.name for one in sheets_of(text)] == ["Chart 802", "No chart named"]


class TestComplete:
    """The sheet holds what the records hold."""

    @pytest.mark.parametrize("name", ["demo", "demo_faulty"])
    @pytest.mark.parametrize("chart", ["802", "803"])
    def test_counts(self, name: str, chart: str) -> None:
        text = (CORPUS / f"{name}.txt").read_text("utf-8")
        bulletin = noticeparse.parse(text, charts=chart_list())
        (sheet,) = chart_sheets([(name, bulletin)], chart_list(), [chart])
        held = list(actions_of(bulletin, chart))
        assert sorted(id(line.action) for line in sheet.lines()) == sorted(map(id, held))
        unusable = sum(not action.usable for action in held)
        words = f"{len(held)} actions of 2 notices"
        assert sheet.account() == (
            f"{words}; {unusable} must not be applied" if unusable else words
        )

    def test_account_of_the_week(self) -> None:
        assert week_sheet().account() == "10 actions of 4 notices; 1 must not be applied"

    def test_every_finding_of_an_action_stands_by_it(self) -> None:
        bulletin = noticeparse.parse(WEEK, charts=chart_list())
        (sheet,) = chart_sheets([("week.txt", bulletin)], chart_list(), ["803"])
        told = [one.words for line in sheet.lines() for one in line.told]
        told += [one.words for p in sheet.panels for b in p.blocks for one in b.told]
        told += [one.words for one in sheet.told]
        assert bulletin.findings
        for finding in bulletin.findings:
            assert any(finding.message in words for words in told), finding

    def test_positions_of_a_reference_are_marked(self) -> None:
        (rock,) = [line for line in week_sheet().lines() if line.title == "rock"]
        (where,) = rock.where
        assert where.is_reference
        assert where.how == "close NE of"
        assert where.notes == ["position of the reference, not of the feature"]

    def test_action_that_must_not_be_applied_shows_its_words_alone(self) -> None:
        (line,) = [line for line in week_sheet().lines() if not line.is_usable]
        assert (line.where, line.facts, line.title) == ([], [], "")
        assert "47°73'.95S." in line.written
        assert [one.severity for one in line.told] == ["error"]

    def test_errors_outside_any_notice_are_shown(self) -> None:
        text = "Insert rock\n\n" + notice("11/26", "10/26")
        bulletin = noticeparse.parse(text)
        outside = [one for one in bulletin.findings if not one.paths and one.severity != "info"]
        (sheet,) = chart_sheets([("a", bulletin)], None, ["802"])
        assert len(sheet.told) == len(outside)


class _Reader(HTMLParser):
    """The words of a page, and its elements."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.attributes: list[tuple[str, str | None]] = []
        self.words = ""
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes += attrs

    def handle_data(self, data: str) -> None:
        self.words += data


def page_of(*sheets: ChartSheet) -> str:
    return "".join(write_html(sheets))


class TestHtml:
    """The page: one file, nothing from elsewhere, nothing that runs."""

    @pytest.mark.parametrize("name", ["demo", "demo_faulty"])
    def test_golden(self, name: str, pytestconfig: pytest.Config) -> None:
        text = (CORPUS / f"{name}.txt").read_text("utf-8")
        bulletin = noticeparse.parse(text, charts=chart_list())
        page = page_of(*chart_sheets([(f"{name}.txt", bulletin)], chart_list()))
        # The style is read in its own file.
        head, _, rest = page.partition("<style>")
        page = head + "<style>" + rest[rest.index("</style>") :]
        assert page == kept(f"{name}.sheet.html", page, pytestconfig)

    def test_hostile_words_stay_words(self) -> None:
        hostile = WEEK.replace("Quill Sound", '"><img src=x onerror=alert(1)>')
        (sheet,) = sheets_of(hostile.replace("Panel A", "Panel <b>"), charts=chart_list())
        page = _Reader(page_of(sheet))
        assert not {"script", "img", "iframe", "link", "object"} & set(page.tags)
        assert "b" not in {name for name, _ in page.attributes}
        assert '"<script>alert(1)</script>"' in page.words
        assert not [name for name, _ in page.attributes if name.startswith("on")]

    def test_controls_are_shown(self) -> None:
        (sheet,) = sheets_of(notice("11/26", "10/26").replace("Depths", "Depths\u202e1"))
        assert "\u202e" not in page_of(sheet)

    def test_nothing_from_elsewhere(self) -> None:
        page = page_of(week_sheet())
        targets = {value for name, value in _Reader(page).attributes if name in ("href", "src")}
        assert targets == {f"#c1-{number}" for number in range(1, 11)}
        assert "url(" not in page
        assert "@import" not in page

    def test_boxes_and_notice_numbers(self) -> None:
        page = page_of(week_sheet())
        for tick in TICKS:
            assert page.count(f"> {tick}</label>") == 9
        assert page.count("Must not be applied") == 1
        assert page.count('class="last"') == 10
        assert page.count(CAUTION.replace("'", "&#x27;")) == 3  # two tables and the foot
        assert "The records hold as many" in page
