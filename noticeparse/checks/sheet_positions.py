"""Positions held against the sheet of the chart list: its limits, its millimetres, its scale."""

from __future__ import annotations

from collections.abc import Iterator

from noticeparse.chart_math import distance_mm, mm_per_metre
from noticeparse.checks.sheet_sections import SheetSection
from noticeparse.checks.trouble import Trouble, positions_of
from noticeparse.records.action import Action, Move
from noticeparse.records.position import Position
from noticeparse.sheets import ListedSheet, sheet_of

LONGEST_MOVE_MM = 30.0
"""Beyond it a feature is deleted and inserted anew (common practice, no published source)."""
COARSEST_MM = 0.3
"""What is still drawn apart on paper, about the width of a pencil line."""

_UNSURE = frozenset({"position_approximate", "position_doubtful", "reported"})


def check_limits(one: SheetSection) -> Iterator[Trouble]:
    """A position on none of the frames that its section is for; said once for each place."""
    if not one.sheets:
        return
    found: dict[tuple[float, float], tuple[Position, list[str]]] = {}
    for placed in one.actions():
        for position in positions_of(placed.action):
            if not any(sheet.holds(position) for sheet in one.sheets):
                _, pointers = found.setdefault((position.lat, position.lon), (position, []))
                pointers += [placed.pointer] if placed.pointer not in pointers else []
    for position, pointers in found.values():
        values = {"written": position.written, "sheet": _name(one.sheets[0])}
        yield one.trouble("position-outside-chart", position.span, pointers, **values)


def _name(sheet: ListedSheet) -> str:
    chart = f"chart {sheet.chart.number}"
    return f"{chart}, {sheet.chart.panel}" if sheet.chart.panel else chart


def check_moves_on_sheet(one: SheetSection) -> Iterator[Trouble]:
    """A move of more than 30 mm on the sheet."""
    if not one.sheets:
        return
    for placed in one.actions():
        for start, end in moves_of(placed.action):
            frame = sheet_of(one.sheets, start).frame
            length_mm = distance_mm(frame, (start.lat, start.lon), (end.lat, end.lon))
            if length_mm > LONGEST_MOVE_MM:
                values = {"millimetres": f"{length_mm:.0f}", "written": end.written}
                pointers = [placed.pointer]
                yield one.trouble("move-too-long-on-sheet", end.span, pointers, **values)


def moves_of(action: Action) -> Iterator[tuple[Position, Position]]:
    """From where to where: the positions of a move in pairs."""
    if isinstance(action, Move):
        starts, ends = action.geometry.positions, action.destination.positions
        if len(starts) == len(ends):
            yield from zip(starts, ends, strict=True)


def check_precision(one: SheetSection) -> Iterator[Trouble]:
    """A position whose last digit leaves more than 0.3 mm open on the sheet; once an action."""
    if not one.sheets:
        return
    for placed in one.actions():
        if _UNSURE & {*placed.action.feature.status}:
            continue
        for position in positions_of(placed.action):
            frame = sheet_of(one.sheets, position).frame
            open_mm = position.resolution_m * mm_per_metre(frame, position.lat)
            is_sure = position.via == "stated" and position.quality is None
            if is_sure and open_mm > COARSEST_MM:
                values = {"written": position.written, "millimetres": f"{open_mm:.1f}"}
                pointers = [placed.pointer]
                yield one.trouble("position-too-coarse", position.span, pointers, **values)
                break
