"""A bar on standard error for long work that a person is waiting for.

Only where standard error is a terminal, rich is installed, the data goes elsewhere and the input
is long; otherwise nothing at all is written.
"""

from __future__ import annotations

import importlib.util
import sys
from typing import TYPE_CHECKING

from noticeparse.console.outlet import say

if TYPE_CHECKING:
    from rich.progress import Progress as Bar

LONG_BYTES = 1_000_000


class Progress:
    """Counts the inputs read; `count` is how many there are."""

    def __init__(self, count: int, *, is_wanted: bool) -> None:
        self._count = count
        self._is_wanted = is_wanted and _is_possible()
        self._bar: Bar | None = None

    def begin(self, size: int) -> None:
        """An input of `size` bytes is about to be read; the first long one brings up the bar."""
        if self._bar is None and self._is_wanted and (self._count > 1 or size > LONG_BYTES):
            self._bar = _new_bar(is_counted=self._count > 1)
            total = self._count if self._count > 1 else None
            self._bar.add_task("reading", total=total, rate="")
            self._bar.start()

    def advance(self) -> None:
        """One input is done."""
        if self._bar is not None:
            task = self._bar.tasks[0]
            self._bar.advance(task.id)
            speed = task.finished_speed or task.speed
            self._bar.update(task.id, rate=f"{speed:.1f} files/s" if speed else "")

    def say(self, line: str) -> None:
        """One line to standard error, above the bar."""
        if self._bar is None:
            say(line)
        else:
            self._bar.console.print(line, markup=False, highlight=False, soft_wrap=True)

    def end(self) -> None:
        """Take the bar away."""
        if self._bar is not None:
            self._bar.stop()
            self._bar = None


def _is_possible() -> bool:
    return (
        sys.stderr is not None
        and sys.stderr.isatty()
        and importlib.util.find_spec("rich") is not None
    )


def _new_bar(*, is_counted: bool) -> Bar:
    from rich import progress
    from rich.console import Console

    columns = progress.Progress.get_default_columns()
    if is_counted:
        columns = (
            progress.TextColumn("{task.description}"),
            progress.BarColumn(),
            progress.MofNCompleteColumn(),
            progress.TextColumn("{task.fields[rate]}"),
            progress.TimeRemainingColumn(),
        )
    return progress.Progress(
        *columns,
        console=Console(stderr=True),
        transient=True,
        redirect_stdout=False,
        redirect_stderr=False,
    )
