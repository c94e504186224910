"""Rows of column titles: which lines are such, and what each title says of its column."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from noticeparse.layout.column.columns import column_role, names_items
from noticeparse.layout.column.hemispheres import degrees_in, hemisphere_in
from noticeparse.layout.column.titles import Column, Table, unit_in
from noticeparse.layout.column.told_in_remarks import is_of_remarks, with_remarks_told
from noticeparse.layout.line.elements import Line
from noticeparse.readers.features import has_kind
from noticeparse.readers.verbs import canonical_verb

_ACTION_ROLES = frozenset(
    {"verb", "feature", "position", "latitude", "from", "old", "joining", "bounded", "centred"}
)
_OF_ITEMS = frozenset({"feature", "old", "new", "from", "to", "light", "depth", "name"})
_OF_CLASS = frozenset({"chart", "label", "name", "light", "depth", "position", "from", "to"})
"""Roles of the columns below a line that names their class: `These light-buoys are laid:`."""
_TOLD_OF_CLASS = frozenset({"name", "light", "depth"})
_PLACES = frozenset({"position", "from"})
_WIDE = 20
"""Columns of blanks before the first title that leave room for the features."""
_COUNTS = frozenset({"item", "entry"})
"""Titles that count the rows where another column holds the features."""
_DITTO = frozenset({'"', "do.", "ditto", "ditto."})
"""Marks that are no titles: where they stand, it is told that they repeat what is above."""
_NUMBERS = frozenset({"no", "no.", "nr", "nr.", "number", "ref"})
_ARE_AIDS = frozenset({"name", "light"})
"""Roles of the columns of a list of aids."""
_NOTICE_BELOW = re.compile(
    r"\s{1,4}(?:[-=|+ ]{4,200}\n)?[ \t|]{0,8}[0-9]{1,5}(?: ?\([TP]\))?/[0-9]{2}"
)
"""The number of a notice with its year, in the first cell below such titles."""
_CORNERS = frozenset({"point", "corner", "vertex"})
"""Titles that count the places of a feature where another column counts the features."""
_HEAD_ROLES = frozenset({"chart", "notice", "previous"})
_WIDEST = 400
_PARTED_RULE = re.compile(r"[ ]{0,40}(?:[-=]{2,200}[ ]{1,20}){2,30}[-=]{2,200}[ ]{0,80}")
_DASHES = re.compile(r"[-=]{2,200}")


def read_titles(text: str, line: Line) -> Table | None:
    """The table that a line of column titles announces, or None."""
    if line.has("reference", "number", "key"):
        return None
    words = text[line.start : line.end]
    mark = mark_of(words)
    if line.has("point", "half") and not _state_degrees(words, mark):
        return None
    starts = _ruled(text, line) if mark == " " else []
    found = list(_between(words, starts) if starts else _titles(words, mark))
    if len(found) < 2 or any(title.lower() in _DITTO for title, _ in found):
        return None
    of_aids = _NOTICE_BELOW.match(text, line.end) is None
    titles = list(_settled(found, of_aids=of_aids))
    titles = with_remarks_told(text, line.end, mark, titles)
    tells_done = any(role == "verb" and is_of_remarks(title) for role, title, _ in titles)
    known = [role for role, _, _ in titles if role]
    if len(known) < 2 or len(known) * 5 < len(titles) * 3:
        return None
    roles = set(known)
    halves = {"latitude", "longitude"} <= roles
    told = len(roles & _ACTION_ROLES) > 1 or len(roles & _HEAD_ROLES) > 1
    of_class = roles <= _OF_CLASS and _are_plain(titles) and not line.has("same")
    if not (told or halves or (of_class and roles & _TOLD_OF_CLASS and roles & _PLACES)):
        return None
    columns = [_column(role, title, start) for role, title, start in titles]
    if mark == " " and "verb" not in roles and _has_verb_in_front(text, line, columns[0].start):
        columns.insert(0, Column("verb", 0))
    of_halves = halves and len(roles) == 2 and mark == " " and columns[0].start > _WIDE
    if of_halves:
        # Titles over the positions alone: the features stand before them.
        columns.insert(0, Column("feature", 0))
    holds_items = titles[-1][0] == "verb" and not roles & _OF_ITEMS
    is_of_text = any(names_items(title) for _, title, _ in titles)
    return Table(
        mark,
        tuple(columns),
        of_halves,
        bool(starts),
        (),
        (holds_items and not tells_done) or is_of_text,
        is_of_text,
        tells_done,
    )


def _are_plain(titles: Sequence[tuple[str | None, str, int]]) -> bool:
    """Whether all titles are known, and none of them holds a value: not `light, Fl.R.5s, at`."""
    return all(role and re.fullmatch(r"[A-Za-z. ]{1,20}", title) for role, title, _ in titles)


def mark_of(words: str) -> str:
    """What parts the cells of a line: a tab, a bar, a semicolon, or blanks."""
    marks = ("\t", "|", ";")
    return next((one for one in marks if words.count(one) >= (1 if one == "\t" else 2)), " ")


def _column(role: str | None, title: str, start: int) -> Column:
    told = degrees_in(title)
    letter = told.letter if told else hemisphere_in(title, role)
    return Column(role, start, letter, unit_in(title, role), told.degrees if told else None)


def _state_degrees(words: str, mark: str) -> bool:
    """Whether what looks like coordinates in a line are titles of columns of minutes.

    Without a word for latitude and longitude they are such only beside a title of the features.
    """
    titles = [title for title, _ in _titles(words, mark)]
    told = [degrees_in(title) for title in titles]
    found = {one.role: one for one in told if one is not None}
    if sum(one is not None for one in told) != 2 or len(found) != 2:
        return False
    others = [title for title, one in zip(titles, told, strict=True) if one is None]
    if any(char.isdigit() for title in others for char in title):
        return False
    named = any(column_role(one) == "feature" and not has_kind(one) for one in others)
    return named or all(one.has_word for one in found.values())


def with_degrees_below(text: str, table: Table, line: Line) -> Table | None:
    """The table with the degrees that a line below its titles states; None for other lines."""
    words = text[line.start : line.end]
    mark = mark_of(words)
    found = [(title, at) for title, at in _titles(words, mark) if title]
    columns = list(table.columns)
    for title, start in found:
        told = degrees_in(title)
        offset = bool(columns[0].start) and words.lstrip().startswith(mark)
        at = words.count(mark, 0, start) - offset if mark != " " else _above(columns, start)
        if told is None or mark != table.mark or not 0 <= at < len(columns):
            return None
        if columns[at].role != told.role:
            return None
        columns[at] = columns[at]._replace(hemisphere=told.letter, degrees=told.degrees)
    return table._replace(columns=tuple(columns)) if found else None


def _above(columns: Sequence[Column], start: int) -> int:
    """Which of the columns a title in a line below theirs stands under."""
    return max((i for i, one in enumerate(columns) if one.start <= start + 2), default=-1)


def _has_verb_in_front(text: str, line: Line, start: int) -> bool:
    """Whether a verb in the row below stands in front of the first column, without a title."""
    row = text[line.end + 1 : line.end + 1 + start]
    return "\n" not in row and canonical_verb(row.strip()) is not None


def _ruled(text: str, line: Line) -> list[int]:
    """Where the columns start that a rule right below a line of titles parts, or nothing."""
    end = text.find("\n", line.end + 1, line.end + _WIDEST)
    below = text[line.end + 1 : end if end > 0 else len(text)][:_WIDEST]
    if _PARTED_RULE.fullmatch(below) is None:
        return []
    starts = [one.start() for one in _DASHES.finditer(below)]
    words = text[line.start : line.end]
    # No title stands over the gap before a column.
    return starts if all(words[at - 1 : at] in ("", " ") for at in starts) else []


def _between(words: str, starts: list[int]) -> Iterator[tuple[str, int]]:
    for start, end in pairwise([*starts, len(words)]):
        yield words[start:end].strip(), start


def _settled(
    titles: Sequence[tuple[str, int]], *, of_aids: bool
) -> Iterator[tuple[str | None, str, int]]:
    """Role, words and start of each title; some titles mean what no other title does.

    `Kind` beside a column of features is the status, `Subject` without one is the feature.
    """
    found = [(_role(title), title, start) for title, start in titles]
    numbers = [title for role, title, _ in found if role == "notice"]
    labels = [title for role, title, _ in found if role == "label"]
    features = [title for role, title, _ in found if role == "feature"]
    counts = any(title.lower() in _COUNTS for _, title, _ in found) or len(labels) > 1
    told = {role for role, _, _ in found}
    verb = next((start for role, _, start in found if role == "verb"), 0)
    for role, title, start in found:
        if title.lower() == "after" and "notice" in told and not told & {"old", "previous"}:
            role = "previous"
        if title.lower() == "before" and {"notice", "chart"} <= told and start < verb:
            # Among the columns of the chart, in front of what is done.
            role = "previous"
        if role == "notice" and len(numbers) > 1 and title.lower() in _NUMBERS:
            # The number of the item, beside a column that names the notice.
            role = "label"
        elif role == "notice" and title.lower() in _NUMBERS and of_aids and _is_of_aids(told):
            # The number of the aid in the list of lights.
            role = "aid_number"
        elif role == "label" and title.lower() in _CORNERS and counts:
            role = "vertex"
        elif title.lower() in ("kind", "nature") and len(features) > 1:
            role = "status"
        elif (
            title.lower() in ("subject", "structure", "description of structure") and not features
        ):
            role = "feature"
        elif title.lower() in _COUNTS and len(features) > 1:
            role = "label"
        yield role, title, start


def _is_of_aids(told: set[str | None]) -> bool:
    """Whether titles are those of a list of aids, which names neither chart nor notice before."""
    is_placed = not told.isdisjoint(("position", "latitude"))
    return is_placed and told >= _ARE_AIDS and not told & {"chart", "previous", "year"}


def _role(title: str) -> str | None:
    told = degrees_in(title)
    return told.role if told is not None else column_role(title)


def _titles(words: str, mark: str) -> Iterator[tuple[str, int]]:
    if mark == " ":
        at = 0
        for part in words.split("  "):
            if part.strip():
                yield part.strip(), at + len(part) - len(part.lstrip())
            at += len(part) + 2
        return
    cells = words.split(mark)
    inner = (
        cells[1:-1] if mark == "|" and not cells[0].strip() and not cells[-1].strip() else cells
    )
    at = len(cells[0]) + 1 if len(inner) < len(cells) else 0
    for cell in inner:
        yield cell.strip(), at
        at += len(cell) + 1
