"""What `tidy` does: bulletins in, the canonical layout out, and a count of what is not in it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from noticeparse.console.chart_file import ChartFile
from noticeparse.console.commands import write_pieces
from noticeparse.console.outlet import Outlet, say
from noticeparse.console.session import Session
from noticeparse.console.settings import Settings
from noticeparse.console.statuses import READ, WITH_ERRORS
from noticeparse.writers.tidy_out import Tidying


def tidy(files: Sequence[str]) -> int:
    """Write the bulletins of `files` anew; 1 where something is left out or is in error."""
    outlet = Outlet()
    session = Session(files, Settings(), ChartFile(None, READ), is_watched=outlet.is_terminal())
    tidying = Tidying()
    is_any_read = False

    def pieces() -> Iterator[str]:
        nonlocal is_any_read
        for reading in session.readings():
            if is_any_read:
                yield "\n"
            is_any_read = True
            yield from tidying.pieces(reading.bulletin, reading.text)

    if write_pieces(outlet, pieces()) and is_any_read:
        say(tidying.line())
    return session.status if tidying.is_whole else max(session.status, WITH_ERRORS)
