"""What the cells of a row say against doing it, or not yet: a status, a day, a second verb."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import Piece
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, words_of
from noticeparse.readers.dates import MONTH
from noticeparse.readers.features import has_kind
from noticeparse.readers.references import status_in_words

UNTITLED = "untitled"
"""The role of what stands in columns whose titles nobody knows."""
_HOLDS = frozenset(
    "new active current confirmed definitive final permanent published issued open valid"
    " ok yes y nm ntm c - -- --- none nil charted lit unlit".split()
) | {"in force", "in effect", "in use"}
_DAY = (
    rf"(?:[0-9]{{1,2}}(?:st|nd|rd|th)?[ .-]{{0,2}}{MONTH}"
    r"|[0-9]{1,2}[./][0-9]{1,2}[./][0-9]{2,4})"
)
_FROM_A_DAY = re.compile(
    r"\b(?:from|until|till|by|effective|w\.?e\.?f\.?|as of|not before|after|before|starting"
    rf"|commencing|valid)\b:? (?:the |on |from )?{_DAY}",
    re.IGNORECASE,
)
_ONE_DAY = re.compile(rf"{_DAY}(?:[ ,.]{{1,2}}[0-9]{{2,4}})?", re.IGNORECASE)


def row_limits(text: str, cells: Cells) -> Iterator[Piece]:
    """The stretches of cells that keep a row from being carried out as it stands."""
    status = words_of(text, cells.get("status", [])).strip()
    if status and not _holds(status, has_number="notice" in cells):
        yield _extent(cells["status"])
    for element in cells.get("remark", []):
        if _FROM_A_DAY.search(text[element.start : element.end]):
            yield element.start, element.end
    for role in ("from", "to"):
        if _ONE_DAY.fullmatch(words_of(text, cells.get(role, [])).strip()):
            # `Start  End` are days, and no places.
            yield _extent(cells[role])
    for element in cells.get(UNTITLED, []):
        if element.kind == "point" or _ONE_DAY.fullmatch(text, element.start, element.end):
            yield element.start, element.end


def _holds(status: str, *, has_number: bool) -> bool:
    """Whether a row of this status is to be carried out; of a notice that it names, if marked."""
    told = status_in_words(status)
    if told is None:
        return status.lower().strip(" .") in _HOLDS or has_kind(status)
    return told == "permanent" or has_number


def second_commands(text: str, cells: Cells) -> Iterator[Piece]:
    """Verbs within the words of a row: `buoy; insert light-buoy` is more than one command."""
    for role in ("verb", "feature"):
        cell = cells.get(role, [])
        for index, element in enumerate(cell):
            before = [one for one in cell[:index] if one.kind == "words"]
            if element.kind == "verb" and before and has_kind(words_of(text, before)):
                yield element.start, element.end
    yield from _behind_place(text, cells)


def _behind_place(text: str, cells: Cells) -> Iterator[Piece]:
    """A second command with its thing behind the place of a row: `P; INSERT wreck - Q`."""
    by_start = {e.start: e for cell in cells.values() for e in cell}
    row = [by_start[start] for start in sorted(by_start)]
    first = next((at for at, one in enumerate(row) if one.kind == "verb"), len(row))
    place = next((at for at in range(first, len(row)) if row[at].kind in PLACES), len(row))
    second = next((at for at in range(place, len(row)) if row[at].kind == "verb"), len(row))
    if has_kind(words_of(text, [one for one in row[second + 1 :] if one.kind == "words"])):
        yield row[second].start, row[second].end


def _extent(cell: Sequence[Element]) -> Piece:
    return cell[0].start, cell[-1].end
