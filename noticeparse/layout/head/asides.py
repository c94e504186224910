"""Lines that speak of other notices: cancelled by one of them, expired, or in force."""

from __future__ import annotations

import re

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.body.prose import paragraph
from noticeparse.layout.drafts import NoticeDraft, Prose
from noticeparse.layout.evidence import lead_index
from noticeparse.layout.head.before_charts import takes_notices_before
from noticeparse.layout.head.same_items import takes_same_items
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.opening.charts_aside import names_chart_aside
from noticeparse.layout.opening.notice_kinds import names_no_chart
from noticeparse.layout.opening.notice_openings import speaks_of_notice
from noticeparse.layout.opening.recognise import is_source
from noticeparse.readers.heads import head_kinds, opening_kind

_CANCELLED_BY = re.compile(
    r"(?:is|are|was|were|(?:has|have) been) (?:hereby )?"
    r"(?:cancelled|canceled|superseded|withdrawn|revoked|annulled)(?= by )",
    re.IGNORECASE,
)
_CANCELS = re.compile(r"(?:also )?(?:cancels|supersedes|revokes|annuls)\b", re.IGNORECASE)
_NAMES_NOTICE = re.compile(
    r"(?:(?:the )?(?:temporary |preliminary )?(?:notices?|nm|ntm)(?: to mariners)?"
    r"(?: nos?\.?)?)?$",
    re.IGNORECASE,
)


_OTHER_NUMBER = r"[0-9]{1,5}(?:\([TP]\))?/(?:19|20)?[0-9]{2}"
_PREVIOUS_OF_CHART = (
    rf"(?:charts? )?[A-Z]{{0,3}} ?[0-9]{{1,6}}[A-Z]?(?: by | with | - |: ?| ?= ?| \(|, ?| )"
    rf"{_OTHER_NUMBER}\)?"
)
_PREVIOUS = re.compile(
    r"(?P<lead>(?:the )?(?:preceding|previous|last|former|earlier) (?:notices?|corrections?"
    r"|updates?|nms?)(?: (?:are|is|were|was))?(?: (?:of|for|on) (?:the|these) charts)?(?: ?:| -) )"
    rf"{_PREVIOUS_OF_CHART}(?:(?:[,;]|,? and) {_PREVIOUS_OF_CHART}){{0,59}}\.?",
    re.IGNORECASE,
)
"""`Preceding notices: chart 37, 2598/26; chart 38, 2577/26.`"""


_STILL_IN_FORCE = re.compile(
    rf"(?:,? but|,? while|;|,)[ \n](?:(?:the )?notices? )?"
    rf"(?:{_OTHER_NUMBER}(?:,? and |, )?){{1,9}}"
    r",? (?:remains?|stays?|continues?|is still|are still) in force\.?\s*$",
    re.IGNORECASE,
)
"""What a line says besides of notices that go on: `… but 2213(T)/26 remains in force`."""
_STOPS = frozenset({"STOP", "COMMA"})
_OF_CANCELLATION = _STOPS | {"CANCELS"}


def lead_of_previous(words: str) -> int | None:
    """The length of the lead of a line that tells the notice before of each chart, else None."""
    found = _PREVIOUS.fullmatch(words.strip())
    return len(found["lead"]) if found else None


def takes_clause(assembly: Assembly, line: Line) -> bool:
    """Whether a line says something of other notices, and nothing of its own."""
    return (
        takes_cancellation(assembly, line)
        or _takes_number_before(assembly, line)
        or _takes_previous(assembly, line)
        or takes_notices_before(assembly, line)
        or takes_same_items(assembly, line)
        or _takes_chart_aside(assembly, line)
    )


def _takes_chart_aside(assembly: Assembly, line: Line) -> bool:
    """Keep a line that names a chart in passing as the source of its notice, or as a remark."""
    notice = assembly.notice
    if notice is None or notice.is_radio or not names_chart_aside(assembly.text, line):
        return False
    if is_source(assembly.text, line):
        notice.sources.append((line.elements[0].start, line.elements[-1].end))
    else:
        assembly.add_prose(paragraph(assembly.text, line.elements))
    return True


