"""Which lines below a row of titles are rows, and which are not or are the second line of one."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.column.titles import Cells, Column, Table
from noticeparse.layout.item.class_headings import class_heading
from noticeparse.layout.line.elements import Element, Line, has_words, words_of
from noticeparse.layout.line.joints import opens_note
from noticeparse.layout.opening.notice_openings import NoticeOpening
from noticeparse.layout.place.counted import announces_places
from noticeparse.layout.row.wrapped_cells import PLACE_CELLS
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.places import is_connector
from noticeparse.readers.verbs import canonical_verb

_OF_HEADS = frozenset({"notice", "year", "chart", "previous", "date", "label", "international"})
POINT_CELLS = frozenset({"label", "notice"}) | PLACE_CELLS
"""Roles of the columns of a table that gives the places of one feature; `No` may be a letter's."""
_LONGEST_COMMAND = 4
"""Lines of a command above titles for its places."""
_COMMENTS = ("# ", "## ", "// ", "-- ", "/* ")
_PLACED = frozenset({"position", "latitude"})
_TELL_FEATURES = frozenset({"feature", "old", "new"})
_LONGEST = 100
_WORDS_OF_HEADING = 3


def are_of_second_line(text: str, titles: Table, above: Table | None, line: Line) -> bool:
    """Whether titles below others are those of the second line of each row."""
    if above is None or titles.roles & above.roles:
        return False
    return bool(above.with_second_titles(text, line).below)


def is_comment(text: str, table: Table | None, line: Line) -> bool:
    """Whether a line among the rows of an export is a remark on them: `# 24 rows`."""
    if table is None or table.mark == " ":
        return False
    return text[line.start : line.end].lstrip().startswith(_COMMENTS)


def lone_verb(text: str, line: Line) -> Element | None:
    """The verb of a line with nothing else but a letter before it: `B. Inserted`, `Marks deleted`.

    It may be some words, of which the last is a participle, and run across the cells of a table:
    `|          INSERT          |`.
    """
    *before, last = [one for one in line.elements if one.kind != "bar"] or (None,)
    lettered = not before or [one.kind for one in before if one] == ["label"]
    if last is None or not lettered:
        return None
    words = text[last.start : last.end]
    commands = last.kind == "verb" or (
        last.kind == "words"
        and words[:1].isupper()
        and words.endswith("ed")
        and len(words.split()) <= _WORDS_OF_HEADING
        and not has_kind(words)
        and canonical_verb(words) is not None
    )
    return last if commands else None


def awaits_points(text: str, line: Line) -> bool:
    """Whether a line has words for a feature whose places stand below it."""
    if line.is_blank or not line.has("verb", "words"):
        return False
    return text[line.start : line.end].rstrip().endswith(":")


def heading_verb(text: str, line: Line) -> Element | None:
    """The verb of a line that heads a table."""
    told = class_heading(text, line)
    if told is not None:
        return told.verb
    verbs = [element for element in line.elements if element.kind == "verb"]
    if len(verbs) == 1 and awaits_points(text, line):
        return verbs[0]
    return lone_verb(text, line)


def last_heading(text: str, body: Sequence[Line]) -> tuple[int, Element | None]:
    """Where the last line of a body stands, and its verb where it heads a table."""
    at = next((at for at in reversed(range(len(body))) if not body[at].is_blank), None)
    return (0, None) if at is None else (at, heading_verb(text, body[at]))


def heads_corners(text: str, titles: Table, line: Line) -> bool:
    """Whether titles stand over numbered corners, whose area is named above or below them.

    Hemispheres in the titles are those of the figures below, which cannot be read without.
    """
    first = text[line.start : line.end].split(None, 1)[0].lower().rstrip(".:")
    has_own = not any(column.hemisphere for column in titles.columns)
    return titles.mark == " " and has_own and first in ("corner", "vertex", "point")


def heads_places(text: str, titles: Table, line: Line, body: Sequence[Line]) -> bool:
    """Whether titles stand over the places of the feature above them, which the rows lack.

    They may be those of its corners, or its place on each of several charts.
    """
    last = body[-1] if body else None
    if last is None or titles.roles - PLACE_CELLS != {"chart"}:
        return heads_corners(text, titles, line) and titles.roles <= POINT_CELLS
    has_own = not any(column.hemisphere for column in titles.columns)
    is_command = last.has("words") and not last.has("point", "half", "reference", "number")
    return has_own and is_command and any(one.has("verb") for one in body[-_LONGEST_COMMAND:])


