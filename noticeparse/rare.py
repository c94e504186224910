"""Patterns that few texts fit, and the words without which no text does.

Most of what may be said against a command is said of hardly any; to look for all of it in the
words of every command takes longer than to read the command.  Such a pattern is told, beside it,
words of which each match holds one, and is looked for only where one of them may stand.  A test
goes through all of them and names the words that are missing.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache

_LETTERS = 3
_WORD = re.compile(rf"([a-z]{{1,{_LETTERS}}})[a-z]*")


class Rare:
    """A pattern each match of which holds one of some words, or of the beginnings of words."""

    __slots__ = ("compiled", "openings")

    def __init__(self, pattern: str, words: str, flags: int = 0) -> None:
        self.compiled = re.compile(pattern, flags)
        self.openings = openings(words)
        """The first letters of the words; a shorter word stands for itself alone."""

    def search(self, text: str) -> re.Match[str] | None:
        """The first match in a text."""
        return None if self.openings.isdisjoint(openings(text)) else self.compiled.search(text)

    def match(self, text: str) -> re.Match[str] | None:
        """The match at the beginning of a text."""
        return None if self.openings.isdisjoint(openings(text)) else self.compiled.match(text)

    def fullmatch(self, text: str) -> re.Match[str] | None:
        """The match of a whole text."""
        return None if self.openings.isdisjoint(openings(text)) else self.compiled.fullmatch(text)

    def finditer(self, text: str) -> Iterable[re.Match[str]]:
        """All matches in a text."""
        return () if self.openings.isdisjoint(openings(text)) else self.compiled.finditer(text)


@lru_cache(maxsize=512)
def openings(text: str) -> frozenset[str]:
    """The first letters of the words of a text; the net after next asks for the same ones."""
    return frozenset(_WORD.findall(in_small(text)))


def openings_of(*patterns: Rare) -> frozenset[str]:
    """The first letters of words without which none of some patterns matches."""
    return frozenset().union(*(one.openings for one in patterns))


def in_small(text: str) -> str:
    """A text in small letters, as a pattern reads it to which capitals are as good."""
    if not text.isascii():
        # What Python takes for an i or an s.
        text = text.replace("İ", "i").replace("ı", "i").replace("ſ", "s")
    return text.lower()
