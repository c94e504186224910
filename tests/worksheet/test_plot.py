"""Plots at chart scale: every place to within 0.05 mm of pyproj's Mercator, in both files."""

from __future__ import annotations

import itertools
from functools import cache
from typing import Literal
from xml.etree import ElementTree

import pypdfium2
import pytest
from pyproj import Geod, Proj

from noticeparse.records.chart_list import ListedChart
from noticeparse.worksheet.documents import plot_document
from noticeparse.worksheet.model import all_frames
from noticeparse.worksheet.plotting import NoPlot, plots_of, whole_page
from noticeparse.worksheet.shapes import spread
from tests.worksheet.paths import Lines, pdf_pages, svg_pages
from tests.worksheet.week import CORPUS, WEEK, chart_list, sheets_of

TOLERANCE_MM = 0.05
Form = Literal["svg", "pdf"]

ACROSS = """\
11/26 TAVRENNE ISLANDS - Brannoch Rock.
Chart 804 [1904/26] WGS84
Insert rock 47°00'.00S., 179°59'.00E.
       rock 47°00'.00S., 179°59'.00W.
       submarine cable, joining 47°10'.00S., 179°50'.00E. 47°20'.00S., 179°50'.00W.
"""


@cache
def pages(text: str, chart: str, form: Form) -> list[Lines]:
    document = plot_document(sheets_of(text, chart, charts=chart_list()), form)
    return svg_pages(document.decode()) if form == "svg" else pdf_pages(document)


def listed(number: str, panel: str | None = None) -> ListedChart:
    (chart,) = [c for c in chart_list().charts if (c.number, c.panel) == (number, panel)]
    return chart


def expected_mm(chart: ListedChart, lat: float, lon: float) -> tuple[float, float]:
    """Right of and above the south-west corner, by pyproj."""
    middle = (chart.west + (chart.east - chart.west) % 360 / 2 + 180) % 360 - 180
    mercator = Proj(proj="merc", lat_ts=chart.scale_latitude, lon_0=middle, ellps="WGS84")
    x, y = mercator(lon, lat)
    x0, y0 = mercator(chart.west, chart.south)
    return (x - x0) * 1000 / chart.scale, (y - y0) * 1000 / chart.scale


def crosses(page: Lines) -> list[tuple[float, float]]:
    """Within the frame, from its lower left corner; the key below it has some too."""
    (left, bottom), (right, top) = page.frame()
    return [
        (x - left, y - bottom)
        for x, y in page.crosses()
        if left - 0.1 <= x <= right + 0.1 and bottom - 0.1 <= y <= top + 0.1
    ]


def assert_same_places(
    found: list[tuple[float, float]], wanted: list[tuple[float, float]]
) -> None:
    assert len(found) == len(wanted)
    for x, y in wanted:
        off = min(max(abs(x - a), abs(y - b)) for a, b in found)
        assert off <= TOLERANCE_MM, (x, y, off)


CASES = [
    (
        "demo", "802", None,
        [(-47 - 13.05 / 60, -123 - 44.20 / 60), (-47 - 11.90 / 60, -123 - 46.20 / 60),
         (-47 - 13.02 / 60, -123 - 44.31 / 60), (-47 - 20.15 / 60, -123 - 30.50 / 60),
         (-47 - 20.62 / 60, -123 - 31.74 / 60), (-47 - 20.44 / 60, -123 - 31.02 / 60)],
    ),
    (
        "demo", "803", None,
        [(-47 - 12.34 / 60, -123 - 45.67 / 60), (-47 - 12.41 / 60, -123 - 45.58 / 60),
         (-47 - 14.10 / 60, -123 - 43.80 / 60), (-47 - 20.07 / 60, -123 - 30.11 / 60),
         (-47 - 19.88 / 60, -123 - 30.63 / 60), (-47 - 19.95 / 60, -123 - 30.57 / 60),
         (-47 - 20.31 / 60, -123 - 29.87 / 60)],
    ),
    (
        # Neither the rock close to the light nor the faulty position.
        "week", "803", None,
        [(-47 - 12.00 / 60, -123 - 45.00 / 60), (-47 - 12.00 / 60, -123 - 44.00 / 60),
         (-47 - 12.60 / 60, -123 - 44.00 / 60), (-47 - 12.30 / 60, -123 - 44.50 / 60),
         (-47 - 12.80 / 60, -123 - 44.60 / 60), (-47 - 12.95 / 60, -123 - 44.65 / 60),
         (-47 - 20.15 / 60, -123 - 40.50 / 60), (-47 - 14.00 / 60, -123 - 40.00 / 60)],
    ),
    (
        "week", "803", "Panel A",
        [(-47 - 12.05 / 60, -123 - 43.80 / 60), (-47 - 11.88 / 60, -123 - 45.63 / 60),
         (-47 - 11.95 / 60, -123 - 45.57 / 60)],
    ),
    (
        "across", "804", None,
        [(-47, 179 + 59 / 60), (-47, -179 - 59 / 60), (-47 - 10 / 60, 179 + 50 / 60),
         (-47 - 20 / 60, -179 - 50 / 60)],
    ),
]  # fmt: skip

