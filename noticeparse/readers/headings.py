"""The heading of a notice: geographic parts from the general to the particular, then subjects."""

from __future__ import annotations

from typing import NamedTuple

from noticeparse.readers.features import has_kind

_SUBJECT_WORDS = frozenset(
    {"buoyage", "depths", "soundings", "lights", "wrecks", "rocks", "coastline", "dangers", "works",
     "obstructions", "names", "leading", "marks", "aids", "dredging", "diving", "divers", "barge"}
)  # fmt: skip


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
    for part in parts:
        name = part.strip(" .,:;-–—|")
        if not name:
            continue
        if subjects or _is_subject(name):
            subjects.append(name)
        else:
            regions.append(name)
    if not regions and subjects:
        regions, subjects = subjects[:1], subjects[1:]
    return Heading(regions, subjects)


def _is_subject(name: str) -> bool:
    words = name.lower().split()
    if not _SUBJECT_WORDS.isdisjoint(words):
        return True
    return has_kind(name) and (len(words) == 1 or not name.istitle()) and not name.isupper()
