"""Keys of a chart head with their values on the lines below, as cells of a page are pasted.

`Chart` above `53`, `Previous update` above `2170/26`, `Datum` above `WGS 84`: a pair is one line.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.columns import key_role
from noticeparse.layout.elements import Line
from noticeparse.readers.heads import head_kinds, read_parts

_OTHERS = frozenset({"words", "number"})


def with_stacked_keys(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, each such key joined with the value below it."""
    found: list[Line] = []
    for line in lines:
        above = found[-1] if found else None
        role = _role(text, above)
        if above is None or role is None or not _is_value(text, line, role):
            found.append(line)
            continue
        kind = "chart" if role == "chart" else above.elements[0].kind
        key = above.elements[0]._replace(kind=kind)
        found[-1] = above._replace(end=line.end, elements=(key, *line.elements))
    return found


def _role(text: str, line: Line | None) -> str | None:
    """The role of a key that stands alone on its line, of those that a chart head has."""
    if line is None or len(line.elements) != 1 or line.elements[0].kind not in ("words", "chart"):
        return None
    words = text[line.elements[0].start : line.elements[0].end].strip()
    role = key_role(words, has_places=False) if words[:1].isupper() else None
    return role if role in ("chart", "previous", "datum") else None


def _is_value(text: str, line: Line, role: str) -> bool:
    if not line.elements or not {e.kind for e in line.elements} <= _OTHERS:
        return False
    words = text[line.start : line.end]
    if role == "chart":
        kinds = [part.kind for part in read_parts(words)]
        return kinds[0] == "CHART_NUMBER" and set(kinds) <= {"CHART_NUMBER", "INTERNATIONAL"}
    if role == "previous":
        return [element.kind for element in line.elements] == ["number"]
    return head_kinds(words) == {"DATUM"}
