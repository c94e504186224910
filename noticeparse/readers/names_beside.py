"""Names of one word, which a capital alone tells: `Ellory light-buoy`, `Brannoch Rock`.

In come the items of a phrase with the one that names its kind; out come the items with such names
among them.  Only a word that no phrase of the vocabulary knows is one, and none that ends as words
do that describe: `Abandoned pier`.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.readers.marks import read_colour_letters
from noticeparse.readers.slips import one_slip_from
from noticeparse.readers.words import Item
from noticeparse.vocabulary import DANGERS, is_known_word, kinds

_DESCRIBING = ("ed", "ing", "al", "ic", "ous", "able", "ive", "ary", "ly", "less", "ful", "ible")
_LEAST_OF_CAPITALS = 5
_NOUNS = frozenset(
    "aluminium plastic steel sinker sonar lidar metocean guard diver stern conveyor sludge boulder"
    " gravel coral datawell trawler container anchor barge ship vessel cargo timber wooden"
    " january february march april june july august september october november december".split()
)
"""Words that no phrase of the vocabulary holds, and that are no names."""
_LIT = frozenset(("LIGHTS", "LITVES", "LITFLT"))
_BEFORE_KIND = frozenset(("category", "colour", "lit", "shape", "kind", "quality"))
_NAMING = frozenset(
    ("UWTROC", "SBDARE", "LNDARE", "SEAARE", "SOUNDG", "BRIDGE", "HRBFAC", "SNDWAV", "ACHARE")
)
"""Classes whose noun is a part of the name: `Brannoch Rock`, `Ellory Bridge`."""
_IN_BRACKETS = re.compile(
    r"\((?P<name>[A-Z][a-z'-]{2,20}"
    r"(?: (?:[A-Z][a-z'-]{1,20}|of|the|de|la|[0-9]{1,3}|[A-Z])){0,4})\)"
)
_LIST = re.compile(
    r"(?<=s )(?P<list>(?:[A-Z]|[0-9]{1,3}[A-Z]?)(?:, (?:[A-Z]|[0-9]{1,3}[A-Z]?)){0,12}"
    r",? (?:and|&) (?:[A-Z]|[0-9]{1,3}[A-Z]?))(?![A-Za-z0-9.°])"
)
"""`buoys A, B and C`: a name for each of several things."""


def with_names(text: str, items: Sequence[Item], head: Item | None) -> tuple[Item, ...]:
    """The items, those that are names with the role of a proper name."""
    if head is None:
        return tuple(items)
    named = _listed(text, items, head)
    named = _in_brackets(text, named)
    named = _rocks(text, _in_front(text, named, head), head)
    return tuple(_behind(text, named, head))


def listed_names(text: str) -> re.Match[str] | None:
    """The names of several things of one phrase, of which a record has one."""
    return _LIST.search(text)


def _listed(text: str, items: Sequence[Item], head: Item) -> list[Item]:
    """The items, those of a list of names without a meaning: none of them is the name of all."""
    found = listed_names(text)
    if found is None or found.start() != head.end + 1:
        return list(items)
    start, end = found.span()
    return [
        one._replace(role="plain", sense=None) if start <= one.start < end else one
        for one in items
    ]


def _is_strange(word: str) -> bool:
    """Whether a word with a capital may be a name, and nothing else."""
    small = word.lower()
    if not word[:1].isupper() or is_known_word(word) or "-" in word:
        return False
    if small in _NOUNS or small.removesuffix("s") in _NOUNS or small.endswith(_DESCRIBING):
        return False
    if any(map(is_known_word, one_slip_from(small))):
        return False  # `Noth cardinal buoy`: a word of the trade that lost a letter
    if word.isupper():
        return len(word) >= _LEAST_OF_CAPITALS and read_colour_letters(word) is None
    return len(word) > 2 and word[1:].islower()


def _in_front(text: str, items: list[Item], head: Item) -> list[Item]:
    """With the word in front of the kind: `Ellory light-buoy`, `Brannoch Rock`."""
    at = next((n for n, one in enumerate(items) if one.start == head.start), 0)
    first = at
    while first and items[first - 1].role in _BEFORE_KIND and _is_next(text, items, first):
        first -= 1
    if first != 1 or items[0].role != "unknown" or not _is_next(text, items, first):
        return items
    word = items[0].text
    if not _is_strange(word) or text[: items[0].start].strip().lower() not in ("", "the"):
        return items
    lead = items[1].text
    is_mark = bool(kinds()[head.value].form) or kinds()[head.value].s57 in _LIT
    is_small = lead[:1].islower() or head.text.split()[-1][:1].islower()
    if is_small and is_mark:
        return [items[0]._replace(role="proper"), *items[1:]]
    nouns = text[items[1].start : head.end]
    is_whole = kinds()[head.value].s57 in _NAMING and at == 1 and " " not in nouns
    is_whole |= not is_mark and kinds()[head.value].s57 not in DANGERS | {""} and " " in nouns
    if is_whole and nouns.istitle() and not word.isupper():
        # The nouns stay the kind, and are a part of the name as well.
        name = items[0]._replace(role="proper", text=f"{word} {nouns}", end=head.end)
        return [name, *items[1:]]
    return items


_ROCKS = frozenset(("Rock", "Rocks", "Shoal", "Shoals", "Reef", "Ledge", "Bank", "Patch"))
_OF_ROCKS = frozenset(
    "north south east west outer inner middle flat pilot great little high half anchor".split()
)
"""Words that tell nothing of a rock but which of several it is."""


def _rocks(text: str, items: list[Item], head: Item) -> list[Item]:
    """With the name of a rock from a word of the trade: `Bell Rock`, `Black Rock`, `Outer Shoal`.

    Both have a capital, and no rock has a bell; `Dangerous Rock` tells what it is.
    """
    if len(items) < 2 or items[1].start != head.start or head.text not in _ROCKS:
        return items
    first = items[0]
    known = kinds()[first.value] if first.role == "kind" else None
    is_other = known is not None and known.s57 not in _NAMING | DANGERS
    is_word = first.role in ("sound", "racon", "colour") or first.text.lower() in _OF_ROCKS
    begins = text[: first.start].strip().lower() in ("", "the")
    if not (is_other or is_word) or not (begins and first.text.istitle()):
        return items
    if first.bracketed or text[first.end : head.start] != " ":
        return items
    name = f"{first.text} {head.text}"
    return [Item("proper", None, first.start, head.end, name), *items[1:]]


def _is_next(text: str, items: Sequence[Item], at: int) -> bool:
    return text[items[at - 1].end : items[at].start] == " "


def _in_brackets(text: str, items: list[Item]) -> list[Item]:
    """With a name in brackets as one item: `wreck (Halcyon Star)`."""
    for found in _IN_BRACKETS.finditer(text):
        start, end = found.span("name")
        words = found["name"].split()
        if not _is_strange(words[0]) or any(one.isupper() and len(one) > 1 for one in words):
            continue
        inside = [one for one in items if start <= one.start < end]
        if not inside or not all(one.bracketed for one in inside):
            continue
        name = inside[0]._replace(
            role="proper", sense=None, start=start, end=end, text=found["name"]
        )
        at = items.index(inside[0])
        items = [*items[:at], name, *(one for one in items[at:] if one not in inside)]
    return items


def _behind(text: str, items: list[Item], head: Item) -> list[Item]:
    """With a name in capitals, or the letter of a mark, between commas: `Q.R, ELLORY No 2`."""
    made = list(items)
    is_mark = bool(kinds()[head.value].form)
    for at, item in enumerate(items):
        if item.role != "unknown" or item.bracketed or item.start < head.end:
            continue
        before = text[items[at - 1].end : item.start] if at else ""
        last = at + 1 == len(items) or text[item.end :].lstrip()[:1] in (",", ";")
        numbered = not last and items[at + 1].role == "numbered" and _is_next(text, items, at + 1)
        if before.strip() not in (",", ";") or not (last or numbered):
            continue
        is_letter = is_mark and len(item.text) == 1 and item.text.isupper()
        is_letter = is_letter and item.text not in "RGYBW" and last
        capitals = item.text.isupper() and _is_strange(item.text) and not text.isupper()
        if is_letter or capitals:
            made[at] = item._replace(role="proper")
    return made
