"""Things that share the verb of the first: `A wreck is to be inserted in P and a rock in Q`.

Each has its place behind it, and the first has its own behind the verb.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, has_words, words_of
from noticeparse.layout.sentence.things_told import is_thing
from noticeparse.readers.verbs import canonical_verb

_PLACED = (*PLACES, "half")
_ARTICLES = {
    "insert": re.compile(r"[,\s]{0,80}(?:and\s{1,80})?(?:an?|another)\s", re.IGNORECASE),
    "delete": re.compile(r"[,\s]{0,80}(?:and\s{1,80})?the\s", re.IGNORECASE),
}
"""How a thing is named that is new, and one that is on the chart: others are named beside it."""


def things_placed_behind(text: str, statement: Sequence[Element]) -> list[list[Element]]:
    """The statements of the things that follow each other behind one verb; else the whole."""
    whole = [list(statement)]
    told = [index for index, one in enumerate(statement) if one.kind == "passive"]
    if len(told) != 1 or any(one.kind in _PLACED for one in statement[: told[0]]):
        return whole
    passive = statement[told[0]]
    article = _ARTICLES.get(canonical_verb(text[passive.start : passive.end]) or "")
    if article is None:
        return whole
    things: list[list[Element]] = [list(statement[: told[0] + 1])]
    is_behind_place = False
    for element in statement[told[0] + 1 :]:
        is_place = element.kind in _PLACED
        if is_behind_place and element.kind == "words" and has_words(text, element):
            things.append([])
            is_behind_place = False
        is_behind_place = is_place or is_behind_place
        things[-1].append(element)
    further = things[1:]
    if not further or not all(_is_further(text, article, one) for one in further):
        return whole
    last = (one for one in further[-1] if one.kind == "words")
    if "and " not in words_of(text, last).lower():
        return whole
    return [things[0], *([passive, *one] for one in further)]


def is_of_first(text: str, statement: Sequence[Element]) -> bool:
    """Whether a statement is of such a further thing, in front of which the verb is put."""
    if statement[0].kind != "passive" or len(statement) < 2:
        return False
    between = text[statement[0].end : statement[1].start]
    return any(map(str.isalnum, between))


def _is_further(text: str, article: re.Pattern[str], elements: Sequence[Element]) -> bool:
    return article.match(text, elements[0].start) is not None and is_thing(text, elements)
