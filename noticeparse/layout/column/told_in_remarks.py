"""Lists of aids that say in their last column, `Remarks`, what was done to each of them.

    No    Name         Position     Characteristics  Structure     Remarks
    K20   Quill Bank   P            Fl.G.3s          Conical buoy  Established

The column is taken for that of the verbs where the rows below open with one there.
"""

from __future__ import annotations

import re

from noticeparse.readers.change_parts import divide_change
from noticeparse.readers.verbs import canonical_verb

_REMARKS = frozenset(("remark", "remarks", "note", "notes", "observations", "comment", "comments"))
_THINGS = frozenset({"feature", "name", "light"})
_PLACES = frozenset({"position", "latitude"})
_MOST_LINES = 60
_LONGEST = 400
_LONGEST_VERB = 20
_NEARLY_ALL = 0.7
_DONE = re.compile(r"[A-Z][A-Za-z]{2,14}(?:ed|wn|ew)\b|NEW\b|[A-Z]{3,14}(?:ED|WN)\b")

Title = tuple[str | None, str, int]
"""Role, words and start of a title."""


def is_of_remarks(title: str) -> bool:
    """Whether a title is that of remarks."""
    return title.lower().strip(" .") in _REMARKS


def with_remarks_told(text: str, end: int, mark: str, titles: list[Title]) -> list[Title]:
    """The titles of a line that ends there, the last one that of the verbs where rows show it."""
    role, title, start = titles[-1]
    told = {one for one, _, _ in titles}
    if role != "remark" or not is_of_remarks(title) or "verb" in told:
        return titles
    if not told & _THINGS or not told & _PLACES or mark not in (" ", "|", "\t", ";"):
        return titles
    cells = _cells(text, end, mark, start, len(titles))
    if not cells or not _tells_done(cells[0]):
        return titles
    if sum(map(_tells_done, cells)) < _NEARLY_ALL * len(cells):
        return titles
    return [*titles[:-1], ("verb", title, start)]


def _cells(text: str, end: int, mark: str, start: int, count: int) -> list[str]:
    """What stands in the last column of the rows right below, but for rows without it."""
    found: list[str] = []
    is_blank = False
    for line in text[end + 1 : end + 1 + _MOST_LINES * _LONGEST].split("\n")[:_MOST_LINES]:
        if not line.strip():
            if is_blank:
                break
            is_blank = True
            continue
        is_blank = False
        if (mark != " " or not line[:start].isspace()) and _is_lone_verb(line):
            # A verb over the rows below it, which are told apart from their remarks.
            return []
        if set(line) <= set(" -=|+"):
            continue
        if mark == " ":
            opens_row = not line[:4].isspace() and line[start - 1 : start] == " "
            cell = line[start:].strip() if opens_row else ""
        else:
            parts = line.strip().strip(mark if mark == "|" else "").split(mark)
            cell = parts[-1].strip() if len(parts) == count else ""
        if cell.strip(" .-"):
            found.append(cell)
    return found


def _is_lone_verb(line: str) -> bool:
    words = line.strip(" |:;\t")
    is_short = len(words) <= _LONGEST_VERB and "  " not in words and "|" not in words
    return is_short and canonical_verb(words) is not None


def _tells_done(cell: str) -> bool:
    """Whether a cell opens with what was done, or tells which property has changed."""
    first = _DONE.match(cell)
    if first is not None:
        return first[0].lower() == "new" or canonical_verb(first[0]) is not None
    words = cell.split()
    done = next((word for word in words[1:4] if canonical_verb(word) == "amend"), None)
    return words[0].lower() in _PROPERTIES or (done is not None and bool(divide_change(cell)))


_PROPERTIES = frozenset(
    "characteristic characteristics character period range elevation light colour name".split()
)
