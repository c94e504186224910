"""Looks up what the words of one run mean: the longest phrase of the vocabulary at each place.

In come the tokens of a run, out come items in text order, each with its sense or marked unknown.
Values (a light, a depth, a name) pass through as items of their own.  Which kind the whole phrase
has is not decided here.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from lark import Token

from noticeparse.readers.phrases import divide, place
from noticeparse.vocabulary import (
    ARTICLES,
    LONGEST,
    Sense,
    find,
    is_known_word,
    is_place,
    key_of,
    word_key,
)

_NUMBERS = frozenset(("NUMBERED", "NUMBER", "CODE"))
_ROLES = {"SPAN": "length"}
_LOOKED_UP = frozenset(("WORD", "NUMBER", "MEASURE", "POINTED"))


class Item(NamedTuple):
    """One thing told: a phrase with its sense, or a value by its terminal."""

    role: str
    """`kind`, a role of the vocabulary, `unknown`, `proper`, or the terminal in lower case."""
    sense: Sense | None
    start: int
    end: int
    text: str
    bracketed: bool = False

    @property
    def value(self) -> str:
        """The value of the sense, empty where there is none."""
        return self.sense.value if self.sense else ""


class _Atom(NamedTuple):
    key: str
    start: int
    end: int
    text: str
    type: str


def look_up(
    tokens: Sequence[Token], *, base: int = 0, bracketed: bool = False, opens: bool = True
) -> list[Item]:
    """The items of one run; `base` is the offset of the run's text in the whole.

    `opens` tells that the run stands first in its phrase, where a capital means nothing.
    """
    items: list[Item] = []
    atoms: list[_Atom] = []
    proper = proper_name(tokens, whole=not opens)
    for index, token in enumerate(tokens):
        if token.type in _LOOKED_UP and index not in proper:
            atoms += _atoms(token, first=index == 0 and (opens or len(tokens) > 1))
            continue
        items += _match(atoms, base, bracketed)
        atoms = []
        start, end = place(token)
        if token.type == "BRACKETED":
            items += _inside(token, base + start)
        else:
            role = "proper" if index in proper else _ROLES.get(token.type, token.type.lower())
            items.append(Item(role, None, base + start, base + end, str(token), bracketed))
    items += _match(atoms, base, bracketed)
    return items


def _inside(token: Token, at: int) -> list[Item]:
    """The items of a bracket: they tell of the feature and never name it."""
    items: list[Item] = []
    for segment in divide(token[1:-1]).segments:
        items += look_up(segment.pieces, base=at + 1, bracketed=True)
    if [item.value for item in items] == ["ruin"]:
        # `pier (ruins)` tells the state of the pier.
        ruined = find(_IN_RUINS)
        return [item._replace(role="condition", sense=ruined) for item in items]
    return items


_IN_RUINS = key_of("in ruins")


def _atoms(token: Token, *, first: bool) -> list[_Atom]:
    start, end = place(token)
    if token.type != "WORD":
        return [_Atom(key_of(token), start, end, str(token), token.type)]
    atoms = []
    for word in token.split("-"):
        # `berth A` has a name, `A berth` an article.
        if word.lower() not in ARTICLES or (word == "A" and not first):
            atoms.append(_Atom(word_key(word), start, start + len(word), word, "WORD"))
        start += len(word) + 1
    return atoms


def _match(atoms: Sequence[_Atom], base: int, bracketed: bool) -> list[Item]:
    items: list[Item] = []
    at = 0
    while at < len(atoms):
        for size in range(min(LONGEST, len(atoms) - at), 0, -1):
            window = atoms[at : at + size]
            sense = find("".join([atom.key for atom in window]))
            if sense is not None and not _is_by(window[-1], atoms[at + size : at + size + 1]):
                break
        else:
            size, window, sense = 1, atoms[at : at + 1], None
        first, last = window[0], window[-1]
        role = sense.role if sense else "unknown" if first.type == "WORD" else first.type.lower()
        text = " ".join([atom.text for atom in window])
        items.append(Item(role, sense, base + first.start, base + last.end, text, bracketed))
        at += size
    return items


_BEHIND_BY = frozenset(("day", "night"))


def _is_by(atom: _Atom, behind: Sequence[_Atom]) -> bool:
    """Whether `by` is no buoy but the preposition: `light by day`."""
    return atom.text.lower() == "by" and any(one.text.lower() in _BEHIND_BY for one in behind)


def is_lone_figure(items: Sequence[Item]) -> bool:
    """Whether a phrase is one figure as depths are written: `8.6m`, `5.2`; a number is none."""
    if len(items) != 1:
        return False
    return items[0].role == "measure" or (items[0].role == "number" and "." in items[0].text)


def is_only_figure(items: Sequence[Item], item: Item) -> bool:
    """Whether a figure in brackets is all that a phrase has: `depths as follows, (7.2)`."""
    if not item.bracketed or item.role != "number" or "." not in item.text:
        return False
    return sum(any(map(str.isdigit, one.text)) for one in items) == 1


def proper_name(tokens: Sequence[Token], *, whole: bool = False) -> range:
    """The tokens that form a proper name, told by capitals beside small letters.

    `whole` takes a run that is nothing but a name (`on Brannoch Rock`).
    """
    titles = [
        token.type == "WORD" and token[0].isupper() and token[1:2].islower() for token in tokens
    ]
    titles = [
        titles[at] or (token in _QUARTERS and _is_of_name(tokens, titles, at))
        for at, token in enumerate(tokens)
    ]
    plain = any(token.type == "WORD" and token[0].islower() for token in tokens)
    start = 0
    while start < len(tokens):
        end = start
        while end < len(tokens) and titles[end]:
            end += 1
        numbered = end < len(tokens) and tokens[end].type in _NUMBERS
        if (ends := _name_end(tokens, start, end)) < end:
            behind = start > 0 or end == len(tokens)
            return range(start, ends if _is_name(tokens[start:ends], behind, False) else start)
        if end > start and (plain or whole) and _is_name(tokens[start:end], start > 0, numbered):
            return range(start, end)
        start = max(end, start + 1)
    return _name_behind_mark(tokens, titles)


_QUARTERS = frozenset("N S E W NE NW SE SW".split())


def _is_of_name(tokens: Sequence[Token], titles: Sequence[bool], at: int) -> bool:
    """Whether the letter of a quarter is part of a name: `N Ellory buoy`, no `N Cardinal buoy`."""
    before, behind = titles[at - 1 : at] if at else [], titles[at + 1 : at + 2]
    is_kind = at + 1 < len(tokens) and tokens[at + 1].lower() in ("cardinal", "card")
    return not is_kind and (before == [True] or behind == [True])


_OF_KINDS = frozenset(("mooring", "leading", "sector", "sectored", "directional"))
"""Words in front of `buoy` or `light` with which they name a kind; `Fairway buoy` has a name."""


def _name_end(tokens: Sequence[Token], start: int, end: int) -> int:
    """Where a name ends, without the words of a category behind it: `Ellory North Cardinal buoy`.

    A side or a quarter alone, and a shape, may be part of a name: `Ellory Port light`.
    """
    behind = tokens[end] if end < len(tokens) else None
    if behind is not None and (behind.type != "WORD" or not behind[0].islower()):
        return end
    for at in range(max(start + 1, end - _MOST_OF_KIND), end):
        words = [word for token in tokens[at:end] for word in token.split("-")]
        sense = find("".join(map(word_key, words)))
        is_category = sense is not None and sense.role == "category"
        if is_category and (len(words) > 1 or (behind and words[0].lower() == "special")):
            return at
    return end - 1 if behind and end - 1 > start and tokens[end - 1].lower() in _OF_KINDS else end


_MOST_OF_KIND = 3
_NAMED = frozenset(("light", "lighthouse", "buoy", "beacon"))


def _name_behind_mark(tokens: Sequence[Token], titles: Sequence[bool]) -> range:
    """`Light Mull Stack`, `Light - Brannoch Rock`: a strange word with a capital begins a name."""
    if not tokens or tokens[0].lower() not in _NAMED:
        return range(0)
    start = 1
    while start < len(tokens) and (tokens[start] == "-" or _is_known_title(tokens[start])):
        start += 1
    end = start
    while end < len(tokens) and titles[end]:
        end += 1
    if end == start or tokens[0][0].islower():
        return range(0)
    # `Light Port Brannoch`: the word of a side is part of the name.
    return range(start - 1 if start > 1 and tokens[start - 1] == "Port" else start, end)


def _is_known_title(token: Token) -> bool:
    return token.type == "WORD" and all(is_known_word(word) for word in token.split("-"))


_OPENS_SENTENCE = frozenset(
    "it its they their them this that these those the there here she her he his".split()
)
"""With a capital the first word of a sentence, and the name of nothing."""


def _is_name(tokens: Sequence[Token], behind: bool, numbered: bool) -> bool:
    # One word may have its capital for no other reason than standing first.
    if len(tokens) < 2 and not behind and not numbered:
        return False
    if len(tokens) == 1 and tokens[0].lower() in _OPENS_SENTENCE:
        return False
    strange = any(not is_known_word(word) for token in tokens for word in token.split("-"))
    return strange or (len(tokens) > 1 and is_place(tokens[-1]))
