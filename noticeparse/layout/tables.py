"""Tables within a bulletin: rows go to the notice and chart that they name."""

from __future__ import annotations

from dataclasses import replace

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.drafts import Prose
from noticeparse.layout.elements import Element, Line
from noticeparse.layout.handed_on import HandedOn
from noticeparse.layout.notice_openings import notice_opening
from noticeparse.layout.row_heads import HEAD_CELLS, RowHeads
from noticeparse.layout.row_lines import (
    commands,
    heads_rows,
    is_comment,
    is_heading,
    is_other_verb,
    lone_verb,
    opens_notice,
    runs_through,
    second_line,
)
from noticeparse.layout.row_numbers import row_number
from noticeparse.layout.title_rows import read_titles
from noticeparse.layout.titles import Cells, Table
from noticeparse.readers.codes import NEW_PLACE, SIGNS, read_codes
from noticeparse.readers.places import is_connector
from noticeparse.readers.positions import Point
from noticeparse.readers.references import is_marked

_ACTION_CELLS = ("verb", "feature", "position", "latitude", "old", "new")
_PLACES = frozenset({"position", "latitude", "longitude"})
_NAMING_CELLS = frozenset({*HEAD_CELLS, "notice", "year", "status", "previous"})
"""Roles of what names notice and chart of a row, and is no part of what the row says."""
_POINT_CELLS = {"label", "notice", "position", "latitude", "longitude"}
"""Roles of the columns of a table that gives the places of one feature; `No` may be a letter's."""
_NOTES = frozenset({"note", "notes", "remark", "information", "info"})
_DASHES = frozenset({"-", "--", "---"})
_DITTO = frozenset({'"', "''", "do", "ditto", "id", "idem"})


