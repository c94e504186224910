"""Things named one by one, with what is said of each behind its place.

`light-buoy P, Q.R; light-buoy Q, Q.G` are two light-buoys, and rows `No 1  P  Fl.G.3s` have the
light of their own line.  The cut gives words to the place behind them, so that each value would
slip on to the next thing.  A semicolon, a line end or `and` before the next thing ends what is
said of the one above; behind a comma the last thing of all tells it, and else both are held back.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise, takewhile
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.evidence import split_lead
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.told import told_by

_GROUPS = {
    **dict.fromkeys(("depth", "measure", "number", "clearance", "height"), "figure"),
    **dict.fromkeys(("light", "light_words", "sectors"), "light"),
    **dict.fromkeys(("quoted", "numbered", "proper", "code"), "name"),
    **dict.fromkeys(("sound", "racon", "ais"), "aid"),
    **dict.fromkeys(("colour", "shape", "topmark"), "paint"),
    **dict.fromkeys(("status", "water", "condition", "quality", "reported", "wreck"), "state"),
}
_FIGURES = frozenset(("measure", "depth", "light", "light_words"))
_PARTS = frozenset(("topmark", "retroreflector", "radar_reflector"))
_SAYS_NOTHING = frozenset(("plain", "other"))
_NAME = re.compile(
    r"(?:(?:the )?(?:[Nn]o\.? ?)?(?:[A-Z]{0,2}[0-9]{1,3}[A-Z]?|[A-Z])"
    r"|[A-Z][a-z'-]+(?: (?:[A-Z][a-z'-]*|[0-9]{1,3})){0,3}|front|rear|upper|lower)",
)
_JOINT = re.compile(r"\W*(?:and |& )?\W*", re.IGNORECASE)
_BREAKS = re.compile(r" *(?:;|\n|,(?: and\b)?| and\b)\s*(?:and\b\s*)?")
_GUARDED = re.compile(r"\"[^\"\n]*\"|\([^()\n]*\)")
_COLUMN = re.compile(r" {2,}|\t|\|")


class _Cut(NamedTuple):
    """Where what is said of the thing above ends, and the next thing begins."""

    start: int
    end: int
    thing: int
    groups: frozenset[str]
    is_sure: bool


def settle_named_values(text: str, items: Sequence[Item]) -> None:
    """Give what stands behind a place, before the next thing is named, to the thing above."""
    if all(_is_parted(text, above, item) for above, item in pairwise(items)):
        # So most lists are written, and none of their things need be read for this.
        return
    for run in _runs(text, items):
        first, last = run[0][0], run[-1][1]
        is_behind = bool(_groups(_joined(text, last.tail)))
        in_front = _groups_in(_joined(text, split_lead(text, first.words)[0]))
        for above, item, cut in run:
            if cut is None:
                continue
            if cut.is_sure or is_behind:
                _move_back(text, above, item, cut)
            elif not cut.groups & in_front:
                # `light P, Fl.R.3s, light Q`: behind the first place, or before the second?
                _hold(text, (above, item))


def _is_parted(text: str, above: Item, item: Item) -> bool:
    """Whether a line end, or nothing, stands between a place and the words of the next item."""
    if not item.words or not above.has_place:
        return True
    return "\n" in text[above.places[-1].element.end : item.words[0][0]]


def _runs(text: str, items: Sequence[Item]) -> Iterator[list[tuple[Item, Item, _Cut | None]]]:
    """Pairs of neighbours with the cut between them, as long as one thing follows another."""
    run: list[tuple[Item, Item, _Cut | None]] = []
    for above, item in pairwise(items):
        start = run[-1][2].thing if run and run[-1][2] is not None else 0
        if _follows(text, above, item) and _opens_with_thing(text, above, start):
            run.append((above, item, _cut(text, above, item)))
            continue
        if run:
            yield run
        run = []
    if run:
        yield run


def _opens_with_thing(text: str, item: Item, start: int) -> bool:
    """Whether the words of an item from `start` on name a thing before its place."""
    named = [(max(a, start), b) for a, b in item.words if b > start]
    words = _joined(text, split_lead(text, named)[0])
    return has_kind(words) or _names_thing(words)


def _follows(text: str, above: Item, item: Item) -> bool:
    """Whether all words of an item stand between the place above and its own."""
    if item.verb_piece or item.label_piece or item.verb is None or not item.words:
        return False
    if not (above.has_place and item.has_place) or above.tail or above.change or item.charts:
        return False
    start = above.places[-1].element.end
    end = min(place.element.start for place in item.places)
    if not all(start <= a and b <= end for a, b in item.words) or not above.words:
        return False
    others = [text[b:c] for (_, b), (c, _) in pairwise(item.words)]
    others.append(text[start : item.words[0][0]])
    is_whole = all(not other.strip(" ,;:|\t\n-") for other in others)
    return is_whole and max(b for _, b in above.words) <= start


def _cut(text: str, above: Item, item: Item) -> _Cut | None:
    """The cut that a line end, a semicolon or a comma makes in the words between two places."""
    start, end = item.words[0][0], item.words[-1][1]
    place_end = above.places[-1].element.end
    words = _GUARDED.sub(lambda found: "x" * len(found[0]), text[start:end])
    before = text[place_end:start]
    if "\n" in before:
        return None
    named = [
        found
        for found in _BREAKS.finditer(words)
        if any(map(str.isalnum, words[: found.start()]))
        and _names_thing(text[start + found.end() : end])
    ]
    is_open = ";" in before
    for mark in (";", "\n", ""):
        for found in reversed(named):
            if mark not in found[0]:
                continue
            said = text[start : start + found.start()]
            groups = _groups(said)
            if not groups and not (mark == ";" and not is_open and _says_more(said)):
                continue
            thing = text[start + found.end() : end]
            is_column = mark == "\n" and _COLUMN.match(text, place_end) is not None
            joins = "and" in found[0] and _opens_with_kind(thing)
            is_sure = not is_open and (mark == ";" or is_column or joins)
            return _Cut(start, start + found.start(), start + found.end(), groups, is_sure)
    return _run_together(text, start, end) if before.isspace() else None


def _run_together(text: str, start: int, end: int) -> _Cut | None:
    """`P 12₄ rock Q`: nothing but blanks on either side of a value."""
    words = text[start:end]
    items = told_by(words).items
    values = list(takewhile(lambda one: one.role in _FIGURES, items))
    if "\n" in words or not values or not _names_thing(words[values[-1].end :].lstrip()):
        return None
    if values[-1].end == len(words) or words[values[-1].end] in ",;":
        return None
    groups = frozenset(_GROUPS[one.role] for one in values)
    at = start + values[-1].end
    return _Cut(start, at, at + 1, groups, is_sure=False)


def _names_thing(words: str) -> bool:
    lead = re.sub(r"[ ,:]+(?:in|at)? *$", "", words)
    return leads_feature(lead) or _NAME.fullmatch(lead.strip(" ,:")) is not None


def _opens_with_kind(words: str) -> bool:
    """Whether the first word is the noun: `red and beacon` would join nothing."""
    first = told_by(words).first_words
    return bool(first) and first[0].role == "kind"


def _says_more(words: str) -> bool:
    return any(map(str.isalnum, words)) and not leads_feature(words.strip(" ,:"))


def _groups(words: str) -> frozenset[str]:
    """The groups of the values in some words, empty where they say anything else."""
    words = " ".join(words.strip(" ,;:.").split())
    if not words:
        return frozenset()
    told = told_by(words)
    if told.companions:
        return frozenset()
    groups: set[str] = set()
    for one in told.items:
        if one.role == "kind" and one.value in _PARTS:
            groups.add("paint")
        elif one.role in _GROUPS:
            groups.add(_GROUPS[one.role])
        elif one.role not in _SAYS_NOTHING:
            return frozenset(("name",)) if _NAME.fullmatch(words) else frozenset()
    return frozenset(groups)


def _groups_in(words: str) -> frozenset[str]:
    """The groups of the values among some words, whatever else they say."""
    roles = {one.role for one in told_by(words).items}
    return frozenset(_GROUPS[role] for role in roles & _GROUPS.keys())


def _joined(text: str, pieces: Sequence[Piece]) -> str:
    return " ".join(text[a:b] for a, b in pieces)


def _move_back(text: str, above: Item, item: Item, cut: _Cut) -> None:
    """Give the words before a cut to the item above."""
    said = [(a, min(b, cut.end)) for a, b in item.words if a < cut.end]
    rest = [(max(a, cut.thing), b) for a, b in item.words if b > cut.thing]
    above.tail.extend(said)
    above.pieces = sorted([*above.pieces, *said])
    kept = [(max(a, cut.end), b) for a, b in item.pieces if b > cut.end]
    item.pieces = [piece for piece in kept if text[slice(*piece)].strip()]
    item.words = rest


def _hold(text: str, items: Sequence[Item]) -> None:
    for item in items:
        start, end = item.pieces[0][0], item.pieces[-1][1]
        if all(fault.code != "place-of-neighbour" for fault in item.faults):
            fault = Fault("place-of-neighbour", start, end, {"written": text[start:end]})
            item.faults.append(fault)
