"""Stretches of the original text.

A span is what a person can point at: code-point offsets into the text as it was given, before any
repair, with the 1-based line and column of its start.  Nothing here knows what the text means.
"""

from bisect import bisect_right

from pydantic import BaseModel, ConfigDict, Field


class Record(BaseModel):
    """A frozen record of the output contract; key order is field order."""

    model_config = ConfigDict(frozen=True, extra="forbid", ser_json_inf_nan="null")


class Span(Record):
    """Offsets `start` (0-based) to `end` (exclusive) in the original text, and where it starts."""

    start: int = Field(description="0-based offset of the first code point")
    end: int = Field(description="offset behind the last code point")
    line: int = Field(description="1-based line of the start")
    column: int = Field(description="1-based column of the start, in code points")


class LineIndex:
    """Line and column of every offset of one text; a line ends at a line feed and nowhere else."""

    def __init__(self, text: str, *, first_offset: int = 0, first_line: int = 1) -> None:
        starts = [0]
        at = text.find("\n")
        while at >= 0:
            starts.append(at + 1)
            at = text.find("\n", at + 1)
        self._starts = starts
        self._first_offset = first_offset
        self._first_line = first_line

    def span(self, start: int, end: int) -> Span:
        """The span from `start` to `end`, offsets counted from the start of this text."""
        row = bisect_right(self._starts, start) - 1
        return Span(
            start=start + self._first_offset,
            end=end + self._first_offset,
            line=row + self._first_line,
            column=start - self._starts[row] + 1,
        )
