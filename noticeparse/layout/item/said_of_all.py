"""What is said behind the last item of a list of all its items: `(both PA)`, `All with topmark`.

Such words are those of each item.  Where it is open which items are meant they are held back.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.item.classes_told import names_kind
from noticeparse.readers.features import value_property

_OF_ALL = re.compile(
    r"[ ,.;]*(?P<bracket>[(\[])?(?P<count>both|all|each)(?: of)?"
    r"(?: (?:them|these|those|the above|above|items))?(?: (?:are|is|being|to be|marked|charted))?"
    r"[ :,]{1,3}(?P<said>[^()\[\]\n]{2,60}?)[)\]]?[ .;]*",
    re.IGNORECASE,
)
_PLACED = re.compile(r"positions?\b", re.IGNORECASE)
_PAIR = 2


def give_said_of_all(text: str, items: Sequence[Item]) -> None:
    """Give each item of a list what is said of all behind the last of them."""
    begin = 0
    for at, item in enumerate(items):
        pieces = item.tail or item.words
        told = _OF_ALL.fullmatch(text, *pieces[-1]) if pieces and item.has_place else None
        if told is None or (pieces is item.words and len(pieces) < _PAIR):
            continue
        # What was said of the items above another such line ends with it.
        before, begin = items[begin : at + 1], at + 1
        group = list(_list_of(text, before))
        if len(group) < _PAIR or not _says(told["said"]):
            continue
        others = [one for one in before[: -len(group)] if one.verb == item.verb]
        is_known = "unknown" not in value_property(told["said"])
        is_pair = told["count"].lower() != "both" or len(group) == _PAIR
        if not (is_known and is_pair):
            _hold(text, [*others, *group], told.span("said"))
            continue
        pieces[-1] = told.span("said")
        for one in group[:-1]:
            one.tail.append(told.span("said"))
        if told["count"].lower() == "all":
            _hold(text, others, told.span("said"))


def _says(said: str) -> bool:
    """Whether words say something of things, and name no other: `PA`, not `charts`."""
    roles = value_property(said)
    if _PLACED.match(said) is not None:
        return True
    return bool(roles - {"unknown", "plain"}) and (
        said.lower().startswith(("with ", "on ")) or not names_kind(said)
    )


def _list_of(text: str, items: Sequence[Item]) -> Iterator[Item]:
    """The items of the list that the last one ends, in text order."""
    last = items[-1]
    found = [last]
    for one in reversed(items[:-1]):
        below = found[-1]
        is_headed = last.verb_piece is None and below.verb_piece is not None
        gap = text[one.pieces[-1][1] : below.pieces[0][0]]
        if one.verb != last.verb or is_headed or "\n\n" in gap.replace(" ", ""):
            break
        if last.verb_piece is not None and one.verb_piece is None and below is not last:
            break
        found.append(one)
    yield from reversed(found)


def _hold(text: str, items: Sequence[Item], said: Piece) -> None:
    written = {"written": " ".join(text[slice(*said)].split())}
    for item in items:
        item.faults.append(Fault("cell-tells-more", *said, written))
