"""Holds back depths that may have lost their small figure in copying: `86` among `8₆`.

In comes one notice as it was read; out comes the same, such depths left out, with an error for
each.  A chart in metres writes decimetres as a small figure; where a page is copied as
plain text, `8₆` may become `86`, which is a ship's draught too deep.  The depth is not guessed.
Source: common practice, no published source; IHO S-4 B-412 for the small figures, from memory.
"""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from typing import NamedTuple

from noticeparse.build.notices import NoticeReading
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.findings import Located
from noticeparse.records.action import Action, Amend, Replace
from noticeparse.records.chart import ChartSection
from noticeparse.records.depth import Depth
from noticeparse.spans import Span

_SMALL = "₀₁₂₃₄₅₆₇₈₉"
_FIGURES = frozenset("0123456789" + _SMALL)
_KINDS = frozenset(("sounding", "least", "drying"))
_ALIKE = Decimal("1.5")
"""Depths of one notice that differ by no more than this factor lie in the same waters."""
_FAR_DEEPER = 2


class _Figure(NamedTuple):
    """The figure of a depth: `8₆` with its small figure, or `86`, and what stands behind."""

    whole: str
    small: str
    behind: str

    @property
    def value(self) -> Decimal:
        return Decimal(f"{self.whole}.{self.small or 0}")

    @property
    def parted(self) -> Decimal:
        """What `86` is when its last figure is a small one."""
        return Decimal(f"{self.whole[:-1]}.{self.whole[-1]}")


def without_lost_figures(context: Context, reading: NoticeReading, path: str) -> NoticeReading:
    """The notice without depths that may have lost a small figure, and an error for each."""
    notice = reading.notice
    actions = [action for chart in notice.charts for action in chart.actions]
    depths = [depth for action in actions for depth in _depths(action)]
    # Heights above the datum and depths below it say nothing of each other.
    lost = _lost([one for one in depths if one.kind != "drying"])
    lost |= _lost([one for one in depths if one.kind == "drying"])
    if not lost:
        return reading
    charts: list[ChartSection] = []
    for number, chart in enumerate(notice.charts):
        kept: list[Action] = []
        for index, action in enumerate(chart.actions):
            doubtful = [depth for depth in _depths(action) if depth in lost]
            for depth in doubtful:
                values = {"written": depth.written, "other": lost[depth]}
                fault = Fault("depth-subscript-lost", 0, 0, values)
                paths = [f"{path}/charts/{number}/actions/{index}"]
                span = _span(context, action, depth)
                reading.located.append(Located(fault, paths, notice.id, chart.chart, span=span))
            kept.append(_without(action, doubtful) if doubtful else action)
        charts.append(chart.model_copy(update={"actions": kept}))
    return reading._replace(notice=notice.model_copy(update={"charts": charts}))


def _depths(action: Action) -> Iterator[Depth]:
    features = [action.feature]
    if isinstance(action, Replace):
        features.append(action.replacement)
    found = [feature.depth for feature in features]
    if isinstance(action, Amend):
        found += [one.new for one in action.changes if isinstance(one.new, Depth)]
    yield from (depth for depth in found if depth is not None and depth.kind in _KINDS)


def _lost(depths: list[Depth]) -> dict[Depth, str]:
    """The depths in doubt, each with one that is written with its small figure."""
    figures = {depth: figure for depth in depths if (figure := _figure(depth)) is not None}
    small = {depth: figure for depth, figure in figures.items() if figure.small}
    if not small:
        return {}
    deepest = max(figure.value for figure in small.values())
    lost: dict[Depth, str] = {}
    genuine = Decimal(0)
    for depth, figure in figures.items():
        if figure.small:
            continue
        like = next((d for d, other in small.items() if _is_like(depth, figure, other)), None)
        if like is not None and figure.value > _FAR_DEEPER * deepest:
            lost[depth] = like.written
        else:
            genuine = max(genuine, figure.value)
    # Where other depths are as great, the waters are deep.
    return {d: like for d, like in lost.items() if figures[d].value > _FAR_DEEPER * genuine}


def _figure(depth: Depth) -> _Figure | None:
    """The figure, None for one with a point, a fraction or a second figure."""
    digits = "".join(one for one in depth.written if one in _FIGURES)
    if not digits:
        return None
    before, found, behind = depth.written.partition(digits)
    words = (before.replace(" ", ""), behind.strip(" ."))
    if not found or any(word and not word.isalpha() for word in words):
        return None
    small = digits[-1] if digits[-1] in _SMALL else ""
    whole = digits[: len(digits) - len(small)]
    if not whole or not whole.isascii():
        return None
    return _Figure(whole, str(_SMALL.index(small)) if small else "", words[1])


def _is_like(depth: Depth, figure: _Figure, other: _Figure) -> bool:
    """Whether a whole figure, its last one made small, is a depth like another."""
    if not 2 <= len(figure.whole) <= 3 or figure.whole[0] == "0" or figure.behind != other.behind:
        return False
    if depth.unit in ("fm", "fm_ft") and figure.whole[-1] > "5":
        return False
    least, most = sorted((figure.parted, other.value))
    return most <= _ALIKE * least


def _without(action: Action, doubtful: list[Depth]) -> Action:
    """The action without the depths in doubt."""
    values: dict[str, object] = {}
    if action.feature.depth in doubtful:
        values["feature"] = action.feature.model_copy(update={"depth": None})
    if isinstance(action, Replace) and action.replacement.depth in doubtful:
        values["replacement"] = action.replacement.model_copy(update={"depth": None})
    if isinstance(action, Amend):
        values["changes"] = [
            one.model_copy(update={"new": None}) if one.new in doubtful else one
            for one in action.changes
        ]
    return action.model_copy(update=values)


def _span(context: Context, action: Action, depth: Depth) -> Span:
    """The figure in the original text, or the action where it stands in other characters."""
    given = context.repaired.given
    figure = "".join(one for one in depth.written if one in _FIGURES)
    start = given.find(figure, action.span.start, action.span.end)
    if start < 0:
        return action.span
    return context.lines.span(start, start + len(figure))
