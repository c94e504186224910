"""Runs the checks over a notice, a bulletin or several; each trouble is put with its record."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.checks import (
    BULLETIN_CHECKS,
    CHECKS,
    EDITION_CHECKS,
    SHEET_CHECKS,
    TOGETHER_CHECKS,
)
from noticeparse.checks.forms import check_forms, check_short_figures
from noticeparse.checks.given import Given, Whole
from noticeparse.checks.hemispheres import check_hemispheres
from noticeparse.checks.outliers import check_far_positions
from noticeparse.checks.regions import Region, check_regions
from noticeparse.checks.sheet_sections import sections_of
from noticeparse.checks.trouble import Trouble
from noticeparse.faults import Fault
from noticeparse.findings import Located
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.notice import Notice
from noticeparse.sheets import Sheets


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
    troubles += check_forms(notice, neighbours)
    troubles += check_short_figures(notice, neighbours)
    troubles += check_regions(notice, region)
    troubles += (trouble for check in CHECKS for trouble in check(notice))
    return [_located(trouble, path, notice.id) for trouble in troubles]


def check_sheets(notices: Sequence[Notice], sheets: Sheets) -> list[Located]:
    """What the checks over a chart list find in the notices of a bulletin."""
    return [
        _located(trouble, f"/notices/{index}", notices[index].id)
        for index, sections in sections_of(notices, sheets)
        for section in sections
        for check in SHEET_CHECKS
        for trouble in check(section)
    ]


def is_told_by_sheets(located: Located, notices: Sequence[Notice], sheets: Sheets) -> bool:
    """Whether a chart list tells more of the same: millimetres, or what was applied last."""
    code = located.fault.code
    if code not in ("move-too-far", "previous-gap"):
        return False
    _, _, notice, _, chart = located.paths[0].split("/")[:5]
    listed = sheets.of_section(notices[int(notice)].charts[int(chart)])
    if code == "move-too-far":
        return bool(listed)
    return bool(listed) and listed[0].chart.last_notice is not None


def check_bulletin(bulletin: Bulletin, given: Given, *, is_whole: bool = True) -> list[Located]:
    """What the checks find in a bulletin; those that need all of it run over a whole one only."""
    checks = [one for one in BULLETIN_CHECKS if is_whole or one not in EDITION_CHECKS]
    return [
        _located(trouble, "", _notice_of(bulletin, trouble))
        for check in checks
        for trouble in check(bulletin, given)
    ]


def check_together(wholes: Sequence[Whole]) -> list[list[Located]]:
    """What the checks find in several bulletins, for each of them."""
    found: list[list[Located]] = [[] for _ in wholes]
    for check in TOGETHER_CHECKS:
        for of, trouble in check(wholes):
            found[of].append(_located(trouble, "", _notice_of(wholes[of].bulletin, trouble)))
    return found


def _located(trouble: Trouble, path: str, notice: str | None) -> Located:
    return Located(
        fault=Fault(trouble.code, 0, 0, trouble.values),
        paths=[path + pointer for pointer in trouble.pointers],
        notice=notice,
        chart=trouble.chart,
        severity=trouble.severity,
        span=trouble.span,
    )


def _notice_of(bulletin: Bulletin, trouble: Trouble) -> str | None:
    """The id of the one notice that a trouble points into."""
    indexes = {int(one.split("/")[2]) for one in trouble.pointers if one.startswith("/notices/")}
    return bulletin.notices[indexes.pop()].id if len(indexes) == 1 else None
