"""From the draft of a notice to its record, with the faults of all its parts."""

from __future__ import annotations

from typing import NamedTuple

from noticeparse.build.actions import ActionReading, read_action
from noticeparse.build.announced import Listed, ListsOfPlaces
from noticeparse.build.beside_each_other import tell_beside_each_other
from noticeparse.build.charts_side_by_side import hold_back_side_by_side
from noticeparse.build.doubts import is_garbled
from noticeparse.build.extents import item_extent, quoting
from noticeparse.build.heading_clauses import heading_clauses
from noticeparse.build.in_turn import single_items
from noticeparse.build.limits_within import told_once
from noticeparse.build.positions import Labels, stated
from noticeparse.build.quality_of_heads import with_quality_told
from noticeparse.build.remarks import charts_in_passing, loses_change, named_charts
from noticeparse.build.said_of_actions import chart_of, said_of_actions
from noticeparse.build.sections import Section, own_number
from noticeparse.build.strays import strays
from noticeparse.build.table_rows import cancelled_in_cells, rows_in_heading
from noticeparse.build.told_sections import told_sections
from noticeparse.build.unnamed_charts import without_chart
from noticeparse.build.untold_changes import is_for_charts, lost_changes
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.findings import Located, is_error, once_a_section
from noticeparse.layout.copied.years_in_front import as_written
from noticeparse.layout.drafts import Item, NoticeDraft, Piece, Prose
from noticeparse.readers.clauses import Clauses, read_clauses
from noticeparse.readers.editions import opens_source, read_line_words
from noticeparse.readers.headings import Heading, read_heading
from noticeparse.readers.heads import read_parts
from noticeparse.readers.references import notice_id, without_mark
from noticeparse.records.action import Action
from noticeparse.records.chart import ChartSection
from noticeparse.records.notice import Notice, Remark, Validity
from noticeparse.records.position import Position
from noticeparse.records.reference import NoticeRef

_NO_HEADING = frozenset({"PREVIOUS", "PREVIOUS_IN_BRACKETS", "PREVIOUS_LIST", "CANCELS"})


class NoticeReading(NamedTuple):
    """A notice without its findings, their faults, and the stretches that could not be used."""

    notice: Notice
    located: list[Located]
    lost: list[Piece]


