"""Tables within a bulletin: rows go to the notice and chart that they name."""

from __future__ import annotations

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.column.states_of_columns import are_states, columns_of_states, with_states
from noticeparse.layout.column.title_rows import read_titles, with_degrees_below
from noticeparse.layout.column.titles import Cells, Table
from noticeparse.layout.drafts import Prose
from noticeparse.layout.handed_on import HandedOn
from noticeparse.layout.line.elements import Element, Line, has_words
from noticeparse.layout.opening.notice_openings import notice_opening
from noticeparse.layout.row.cells import is_empty, is_other_band
from noticeparse.layout.row.row_classes import heading_over_rows, take_class
from noticeparse.layout.row.row_lines import (
    POINT_CELLS,
    are_of_second_line,
    commands,
    commands_places,
    heads_places,
    heads_rows,
    is_comment,
    is_heading,
    is_long_name,
    is_other_verb,
    may_stand_alone,
    opens_notice,
    runs_through,
    second_line,
)
from noticeparse.layout.row.wrapped_cells import PLACE_CELLS, rest_below
from noticeparse.layout.table.beside_items import NAMING_CELLS, is_note_row
from noticeparse.layout.table.row_heads import RowHeads
from noticeparse.layout.table.undone_rows import with_plain_remarks, without_carried_verb
from noticeparse.readers.positions import Point