TEXTS = {"demo": (CORPUS / "demo.txt").read_text("utf-8"), "week": WEEK, "across": ACROSS}


@pytest.mark.parametrize("form", ["svg", "pdf"])
@pytest.mark.parametrize(("name", "chart", "panel", "at"), CASES)
def test_places(
    form: Form, name: str, chart: str, panel: str | None, at: list[tuple[float, float]]
) -> None:
    page = pages(TEXTS[name], chart, form)[1 if panel else 0]
    (left, bottom), (right, top) = page.frame()
    one = listed(chart, panel)
    width, height = expected_mm(one, one.north, one.east)
    assert abs(right - left - width) < TOLERANCE_MM
    assert abs(top - bottom - height) < TOLERANCE_MM
    assert_same_places(crosses(page), [expected_mm(one, *place) for place in at])


@pytest.mark.parametrize("form", ["svg", "pdf"])
def test_both_control_lines(form: Form) -> None:
    for page in pages(WEEK, "803", form):
        long = [
            path for path in page.paths
            if len(path) == 2
            and abs(abs(path[0][0] - path[1][0]) + abs(path[0][1] - path[1][1]) - 100) < 0.01
        ]  # fmt: skip
        level = [path for path in long if abs(path[0][1] - path[1][1]) < 1e-4]
        assert len(level) == 1
        assert len(long) == 2
        assert all(0 < x < page.width_mm and 0 < y < page.height_mm for p in long for x, y in p)


@pytest.mark.parametrize("form", ["svg", "pdf"])
def test_graticule_stands_where_it_says(form: Form) -> None:
    page = pages(TEXTS["demo"], "802", form)[0]
    (left, bottom), (right, top) = page.frame()
    one = listed("802")
    level = [
        p[0][1] - bottom
        for p in page.paths
        if abs(abs(p[0][0] - p[-1][0]) - (right - left)) < 0.01
    ]
    upright = [
        p[0][0] - left for p in page.paths if abs(abs(p[0][1] - p[-1][1]) - (top - bottom)) < 0.01
    ]
    minutes = range(0, 31, 2)
    wanted = [expected_mm(one, -47 - minute / 60, one.west)[1] for minute in minutes]
    assert_same_places([(0, y) for y in level], [(0, y) for y in wanted])
    wanted = [expected_mm(one, one.south, -123.25 - minute / 60)[0] for minute in range(0, 46, 5)]
    assert_same_places([(x, 0) for x in upright], [(x, 0) for x in wanted])


@pytest.mark.parametrize("form", ["svg", "pdf"])
def test_circle_to_scale(form: Form) -> None:
    page = pages(WEEK, "803", form)[0]
    (left, bottom), _ = page.frame()
    ring = max((path for path in page.closed if len(path) > 100), key=len)
    one = listed("803")
    centre = (-47 - 20.15 / 60, -123 - 40.50 / 60)
    for azimuth in range(0, 360, 30):
        lon, lat, _ = Geod(ellps="WGS84").fwd(centre[1], centre[0], azimuth, 0.5 * 1852)
        x, y = expected_mm(one, lat, lon)
        off = min(max(abs(a - left - x), abs(b - bottom - y)) for a, b in ring)
        assert off < TOLERANCE_MM


def test_areas_and_lines_join_their_places() -> None:
    page = pages(WEEK, "803", "svg")[0]
    (left, bottom), _ = page.frame()
    area = [path for path in page.closed if len(path) == 3]
    one = listed("803")
    wanted = [(-47.2, -123.75), (-47.2, -123 - 44 / 60), (-47 - 12.6 / 60, -123 - 44 / 60)]
    assert any(
        all(
            max(abs(x - left - a), abs(y - bottom - b)) < TOLERANCE_MM
            for (x, y), (a, b) in zip(path, (expected_mm(one, *at) for at in wanted), strict=True)
        )
        for path in area
    )


def test_line_over_the_antimeridian_goes_the_shorter_way() -> None:
    page = pages(ACROSS, "804", "svg")[0]
    one = listed("804")
    (left, bottom), _ = page.frame()
    wanted = [expected_mm(one, -47 - 10 / 60, 179 + 50 / 60),
              expected_mm(one, -47 - 20 / 60, -179 - 50 / 60)]  # fmt: skip
    assert any(
        len(path) == 2
        and all(
            max(abs(x - left - a), abs(y - bottom - b)) < TOLERANCE_MM
            for (x, y), (a, b) in zip(path, wanted, strict=True)
        )
        for path in page.paths
    )


