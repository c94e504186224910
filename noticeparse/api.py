"""The front door: text in, records out."""

from __future__ import annotations

from noticeparse.pipeline import read_bulletin
from noticeparse.records.bulletin import Bulletin


def parse(text: str, *, name: str | None = None) -> Bulletin:
    """Read one bulletin; never raises on any text (TypeError for what is no text)."""
    if not isinstance(text, str):
        raise TypeError(f"text must be str, not {type(text).__name__}")
    return read_bulletin(text, name=name)
