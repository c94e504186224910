"""Rows that look like one more place of the thing above them, and are not read as such.

`Anchorage area  angle 1  P` above `angle 2  Q`, `Cable  west end  P` above `east end  Q`: the
thing above would be charted at its first place alone, and each other as a thing of its own.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.readers.features import has_kind

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


def hold_rows_of_one(text: str, items: Sequence[Item]) -> None:
    """Hold back such a row, and the item above it that it may belong to."""
    for above, item in pairwise(items):
        if item.verb_piece is not None or not item.has_place or not item.words:
            continue
        words = " ".join(text[start:end] for start, end in item.words).strip(" ,")
        if _COUNTED.fullmatch(words) is None or has_kind(words):
            continue
        place = item.groups[0].places[0].element
        fault = Fault(
            "place-of-another", place.start, place.end, {"written": text[place.start : place.end]}
        )
        item.faults.append(fault)
        above.faults.append(fault)
