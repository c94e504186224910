"""Checks: records in, faults out, records untouched, in ordered lists.

A check is a plain function over one notice, a whole bulletin, or several that are given together.
It reports what is readable but suspicious; what could not be read was reported where it was read.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from noticeparse.checks.chains import check_chain, check_chains
from noticeparse.checks.datums import check_datum_stated, check_datums_agree
from noticeparse.checks.duplicates import check_duplicates
from noticeparse.checks.given import Given, Whole
from noticeparse.checks.hemispheres import check_hemispheres
from noticeparse.checks.letters import check_letters
from noticeparse.checks.lists import (
    check_cancellations,
    check_cancelled_list,
    check_cancelled_permanent,
    check_in_force,
    check_index_of_charts,
)
from noticeparse.checks.marks import check_cardinal_marks, check_other_marks
from noticeparse.checks.moves import (
    check_changes,
    check_come_and_gone,
    check_moves,
    check_replaced_places,
)
from noticeparse.checks.numbers import (
    check_numbers_differ,
    check_numbers_in_order,
    check_numbers_once,
    check_stated_range,
)
from noticeparse.checks.outliers import check_far_positions, check_stray_corners
from noticeparse.checks.rings import check_rings
from noticeparse.checks.sections import check_places_on_charts
from noticeparse.checks.trouble import Trouble
from noticeparse.checks.validity import check_ended, check_temporary_actions
from noticeparse.faults import Fault
from noticeparse.findings import Located
from noticeparse.records.bulletin import Bulletin
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
)
"""In the order in which they run; adding a check is one function and one line here."""

BULLETIN_CHECKS: tuple[Callable[[Bulletin, Given], Iterator[Trouble]], ...] = (
    check_numbers_once,
    check_numbers_in_order,
    check_stated_range,
    check_index_of_charts,
    check_in_force,
    check_cancelled_list,
    check_cancelled_permanent,
    check_chain,
    check_ended,
    check_temporary_actions,
    check_datum_stated,
    check_datums_agree,
)
"""The same for a whole bulletin: its edition, its lists and all its notices are known."""

TOGETHER_CHECKS: tuple[Callable[[Sequence[Whole]], Iterator[tuple[int, Trouble]]], ...] = (
    check_numbers_differ,
    check_cancellations,
    check_chains,
)
"""The same for several bulletins given together; each trouble comes with the bulletin it is of."""


def check_notice(notice: Notice, path: str, neighbours: Sequence[Notice] = ()) -> list[Located]:
    """What the checks find in one notice; `path` is the JSON Pointer of its record.

    `neighbours` are notices beside it in the bulletin, to tell what is far away.
    """
    troubles = [*check_hemispheres(notice, neighbours)]
    told = {trouble.span for trouble in troubles}
    troubles += (one for one in check_far_positions(notice, neighbours) if one.span not in told)
    troubles += (trouble for check in CHECKS for trouble in check(notice))
    return [_located(trouble, path, notice.id) for trouble in troubles]


def check_bulletin(bulletin: Bulletin, given: Given) -> list[Located]:
    """What the checks find in a bulletin as a whole."""
    return [
        _located(trouble, "", _notice_of(bulletin, trouble))
        for check in BULLETIN_CHECKS
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
