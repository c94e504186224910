"""Puts the positions of a notice on the paper of its charts, where a chart list knows them."""

from __future__ import annotations

from noticeparse.records.action import Action, Move
from noticeparse.records.chart import ChartSection
from noticeparse.records.notice import Notice
from noticeparse.records.position import Position
from noticeparse.records.sheet import Sheet, SheetPlace
from noticeparse.sheets import ListedSheet, Sheets, sheet_of


def on_sheets(notices: list[Notice], sheets: Sheets | None) -> list[Notice]:
    """The notices with `sheet` in each action whose chart, or panel, is in the list."""
    return notices if sheets is None else [_notice(notice, sheets) for notice in notices]


def _notice(notice: Notice, sheets: Sheets) -> Notice:
    charts = [_section(section, sheets.of_section(section)) for section in notice.charts]
    return notice.model_copy(update={"charts": charts})


def _section(section: ChartSection, sheets: list[ListedSheet]) -> ChartSection:
    if not sheets:
        return section
    actions = [
        action.model_copy(update={"sheet": _sheet(action, sheets)}) for action in section.actions
    ]
    return section.model_copy(update={"actions": actions})


def _sheet(action: Action, sheets: list[ListedSheet]) -> Sheet:
    destination = action.destination.positions if isinstance(action, Move) else []
    return Sheet(
        positions=[_place(one, sheets) for one in action.geometry.positions],
        destination=[_place(one, sheets) for one in destination],
    )


def _place(position: Position, sheets: list[ListedSheet]) -> SheetPlace:
    return sheet_of(sheets, position).place(position)
