"""The international numbers of the charts of a head: `INT 9333`."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.readers.head_values import Head, HeadPart
from noticeparse.readers.notices_before import blame


def international_number(text: str) -> str:
    """`INT 9333` of `(INT 9333)` or `International No: 9333`."""
    return "INT " + "".join(char for char in text if char.isdigit())


def with_international(parts: tuple[HeadPart, ...]) -> tuple[HeadPart, ...]:
    """The parts, with numbers in the bracket of such a one as more of them: `(INT 9802, 9803)`."""
    made: list[HeadPart] = []
    is_open = False
    for part in parts:
        if part.kind == "INTERNATIONAL":
            is_open = (is_open or part.text.startswith("(")) and not part.text.endswith(")")
        elif is_open and part.kind == "CHART_NUMBER":
            part = part._replace(kind="INTERNATIONAL")
        elif part.kind != "COMMA":
            is_open = False
        made.append(part)
    return tuple(made)


def share_international(head: Head, parts: Sequence[HeadPart]) -> None:
    """`Charts 802 and 803 (INT 1503, INT 1504)`: as many numbers as charts, behind all of them."""
    found = [part for part in parts if part.kind == "INTERNATIONAL"]
    behind = all(chart.start < part.start for chart in head.charts for part in found)
    if len(head.charts) > 1 and len(found) < len(head.charts):
        _tell_listed(head, parts)
    if len(found) < 2 or not behind:
        return
    if len(found) != len(head.charts):
        _hold_back(head, found)
        return
    for chart, part in zip(head.charts, found, strict=True):
        chart.international = international_number(part.text)
    places = {part.start for part in found}
    head.faults = [
        one for one in head.faults if one.code != "chart-head-unread" or one.start not in places
    ]


def _hold_back(head: Head, found: Sequence[HeadPart]) -> None:
    """`Charts 802, 803, 804 (INT 9802, 9803)`: which of them have these is not said."""
    if len(head.charts) > 1 and any("INT" not in part.text.upper() for part in found):
        for chart in head.charts:
            chart.international = None
        told = {fault.start for fault in head.faults}
        for part in found:
            if part.start not in told:
                blame(head, "chart-head-unread", part.text.strip("()"), part)


def _tell_listed(head: Head, parts: Sequence[HeadPart]) -> None:
    """`Charts 802 - 803 - INT 9871`: that of the chart before it, or another chart."""
    for first, joint, number, before, part in zip(*(parts[at:] for at in range(5)), strict=False):
        is_alike = joint.text == before.text and (joint.kind == "COMMA" or joint.text == "-")
        is_listed = is_alike and first.kind == number.kind == "CHART_NUMBER"
        if part.kind != "INTERNATIONAL" or part.text[0] == "(" or not is_listed:
            continue
        for chart in head.charts:
            if chart.international == international_number(part.text):
                chart.international = None
                blame(head, "chart-head-unread", part.text, part)
