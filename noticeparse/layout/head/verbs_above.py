"""Verbs as headings above the charts: `INSERT`, below it `On chart 402` and `On chart 405`.

The verb holds for the items of each chart below it, up to the next verb or notice.  It is put
below the head of the chart, where a verb stands that is for the items of one chart alone.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.line.elements import Line
from noticeparse.layout.opening.notice_openings import notice_opening
from noticeparse.layout.row.row_lines import lone_verb

_BLANK_LINES = 2
"""How many of them may stand between a verb, the head of a chart, and its first item."""


def with_verbs_below_charts(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, each such verb behind the head of every chart that it stands above."""
    found: list[Line] = []
    verb: Line | None = None
    head: Line | None = None
    for index, line in enumerate(lines):
        if line.has("verb"):
            head = _head_below(text, lines, index)
            verb = line if head is not None else None
            if verb is not None:
                continue
        elif verb is not None and head is not None and _is_head(line):
            if line is not head and not _goes_on(text, lines, index, head):
                verb = None
        elif line.has("number") and notice_opening(text, line) is not None:
            verb = None
        found.append(line)
        if verb is not None and _is_head(line):
            found.append(verb._replace(row=line.row))
    return found


def _head_below(text: str, lines: Sequence[Line], index: int) -> Line | None:
    """The head of a chart below a line that is a verb and nothing else, with a thing below it."""
    at = _next(lines, index)
    if at is None or not _is_head(lines[at]) or lone_verb(text, lines[index]) is None:
        return None
    return lines[at] if _opens_item(lines, at) else None


def _goes_on(text: str, lines: Sequence[Line], index: int, head: Line) -> bool:
    """Whether the head of a chart stands as the one above it does, right below an item of that."""
    above = lines[index - 1]
    is_alike = _indent(text, lines[index]) == _indent(text, head)
    is_told = above.has("point", "half", "reference", "same")
    return is_alike and is_told and _opens_item(lines, index)


def _is_head(line: Line) -> bool:
    """Whether a line is the head of a chart and nothing else."""
    is_told = line.has("verb", "passive", "point", "half", "reference", "same")
    return bool(line.elements) and line.elements[0].kind == "chart" and not is_told


def _next(lines: Sequence[Line], index: int) -> int | None:
    """Where the next line stands that is not blank."""
    near = range(index + 1, min(index + 2 + _BLANK_LINES, len(lines)))
    return next((at for at in near if not lines[at].is_blank), None)


def _opens_item(lines: Sequence[Line], index: int) -> bool:
    """Whether a thing stands below the head of a chart, and no verb of its own."""
    at = _next(lines, index)
    return at is not None and not lines[at].has("verb", "passive", "chart", "key", "number")


def _indent(text: str, line: Line) -> int:
    return line.elements[0].start - line.start
