"""Verbs behind the places of a thing, beside things that say theirs in front of the place.

`Pile: removed in P` says it in front, `Ferry route joining P and Q: deleted` cannot.  Such a verb
ends its item; whose places they are, where a line holds nothing else, is told by the line above.
"""

from __future__ import annotations

from typing import NamedTuple

from noticeparse.layout.evidence import tells
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line

_MARKS = (":", ",", "-")
_OPENING = ("bar", "label")


class End(NamedTuple):
    """A line cut before the verb at its end."""

    verb: Element
    line: Line
    """The line without its verb, and without the mark before it."""
    has_thing: bool
    """Whether the line names the thing, in front of the places."""


def done_at_end(text: str, line: Line) -> End | None:
    """The line cut at a verb that a mark parts from the places before it; None for others."""
    told = [e for e in line.elements if any(map(str.isalnum, text[e.start : e.end]))]
    if len(told) < 2 or told[-1].kind != "verb" or told[-2].kind not in PLACES:
        return None
    verb, place = told[-1], told[-2]
    if text[place.end : verb.start].strip() not in _MARKS:
        return None
    before = line.elements[: line.elements.index(place) + 1]
    first = next(e for e in before if e.kind not in _OPENING)
    said = [e for e in before if tells(text, e)]
    # Words among the places would be of another thing.
    if any(e is not first for e in said) or any(e.kind in ("verb", "passive") for e in before):
        return None
    return End(verb, line._replace(elements=before), bool(said))
