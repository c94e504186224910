"""Notices held against a chart list: places on the paper, and findings."""

from __future__ import annotations

import json
from typing import Any

import pytest

import noticeparse
from noticeparse.catalogue import editions, sheets
from noticeparse.chart_list import read_list
from noticeparse.faults import pointed
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.chart_list import ChartList
from noticeparse.schema import bulletin_schema
from noticeparse.sheets import after_applying, panel_key
from tests.chart_notices import CHARTS, WRECK, P, notice
from tests.contract_keys import KEYS, records
from tests.corpus_files import CORPUS
from tests.short_notices import HEAD
from tests.specimens import under_head


@pytest.fixture(scope="module")
def listed() -> ChartList:
    return read_list(sheets.SPECIMEN_LIST)


@pytest.mark.parametrize("entry", sheets.ENTRIES, ids=lambda entry: entry.code)
def test_specimens_of_the_catalogue(entry: Any, listed: ChartList) -> None:
    bad = pointed(entry.bad)
    text = under_head(bad.text)
    before = text.index(bad.text)
    (finding,) = noticeparse.parse(text, charts=listed).findings
    assert (finding.code, finding.severity) == (entry.code, entry.severity)
    assert finding.span is not None
    assert (finding.span.start, finding.span.end) == (before + bad.start, before + bad.end)
    assert noticeparse.parse(under_head(entry.good), charts=listed).findings == []
    assert len(entry.message) <= 90


# What the whole bulletin shows with a list or without stands in test_edition_checks.
_OF_EDITIONS = frozenset(entry.code for entry in editions.ENTRIES)


def codes(text: str, charts: ChartList) -> list[str]:
    found = noticeparse.parse(text, charts=charts).findings
    return [finding.code for finding in found if finding.code not in _OF_EDITIONS]


