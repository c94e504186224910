"""Characters of a text exchanged for as many others, so that no offset moves."""

from __future__ import annotations

import re
from collections.abc import Callable

from noticeparse.layout.drafts import Piece


def blanked(
    text: str, pattern: re.Pattern[str], fill: Callable[[re.Match[str]], str]
) -> tuple[str, list[Piece]]:
    """The text with each match replaced by as many characters; the marks are those changed."""
    marks: list[Piece] = []

    def replaced(match: re.Match[str]) -> str:
        new = fill(match)
        start = match.start()
        marks.extend(
            (start + i, start + i + 1)
            for i, (old, now) in enumerate(zip(match.group(), new, strict=True))
            if old != now
        )
        return new

    return pattern.sub(replaced, text), marks
