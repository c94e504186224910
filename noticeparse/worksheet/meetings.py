"""Whether a line or an area meets a rectangle, and where."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from noticeparse.worksheet.drawing import Box, Point


def meeting(path: Sequence[Point], box: Box, *, is_closed: bool) -> Point | None:
    """A place of a path within a box; of an area that covers the box its middle; else None."""
    closing = [path[0]] if is_closed else []
    for start, end in pairwise([*path, *closing]):
        shares = _shares(start, end, box)
        if shares is not None:
            share = sum(shares) / 2
            return start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])
    middle = (box.left + box.width / 2, box.bottom + box.height / 2)
    return middle if is_closed and _holds(path, middle) else None


def _shares(start: Point, end: Point, box: Box) -> tuple[float, float] | None:
    """From which share of a straight line to which it lies in a box (Liang and Barsky)."""
    first, last = 0.0, 1.0
    for axis, low, length in ((0, box.left, box.width), (1, box.bottom, box.height)):
        step = end[axis] - start[axis]
        if step == 0:
            if not low <= start[axis] <= low + length:
                return None
            continue
        ends = sorted(((low - start[axis]) / step, (low + length - start[axis]) / step))
        first, last = max(first, ends[0]), min(last, ends[1])
    return (first, last) if first <= last else None


def _holds(ring: Sequence[Point], at: Point) -> bool:
    """Whether a place lies in a ring: a ray from it crosses the ring an odd number of times."""
    is_inside = False
    for (x0, y0), (x1, y1) in pairwise([*ring, ring[0]]):
        if (y0 > at[1]) != (y1 > at[1]) and at[0] < x0 + (at[1] - y0) / (y1 - y0) * (x1 - x0):
            is_inside = not is_inside
    return is_inside
