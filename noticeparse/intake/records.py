"""What the reading of a file gives: its text, and what is to be said of it.

Offsets count in the text as it is given, code points, but for the faults of decoding.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault


class NotReadable(ValueError):
    """A file that cannot be read at all; the words say why and what to do: `is a scan: …`."""


class Place(NamedTuple):
    """Where a stretch of the text stands: its page, and its upper left corner on it."""

    start: int
    end: int
    page: int
    """From 1."""
    x_mm: float
    """Millimetres from the left edge of the page as it is shown."""
    y_mm: float
    """Millimetres from its upper edge."""


def page_at(places: Sequence[Place], offset: int) -> int | None:
    """The page on which the character at an offset stands; None for a text without pages."""
    at = bisect_right(places, offset, key=lambda place: place.start) - 1
    if at < 0:
        return places[0].page if places else None
    return places[at].page


class Intake(NamedTuple):
    """A text, the SHA-256 of the bytes it came from, its media type and the faults of decoding."""

    text: str
    sha256: str
    media_type: str
    faults: tuple[Fault, ...]
    """Faults of the bytes; offsets count in the repaired text."""
    doubts: tuple[Fault, ...] = ()
    """What the file shows and a text cannot: an action with such an error is not usable."""
    furniture: tuple[tuple[int, int], ...] = ()
    """The heads and feet of pages."""
    places: tuple[Place, ...] = ()
    """One for each line of a page, in order; none for kinds without pages."""
