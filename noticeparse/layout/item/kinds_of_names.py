"""Numbers and names behind the kind of several things: `light-buoys, Fl.Y.3s: No 1 P, No 2 Q`.

The words in front of the first number or name are those of each further one, as long as nothing
but numbers or names of the same way of writing follow; a thing in the singular is one alone.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise
from typing import Literal, NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Added, Item, Piece
from noticeparse.readers.features import has_kind, read_feature, value_property
from noticeparse.readers.places import split_phrase
from noticeparse.readers.verbs import canonical_verb
from noticeparse.stretch import Stretch, gather
from noticeparse.vocabulary import is_known_word

_STYLES = {
    "number": r"[Nn]o\.? ?(?:[A-Z]{1,2}-?)?[0-9]{1,4}[A-Z]?",
    "quoted": r'"[^"]{1,40}"',
    "code": r"[A-Z]{1,3}-?[0-9]{1,3}[A-Z]?",
    "capitals": r"[A-Z]{3,20}(?:[ -](?:[A-Z]{3,20}|[A-Z]|[0-9]{1,2})){0,3}",
    "name": r"[A-Z][a-z'’]{2,20}(?: (?:[A-Z][a-z'’]{2,20}|[A-Z]|[0-9]{1,2})){0,3}",
}
"""How the things of a list are told apart."""
_NAME = {style: re.compile(rf"(?P<name>{words})(?![^ ,:;])") for style, words in _STYLES.items()}
_STYLED = {
    style: re.compile(rf"[ ,:]{{1,4}}(?P<name>{words})(?![^ ,:;])")
    for style, words in _STYLES.items()
}
"""The same behind other words."""
_LightOf = Literal["none", "own", "all", "either"]
_TOLD_BY_QUOTES = ("code", "capitals", "name")
"""What is read as a name in any place only where quotes stand around it."""
_OF_A_PLACE = re.compile(
    r"\b(?:bank|bay|beach|channel|cove|harbour|head|hill|inlet|island|islet|isle|lagoon|ness|pass"
    r"|point|port|reach|river|road|roads|rock|rocks|shoal|sound|strait|town)\b",
    re.IGNORECASE,
)
"""Words of a name that is more often that of a place than of what lies there."""
_VOWEL = re.compile(r"[aeiouy]", re.IGNORECASE)
_NO_VALUE = frozenset(("proper", "unknown"))
_AND = re.compile(r"[ ,;]{0,4}(?:(?:and|&) )?")
_SPACE = re.compile(r"[\s|.,;:*·-]*(?:(?:and|&)\s)?")
_HARMLESS = frozenset(("feature-class-unknown", "feature-support-not-stated"))
_LONGEST = 200


class _Lead(NamedTuple):
    """The words for the kind in the first item of a list, and how its name is written."""

    item: Item
    words: Stretch
    kind_end: int
    """Where the words for the kind end; a light may stand behind them."""
    end: int
    """Where what all have in common ends."""
    name: tuple[int, int]
    style: str
    light: _LightOf
    """Whose the light is that stands with the first of them."""


def give_kinds_of_names(text: str, items: Sequence[Item]) -> None:
    """Tell the kind again of items that hold a number or name alone, or one with its light."""
    lead: _Lead | None = None
    above: Item | None = None
    for item in items:
        named = None
        if lead is not None and above is not None and stands_next(text, above, item):
            named = _named(text, item, lead.style)
        above = item
        if lead is None or named is None:
            lead = _lead(text, item)
            continue
        name, is_lit = named
        if (lead.light == "own") != is_lit and not (is_lit and lead.light == "either"):
            _hold_lit(text, item, is_lit)
            continue
        if lead.style in _TOLD_BY_QUOTES and not lead.item.added:
            _set_words(lead.item, lead.words, lead.end, lead.name, lead.style)
        words = gather(text, item.words)
        joint = _AND.match(words.text)
        before = _pieces(words, joint.end() if joint is not None else 0, name[0])
        _set_words(item, words, 0, name, lead.style)
        item.words[:0] = [*_pieces(lead.words, 0, lead.kind_end if is_lit else lead.end), *before]
        item.faults[:] = [one for one in item.faults if one.code != "place-of-another"]


def _hold_lit(text: str, item: Item, is_lit: bool) -> None:
    """Hold back what has a light of its own below one for all: it would be a light alone."""
    if is_lit:
        start, end = item.words[0][0], item.words[-1][1]
        written = {"written": " ".join(text[start:end].split())}
        item.faults.append(Fault("feature-kinds-several", start, end, written))


def _lead(text: str, item: Item) -> _Lead | None:
    """What an item begins a list with, if it is one of several that have numbers or names."""
    if canonical_verb(item.verb or "") not in ("insert", "delete") or not item.has_place:
        return None
    words, end = _description(text, item)
    if not 0 < end <= _LONGEST or item.change or item.old or item.tail or item.added:
        return None
    for style, pattern in _STYLED.items():
        found = next(pattern.finditer(words.text, 0, end), None)
        if found is None:
            continue
        head, behind = words.text[: found.start()], words.text[found.end() : end]
        if not _may_be_name(style, found["name"], found[0]) or not _heads(head):
            return None
        kind_end = len(re.split(r" ?[,(:]", head, maxsplit=1)[0])
        light: _LightOf = "none"
        if behind.strip(" ,"):
            if read_feature(head).feature.light is not None or not _is_light(behind):
                return None
            light = "own"
        elif _is_light(head[kind_end:]):
            # `light-buoys, Fl.Y.3s: No 1` and `light-buoys: Fl.Y.3s, No 1`
            light = "all" if ":" in found[0] else "either"
        return _Lead(item, words, kind_end, len(head), found.span("name"), style, light)
    return None


def _named(text: str, item: Item, style: str) -> tuple[tuple[int, int], bool] | None:
    """Where in its words the number or name stands, and whether all else is a light."""
    words, end = _description(text, item)
    if item.change or item.old or item.added:
        return None
    joint = _AND.match(words.text, 0, end)
    start = joint.end() if joint is not None else 0
    found = _NAME[style].match(words.text, start, end)
    if found is None:
        found = next(_STYLED[style].finditer(words.text, start, end), None)
    if found is None or not _may_be_name(style, found["name"], ":"):
        return None
    others = f"{words.text[start : found.start()]} {words.text[found.end() : end]}".strip(" ,:;")
    if others and not _is_light(others):
        return None
    return found.span("name"), bool(others)


def _is_light(words: str) -> bool:
    return value_property(words.strip(" ,:;")) == {"light"}


def _description(text: str, item: Item) -> tuple[Stretch, int]:
    """The words of an item, and where those for its thing end."""
    words = gather(text, item.words)
    end = split_phrase(words.text).description_end if words.text else 0
    return words, len(words.text[:end].rstrip(" ,:;"))


def _heads(words: str) -> bool:
    """Whether words are of several things of one kind, and of nothing that is one's alone."""
    first = re.split(r"[,(:]", words, maxsplit=1)[0].rstrip()
    if not first.lower().endswith("s") or not has_kind(first):
        return False
    reading = read_feature(words)
    told = reading.feature
    is_plain = all(fault.code in _HARMLESS for fault in reading.faults)
    alone = (told.name, told.legend, told.depth, told.height_m, told.clearance)
    return is_plain and not told.companions and all(one is None for one in alone)


