"""What a check reports, and the walk over a notice that most checks need."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.records.action import Action, Move
from noticeparse.records.finding import Severity
from noticeparse.records.notice import Notice
from noticeparse.records.position import Position
from noticeparse.spans import Span


class Trouble(NamedTuple):
    """A code, where it stands, the records it belongs to, and the values its message names."""

    code: str
    span: Span
    pointers: list[str]
    """JSON Pointers below the notice, or below the bulletin for a check of the whole."""
    values: dict[str, str] = {}
    chart: str | None = None
    severity: Severity | None = None
    """In place of the catalogue's, where the case is a lighter one."""


class Placed(NamedTuple):
    """An action and its place in the notice."""

    action: Action
    section: str
    """The JSON Pointer of its chart section."""
    number: int
    """Its place among the actions of the section, from 0."""
    chart: str | None

    @property
    def pointer(self) -> str:
        """Its own JSON Pointer."""
        return f"{self.section}/actions/{self.number}"


def actions_of(notice: Notice) -> list[Placed]:
    """All actions of a notice, in order."""
    return [
        Placed(action, f"/charts/{number}", index, chart.chart)
        for number, chart in enumerate(notice.charts)
        for index, action in enumerate(chart.actions)
    ]


def positions_of(action: Action) -> Sequence[Position]:
    """The positions of an action, destination included."""
    own = action.geometry.positions
    return [*own, *action.destination.positions] if isinstance(action, Move) else own
