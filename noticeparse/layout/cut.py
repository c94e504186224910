"""Where a text that is too long to be held as a whole may be cut.

A cut falls before a line on which nothing above it bears, but for the front matter: the head of a
notice, in a list by chart that of a chart, or a row that names notice, chart and verb.
"""

from __future__ import annotations

from noticeparse.layout.lines import Line


class Cut:
    """The line before which the layout ends, of those that were met."""

    def __init__(self, text: str) -> None:
        self._text = text
        self.least: int | None = None
        """The layout ends before the first such line from this offset on; None: it goes on."""
        self.end: int | None = None

    def falls_before(self, line: Line) -> bool:
        """To be asked before anything of such a line is taken: whether the layout ends here."""
        if line.start and self._text[line.start - 1] != "\n":
            # Part of a line, cut at a notice that opens within it.
            return False
        if self.least is None or line.start < self.least:
            return False
        self.end = line.start
        return True
