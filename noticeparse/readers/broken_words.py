"""Words of a feature that a copy has broken: `light-bu**`, `overhe- ad cable`, `lea st depth`.

What is left of the word is none, and the words beside it name another kind, or tell less.  The
word is not guessed (common practice, no published source).
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.told import Told
from noticeparse.readers.verbs import canonical_verb
from noticeparse.stretch import unquoted
from noticeparse.vocabulary import is_known_word

_WITH_SIGNS = re.compile(r"(?<![A-Za-z])[A-Za-z]{1,16}(?:\*{2,9}|_{2,9}|#{2,9}|\?{2,9}|~{2,9})")
_PARTED = re.compile(r"(?<![A-Za-z-])([A-Za-z]{2,14})- ([A-Za-z]{2,14})(?![A-Za-z-])")
_LEFT = re.compile(r"[a-z] (?P<left>an?|the)[ ,.]{0,3}$")
"""An article that ends a phrase: `rock a`, where `awash` stood."""
_OF_SENDERS = frozenset("physical real synthetic base shore station receiver new existing".split())
"""What may be said of an AIS beside `virtual`."""


def broken_words(text: str, told: Told) -> Iterator[Fault]:
    """Faults of words in pieces, or with signs in the place of letters."""
    plain = unquoted(text)
    for found in (*_WITH_SIGNS.finditer(plain), *_in_pieces(plain)):
        yield _fault(text, *found.span())
    if (left := _LEFT.search(plain)) is not None:
        yield _fault(text, *left.span("left"), code="feature-words-unread")
    for first, second in pairwise(told.items):
        is_close = text[first.end : second.start] == " " and not first.bracketed
        if not is_close or first.role not in ("unknown", "plain") or not first.text.isalpha():
            continue
        if second.role == "unknown" and _are_one_word(first.text, second.text):
            yield _fault(text, first.start, second.end)
        elif second.role == "ais" and _is_strange(first.text):
            # Whether the mark is there at all, or only its signal.
            yield _fault(text, first.start, first.end)


def _are_one_word(first: str, second: str) -> bool:
    """Whether two words are pieces of one of the trade: `lea st`."""
    both = _is_word(first) and is_known_word(second.lower())
    return not both and first[1:].islower() and is_known_word(f"{first}{second}".lower())


def _is_strange(word: str) -> bool:
    return word.islower() and len(word) > 2 and not _is_word(word) and word not in _OF_SENDERS


def _is_word(word: str) -> bool:
    return is_known_word(word.lower()) or canonical_verb(word) is not None


def _in_pieces(plain: str) -> Iterator[re.Match[str]]:
    """`obstructi- on`: a word of the trade when joined, and none before its hyphen."""
    for found in _PARTED.finditer(plain):
        first, second = found[1].lower(), found[2].lower()
        if not is_known_word(first) and is_known_word(first + second):
            yield found


def _fault(text: str, start: int, end: int, code: str = "text-garbled") -> Fault:
    return Fault(code, start, end, {"written": shown(text[start:end])})
