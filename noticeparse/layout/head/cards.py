"""Cards under a chart head: the number of a notice, and what it says of the chart behind it."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.line.elements import Element
from noticeparse.layout.opening.recognise import is_previous
from noticeparse.readers.heads import head_kinds


def take_card(assembly: Assembly, details: Sequence[Element]) -> None:
    """Give the open chart the details behind the number of the open notice."""
    text = assembly.text
    first = details[0]
    if len(details) > 1 and head_kinds(text[first.start : first.end]) == {"DATE"}:
        # The date of the notice, not that of the edition.
        if assembly.notice is not None:
            assembly.notice.clauses.append((first.start, first.end))
        details = details[1:]
    head = assembly.charts[-1].head
    # The notice before is that of this card, not of the one above.
    head[1:] = [one for one in head[1:] if not is_previous(text[slice(*one)])]
    head.append((details[0].start, details[-1].end))
