"""Checks: records in, faults out, records untouched, in one ordered list.

Each check is a plain function over one notice.  It reports what is readable but suspicious; what
could not be read was reported where it was read.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from noticeparse.checks.depths import check_depths
from noticeparse.checks.duplicates import check_duplicates
from noticeparse.checks.hemispheres import check_hemispheres
from noticeparse.checks.lateral_marks import check_lateral_marks
from noticeparse.checks.letters import check_letters
from noticeparse.checks.lights import check_signal_periods
from noticeparse.checks.marks import check_cardinal_marks, check_other_marks
from noticeparse.checks.moves import (
    check_changes,
    check_come_and_gone,
    check_moves,
    check_replaced_places,
)
from noticeparse.checks.outliers import check_far_positions, check_stray_corners
from noticeparse.checks.regions import Region, check_regions
from noticeparse.checks.rings import check_rings
from noticeparse.checks.sections import check_places_on_charts
from noticeparse.checks.trouble import Trouble
from noticeparse.faults import Fault
from noticeparse.findings import Located
from noticeparse.records.notice import Notice

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
    check_lateral_marks,
    check_signal_periods,
    check_depths,
)
"""In the order in which they run; adding a check is one function and one line here."""


def check_notice(
    notice: Notice, path: str, neighbours: Sequence[Notice] = (), *, region: Region | None = None
) -> list[Located]:
    """What the checks find in one notice; `path` is the JSON Pointer of its record.

    `neighbours` are notices beside it in the bulletin, to tell what is far away; `region` is the
    region of buoyage where it is known.
    """
    troubles = [*check_hemispheres(notice, neighbours)]
    told = {trouble.span for trouble in troubles}
    troubles += (one for one in check_far_positions(notice, neighbours) if one.span not in told)
    troubles += check_regions(notice, region)
    troubles += (trouble for check in CHECKS for trouble in check(notice))
    return [
        Located(
            fault=Fault(trouble.code, 0, 0, trouble.values),
            paths=[path + pointer for pointer in trouble.pointers],
            notice=notice.id,
            chart=trouble.chart,
            span=trouble.span,
        )
        for trouble in troubles
    ]
