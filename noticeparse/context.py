"""The text that records are built from, and the way back to the original."""

from __future__ import annotations

from bisect import bisect_left

from noticeparse.layout.drafts import Piece
from noticeparse.records.chart import Datum
from noticeparse.records.depth import DepthUnit
from noticeparse.records.reference import NoticeRef
from noticeparse.spans import LineIndex, Span
from noticeparse.text import RepairedText


class Context:
    """The repaired text, its lines, what of it is furniture, and the edition's year."""

    def __init__(
        self,
        repaired: RepairedText,
        text: str,
        ignored: list[Piece],
        *,
        has_years_in_front: bool = False,
        number_sign: str = "/",
    ) -> None:
        self.repaired = repaired
        self.text = text
        """The repaired text, with the quote marks of mail blanked out."""
        self.ignored = sorted(ignored)
        self._ignored_ends = [end for _, end in self.ignored]
        self.lines = LineIndex(repaired.given)
        self.year: int | None = None
        self.datum: Datum | None = None
        """The datum said of all charts, in front of the first notice."""
        self.depth_unit: DepthUnit | None = None
        """The unit of the depths said of all charts."""
        self.corrected: dict[str, tuple[NoticeRef, str]] = {}
        """The notices last on the charts, in front of the first notice, until a section has it."""
        self.has_years_in_front = has_years_in_front
        """Whether `text` has year and number of its notices exchanged."""
        self.number_sign = number_sign
        """What stands between number and year, where `text` has a slash."""
        self._is_unrepaired = not repaired.repairs and repaired.given == repaired.text

    @property
    def is_unrepaired(self) -> bool:
        """Whether the text was read just as it was given."""
        return self._is_unrepaired

    def span(self, start: int, end: int) -> Span:
        """The span in the original text of a stretch of the repaired text."""
        first = self.repaired.original(start)
        return self.lines.span(first, max(first, self.repaired.original_end(max(end, start))))

    def written(self, start: int, end: int) -> str:
        """The words of a stretch as they stand in the original, without furniture, on one line."""
        row = bisect_left(self._ignored_ends, start + 1)
        if row == len(self.ignored) or self.ignored[row][0] >= end:
            return " ".join(self._given(start, end).split())
        parts, at = [], start
        while row < len(self.ignored) and self.ignored[row][0] < end:
            parts.append(self._given(at, self.ignored[row][0]))
            at = max(at, self.ignored[row][1])
            row += 1
        parts.append(self._given(at, end))
        return " ".join(" ".join(parts).split())

    def _given(self, start: int, end: int) -> str:
        if end <= start:
            return ""
        repaired = self.repaired
        if not repaired.repairs:
            return repaired.given[start:end]
        return repaired.given[repaired.original(start) : repaired.original_end(end)]

    def joined(self, pieces: list[Piece]) -> str:
        """Pieces as written, joined by blanks."""
        if len(pieces) == 1:
            # As most have: this is asked for every item again and again.
            return self.written(*pieces[0])
        return " ".join([self.written(start, end) for start, end in pieces])
