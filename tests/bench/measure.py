"""What the measurements share: clocks, medians, caches emptied, tables printed."""

from __future__ import annotations

import gc
import platform
import sys
import time
from collections.abc import Callable, Sequence
from statistics import median
from typing import Any

_MEMOISED = ("noticeparse", "tests.bench")


def seconds(work: Callable[[], Any]) -> float:
    """The processor time that one call takes, which other programs disturb least.

    What earlier calls left behind is cleared away first, so that no call pays for another.
    """
    gc.collect()
    start = time.process_time()
    work()
    return time.process_time() - start


def wall_seconds(work: Callable[[], Any]) -> float:
    """The time that one call takes by the clock, for work done in other processes."""
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


def middle(times: Sequence[float]) -> float:
    """The median."""
    return median(times)


def forget() -> None:
    """Empty the bounded caches of the readers, so that no run profits from the one before.

    Parsers and tables, which are built once, stay.
    """
    for name, module in list(sys.modules.items()):
        if not name.startswith(_MEMOISED):
            continue
        for value in list(vars(module).values()):
            bound = getattr(value, "cache_parameters", None)
            if bound is not None and bound()["maxsize"] is not None:
                value.cache_clear()


def machine() -> str:
    """Where the figures were taken."""
    return f"Python {platform.python_version()} on {platform.machine()}"


def table(titles: Sequence[str], rows: Sequence[Sequence[str]]) -> str:
    """Rows under titles, the first column to the left, the others to the right."""
    widths = [max(len(row[i]) for row in (titles, *rows)) for i in range(len(titles))]
    lines = []
    for row in (titles, *rows):
        first, *others = (
            cell.rjust(width) if i else cell.ljust(width)
            for i, (cell, width) in enumerate(zip(row, widths, strict=True))
        )
        lines.append("  ".join((first, *others)).rstrip())
    return "\n".join(lines)
