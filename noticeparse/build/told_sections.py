"""All that tells the charts of a notice, in order: heads, brackets behind items, items alone."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.build.charts_behind import by_charts_behind
from noticeparse.build.charts_of_items import by_named_charts
from noticeparse.build.datums_of_items import tell_datums
from noticeparse.build.item_charts import by_item_charts
from noticeparse.build.listed_charts import without_listed
from noticeparse.build.panels_aside import hold_back_below_titles, hold_back_of_panels
from noticeparse.build.previous_told import take_told_previous
from noticeparse.build.sections import Section, SectionReader
from noticeparse.build.stated_units import set_units
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft
from noticeparse.layout.opening.notice_kinds import is_for_none
from noticeparse.records.reference import NoticeRef

_FOR_NONE = re.compile(
    r"\bno (?:chart|cht|sheet)s? (?:(?:is|are|to be|needs? to be|will be) )?"
    r"(?:corrected|affected|concerned|touched|altered|changed|corrections?|corrns?)\b"
    r"|\bnothing (?:is )?(?:to be (?:entered|inserted|corrected|done|charted) )?(?:for|on) "
    r"(?:the |any )?charts?\b",
    re.IGNORECASE,
)


class ToldSections(NamedTuple):
    """The sections of a notice, the notices that their heads cancel, and faults with charts."""

    sections: list[Section]
    cancels: list[NoticeRef]
    faults: list[tuple[Fault, str | None]]


def told_sections(context: Context, draft: NoticeDraft, own: NoticeRef | None) -> ToldSections:
    """The chart sections of the notice `own`, each with the items that are for its chart."""
    reader = SectionReader(context, draft)
    sections = [] if _is_for_none(context, draft) else reader.sections()
    sections = without_listed(by_charts_behind(context, by_named_charts(context, sections)))
    take_told_previous(context, draft, sections)
    reader.set_datum(sections)
    set_units(context, draft, sections)
    sections = by_item_charts(context, sections)
    for section in sections:
        tell_datums(context, section.items, section.head.datum or context.datum)
        hold_back_of_panels(context, section.items, section.head.panel)
        hold_back_below_titles(context, draft, section.items, section.head.panel)
    faults = [*reader.faults, *_with_years(context, sections, own)]
    return ToldSections(sections, reader.cancels, faults)


def _is_for_none(context: Context, draft: NoticeDraft) -> bool:
    """Whether a notice whose heading alone names charts says that it is for none of them."""
    if is_for_none(context.text, draft) and not draft.charts:
        return True
    if draft.charts or not draft.heading:
        return False
    ends = [piece[1] for prose in draft.prose for piece in prose.pieces]
    start, end = draft.heading[0][0], max([draft.heading[-1][1], *ends])
    return _FOR_NONE.search(" ".join(context.text[start:end].split())) is not None


def _with_years(
    context: Context, sections: Sequence[Section], own: NoticeRef | None
) -> Iterator[tuple[Fault, str | None]]:
    """Give notices before that are told by their number alone the year of the edition.

    A number that is not lower than that of the notice may be of an earlier year: none is given.
    """
    if own is None or context.year is None or own.year != context.year:
        return
    for section in sections:
        head = section.head
        ref, written = head.previous, head.previous_written
        if ref is None or written is None or ref.year is not None or ref.number >= own.number:
            continue
        if written == f"previous notice {ref.number}":
            # So the canonical layout writes a notice whose year is not known.
            continue
        head.previous = ref.model_copy(update={"year": own.year})
        start = context.text.find(written, *section.extent)
        extent = (start, start + len(written)) if start >= 0 else section.extent
        values = {"written": written, "year": str(own.year)}
        yield Fault("notice-year-not-written", *extent, values), head.chart
