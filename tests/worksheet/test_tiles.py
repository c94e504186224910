"""A plot in tiles: to scale on each, and the same places under the marks of two neighbours."""

from __future__ import annotations

import pypdfium2
import pytest

from noticeparse.worksheet.documents import plot_document
from noticeparse.worksheet.drawing import Box, Point
from noticeparse.worksheet.meetings import meeting
from noticeparse.worksheet.plotting import plots_of
from noticeparse.worksheet.tiling import PAPERS, tiles_of
from tests.command import invoke
from tests.worksheet.paths import Lines, pdf_pages
from tests.worksheet.test_plot import TOLERANCE_MM, expected_mm, listed
from tests.worksheet.week import CORPUS, LIST, WEEK, chart_list, sheets_of

CORNERS = [(-47.2, -123.75), (-47.2, -123 - 44 / 60)]
LIGHT = (-47 - 12.30 / 60, -123 - 44.50 / 60)


def tiles(text: str, chart: str, paper: str) -> tuple[list[str], list[Lines]]:
    (plot, *_) = plots_of(sheets_of(text, chart, charts=chart_list())[0])
    names = [tile.title.rpartition(" ")[2] for tile in tiles_of(plot, paper)]
    document = plot_document(sheets_of(text, chart, charts=chart_list()), "pdf", paper=paper)
    return names, pdf_pages(document)[: len(names)]


def from_marks(page: Lines, *, is_top: bool) -> list[Point]:
    """The places nearest to a pair of marks, from the left one of them."""
    marks = sorted(page.crosses(6), key=lambda at: (-at[1] if is_top else at[1], at[0]))[:2]
    left = min(marks)
    return sorted((x - left[0], y - left[1]) for x, y in page.crosses() if y > 46)


def test_neighbours_show_the_same_places_under_their_marks() -> None:
    names, pages = tiles(WEEK, "803", "A4")
    assert names == ["B1", "B2", "C2", "C3"]
    upper, lower = from_marks(pages[0], is_top=False), from_marks(pages[1], is_top=True)
    wanted = [expected_mm(listed("803"), *at) for at in (*CORNERS, LIGHT)]
    assert len(upper) == 3
    for found in (upper, lower):
        for x, y in upper:
            assert min(max(abs(x - a), abs(y - b)) for a, b in found) < TOLERANCE_MM
    # The distances between them are those on the chart.
    base, first = min(wanted), min(upper)
    for x, y in wanted:
        dx, dy = x - base[0], y - base[1]
        assert min(max(abs(a - first[0] - dx), abs(b - first[1] - dy)) for a, b in upper) < (
            TOLERANCE_MM
        )


@pytest.mark.parametrize("paper", ["A4", "A3"])
def test_every_place_stands_on_a_tile(paper: str) -> None:
    text = (CORPUS / "demo.txt").read_text("utf-8")
    document = plot_document(sheets_of(text, charts=chart_list()), "pdf", paper=paper)
    pages = pypdfium2.PdfDocument(document)
    words = " ".join(page.get_textpage().get_text_range() for page in pages)
    for number in (1, 3, 4, 5, 6):
        assert f"{number} " in words
    for page in pdf_pages(document):
        assert (page.width_mm, page.height_mm) == pytest.approx(PAPERS[paper], abs=0.01)
        long = [path for path in page.paths if len(path) == 2 and abs(_length(path) - 100) < 0.01]
        assert len(long) == 2


def _length(path: list[Point]) -> float:
    (x0, y0), (x1, y1) = path
    return ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5


def test_tile_needs_a_plot_in_pdf() -> None:
    demo = str(CORPUS / "demo.txt")
    for extra in ([], ["--plot", "a.svg"]):
        result = invoke("sheet", "--charts", LIST, *extra, "--tile", "A4", demo)
        assert result.exit_code == 2
        assert "--tile goes with --plot OUT.pdf only" in result.stderr


BOX = Box(10, 10, 10, 10)


@pytest.mark.parametrize(
    ("path", "is_closed", "found"),
    [
        ([(0, 15), (30, 15)], False, (15, 15)),
        ([(12, 12), (14, 12)], False, (13, 12)),
        ([(0, 0), (30, 30)], False, (15, 15)),
        # Its rectangle meets the box, the line does not.
        ([(0, 12), (12, 0)], False, None),
        ([(0, 0), (30, 0), (30, 30), (0, 30)], False, None),
        ([(0, 0), (30, 0), (30, 30), (0, 30)], True, (15, 15)),
        ([(40, 40), (50, 40), (50, 50)], True, None),
        ([(10, 0), (10, 30)], False, (10, 15)),
        ([(9, 0), (9, 30)], False, None),
    ],
)
def test_where_a_path_meets_a_box(path: list[Point], is_closed: bool, found: Point | None) -> None:
    assert meeting(path, BOX, is_closed=is_closed) == found