class TestRecords:
    """The key `sheet` of an action."""

    def sheet(self, item: str, charts: ChartList, chart: str = "802") -> Any:
        text = f"12/26 Quill Sound.\nChart {chart} [3/26] WGS84\n{item}\n"
        bulletin = noticeparse.parse(text, charts=charts)
        return bulletin.model_dump(mode="json")["notices"][0]["charts"][0]["actions"][0]["sheet"]

    def test_keys(self, listed: ChartList) -> None:
        text = HEAD + f"Move special buoy from {P} to 46-30.10S 122-30.00W\n"
        dump = noticeparse.parse(text, charts=listed).model_dump(mode="json")
        seen = {kind: tuple(record) for kind, record in records(dump)}
        assert {kind: KEYS[kind] for kind in seen} == seen
        assert {"Sheet", "SheetPlace"} <= seen.keys()

    def test_schema(self) -> None:
        jsonschema_rs = pytest.importorskip("jsonschema_rs")
        text = (CORPUS / "demo.txt").read_text("utf-8")
        held = noticeparse.parse(text, charts=noticeparse.read_chart_list(CHARTS))
        record = json.loads(held.model_dump_json())
        validator = jsonschema_rs.validator_for(bulletin_schema())
        assert not [str(error) for error in validator.iter_errors(record)]

    def test_null_without_a_list_and_for_charts_that_are_not_in_it(
        self, listed: ChartList
    ) -> None:
        (section,) = noticeparse.parse(HEAD + WRECK).notices[0].charts
        assert section.actions[0].sheet is None
        assert self.sheet(WRECK, listed, chart="95") is None
        assert self.sheet(WRECK, listed, chart="802, panel C") is None

    def test_a_place_for_every_position_in_order(self, listed: ChartList) -> None:
        # By hand: half a degree from the west limit; 38.381 km of the parallel at 1:150 000.
        (place,) = self.sheet(WRECK, listed)["positions"]
        assert place["x_mm"] == pytest.approx(255.87, abs=0.01)
        assert place["part"] in ("centre", "centre left")
        cable = self.sheet(f"Insert cable joining 46-10.00S 122-59.00W {P}", listed)
        assert cable["positions"][0]["part"] == "upper left"
        assert cable["positions"][1] == place
        assert cable["destination"] == []

    def test_destination(self, listed: ChartList) -> None:
        move = self.sheet(f"Move special buoy from {P} to 46-30.10S 122-30.00W", listed)
        (start,), (end,) = move["positions"], move["destination"]
        assert start["x_mm"] == end["x_mm"]
        # 185.3 m at 1:150 000.
        assert start["y_mm"] - end["y_mm"] == pytest.approx(1.235, abs=0.002)

    def test_panel_that_is_named(self, listed: ChartList) -> None:
        item = "Delete wreck 46-21.000S 122-21.000W"
        (place,) = self.sheet(item, listed, chart="802, panel B")["positions"]
        assert (place["panel"], place["part"]) == ("Panel B", "centre")
        (place,) = self.sheet(item, listed)["positions"]
        assert place["panel"] is None

    def test_panel_that_alone_holds_the_position(self) -> None:
        charts = read_list(
            "number,panel,scale,scale_latitude,south,west,north,east\n"
            "802,,150000,-46.5,-47,-123,-46,-121.5\n802,Plan A,20000,-48,-48.05,-123,-48,-122.9\n"
        )
        (place,) = self.sheet("Delete wreck 48-01.00S 122-57.00W", charts)["positions"]
        assert (place["panel"], place["part"]) == ("Plan A", "upper centre")

    def test_outside_all_frames(self, listed: ChartList) -> None:
        (place,) = self.sheet("Delete wreck 46-30.00S 123-01.00W", listed)["positions"]
        assert place["part"] is None
        assert place["x_mm"] == pytest.approx(-8.53, abs=0.01)

    def test_antimeridian(self) -> None:
        charts = noticeparse.read_chart_list(CHARTS)
        for longitude, part in (("179-10.00E", "left"), ("178-40.00W", "right")):
            (place,) = self.sheet(f"Delete wreck 47-00.00S {longitude}", charts, "804")[
                "positions"
            ]
            assert place["part"] == f"centre {part}"

    def test_international_number(self) -> None:
        text = "number,scale,scale_latitude,south,west,north,east\n"
        charts = read_list(text + "INT 9871,150000,-46.5,-47,-123,-46,-121.5\n")
        found = noticeparse.parse(
            f"12/26 A.\nChart 802 (INT 9871) WGS84\n{WRECK}\n", charts=charts
        )
        assert found.notices[0].charts[0].actions[0].sheet is not None
        assert found.findings == []

    def test_other_keys_are_as_without_a_list(self, listed: ChartList) -> None:
        text = (CORPUS / "demo.txt").read_text("utf-8")
        plain, held = (
            noticeparse.parse(text, charts=charts).model_dump(mode="json")
            for charts in (None, noticeparse.read_chart_list(CHARTS))
        )
        for bulletin in (plain, held):
            for one in bulletin["notices"]:
                for section in one["charts"]:
                    for action in section["actions"]:
                        assert (action.pop("sheet") is None) == (bulletin is plain)
        assert plain == held

    def test_no_chart_list(self) -> None:
        with pytest.raises(TypeError, match="ChartList"):
            noticeparse.parse(HEAD, charts="charts.csv")  # type: ignore[arg-type]


