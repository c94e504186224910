"""A key to the letters or signs that stand for verbs: `I = insert, D = delete`, `+ insert`."""

from __future__ import annotations

import re
from functools import cache

from noticeparse import grammar
from noticeparse.readers.verbs import canonical_verb

SIGNS = frozenset("-+=>*#×~^!<→±↔")
"""Marks that a key may give a verb."""
NEW_PLACE = "new place"
"""In a key: that the second place of a move is the new one."""
_SECOND_IS_NEW = re.compile(
    r"\b(?:second|lower|latter|last|following) (?:line|row|position|place|one|pair)"
    r" (?:gives|is|shows|states|being|=|for) (?:the |its |that of the )?new"
    r" (?:position|place|one|site)\b"
    r"|\bnew (?:position|place|site) (?:is |stands |given )*(?:in |on )?(?:the )?"
    r"(?:second line|line below|next line|below(?: the (?:old|former) one)?)\b",
    re.IGNORECASE,
)
_LEAST = 2
"""One letter or sign with a verb beside it is no key."""


@cache
def _scanner() -> grammar.Scanner:
    return grammar.scanner("codes", "codes")


def read_codes(text: str) -> dict[str, str]:
    """The verb of each letter or sign, as written; empty where the text is no key.

    `NEW_PLACE` is among them where the text says so of moves.
    """
    found: dict[str, str] = {}
    for kind, start, end in _scanner().scan(text, 0, len(text)):
        words = text[start:end]
        if kind == "SIGN":
            sign = next(c for c in words if c in SIGNS)
            verb = words.replace("=", " ").replace(":", " ").split()[-1]
            if canonical_verb(verb) is None:
                continue
            if found.get(sign, verb) != verb:
                # A mark before every entry is a bullet.
                return {}
            found[sign] = verb
        elif kind == "CODE":
            code = words[: next(i for i, c in enumerate(words) if not c.isalpha())]
            verb = words.replace("=", " ").replace(":", " ").split()[-1]
            meant = canonical_verb(verb)
            # `Ins insert`: a short form that is known anyway; `Do insert` is no key.
            if meant is not None and (code.isupper() or canonical_verb(code) == meant):
                found[code] = verb
    if len(found) < _LEAST:
        found = {}
    if _SECOND_IS_NEW.search(text):
        found[NEW_PLACE] = "move"
    return found
