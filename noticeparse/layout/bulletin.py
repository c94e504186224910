"""From lines to notices: the head of each, its chart sections, their items, its prose.

Each line opens something (a list, a notice, a chart section), is a row of a table or of a block of
keys, or belongs to the body that is open.
"""

from __future__ import annotations

from noticeparse.layout.copied.furniture import find_furniture, is_running_head, stays_left_out
from noticeparse.layout.drafts import Layout, Piece
from noticeparse.layout.handed_on import HandedOn
from noticeparse.layout.head.asides import takes_clause, takes_no_chart
from noticeparse.layout.head.cards import take_card
from noticeparse.layout.head.cuts import parts_of, settle_edition, without_axis_titles
from noticeparse.layout.head.heads import HeadReader
from noticeparse.layout.head.lists import ListReader
from noticeparse.layout.head.numbers_behind import heading_before, number_behind_heading
from noticeparse.layout.head.panel_lines import drop_bare_panels
from noticeparse.layout.head.rearranged import rearranged
from noticeparse.layout.head.stacked_keys import with_printed_keys
from noticeparse.layout.item.codes import takes_codes, with_code
from noticeparse.layout.item.sub_headings import is_title_above
from noticeparse.layout.line.elements import Line, has_words
from noticeparse.layout.line.stumps import with_stumps
from noticeparse.layout.opening.bare_heads import with_bare_heads
from noticeparse.layout.opening.before_numbers import opens_with_no_chart
from noticeparse.layout.opening.charts_aside import says_unchanged
from noticeparse.layout.opening.late_heads import is_like_head, is_lost_head, late_opening
from noticeparse.layout.opening.margin_numbers import last_before, with_margin_numbers
from noticeparse.layout.opening.notice_kinds import explains_signs
from noticeparse.layout.opening.notice_openings import NoticeOpening, notice_opening
from noticeparse.layout.opening.recognise import has_star, is_head_of_card
from noticeparse.layout.place.numbered_places import with_numbers_of_places
from noticeparse.layout.table.text_column import TextColumnReader


def lay_out(
    text: str,
    lines: list[Line],
    least: int | None = None,
    before: HandedOn | None = None,
    *,
    furniture: frozenset[int] = frozenset(),
) -> Layout:
    """The drafts of all notices and lists, in text order; up to the first cut from `least` on.

    `before` is what the part before hands on; `furniture` are rows at the head or foot of a page.
    """
    lines, titles = with_printed_keys(text, lines)
    lines = with_numbers_of_places(text, with_bare_heads(text, with_stumps(text, lines)))
    lines, counts = with_margin_numbers(text, rearranged(text, lines), before)
    reader = _Reader(text, lines, titles)
    reader.assembly.cut.least = least
    if before is not None:
        reader.take_up(before)
    found = find_furniture(text, lines, before.furniture if before else None, furniture)
    reader.run(found.lines)
    last = last_before(counts, reader.layout.cut, before)
    reader.layout.handed_on = reader.handed_on(found.shapes, last)
    return reader.layout


