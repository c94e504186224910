"""What a check over a chart list is given: one chart section, and its chart as the list has it."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.checks.trouble import Placed, Trouble
from noticeparse.records.chart import ChartSection
from noticeparse.records.notice import Notice
from noticeparse.records.reference import NoticeRef
from noticeparse.sheets import ListedSheet, Sheets, chart_key, own_reference, panel_key
from noticeparse.spans import Span


class SheetSection(NamedTuple):
    """A chart section with all that the list and the bulletin tell of its chart."""

    notice: Notice
    section: ChartSection
    pointer: str
    """JSON Pointer below the notice."""
    is_listed: bool
    """Whether the chart is in the list, its panel perhaps not."""
    sheets: list[ListedSheet]
    """Frames that the section may be for, the chart itself first; empty where not listed."""
    is_first: bool
    """Whether no section above it is for the same chart and panel."""
    chain: list[tuple[NoticeRef, NoticeRef | None]]
    """The permanent notices of the bulletin for the chart, each with the one it names before."""

    def trouble(self, code: str, span: Span, pointers: list[str], **values: str) -> Trouble:
        """Something wrong in the section."""
        return Trouble(code, span, pointers, values, self.section.chart)

    def trouble_of_head(self, code: str, **values: str) -> Trouble:
        """Something wrong in what the section says of its chart."""
        return self.trouble(code, self.section.span, [self.pointer], **values)

    def actions(self) -> Iterator[Placed]:
        """The actions, each with its pointer."""
        for index, action in enumerate(self.section.actions):
            yield Placed(action, f"{self.pointer}/actions/{index}", self.section.chart)


def sections_of(
    notices: Sequence[Notice], sheets: Sheets
) -> Iterator[tuple[int, list[SheetSection]]]:
    """The sections of each notice that name a chart, with the notice's index."""
    chains = _chains(notices)
    seen: set[tuple[str, str]] = set()
    for index, notice in enumerate(notices):
        found: list[SheetSection] = []
        for number, section in enumerate(notice.charts):
            key = _key(section)
            if not key:
                continue
            which = key, panel_key(section.panel or "")
            found.append(
                SheetSection(
                    notice=notice,
                    section=section,
                    pointer=f"/charts/{number}",
                    is_listed=bool(sheets.of_chart(section)),
                    sheets=sheets.of_section(section),
                    is_first=which not in seen,
                    chain=chains[key],
                )
            )
            seen.add(which)
        yield index, found


def _key(section: ChartSection) -> str:
    return chart_key(section.chart or section.international or "")


def _chains(
    notices: Sequence[Notice],
) -> dict[str, list[tuple[NoticeRef, NoticeRef | None]]]:
    chains: dict[str, list[tuple[NoticeRef, NoticeRef | None]]] = defaultdict(list)
    for notice in notices:
        own = own_reference(notice)
        if own is not None and own.status == "permanent":
            for section in notice.charts:
                chains[_key(section)].append((own, section.previous))
    return chains
