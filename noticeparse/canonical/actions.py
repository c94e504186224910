"""One action as one line: its verb, its letter, the feature phrase, and where it applies."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.canonical import features
from noticeparse.canonical.changes import amendments, replacements
from noticeparse.canonical.places import Letters, Placed, Style, place
from noticeparse.records.action import Action, Amend, Move, Replace
from noticeparse.records.chart import ChartSection

_VERB = 8
_WIDEST = 56
_GAP = "   "


class Line(NamedTuple):
    """An action ready to be set in columns: everything before its positions, and these."""

    words: str
    positions: str


class Wording(NamedTuple):
    """One way of writing an action."""

    phrase: str
    style: Style


_STYLES = (Style(), Style(spells_letters=True), Style(exchanges_within=True))


def wordings(action: Action, section: ChartSection) -> Iterator[Wording]:
    """The ways of writing an action that read back as its record says, the best first."""
    unit = section.depth_unit
    if isinstance(action, Replace):
        found = replacements(action, unit)
    elif isinstance(action, Amend):
        found = amendments(action, unit)
    else:
        found = features.wordings(action.feature, unit)
    return (Wording(phrase, style) for phrase in found for style in _STYLES)


def line(action: Action, wording: Wording, letters: Letters) -> Line:
    """The line of an action.

    Raises NotWritable.
    """
    label = f"({action.label}) " if action.label is not None else ""
    words = f"{action.verb.capitalize():<{_VERB}} {label}{wording.phrase}"
    kind = action.feature.kind
    placed = place(action.geometry, letters, wording.style, kind)
    if isinstance(action, Move):
        there = place(action.destination, letters, wording.style, kind)
        placed = Placed(", from", f"{placed.positions} to {there.positions}")
    letters.end_item(action.geometry, action.label)
    if isinstance(action, Move):
        letters.end_item(action.destination, None)
    return Line(words + placed.lead, placed.positions)


def in_columns(lines: Sequence[Line]) -> list[str]:
    """The lines with their positions below one another, but for those with many words."""
    widths = [len(one.words) for one in lines if one.positions]
    width = max((w for w in widths if w <= _WIDEST), default=0)
    return [
        f"{one.words:<{width}}{_GAP}{one.positions}" if one.positions else one.words
        for one in lines
    ]
