"""What makes a row unfit for use, whatever its other cells say.

Its notice cannot be told, a cell stands in the wrong column, its place is told by bearing and
distance or beside an old one, or its remark takes it back.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from noticeparse.faults import Fault
from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import Piece
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, words_of
from noticeparse.layout.row.cells import span_of
from noticeparse.layout.row.place_keys import UNKNOWN
from noticeparse.layout.row.row_limits import UNTITLED, row_limits, second_commands
from noticeparse.readers.bearings import tells_way
from noticeparse.readers.features import has_kind, value_property
from noticeparse.readers.places import radius_words, read_phrase
from noticeparse.readers.taken_back import takes_back
from noticeparse.readers.verbs import canonical_verb

_STRANGE_TO_VERBS = frozenset(
    {"position", "latitude", "longitude", "previous", "notice", "chart", "datum", "edition",
     "panel", "year", "date", "label", "count"}
)  # fmt: skip
"""Roles of columns in which no verb stands."""
_EDITION = re.compile(r"\b(?:edition|chart|publication)s?\b", re.IGNORECASE)
_FIGURES_ONLY = frozenset({"previous", "notice", "year", "edition"})


def row_faults(text: str, cells: Cells) -> Iterator[Fault]:
    """The faults of a row as such; each makes what the row says unusable."""
    for code, role in (
        ("notice-unread", "unread"), ("row-too-long", "surplus"),
        ("datum-unknown", "unknown_datum"), ("relation-unclear", UNKNOWN),
        ("cell-rest-doubtful", "rest"), ("chart-marks-unread", "chart_mark"),
        ("chart-unread", "unknown_chart"),
    ):  # fmt: skip
        if piece := span_of(cells.get(role, [])):
            yield _fault(text, code, piece)
    for piece in _misplaced(text, cells):
        yield _fault(text, "cell-misplaced", piece)
    if piece := _old_place(text, cells):
        yield _fault(text, "places-of-a-move", piece)
    if piece := _beside(text, cells):
        yield _fault(text, "offset-not-worked-out", piece)
    for piece in row_limits(text, cells):
        yield _fault(text, "cell-limits", piece)
    for piece in second_commands(text, cells):
        yield _fault(text, "verb-within-words", piece)
    for role in ("remark", UNTITLED):
        for one in cells.get(role, []):
            if "light" in value_property(text[one.start : one.end]):
                # The character of the light, under a title that does not say so.
                yield _fault(text, "cell-misplaced", (one.start, one.end))
    for role in ("remark", "status", "validity"):
        if (piece := span_of(cells.get(role, []))) and _takes_back(text, cells[role]):
            yield _fault(text, "text-action-lost", piece)


def radius_of(cells: Cells) -> Piece | None:
    """The radius that a column gives to the feature of its row."""
    return span_of(cells.get("radius", []))


def _fault(text: str, code: str, piece: Piece) -> Fault:
    return Fault(code, *piece, {"written": text[slice(*piece)]})


def _misplaced(text: str, cells: Cells) -> Iterator[Piece]:
    """Verbs and features in columns of other things, and a radius that is none."""
    if "verb" not in cells:
        for role in _STRANGE_TO_VERBS & cells.keys():
            yield from ((e.start, e.end) for e in cells[role] if e.kind == "verb")
    named = (e for role in ("feature", "old", "new") for e in cells.get(role, []))
    if not any(e.kind == "words" for e in named):
        for role in _FIGURES_ONLY & cells.keys():
            for e in cells[role]:
                words = text[e.start : e.end]
                if e.kind == "words" and has_kind(words) and not _EDITION.search(words):
                    yield e.start, e.end
    for role in ("position", "from", "to"):
        # `P; rock - Q`: a second thing in the cell of the place.
        for before, e in pairwise(cells.get(role, [])):
            if (
                before.kind == "semicolon"
                and e.kind == "words"
                and has_kind(text[e.start : e.end])
            ):
                yield e.start, e.end
    radius = radius_of(cells)
    if radius is not None:
        told = read_phrase(radius_words(text[slice(*radius)]))
        if not any(part.kind == "radius" for part in told):
            yield radius


def _old_place(text: str, cells: Cells) -> Piece | None:
    """Where a thing was, beside the place of a row that does not say where it goes."""
    placed = {role for role, cell in cells.items() if any(e.kind in PLACES for e in cell)}
    old, others = (
        placed & {"from", "old"},
        placed - {"from", "old", "remark", "status", "validity"},
    )
    moves = canonical_verb(words_of(text, cells.get("verb", []))) == "move"
    if not old or not others or others & {"to", "new"} or moves:
        return None
    return span_of(cells[min(old)])


def _beside(text: str, cells: Cells) -> Piece | None:
    """A bearing, distance or direction in a column of its own, beside the one place of a row."""
    places = [e for cell in cells.values() for e in cell if e.kind in PLACES]
    halves = sum(e.kind == "half" for e in places)
    if len(places) - halves // 2 > 1:
        # Not the way to the feature, but that of a line or sector.
        return None
    if told := cells.get("offset", []):
        return span_of(told)
    cell = cells.get("position") or cells.get("latitude", []) + cells.get("longitude", [])
    at = next((i for i, e in enumerate(cell) if e.kind in PLACES), len(cell))
    behind = (e for e in cell[at:] if e.kind == "words" and _lies_off(text[e.start : e.end]))
    return next(((e.start, e.end) for e in behind), None)


def _lies_off(words: str) -> bool:
    return tells_way(words) and not words.strip(" ,.;()").lower().startswith("close")


def _takes_back(text: str, cell: list[Element]) -> bool:
    """Whether a remark says that its row does not hold, or is a command or place of its own."""
    words = words_of(text, cell).strip()
    if any(e.kind in PLACES for e in cell) or takes_back(words):
        return True
    first = words.split()[0].lower().strip(".,:;") if words else ""
    is_command = canonical_verb(first) is not None and not first.endswith(
        ("ed", "n", "ing", "laid")
    )
    return is_command and has_kind(words)
