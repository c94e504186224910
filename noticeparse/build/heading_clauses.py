"""What the heading of a notice says of others: the notices it cancels, or may cancel."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.build.extents import extent_of, quoting
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Piece
from noticeparse.readers.clauses import read_clauses
from noticeparse.records.reference import NoticeRef


def heading_clauses(
    context: Context, pieces: Sequence[Piece]
) -> tuple[list[NoticeRef], list[Fault]]:
    """The notices that a heading cancels, and a fault where it may cancel one that is not read.

    The clause may run over the line ends of the heading.
    """
    whole = "\n".join(context.text[slice(*piece)] for piece in pieces)
    clauses = read_clauses(whole, context.year)
    is_left = any(fault.code == "cancellation-unread" for fault in clauses.faults)
    faults = [quoting(context, "cancellation-unread", extent_of(list(pieces)))] if is_left else []
    return clauses.cancels, faults
