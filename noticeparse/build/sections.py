"""The chart sections of a notice: what its heads say of each chart, and the items of each."""

from __future__ import annotations

import re
from typing import NamedTuple

from noticeparse.build.charts_of_rows import give_told, lost_figure, names_several, set_previous
from noticeparse.build.corrected import set_listed, told_at_the_end
from noticeparse.build.extents import extent_of, first_offset, item_extent, last_offset, quoting
from noticeparse.build.head_doubts import has_lost_bracket, head_doubts
from noticeparse.build.heads_of_all import heads_all
from noticeparse.build.shared_items import share_items
from noticeparse.build.told_status import status_told
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import ChartDraft, Item, NoticeDraft, Piece
from noticeparse.readers.head_values import ChartHead, Head, items_told, read_datum, read_panel
from noticeparse.readers.heads import head_kinds, read_head, read_parts
from noticeparse.readers.references import (
    is_marked,
    is_year_doubtful,
    mark_of_heading,
    read_head_number,
    read_number,
)
from noticeparse.records.reference import NoticeRef
from noticeparse.stretch import Stretch, gather

# Words that promise the notice before, at the end of a head or before its closing bracket; what
# may be a year is no number of a notice.
_NAMES_PREVIOUS = re.compile(
    r"\b(?:last|previous|prev|preceding|former|before this(?: one)?|(?<=[(\[])(?:after|follows))"
    r"(?: (?:notice|correction|update)(?: on(?: the)? chart)?)?(?: (?:19|20)[0-9]{2})?\W*$",
    re.IGNORECASE,
)
_PREVIOUS = frozenset({"PREVIOUS", "PREVIOUS_IN_BRACKETS"})


class Section(NamedTuple):
    """One chart of a notice, its items, and the stretch of text that they take."""

    head: ChartHead
    items: list[Item]
    extent: Piece

    def holds(self, fault: Fault) -> bool:
        """Whether a fault lies over a part of it."""
        return fault.start < self.extent[1] and self.extent[0] < fault.end


