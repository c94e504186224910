"""Items close below a remark, under the verb above it: `Note: …`, and on the next line `rock P`.

A line with a thing and its place, that tells nothing in a sentence, is no more of a remark whose
own sentence has ended.  Where the remark may go on, or speaks of what stands below it, the items
are held back; so is the item above that takes places alone.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.evidence import OPEN_END, lead_index
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Line
from noticeparse.layout.line.joints import opens_note
from noticeparse.readers.features import has_kind
from noticeparse.readers.places import is_connector, split_phrase

_TELLS = re.compile(
    r"\b(?:is|are|was|were|be|been|has|have|had|lies?|keeps?|will|would|should|must|shall|may|can"
    r"|might|could|not|until|unless|if|when|while|because|that|which)\b",
    re.IGNORECASE,
)
_SPEAKS_OF_BELOW = re.compile(
    r"\b(?:following|below|follows?|these|those|(?:listed|given|shown|named) (?:here|under))\b|:$",
    re.IGNORECASE,
)
_ARTICLES = ("the ", "a ", "an ", "this ", "these ", "those ", "all ", "both ", "and ", "or ")
_ENDS = (".", "!", ".)", '."', ".]")
_KEY = re.compile(
    r"[ \t]*(?:[A-Za-z.]{2,12}(?: [a-z]{2,8})?[:.]|[^\w\s]{1,3}|[¹²³⁴⁵⁶⁷⁸⁹]{1,2})[ \t]+"
)
_IN_BRACKETS = re.compile(r"\([^()]{1,60}\)")
_SHORT = 50
"""Characters of a line that no margin breaks off."""


class HeldBelow(NamedTuple):
    """The lines of items or places that a remark above may speak of, and the remark's own."""

    start: int
    end: int
    remark: Piece


class Parted(NamedTuple):
    """How many lines of a paragraph are the remark, and what is held back below it."""

    length: int
    held: HeldBelow | None


def part_remark(text: str, block: Sequence[Line], following: Sequence[Line]) -> Parted:
    """Where the items below a remark begin; the length of the paragraph where none does.

    `following` are the lines below the paragraph.
    """
    for at in range(1, len(block)):
        if not _is_item(text, block[at], [*block[at + 1 :], *following]) or _breaks_off(
            text, block[at - 1]
        ):
            continue
        if _is_place(text, block[at]) and not _ends(text, block[at - 1]):
            # `Keep clear of:` and the place below.
            continue
        remark = block[0].elements[0].start, block[at - 1].elements[-1].end
        if not (_is_place(text, block[at]) or _may_go_on(text, block[:at], block[at])):
            return Parted(at, None)
        return Parted(at, HeldBelow(block[at].start, block[-1].end, remark))
    if following and not following[0].is_blank and _is_bare_place(text, following[0]):
        # `(e)  P` below a remark of two lines, of which the second may be its thing.
        remark = block[0].elements[0].start, block[-1].elements[-1].end
        return Parted(len(block), HeldBelow(following[0].start, following[0].end, remark))
    return Parted(len(block), None)


def ends_above(text: str, remark: Sequence[Line], line: Line) -> bool:
    """Whether a remark behind its key surely ends above a line, which is an item of its own."""
    if not _is_item(text, line, ()) or _is_place(text, line) or _breaks_off(text, remark[-1]):
        return False
    return not _may_go_on(text, remark, line)


def hold_below_remarks(text: str, items: Sequence[Item], held: Sequence[HeldBelow]) -> None:
    """Hold back the items of such lines."""
    for item in items:
        starts = [start for start, _ in item.pieces]
        below = next(
            (one for one in held if any(one.start <= at < one.end for at in starts)), None
        )
        if below is not None:
            written = " ".join(text[slice(*below.remark)].split())
            item.faults.append(Fault("sentence-under-verb", *below.remark, {"written": written}))


def _stands_in(item: Item, below: HeldBelow) -> bool:
    return any(below.start <= start < below.end for start, _ in item.pieces)


def _is_item(text: str, line: Line, below: Sequence[Line]) -> bool:
    """Whether a line names a thing and has its place, or opens the line below with it."""
    if line.is_blank or not line.has_only("words", "semicolon", *PLACES):
        return False
    if _is_place(text, line):
        return True
    if opens_note(text[line.elements[0].start : line.end]):
        return False
    places = [index for index, element in enumerate(line.elements) if element.kind in PLACES]
    said = " ".join(text[e.start : e.end] for e in line.elements if e.kind == "words")
    if _TELLS.search(said) or said.lower().startswith(_ARTICLES):
        return False
    if not places:
        if not below or below[0].is_blank or not _opens_with_place(below[0]):
            return False
        return not text[line.start : line.end].rstrip().endswith(".") and _names(said)
    if places[0] == 0:
        return _names(said)
    first = line.elements[places[0]]
    return _names(text[line.elements[lead_index(line)].start : first.start])


def _opens_with_place(line: Line) -> bool:
    first = (
        line.elements[lead_index(line) :] if line.elements[0].kind == "label" else line.elements
    )
    return bool(first) and first[0].kind in PLACES


def _is_bare_place(text: str, line: Line) -> bool:
    behind = line._replace(elements=line.elements[lead_index(line) :])
    is_labelled = line.elements[0].kind == "label"
    return _is_place(text, behind if is_labelled else line)


def _is_place(text: str, line: Line) -> bool:
    """Whether a line is a place and no more: one of an item above, or of what the remark tells."""
    if line.is_blank or not line.has(*PLACES) or not line.has_only("words", "semicolon", *PLACES):
        return False
    words = [text[e.start : e.end] for e in line.elements if e.kind == "words"]
    return all(is_connector(_IN_BRACKETS.sub("", one)) for one in words)


def _names(words: str) -> bool:
    """Whether words name a thing, and do not only lead to a place."""
    return has_kind(words) and split_phrase(words.strip()).description_end > 0


def _breaks_off(text: str, line: Line) -> bool:
    """Whether a line of a remark surely goes on below it: `keep clear of the`."""
    words = text[line.start : line.end].rstrip()
    return words.endswith((",", ";", "-", "–", "/", "&", "(")) or (
        words.split()[-1].lower() in OPEN_END
    )


def _ends(text: str, line: Line) -> bool:
    return text[line.start : line.end].rstrip().endswith(_ENDS)


def _may_go_on(text: str, remark: Sequence[Line], line: Line) -> bool:
    """Whether what stands below may be more of a remark, or what it speaks of."""
    said = " ".join(text[remark[0].start : remark[-1].end].split())
    if _SPEAKS_OF_BELOW.search(said) is not None:
        return True
    key = _KEY.match(text, remark[0].start, remark[0].end)
    column = line.elements[0].start - line.start
    if key is not None and key.end() - remark[0].start == column:
        # It hangs where the words behind `Note:` begin.
        return True
    return not (said.endswith(_ENDS) or len(text[remark[-1].start : remark[-1].end]) < _SHORT)
