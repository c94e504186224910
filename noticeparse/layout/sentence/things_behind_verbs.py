"""Sentences of decrees that name their things behind the verb: `There is inserted in P a wreck`.

In comes a statement; out come the statements of its things, each with `There` and the verb in
front.  Only what is inserted or deleted is told so: `There is substituted …` needs both things.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, has_words
from noticeparse.layout.sentence.things_told import things_told
from noticeparse.readers.features import leads_feature
from noticeparse.readers.verbs import canonical_verb

_TOLD_SO = ("insert", "delete")
_THING = re.compile(r"[\s,;]*(?:the|an?|two|three|four)\s", re.IGNORECASE)
_NOTHING = re.compile(
    r"(?<![A-Za-z])(?:no(?![ .]*[0-9A-Z])|NO(?= [A-Z]{3})|(?i:not|none|nothing|neither|nor))"
    r"(?![A-Za-z])"
)
_QUOTED = re.compile(r"\"[^\"]*\"")
# `…, a wreck, and, in Q, a rock`: behind the thing at P the next place is led to.
_NEXT_PLACE = re.compile(
    r"[,;]?\s+(?P<next>and),?\s+(?:in|at)(?:\s+pos(?:ition)?\.?)?,?\s*\Z", re.IGNORECASE
)


def verb_ahead(text: str, statement: Sequence[Element]) -> int | None:
    """The index of the verb behind `There` that opens a statement; None for other sentences."""
    index = next((i for i, one in enumerate(statement) if one.kind == "passive"), None)
    if index is None or not index:
        return None
    there, verb = statement[index - 1], statement[index]
    if text[there.start : there.end].strip().lower() != "there":
        return None
    if any(has_words(text, one) for one in statement[: index - 1] if one.kind != "label"):
        return None
    told = canonical_verb(text[verb.start : verb.end])
    said = _QUOTED.sub("", text[verb.end : statement[-1].end])
    return index if told in _TOLD_SO and _NOTHING.search(said) is None else None


def things_behind(text: str, statement: Sequence[Element], index: int) -> list[list[Element]]:
    """The statements of the things behind the verb; the whole where it is one thing."""
    lead, rest = [*statement[: index + 1]], [*statement[index + 1 :]]
    while rest and not has_words(text, rest[-1]):
        rest.pop()
    told = things_told(text, [*rest, statement[index]])
    if len(told) > 1:
        return [[*lead, *(one for one in thing if one.kind != "passive")] for thing in told]
    parts = _parted(rest, [*_next_places(text, rest)])
    if len(parts) < 2 or not all(_is_thing(text, part) for part in parts):
        return [list(statement)]
    return [[*lead, *part] for part in parts]


def own_elements(text: str, statement: Sequence[Element], index: int) -> Sequence[Element]:
    """What of a statement is of its own thing: the verb stands in the item of the first alone."""
    verb, first = statement[index], statement[index + 1]
    is_first = not text[verb.end : first.start].strip(" ,\n")
    return statement if is_first else statement[index + 1 :]


def _parted(elements: Sequence[Element], cuts: Sequence[int]) -> list[list[Element]]:
    """The elements, parted at some offsets within their words."""
    parts: list[list[Element]] = []
    bounds = [elements[0].start if elements else 0, *cuts, elements[-1].end if elements else 0]
    for start, end in pairwise(bounds):
        own = [e for e in elements if e.start < end and e.end > start]
        parts.append([e._replace(start=max(e.start, start), end=min(e.end, end)) for e in own])
    return parts


def _next_places(text: str, rest: Sequence[Element]) -> Iterator[int]:
    """Where the words that lead to the place of another thing begin, each behind a thing."""
    for at in range(1, len(rest) - 1):
        first = _first_of_words(rest, at)
        is_between = first and rest[first - 1].kind in PLACES and rest[at + 1].kind in PLACES
        if rest[at].kind != "words" or not is_between:
            continue
        words = text[rest[first].start : rest[at].end]
        joint = _NEXT_PLACE.search(words)
        if joint is not None and _names_thing(words[: joint.start()]):
            yield rest[first].start + joint.start("next")


def _first_of_words(elements: Sequence[Element], at: int) -> int:
    """The index of the first of the words that lines have parted and that end at an index."""
    while at and elements[at - 1].kind == "words":
        at -= 1
    return at


def _is_thing(text: str, part: Sequence[Element]) -> bool:
    """Whether a part is places and behind them the thing that lies there."""
    if part[-1].kind != "words":
        return False
    first = _first_of_words(part, len(part) - 1)
    return _names_thing(text[part[first].start : part[-1].end])


def _names_thing(words: str) -> bool:
    article = _THING.match(words)
    return article is not None and leads_feature(" ".join(words[article.end() :].split()))
