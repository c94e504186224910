"""Where two forms of one text differ: the form that is read, and the one that it was sent with."""

from __future__ import annotations

import re
import unicodedata
from difflib import SequenceMatcher
from typing import NamedTuple

from noticeparse.faults import Fault

_WORD = re.compile(r"\S+")
_ADDRESS = re.compile(r"<?(?:https?://|mailto:|cid:)\S*", re.I)
_NO_PART = re.compile(r"(?<![0-9])[.]|[.](?![0-9])|[^\w.]|_")
_LOW = re.compile(r"[₀-₉]")
_LOW_TENTHS = re.compile(r"(?<=[0-9])(?=[₀-₉])")
_LONGEST = 200
_MOST_WORDS = 6000


class _Word(NamedTuple):
    key: str
    start: int
    end: int
    has_low: bool


def differences(shown: str, other: str) -> list[Fault]:
    """Where the words of `shown` are not those of `other`; offsets count in `shown`.

    Signs and blanks do not count, nor that `other` has no small figures, but a decimal point does.
    What stands in `other` without any figure, where `shown` has them, only sends one there: it is
    told as words that are not seen.
    """
    ours, theirs = _words(shown), _words(other)
    if not any(char.isdigit() for char in other):
        said = " ".join(other.split())[:_LONGEST]
        return [Fault("text-hidden", 0, 0, {"written": said})] if said else []
    found: list[Fault] = []
    for first, last, begin, end in _blocks(ours, theirs):
        if _is_same(ours[first:last], theirs[begin:end]):
            continue
        at = ours[first].start if first < len(ours) else len(shown)
        to = ours[last - 1].end if last > first else at
        said = (
            " ".join(other[theirs[begin].start : theirs[end - 1].end].split())
            if end > begin
            else ""
        )
        found.append(Fault("alternatives-differ", at, to, {"written": said[:_LONGEST]}))
    return found


def _words(text: str) -> list[_Word]:
    found: list[_Word] = []
    for match in _WORD.finditer(_ADDRESS.sub(lambda one: " " * len(one[0]), text)):
        spaced = unicodedata.normalize("NFKC", _LOW_TENTHS.sub(".", match[0]))
        key = _NO_PART.sub("", spaced.replace(",", ".").replace("·", ".")).casefold()
        if key:
            found.append(_Word(key, match.start(), match.end(), bool(_LOW.search(match[0]))))
    return found


def _blocks(ours: list[_Word], theirs: list[_Word]) -> list[tuple[int, int, int, int]]:
    one, two = [word.key for word in ours], [word.key for word in theirs]
    if one == two:
        return []
    if max(len(one), len(two)) > _MOST_WORDS:
        # A comparison of very long texts takes too long; all that is told is that they differ.
        return [(0, len(one), 0, len(two))]
    matcher = SequenceMatcher(None, one, two, autojunk=False)
    return [tuple_[1:] for tuple_ in matcher.get_opcodes() if tuple_[0] != "equal"]


def _is_same(ours: list[_Word], theirs: list[_Word]) -> bool:
    """Whether words differ only in that their small figures are large in the other form."""
    if "".join(one.key for one in ours) == "".join(one.key for one in theirs):
        return True
    return len(ours) == len(theirs) and all(
        one.key == other.key or (one.has_low and one.key.replace(".", "") == other.key)
        for one, other in zip(ours, theirs, strict=True)
    )