def _may_be_name(style: str, name: str, led: str) -> bool:
    """Whether words are sure to be the name of the thing itself."""
    if style in ("number", "quoted", "code"):
        return True
    if _OF_A_PLACE.search(name) is not None or has_kind(name) or is_known_word(name):
        return False
    words = name.replace("-", " ").split()
    # `VQR` and `DRIES` tell of the thing, and name it not.
    is_own = _VOWEL.search(words[0]) is not None and not is_known_word(words[0])
    is_own = is_own and value_property(words[0]) <= _NO_VALUE
    return is_own and (":" in led or style == "capitals")


def stands_next(text: str, above: Item, item: Item) -> bool:
    """Whether an item is the next of a list: no verb, letter or words between the two."""
    if item.verb_piece is not None or item.verb != above.verb or not item.has_place or above.tail:
        return False
    if (item.label is None) != (above.label is None):
        return False
    between = text[max(end for _, end in above.pieces) : min(item.pieces)[0]]
    return _SPACE.fullmatch(between) is not None and "\n\n" not in between.replace(" ", "")


def _set_words(item: Item, words: Stretch, end: int, name: tuple[int, int], style: str) -> None:
    """Let an item hold its words up to `end`, its name, and what leads to its place."""
    rest = _pieces(words, name[1], len(words.text))
    own = _pieces(words, *name)
    if style in _TOLD_BY_QUOTES:
        item.added.append(Added(' "', own, '"'))
        own = []
    item.words[:] = [*_pieces(words, 0, end), *own, *rest]


def _pieces(words: Stretch, start: int, end: int) -> list[Piece]:
    """The stretches of the text that a part of gathered words was gathered from."""
    starts = [a for a, _ in words.starts if start < a < end]
    bounds = [start, *starts, end]
    found = []
    for a, b in pairwise(bounds):
        solid = len(words.text[a:b].rstrip(" "))
        if solid and a + solid > a:
            found.append((words.outer(a), words.outer(a + solid - 1) + 1))
    return found
