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
_MEANING = re.compile(r"[a-z' ,]{0,60}")
"""What may follow the first word of a meaning: `goes on the chart`, `one thing gives way to …`."""
_MEANINGS: tuple[tuple[re.Pattern[str], str], ...] = tuple(
    (re.compile(rf"(?:{'|'.join(words)})\b"), verb)
    for verb, words in {
        "delete": (
            r"(?:[a-z]+ )?(?:off|from) (?:the|this) charts?", "no longer there", "gone",
            r"(?:takes?|taken|comes?|goes) (?:off|out|away)",
        ),
        "insert": (
            r"(?:[a-z]+ )?on(?:to)? (?:the|this) charts?", r"(?:put|goes|to go) (?:on|in)",
            r"new(?! (?:value|name|character|position|place))",
        ),
        "replace": (
            r"(?:one )?[a-z]+ (?:gives way to|in place of|instead of|for|by) (?:an?other|new|old)",
            r"(?:old|one) (?:by|for) (?:the )?(?:new|another)",
        ),
        "amend": ("changed", "altered", "corrected"),
        "move": (r"(?:new|other|another) (?:position|place)", "goes elsewhere"),
    }.items()
)  # fmt: skip
"""How keys tell what is done, where they use no verb for it."""
_LEAST = 2
"""One letter or sign with a verb beside it is no key."""


def _verb_told(text: str, start: int, end: int) -> str | None:
    """The verb that a letter or sign with its meaning stands for, as written where it is one."""
    first = text[start:end].replace("=", " ").replace(":", " ").split()[-1]
    rest = _MEANING.match(text, end)
    meaning = f"{first}{rest[0] if rest else ''}".lower()
    told = next((verb for words, verb in _MEANINGS if words.match(meaning)), None)
    if told is not None and meaning != first.lower():
        return told
    return first if canonical_verb(first) is not None else told


@cache
def _scanner() -> grammar.Scanner:
    return grammar.scanner("codes", "codes")


@cache
def _pairs() -> grammar.Scanner:
    return grammar.scanner("codes", "abbreviations")


def explains_abbreviations(text: str) -> bool:
    """Whether a text is a key to short forms and nothing else: `Wk = wreck, Rk = rock`.

    The last pair may be cut off where the line ends: `Wk = wreck, Rk =`.
    """
    kinds = [kind for kind, _, _ in _pairs().scan(text, 0, len(text))]
    return "PLAIN" not in kinds and kinds.count("ABBREVIATION") >= _LEAST


def read_codes(text: str, *, goes_on: bool = False) -> dict[str, str]:
    """The verb of each letter or sign, as written; empty where the text is no key.

    A single one is a key only where it `goes_on` with one above.
    `NEW_PLACE` is among them where the text says so of moves.
    """
    found: dict[str, str] = {}
    for kind, start, end in _scanner().scan(text, 0, len(text)):
        if kind == "OTHER":
            continue
        words = text[start:end]
        if kind == "SIGN":
            code = next(c for c in words if c in SIGNS)
        else:
            code = words[: next(i for i, c in enumerate(words) if not c.isalpha())]
        verb = _verb_told(text, start, end)
        if verb is None:
            continue
        is_known = canonical_verb(code) == canonical_verb(verb)
        if kind == "CODE" and not (code.isupper() or "=" in words or is_known):
            # `Ins insert`: a short form that is known anyway; `Do insert` is no key.
            continue
        if found.get(code, verb) != verb:
            # A mark before every entry is a bullet.
            return {}
        found[code] = verb
    if len(found) < (1 if goes_on else _LEAST):
        found = {}
    if _SECOND_IS_NEW.search(text):
        found[NEW_PLACE] = "move"
    return found
