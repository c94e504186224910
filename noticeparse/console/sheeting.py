"""What `sheet` does: bulletins in, work sheets and plots out, an exit status back.

Both documents are made before either is written, so that nothing is half there.
"""

from __future__ import annotations

import os
from collections.abc import Sequence

from noticeparse.chart_order import is_settled, order_by_chart
from noticeparse.console.chart_file import read_chart_file
from noticeparse.console.outlet import Outlet, ReaderGone, say
from noticeparse.console.outputs import Target
from noticeparse.console.parsing import spares_inputs
from noticeparse.console.session import Session
from noticeparse.console.settings import Settings
from noticeparse.console.statuses import NOT_READ, WITH_ERRORS
from noticeparse.console.telling import WHAT_TO_DO
from noticeparse.intake import STANDARD_INPUT
from noticeparse.worksheet.collecting import NotTouched, chart_sheets
from noticeparse.worksheet.documents import (
    PLOT_ENDINGS,
    SHEET_ENDINGS,
    ExtraMissing,
    plot_document,
    require_pdf,
    sheet_document,
)
from noticeparse.worksheet.model import ChartSheet, all_frames
from noticeparse.worksheet.plotting import NoPlot
from noticeparse.writers.quoting import visible


def sheet(
    files: Sequence[str],
    settings: Settings,
    *,
    wanted: Sequence[str],
    out: str | None,
    plot: str | None,
    paper: str | None,
    is_sheet_wanted: bool,
) -> int:
    """Write the sheets of the wanted charts, or of all that `files` touch."""
    forms = (_form(out, SHEET_ENDINGS), _form(plot, PLOT_ENDINGS))
    targets = [Target(path, "") for path in (out, plot) if path is not None]
    inputs = [*(files or [STANDARD_INPUT]), *filter(None, [settings.chart_list])]
    try:
        if "pdf" in forms:
            require_pdf()
    except ExtraMissing as error:
        say(f"noticeparse: {error}")
        return NOT_READ
    if not spares_inputs(targets, inputs):
        return NOT_READ
    known = read_chart_file(settings)
    if known.status == NOT_READ:
        return NOT_READ
    session = Session(files, settings, known, is_watched=False)
    readings = [(one.label, one.bulletin) for one in session.readings_together()]
    # A sheet without the notices that could not be read would look whole.
    if session.status == NOT_READ:
        say("noticeparse: no sheet is made: it would lack what could not be read")
        return NOT_READ
    try:
        sheets = chart_sheets(readings, known.charts, wanted)
        made = [(out, sheet_document(sheets, forms[0]))] if is_sheet_wanted else []
        if plot is not None:
            name = _seen_from(plot, out)
            made.append((plot, plot_document(sheets, forms[1], sheet_file=name, paper=paper)))
    except (NotTouched, NoPlot) as error:
        say(f"noticeparse: {visible(str(error.args[0]))}")
        return NOT_READ
    for path, data in made:
        _write(path, data)
    _tell(sheets, is_plotted=plot is not None)
    is_certain = is_settled(order_by_chart(readings))
    return session.status if is_certain else max(session.status, WITH_ERRORS)


def _form(path: str | None, endings: dict[str, str]) -> str:
    return endings[os.path.splitext(path)[1].lower()] if path else "html"


def _seen_from(plot: str, out: str | None) -> str:
    """The name of the sheet for a link in the plot, empty where the sheet is no file."""
    return os.path.relpath(out, os.path.dirname(plot) or ".") if out else ""


def _write(path: str | None, data: bytes) -> None:
    """Write one document whole.

    Raises NotWritable.
    """
    with Outlet(path) as outlet:
        try:
            outlet.write_bytes(data)
        except ReaderGone:
            return


def _tell(sheets: Sequence[ChartSheet], *, is_plotted: bool) -> None:
    """One line for each chart, and its alarms."""
    for one in sheets:
        say(visible(f"{one.name}: {one.account()}"))
        if is_plotted and not all_frames(one):
            say("  no plot: the chart, or its panel, is not in the chart list")
        for alarm in one.alarms:
            say(visible(f"  {alarm}"))
    if any(not line.is_usable for one in sheets for line in one.lines()):
        say(WHAT_TO_DO)
