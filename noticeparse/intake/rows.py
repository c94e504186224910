"""A row of cells as text: one line, or one for each line of its cells where these are pairs."""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.intake.composing import Composed, Composer

_LONGEST = 200
_EAST_OR_WEST = re.compile(r"[0-9'′’°\"″][ .]?[EWO]\b|\b[EW] ?[0-9]{1,3}[°\- ]")


def add_row(composer: Composer, cells: Sequence[Composed]) -> None:
    """Put the cells of a row behind what is there, parted by tabs.

    Where cells of one row hold several lines and several positions, each line of a cell may
    belong to the one beside it: if all cells hold as many, each with its position, these are rows;
    else an error is told, since which place belongs to which words cannot be.
    """
    lines = [_lines(one) for one in cells]
    counts = {len(one) for one in lines if one}
    places = max((sum(map(_places, one)) for one in lines if len(one) > 1), default=0)
    if places < 2 or sum(len(one) > 1 for one in lines) < 2:
        _add(composer, [_joined(one) for one in cells])
        return
    is_paired = len(counts) == 1 and any(all(_places(at) == 1 for at in one) for one in lines)
    if is_paired:
        for row in zip(*(one for one in lines if one), strict=True):
            _add(composer, row)
        return
    start = composer.length
    _add(composer, [_joined(one) for one in cells])
    said = " | ".join(" / ".join(at.text for at in one) for one in lines)
    composer.doubt("cells-not-paired", start, composer.length, written=said[:_LONGEST])


def _add(composer: Composer, cells: Sequence[Composed]) -> None:
    composer.end_line()
    tabs = ""
    for one in cells:
        if one.text:
            composer.add(tabs)
            tabs = ""
        composer.take(one)
        tabs += "\t"


def _joined(cell: Composed) -> Composed:
    return cell._replace(text=cell.text.rstrip("\n").replace("\n", " "))


def _lines(cell: Composed) -> list[Composed]:
    """The lines of a cell, each with what is told of it."""
    found: list[Composed] = []
    at = 0
    for line in cell.text.split("\n"):
        end = at + len(line)
        told = tuple(
            one._replace(end=min(one.end, end)).shifted(-at)
            for one in cell.doubts
            if at <= one.start <= end
        )
        if line or told:
            found.append(Composed(line, told))
        at = end + 1
    if len(found) > 1 and not found[-1].text:
        last = found.pop()
        behind = len(found[-1].text)
        doubts = tuple(one._replace(start=behind, end=behind) for one in last.doubts)
        found[-1] = found[-1]._replace(doubts=(*found[-1].doubts, *doubts))
    return found


def _places(line: Composed) -> int:
    return len(_EAST_OR_WEST.findall(line.text))
