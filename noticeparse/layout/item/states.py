"""Two states of one feature, each with its position: `Existing: …` above `Amended to read: …`.

What the two tell decides the verb: nothing charted before is an insertion, nothing after a
deletion; words that differ at one place an amendment, places that differ under one description a
move.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import takewhile
from typing import Literal

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Added, Group, Item, Piece, Place
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, words_of
from noticeparse.readers.features import has_kind, value_property
from noticeparse.readers.verbs import canonical_verb

_NOTHING = frozenset(
    {"", "nil", "none", "nothing", "nothing charted", "not charted", "no feature", "uncharted",
     "not shown"}
)  # fmt: skip


_OLD = frozenset({"old", "was", "former", "existing"})
_VALUES = frozenset({"depth", "measure", "light", "number", "numbered", "status", "quality"})
_NEW = frozenset({"new", "now", "is", "revised"})
_OLD_KEYS = _OLD | {"formerly", "before", "previously"}
_NEW_KEYS = _NEW | {"after", "becomes"}
"""Where a colon stands behind them."""


def state_told(word: str, verb: str) -> Literal["old", "new"] | None:
    """Which state of a feature the word at the start of a line tells: `OLD   light, Fl.3s`.

    Below an amendment also `from   Fl.3s` and `to   Fl.5s`, `For: Fl.3s` and `Read: Fl.5s`.
    """
    plain = word.lower().strip(" :")
    if plain in ("from", "to") and canonical_verb(verb) == "amend":
        return "old" if plain == "from" else "new"
    if plain in ("for", "read") and canonical_verb(verb) in ("amend", "replace"):
        return "old" if plain == "for" else "new"
    is_key = word.rstrip().endswith(":")
    if plain in (_OLD_KEYS if is_key else _OLD):
        return "old"
    return "new" if plain in (_NEW_KEYS if is_key else _NEW) else None


def are_its_sectors(text: str, state: Sequence[Piece], words: Element) -> bool:
    """Whether words are sectors of the light in a state: `sectors G 300°-312°, R 312°-330°`."""
    told = [value_property(text[slice(*piece)]) for piece in state[-1:]]
    is_lit = any("light" in roles or roles == {"sectors"} for roles in told)
    return is_lit and value_property(text[words.start : words.end]) == {"sectors"}


def set_states(text: str, item: Item, old: Sequence[Element], new: Sequence[Element]) -> bool:
    """Make an item of two states; False where neither holds both words and a place."""
    before, after = list(_words(text, old)), list(_words(text, new))
    places = [[e for e in state if e.kind in PLACES] for state in (old, new)]
    if not (places[0] and before) and not (places[1] and after):
        return False
    told = [
        " ".join(text[a:b] for a, b in pieces).lower().strip(" .-") for pieces in (before, after)
    ]
    if told[0] in _NOTHING:
        _set(item, "insert", after, places[1])
    elif told[1] in _NOTHING or canonical_verb(told[1]) == "delete":
        _set(item, "delete", before, places[0])
    elif _same_places(text, *places):
        _set(item, "amend", before, places[0])
        item.change = list(_changed(text, before, after))
    elif told[0] == told[1]:
        _set(item, "move", before, places[0])
        item.groups.append(Group(role="to", places=[Place(place) for place in places[1]]))
    else:
        _set(item, "amend", before, places[0])
        start, end = places[1][0].start, places[1][-1].end
        written = {"written": text[start:end]}
        item.faults.append(Fault("states-at-two-places", start, end, written))
    return True


def set_replacement(text: str, item: Item, old: Sequence[Element], new: Sequence[Element]) -> None:
    """What goes stands under the feature or in the old state, what comes in the new one."""
    named = " ".join(text[start:end] for start, end in item.words)
    item.words += [(e.start, e.end) for e in old]
    # A new state of values alone is one of the same object: `Wreck`, `least depth 4 m`.
    comes = words_of(text, new)
    values = value_property(comes)
    is_same = has_kind(named) and not has_kind(comes) and bool(values) and values <= _VALUES
    joint = f" by {named} " if is_same else " by "
    item.added.append(Added(joint, [(e.start, e.end) for e in new], ""))
    # A light that stands behind what comes is that of the new mark.
    item.added.sort(key=lambda added: added.pieces)


def _changed(text: str, before: Sequence[Piece], after: Sequence[Piece]) -> Iterator[Piece]:
    """What the new state says otherwise, without the words in which both begin: `depth`."""
    old = {text[a:b].strip(" ,") for a, b in before}
    new = {text[a:b].strip(" ,") for a, b in after}
    gone = [words for words in (text[a:b].strip(" ,") for a, b in before) if words not in new]
    for start, end in after:
        words = text[start:end].strip(" ,")
        if words in old:
            continue
        yield start + (_shared(words, gone[0]) if len(gone) == 1 else 0), end


def _shared(first: str, second: str) -> int:
    """The characters of the words in which both begin."""
    alike = takewhile(lambda pair: pair[0] == pair[1], zip(first, second, strict=False))
    return "".join(a for a, _ in alike).rfind(" ") + 1


def _words(text: str, state: Sequence[Element]) -> Iterator[Piece]:
    """The words of a state, cut at its commas outside quotes and brackets."""
    for element in state:
        if element.kind in PLACES:
            continue
        start, depth, quoted = element.start, 0, False
        for at in range(element.start, element.end):
            char = text[at]
            depth += (char == "(") - (char == ")")
            quoted ^= char == '"'
            if char == "," and not quoted and not depth:
                if text[start:at].strip():
                    yield _trimmed(text, start, at + 1)
                start = at + 1
        if text[start : element.end].strip(" ."):
            yield _trimmed(text, start, element.end)


def _trimmed(text: str, start: int, end: int) -> Piece:
    words = text[start:end]
    return start + len(words) - len(words.lstrip()), start + len(words.rstrip())


def _same_places(text: str, first: Sequence[Element], second: Sequence[Element]) -> bool:
    if not second:
        return True
    return [text[e.start : e.end] for e in first] == [text[e.start : e.end] for e in second]


def _set(item: Item, verb: str, words: list[Piece], places: Sequence[Element]) -> None:
    item.verb = verb
    item.words = words
    item.groups = [Group(places=[Place(place) for place in places])]


def taken_back(text: str, item: Item, element: Element) -> Fault | None:
    """The fault of a participle behind a whole command that says another thing of it.

    `Insert wreck P. deleted`: neither the wreck nor what follows is under a verb that is told.
    """
    written = text[element.start : element.end]
    if not written.islower() or canonical_verb(written) == canonical_verb(item.verb or ""):
        return None
    return Fault("sentence-under-verb", element.start, element.end, {"written": written})