class TestChecks:
    """What the specimens of the catalogue do not show."""

    def test_one_finding_for_a_place_that_several_actions_name(self, listed: ChartList) -> None:
        text = HEAD + "Insert (a) wreck 47-30.00S 122-30.00W\nDelete rock, close N of (a) above\n"
        (finding,) = noticeparse.parse(text, charts=listed).findings
        assert finding.code == "position-outside-chart"
        assert [path[-10:] for path in finding.paths] == ["/actions/0", "/actions/1"]

    def test_miles_give_way_to_millimetres(self, listed: ChartList) -> None:
        text = HEAD.replace("802", "95") + f"Move special buoy from {P} to 46-45.00S 122-30.00W\n"
        assert codes(text, listed) == ["chart-not-in-list", "move-too-far"]
        assert codes(text.replace("95", "802"), listed) == ["move-too-long-on-sheet"]
        # 15 miles are 14 mm at 1:2 000 000.
        small = read_list(
            "number,scale,scale_latitude,south,west,north,east\n802,2000000,-46,-50,-128,-42,-118\n"
        )
        assert codes(text.replace("95", "802"), small) == []

    def test_a_position_that_is_said_to_be_unsure_may_be_coarse(self, listed: ChartList) -> None:
        assert codes(HEAD + "Insert wreck (PA) 46-30.0S 122-30.0W\n", listed) == []
        assert codes(HEAD + "Insert wreck (reported 2026) 46-30.0S 122-30.0W\n", listed) == []

    def test_chart_and_panel_not_in_list_once(self, listed: ChartList) -> None:
        text = notice("12/26", "3/26", WRECK, chart="95") + notice("13/26", "12/26", chart="95")
        assert codes(text, listed) == ["chart-not-in-list"]
        text = notice("12/26", "3/26", WRECK, chart="802, panel C") + notice(
            "13/26", "12/26", WRECK, chart="802, panel C"
        )
        assert codes(text, listed).count("chart-panel-not-in-list") == 1

    def test_chain_within_the_bulletin(self, listed: ChartList) -> None:
        text = notice("13/26", "12/26", WRECK) + notice("12/26", "3/26", f"Delete rock {P}")
        assert codes(text, listed) == []
        assert codes(text.replace("[3/26]", "[5/26]"), listed) == ["previous-not-last-applied"]

    def test_notices_up_to_the_last_one_applied(self) -> None:
        charts = read_list(sheets.SPECIMEN_LIST.replace("3/26", "12/26"))
        text = notice("11/26", "3/26", WRECK) + notice("12/26", "11/26", f"Delete rock {P}")
        text += notice("13/26", "12/26", f"Delete pile {P}")
        assert codes(text, charts) == ["notice-applied-already"] * 2

    @pytest.mark.parametrize("number", ["12(T)/26", "12(P)/26"])
    def test_temporary_notices_are_in_no_chain(self, number: str, listed: ChartList) -> None:
        assert codes(notice(number, "8/26", WRECK), listed) == []

    @pytest.mark.parametrize("words", ["Edition 3", "3rd Edition", "Ed. 3"])
    def test_the_same_edition(self, words: str, listed: ChartList) -> None:
        text = f"12/26 Quill Sound.\nChart 802 {words} [3/26]\n{WRECK}\n"
        assert codes(text, listed) == []

    def test_date_of_the_edition(self) -> None:
        charts = noticeparse.read_chart_list(CHARTS)
        text = "12/26 A.\nChart 802 Edition 3, 16 May 2024 [2310/26]\n"
        text += "Delete wreck 47-20.00S 123-30.00W\n"
        assert codes(text, charts) == []
        assert codes(text.replace("16 May", "17 May"), charts) == ["chart-edition-differs"]

    @pytest.mark.parametrize(("datum", "is_told"), [("ETRS89", False), ("ED50", True)])
    def test_datum(self, datum: str, is_told: bool, listed: ChartList) -> None:
        found = codes(f"12/26 A.\nChart 802 [3/26] {datum}\n{WRECK}\n", listed)
        assert found == ["chart-datum-differs"] * is_told

    @pytest.mark.parametrize(
        ("item", "words", "is_told"),
        [
            ("Insert depth 6fm 2ft", "", False),
            ("Insert depth 6 fathoms", "", False),
            ("Insert depth 8ft", "", False),
            ("Insert depth 8m", "", True),
            ("Replace depth 6fm by depth 8m", "", True),
            ("Insert wreck, depth unknown", "", False),
            ("Insert depth 6", "depths in fathoms", False),
            ("Insert depth 6", "depths in metres", True),
        ],
    )
    def test_chart_in_fathoms(self, item: str, words: str, is_told: bool) -> None:
        charts = noticeparse.read_chart_list(CHARTS)
        text = f"12/26 A.\nChart 804 [1904/26] {words}\n{item} 47-00.0S 179-30.0E\n"
        assert ("depth-unit-not-of-chart" in codes(text, charts)) is is_told

    def test_depth_without_a_unit_on_a_chart_in_fathoms(self) -> None:
        charts = noticeparse.read_chart_list(CHARTS)
        text = "12/26 A.\nChart 804 [1904/26]\nInsert depth 6 47-00.0S 179-30.0E\n"
        assert codes(text, charts) == ["depth-unit-not-of-chart", "depth-unit-not-stated"]

    @pytest.mark.parametrize(
        ("one", "other"),
        [("Panel A", "panel A"), ("plan of Port Ellory", "Port Ellory"), ("inset B", "B")],
    )
    def test_names_of_panels(self, one: str, other: str) -> None:
        assert panel_key(one) == panel_key(other) != ""
        assert panel_key("plan") == "plan"


def test_list_after_a_bulletin(listed: ChartList) -> None:
    text = notice("13/26", "12/26", WRECK) + notice("12/26", "3/26", WRECK)
    text += notice("14(T)/26", "13/26", WRECK)
    bulletin: Bulletin = noticeparse.parse(text)
    last = [one.last_notice for one in after_applying(listed, bulletin).charts]
    assert [one.number for one in last if one] == [13, 13]
