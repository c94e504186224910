"""Things that share one verb in a sentence: `A wreck in P and a rock in Q are to be inserted`.

Each thing with its own place is a statement by itself, which the verb at the end is said of.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, has_words, words_of
from noticeparse.readers.features import leads_feature
from noticeparse.readers.verbs import canonical_verb

_THING = re.compile(
    r"[,;]? ?(?:and )?(?:the|an?|another) (?P<thing>[^\"]{3,120}?),? (?:in|at)"
    r"(?: pos(?:ition)?\.?)?",
    re.IGNORECASE,
)
_PLACED = (*PLACES, "half")
_RELATES = re.compile(
    r"\b(?:between|from|to|of|near|off|by|with|joining|connecting|linking|along|within|bounded"
    r"|marking|over|under|on|both|each|in|at|not|except)\b",
    re.IGNORECASE,
)
"""Words with which a thing is told by another, or has more than its place."""


def things_told(text: str, statement: Sequence[Element]) -> list[list[Element]]:
    """The statements of the things that a statement tells of; the whole where it is one."""
    whole = [list(statement)]
    told = [index for index, one in enumerate(statement) if one.kind == "passive"]
    if len(told) != 1 or any(has_words(text, one) for one in statement[told[0] + 1 :]):
        return whole
    passive = statement[told[0]]
    if canonical_verb(text[passive.start : passive.end]) not in ("insert", "delete"):
        return whole
    things: list[list[Element]] = []
    is_behind_place = False
    for element in statement[: told[0]]:
        is_place = element.kind in _PLACED
        opens = not is_place and has_words(text, element) and is_behind_place
        if opens or not things:
            things.append([])
        is_behind_place = is_place or (is_behind_place and not opens)
        things[-1].append(element)
    if len(things) < 2 or not all(is_thing(text, one) for one in things):
        return whole
    if "and " not in words_of(text, things[-1]).lower():
        return whole
    return [[*one, passive] for one in things]


def is_thing(text: str, elements: Sequence[Element]) -> bool:
    """Whether elements are a thing with nothing but its place: `a rock in P`."""
    words = words_of(text, [e for e in elements if e.kind == "words"]).strip(" ,;.")
    found = _THING.fullmatch(words)
    if found is None or _RELATES.search(found["thing"]):
        return False
    told = [one for one in elements if one.kind in _PLACED or has_words(text, one)]
    return told[-1].kind in _PLACED and leads_feature(found["thing"])