class SectionReader:
    """Reads the heads of one notice; keeps the notices they cancel and the faults they hold."""

    def __init__(self, context: Context, draft: NoticeDraft) -> None:
        self.context = context
        self.draft = draft
        self.cancels: list[NoticeRef] = []
        self.faults: list[tuple[Fault, str | None]] = []
        """Faults, each with the number of its chart."""
        self._last = told_at_the_end(context, draft.clauses)

    def sections(self) -> list[Section]:
        """Heads and items; charts named at the foot take the items above them."""
        headless: list[Item] = []
        found: list[Section] = []
        drafts = self.draft.charts
        has_heads = any(draft.head or draft.number for draft in drafts)
        share_items(self.context, drafts)
        for draft in drafts:
            if not (draft.head or draft.number):
                headless += draft.items
                continue
            if heads_all(self.context, draft, {section.head.chart for section in found}):
                found = [_with_items(one, draft.items) for one in _joined(found)]
                continue
            found += self._headed(draft)
        doubts = [*head_doubts(self.context, drafts)]
        self.faults += [(fault, None) for fault, _ in doubts]
        for section in found:
            if section.head.chart in {number for _, number in doubts if number is not None}:
                section.head.chart = None
        found = _joined(found)
        if not has_heads:
            found = self._in_heading()
            has_heads = bool(found)
        if not headless:
            return found
        if has_heads and not any(section.items for section in found):
            return [section._replace(items=headless) for section in found]
        extent = (first_offset(headless), last_offset(headless))
        unnamed = ChartHead()
        if not found:
            self._set_previous([unnamed], ChartDraft([]))
        return [Section(unnamed, headless, extent), *found]

    def set_datum(self, sections: list[Section]) -> None:
        """The datum that the head of the notice states holds where a chart states none."""
        for start, end in self.draft.clauses:
            for part in read_parts(self.context.text[start:end]):
                if part.kind == "DATUM":
                    for section in sections:
                        section.head.datum = section.head.datum or read_datum(part.text)

    def _in_heading(self) -> list[Section]:
        """Charts that only the heading names: `Pentarrow Quays. (Chart 52, …)`."""
        pieces = list(self.draft.heading)
        if not pieces:
            return []
        for start, end in self.draft.clauses:
            # What is told of the charts runs on: `Charts 14, last 6/26,` and below it `and 16`.
            above = pieces[-1][1]
            is_next = above <= start and not self.context.text[above:start].strip()
            if is_next and self.context.text[above - 1] not in ".;:":
                pieces.append((start, end))
        words = gather(self.context.text, pieces)
        head = read_head(words.text, self.context.year)
        charts = [chart for chart in head.charts if chart.chart]
        if charts:
            self._told_of(head, words)
        extent = extent_of(self.draft.heading)
        return [Section(chart, [], extent) for chart in charts]

    def _told_of(self, head: Head, words: Stretch) -> None:
        """Keep the faults of a head, at their places in the text."""
        for fault in head.faults:
            start, end = words.extent((fault.start, fault.end))
            self.faults.append((fault._replace(start=start, end=end), None))

    def _headed(self, draft: ChartDraft) -> list[Section]:
        words = gather(self.context.text, draft.head)
        text = words.text
        if draft.number is not None:
            head = read_head(f"Chart {text}", self.context.year)
            # Other cells of the row may hold a figure beside that of the chart.
            head.faults = [fault for fault in head.faults if fault.code != "chart-unread"]
        else:
            head = read_head(text, self.context.year)
        self.cancels += head.cancels
        self._told_of(head, words)
        if any(chart.letters for chart in head.charts):
            self._unknown_letters(head.charts, draft.items or self._headless_items(), words)
        starts = [start for start, _ in draft.head] or [first_offset(draft.items)]
        ends = [end for _, end in draft.head] + [item_extent(item)[1] for item in draft.items]
        extent = (min(starts), max(ends, default=starts[0]))
        named = any(chart.chart or chart.international for chart in head.charts)
        if not head.charts:
            head.charts.append(ChartHead(chart=draft.number))
        told = any(fault.code == "chart-unread" for fault in head.faults)
        if not (named or told) and draft.number is None and "CHART_WORD" in head_kinds(text):
            values = {"written": self.context.written(*extent_of(draft.head))}
            self.faults.append((Fault("chart-unread", *extent_of(draft.head), values), None))
        if draft.number:
            self._set_number(head.charts[0], draft.number, extent_of(draft.head))
        if draft.panel:
            written = self.context.text[slice(*draft.panel)]
            head.charts[0].panel = read_panel(written.partition(" (")[0])
        if draft.international:
            head.charts[0].international = f"INT {self.context.text[slice(*draft.international)]}"
        if draft.letters:
            head.charts[0].letters = items_told(self.context.text[slice(*draft.letters)])
        self._set_previous(head.charts, draft)
        self._doubts(head, text, draft)
        self._take_corrected(head.charts)
        return [Section(chart, draft.items, extent) for chart in head.charts]

    def _doubts(self, head: Head, text: str, draft: ChartDraft) -> None:
        """What in a chart head cannot be taken at its word."""
        if not draft.head:
            return
        extent = extent_of(draft.head)
        values = {"written": self.context.written(*extent)}
        if has_lost_bracket(text):
            self.faults.append((Fault("chart-head-bracket", *extent, values), None))
        if _NAMES_PREVIOUS.search(text) and not any(c.previous_written for c in head.charts):
            self.faults.append((Fault("previous-unread", *extent, values), None))
        without = [chart for chart in head.charts if chart.previous_written is None]
        if without and len(without) < len(head.charts):
            number = {"chart": str(without[0].chart), **values}
            self.faults.append((Fault("previous-of-some", *extent, number), None))
        own = self.draft.number_words
        if head.this_notice is not None and own is not None:
            year = self.context.year
            if read_number(head.this_notice[0], year) != read_number(own, year):
                self.faults.append((Fault("chart-of-other-notice", *extent, values), None))

    def _set_number(self, chart: ChartHead, written: str, extent: Piece) -> None:
        """The number in a column of charts: `22, inset B` is chart 22 and its panel."""
        own = read_head(f"Chart {written}", self.context.year).charts
        chart.chart = written
        if own:
            chart.chart, chart.panel = own[0].chart, chart.panel or own[0].panel
        is_strange = not own and any(not (char.isalnum() or char in " -./") for char in written)
        if is_strange or (own and own[0].chart is None) or lost_figure(written, own):
            self.faults.append((Fault("chart-unread", *extent, {"written": written}), None))

    def _set_previous(self, charts: list[ChartHead], draft: ChartDraft) -> None:
        """The notice before, from a column of its own or from the heading of the notice."""
        context = self.context
        if draft.previous:
            self.faults += [(one, None) for one in set_previous(context, charts, draft.previous)]
            return
        for piece in self.draft.heading:
            kinds = head_kinds(context.text[slice(*piece)])
            if kinds - {"OTHER"} == {"NOTICE_NUMBER"}:
                # `312/26 = 311/26`: nobody can say whether it must be on the chart.
                self.faults.append((quoting(context, "previous-unread", piece), None))
            elif "PREVIOUS_LIST" in kinds:
                self.faults += set_listed(context, charts, piece)
            elif kinds & _PREVIOUS:
                words = context.text[slice(*piece)].strip(" []().")
                found = next((c for c in read_head(f"Chart 0 {words}", context.year).charts), None)
                if found is not None and len(charts) > 1 and names_several(words):
                    self.faults.append((quoting(context, "previous-unread", piece), None))
                elif found is not None:
                    told = quoting(context, "chart-head-unread", piece)
                    self.faults += give_told(charts, found, told)

    def _take_corrected(self, charts: list[ChartHead]) -> None:
        """The notice before that the front told for the first notice of a chart, or its end."""
        is_first = not is_marked(self.draft.number_words)
        for chart in charts:
            last = self.context.corrected.pop(chart.chart or "", None) if is_first else None
            last = self._last.pop(chart.chart or "", last)
            if last is not None and chart.previous is None and not chart.previous_written:
                chart.previous, chart.previous_written = last

    def _headless_items(self) -> list[Item]:
        return [item for draft in self.draft.charts if not draft.head for item in draft.items]

    def _unknown_letters(self, charts: list[ChartHead], items: list[Item], words: Stretch) -> None:
        """Letters that a chart head names, but no item has."""
        known = {item.label for item in items}
        for chart in charts:
            for letter in sorted((chart.letters or frozenset()) - known):
                start, end = words.outer(chart.start), words.outer(max(chart.end - 1, 0)) + 1
                values = {"letter": letter, "written": self.context.written(start, end)}
                self.faults.append((Fault("letter-unknown", start, end, values), chart.chart))


