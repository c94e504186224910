"""The heading of a notice: geographic parts from the general to the particular, then subjects."""

from __future__ import annotations

from typing import NamedTuple

from noticeparse.readers.features import has_kind
from noticeparse.vocabulary import is_known_word, is_place

_SUBJECT_WORDS = frozenset(
    {
        "buoyage",
        "depths",
        "soundings",
        "lights",
        "wrecks",
        "rocks",
        "coastline",
        "dangers",
        "works",
        "obstructions",
        "names",
        "leading",
        "marks",
        "aids",
        "dredging",
        "diving",
        "divers",
        "barge",
    }
)


class Heading(NamedTuple):
    """The parts of a heading as written."""

    regions: list[str]
    subjects: list[str]


def read_heading(words: str) -> Heading:
    """Regions and subjects; parts stand between dashes, full stops and colons."""
    parts = [words]
    for mark in (" - ", " – ", " — ", ". ", ": ", ", ", " | "):
        parts = [piece for part in parts for piece in part.split(mark)]
    regions: list[str] = []
    subjects: list[str] = []
    names = [name for part in parts if (name := part.strip(" .,:;-–—|"))]
    for name in names:
        if subjects or (_is_subject(name) and not _is_region(name)):
            subjects.append(name)
        else:
            regions.append(name)
    if not regions and subjects:
        regions, subjects = subjects[:1], subjects[1:]
    return Heading(regions, subjects)


def _is_region(name: str) -> bool:
    """Whether a part names a place: `Sable Tooth Rocks`, `outer roads`, but `Drying rocks`."""
    words = name.split()
    if len(words) < 2:
        return False
    strange = name.istitle() and any(not is_known_word(word) for word in words)
    return strange or (is_place(words[-1]) and words[-1] not in _SUBJECT_WORDS)


def _is_subject(name: str) -> bool:
    words = name.lower().split()
    if not _SUBJECT_WORDS.isdisjoint(words):
        return True
    is_named = name.istitle() and _is_region(name)
    return has_kind(name) and not is_named and not name.isupper()