def _takes_number_before(assembly: Assembly, line: Line) -> bool:
    """Take a number alone right below the chart of an open notice as the notice before.

    `71/26`, `Chart 318`, `63/26`: cells of a row that stand one below the other.
    """
    notice, charts = assembly.notice, assembly.charts
    if notice is None or notice.number is None or len(notice.charts) != 1 or not charts:
        return False
    head = charts[-1].head
    if (
        assembly.is_by_chart
        or assembly.body
        or charts[-1].items
        or charts[-1].previous
        or not head
    ):
        return False
    if not line.has_only("number") or len(line.elements) != 1 or len(head) != 1:
        return False
    text = assembly.text
    is_stacked = text[notice.number.end : head[0][0]].strip(" .") == "\n"
    if not is_stacked or text[head[0][1] : line.start].strip(" .") != "\n":
        return False
    charts[-1].previous = (line.elements[0].start, line.elements[0].end)
    return True


def _takes_previous(assembly: Assembly, line: Line) -> bool:
    """Whether a line below the items of a notice says which notices were last on its charts."""
    notice = assembly.notice
    if notice is None or notice.is_radio or not assembly.body or line.has("point", "half"):
        return False
    piece = (line.elements[0].start, line.elements[-1].end)
    if lead_of_previous(assembly.text[slice(*piece)]) is None:
        return False
    notice.clauses.append(piece)
    return True


def takes_no_chart(assembly: Assembly, line: Line) -> bool:
    """Whether a line, in the place of the charts, says that a notice is for none of them."""
    notice = assembly.notice
    if notice is None or not line.elements or not line.has("words", "chart", "key"):
        return False
    words = assembly.text[line.elements[0].start : line.end].strip()
    if not names_no_chart(words):
        return False
    notice.is_for_none = True
    notice.clauses.append((line.elements[0].start, line.elements[-1].end))
    return True


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
    if _takes_of_both(assembly, line):
        return True
    if _goes_on_with_list(assembly.text, notice, piece):
        return True
    words = _STILL_IN_FORCE.sub("", assembly.text[slice(*piece)])
    if opening_kind(words) not in _OF_CANCELLATION or head_kinds(words) - _STOPS != {"CANCELS"}:
        return False
    notice.clauses.append(piece)
    return True


def _goes_on_with_list(text: str, notice: NoticeDraft, piece: tuple[int, int]) -> bool:
    """Take a line with the rest of a list: `Cancels 12(T)/25;` above `13(T)/25`."""
    start, end = notice.clauses[-1] if notice.clauses else (0, 0)
    between = text[max(end - 1, 0) : piece[0]]
    if between[1:].strip(" ,;") != "\n" or not ("," in between or ";" in between):
        return False
    if head_kinds(text[start : piece[1]]) - _STOPS != {"CANCELS"}:
        return False
    notice.clauses[-1] = (start, piece[1])
    return True


def _takes_of_both(assembly: Assembly, line: Line) -> bool:
    """Take a line that names both notices: `Notice 198(T)/26 is cancelled by Notice 244/26.`.

    The one that cancels has it, wherever the line stands; if it is not here, no notice has it.
    """
    text = assembly.text
    elements = [e for e in line.elements if text[e.start : e.end].strip(" .")]
    numbers = [e for e in elements if e.kind == "number"]
    if len(numbers) < 2 or any(e.kind not in ("words", "number") for e in elements):
        return False
    start, end = elements[0].start, elements[-1].end
    if _NAMES_NOTICE.match(text[start : numbers[0].start].strip()) is None:
        return False
    behind = text[numbers[0].end : numbers[1].start].lstrip()
    if _CANCELS.match(behind) is not None:
        said = (numbers[0].end, end)
        return _give(assembly, numbers[0], line, (said, (start, numbers[0].end)))
    between = text[numbers[-2].end : numbers[-1].start]
    told = _CANCELLED_BY.search(between)
    if told is None or elements[-1] is not numbers[-1]:
        return False
    cut = numbers[-2].end + told.end()
    return _give(assembly, numbers[-1], line, ((start, cut), (cut, line.elements[-1].end)))


def _give(
    assembly: Assembly, number: Element, line: Line, pieces: tuple[tuple[int, int], ...]
) -> bool:
    """Give the clause to the notice of a number; its other piece says nothing more."""
    notice: NoticeDraft | None = assembly.of_number(assembly.words(number))
    if notice is None:
        whole = (line.elements[0].start, line.elements[-1].end)
        assembly.loose.append(Prose([whole], []))
    else:
        notice.clauses += pieces
    return True
