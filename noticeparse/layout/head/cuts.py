"""Cuts a line before the notices and charts that open within it, and before column titles."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.column.columns import column_role
from noticeparse.layout.drafts import Layout, NoticeDraft, Piece, Prose
from noticeparse.layout.head.charts_of_parts import is_foot_of_parts
from noticeparse.layout.head.numbers_behind import number_behind_heading
from noticeparse.layout.head.panel_lines import leads_to_panel
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.line.joints import heads_a_section
from noticeparse.layout.opening.notice_openings import is_named, notice_opening
from noticeparse.layout.opening.pointers import ends_with_reference
from noticeparse.layout.sentence.sentences import without_article
from noticeparse.readers.features import leads_feature
from noticeparse.readers.heads import head_kinds

_TOLD = ("point", "half", "reference", "same", "passive", "verb")
"""What shows that a statement stands before a chart on its line."""


def parts_of(assembly: Assembly, line: Line, following: list[Line]) -> list[Line]:
    """The line, cut at the heads within it, and behind a panel of the open chart at its head."""
    if is_foot_of_parts(assembly.text, line):
        return [line]
    parts = split_at_heads(assembly.text, line, following)
    if not assembly.charts:
        return parts
    return [one for part in parts for one in _behind_panel(assembly.text, part)]


def split_at_heads(text: str, line: Line, following: list[Line]) -> list[Line]:
    """The line, cut before every notice or chart that opens within it: `… // 56/26 Corbel`."""
    cuts: list[int] = []
    if not line.has("number", "chart"):
        return [line]
    if number_behind_heading(text, line, following[0] if following else None) is not None:
        return [line]
    if line.has("number"):
        cuts = [
            index
            for index, element in enumerate(line.elements)
            if index
            and element.kind == "number"
            and not ends_with_reference(text[line.start : element.start])
            and _opens_within(text, line, index, following)
        ]
    if cuts and (opening := notice_opening(text, line)) is not None:
        cuts = [index for index in cuts if index > opening.at]
    if line.has("chart"):
        for index in range(1, len(line.elements)):
            if _is_next_chart(text, line, index) or _opens_chart(text, line, index, following):
                cuts.append(index)
    if not cuts:
        return [line]
    bounds = [0, *sorted(cuts), len(line.elements)]
    return [
        line._replace(
            elements=line.elements[a:b],
            start=line.elements[a].start if a else line.start,
            end=line.elements[b - 1].end if b < len(line.elements) else line.end,
        )
        for a, b in pairwise(bounds)
    ]


def _behind_panel(text: str, line: Line) -> list[Line]:
    """The line, cut behind the panel that leads it: `Plan "Quill Basin" - Delete rock P`."""
    elements = line.elements
    if len(elements) < 2 or elements[0].kind != "words" or elements[1].kind != "verb":
        return [line]
    lead, rest = elements[:1], elements[1:]
    own = line._replace(elements=lead, end=lead[0].end)
    if not leads_to_panel(text, own):
        return [line]
    return [own, line._replace(elements=rest, start=rest[0].start)]


def settle_edition(text: str, lines: Sequence[Line], layout: Layout) -> None:
    """A first number under which nothing stands is the edition's: `Circular 7 of 2026`.

    Commands without a place or a chart above all numbers tell how the notices are to be read.
    """
    notices = layout.notices
    if len(notices) > 1 and _is_preamble(text, notices[0]) and notices[1].number is not None:
        preamble = notices.pop(0)
        items = (item for chart in preamble.charts for item in chart.items)
        layout.loose += [Prose([(item.pieces[0][0], item.pieces[-1][1])], []) for item in items]
        layout.loose += preamble.prose
        layout.loose.sort(key=lambda one: one.pieces)
    if len(notices) < 2 or not _says_nothing(text, notices[0]):
        return
    first = notices.pop(0)
    layout.front += [one for one in lines if one.start <= first.start < one.end]
    layout.front.sort(key=lambda line: line.row)


_OF_COLUMNS = re.compile(r"\b(?:OLD|NEW|FROM|TO|[Cc]olumns?|[Tt]ables?)\b")
"""What a sentence names that tells of the columns below: `Amend the light from OLD to NEW`."""


def _is_preamble(text: str, notice: NoticeDraft) -> bool:
    """Whether what stands above all numbers names no chart, no place, and nothing to be done."""
    if notice.number is not None or notice.heading or notice.clauses or notice.is_radio:
        return False
    is_of_chart = any(chart.head or chart.number or chart.panel for chart in notice.charts)
    items = [item for chart in notice.charts for item in chart.items]
    if not items or is_of_chart or any(item.places for item in items):
        return False
    # `Delete the light on the pier`: a command that has lost its head and its place.
    told = [" ".join(text[slice(*piece)] for piece in item.words) for item in items]
    rest = (one.lower() for one in told if one.isupper() or _OF_COLUMNS.search(one) is None)
    return not any(leads_feature(without_article(one)) for one in rest)


def _says_nothing(text: str, notice: NoticeDraft) -> bool:
    """Whether nothing stands under a number but a date."""
    if notice.number is None or notice.charts or notice.prose or notice.sources or notice.clauses:
        return False
    kinds = [head_kinds(text[start:end]) for start, end in notice.heading]
    return all("DATE" in one and one <= {"DATE", "STOP"} for one in kinds)


def without_axis_titles(text: str, line: Line) -> tuple[Line, list[Piece]]:
    """A chart's or verb's line without `Lat.   Long.` at its end, the titles of the columns."""
    elements = line.elements
    fewest = {"chart": 4, "verb": 3}.get(elements[0].kind if elements else "", 0)
    if not fewest or len(elements) < fewest:
        return line, []
    titles = elements[-2:]
    roles = [column_role(text[e.start : e.end]) for e in titles]
    if not all(e.gap for e in titles) or roles != ["latitude", "longitude"]:
        return line, []
    kept = elements[:-2]
    return line._replace(elements=kept, end=kept[-1].end), [(e.start, e.end) for e in titles]


def _is_next_chart(text: str, line: Line, index: int) -> bool:
    """Whether a chart behind the last place of another opens its items: `P. Chart 805: …`."""
    before, chart = line.elements[index - 1], line.elements[index]
    if chart.kind == "chart" and _goes_on_with_charts(line.elements, index):
        return False
    if chart.kind == "chart" and before.kind == "words" and _tells_much(text, before):
        return heads_a_section(text, chart.end)
    if chart.kind == "chart" and text[before.end - 1] == "." and _names_all(text, chart):
        # `… by a light-buoy, Fl.R.3s. Charts affected: 802`
        is_behind = any(e.kind in _TOLD for e in line.elements[:index])
        return is_behind or heads_a_section(text, chart.end)
    if chart.kind != "chart" or before.kind not in ("point", "half", "reference", "semicolon"):
        return False
    stops = text[before.end - 1 : chart.start].strip()
    behind = line.elements[index + 1 :]
    is_head = any(e.kind == "verb" for e in behind) or heads_a_section(text, chart.end)
    return stops[-1:] in (".", ";") and is_head


_OF_A_HEAD = frozenset(
    "CHART_WORD CHART_NUMBER INTERNATIONAL DATUM PANEL PREVIOUS PREVIOUS_IN_BRACKETS NEW_EDITION "
    "EDITION DEPTH_UNIT COMMA STOP NOTICE_NUMBER PREVIOUS_LIST".split()
)
_LONGEST_HEAD = 160


_PREVIOUS = frozenset({"PREVIOUS", "PREVIOUS_IN_BRACKETS", "PREVIOUS_LIST"})
_COLON = re.compile(
    r"\s{0,20}[A-Z]{0,3}[0-9]{1,6}[A-Z]?(?:(?:,| and|,? &) [A-Z]{0,3}[0-9]{1,6}){0,8}:"
)


def _opens_chart(text: str, line: Line, index: int, following: list[Line]) -> bool:
    """Whether a chart behind the end of a sentence has its head here, wherever lines are broken.

    The notice before stands with it, a colon, or a command on the next line.
    """
    chart = line.elements[index]
    if chart.kind != "chart" or _goes_on_with_charts(line.elements, index):
        return False
    if text[line.start : chart.start].rstrip()[-1:] not in (".", ";"):
        return False
    if not any(e.kind in _TOLD for e in line.elements[:index]):
        return False
    head = " ".join(text[chart.start : chart.start + _LONGEST_HEAD].split()).partition(":")[0]
    kinds = head_kinds(head)
    if kinds <= _OF_A_HEAD and not kinds.isdisjoint(_PREVIOUS):
        return True
    behind = line.elements[index + 1 :]
    below = following[0].elements[0] if following and following[0].elements else None
    is_last = len(behind) == 1 and head_kinds(text[behind[0].start : behind[0].end]) <= _OF_A_HEAD
    heads = is_last and below is not None and below.kind == "verb"
    return heads or _COLON.match(text, chart.end) is not None


def _names_all(text: str, chart: Element) -> bool:
    """Whether words name the charts of all that stands before: `Charts affected:`."""
    words = text[chart.start : chart.end].lower()
    return "affected" in words or "concerned" in words


def _goes_on_with_charts(elements: Sequence[Element], index: int) -> bool:
    """Whether a chart stands before, nothing to be done between: both share what follows."""
    for at in range(index - 1, -1, -1):
        if elements[at].kind == "chart":
            return True
        if elements[at].kind not in ("words", "semicolon", "number", "bar"):
            return False
    return False


def _tells_much(text: str, element: Element) -> bool:
    """Whether words are part of a sentence, and no mere number or title before a chart."""
    return len(text[element.start : element.end].split()) > 2


def _opens_within(text: str, line: Line, index: int, following: list[Line]) -> bool:
    before, number = line.elements[index - 1], line.elements[index]
    if text[before.end - 1] not in "/.;|" or index + 1 >= len(line.elements):
        return False
    if line.elements[index + 1].kind != "words":
        return False
    rest = (*line.elements[index + 1 :], *(e for other in following for e in other.elements))
    chart = next((e.start for e in rest if e.kind == "chart"), None)
    ends = ("point", "half", "number", "verb")
    other = next((e.start for e in rest if e.kind in ends), len(text))
    return chart is not None and chart < other and not is_named(text, line, number)