class _Reader(HeadReader):
    def __init__(self, text: str, lines: list[Line], keys: list[Piece]) -> None:
        super().__init__(text)
        self.lines = lines
        made = self.assembly
        self.lists = ListReader(text, lines, made.notices)
        self.layout = Layout(made.notices, self.lists.lists, made.loose, ignored=keys)
        self.text_column = TextColumnReader(text, made)
        self.page_broke = False
        self._leaves_out = False
        """Whether the line above tells what a text in the canonical layout leaves out."""
        self.is_first = True
        """Whether the text is whole, or the first part of one."""
        self._may_be_front = True

    def take_up(self, before: HandedOn) -> None:
        """Go on where the layout of the part before ends."""
        self.is_first = False
        self.tables.take_up(before)
        self.assembly.codes.update(before.codes)
        self.assembly.has_numbers = before.has_numbers
        self.assembly.is_by_chart = before.is_by_chart
        self.assembly.row_verb, self.assembly.row_class = before.row_verb, before.row_class
        self.chart_rows.at_margin.update(before.at_margin)
        self.behind_blank, self._leaves_out = before.is_behind_blank, before.leaves_out
        # The rest of a notice that was cut says nothing of all that follow it.
        self._may_be_front = not before.is_torn

    def handed_on(self, furniture: frozenset[str], margin_number: int | None) -> HandedOn:
        """What the layout of the next part is to go on with."""
        own = HandedOn(
            furniture=furniture,
            codes=self.assembly.codes,
            at_margin=frozenset(self.chart_rows.at_margin),
            has_numbers=self.assembly.has_numbers,
            is_by_chart=self.assembly.is_by_chart,
            row_verb=self.assembly.row_verb,
            row_class=self.assembly.row_class and self.assembly.row_class.without_words(),
            is_behind_blank=self.behind_blank,
            leaves_out=self._leaves_out,
            margin_number=margin_number,
        )
        return self.tables.hand_on(own)

    def run(self, furniture: set[int]) -> None:
        for index, line in enumerate(self.lines):
            if self.assembly.cut.end is not None:
                break
            self._leaves_out = stays_left_out(self.text, line, self._leaves_out)
            if self._leaves_out:
                self.layout.leave_out(self.text, line)
            elif index in furniture:
                self._furniture(line)
            elif line.is_blank:
                self._blank(line)
            else:
                below = self.lines[index + 1 : index + 2]
                for part in parts_of(self.assembly, line, below):
                    self._line(part, index)
                    if self.assembly.cut.end is None:
                        self.behind_blank = self.page_broke = False
        self.keys.end_block()
        self.assembly.end_notice()
        drop_bare_panels(self.text, self.assembly.notices)
        if self.is_first:
            settle_edition(self.text, self.lines, self.layout)
        self.layout.ignored += [(line.start, line.end) for line in self.lists.bare_titles]
        self.layout.cut = self.assembly.cut.end

    def _furniture(self, line: Line) -> None:
        """What stands on both sides of a page foot belongs together, blank lines or not."""
        self.layout.ignored.append((line.start, line.end))
        if not self.assembly.notices:
            self.layout.front.append(line)
        if line.has("rule", "bar"):
            self.keys.end_block()
        self.page_broke = True
        while self.assembly.body and self.assembly.body[-1].is_blank:
            self.assembly.body.pop()

    def _blank(self, line: Line) -> None:
        self.behind_blank = True
        if self.page_broke:
            return
        self.keys.end_block()
        if self.assembly.body:
            self.assembly.body.append(line)

    def _line(self, line: Line, index: int) -> None:
        line = with_code(self.text, line, self.assembly.codes)
        if self.assembly.cut.end is not None:
            return
        if takes_no_chart(self.assembly, line) or self.text_column.takes(line):
            self.head_is_open = False
            return
        if self._is_listed(line, index):
            return
        line, titles = without_axis_titles(self.text, line)
        self.layout.ignored += titles
        is_aside = self.tables.is_comment(line) or says_unchanged(self.text, line)
        if is_aside or takes_codes(self.text, line, self.assembly.codes, self.assembly.notice):
            self.layout.front.append(line)
            return
        is_title = self.text_column.opens(self.lines, index, line)
        if is_title or self.tables.opens(line) or self.tables.goes_on_with_titles(line):
            self.layout.ignored.append((line.start, line.end))
            self.layout.titles.append(line)
            return
        if takes_clause(self.assembly, line) or self.goes_on_above_titles(line):
            return
        if self.chart_rows.takes(line, behind_blank=self.behind_blank):
            self.head_is_open = True
        else:
            self._line_of_notice(line, index)

    def _line_of_notice(self, line: Line, index: int) -> None:
        below = next(iter(self.lines[index + 1 : index + 2]), None)
        line, of_record = self.keys.before(below, line), self.keys.block_is_open
        if self.tables.takes_row(line):
            # Below rows of actions nothing more is said of the chart above them.
            self.head_is_open = self.head_is_open and not self.tables.holds_actions
            return
        if of_record and self.keys.takes_key(line):
            return
        of_charts = bool(self.assembly.charts) and is_like_head(self.text, line)
        in_notice = self.assembly.notice is not None and self.behind_blank
        is_first = not self.layout.notices and line.elements[0].kind == "number"
        may_be_late = (of_charts or in_notice or is_first) and not self.assembly.is_by_chart
        further = self.lines[index + 1 : index + 5] if may_be_late else []
        opening = notice_opening(self.text, line) or late_opening(self.text, line, further)
        behind = number_behind_heading(self.text, line, below)
        if opening is not None and behind is None:
            self._notice_line(line, opening)
        elif behind is not None:
            self._notice_line(line, behind)
            if self.assembly.cut.end is None:
                self.add_heading(heading_before(self.text, line.elements[: behind.at]))
        elif may_be_late and is_lost_head(self.text, line, further):
            self._end_notice()
            self.layout.left_out.append((line.start, line.end))
        elif self.behind_blank and explains_signs(self.text[line.start : line.end].strip()):
            self._end_notice()
            self.assembly.end_chart()
            self.layout.front.append(line)
        elif self.takes_chart(line) or self.takes_panel(line):
            self.tables.table = self.tables.table and self.tables.table.beside_heads
        elif self.keys.takes_key(line):
            self.head_is_open = self.head_is_open or self.assembly.notice is not None
        elif not self.behind_blank and self.keys.goes_on_with_value(line):
            pass
        elif (self.head_is_open or self.waits_for_chart()) and self.more_head(line):
            self.head_is_open = True
        elif self.takes_detail(line):
            pass
        elif self._is_front(line, index):
            self.layout.front.append(line)
        elif is_running_head(self.text, line):
            self._furniture(line)
        else:
            self.head_is_open = False
            self.assembly.body.append(line)

    def _is_front(self, line: Line, index: int) -> bool:
        is_open = self.assembly.notice is not None or self.assembly.charts or self.assembly.body
        if is_open or line.has("point", "half") or not self._may_be_front:
            return False
        is_title = not line.has("verb") or is_title_above(self.text, line, self.keys.following)
        return is_title or self.text[line.start : line.end].lower().startswith("subject:")

    def _is_listed(self, line: Line, index: int) -> bool:
        """Whether a line belongs to the edition's lists, or is the title of a part."""
        blank, in_notice = self.behind_blank, self.assembly.notice is not None
        below = next(iter(self.lines[index + 1 : index + 2]), None)
        if number_behind_heading(self.text, line, below) is not None:
            self.lists.open = None
            return False
        if self.lists.heads_charts(line, below, self.assembly.notice):
            return True
        if self.lists.opens(line, behind_blank=blank, in_notice=in_notice):
            self._end_notice()
            return True
        if self.lists.opens_part(line, index, behind_blank=blank):
            if self.assembly.is_untold:
                # One number for all charts stands above the titles of the parts.
                self.layout.front += [line] if self.lists.open is None else []
                return True
            self._end_notice()
            self.assembly.end_part((line.start, line.end))
            self._may_be_front = True
            self.tables.leave(keep_notice_column=False)
            if self.lists.open is None:
                self.layout.front.append(line)
            return True
        return self.lists.takes(line, index, behind_blank=blank)

    def _end_notice(self) -> None:
        self.keys.end_block()
        self.assembly.end_notice()
        self.head_is_open = False

    def _notice_line(self, line: Line, opening: NoticeOpening) -> None:
        rest = line.elements[opening.at + 1 :]
        if self.keys.goes_on_with_notice(line, opening.number):
            self.head_elements(line, rest)
            return
        first = next((e for e in rest if has_words(self.text, e)), None)
        by_chart = self.assembly.is_by_chart
        if by_chart and opens_with_no_chart(self.text[line.start : opening.number.start]):
            self.assembly.end_chart()
        is_bare = first is None and bool(self.assembly.charts)
        if by_chart and (is_bare or (first is not None and first.kind in ("verb", "label"))):
            # Under a chart head each row, or a line above its rows, has the number of a notice.
            self.assembly.row_notice(opening.number)
            if not is_bare:
                self.assembly.body.append(line._replace(elements=rest))
            return
        if by_chart and is_head_of_card(self.text, rest):
            self.assembly.row_notice(opening.number)
            take_card(self.assembly, rest)
            self.head_is_open = True
            return
        if not by_chart and self.assembly.cut.falls_before(line):
            return
        self.lists.open = None
        self.tables.leave(keep_notice_column=True)
        notice = self.assembly.open_notice(opening.number, line.start)
        notice.series, notice.is_radio = opening.series, opening.is_radio
        notice.status = opening.status or notice.status
        notice.is_original = opening.is_original or has_star(self.text, rest)
        if opening.is_radio and first is not None:
            # The message stands behind its number, and is kept word for word.
            self.assembly.body.append(line._replace(elements=rest))
            self.head_is_open = False
            return
        self.head_is_open = True
        self.head_elements(line, rest)
