"""The chart list: CSV and GeoJSON read to the same charts; one clear finding for each slip."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from noticeparse import NoticeParseError, read_chart_list
from noticeparse.catalogue import ENTRIES, chart_lists
from noticeparse.chart_list import from_bytes, read_list
from noticeparse.records.chart_list import ChartList, ListedChart
from tests.corpus_files import CORPUS

HEAD = (
    "number,panel,title,scale,scale_latitude,south,west,north,east,"
    "depth_unit,datum,edition,edition_date,last_notice\n"
)
ROW = '802,,"Quill Sound, West",75000,-47.25,-47.5,-124,-47,-123.25,m,WGS84,3,2024-05-16,2310/26\n'
PANEL = "802,Panel A,Port Ellory,12500,-47.2,-47.24,-123.8,-47.18,-123.72,,,,,\n"


def codes(charts: ChartList) -> list[str]:
    return [finding.code for finding in charts.findings]


def only(text: str) -> ListedChart:
    charts = read_list(text)
    assert codes(charts) == []
    (chart,) = charts.charts
    return chart


class TestTable:
    """CSV files."""

    def test_all_columns(self) -> None:
        chart = only(HEAD + ROW)
        assert (chart.number, chart.panel, chart.title) == ("802", None, "Quill Sound, West")
        assert (chart.scale, chart.scale_latitude) == (75000, -47.25)
        assert (chart.south, chart.west, chart.north, chart.east) == (-47.5, -124, -47, -123.25)
        assert (chart.depth_unit, chart.edition, chart.edition_date) == ("m", "3", "2024-05-16")
        assert chart.datum is not None
        assert chart.datum.epsg == 4326
        assert chart.last_notice is not None
        assert (chart.last_notice.number, chart.last_notice.year) == (2310, 2026)
        assert chart.line == 2

    @pytest.mark.parametrize("mark", [";", "\t"])
    def test_other_marks_between_cells(self, mark: str) -> None:
        plain = ROW.replace('"Quill Sound, West"', "Quill Sound")
        assert only((HEAD + plain).replace(",", mark)) == only(HEAD + plain)

    def test_a_panel_has_the_rest_from_its_chart(self) -> None:
        whole, panel = read_list(HEAD + ROW + PANEL).charts
        assert (panel.panel, panel.title, panel.scale) == ("Panel A", "Port Ellory", 12500)
        assert (panel.datum, panel.edition, panel.last_notice) == (
            whole.datum, whole.edition, whole.last_notice,
        )  # fmt: skip

    def test_a_panel_may_stand_alone_or_before_its_chart(self) -> None:
        assert only(HEAD + PANEL).datum is None
        assert [one.datum is None for one in read_list(HEAD + PANEL + ROW).charts] == [False] * 2

    def test_remarks_blank_lines_byte_order_mark_and_columns_in_any_order(self) -> None:
        text = "\ufeff# invented\r\n\r\nEast,West,North,South,Scale Latitude,SCALE,Number\r\n"
        text += "# another\r\n-123.25,-124,-47,-47.5,-47.25,1:75 000,802\r\n"
        charts = from_bytes(text.encode("utf-8"))
        assert codes(charts) == []
        assert [(one.number, one.scale, one.line) for one in charts.charts] == [("802", 75000, 5)]

    @pytest.mark.parametrize("written", ["75000", "1:75000", "1 : 75 000", "1:75.000", "75'000"])
    def test_scales(self, written: str) -> None:
        assert only(HEAD + ROW.replace("75000", written)).scale == 75000

    @pytest.mark.parametrize("written", ["0", "-75000", "1:7.5", "large", "75000 m"])
    def test_no_scales(self, written: str) -> None:
        text = HEAD + ROW.replace("75000", written)
        assert codes(read_list(text)) == ["chart-list-value-unread"]

    def test_a_scale_that_no_paper_holds(self) -> None:
        text = HEAD + ROW.replace("75000", "75")
        assert codes(read_list(text)) == ["chart-list-limits-impossible"]

    @pytest.mark.parametrize(
        ("written", "unit"),
        [("m", "m"), ("Metres", "m"), ("fathoms", "fm_ft"), ("fm", "fm_ft"), ("feet", "ft")],
    )
    def test_units(self, written: str, unit: str) -> None:
        assert only(HEAD + ROW.replace(",m,", f",{written},")).depth_unit == unit

    def test_antimeridian(self) -> None:
        chart = only(HEAD + "804,,,500000,-47,-48,179,-46,-178.5,,,,,\n")
        assert (chart.west, chart.east) == (179, -178.5)

    @pytest.mark.parametrize(
        "limits",
        [
            "-47,-124,-47.5,-123", "-47.5,-124,-47.5,-123", "-90,-124,-47,-123",
            "-47.5,-181,-47,-179", "-47.5,-124,-47,-124", "-47.5,-123,-47,-124",
            "-475,-124,-47,-123",
        ],
    )  # fmt: skip
    def test_impossible_limits(self, limits: str) -> None:
        charts = read_list(f"{HEAD}{ROW}803,,,75000,-47.25,{limits},,,,,\n")
        assert codes(charts) == ["chart-list-limits-impossible"]
        assert [one.number for one in charts.charts] == ["802"]

    def test_where_and_what_is_wrong(self) -> None:
        charts = read_list(f"{HEAD}{ROW}803,,,75000,-47.25,47S,-124,-47,-123,,,,,\n")
        (finding,) = charts.findings
        assert finding.message == "`47S` cannot be read as south; the row is left out"
        assert finding.span is not None
        assert (finding.span.line, finding.span.column, finding.chart) == (3, 1, "803")
        assert (finding.severity, finding.notice, finding.paths) == ("error", None, [])

    def test_optional_values_that_cannot_be_read(self) -> None:
        text = HEAD + "802,,,75000,-47.25,-47.5,-124,-47,-123.25,cubits,,,31.6.24,last week\n"
        charts = read_list(text)
        assert codes(charts) == ["chart-list-detail-unread"] * 3
        (chart,) = charts.charts
        assert (chart.depth_unit, chart.edition_date, chart.last_notice) == (None, None, None)


@pytest.mark.parametrize("entry", chart_lists.ENTRIES, ids=lambda entry: entry.code)
def test_specimens_of_the_catalogue(entry: Any) -> None:
    bad = entry.bad.replace("‹", "").replace("›", "")
    try:
        findings = read_list(bad).findings
    except NoticeParseError as error:
        findings = [error.finding]
    assert [finding.code for finding in findings] == [entry.code]
    span = findings[0].span
    assert (span.start, span.end) == (entry.bad.index("‹"), entry.bad.index("›") - 1)
    assert codes(read_list(entry.good)) == []
    assert len(entry.message) <= 90


class TestGeojson:
    """GeoJSON files."""

    def test_the_demonstration_lists_say_the_same(self) -> None:
        table = read_chart_list(CORPUS / "charts.csv")
        features = read_chart_list(str(CORPUS / "charts.geojson"))
        assert codes(table) == codes(features) == []
        assert [one.line for one in features.charts] == [*range(5, 59, 6)]
        assert [one.model_copy(update={"line": 0}) for one in table.charts] == [
            one.model_copy(update={"line": 0}) for one in features.charts
        ]

    @pytest.mark.parametrize("name", ["charts.csv", "charts.geojson"])
    def test_the_demonstration_lists_are_marked(self, name: str) -> None:
        text = (CORPUS / name).read_text("utf-8")
        assert "invented, not for navigation" in text

    def test_limits_from_the_geometry(self) -> None:
        document = json.loads((CORPUS / "charts.geojson").read_text("utf-8"))
        for feature in document["features"]:
            del feature["bbox"]
        limits = [
            (one.south, one.west, one.north, one.east)
            for one in read_list(json.dumps(document)).charts
        ]
        assert limits == [
            (one.south, one.west, one.north, one.east)
            for one in read_chart_list(CORPUS / "charts.geojson").charts
        ]

    def test_limits_from_the_properties_come_first(self) -> None:
        chart = only(collection(feature(south=-47.5, west=-124, north=-47, east=-123.25)))
        assert (chart.south, chart.west, chart.north, chart.east) == (-47.5, -124, -47, -123.25)

    @pytest.mark.parametrize(
        ("changed", "code"),
        [
            ({"scale": None}, "chart-list-value-missing"),
            ({"scale": [1]}, "chart-list-value-unread"),
            ({"scale": True}, "chart-list-value-unread"),
            ({"scale_latitude": float("nan")}, "chart-list-value-unread"),
            ({"colour": "buff"}, "chart-list-column-unknown"),
            ({"edition_date": "soon"}, "chart-list-detail-unread"),
        ],
    )
    def test_slips(self, changed: dict[str, Any], code: str) -> None:
        assert codes(read_list(collection(feature(**changed)))) == [code]

    @pytest.mark.parametrize("odd", [None, 1, "x", [], {}, {"properties": 3}, {"geometry": []}])
    def test_features_that_are_none(self, odd: Any) -> None:
        assert codes(read_list(collection(odd))) == ["chart-list-value-missing"]

    def test_a_corner_beyond_all_measure(self) -> None:
        odd = feature()
        odd.update(bbox=None, geometry={"type": "Polygon", "coordinates": [[10**400, 1], [2, 3]]})
        assert codes(read_list(collection(odd))) == ["chart-list-limits-impossible"]

    def test_another_key_that_looks_like_the_list(self) -> None:
        document = json.loads(collection(feature()))
        text = json.dumps({"remark": '"features": [1]', **document})
        assert only(text).number == "802"

    @pytest.mark.parametrize(
        "text", ["{", "[1]", "{}", '{"features": 1}', "[" * 100000, "[1" + "0" * 9999]
    )
    def test_no_list_at_all(self, text: str) -> None:
        with pytest.raises(NoticeParseError, match="no chart list"):
            read_list(text)


def feature(**changed: Any) -> dict[str, Any]:
    properties = {"number": "802", "scale": 75000, "scale_latitude": -47.25, **changed}
    return {"type": "Feature", "bbox": [-125, -48, -124.5, -47.5], "properties": properties}


def collection(*features: Any) -> str:
    return json.dumps({"type": "FeatureCollection", "features": features})


class TestFile:
    """From the bytes of a file."""

    def test_no_such_file(self, tmp_path: Path) -> None:
        with pytest.raises(FileNotFoundError):
            read_chart_list(tmp_path / "none.csv")

    @pytest.mark.parametrize("data", [b"", b"  \n", b"# only a remark\n", b"%PDF-1.7", b"a\rb\rc"])
    def test_no_list_at_all(self, data: bytes) -> None:
        with pytest.raises(NoticeParseError) as caught:
            from_bytes(data)
        assert caught.value.finding.code == "chart-list-unreadable"

    def test_lost_characters_are_told(self) -> None:
        charts = from_bytes((HEAD + ROW).encode("utf-8").replace(b"Quill", b"Q\xffill"))
        assert codes(charts) == ["text-not-utf8"]
        assert len(charts.charts) == 1

    def test_findings_are_in_the_catalogue(self) -> None:
        assert {entry.code for entry in chart_lists.ENTRIES} <= set(ENTRIES)
