"""How long temporary and preliminary notices hold, and what they command."""

from __future__ import annotations

from collections.abc import Iterator

from noticeparse.checks.given import Given
from noticeparse.checks.trouble import Trouble
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.finding import Severity

_ACTION_CODES = {
    "temporary": "temporary-with-actions",
    "preliminary": "preliminary-with-actions",
}


def check_ended(bulletin: Bulletin, given: Given) -> Iterator[Trouble]:
    """Notices that ended before the edition appeared, or before the day asked about.

    The clock is never asked: the same text and day give the same findings.
    """
    issued = bulletin.edition.issued if bulletin.edition else None
    as_of = given.as_of.isoformat() if given.as_of else None
    for index, notice in enumerate(bulletin.notices):
        until = notice.valid.until if notice.valid else None
        if until is None or notice.status == "permanent":
            continue
        # Of a month without its day only the next month is later for certain.
        before = next(
            (day for day in (issued, as_of) if day and until[:10] < day[: len(until[:10])]), None
        )
        if before is None:
            continue
        values = {"until": until[:10], "day": before}
        # That a notice has ended since it was printed is no slip of the edition.
        severity: Severity = "warning" if before == issued else "info"
        span = given.period_of(notice)
        yield Trouble("validity-ended", span, [f"/notices/{index}"], values, severity=severity)


def check_temporary_actions(bulletin: Bulletin, given: Given) -> Iterator[Trouble]:
    """Commands in notices that change no chart for good."""
    for index, notice in enumerate(bulletin.notices):
        code = _ACTION_CODES.get(notice.status)
        if code is None or not any(section.actions for section in notice.charts):
            continue
        values = {"written": notice.id or ""}
        yield Trouble(code, given.number_of(notice), [f"/notices/{index}"], values)
