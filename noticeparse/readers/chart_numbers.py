"""The numbers of charts in a head: what belongs to one, and what may."""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.readers.chart_joints import UNSURE, is_joined
from noticeparse.readers.head_values import ChartHead, Head, HeadPart
from noticeparse.readers.notices_before import blame


def next_chart(head: Head, part: HeadPart, *, names_several: bool) -> ChartHead:
    """The chart of a number; `802-804` behind `Charts` are two, and perhaps more between."""
    words = part.text.strip()
    ends = _RANGE_OF_CHARTS.fullmatch(words) if names_several else None
    if ends is not None and len(ends[1]) == len(ends[2]) and ends[1] < ends[2]:
        blame(head, "chart-range", words, part)
        head.charts.append(ChartHead(chart=ends[1], start=part.start, end=part.end))
        words = ends[2]
    head.charts.append(ChartHead(chart=words, start=part.start, end=part.end))
    return head.charts[-1]


def with_own_first(parts: tuple[HeadPart, ...]) -> tuple[HeadPart, ...]:
    """The parts, each chart in a bracket before its international number: `INT 9871 (802)`."""
    kinds = [part.kind for part in parts]
    if kinds.count("INTERNATIONAL") < _SEVERAL or kinds[:1] != ["CHART_WORD"]:
        return parts
    made: list[HeadPart] = []
    at = 0
    while at < len(parts):
        four = parts[at : at + 4]
        signs = "".join(part.text for part in four[1::2])
        if kinds[at : at + 3 : 2] == ["INTERNATIONAL", "CHART_NUMBER"] and signs == "()":
            made += [four[2], four[0]]
            at += 4
        else:
            made.append(parts[at])
            at += 1
    return tuple(made)


_SEVERAL = 2
_RANGE_OF_CHARTS = re.compile(r"([0-9]{2,6})-([0-9]{2,6})")


# Right behind a number, where it may be the rest of it: `1514.B`, `1514:2`, `1514 bis`.
_REST = re.compile(r"[_:.][A-Z0-9]{1,2}(?![A-Za-z0-9])| (?:bis|ter|quater)(?![a-z])")
_LETTER = re.compile(r" [A-Z](?= ?(?:[\[(,;:.]|and(?![a-z])|$))")


# A sign, or a letter that looks like a figure, in the place of one: `8?2`, `3|2`, `80S`, `O02`.
_GARBLED_BEHIND = re.compile(
    r"(?:[?#$%&@~^=\ufffd]|\.(?= {1,2}\[))[0-9A-Za-z]{0,5}|[|!][0-9A-Za-z]{1,3}(?![0-9A-Za-z/])"
)
_GARBLED_AHEAD = re.compile(r"[ \t][.,?#'~]$")
_LOOK_ALIKE = re.compile(r"O[0-9]{1,5}|[OISZ]?[0-9]{1,5}[OISZ]")
_CHART_WORD = re.compile(r"charts?|sheets?|maps?|cht?s?(?![a-z])", re.IGNORECASE)


def part_of_number(
    head: Head, chart: ChartHead, text: str, part: HeadPart, before: HeadPart | None
) -> None:
    """Tell what may belong to the number of a chart and is not read with it."""
    word = before.text if before is not None and before.kind == "CHART_WORD" else ""
    garbled = _GARBLED_BEHIND.match(text, part.end)
    ahead = _GARBLED_AHEAD.search(text, max(part.start - 2, 0), part.start)
    if word and _CHART_WORD.match(word) is None:
        # `Chat 802 [2310/26]`
        chart.chart = None
        blame(head, "chart-unread", text[before.start if before else 0 : part.end], part)
    elif garbled is not None or ahead is not None or _LOOK_ALIKE.fullmatch(part.text):
        chart.chart = None
        start = ahead.start() + 1 if ahead is not None else part.start
        end = garbled.end() if garbled is not None else part.end
        blame(head, "chart-unread", text[start:end], part)
    elif (rest := _REST.match(text, part.end)) is not None:
        chart.chart = None
        blame(head, "chart-unread", text[part.start : rest.end()], part)
    elif (letter := _LETTER.match(text, part.end)) is not None:
        blame(head, "chart-head-unread", text[part.start : letter.end()], part)


def tell_of_no_chart(head: Head, text: str, parts: Sequence[HeadPart], *, is_listed: bool) -> None:
    """Tell of a number, the last of these parts, that may be a chart and is not read as one."""
    *others, part = parts
    before = others[-1] if others else None
    _figure_left(head, text, before, part)
    if is_listed and head.charts and before is not None and before.text[-1:] == ")":
        # `Charts 802 (plan A) 803`
        blame(head, "chart-unread", part.text, part)
    if is_joined(parts, UNSURE):
        blame(head, "chart-unread", text[parts[0].start : part.end], part)


def _figure_left(head: Head, text: str, before: HeadPart | None, part: HeadPart) -> None:
    """A figure right behind the number of a chart: `Chart 8 02`."""
    if before is None or not head.charts:
        return
    if before.text in ("(", "["):
        blame(head, "chart-head-unread", f"{before.text}{part.text}", part)
    if before.kind != "CHART_NUMBER":
        return
    is_next = head.charts[-1].start == before.start
    if text[before.end : part.start] != " ":
        # Wider apart, the numbers stand over columns.
        if is_next and len(before.text) == len(part.text):
            blame(head, "chart-head-unread", part.text, part)
        return
    if is_next:
        head.charts[-1].chart = None
        blame(head, "chart-unread", text[before.start : part.end], part)
