"""A stretch of words gathered from the text, perhaps from several lines.

The pieces stand apart in the text (a line ended, a page foot came between) and are read as one,
joined by a blank.  Offsets within it lead back to the repaired text.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.text import without_cut

QUOTED = re.compile(r'"[^"]*"')
"""A wording in quote marks: what it says stands on the chart, and commands nothing."""
_ASIDE = re.compile(r'"[^"]*"|\([^()]*\)')


class Stretch(NamedTuple):
    """`text` as read, and where each piece of it starts: (offset within, offset in the text)."""

    text: str
    starts: tuple[tuple[int, int], ...]

    def outer(self, offset: int) -> int:
        """The offset in the repaired text of the character at `offset` of the stretch."""
        within, outside = self.starts[0] if self.starts else (0, 0)
        for one, other in self.starts:
            if one > offset:
                break
            within, outside = one, other
        return outside + offset - within

    def extent(self, span: tuple[int, int]) -> tuple[int, int]:
        """Where a span of the stretch begins and ends in the repaired text."""
        return self.outer(span[0]), self.outer(span[1] - 1) + 1

    def part(self, start: int, end: int) -> Stretch:
        """The stretch from `start` to `end` of this one, marks at its ends left out."""
        while start < end and self.text[start] in " ,;:-":
            start += 1
        while end > start and self.text[end - 1] in " ,;:-([":
            end -= 1
        first = (0, self.outer(start))
        rest = tuple((a - start, b) for a, b in self.starts if start < a < end)
        return Stretch(self.text[start:end], (first, *rest))


_NOTHING = Stretch("", ())


def gather(text: str, pieces: Sequence[tuple[int, int]]) -> Stretch:
    """The pieces (start, end in the repaired text) read as one stretch."""
    if not pieces:
        return _NOTHING
    if len(pieces) == 1:
        start, end = pieces[0]
        words = text[start:end]
        return Stretch(words, ((0, start),) if words else ())
    words = ""
    starts: list[tuple[int, int]] = []
    for start, end in pieces:
        piece = text[start:end]
        if not piece:
            continue
        if words.endswith("-") and piece[0].islower():
            # A page foot parts a word that is cut: `recom-`, `mended track`.
            words = without_cut(words)
        elif words:
            words += " "
        starts.append((len(words), start))
        words += piece
    return Stretch(words, tuple(starts))


def blanked(words: str, pattern: re.Pattern[str]) -> str:
    """The words with blanks for all that a pattern matches, so that offsets in them stay."""
    return pattern.sub(_as_blanks, words)


def unquoted(words: str) -> str:
    """The words with blanks for all wordings in quote marks."""
    # Most words quote nothing, and this is asked for each item again and again.
    return QUOTED.sub(_as_blanks, words) if '"' in words else words


def without_asides(words: str) -> str:
    """The words with blanks for all wordings in quote marks, and for what stands in brackets."""
    return _ASIDE.sub(_as_blanks, words) if '"' in words or "(" in words else words


def _as_blanks(match: re.Match[str]) -> str:
    return " " * len(match.group())


EMPTY = Stretch("", ((0, 0),))
"""A stretch of no words."""


def concatenated(first: Stretch, second: Stretch, joint: str = ", ", ending: str = "") -> Stretch:
    """Two stretches read as one; the words of `joint` and `ending` stand nowhere in the text."""
    if not second.text:
        return first
    if not first.text:
        return second._replace(text=second.text + ending)
    shift = len(first.text) + len(joint)
    moved = tuple((within + shift, outside) for within, outside in second.starts)
    return Stretch(first.text + joint + second.text + ending, first.starts + moved)
