"""The columns of a chart list, its rows before they are judged, and what is wrong with them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import NamedTuple

from noticeparse.catalogue import ENTRIES
from noticeparse.errors import NoticeParseError
from noticeparse.records.finding import Finding
from noticeparse.spans import LineIndex

LIMITS = ("south", "west", "north", "east")
NEEDED = ("number", "scale", *LIMITS)
"""Columns without which no position can be put on the sheet."""
COLUMNS = (
    "number", "panel", "title", "scale", "scale_latitude", *LIMITS, "depth_unit", "datum",
    "edition", "edition_date", "last_notice",
)  # fmt: skip

_LONGEST_QUOTE = 40


class Slip(NamedTuple):
    """A code, its values, the stretch of the file, and the chart."""

    code: str
    values: dict[str, str]
    start: int
    end: int
    chart: str | None = None

    def finding(self, lines: LineIndex) -> Finding:
        """In the words of the catalogue."""
        entry = ENTRIES[self.code]
        values = {name: _shortened(value) for name, value in self.values.items()}
        return Finding(
            code=entry.code,
            severity=entry.severity,
            message=entry.message.format(**values),
            hint=entry.hint,
            span=lines.span(self.start, self.end),
            notice=None,
            chart=self.chart,
            paths=[],
        )


class Row(NamedTuple):
    """What a row or feature says, by column, blank values left out; and where it stands."""

    values: dict[str, str]
    start: int
    end: int

    def slip(self, code: str, **values: str) -> Slip:
        """Something wrong with the row."""
        return Slip(code, values, self.start, self.end, self.values.get("number"))


class Rows(NamedTuple):
    """The rows of a file, and what was wrong before they could be judged."""

    rows: list[Row]
    slips: list[Slip]


def unknown_columns(names: Iterable[str], start: int, end: int) -> Iterator[Slip]:
    """One slip for each name that no column of a chart list has."""
    for name in dict.fromkeys(names):
        if name not in COLUMNS:
            yield Slip("chart-list-column-unknown", {"written": name}, start, end)


def column_name(written: str) -> str:
    """`Scale Latitude` and `scale-latitude` are the column `scale_latitude`."""
    return "_".join(written.casefold().replace("-", " ").replace("_", " ").split())


def not_a_list(slip: Slip, lines: LineIndex) -> NoticeParseError:
    """The exception for a file that is no chart list."""
    return NoticeParseError(slip.finding(lines))


def _shortened(value: str) -> str:
    words = " ".join(value.split())
    return words if len(words) <= _LONGEST_QUOTE else words[: _LONGEST_QUOTE - 1] + "…"
