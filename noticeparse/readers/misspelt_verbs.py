"""Words that are a verb of chart correction but for one slip of the pen: `Dleete`, `amen`.

One letter is left out, doubled, exchanged or changed places with its neighbour.  Such a word is
never read as the verb that it may be; it only tells that a verb was meant (from memory).
"""

from __future__ import annotations

import re
from functools import cache, lru_cache

from noticeparse.readers.slips import one_slip_from
from noticeparse.readers.verbs import canonical_verb
from noticeparse.vocabulary import is_known_word

_VERBS = (
    "insert", "delete", "remove", "replace", "amend", "change", "alter", "erase", "expunge",
    "cancel", "correct", "modify", "establish", "relocate", "reposition", "substitute",
    "withdraw", "discontinue", "disestablish", "deletion", "insertion", "addition", "removal",
    "amendment",
)  # fmt: skip
_ENDINGS = ("", "d", "ed", "s", "es", "ing")
_WORDS_OF_THEIR_OWN = frozenset(
    "later altar charge chance charged chances remote removes elate emend mend insect eraser"
    " elated correction collect alert alters amends easel delate chanced ranged rase changer"
    " mended enlace canal modifies revise edition additional after alder preposition proposition"
    " prepositions".split()
)
"""Words of the language that lie as near to a verb, and are none."""
_LONGEST = 16


@cache
def written_verbs() -> frozenset[str]:
    """The verbs in their forms, as far as these are verbs."""
    stems = {*_VERBS, *(verb.removesuffix("e") for verb in _VERBS)}
    forms = {stem + ending for stem in stems for ending in _ENDINGS}
    return frozenset(form for form in forms if canonical_verb(form) is not None)


@lru_cache(maxsize=4096)
def is_misspelt_verb(word: str) -> bool:
    """Whether a word is no verb and no word of the trade, but one slip away from a verb."""
    plain = word.lower()
    if not 4 <= len(plain) <= _LONGEST or not plain.isascii() or not plain.isalpha():
        return False
    if canonical_verb(plain) is not None or plain in _WORDS_OF_THEIR_OWN:
        return False
    return not is_known_word(plain) and not written_verbs().isdisjoint(one_slip_from(plain))


_FIRST = re.compile(r"(?:please |kindly )?(?P<verb>[A-Za-z]{4,16})(?![A-Za-z-])", re.IGNORECASE)
_BEHIND = re.compile(
    r"(?:[,;.] |\band |\bthen ){1,2}(?P<verb>[A-Za-z]{5,16})(?= (?:an?|the) )", re.IGNORECASE
)


def misspelt_verb(words: str) -> tuple[int, int] | None:
    """Where a misspelt verb opens words, or a second command in them: `… and innsert a depth`."""
    first = _FIRST.match(words)
    if first is not None and is_misspelt_verb(first["verb"]):
        return first.span("verb")
    behind = (found for found in _BEHIND.finditer(words) if is_misspelt_verb(found["verb"]))
    found = next(behind, None)
    return None if found is None else found.span("verb")