_SAID = ("previous_written", "panel", "edition", "international", "datum")


def _with_items(section: Section, items: list[Item]) -> Section:
    """A section with more items, which may be its own already."""
    if section.items is items:
        return section
    return section._replace(items=[*section.items, *items])


def _joined(sections: list[Section]) -> list[Section]:
    """The sections, those of a chart that was named before, with nothing new said, under it."""
    joined: list[Section] = []
    for section in sections:
        head = section.head
        at = next((i for i, one in enumerate(joined) if one.head.chart == head.chart), None)
        if at is None or head.chart is None or head.is_main or head.letters is not None:
            joined.append(section)
            continue
        first = joined[at]
        said = [(getattr(head, name), getattr(first.head, name)) for name in _SAID]
        says_more = any(new is not None and new != old for new, old in said)
        if says_more or first.head.panel is not None or first.items is section.items:
            joined.append(section)
            continue
        extent = extent_of([first.extent, section.extent])
        joined[at] = Section(first.head, [*first.items, *section.items], extent)
    return joined


class OwnNumber(NamedTuple):
    """The number of a notice, and what is said of how it was told."""

    notice: NoticeRef | None
    faults: tuple[Fault, ...] = ()


def own_number(context: Context, draft: NoticeDraft) -> OwnNumber:
    """The number of a notice; words before it or in its heading may say that it is temporary."""
    words = draft.number_words or ""
    head = read_head_number(words, context.year)
    if head is None:
        return OwnNumber(None)
    ref = head.notice
    faults: list[Fault] = []
    if draft.number is not None:
        extent, values = draft.number[1:3], {"written": words, "year": str(ref.year or "unknown")}
        if not head.is_dated:
            faults.append(Fault("notice-year-not-written", *extent, values))
        if is_year_doubtful(words, ref, context.year):
            faults.append(Fault("notice-year-doubtful", *extent, values))
    if ref.status == "permanent":
        said = [mark_of_heading(context.text[slice(*one)]).status for one in draft.heading]
        told = draft.status or next(filter(None, said), None) or status_told(context, draft)
        ref = ref.model_copy(update={"status": told or "permanent"})
    return OwnNumber(ref, tuple(faults))
