"""Keys without a colon, as they are printed: those of a form, and those of a chart head.

The keys of a form stand below its boxes.  Keys of a head may have their values on the lines below,
as cells of a page are pasted: `Chart` above `53`, `Datum` above `WGS 84`; a pair is one line.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from noticeparse.layout.column.columns import key_role
from noticeparse.layout.drafts import Piece
from noticeparse.layout.line.element_kinds import ElementKind
from noticeparse.layout.line.elements import Line
from noticeparse.layout.table.box_forms import with_boxes_read
from noticeparse.readers.heads import head_kinds, read_parts

_OTHERS = frozenset({"words", "number", "charts_only"})
_OF_CHARTS = frozenset({"CHART_NUMBER", "INTERNATIONAL", "COMMA", "PANEL"})
_FOR_CHARTS = re.compile(
    r"(?:\((?:on |for )?(?:both|all|each)(?: (?:of )?(?:the )?charts?)?\))?"
    r"|(?:(?:,|and|&|\([A-Z]{0,3}[0-9]{1,6}\)|[0-9]{1,5}(?:\([TP]\))?/[0-9]{2,4}) ?){1,24}",
    re.IGNORECASE,
)
"""What may stand behind the notice before: for which charts it is, and those of others."""


def with_printed_keys(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[Piece]]:
    """The lines with such keys told, and what is only printed there."""
    read, printed = with_boxes_read(text, lines)
    found, titles = _with_stacked_keys(text, read)
    return found, [*printed, *titles]


def _with_stacked_keys(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[Piece]]:
    """The lines, each such key joined with the value below it, and the keys of headings."""
    found: list[Line] = []
    titles: list[Piece] = []
    for line in lines:
        above = found[-1] if found else None
        role = _role(text, above)
        if role == "heading" and not (len(found) > 1 and _is_number(found[-2])):
            role = None
        if above is None or role is None or not _is_value(text, line, role):
            found.append(line)
            continue
        kind = _KINDS.get(role, above.elements[0].kind)
        key = above.elements[0]._replace(kind=kind)
        values = (
            one._replace(kind="words") if one.kind == "charts_only" else one
            for one in line.elements
        )
        found[-1] = above._replace(end=line.end, elements=(key, *values))
        if role == "heading":
            titles.append((key.start, key.end))
    return found, titles


_KINDS: dict[str, ElementKind] = {"chart": "chart", "heading": "key"}
"""The kind of a key that stands on the line of its value."""


def _is_number(line: Line) -> bool:
    """Whether a line is the number of a notice alone."""
    return [element.kind for element in line.elements] == ["number"]


def _role(text: str, line: Line | None) -> str | None:
    """The role of a key that stands alone on its line, of those that a chart head has."""
    if line is None or len(line.elements) != 1 or line.elements[0].kind not in ("words", "chart"):
        return None
    words = text[line.elements[0].start : line.elements[0].end].strip()
    role = key_role(words, has_places=False) if words[:1].isupper() else None
    return role if role in ("chart", "previous", "datum", "heading") else None


def _is_value(text: str, line: Line, role: str) -> bool:
    if not line.elements or not {e.kind for e in line.elements} <= _OTHERS:
        return False
    words = text[line.start : line.end]
    if role == "heading":
        plain = line.has_only("words")
        return plain and words[:1].isupper() and not any(char.isdigit() for char in words)
    if role == "chart":
        kinds = [part.kind for part in read_parts(words)]
        # A comma at the end, or no number behind one, says that more is to come; with nothing
        # between two numbers one is a chart, and the other a notice in the index of charts.
        pairs = {("COMMA", "COMMA"), ("CHART_NUMBER", "CHART_NUMBER")}
        parted = kinds[-1] != "COMMA" and pairs.isdisjoint(pairwise(kinds))
        return kinds[0] == "CHART_NUMBER" and set(kinds) <= _OF_CHARTS and parted
    if role == "previous":
        return (
            line.elements[0].kind == "number"
            and _FOR_CHARTS.fullmatch(words[line.elements[0].end - line.start :].strip())
            is not None
        )
    return head_kinds(words) == {"DATUM"}
