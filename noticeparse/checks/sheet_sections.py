"""What a check over a chart list is given: one chart section, and its chart as the list has it."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.checks.trouble import Placed, Trouble
from noticeparse.records.chart import ChartSection
from noticeparse.records.notice import Notice
from noticeparse.records.reference import NoticeRef
from noticeparse.sheets import (
    ListedSheet,
    Sheets,
    chart_key,
    is_same_notice,
    own_reference,
    panel_key,
)
from noticeparse.spans import Span


class Chain:
    """The permanent notices of a bulletin for one chart, each with the one it names before."""

    def __init__(self) -> None:
        self._steps: dict[int, list[tuple[NoticeRef, NoticeRef | None]]] = defaultdict(list)
        self._applied: dict[NoticeRef, set[NoticeRef]] = {}

    def add(self, own: NoticeRef, previous: NoticeRef | None) -> None:
        """Note one more notice."""
        self._steps[own.number].append((own, previous))

    def has(self, sought: NoticeRef, *, but: NoticeRef | None) -> bool:
        """Whether `sought` is a notice of the bulletin, and another than `but`."""
        steps = self._steps.get(sought.number, ())
        return any(is_same_notice(sought, own) for own, _ in steps if own != but)

    def applied(self, last: NoticeRef) -> set[NoticeRef]:
        """The notices that are on the chart: the last one applied, and those before it."""
        if last not in self._applied:
            self._applied[last] = {*self._back_from(last)}
        return self._applied[last]

    def _back_from(self, last: NoticeRef) -> Iterator[NoticeRef]:
        sought: NoticeRef | None = last
        seen: set[NoticeRef] = set()
        while sought is not None:
            steps = self._steps.get(sought.number, ())
            step = next((one for one in steps if is_same_notice(one[0], sought)), None)
            if step is None or step[0] in seen:
                return
            seen.add(step[0])
            yield step[0]
            sought = step[1]


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
    chain: Chain

    def trouble(self, code: str, span: Span, pointers: list[str], **values: str) -> Trouble:
        """Something wrong in the section."""
        return Trouble(code, span, pointers, values, self.section.chart)

    def trouble_of_head(self, code: str, **values: str) -> Trouble:
        """Something wrong in what the section says of its chart."""
        return self.trouble(code, self.section.span, [self.pointer], **values)

    def actions(self) -> Iterator[Placed]:
        """The actions, each with its pointer."""
        for index, action in enumerate(self.section.actions):
            yield Placed(action, self.pointer, index, self.section.chart)


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


def _chains(notices: Sequence[Notice]) -> dict[str, Chain]:
    chains: dict[str, Chain] = defaultdict(Chain)
    for notice in notices:
        own = own_reference(notice)
        if own is not None and own.status == "permanent":
            for section in notice.charts:
                chains[_key(section)].add(own, section.previous)
    return chains
