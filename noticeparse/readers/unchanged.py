"""Words in the place of a verb by which nothing is to be done: `No change`, `Nil`, `retain`."""

from __future__ import annotations

import re

from noticeparse.readers.verbs import canonical_verb

_LONGEST = 5
_NONE = frozenset({"no", "without", "not", "never", "nil", "none", "nothing"})
_ALONE = frozenset(
    "nil none nothing n/a retain retained keep kept leave left stay stays remain remains maintain"
    " unchanged unaltered unaffected ignore disregard".split()
)
_OF_CHANGE = frozenset("action actions change changes correction corrections".split())
AT_START = re.compile(
    r"[ :]*(?:please )?(?:disregard|ignore|revoke|rescind|annul|void|countermand|retain|keep|leave"
    r"|unchanged|unaltered|unaffected|stays?|remains?|nil|none|nothing"
    r"|(?:no|without) (?:further )?(?:change|deletion|insertion|addition|removal|action))\b",
    re.IGNORECASE,
)
"""At the start of an item below a verb: that verb is taken back for it."""

_FOR_INFORMATION = re.compile(
    r"(?:notes?|remarks?|info|(?:(?:none|nil|nothing|no (?:action|change|correction)s?)"
    r"(?: required| needed)?[ ,;:.(-]{1,3})?(?:for )?(?:your )?information(?: only)?)[ .:)]{0,2}",
    re.IGNORECASE,
)


def is_for_information(words: str) -> bool:
    """Whether words in the place of a verb say that a row is only to be known."""
    return _FOR_INFORMATION.fullmatch(words) is not None


def changes_nothing(words: str) -> bool:
    """Whether words, all that stands in the place of a verb, say that nothing is to be done."""
    plain = words.lower().strip(" .,:;-*()[]").split()
    if not plain or len(plain) > _LONGEST:
        return False
    if plain[0] in _ALONE and (len(plain) == 1 or plain[1] in ("as", "unchanged", "in")):
        return True
    told = any(word in _OF_CHANGE or canonical_verb(word) is not None for word in plain[1:])
    return plain[0] in _NONE and told
