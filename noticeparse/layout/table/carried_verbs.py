"""The verb of a record of keys that holds for the records below it: `Action: Insert` told once.

Where it stood in front of its record, the next one opens the next record; where it stood behind,
as in `Object: wreck / Position: P / Action: Insert`, it is that of the record above it.
"""

from __future__ import annotations

from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import NoticeDraft

PLACES_OF_RECORD = frozenset("position numbered latitude joining bounded centred old from".split())
"""Roles of what makes a record whole, with those of what stands there."""
_THINGS = frozenset("feature old new change light depth legend elevation clearance".split())


class CarriedVerb:
    """Whether the last verb of the open notice stood in front of its record."""

    def __init__(self) -> None:
        self._notice: NoticeDraft | None = None
        self._leads = False

    def note(self, notice: NoticeDraft | None, record: Cells) -> None:
        """Take note of a record at its end, its roles in the order in which they stood."""
        if "verb" in record:
            roles = [one for one in record if one == "verb" or one in _THINGS | PLACES_OF_RECORD]
            self._notice, self._leads = notice, roles[0] == "verb" and len(roles) > 1

    def holds_for(self, notice: NoticeDraft | None, record: Cells) -> bool:
        """Whether a record without a verb is whole, whose verb stands in front of one above."""
        if not self._leads or self._notice is not notice or "verb" in record:
            return False
        has_thing = not record.keys().isdisjoint(_THINGS)
        return has_thing and not record.keys().isdisjoint(PLACES_OF_RECORD)
