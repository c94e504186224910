"""What rows of tables say that is no item: notices they cancel, and rows read as a heading."""

from __future__ import annotations

import re

from noticeparse.build.extents import quoting
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft
from noticeparse.readers.references import read_number
from noticeparse.readers.verbs import canonical_verb
from noticeparse.records.reference import NoticeRef

_NO_NOTICE = frozenset({"", "-", "and", "no", "none", "nil", "n/a", "notice", "notices", "nm"})

_CELLS = re.compile(r"[,;|\t]")
_FEWEST = 4
_NOUNS = frozenset(
    {"chart", "charts", "charted", "for", "read", "show", "found", "located", "place"}
)


def cancelled_in_cells(
    context: Context, draft: NoticeDraft
) -> tuple[list[NoticeRef], list[Fault]]:
    """The notices that a column names as cancelled, and what in it names none."""
    found: list[NoticeRef] = []
    faults: list[Fault] = []
    for start, end in draft.cancelled:
        words = context.text[start:end].strip(" ()[].,;&")
        number = read_number(words, context.year)
        if number is not None:
            found.append(number)
        elif words.lower() not in _NO_NOTICE:
            values = {"written": context.written(start, end)}
            faults.append(Fault("cancellation-unread", start, end, values))
    return found, faults


def rows_in_heading(context: Context, draft: NoticeDraft) -> list[Fault]:
    """Rows of an export that stand where a heading would: `16,insert,wreck,46-10.10S,122-00.20W`.

    Their titles are not known, or they have none.
    """
    found: list[Fault] = []
    for start, end in draft.heading:
        cells = [cell.strip(" \"'").lower() for cell in _CELLS.split(context.text[start:end])]
        if len(cells) < _FEWEST:
            continue
        has_verb = any(_is_verb(cell) for cell in cells)
        figures = sum(any(char.isdecimal() for char in cell) for cell in cells)
        if has_verb and figures > 1:
            found.append(quoting(context, "text-action-lost", (start, end)))
    return found


def _is_verb(cell: str) -> bool:
    is_short = len(cell.split()) < 3 and cell not in _NOUNS
    return is_short and canonical_verb(cell) is not None
