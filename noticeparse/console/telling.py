"""What is said to a person of the bulletins that are written: their errors, what an output lacks.

A pipe shows no exit status, and a table does not show what is not in it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from noticeparse.records.bulletin import Bulletin
    from noticeparse.writers import Wishes

WHAT_TO_DO = "`noticeparse check` shows what to look at"

# These hold actions only; the others hold all that was read.
_ACTIONS_ONLY = ("geojson", "csv")


class Counts(NamedTuple):
    """What is counted of a bulletin, or of the parts of one."""

    notices: int = 0
    without_action: int = 0
    """Notices that hold no action."""
    actions: int = 0
    unusable: int = 0
    errors: int = 0

    def plus(self, other: Counts) -> Counts:
        """Both together."""
        return Counts(*map(sum, zip(self, other, strict=True)))


def count(bulletin: Bulletin) -> Counts:
    """What is counted of a bulletin."""
    from noticeparse.writers.findings_out import count_errors

    of_notices = [
        [action for section in notice.charts for action in section.actions]
        for notice in bulletin.notices
    ]
    return Counts(
        notices=len(of_notices),
        without_action=sum(not actions for actions in of_notices),
        actions=sum(map(len, of_notices)),
        unusable=sum(not action.usable for actions in of_notices for action in actions),
        errors=count_errors(bulletin.findings),
    )


def told_of(counts: Counts, label: str, forms: Iterable[str], wishes: Wishes) -> Iterator[str]:
    """What is to be said of an input beside the data: its errors, and what an output lacks."""
    from noticeparse.writers.findings_out import counted

    if counts.errors:
        yield f"noticeparse: {label}: {counted(counts.errors, 'error')}; {WHAT_TO_DO}"
    lacking = [form for form in _ACTIONS_ONLY if form in set(forms)]
    if counts.without_action and lacking:
        words = f"{counted(counts.without_action, 'notice')} without an action"
        yield f"noticeparse: {label}: {words}, not in {' and '.join(lacking)}"
    if counts.unusable and "geojson" in lacking and not wishes.with_unusable:
        words = counted(counts.unusable, "unusable action")
        yield f"noticeparse: {label}: {words} left out of geojson; --unusable puts them in"
