"""Words in front of the charts of a notice: what leads to them, and the notices before of several.

`Previous notices 2310, 2288. Charts 802, 803` tells the notices before in the order of the charts.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.drafts import Piece
from noticeparse.layout.head.charts_of_parts import names_part
from noticeparse.layout.line.elements import Element, Line, has_words
from noticeparse.layout.line.said_of_charts import says_which_chart
from noticeparse.readers.features import has_kind
from noticeparse.readers.heads import head_kinds, is_international, opening_kind, read_parts

_LONGEST_LEAD = 40
_SEVERAL = 2
_NUMBERS = frozenset({"PREVIOUS", "NOTICE_NUMBER", "CHART_NUMBER"})
_OF_LIST = _NUMBERS | {"PREVIOUS_LIST", "COMMA", "STOP", "CHART_WORD"}
_LINKS = ("for", "on", "of")


def is_more_than_number(text: str, element: Element) -> bool:
    """Whether an element holds more than marks and the number of a paragraph: `3.`."""
    number = text[element.start : element.end].strip().rstrip(".)")
    return has_words(text, element) and not (number.isdigit() and len(number) < 3)


def leads_to_chart(
    assembly: Assembly, before: Sequence[Element], charts: Sequence[Element]
) -> bool:
    """Whether words lead to the charts at the foot of a notice: `To be made on: Chart 512`.

    So do those of a sentence that names the charts of what follows: `This is for chart 8`.
    The international number of a chart may stand in front of its own: `INT 9512 -- Chart 512`.
    """
    notice = assembly.notice
    words = assembly.text[before[0].start : before[-1].end].strip()
    if notice is not None and not notice.is_radio and is_international(words):
        return True
    if notice is None or notice.is_radio:
        return False
    named = assembly.text[before[0].start : charts[0].end]
    if not notice.charts and says_which_chart(named):
        return True
    if names_part(words):
        # `Part B: Chart 803`: of what stands below it, whatever charts stand above.
        told = head_kinds(assembly.text[charts[0].start : charts[-1].end])
        return not told & {"OTHER_WORDS", "OTHER"}
    if not words.endswith(":"):
        return False
    if len(words) > _LONGEST_LEAD or any(char.isdigit() for char in words) or has_kind(words):
        return False
    kinds = head_kinds(assembly.text[charts[0].start : charts[-1].end])
    if kinds & {"PREVIOUS", "EDITION"}:
        return True
    return not notice.charts and not kinds & {"OTHER_WORDS", "OTHER"}


def lists_notices_before(words: str) -> bool:
    """Whether words tell the notices before of several charts, and nothing else."""
    parts = read_parts(words)
    if not parts or parts[0].kind not in ("PREVIOUS", "PREVIOUS_LIST"):
        return False
    numbers = [part for part in parts if part.kind in _NUMBERS]
    told = {part.kind for part in parts if part.text.lower() not in _LINKS}
    return len(numbers) >= _SEVERAL and told <= _OF_LIST


def takes_notices_before(assembly: Assembly, line: Line) -> bool:
    """Whether a line between the heading of a notice and its charts tells the notices before."""
    notice = assembly.notice
    if notice is None or notice.is_radio or assembly.body:
        return False
    piece = (line.elements[0].start, line.elements[-1].end)
    if (assembly.charts or assembly.carried) and _takes_list_with_charts(assembly, line, piece):
        return True
    if notice.charts or not line.has_only("words", "number", "key"):
        return False
    words = assembly.text[slice(*piece)]
    if lists_notices_before(words):
        assembly.before.append(piece)
        return True
    if not (notice.heading and names_notice_before(words)):
        return False
    notice.heading.append(piece)
    return True


def names_notice_before(words: str) -> bool:
    """Whether words tell the notice before, and nothing else: `Previous notice: 12/26`."""
    parts = read_parts(words)
    is_led = bool(parts) and parts[0].kind == "PREVIOUS"
    return is_led and {part.kind for part in parts} <= {"PREVIOUS", "STOP"}


def _takes_list_with_charts(assembly: Assembly, line: Line, piece: Piece) -> bool:
    """Whether a line below a chart head lists its notices before: `Last 30/26 for chart 82 and …`.

    The charts that it names are those of the head, and open no section of their own.  In a list
    by chart the head stands above the notice, which alone the line is of.
    """
    notice, words = assembly.notice, assembly.text[slice(*piece)]
    is_list = opening_kind(words) == "PREVIOUS_LIST" and lists_notices_before(words)
    if not is_list or not line.has_only("words", "number", "key", "chart", "semicolon"):
        return False
    if assembly.charts:
        assembly.charts[-1].head.append(piece)
    elif notice is not None:
        notice.heading.append(piece)
    return True
