"""What stands on a work sheet, in order: charts, their panels, notices, and numbered actions.

Plain words and figures, made once from the records; the writers only lay them out.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.records.action import Action
from noticeparse.records.chart import ChartSection
from noticeparse.records.reference import NoticeStatus
from noticeparse.sheets import ListedSheet
from noticeparse.worksheet.feature_words import Fact
from noticeparse.worksheet.places import Where


class Told(NamedTuple):
    """A finding, for a person."""

    severity: str
    words: str
    hint: str | None


class Line(NamedTuple):
    """One action, with its number on the sheet."""

    number: int
    key: str
    """What links to it: unique among all charts of a document."""
    label: str | None
    verb: str
    title: str
    where: list[Where]
    facts: list[Fact]
    told: list[Told]
    is_usable: bool
    """Whether it may be applied: neither held back by the reader, nor its notice cancelled."""
    is_cancelled: bool
    is_in_pencil: bool
    written: str
    source: str
    notice: str
    action: Action
    section: ChartSection


class NoticeBlock(NamedTuple):
    """One notice on one panel: its head, its actions, what else it says."""

    name: str
    status: NoticeStatus
    heading: str | None
    facts: list[Fact]
    alarms: list[str]
    lines: list[Line]
    remarks: list[str]
    told: list[Told]


class PanelSheet(NamedTuple):
    """A chart itself, or one of its plans or panels, as the notices name it."""

    name: str | None
    title: str | None
    frames: list[ListedSheet]
    """Where its positions may lie, by the chart list; empty without one."""
    blocks: list[NoticeBlock]

    def lines(self) -> Iterator[Line]:
        """Its actions, in order."""
        return (line for block in self.blocks for line in block.lines)


class ChartSheet(NamedTuple):
    """All that is to be done on one chart."""

    name: str
    title: str | None
    is_listed: bool | None
    """Whether it stands in the chart list; None without one."""
    alarms: list[str]
    """What must be settled before the work begins."""
    before: list[str]
    """What must be on the chart already, to be seen there and ticked."""
    notes: list[str]
    panels: list[PanelSheet]
    told: list[Told]
    """Errors and warnings that belong to no notice."""

    def lines(self) -> Iterator[Line]:
        """Its actions, in order."""
        return (line for panel in self.panels for line in panel.lines())

    def account(self) -> str:
        """`12 actions of 4 notices; 1 must not be applied`."""
        lines = list(self.lines())
        names = {block.name for panel in self.panels for block in panel.blocks}
        words = f"{counted(len(lines), 'action')} of {counted(len(names), 'notice')}"
        unusable = sum(not line.is_usable for line in lines)
        if unusable:
            words += f"; {unusable} must not be applied"
        return words


def counted(count: int, word: str) -> str:
    """`1 action`, `2 actions`."""
    return f"{count} {word}" if count == 1 else f"{count} {word}s"


def all_frames(sheet: ChartSheet) -> Sequence[ListedSheet]:
    """The frames of a chart and its panels, each once, in the order of the list."""
    found = {id(frame.chart): frame for panel in sheet.panels for frame in panel.frames}
    return list(found.values())
