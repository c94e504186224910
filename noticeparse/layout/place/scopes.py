"""The letters of a list within a list: which letter stands above a number `(i)`."""

from __future__ import annotations

from noticeparse.numbers import ROMAN


class Scopes:
    """Holds the last letter, under which numbers may stand."""

    def __init__(self) -> None:
        self._letter: str | None = None
        self._last = ""

    def of(self, label: str) -> str | None:
        """The letter above a number, None for a letter; the i behind an h is a letter."""
        is_number = label in ROMAN and not (label == "i" and self._last == "h")
        if not is_number and len(label) == 1:
            self._letter = label
        self._last = label
        return self._letter if is_number else None
