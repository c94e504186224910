"""Sheets and plots as the bytes of a file, by the name of the format; what is missing is said.

The libraries of the extra `sheet` are imported only where a PDF file is asked for.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.worksheet.html_out import write_html
from noticeparse.worksheet.model import ChartSheet, all_frames
from noticeparse.worksheet.plotting import plots_of, whole_page
from noticeparse.worksheet.svg_out import write_svg
from noticeparse.worksheet.tiling import tiles_of

SHEET_ENDINGS = {".html": "html", ".htm": "html", ".pdf": "pdf"}
PLOT_ENDINGS = {".svg": "svg", ".pdf": "pdf"}

INSTALL = "PDF needs more packages: pip install 'noticeparse[sheet]'"


class ExtraMissing(RuntimeError):
    """The packages that write PDF files are not installed; its words say what to do."""


def sheet_document(sheets: Sequence[ChartSheet], form: str) -> bytes:
    """Work sheets as `html` or `pdf`.

    Raises ExtraMissing.
    """
    if form == "html":
        return "".join(write_html(sheets)).encode("utf-8")
    require_pdf()
    from noticeparse.worksheet.pdf_out import write_pdf

    return write_pdf(sheets)


def plot_document(
    sheets: Sequence[ChartSheet], form: str, *, sheet_file: str = "", paper: str | None = None
) -> bytes:
    """Plots at chart scale as `svg` or `pdf`; numbers lead into the work sheet `sheet_file`.

    A page has the size of the frame, or is a tile on `paper`, `A4` or `A3`.
    Raises ExtraMissing, and NoPlot for a chart that cannot be plotted.
    """
    # Of several charts those that the list has; that none is there is a refusal.
    listed = [sheet for sheet in sheets if all_frames(sheet)] or sheets
    plots = [plot for sheet in listed for plot in plots_of(sheet, sheet_file)]
    drawings = (
        [tile for plot in plots for tile in tiles_of(plot, paper)]
        if paper
        else list(map(whole_page, plots))
    )
    if form == "svg":
        return "".join(write_svg(drawings)).encode("utf-8")
    require_pdf()
    from noticeparse.worksheet.plot_pdf_out import write_plot_pdf

    return write_plot_pdf(drawings)


def require_pdf() -> None:
    """Raise ExtraMissing where PDF files cannot be written."""
    try:
        import reportlab  # noqa: F401 - only whether it is there
    except ModuleNotFoundError:
        raise ExtraMissing(INSTALL) from None
