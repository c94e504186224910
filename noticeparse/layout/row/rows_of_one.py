"""Rows that look like one more place of the thing above them, and are not read as such.

`Anchorage area  angle 1  P` above `angle 2  Q`, `Cable  west end  P` above `east end  Q`: the
thing above would be charted at its first place alone, and each other as a thing of its own.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.readers.features import has_kind, value_property
from noticeparse.readers.verbs import canonical_verb

_SIDE = (
    r"(?:first|second|third|fourth|other|inner|outer|upper|lower|near|far|[NS]?[EW]|[NS]"
    r"|(?:north|south)?-?(?:east|west|north|south)(?:ern|ward)?)"
)
_COUNTED = re.compile(
    r"[A-Za-z][A-Za-z. -]{1,24}[ .](?:nos?\.? ?)?(?:[0-9]{1,2}|(?-i:[A-Ha-h]))[.:)]?"
    rf"|{_SIDE} (?:end|corner|limit|side|extremity|extreme|point|edge|vertex)[.:)]?"
    r"|(?:start|beginning|finish|end|thence|then|last|next)[.:)]?",
    re.IGNORECASE,
)


_CHARACTER = re.compile(r"[A-Z][A-Za-z]{0,2}[.(]")
_DEPTH = r"[0-9]{1,3}(?:[.,_][0-9]{1,2})? ?(?:m|metres|meters)?\.?"
_DEPTHS = re.compile(
    rf"(?:the )?(?:depths?|soundings?)(?: of)?,? {_DEPTH},?(?: (?:in|at|on))?", re.IGNORECASE
)
_ONE_DEPTH = re.compile(rf"(?:and )?{_DEPTH},?(?: (?:in|at|on))?", re.IGNORECASE)
_FAR = 4
"""Columns to the right of the thing above, from which a row says which place of it it gives."""
_MOST_WORDS = 3


def hold_rows_of_one(text: str, items: Sequence[Item]) -> None:
    """Hold back such a row, and the item above it that it may belong to."""
    head: Item | None = None
    for item in items:
        if head is None or not _may_be_of(text, item, head):
            head = item
            continue
        place = item.groups[0].places[0].element
        written = {"written": text[place.start : place.end]}
        fault = Fault("place-of-another", place.start, place.end, written)
        for one in (item, head):
            if fault not in one.faults:
                one.faults.append(fault)


def _may_be_of(text: str, item: Item, head: Item) -> bool:
    """Whether a row has no verb and names no thing, but counts, or stands right of one above."""
    if item.verb_piece is not None or not item.has_place or not (item.words and head.words):
        return False
    if item.verb != head.verb:
        # Below another verb on a line of its own.
        return False
    words = " ".join(text[start:end] for start, end in item.words).strip(" ,")
    if len(words.split()) > _MOST_WORDS:
        return False
    is_one = _COUNTED.fullmatch(words) is not None or _stands_right(text, words, item, head)
    # `Q.R No 12`: a light names a thing by its character alone.
    is_light = _CHARACTER.match(words) is not None and "light" in value_property(words)
    return is_one and not (has_kind(words) or is_light or _are_depths(text, words, item, head))


def _are_depths(text: str, words: str, item: Item, head: Item) -> bool:
    """Whether a row is a depth below another one: `depths 16.1m in P` above `15.7m in Q`."""
    if canonical_verb(item.verb or "") not in ("insert", "delete"):
        return False
    above = " ".join(text[start:end] for start, end in head.words).strip(" ,")
    told = (_ONE_DEPTH.fullmatch(words), _DEPTHS.fullmatch(above))
    return None not in told and words[-1:].isalpha()


def _stands_right(text: str, words: str, item: Item, head: Item) -> bool:
    start = item.words[0][0]
    opens = not text[start - _column(text, start) + 1 : start].strip()
    is_right = opens and _column(text, start) >= _column(text, head.words[0][0]) + _FAR
    last = text[slice(*head.words[-1])].rpartition(" ")[2].strip(".:)")
    is_next = words.strip(".:)").isdigit() and last in ("0", "1")
    return is_right and (is_next or not words[:1].isdigit() or words[-1:].isalpha())


def _column(text: str, start: int) -> int:
    return start - text.rfind("\n", 0, start)
