"""Sentences that lead to the thing behind their colon: `The following is inserted: a wreck …`.

So does an order without its subject, `To be inserted: wreck …`; a sentence that names the chart
heads the items below it.
"""

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
_ORDER = re.compile(
    r"(?:(?:is|are) )?to be (?!noted|observed|read|borne|remembered|confirmed|continued|published)"
    r"[a-z-]{3,16}(?: (?:in|out|off|on|up|away|down))? ?:(?=[ \t]{0,12}\S)",
    re.IGNORECASE,
)


def with_told_lead(text: str, elements: Sequence[Element]) -> list[Element] | None:
    """The elements of a line, such a sentence before its colon as the verb; None for others.

    The thing behind the colon says what it is: `The following light-buoy is moved: Fl.R.5s, …`
    tells it in front.
    """
    at = next((i for i, one in enumerate(elements) if one.kind not in ("bar", "label")), 0)
    if (ordered := _order(text, elements[at:])) is not None:
        return [*elements[:at], *ordered]
    if (named := _on_charts(text, elements[at:])) is not None:
        return [*elements[:at], *named]
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


_ON_CHARTS = re.compile(r"\s*(?:on|from|in) (?:the )?charts?\b[^\n:]{1,120}:\s*", re.IGNORECASE)


def _on_charts(text: str, elements: Sequence[Element]) -> list[Element] | None:
    """The elements of `The following are to be inserted on chart 802:`; None for others.

    The line heads items as `Insert on chart 802:` does.
    """
    at = next((i for i, one in enumerate(elements) if one.kind == "passive"), None)
    if at is None or at > 1 or (at == 1 and elements[0].kind != "words"):
        return None
    told, rest = elements[at], elements[at + 1 :]
    is_led = at == 0 or _FOLLOWING.fullmatch(text, elements[0].start, elements[0].end) is not None
    if not rest or not is_led or canonical_verb(text[told.start : told.end]) not in _LED:
        return None
    if _ON_CHARTS.fullmatch(text, told.end, rest[-1].end) is None:
        return None
    verb = canonical_verb(text[told.start : told.end])
    return [Element("verb", elements[0].start, told.end, elements[0].gap, verb), *rest]


def _order(text: str, elements: Sequence[Element]) -> list[Element] | None:
    """The elements, `To be inserted:` before a thing as their verb; None for others."""
    if not elements or elements[0].kind not in ("words", "passive"):
        return None
    told = _ORDER.match(text, elements[0].start, elements[-1].end)
    if told is None:
        return None
    start, end = told.span()
    rest = [one._replace(start=max(one.start, end)) for one in elements if one.end > end]
    if not rest or rest[0].kind not in ("words", "label"):
        return None
    said = text[rest[0].start : rest[0].end]
    rest[0] = rest[0]._replace(start=rest[0].end - len(said.lstrip()), gap=True)
    is_thing = rest[0].kind == "label" or has_kind(_CHARACTER.sub("", said))
    return [Element("verb", start, end, elements[0].gap), *rest] if is_thing else None
