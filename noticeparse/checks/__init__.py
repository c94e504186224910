"""Checks: records in, faults out, records untouched, in one ordered list.

Each check is a plain function over one notice, or, where a chart list is given, over one chart
section with its chart in the list.  It reports what is readable but suspicious; what could not be
read was reported where it was read.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from noticeparse.checks.duplicates import check_duplicates
from noticeparse.checks.hemispheres import check_hemispheres
from noticeparse.checks.letters import check_letters
from noticeparse.checks.listed_charts import (
    check_datum,
    check_depth_units,
    check_edition,
    check_listed,
    check_previous,
)
from noticeparse.checks.marks import check_cardinal_marks, check_other_marks
from noticeparse.checks.moves import (
    check_changes,
    check_come_and_gone,
    check_moves,
    check_replaced_places,
)
from noticeparse.checks.outliers import check_far_positions, check_stray_corners
from noticeparse.checks.rings import check_rings
from noticeparse.checks.sections import check_places_on_charts
from noticeparse.checks.sheet_positions import (
    check_limits,
    check_moves_on_sheet,
    check_precision,
)
from noticeparse.checks.sheet_sections import SheetSection, sections_of
from noticeparse.checks.trouble import Trouble
from noticeparse.faults import Fault
from noticeparse.findings import Located
from noticeparse.records.notice import Notice
from noticeparse.sheets import Sheets

CHECKS: tuple[Callable[[Notice], Iterator[Trouble]], ...] = (
    check_stray_corners,
    check_places_on_charts,
    check_moves,
    check_changes,
    check_replaced_places,
    check_duplicates,
    check_come_and_gone,
    check_letters,
    check_rings,
    check_cardinal_marks,
    check_other_marks,
)
"""In the order in which they run; adding a check is one function and one line here."""

SHEET_CHECKS: tuple[Callable[[SheetSection], Iterator[Trouble]], ...] = (
    check_listed,
    check_previous,
    check_edition,
    check_datum,
    check_depth_units,
    check_limits,
    check_moves_on_sheet,
    check_precision,
)
"""Those over a chart list, in the order in which they run on each chart section."""


def check_notice(notice: Notice, path: str, neighbours: Sequence[Notice] = ()) -> list[Located]:
    """What the checks find in one notice; `path` is the JSON Pointer of its record.

    `neighbours` are notices beside it in the bulletin, to tell what is far away.
    """
    troubles = [*check_hemispheres(notice, neighbours)]
    told = {trouble.span for trouble in troubles}
    troubles += (one for one in check_far_positions(notice, neighbours) if one.span not in told)
    troubles += (trouble for check in CHECKS for trouble in check(notice))
    return [_located(trouble, path, notice) for trouble in troubles]


def check_sheets(notices: Sequence[Notice], sheets: Sheets) -> list[Located]:
    """What the checks over a chart list find in the notices of a bulletin."""
    return [
        _located(trouble, f"/notices/{index}", notices[index])
        for index, sections in sections_of(notices, sheets)
        for section in sections
        for check in SHEET_CHECKS
        for trouble in check(section)
    ]


def is_measured(located: Located, notice: Notice, sheets: Sheets) -> bool:
    """Whether a move judged by its miles was also measured in millimetres, which tell more."""
    if located.fault.code != "move-too-far":
        return False
    chart = int(located.paths[0].split("/")[4])
    return bool(sheets.of_section(notice.charts[chart]))


def _located(trouble: Trouble, path: str, notice: Notice) -> Located:
    return Located(
        fault=Fault(trouble.code, 0, 0, trouble.values),
        paths=[path + pointer for pointer in trouble.pointers],
        notice=notice.id,
        chart=trouble.chart,
        span=trouble.span,
    )
