"""Filled-in forms: a line of boxes, of which the crossed one tells the verb, above keys.

    [x] new   [ ] taken away   [ ] moved   [ ] changed
         What     West cardinal light-buoy, VQ(9)10s
         Where    47° 33.12' S   124° 50.41' W

Each such line becomes the key of a record, and the words below it that have a gap behind them its
keys.  Where no box is crossed, or several are, the record has no verb that anybody could read.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.column.columns import key_role
from noticeparse.layout.drafts import Piece
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.verbs import Verb, canonical_verb

_BOX = re.compile(
    r"[\[(](?P<cross>[xX✓✔✗✘*+ ]?)[\])] ?(?P<words>[A-Za-z][A-Za-z -]{1,30}?)"
    r"(?=[ \t,;/|]*(?:[\[(]|\n|\Z))"
)
_FEWEST = 2
"""Boxes of a line between which somebody chooses."""
_CHANGE = ("change", "changes", "alteration", "amendment")


def with_boxes_read(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[Piece]]:
    """The lines with boxes and the keys below them as keys, and what is only printed there."""
    found: list[Line] = []
    printed: list[Piece] = []
    is_below = False
    for line in lines:
        boxes = _boxes(text, line)
        is_below = boxes is not None or (is_below and not line.is_blank)
        if boxes is not None:
            read, pieces = boxes
            printed += pieces
        else:
            read = _with_key(text, line) if is_below else line
            if is_below and read.elements[0].kind == "key":
                printed.append((read.elements[0].start, read.elements[0].end))
        found.append(read)
    return found, printed


def _boxes(text: str, line: Line) -> tuple[Line, list[Piece]] | None:
    """A line of nothing but boxes as the key of a verb, and the boxes that say nothing."""
    if not line.elements or text[line.elements[0].start] not in "[(":
        return None
    start, end = line.elements[0].start, line.elements[-1].end
    boxes = list(_BOX.finditer(text, start, end))
    rest = _BOX.sub("", text[start:end]).strip(" \t,;/|.")
    verbs = [_verb(box["words"]) for box in boxes]
    if len(boxes) < _FEWEST or rest or None in verbs:
        return None
    crossed = [box for box in boxes if box["cross"].strip()]
    if len(crossed) == 1:
        own = crossed[0]
        piece = own.span("words")
        # A verb stands for itself; `new` is no verb, and what it stands for goes with it.
        is_verb = canonical_verb(own["words"]) is not None
        verb = Element("verb", *piece, True, None if is_verb else verbs[boxes.index(own)])
    else:
        # None, or several: which is meant is not guessed.
        piece = (start, end)
        verb = Element("verb", *piece, True, "")
    key = Element("key", start, start + 1, True, "verb")
    return line._replace(elements=(key, verb)), [(start, piece[0]), (piece[1], end)]


def _verb(words: str) -> Verb | None:
    """What a box stands for: `new` is what is to be inserted."""
    return "insert" if words.strip().lower() in ("new", "new feature") else canonical_verb(words)


def _with_key(text: str, line: Line) -> Line:
    """A line of a record with the words that open it as its key; any other line as it is."""
    first, *values = line.elements
    words = text[first.start : first.end].strip(" :").lower()
    if first.kind not in ("words", "verb", "key") or not values or not values[0].gap:
        return line
    placed = any(one.kind in ("point", "half", "reference") for one in values)
    role = "change" if words in _CHANGE else key_role(words, has_places=placed)
    if role is None:
        return line
    return line._replace(elements=(first._replace(kind="key", value=role), *values))