class TestLeftOut:
    """What is not drawn, and that it is said."""

    @staticmethod
    def left_out(text: str, chart: str = "803") -> list[tuple[int, str]]:
        (sheet,) = sheets_of(text, chart, charts=chart_list())
        return spread(sheet.lines(), all_frames(sheet)).left_out

    def test_reference_and_unusable(self) -> None:
        assert self.left_out(WEEK) == [(4, "reference"), (6, "unusable")]
        svg = plot_document(sheets_of(WEEK, "803", charts=chart_list()), "svg").decode()
        words = "Not drawn: 4 (only a reference has a position); 6 (must not be applied)."
        assert words in svg

    @pytest.mark.parametrize(
        ("line", "reason"),
        [
            ("rock 46°00'.00S., 123°45'.00W.", "outside"),
            ("submarine cable, joining 46°00'.00S., 123°45'.00W. 46°01'.00S., 123°45'.00W.",
             "outside"),
            ("fish haven, centred on 46°00'.00S., 123°45'.00W., radius 0.5M", "outside"),
        ],
    )  # fmt: skip
    def test_outside(self, line: str, reason: str) -> None:
        text = f"11/26 Quill Sound.\nChart 803 [2288/26] WGS84\nInsert {line}\n"
        assert self.left_out(text) == [(1, reason)]

    def test_other_datum(self) -> None:
        text = "11/26 Quill Sound.\nChart 803 [2288/26] {}\nInsert rock 47-12.00S 123-45.00W\n"
        assert self.left_out(text.format("OSGB36")) == [(1, "datum")]
        assert self.left_out(text.format("WGS84")) == []

    def test_chart_that_cannot_be_plotted(self) -> None:
        (sheet,) = sheets_of(TEXTS["demo"], "802")
        with pytest.raises(NoPlot, match="needs a chart list"):
            plots_of(sheet)
        other = TEXTS["demo"].replace("Chart 802", "Chart 877")
        (sheet,) = sheets_of(other, "877", charts=chart_list())
        with pytest.raises(NoPlot, match="is not in the chart list"):
            plots_of(sheet)

    def test_frame_larger_than_any_paper(self) -> None:
        charts = chart_list()
        large = [one.model_copy(update={"scale": 1000}) for one in charts.charts]
        charts = charts.model_copy(update={"charts": large})
        (sheet,) = sheets_of(TEXTS["demo"], "802", charts=charts)
        with pytest.raises(NoPlot, match="56\\.8 m by 55\\.6 m"):
            plots_of(sheet)


def test_numbers_lead_to_the_lines_of_the_sheet() -> None:
    sheets = sheets_of(TEXTS["demo"], "802", charts=chart_list())
    svg = plot_document(sheets, "svg", sheet_file="802.html").decode()
    keys = [line.key for line in sheets[0].lines()]
    drawn = [key for key in keys if f'href="802.html#{key}"' in svg]
    assert drawn == [key for key in keys if key != "c1-2"]  # close E of a place
    assert "href" not in plot_document(sheets, "svg").decode()


def test_labels_stand_apart() -> None:
    near = "".join(
        f"       rock 47°12'.{number:02}S., 123°45'.00W.\n" for number in range(0, 60, 4)
    )
    text = f"11/26 Quill Sound.\nChart 803 [2288/26] WGS84\nInsert{near[6:]}"
    (drawing,) = map(whole_page, plots_of(sheets_of(text, "803", charts=chart_list())[0]))
    boxes = [group.box for group in drawing.labels]
    assert len(boxes) == 15
    for one, other in itertools.combinations(boxes, 2):
        assert (
            one[0] + one[2] <= other[0]
            or other[0] + other[2] <= one[0]
            or one[1] + one[3] <= other[1]
            or other[1] + other[3] <= one[1]
        )


@pytest.mark.parametrize("form", ["svg", "pdf"])
def test_hostile_words_in_a_plot(form: Form) -> None:
    charts = chart_list()
    named = [one.model_copy(update={"title": "</svg><script>"}) for one in charts.charts]
    charts = charts.model_copy(update={"charts": named})
    document = plot_document(sheets_of(WEEK, "803", charts=charts), form)
    if form == "svg":
        assert not [e for e in ElementTree.fromstring(document).iter() if e.tag.endswith("script")]
    else:
        text = pypdfium2.PdfDocument(document)[0].get_textpage().get_text_range()
        assert "</svg><script>" in text


@pytest.mark.parametrize("form", ["svg", "pdf"])
def test_same_bytes(form: Form) -> None:
    sheets = sheets_of(WEEK, charts=chart_list())
    assert plot_document(sheets, form) == plot_document(sheets, form)
