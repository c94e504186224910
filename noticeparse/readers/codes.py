"""A key to the letters that stand for verbs in a column: `I = insert, D = delete`."""

from __future__ import annotations

from functools import cache

from noticeparse import grammar
from noticeparse.readers.verbs import canonical_verb

_LEAST = 2
"""One letter with a verb beside it is no key."""


@cache
def _scanner() -> grammar.Scanner:
    return grammar.scanner("codes", "codes")


def read_codes(text: str) -> dict[str, str]:
    """The verb of each letter, as written; empty where the text is no key."""
    found: dict[str, str] = {}
    for kind, start, end in _scanner().scan(text, 0, len(text)):
        if kind != "CODE":
            continue
        words = text[start:end]
        code = words[: next(i for i, c in enumerate(words) if not c.isalpha())]
        verb = words.replace("=", " ").replace(":", " ").split()[-1]
        meant = canonical_verb(verb)
        # `Ins insert`: a short form that is known anyway; `Do insert` is no key.
        if meant is not None and (code.isupper() or canonical_verb(code) == meant):
            found[code] = verb
    return found if len(found) >= _LEAST else {}
