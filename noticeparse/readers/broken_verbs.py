"""Verbs of chart correction that a copy has broken: `D E L E T E`, `Del- ete`, `De1efe`.

Blanks between the letters, other signs for some of them, the word behind joined to it, a letter
of a telegram's verb cut off.  Such words are never read as the verb that they may be; they only
tell that a verb was meant, so that the one above does not hold (common practice, no published
source).
"""

from __future__ import annotations

import re
from functools import cache, lru_cache

from noticeparse.readers.features import has_kind
from noticeparse.readers.misspelt_verbs import is_misspelt_verb, written_verbs
from noticeparse.readers.verbs import canonical_verb
from noticeparse.vocabulary import is_known_word

_SPACED = re.compile(r"(?:[A-Za-z] {1,3}){2,14}[A-Za-z](?![A-Za-z])")
_PARTED = re.compile(r"([A-Za-z]{1,12})(?: |- ?)([A-Za-z]{1,12})(?![A-Za-z])")
_MIXED = re.compile(
    r"(?=[A-Za-z]*[0-9|!$@*#?_~])[A-Za-z0-9|!$@*#?_~]{5,16}(?![A-Za-z0-9'°-]|\.[A-Za-z0-9])"
)
_GLUED = re.compile(r"([A-Z]{3,16}(?: [A-Z]{2,4})?)[a-z]{3,20}(?![A-Za-z])")
_WORD = re.compile(r"[A-Za-z]{4,40}(?![A-Za-z-])")
_PLACEHOLDER = re.compile(r"([XxZz?_*#])\1{2,20}(?=[ :])")
_WHOLE_WORDS_BEFORE = frozenset(("with",))
"""`with draw bridge`: two words, and no verb in two pieces."""
_SHORT = frozenset("add move moved moves added shift shifted entered placed transferred".split())
"""Verbs that are known in two pieces, and too near to other words to be known by a slip."""
_FEWEST_LETTERS = 4
_MOST_SIGNS = 2
_SLIPS_BESIDE_SIGNS = 2
_OF_TELEGRAMS = ("ins", "del", "amd", "rpl", "add", "chg", "rmv", "mov")


@lru_cache(maxsize=4096)
def broken_verb_end(words: str) -> int | None:
    """Where a broken or misspelt verb ends that opens some words; None for other words."""
    first = words.partition(" ")[0]
    if is_misspelt_verb(first):
        return len(first)
    if (told := _PLACEHOLDER.match(words)) is not None:
        return told.end()
    for pattern, is_verb in ((_SPACED, _is_spaced), (_PARTED, _is_parted), (_MIXED, _is_mixed)):
        told = pattern.match(words)
        if told is not None and is_verb(told):
            return told.end()
    return _glued_end(words)


def _is_spaced(told: re.Match[str]) -> bool:
    joined = told[0].replace(" ", "")
    return canonical_verb(joined) is not None or is_misspelt_verb(joined)


def is_spaced_verb(words: str) -> bool:
    """Whether words are a verb and nothing else, with blanks between its letters."""
    told = _SPACED.fullmatch(words)
    return told is not None and _is_spaced(told)


def _is_parted(told: re.Match[str]) -> bool:
    first, last = told[1].lower(), told[2].lower()
    joined = first + last
    if first in _WHOLE_WORDS_BEFORE or joined not in (written_verbs() | _SHORT):
        return False
    return canonical_verb(first) is None or not is_known_word(last)


def _is_mixed(told: re.Match[str]) -> bool:
    """Whether letters with other signs among them lie near a verb: `lu5ert`."""
    plain = told[0].lower()
    signs = sum(not char.isalpha() for char in plain)
    if signs > _MOST_SIGNS or len(plain) - signs < _FEWEST_LETTERS:
        return False
    return any(_is_near(plain, verb) for verb in written_verbs() if len(verb) == len(plain))


def _is_near(plain: str, verb: str) -> bool:
    slips = sum(a.isalpha() and a != b for a, b in zip(plain, verb, strict=True))
    return slips <= _SLIPS_BESIDE_SIGNS and slips * 3 <= len(verb)


def _glued_end(words: str) -> int | None:
    """Where a verb ends that lost the blank behind it: `TAKE OUTbarge buoy`, `Deletewreck`."""
    told = _GLUED.match(words)
    if told is not None and canonical_verb(told[1]) is not None:
        return told.end()
    word = _WORD.match(words)
    if word is None or is_known_word(word[0].lower()):
        return None
    plain = word[0].lower()
    ends = (at for at in range(_FEWEST_LETTERS, len(plain)) if plain[:at] in written_verbs())
    return len(plain) if any(has_kind(plain[at:]) for at in ends) else None


@cache
def _cut() -> frozenset[str]:
    """What is left of a verb of telegrams when one letter of it is lost: `EL` for `DEL`."""
    return frozenset(v[:at] + v[at + 1 :] for v in _OF_TELEGRAMS for at in range(len(v)))


def is_cut_short(word: str) -> bool:
    """Whether a word may be a verb of telegrams that has lost a letter."""
    return word.lower() in _cut()
