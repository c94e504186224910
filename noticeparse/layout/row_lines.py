"""Which lines below a row of titles are rows, and which are not or are the second line of one."""

from __future__ import annotations

from noticeparse.layout.elements import Line
from noticeparse.layout.notice_openings import NoticeOpening
from noticeparse.layout.titles import Cells, Column, Table
from noticeparse.readers.features import has_kind

_OF_HEADS = frozenset({"notice", "year", "chart", "previous", "date", "label", "international"})
_COMMENTS = ("# ", "## ", "// ", "-- ", "/* ")
_PLACED = frozenset({"position", "latitude"})
_LONGEST = 100


def is_comment(text: str, table: Table | None, line: Line) -> bool:
    """Whether a line among the rows of an export is a remark on them: `# 24 rows`."""
    if table is None or table.mark == " ":
        return False
    return text[line.start : line.end].lstrip().startswith(_COMMENTS)


def is_told(table: Table, opening: NoticeOpening) -> bool:
    """Whether words lead to a number in no column of its own: `Notice 515(T)/26: the light …`."""
    return table.mark == " " and opening.at > 0 and not opening.number.gap


def runs_through(table: Table, line: Line) -> bool:
    """Whether words run on through the columns of notice and chart, as a sentence does."""
    if table.mark != " ":
        return False
    start = end = -1
    for element in line.elements:
        if element.gap:
            start = element.start - line.start
        end = element.end - line.start
        at = [i for i, column in enumerate(table.columns) if column.start <= start + 2]
        if not at or table.columns[at[-1]].role not in _OF_HEADS:
            continue
        if any(column.start < end for column in table.columns[at[-1] + 2 :]):
            return True
    return False


def is_other_verb(table: Table, line: Line, cells: Cells) -> bool:
    """Whether a line below the second one of a row has one more verb, and its place."""
    told = [element.kind for element in cells.get("verb", [])]
    return bool(table.below) and told == ["verb"] and line.has("point", "half")


def second_line(text: str, table: Table, line: Line) -> Cells | None:
    """The cells of a line that is the second of the row above it, or None.

    Without titles for it only words for a feature are such a line, under columns without any.
    """
    below = table.below
    if not below:
        if "feature" in table.roles or "verb" not in table.roles or not table.roles & _PLACED:
            return None
        words = text[line.start : line.end].strip()
        if any(element.kind != "words" for element in line.elements) or len(words) > _LONGEST:
            return None
        below = (Column("feature", 0),) if has_kind(words) else ()
    if not below or line.has("number", "chart", "key"):
        return None
    if line.has("point", "half") and not any(column.role in _PLACED for column in below):
        return None
    return table._replace(columns=below, below=()).cells(text, line, None)
