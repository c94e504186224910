"""What was done, as lists of aids tell it in a cell: `NEW`, `Period changed to 10s`.

In such a cell the verb may stand behind what it is done to.  `Period changed to 10s` is a change
of the thing of the row; `Topmark removed` leaves the thing where it is, and is held back.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import combinations

from noticeparse.faults import Fault
from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.line.elements import Element, words_of
from noticeparse.readers.change_parts import divide_change
from noticeparse.readers.features import has_kind, value_property
from noticeparse.readers.verbs import are_contrary, canonical_verb

_NEW = re.compile(
    r"(?P<verb>new)(?: (?:aid|mark|light|buoy|beacon|object|feature|item)s?)?[ .]{0,2}",
    re.IGNORECASE,
)
_OLD = frozenset(("old", "former", "existing", "previous", "was", "before"))
_CHANGED = re.compile(
    r"(?:the )?(?P<property>[A-Za-z][A-Za-z ]{2,30}?) "
    r"(?P<verb>(?:(?:is|are|has been|have been|now) )?[A-Za-z]{4,12}ed) "
    r"(?P<rest>(?:from [^\n]{1,40}? )?to [^\n]{1,80})",
    re.IGNORECASE,
)
_RENAMED = re.compile(
    r"(?P<verb>renam(?:e|ed|ing)) (?:as |to )?(?P<rest>\"[^\"\n]{1,40}\")[ .]{0,2}", re.IGNORECASE
)
_PARTS = frozenset({"kind", "topmark", "racon", "ais", "sound", "sectors", "light", "companion"})
_MARKS = re.compile(
    r"\b(?:buoys?|beacons?|floats?|vessels?|marks?|perch(?:es)?|piles?|posts?)\b", re.IGNORECASE
)
_LINKS = re.compile(r"(?: and|,|;| &| then) (?:then |is |to be )?", re.IGNORECASE)
_AUXILIARY = re.compile(
    r"(?:(?:to be|is|are|was|were|has been|have been|being|permanently|newly|now|also) ?)+$",
    re.IGNORECASE,
)


def with_change_told(text: str, cells: Cells) -> Cells:
    """The cells of a row, verb and change apart where one cell tells what of the thing changes."""
    cell = cells.get("verb", [])
    if not cell or not {"change", "new", "old", "to"}.isdisjoint(cells):
        return cells
    if any(one.kind not in ("words", "verb", "passive") for one in cell) or cell[0].value:
        return cells
    words = words_of(text, cell)
    if told := _NEW.fullmatch(words):
        return {**cells, "verb": [_verb(cell, told, "insert")]}
    told = _RENAMED.fullmatch(words) or _changed(words)
    if told is None:
        return cells
    names = [name for name in ("property", "rest") if name in told.groupdict()]
    pieces = [piece for name in names for piece in _pieces(cell, told.span(name))]
    change = [Element("words", *piece, False) for piece in pieces]
    verb = _verb(cell, told, "amend")
    link = [] if "property" in names else [verb]
    return {**cells, "verb": [verb], "change": link + change}


def _changed(words: str) -> re.Match[str] | None:
    """The match of words that tell of one property what it becomes: `Range reduced to 17M`."""
    told = _CHANGED.fullmatch(words)
    if told is None or canonical_verb(told["verb"]) != "amend":
        return None
    parts = divide_change(f"{told['property']} {told['rest']}")
    if len(parts) != 1 or parts[0].new is None:
        return None
    is_light = parts[0].subject is not None and told["property"].lower() == "light"
    is_property = parts[0].subject is None and parts[0].property is not None
    return told if is_light or is_property else None


def _verb(cell: Sequence[Element], told: re.Match[str], verb: str) -> Element:
    first, *_ = _pieces(cell, told.span("verb"))
    return Element("verb", *first, True, verb)


def _pieces(cell: Sequence[Element], span: Piece) -> list[Piece]:
    """Where in the text a stretch of the words of a cell stands, a blank between its elements."""
    found: list[Piece] = []
    at = 0
    for one in cell:
        size = one.end - one.start
        start, end = max(span[0] - at, 0), min(span[1] - at, size)
        if start < end:
            found.append((one.start + start, one.start + end))
        at += size + 1
    return found


def tells_otherwise(text: str, cells: Cells) -> bool:
    """Whether the cell of a verb tells of two deeds, or of less than the thing of the row."""
    cell = cells.get("verb", [])
    verbs = {canonical_verb(text[e.start : e.end]) for e in cell if e.kind == "verb"}
    if any(are_contrary(one, two) for one, two in combinations(verbs, 2)):
        # `Delete - Insert`
        return True
    return (not cell or cell[0].value is None) and _tells_of_part(text, cell, cells)


def _tells_of_part(text: str, cell: Sequence[Element], cells: Cells) -> bool:
    """Whether words before the verb name a part of the thing, or those behind another deed."""
    words = words_of(text, cell).strip(" .")
    parts = _LINKS.split(words)
    deeds = [canonical_verb(part.partition(" ")[0]) for part in parts]
    more = {canonical_verb(one) for part in parts[1:] for one in part.split() if _done(one)}
    if any(are_contrary(deeds[0], deed) for deed in {*deeds[1:], *more} if deed and deeds[0]):
        return True
    head, _, last = words.rpartition(" ")
    head = _AUXILIARY.sub("", head).strip()
    if not head or deeds[0] is not None or not _done(last):
        return False
    if not has_kind(head) and not value_property(head) & _PARTS:
        return False
    named = words_of(text, cells.get("feature", [])).lower()
    noun = head.split()[-1].lower().removesuffix("s")
    if noun == "light":
        is_lit = "light" in cells or "light" in named
        return not is_lit or _MARKS.search(named) is not None
    return noun not in named


def _done(word: str) -> bool:
    """Whether a word is a participle that commands: `removed`, `laid`."""
    return word.lower().endswith(("ed", "wn", "aid")) and canonical_verb(word) is not None


def without_new_beside_old(text: str, items: Sequence[Item]) -> None:
    """Hold items that are `NEW` where another is `OLD`: states of one thing, and no commands."""
    told = [
        (item, fault) for item in items for fault in item.faults if fault.code == "verb-unknown"
    ]
    if not any(text[one.start : one.end].strip(" .:").lower() in _OLD for _, one in told):
        return
    for item in items:
        if item.verb_piece and text[slice(*item.verb_piece)].lower() == "new":
            item.faults.append(Fault("verb-unknown", *item.verb_piece, {"written": "NEW"}))
