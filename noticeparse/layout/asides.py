"""Lines that speak of other notices: cancelled by the one that is open, expired, or in force."""

from __future__ import annotations

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.elements import Line
from noticeparse.layout.evidence import lead_index
from noticeparse.layout.notice_openings import speaks_of_notice
from noticeparse.layout.prose import paragraph
from noticeparse.readers.heads import head_kinds


def takes_cancellation(assembly: Assembly, line: Line) -> bool:
    """Whether a line says nothing but that other notices are cancelled, or still in force."""
    notice = assembly.notice
    # All that a radio warning says is kept word for word among its remarks.
    if notice is None or notice.is_radio or not line.has("number"):
        return False
    first = line.elements[lead_index(line)]
    piece = (first.start, line.elements[-1].end)
    if speaks_of_notice(assembly.text, line):
        assembly.add_prose(paragraph(assembly.text, line.elements))
        return True
    if head_kinds(assembly.text[slice(*piece)]) - {"STOP", "COMMA"} != {"CANCELS"}:
        return False
    notice.clauses.append(piece)
    return True
