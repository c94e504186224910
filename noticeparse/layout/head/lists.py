"""The lists that an edition prints about itself: contents, index of charts, notices in force."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.column.title_rows import read_titles
from noticeparse.layout.drafts import ListDraft, NoticeDraft
from noticeparse.layout.head.part_titles import (
    charts_beside_title,
    is_book_title,
    is_capital_title,
    is_notices_title,
    is_part_title,
    list_title,
    title_beside_entries,
)
from noticeparse.layout.line.elements import Line
from noticeparse.layout.opening.marked_parts import is_title_of_marked
from noticeparse.layout.opening.notice_openings import notice_opening
from noticeparse.readers.heads import head_kinds

_FEWEST_LINES = 2
_SHORTEST_RULE = 10
_WIDEST_RULE = 200
_OF_ENTRIES = frozenset({"NOTICE_NUMBER", "BARE_NUMBER", "CHART_NUMBER", "NEW_EDITION"})
_OF_ACTIONS = frozenset({"verb", "position", "latitude", "from", "old"})
"""Roles of columns that a table of actions has."""


class ListReader:
    """Tells the lines of lists from the others; holds the list that is open."""

    def __init__(self, text: str, lines: list[Line], notices: Sequence[NoticeDraft]) -> None:
        self.text = text
        self.lines = lines
        self.notices = notices
        """The notices so far."""
        self.lists: list[ListDraft] = []
        self.open: ListDraft | None = None
        self.bare_titles: list[Line] = []
        """Titles of parts with no list under them: they are furniture."""

    def opens(self, line: Line, *, behind_blank: bool, in_notice: bool) -> bool:
        """Whether a line is the title of a list, or begins with one; the list is then open."""
        beside = None if in_notice else title_beside_entries(self.text, line)
        if beside is not None:
            title, *entry = line.elements
            self._open(beside, line._replace(elements=(title,), end=title.end))
            self.lists[-1].entries.append(line._replace(elements=(*entry,), start=entry[0].start))
            return True
        if not behind_blank and not self._stands_apart(line, in_notice=in_notice):
            return False
        charts = None if in_notice else charts_beside_title(self.text, line)
        if charts is not None:
            self._open("index_of_charts", charts[0])
            self.lists[-1].entries += charts[1]
            return True
        kind = list_title(self.text, line)
        if kind is None or (kind == "new_charts" and not self._may_tell_of_charts(line)):
            return False
        self._open(kind, line)
        return True

    def _may_tell_of_charts(self, line: Line) -> bool:
        """Whether a title is of new charts; of a single one only in a frame between notices."""
        if "edition" not in self.text[line.start : line.end].lower().split():
            return True
        above = self.text[max(line.start - _WIDEST_RULE, 0) : line.start].rstrip("\n")
        rule = above.rpartition("\n")[2].strip()
        is_framed = len(rule) >= _SHORTEST_RULE and len(set(rule)) == 1 and not rule[0].isalnum()
        return is_framed and not (self.notices and not self.notices[-1].charts)

    def heads_charts(self, line: Line, below: Line | None, notice: NoticeDraft | None) -> bool:
        """Take a title above the table of a notice's own charts: `Charts affected`."""
        if notice is None or notice.charts or below is None or below.is_blank:
            return False
        if list_title(self.text, line) != "index_of_charts":
            return False
        titles = read_titles(self.text, below)
        if titles is None or not titles.roles >= {"chart", "previous"} or "notice" in titles.roles:
            return False
        self.bare_titles.append(line)
        return True

    def _stands_apart(self, line: Line, *, in_notice: bool) -> bool:
        """Whether a line with no blank line above it may be the title of a list all the same."""
        if self.open is None and not in_notice:
            return True
        return self._leaves_contents(line) or is_capital_title(self.text, line)

    def _leaves_contents(self, line: Line) -> bool:
        """Whether a title is that of a part, and no line of the contents, which name pages."""
        if self.open is None or self.open.kind != "contents" or line.is_blank:
            return False
        entries, last = self.open.entries, line.elements[-1].end - 1
        numbered = all(self.text[one.end - 1].isdigit() for one in entries)
        # Lines that end in the number of a page are furniture, wherever they stand.
        has_lines = bool(entries) or line.row - self.open.title.row > _FEWEST_LINES
        return numbered and has_lines and not self.text[last].isdigit()

    def opens_part(self, line: Line, index: int, *, behind_blank: bool) -> bool:
        """Whether a line is the title of another part of the edition; lists end there."""
        parted = behind_blank or (self._is_below_rule(index) and is_part_title(self.text, line))
        parted = parted or is_capital_title(self.text, line) or is_book_title(self.text, line)
        below = self.lines[index + 1 : index + 3]
        is_mark = (parted or not self.notices) and is_title_of_marked(self.text, line, below)
        if not (parted or self.open or is_mark):
            return False
        if not (is_mark or is_notices_title(self.text, line) or self._heads_states(line, index)):
            return False
        if self.open is not None and self._may_go_on(line, behind_blank=behind_blank):
            return False
        self.open = None
        if is_part_title(self.text, line):
            self._open("other", line)
        return True

    def _heads_states(self, line: Line, index: int) -> bool:
        """Whether a numbered title stands above columns of old and new states: `PART 2. REPLACE`.

        These columns say themselves what is done, whatever verb the title has.
        """
        if not line.has("verb") or line.has("point", "half") or not is_part_title(self.text, line):
            return False
        below = next((one for one in self.lines[index + 1 :] if not one.is_blank), None)
        titles = read_titles(self.text, below) if below is not None else None
        return titles is not None and {"old", "new"} <= titles.roles

    def _is_below_rule(self, index: int) -> bool:
        return index > 0 and self.lines[index - 1].has("rule")

    def _may_go_on(self, line: Line, *, behind_blank: bool) -> bool:
        """Whether a title right below the open list is a line of it: `Chart      Notices`."""
        assert self.open is not None
        kinds = head_kinds(self.text[line.start : line.end])
        if self._leaves_contents(line):
            return False
        is_of_columns = not self.open.entries and "CHART_WORD" in kinds
        return is_of_columns or (self.open.kind == "contents" and not behind_blank)

    def _open(self, kind: str, line: Line) -> None:
        self.open = ListDraft(kind, line)
        self.lists.append(self.open)

    def takes(self, line: Line, index: int, *, behind_blank: bool) -> bool:
        """Whether the open list takes a line as an entry; it ends with the first it does not."""
        if self.open is None:
            return False
        if self._is_above_charts(line):
            self._give_up()
            return False
        if self._is_entry(line, index, behind_blank):
            self.open.entries.append(line)
            return True
        if not self.open.entries and (self.open.kind == "other" or line.has("chart")):
            self._give_up()
        self.open = None
        return False

    def _give_up(self) -> None:
        """Take the open list, which has no entries, for a bare title."""
        assert self.open is not None
        self.lists.remove(self.open)
        self.bare_titles.append(self.open.title)
        self.open = None

    def _is_above_charts(self, line: Line) -> bool:
        """Whether a table of the charts of the notices stands here, whose texts name none.

        `Notice  Chart  Last correction` below the title of the list.
        """
        assert self.open is not None
        if self.open.entries or line.is_blank or not self.notices:
            return False
        if any(chart.head or chart.number for one in self.notices for chart in one.charts):
            return False
        titles = read_titles(self.text, line)
        return titles is not None and titles.roles >= {"notice", "chart", "previous"}

    def _is_entry(self, line: Line, index: int, behind_blank: bool) -> bool:
        assert self.open is not None
        if self._is_of_book(self.open):
            return line.elements[0].kind != "chart" and notice_opening(self.text, line) is None
        if line.has("point", "half", "reference", "key") or self._are_titles_of_items(line):
            return False
        if states_datum(self.text[line.start : line.end]):
            return False
        if line.has("verb") and not (
            self.open.kind == "new_charts" or is_part_title(self.text, line)
        ):
            return False
        if line.has("chart") and (self.open.kind == "other" or self._heads_items(index)):
            return False
        if behind_blank and line.elements[0].kind == "chart" and self._heads_notice(line, index):
            return False
        opening = notice_opening(self.text, line)
        if opening is not None:
            return not self._opens_notice(line, opening.at, index, behind_blank)
        if behind_blank and self.open.entries:
            kinds = head_kinds(self.text[line.start : line.end])
            return bool(kinds & {"NOTICE_NUMBER", "BARE_NUMBER", "CHART_NUMBER"})
        return True

    def _is_of_book(self, part: ListDraft) -> bool:
        """Whether a part corrects a book: its verbs and places are for no chart."""
        return is_book_title(self.text, part.title)

    def _heads_items(self, index: int) -> bool:
        """Whether a chart has its corrections below it, or the titles of their columns."""
        below = next((one for one in self.lines[index + 1 : index + 3] if one.elements), None)
        if below is None or below.has("chart"):
            return False
        titles = read_titles(self.text, below)
        is_told = titles is not None and not titles.roles.isdisjoint(("verb", "feature"))
        return is_told or (below.has("verb") and below.has("point", "half"))

    def _are_titles_of_items(self, line: Line) -> bool:
        """Whether a line names the columns of a table of actions: no list has such rows."""
        titles = read_titles(self.text, line)
        # `Subject` stands over words in lists too.
        return titles is not None and not titles.roles.isdisjoint(_OF_ACTIONS)

    def _heads_notice(self, line: Line, index: int) -> bool:
        """Whether a chart behind a blank line is the head of the notices below it.

        In an index the notices stand beside their charts.
        """
        if head_kinds(self.text[line.start : line.end]) & {"NOTICE_NUMBER", "BARE_NUMBER"}:
            return False
        rest = [one for one in self.lines[index + 1 : index + 6] if one.elements][:2]
        openings = [notice_opening(self.text, one) for one in rest]
        if not openings or openings[0] is None or any(openings[1:]):
            return False
        behind = rest[0].elements[openings[0].at + 1 :]
        return any(e.kind == "words" and e.gap and e.end - e.start > 3 for e in behind)

    def _opens_notice(self, line: Line, number_at: int, index: int, behind_blank: bool) -> bool:
        """Whether a numbered line within a list is the head of a notice after all."""
        rest = line.elements[number_at + 1 :]
        words = [e for e in rest if e.kind in ("words", "chart") and e.end - e.start > 3]
        if any(e.kind == "number" for e in rest):
            return False
        if not (behind_blank or self._is_below_rule(index)):
            return bool(words) and self._has_body_below(index)
        if not words:
            return self._has_items_below(index)
        following = next((one for one in self.lines[index + 1 :] if one.elements), None)
        return following is None or notice_opening(self.text, following) is None

    def _has_items_below(self, index: int) -> bool:
        """Whether a command or a position stands between a number alone and the next number."""
        for line in self.lines[index + 1 :]:
            if notice_opening(self.text, line) is not None:
                return False
            if line.has("verb", "point", "half"):
                return True
        return False

    def _has_body_below(self, index: int) -> bool:
        """Whether the head of a chart and its items stand right below a numbered line."""
        behind_chart = False
        for line in self.lines[index + 1 :]:
            if line.is_blank or (not behind_chart and notice_opening(self.text, line) is not None):
                return False
            if behind_chart:
                return line.has("verb") and (line.has("point", "half") or line.has_only("verb"))
            behind_chart = line.has("chart") and line.elements[0].kind == "chart"
        return False


def states_datum(words: str) -> bool:
    """Whether a line says the datum of all positions, and is no entry of a list."""
    kinds = head_kinds(words)
    return "DATUM" in kinds and kinds.isdisjoint(_OF_ENTRIES)
