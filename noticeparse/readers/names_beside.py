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
from noticeparse.vocabulary import is_known_word, kinds

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
    ("UWTROC", "SBDARE", "LNDARE", "SEAARE", "SOUNDG", "BRIDGE", "HRBFAC", "SNDWAV")
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
    named = _in_front(text, named, head)
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
    if lead[:1].islower() and is_mark:
        return [items[0]._replace(role="proper"), *items[1:]]
    is_titled = lead[:1].isupper() and lead[1:].islower() and not word.isupper()
    if is_titled and at == 1 and kinds()[head.value].s57 in _NAMING and " " not in lead:
        # The noun stays the kind, and is a part of the name as well.
        name = items[0]._replace(role="proper", text=f"{word} {lead}", end=head.end)
        return [name, *items[1:]]
    return items


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
