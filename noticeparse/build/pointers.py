"""The JSON Pointers (RFC 6901) of the actions of a notice."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.records.action import Action
from noticeparse.records.chart import ChartSection


class Pointed(NamedTuple):
    """An action, its JSON Pointer, and the chart section that it stands in."""

    pointer: str
    action: Action
    section: ChartSection


def pointed(path: str, charts: Sequence[ChartSection]) -> Iterator[Pointed]:
    """All actions of the charts of a notice whose JSON Pointer is `path`, in order."""
    for number, section in enumerate(charts):
        for index, action in enumerate(section.actions):
            yield Pointed(f"{path}/charts/{number}/actions/{index}", action, section)
