"""Sentences that lead to the thing behind their colon: `The following is inserted: a wreck …`."""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.line.elements import Element
from noticeparse.readers.features import has_kind
from noticeparse.readers.verbs import canonical_verb

_FOLLOWING = re.compile(
    r"(?:the |these )?following(?: [a-z][a-z-]{1,20}){0,3}|this (?:area|feature|item)",
    re.IGNORECASE,
)
_CHARACTER = re.compile(r"[A-Za-z]{1,3}[.(][^ ]*")
_LED = ("insert", "delete", "move")


def with_told_lead(text: str, elements: Sequence[Element]) -> list[Element] | None:
    """The elements of a line, such a sentence before its colon as the verb; None for others.

    The thing behind the colon says what it is: `The following light-buoy is moved: Fl.R.5s, …`
    tells it in front.
    """
    if [one.kind for one in elements[:3]] != ["words", "passive", "words"]:
        return None
    lead, told, rest = elements[:3]
    verb = canonical_verb(text[told.start : told.end])
    said = text[rest.start : rest.end]
    if verb not in _LED or _FOLLOWING.fullmatch(text, lead.start, lead.end) is None:
        return None
    own = said.lstrip(" :")
    if not said.startswith(":") or not own or not has_kind(_CHARACTER.sub("", own)):
        return None
    heading = Element("verb", lead.start, rest.start + 1, lead.gap, verb)
    thing = rest._replace(start=rest.end - len(own), gap=True)
    return [heading, thing, *elements[3:]]
