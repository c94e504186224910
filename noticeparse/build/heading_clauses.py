"""What the heading of a notice says of others and of its own time.

The notices it cancels, or may cancel, and how long it holds: `Quill Sound (until 3 June 2026)`.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.build.extents import extent_of, quoting
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Piece
from noticeparse.readers.clauses import read_clauses
from noticeparse.records.notice import Validity
from noticeparse.records.reference import NoticeRef

_TOLD = ("cancellation-unread", "validity-unread", "validity-reversed")


class HeadingClauses(NamedTuple):
    """What a heading says beside its places and subjects."""

    cancels: list[NoticeRef]
    valid: Validity | None
    faults: list[Fault]


def heading_clauses(context: Context, pieces: Sequence[Piece]) -> HeadingClauses:
    """The notices that a heading cancels and its time, and a fault for what is not read of them.

    The clause may run over the line ends of the heading.
    """
    whole = "\n".join(context.text[slice(*piece)] for piece in pieces)
    clauses = read_clauses(whole, context.year)
    left = [code for code in _TOLD if any(fault.code == code for fault in clauses.faults)]
    faults = [quoting(context, code, extent_of(list(pieces))) for code in left]
    return HeadingClauses(clauses.cancels, clauses.valid, faults)