_ACTION_CELLS = ("verb", "feature", "position", "latitude", "old", "new", "from", "to")


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
        self._last_row = self._band_row = -1
        """The last line that was a row, and the last that was a verb over rows."""
        self._point_above: Point | None = None  # the last position in the rows so far
        self._datum: list[Element] = []
        """The datum of the row above."""
        self._remark = Prose([], [])
        """What the last row says in its column of remarks."""
        self._second_titles: set[str] = set()
        """The lines that stood below the titles and belonged to them."""
        self._words_may_follow = False
        """Whether the last row is an item, of which words may stand on the line below."""
        self._awaits_second = False
        """Whether the last row may have a second line."""
        self._is_banded = False
        """Whether verbs stand on lines of their own between the rows."""

    def take_up(self, before: HandedOn) -> None:
        """Go on with the columns of the part before."""
        self.table, self._holds_for_all = before.table, before.table_holds_for_all
        self._dropped = set(before.dropped) if before.dropped is not None else None
        self._point_above = before.point_above
        self.heads.names_notices, self.heads.count = before.names_notices, before.row_count

    def hand_on(self, to: HandedOn) -> HandedOn:
        """With the columns that hold on."""
        dropped = frozenset(self._dropped) if self._dropped is not None else None
        return to._replace(
            table=self.table,
            table_holds_for_all=self._holds_for_all,
            dropped=dropped,
            point_above=self._point_above,
            names_notices=self.heads.names_notices,
            row_count=self.heads.count,
        )

    def opens(self, line: Line) -> bool:
        """Whether a line is a row of column titles."""
        titles = read_titles(self.text, line)
        above = self.table if self._awaits_rows else None
        if titles is None or are_of_second_line(self.text, titles, above, line):
            return False
        if self._dropped == titles.roles:
            # The same titles at the head of the next page tell no more than before.
            return True
        awaits = self.assembly.awaits_points and titles.roles <= POINT_CELLS
        if awaits or heads_places(self.text, titles, line, self.assembly.body):
            # The titles of the corners of one feature: each row is one more place of it.
            self.table = None
            return True
        heading = self.assembly.take_heading()
        titles = with_plain_remarks(titles, self.table, is_headed=heading is not None)
        if self.table is not None and titles.roles != self.table.roles:
            # No verb is carried down from the rows of other columns.
            self.assembly.end_body()
            if heading is None and self._band_row <= self._last_row:
                self.assembly.row_verb = self.assembly.row_class = None
            self._words_may_follow = False
            self._second_titles.clear()
        self.assembly.row_verb = heading or self.assembly.row_verb
        # Titles over a rule with the same parts are complete.
        self._awaits_rows = not titles.is_ruled
        self.table, self._is_banded = titles, False
        self._point_above = None
        self.heads.names_notices = False
        self._holds_for_all = self.assembly.notice is None and not self.assembly.charts
        return True

    def is_comment(self, line: Line) -> bool:
        """Whether a line among the rows of an export is a remark on them: `# 24 rows`."""
        return is_comment(self.text, self.table, line)

    def goes_on_with_titles(self, line: Line) -> bool:
        """Whether a line below the titles belongs to them: units, a rule, more words."""
        if self.table is None or not self._awaits_rows:
            return False
        words = self.text[line.start : line.end]
        if stated := with_degrees_below(self.text, self.table, line):
            self.table = stated
            return True
        self._awaits_rows = not line.has("point", "half", "verb", "number", "chart", "key")
        if self._words_may_follow and words not in self._second_titles:
            # Below titles that stand again at the head of a page a row goes on.
            self._awaits_rows = False
        cells = self.table.cells(self.text, line, None) or {}
        self._awaits_rows &= not is_long_name(self.text, self.table, line, cells)
        if self._awaits_rows and not any(char.isdigit() for char in words):
            self._second_titles.add(words)
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
        kept = self._holds_for_all or (table is not None and "notice" in table.roles)
        if not (keep_notice_column and kept):
            self.table, self._words_may_follow = None, False

    def takes_row(self, line: Line) -> bool:
        """Read a line as a row of the table, if it is one."""
        table = self.table
        line = line if table is None else table.with_numbers(self.text, line)
        if table is not None and self._takes_other_line(table, line):
            return True
        if table is None or (line.has("chart") and "chart" not in table.roles):
            return False
        opening = notice_opening(self.text, line)
        if opening is not None and opens_notice(self.text, table, line, opening):
            return False
        is_head = line.has("chart") and self.assembly.body and not table.roles & set(_ACTION_CELLS)
        halves = table.is_of_halves and line.has("point", "half")
        if is_head or halves or commands_places(self.text, table, line):
            # The head of a chart below items; positions with hemispheres need no titles.
            self.table, self._words_may_follow = None, False
            return False
        if self._takes_second_line(table, line):
            return True
        if self.table is None or runs_through(table, line):
            return False
        table = self.table = table.settled(self.text, line, self.assembly.codes)
        cells = table.cells(self.text, line, self._point_above)
        if not cells or heads_rows(self.text, line):
            return False
        if are_states(self.text, cells):
            table = self.table = columns_of_states(table)
            cells = with_states(cells)
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
        follows = line.row == self._last_row + 1
        is_row = table.mark != " " or len(cells) > 1
        if not is_row and not may_stand_alone(self.text, table, line, cells, follows=follows):
            # A row whose cells run together is no row; it is reported where it is cut.
            return False
        lettered = (e for e in line.elements if any(map(str.isalpha, self.assembly.words(e))))
        first = next(lettered, line.elements[0])
        if first.kind == "verb" and "verb" not in table.roles and commands(line):
            return False
        if not table.roles & set(_ACTION_CELLS) and line.has("verb", "point", "half"):
            # Under columns of charts alone stand items that go on over several lines.
            return False
        if self.heads.names_another(cells) and self.assembly.cut.falls_before(line):
            return True
        self._last_row, self._awaits_second = line.row, not set(cells) <= PLACE_CELLS
        self._keep_point(cells)
        self.heads.take(cells)
        self._words_may_follow = any(role in cells for role in _ACTION_CELLS)
        if self._words_may_follow:
            self._action(cells)
        return True

    def _takes_other_line(self, table: Table, line: Line) -> bool:
        """Take a line among the rows that is none: a verb over those below, or more of one."""
        other = self._takes_verb(table, line) or self._takes_other_band(line)
        return other or self.heads.takes_sentence(table, line) or self._takes_wrapped(table, line)

    def _takes_wrapped(self, table: Table, line: Line) -> bool:
        """Take a line as more words of the row above."""
        if not self._words_may_follow or table.below or table.is_of_halves:
            return False
        cells = table.cells(self.text, line, self._point_above)
        self.heads.take_more_of_chart(cells or {})
        rest = rest_below(self.text, table, line, cells) if cells else None
        if rest is None or not self.assembly.takes_wrapped(rest):
            return False
        self._last_row = line.row
        more = [e for e in rest.cells.get("remark", []) if has_words(self.text, e)]
        self._remark.elements += more
        self._remark.pieces += [(e.start, e.end) for e in more]
        return True

    def _takes_verb(self, table: Table, line: Line) -> bool:
        """Take a verb on a line of its own as that of the rows below; others end the table."""
        verb = heading_over_rows(self.text, line)
        if verb is None or any(one.role == "verb" for one in (*table.columns, *table.below)):
            return False
        holds = table.holds_under(verb.value or self.assembly.words(verb))
        if holds:
            take_class(self.text, line.elements, self.assembly.notice)
            self.assembly.add_row({"feature": [verb]})
            self._band_row = line.row
        self.table, self._is_banded = table if holds else None, holds
        return holds

    def _takes_other_band(self, line: Line) -> bool:
        """Take a line that stands where verbs do, as one that ends the verb of the rows above."""
        if not self._is_banded or not is_other_band(self.text, line.elements):
            return False
        self.assembly.add_row({"band": [one for one in line.elements if one.kind != "bar"]})
        return True

    def _takes_second_line(self, table: Table, line: Line) -> bool:
        """Take a line as the second of the row right above it."""
        awaits, self._awaits_second = self._awaits_second, False
        if line.row != self._last_row + 1:
            return False
        cells = second_line(self.text, table, line)
        if cells and not awaits and table.below and set(cells) <= PLACE_CELLS:
            # One more place below the second line.
            self.assembly.add_row(cells)
        else:
            may_be = cells and (awaits or is_other_verb(table, line, cells))
            if not may_be or not self.assembly.add_second_line(cells or {}, is_first=awaits):
                return False
        self._last_row = line.row
        return True

    def _keep_point(self, cells: Cells) -> None:
        """Keep the position of a row; one that cannot be read lends no degrees to those below."""
        if placed := cells.get("latitude", []):
            points = [e.value.point for e in placed if e.kind == "point"]
            self._point_above = points[-1] if points else None

    def _filled(self, cells: Cells) -> Cells:
        """The cells that say something; a ditto mark below a datum says the same of its chart."""
        above, self._datum = self._datum, cells.get("datum", [])
        if above and self._datum and is_empty(self.text, "datum", self._datum):
            self._datum = cells["datum"] = above
        told = {role: cell for role, cell in cells.items() if not is_empty(self.text, role, cell)}
        self.heads.take_more_of_chart(told)
        return told

    def _action(self, cells: Cells) -> None:
        remark = [e for e in cells.get("remark", []) if has_words(self.text, e)]
        if is_note_row(self.assembly, cells := without_carried_verb(self.table, cells)):
            self._words_may_follow = False
            naming = NAMING_CELLS if self.table and self.table.mark != " " else frozenset()
            told = [cell for role, cell in cells.items() if role not in naming]
            remark = sorted((e for cell in told for e in cell), key=lambda e: e.start)
        else:
            self.assembly.add_row(cells, self.table.depth_unit if self.table else None)
        self._remark = Prose([(e.start, e.end) for e in remark], remark)
        if remark:
            self.assembly.add_prose(self._remark)