def heads_rows(text: str, line: Line) -> bool:
    """Whether a line is the heading of other rows: `Delete the following marks:`.

    `Corrections to chart 611` heads what stands below it, and is no row either.
    """
    words = text[line.start : line.end].rstrip()
    if line.elements[0].kind == "chart" and not words.lstrip().lower().startswith("ch"):
        return not line.has("verb", "point", "half")
    is_told = line.has("verb") and words.endswith(":")
    return is_told and not line.has("point", "half", "reference", "number")


def commands_places(text: str, table: Table, line: Line) -> bool:
    """Whether a line below rows commands a thing of its own, whose places stand below it."""
    leads = bool(line.elements) and line.elements[0].kind == "verb" and line.has("words")
    return leads and "verb" not in table.roles and announces_places(text, line)


def is_heading(text: str, line: Line, cells: Cells) -> bool:
    """Whether a line is a notice's number and heading, in the place of the verb or the chart."""
    if line.elements[0].kind != "number" or line.has("point", "half", "reference", "bar"):
        return False
    words = words_of(text, cells.get("verb", []))
    if set(cells) == {"notice", "chart"}:
        # `21/26  Quill Sound. Buoys.`: the heading stands over the columns of what is to be done.
        words = words_of(text, cells["chart"])
        return not any(char.isdigit() for char in words)
    return bool(words) and canonical_verb(words) is None and "." in words


def is_lone_chart(text: str, line: Line, cells: Cells) -> bool:
    """Whether a row has the number of its chart and nothing else: `12  -`."""
    if set(cells) != {"chart"} or not line.has("words"):
        return False
    return words_of(text, cells["chart"]).strip().isdigit()


def is_long_name(text: str, table: Table, line: Line, cells: Cells) -> bool:
    """Whether the first column holds a thing too long for it, so that the others stand below."""
    if set(cells) != {"feature"} or table.columns[0].role != "feature" or len(table.columns) < 2:
        return False
    is_long = line.elements[-1].end - line.start >= table.columns[1].start
    return is_long and leads_feature(words_of(text, cells["feature"]))


def may_stand_alone(text: str, table: Table, line: Line, cells: Cells, *, follows: bool) -> bool:
    """Whether a row with one cell is whole: the others stand below it, or above what `follows`."""
    if table.states_hemispheres and "latitude" in cells:
        return True
    if table.below and set(cells) <= {"feature", "verb"}:
        return True
    if follows and is_lone_chart(text, line, cells):
        return True
    if is_long_name(text, table, line, cells):
        return True
    if any(tells_more(text, e) for e in line.elements):
        return False
    is_verb = len(line.elements) == 1 and line.has("verb") and "verb" not in table.roles
    return is_verb or line.has("point", "half")


def commands(line: Line) -> bool:
    """Whether a line under columns of charts is an item: its verb leads words and a place."""
    return line.has("words") and line.has("point", "half", "reference")


def is_told(table: Table, opening: NoticeOpening) -> bool:
    """Whether words lead to a number in no column of its own: `Notice 515(T)/26: the light …`."""
    return table.mark == " " and opening.at > 0 and not opening.number.gap


def opens_notice(text: str, table: Table, line: Line, opening: NoticeOpening) -> bool:
    """Whether a number opens a notice: no column of the table is that of such numbers."""
    if table.is_of_previous(text, line, opening.number):
        return False
    if table.is_of_text and not line.has("point", "half", "verb") and len(line.elements) > 1:
        # Its heading stands in the column of the items.
        return True
    return "notice" not in table.roles or is_told(table, opening)


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


def tells_more(text: str, element: Element) -> bool:
    """Whether words do more than link a place to those above: `and P`."""
    if element.kind != "words" or not has_words(text, element):
        return False
    return not is_connector(text[element.start : element.end])


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
        roles = table.roles
        if roles & _TELL_FEATURES or "verb" not in roles or not roles & _PLACED:
            return None
        words = text[line.start : line.end].strip()
        if not line.has_only("words") or len(words) > _LONGEST or opens_note(words):
            return None
        below = (Column("feature", 0),) if has_kind(words) else ()
    if not below or line.has("number", "chart", "key"):
        return None
    if line.has("point", "half") and not any(column.role in _PLACED for column in below):
        return None
    return table._replace(columns=below, below=()).cells(text, line, None)
