"""Names with their noun in front, as lists of lights and indexes write them: `buoy, mooring`.

In comes a phrase; out comes one of the same length with the words in the order of the vocabulary,
`mooring buoy`, where it knows them so as another kind than the noun alone.  What names a thing by
itself behind the comma is left: `buoy, wreck` may be two.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.vocabulary import Sense, find, key_of

_PARTS = re.compile(
    r"(?P<article>(?:the |an? |new ){0,2})(?P<noun>[A-Za-z]{3,12}(?:-[a-z]{3,8})?)"
    r"(?: \((?P<bracket>[A-Za-z][A-Za-z -]{2,30})\)"
    r"|[,:] (?P<first>[A-Za-z][A-Za-z -]{2,30})(?:, (?P<second>[A-Za-z][A-Za-z -]{2,30}))?)"
    r"(?=[,;(]|$|[ ]with )"
)
_READ = frozenset({"category", "shape", "colour", "status", "water", "wreck", "lit"})
"""Roles of words that are read behind the noun as well as before it."""
_LOOKS = frozenset({"colour", "shape"})
"""`buoy, can, red` is of no category: what its looks mean depends on the region."""


def in_spoken_order(text: str) -> str:
    """The phrase with its noun behind the words that belong before it."""
    told = _PARTS.match(text)
    if told is None or (noun := _kind(told["noun"])) is None:
        return text
    for words, rest in _orders(told):
        whole = _kind(f"{words} {told['noun']}")
        if whole is not None and whole.value != noun.value:
            made = f"{told['article']}{words} {told['noun']}{rest}"
            return made.ljust(told.end()) + text[told.end() :]
    return text


def _orders(told: re.Match[str]) -> Iterator[tuple[str, str]]:
    """What may belong before the noun, and what is left behind it."""
    first, second = told["bracket"] or told["first"], told["second"]
    roles = {_reads_behind(first), _reads_behind(second) if second is not None else "kind"}
    if "kind" not in roles and not roles <= _LOOKS:
        yield f"{second} {first}", ""
    if _reads_behind(first) is None:
        yield first, f", {second}" if second is not None else ""
    if second is not None and _reads_behind(second) is None and _reads_behind(first) != "kind":
        yield second, f", {first}"


def _reads_behind(words: str) -> str | None:
    """The role in which words behind a noun are read, None where they say nothing there."""
    sense = find(key_of(words))
    return sense.role if sense is not None and sense.role in {*_READ, "kind"} else None


def _kind(words: str) -> Sense | None:
    sense = find(key_of(words))
    return sense if sense is not None and sense.role == "kind" else None
