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
            self._bar = _new_bar()
            self._bar.add_task("reading", total=self._count if self._count > 1 else None)
            self._bar.start()

    def advance(self) -> None:
        """One input is done."""
        if self._bar is not None:
            self._bar.advance(self._bar.task_ids[0])

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


def _new_bar() -> Bar:
    from rich.console import Console
    from rich.progress import Progress as Bar

    return Bar(
        console=Console(stderr=True), transient=True, redirect_stdout=False, redirect_stderr=False
    )
