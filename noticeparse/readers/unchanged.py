"""Words in the place of a verb by which nothing is to be done: `No change`, `Nil`, `retain`."""

from __future__ import annotations

import re

from noticeparse.readers.verbs import canonical_verb
from noticeparse.stretch import unquoted

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

_STAYS = (
    r"(?:is|are|to|all|remains?|stays?|kept|left)?(?: (?:to )?(?:remain|stay|all))?"
    r" ?(?:unchanged|unaltered|unaffected|retained|as (?:before|charted|shown)|the same)"
)
_REST = re.compile(
    r"[,;.:]? ?\(?(?<![a-z])(?:"
    r"(?:(?:all|any|the) ){0,2}(?:other|remaining|rest of the) (?:light )?(?:details?|particulars"
    r"|charact(?:er|eristic)s?|items|elements|parts|values|information|wording|data|text|sectors)"
    rf" {_STAYS}"
    r"|(?:the )?(?:remainder|rest)(?: of (?:the )?(?:note|legend|light|details?|text|wording"
    rf"|character|characteristics|description))? {_STAYS}"
    rf"|(?:all|everything) else {_STAYS}|otherwise {_STAYS}|character(?:istic)?s? {_STAYS}"
    r"|(?:with )?no other changes?)\)?(?![a-z])\.?",
    re.IGNORECASE,
)
"""What an amendment leaves as it is: `light to Fl.G.4s, other details unchanged`."""


def without_the_rest(text: str) -> str:
    """The phrase of a change, of the same length, without words of what does not change."""
    told = unquoted(text)
    for found in _REST.finditer(told):
        if found.start():
            start, end = found.span()
            text = f"{text[:start]}{' ' * (end - start)}{text[end:]}"
    return text


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
