"""Depths whose unit neither the notice nor the chart section states."""

from __future__ import annotations

from collections.abc import Iterator

from noticeparse.checks.trouble import Trouble
from noticeparse.records.action import Action, Amend, Replace
from noticeparse.records.depth import Depth
from noticeparse.records.notice import Notice


def check_depth_units(notice: Notice) -> Iterator[Trouble]:
    """One remark for each chart section in which a depth was read as metres for want of a unit."""
    for number, chart in enumerate(notice.charts):
        pointers = [
            f"/charts/{number}/actions/{index}"
            for index, action in enumerate(chart.actions)
            if any(depth.unit is None and depth.value_m is not None for depth in _depths(action))
        ]
        if pointers:
            first = int(pointers[0].rpartition("/")[2])
            span = chart.actions[first].span
            values = {"written": next(d.written for d in _depths(chart.actions[first]))}
            yield Trouble("depth-unit-not-stated", span, pointers, values, chart.chart)


def _depths(action: Action) -> Iterator[Depth]:
    features = [action.feature]
    if isinstance(action, Replace):
        features.append(action.replacement)
    for feature in features:
        if feature.depth is not None:
            yield feature.depth
    if isinstance(action, Amend):
        for change in action.changes:
            if isinstance(change.new, Depth):
                yield change.new
