"""The panels that a head names: one alone, or beside the chart itself.

`904 (plan A)` is for the plan, `904 (and plan A)` and `904 and its plan of Quill Harbour` are for
the chart and the plan: what is to be done there is to be done twice.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from noticeparse.readers.head_values import ChartHead, Head, HeadPart, read_panel
from noticeparse.readers.notices_before import blame

_NOT_ALONE = frozenset("except excepting excluding not without outside bar and &".split())
_JOINS = frozenset("and & with plus including also".split())
_BETWEEN = frozenset("the its their also for on".split())
_TOO = re.compile(r" (?:also|too|as well)\W*$", re.IGNORECASE)


def goes_beside(head: Head, text: str, parts: Sequence[HeadPart], at: int) -> bool:
    """Whether a part is a panel that is not meant alone; it is kept, or told as not kept.

    `except plan A` leaves out what nobody can leave out here.
    """
    part = parts[at]
    if part.kind == "PANEL_TOO":
        return _keep(head, part)
    if part.kind not in ("PANEL", "MAIN_PANEL"):
        return False
    first = at
    while first and parts[first - 1].text.lower() in _BETWEEN:
        first -= 1
    before = parts[first - 1] if first else None
    words = {one.text.lower() for one in parts[max(first - 1, 0) : at]}
    if part.kind == "MAIN_PANEL":
        is_second = bool(head.charts) and head.charts[-1].panel is not None
        return is_second and not words.isdisjoint(_JOINS) and _keep(head, part)
    is_joined = not words.isdisjoint(_JOINS) or _TOO.search(part.text) is not None
    # `802 and 803 and plan A`: it may be a plan of both.
    is_of_one = len(head.charts) == 1 or (before is not None and before.text in "([")
    if is_joined and is_of_one:
        return _keep(head, part)
    if words.isdisjoint(_NOT_ALONE):
        return False
    start = before.start if before is not None else part.start
    blame(head, "chart-head-unread", text[start : part.end].strip("()"), part)
    return True


def _keep(head: Head, part: HeadPart) -> bool:
    """Keep a panel beside what the chart before it has."""
    if not head.charts:
        return False
    panel = None if part.kind == "MAIN_PANEL" else read_panel(part.text)
    head.charts[-1].further.append(panel)
    head.charts[-1].end = max(head.charts[-1].end, part.end)
    return True


def part_panels(head: Head) -> None:
    """Make a chart of its own of each panel that shares what is said of another."""
    parted: list[ChartHead] = []
    for chart in head.charts:
        own = replace(chart, further=[])
        parted.append(own)
        for panel in chart.further:
            parted.append(replace(own, panel=panel, is_main=panel is None))
    head.charts = parted
