"""Cuts a text into stretches that may be read one after the other."""

from __future__ import annotations

from collections.abc import Iterator


def chunks(text: str, least: int = 2000) -> Iterator[tuple[int, int]]:
    """Stretches that end at a blank line, so that no coordinate is cut."""
    start = 0
    while start < len(text):
        end = text.find("\n\n", start + least)
        end = len(text) if end < 0 else end + 1
        yield start, end
        start = end
