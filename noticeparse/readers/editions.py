"""Lines outside the notices: edition numbers, page heads and feet, titles of lists."""

from __future__ import annotations

from functools import cache, lru_cache
from typing import NamedTuple

from noticeparse import grammar

LIST_KINDS = {
    "CONTENTS": "contents",
    "INDEX_OF_CHARTS": "index_of_charts",
    "IN_FORCE": "in_force",
    "CANCELLED": "cancelled",
    "NEW_CHARTS": "new_charts",
    "CUMULATIVE": "cumulative",
}
"""Terminal of a list's title, and the kind of the list."""


class LineWords(NamedTuple):
    """The terminals found in one line, in order, with the words of each."""

    parts: tuple[tuple[str, str], ...]

    def first(self, *kinds: str) -> str | None:
        """The words of the first part of one of these kinds."""
        return next((words for kind, words in self.parts if kind in kinds), None)

    @property
    def plain_words(self) -> int:
        """How many words stand beside the recognised parts."""
        return sum(1 for kind, words in self.parts if kind == "WORD" and len(words) > 3)

    @property
    def list_kind(self) -> str | None:
        """The kind of list this line is the title of, or None."""
        for kind, _ in self.parts:
            if kind in LIST_KINDS:
                return LIST_KINDS[kind]
        return None


@cache
def _scanner() -> grammar.Scanner:
    return grammar.scanner("edition", "parts")


@lru_cache(maxsize=4096)
def opens_with_source(line: str) -> bool:
    """Whether a line opens with a word for where the information came from."""
    # The rest of the line is not read.
    return next((kind for kind, _, _ in _scanner().scan(line, 0, len(line))), "") == "SOURCE"


@lru_cache(maxsize=4096)
def read_line_words(line: str) -> LineWords:
    """The recognised parts of a line outside the notices."""
    return LineWords(
        tuple((kind, line[start:end]) for kind, start, end in _scanner().scan(line, 0, len(line)))
    )


def opens_source(line: str) -> bool:
    """Whether a line opens with words for the source, which are found nowhere else in it."""
    kind, _, _ = next(_scanner().scan(line, 0, len(line)), ("", 0, 0))
    return kind == "SOURCE"