class TableReader:
    """Holds the columns announced by the last row of titles."""

    def __init__(self, assembly: Assembly) -> None:
        self.assembly = assembly
        self.heads = RowHeads(assembly)
        self.text = assembly.text
        self.table: Table | None = None
        self._awaits_rows = False
        self._dropped: set[str] | None = None
        """The roles of columns that were no columns of the rows below."""
        self._holds_for_all = False
        """Whether the titles stand above the first notice."""
        self._last_row = -1
        """The last line that was a row."""
        self._point_above: Point | None = None
        """The last position in the rows so far."""
        self._datum: list[Element] = []
        """The datum of the row above."""
        self._awaits_second = False
        """Whether the last row may have a second line."""

    def take_up(self, before: HandedOn) -> None:
        """Go on with the columns of the part before."""
        self.table, self._holds_for_all = before.table, before.table_holds_for_all
        self._dropped = set(before.dropped) if before.dropped is not None else None
        self._point_above = before.point_above
        self.heads.names_notices = before.names_notices

    def hand_on(self, to: HandedOn) -> HandedOn:
        """With the columns that hold on."""
        dropped = frozenset(self._dropped) if self._dropped is not None else None
        return replace(
            to,
            table=self.table,
            table_holds_for_all=self._holds_for_all,
            dropped=dropped,
            point_above=self._point_above,
            names_notices=self.heads.names_notices,
        )

    def opens(self, line: Line) -> bool:
        """Whether a line is a row of column titles."""
        titles = read_titles(self.text, line)
        if titles is None or self._are_of_second_line(titles, line):
            return False
        if self._dropped == titles.roles:
            # The same titles at the head of the next page tell no more than before.
            return True
        if titles.roles <= _POINT_CELLS and self.assembly.awaits_points:
            # The titles of the corners of one feature: each row is one more place of it.
            self.table = None
            return True
        heading = self.assembly.take_heading()
        if self.table is not None and titles.roles != self.table.roles:
            # No verb is carried down from a table of other columns.
            self.assembly.end_body()
            self.assembly.row_verb = None
        self.assembly.row_verb = heading or self.assembly.row_verb
        self.table = titles
        self._point_above = None
        self.heads.names_notices = False
        self._awaits_rows = True
        self._holds_for_all = self.assembly.notice is None and not self.assembly.charts
        return True

    def _are_of_second_line(self, titles: Table, line: Line) -> bool:
        """Whether titles below others are those of the second line of each row."""
        above = self.table if self._awaits_rows else None
        if above is None or titles.roles & above.roles:
            return False
        return bool(above.with_second_titles(self.text, line).below)

    def takes_codes(self, line: Line) -> bool:
        """Whether a line is a key to letters or signs: `I = insert, D = delete`."""
        words = self.text[line.start : line.end].lower()
        tells = words.lstrip(" ([\"'")[:1] in SIGNS or " new " in words
        if not (tells or line.has("verb", "bar")) or line.has("point", "half", "number"):
            return False
        codes = read_codes(self.text[line.start : line.end])
        if codes.keys() == {NEW_PLACE} and self.assembly.notice is not None:
            # Within a notice a sentence on the new position is said of its item alone.
            return False
        self.assembly.codes.update(codes)
        return bool(codes)

    def is_comment(self, line: Line) -> bool:
        """Whether a line among the rows of an export is a remark on them: `# 24 rows`."""
        return is_comment(self.text, self.table, line)

    def goes_on_with_titles(self, line: Line) -> bool:
        """Whether a line below the titles belongs to them: units, a rule, more words."""
        if self.table is None or not self._awaits_rows:
            return False
        self._awaits_rows = not line.has("point", "half", "verb", "number", "chart", "key")
        words = self.text[line.start : line.end]
        if self._awaits_rows and not any(char.isdigit() for char in words):
            self.table = self.table.with_second_titles(self.text, line)
            return True
        self._awaits_rows = False
        return False

    @property
    def holds_actions(self) -> bool:
        """Whether the columns are those of actions, and not of the heads of charts alone."""
        return self.table is not None and bool({"verb", "feature"} & self.table.roles)

    def leave(self, *, keep_notice_column: bool) -> None:
        """Forget the columns, unless they name the notice of each row or stand above them all."""
        table = self.table
        names_notice = table is not None and "notice" in table.roles
        if not (keep_notice_column and (names_notice or self._holds_for_all)):
            self.table = None

    def takes_row(self, line: Line) -> bool:
        """Read a line as a row of the table, if it is one."""
        table = self.table
        if table is None or (line.has("chart") and "chart" not in table.roles):
            return False
        opening = notice_opening(self.text, line)
        if opening is not None and opens_notice(self.text, table, line, opening):
            return False
        if table.is_of_halves and line.has("point", "half"):
            # Positions with hemispheres of their own need no titles.
            self.table = None
            return False
        if self._takes_verb(table, line) or self._takes_second_line(table, line):
            return True
        if self.table is None or runs_through(table, line):
            return False
        table = self.table = table.with_verbs(self.text, line)
        cells = table.cells(self.text, line, self._point_above)
        if not cells or heads_rows(self.text, line):
            return False
        cells = self._filled(cells)
        if line.row == self._last_row + 1 and self.assembly.takes_rest(cells):
            self._last_row = line.row
            return True
        verbs = cells.get("verb", [])
        if len(verbs) > 1 and verbs[0].kind == "verb" and verbs[1].gap:
            # Verb and feature under one title: the titles do not stand over their columns.
            self._dropped, self.table = table.roles, None
            return False
        if is_heading(self.text, line, cells):
            return False
        placed = table.states_hemispheres and "latitude" in cells
        placed = placed or (bool(table.below) and set(cells) <= {"feature", "verb"})
        if table.mark == " " and len(cells) < 2 and not placed:
            told = sum(1 for e in line.elements if self._tells(e))
            is_verb = len(line.elements) == 1 and line.has("verb") and "verb" not in table.roles
            if told or not (is_verb or line.has("point", "half")):
                # A row whose cells run together is no row; it is reported where it is cut.
                return False
        lettered = (e for e in line.elements if any(c.isalpha() for c in self.assembly.words(e)))
        first = next(lettered, line.elements[0])
        if first.kind == "verb" and "verb" not in table.roles and commands(line):
            return False
        if not table.roles & set(_ACTION_CELLS) and line.has("verb", "point", "half"):
            # Under columns of charts alone stand items that go on over several lines.
            return False
        if self._names_all(cells) and self.assembly.cut.falls_before(line):
            return True
        self._last_row = line.row
        self._awaits_second = not set(cells) <= _PLACES
        self._keep_point(cells)
        self.heads.take(cells)
        if any(role in cells for role in _ACTION_CELLS):
            self._action(cells)
        return True

    def _takes_verb(self, table: Table, line: Line) -> bool:
        """Take a verb on a line of its own as that of the rows below; others end the table."""
        verb = lone_verb(self.text, line)
        roles = {column.role for column in (*table.columns, *table.below)}
        if verb is None or "verb" in roles:
            return False
        if table.holds_under(self.assembly.words(verb)):
            self.assembly.add_row({"feature": [verb]})
            return True
        self.table = None
        return False

    def _takes_second_line(self, table: Table, line: Line) -> bool:
        """Take a line as the second of the row right above it."""
        awaits, self._awaits_second = self._awaits_second, False
        if line.row != self._last_row + 1:
            return False
        cells = second_line(self.text, table, line)
        if cells and not awaits and table.below and set(cells) <= _PLACES:
            # One more place below the second line.
            self.assembly.add_row(cells)
        else:
            may_be = cells and (awaits or is_other_verb(table, line, cells))
            if not may_be or not self.assembly.add_second_line(cells or {}, is_first=awaits):
                return False
        self._last_row = line.row
        return True

    def _tells(self, element: Element) -> bool:
        """Whether words do more than link a place to those above: `and P`."""
        if element.kind != "words" or not has_words(self.text, element):
            return False
        return not is_connector(self.assembly.words(element))

    def _names_all(self, cells: Cells) -> bool:
        """Whether a row is of a notice not met before and takes nothing from the rows above."""
        number = row_number(self.text, cells)
        if number is None or not cells.get("chart") or not cells.get("verb"):
            return False
        return self.assembly.of_number(number.words) is None

    def _keep_point(self, cells: Cells) -> None:
        """Keep the position of a row; one that cannot be read lends no degrees to those below."""
        placed = cells.get("latitude", [])
        if placed:
            points = [e.value.point for e in placed if e.kind == "point"]
            self._point_above = points[-1] if points else None

    def _filled(self, cells: Cells) -> Cells:
        """The cells that say something; a ditto mark below a datum says the same of its chart."""
        above, self._datum = self._datum, cells.get("datum", [])
        if above and self._datum and self._is_empty("datum", self._datum):
            self._datum = cells["datum"] = above
        return {role: cell for role, cell in cells.items() if not self._is_empty(role, cell)}

    def _is_empty(self, role: str, cell: list[Element]) -> bool:
        """Whether a cell says nothing, or that the cell above holds for it too."""
        words = " ".join(self.assembly.words(element) for element in cell).strip()
        is_dash = role not in ("old", "new") and words in _DASHES
        return is_dash or words.strip(" .-").lower() in _DITTO

    def _action(self, cells: Cells) -> None:
        remark = [e for e in cells.get("remark", []) if has_words(self.text, e)]
        if self._is_prose(cells):
            is_parted = self.table is not None and self.table.mark != " "
            naming = _NAMING_CELLS if is_parted else frozenset()
            told = [cell for role, cell in cells.items() if role not in naming]
            remark = sorted((e for cell in told for e in cell), key=lambda e: e.start)
        else:
            self.assembly.add_row(cells, self.table.depth_unit if self.table else None)
        if remark:
            self.assembly.add_prose(Prose([(e.start, e.end) for e in remark], remark))

    def _is_prose(self, cells: Cells) -> bool:
        """Whether a row is a note, or one without a verb under a temporary notice."""
        told = " ".join(self.assembly.words(e) for e in cells.get("verb", [])).strip(" .:").lower()
        if told in _NOTES:
            return True
        notice = self.assembly.notice
        return notice is not None and is_marked(notice.number_words) and "verb" not in cells


def has_words(text: str, element: Element) -> bool:
    """Whether an element holds more than marks that part others."""
    return element.kind not in ("bar", "rule") and bool(
        text[element.start : element.end].strip(" .,:;-|")
    )