class NoticeBuilder:
    """Builds one notice, whose lines end at `until`; `path` is the JSON Pointer of its record."""

    def __init__(self, context: Context, draft: NoticeDraft, path: str, until: int) -> None:
        self.context = context
        self.until = until
        self.draft = draft
        self.path = path
        self.lost: list[Piece] = []
        self.cancels: list[NoticeRef] = []
        self.valid: Validity | None = None
        self._valid_by_heading: Validity | None = None
        self._lists = ListsOfPlaces()
        self._taken: set[Piece] = set()
        self._passed_over: dict[Piece, str] = {}
        """Items whose letters a chart head does not name, and the section that passed them."""
        self.charts_in_prose: list[tuple[str, int, int]] = []
        self.ref, faults = own_number(context, draft)
        self.id = notice_id(self.ref) if self.ref else None
        self.is_for_charts = is_for_charts(draft, self.ref)
        self.located = [Located(fault, [path], self.id) for fault in faults]

    def build(self) -> NoticeReading:
        """The record and its faults."""
        draft = self.draft
        heading = self._heading()
        for start, end in draft.clauses:
            self._take(read_clauses(self.context.text[start:end], self.context.year), start)
        refs, faults = cancelled_in_cells(self.context, draft)
        self.cancels += refs
        faults += rows_in_heading(self.context, draft)
        self.located += [Located(fault, [self.path], self.id) for fault in faults]
        sections = self._sections()
        remarks = [self._remark(prose, index) for index, prose in enumerate(draft.prose)]
        charts = [
            self._chart(section, index, is_shared=len(sections) > 1)
            for index, section in enumerate(sections)
        ]
        for one in self._lists.untold(self.context):
            self._action(ActionReading(None, one.faults), one.item, [], one.path, one.chart)
        for start, end in draft.idle_verbs:
            values = {"written": self.context.written(start, end)}
            self._fault(Fault("verb-without-item", start, end, values), [self.path])
        items = [item for section in sections for item in section.items]
        lost = lost_changes(self.context, draft, self.ref, items, charts)
        for fault in (*charts_in_passing(self.context, draft, sections), *lost):
            self._fault(fault, [self.path])
        own = (self.context, draft, self.path, self.ref)
        for fault, paths in said_of_actions(*own, sections, charts, until=self.until):
            self._fault(fault, paths, chart_of(paths, charts))
        if draft.is_radio or not charts:
            charts += named_charts(self.context, self.charts_in_prose)
        for piece, path in self._passed_over.items():
            if piece not in self._taken:
                values = {"written": self.context.written(*piece)}
                self._fault(Fault("item-without-chart", *piece, values), [path])
                self.lost.append(piece)
        start, end = self._extent(sections)
        if self.ref is None:
            self._fault(Fault("notice-head-missing", start, end), [self.path])
        status = "radio_warning" if draft.is_radio else self.ref.status if self.ref else None
        parts = read_heading(heading) if heading else Heading([], [])
        notice = Notice(
            id=self.id,
            number=self.ref.number if self.ref else None,
            year=self.ref.year if self.ref else None,
            status=status or "permanent",
            series=draft.series,
            original_information=draft.is_original,
            heading=heading,
            regions=parts.regions,
            subjects=parts.subjects,
            authority=self._authority(),
            valid=self.valid or self._valid_by_heading,
            cancels=[ref for i, ref in enumerate(self.cancels) if ref not in self.cancels[:i]],
            charts=charts,
            remarks=remarks,
            span=self.context.span(start, end),
            findings=[],
        )
        return NoticeReading(notice, self.located, self.lost)

    def _fault(self, fault: Fault, paths: list[str], chart: str | None = None) -> None:
        self.located.append(Located(fault, paths, self.id, chart))

    def _heading(self) -> str | None:
        kept: list[str] = []
        said = heading_clauses(self.context, self.draft, self.ref)
        self.cancels += said.cancels
        self._valid_by_heading = said.valid
        self.located += [Located(fault, [self.path], self.id) for fault in said.faults]
        for piece in self.draft.heading:
            start, end = without_mark(self.context.text, piece)
            words = self.context.text[start:end]
            at = start
            # Without a figure they name no other notice; what a list names stands to the end.
            for part in read_parts(words) if any(map(str.isdigit, words)) else ():
                if part.kind in _NO_HEADING and start + part.start >= at:
                    kept.append(self.context.written(at, start + part.start))
                    at = end if part.kind == "PREVIOUS_LIST" else start + part.end
            kept += self._without_source(self.context.written(at, end), at)
        joined = " ".join(" ".join(kept).split()).replace(" .", ".")
        return joined.strip(" .,:|-–·*()/").strip() or None

    def _without_source(self, words: str, start: int) -> list[str]:
        """The sentences of a heading, without one that names the source."""
        sentences = words.split(". ")
        source = next(filter(opens_source, sentences), None)
        if source is not None and not self.draft.sources:
            at = start + words.find(source)
            self.draft.sources.append((at, start + len(words)))
            sentences = sentences[: sentences.index(source)]
        return [". ".join(sentences)]

    def _authority(self) -> str | None:
        # Each record of a notice may name the source anew.
        words = " ".join(dict.fromkeys(self.context.joined([e]) for e in self.draft.sources))
        if not words:
            return None
        for kind, part in read_line_words(words).parts[:1]:
            if kind == "SOURCE":
                words = words[len(part.strip()) :] if words.startswith(part.strip()) else words
        return words.strip(" .:") or None

    def _take(self, clauses: Clauses, start: int) -> None:
        self.cancels += clauses.cancels
        self.valid = self.valid or clauses.valid
        for fault in clauses.faults:
            self._fault(fault.shifted(start), [self.path])

    def _sections(self) -> list[Section]:
        hold_back_side_by_side(self.context, self.draft.charts)
        told = told_sections(self.context, self.draft, self.ref)
        self.cancels += told.cancels
        for fault, chart in told.faults:
            self._fault(fault, [self.path], chart)
        for section in told.sections:
            tell_beside_each_other(self.context, section.items)
        return told.sections

    def _chart(self, section: Section, index: int, *, is_shared: bool) -> ChartSection:
        head = section.head
        unit = head.depth_unit or self.context.depth_unit
        path = f"{self.path}/charts/{index}"
        labels = Labels()
        actions: list[Action] = []
        first_fault = len(self.located)
        for item in single_items(self.context, section.items):
            reading = read_action(self.context, item, labels, unit)
            extent = item_extent(item)
            if head.letters is not None and item.label not in (*head.letters, None):
                # Its letter is of another chart; what no chart takes is lost.
                self._passed_over.setdefault(extent, path)
                continue
            self._taken.add(extent)
            if reading.announced:
                told = reading.announced, reading.faults, labels, path, head.chart
                self._lists.add(Listed(item, *told))
                continue
            reading.faults.extend(strays(self.context, item, self.ref, is_shared=is_shared))
            reading.faults[:] = told_once(reading.faults)
            self._action(reading, item, actions, path, head.chart)
        self.located[first_fault:] = once_a_section(self.located[first_fault:])
        if head.chart is None and section.items:
            faults = (one.fault for one in self.located if one.fault.code == "chart-unread")
            is_below = index > 0 and not any(section.holds(fault) for fault in faults)
            self._fault(without_chart(self.context, self.draft, section, is_below), [path])
        return ChartSection(
            chart=head.chart,
            international=head.international,
            panel=head.panel,
            edition=head.edition,
            edition_date=head.edition_date,
            previous=head.previous,
            previous_written=self._as_written(head.previous_written),
            datum=head.datum or self.context.datum,
            depth_unit="fm_ft" if unit == "fm" else unit,
            actions=with_quality_told(self.context, self.draft, section, actions),
            span=self.context.span(*section.extent),
        )

    def _as_written(self, words: str | None) -> str | None:
        context = self.context
        if words is None:
            return None
        return as_written(words, is_exchanged=context.has_years_in_front, sign=context.number_sign)

    def _action(
        self,
        reading: ActionReading,
        item: Item,
        actions: list[Action],
        path: str,
        chart: str | None,
    ) -> None:
        if reading.action is None:
            self.lost.append(item_extent(item))
            for fault in reading.faults:
                self._fault(fault, [path], chart)
            return
        own = f"{path}/actions/{len(actions)}"
        located = [Located(fault, [own], self.id, chart) for fault in reading.faults]
        self.located += located
        usable = not any(is_error(one) for one in located)
        action = reading.action
        actions.append(action if usable else action.model_copy(update={"usable": False}))

    def _remark(self, prose: Prose, index: int) -> Remark:
        context = self.context
        start, end = prose.pieces[0][0], max(piece[1] for piece in prose.pieces)
        clauses = read_clauses(context.text[start:end], context.year)
        self._take(clauses, start)
        self.charts_in_prose += [(n, start + a, start + b) for n, a, b in clauses.charts]
        positions: list[Position] = []
        path = f"{self.path}/remarks/{index}"
        if loses_change(context, prose, self.ref, is_for_charts=self.is_for_charts):
            self._fault(quoting(context, "sentence-unread", (start, end)), [path])
        for element in prose.elements:
            if element.kind != "point":
                continue
            for fault in element.value.faults:
                self._fault(fault, [path])
            if element.value.point is not None:
                positions.append(stated(context, element.value.point, element, None))
        if is_garbled(context.text[start:end]):
            self._fault(quoting(context, "text-garbled", (start, end)), [path])
        dates = list(dict.fromkeys(clauses.dates))
        return Remark(
            text=context.written(start, end),
            positions=positions,
            dates=dates,
            span=context.span(start, end),
        )

    def _extent(self, sections: list[Section]) -> Piece:
        draft = self.draft
        ends = [section.extent[1] for section in sections]
        ends += [item_extent(item)[1] for section in sections for item in section.items]
        ends += [piece[1] for prose in draft.prose for piece in prose.pieces]
        ends += [end for _, end in (*draft.heading, *draft.sources, *draft.clauses)]
        starts = [section.extent[0] for section in sections]
        starts += [prose.pieces[0][0] for prose in draft.prose if self.draft.number is None]
        if draft.number is not None:
            return draft.number.start, max([draft.number.end, *ends])
        if draft.number_words is not None:
            return draft.start, max([draft.start, *ends])
        return min(starts, default=draft.start), max(ends, default=draft.start)
