"""Rows whose verb is said of a property alone: `special buoy / P / topmark to be deleted`.

The buoy stays.  Read without that word, the verb would take the whole thing off the chart, or put
a second one there.  What is altered of it (`range to be altered to 3M`) is read as a change.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.evidence import PROPERTIES
from noticeparse.readers.verbs import canonical_verb

_LONGEST = 60
"""Characters behind a verb that may name a property."""
_MARKS = " \t\n/|:;,.()-–"
_PARTS = (
    r"(?:(?:the|its|their|least|drying|vertical|horizontal|light) ){0,2}"
    r"(?:names?|numbers?|letters?|legends?|labels?|notes?|lights?|character(?:istics?)?|ranges?"
    r"|sectors?|topmarks?|daymarks?|fog signals?|bell|whistle|horn|racon|ais|radar reflectors?"
    r"|depths?|heights?|elevations?|figures?|abbreviations?|colou?rs?|bands?|clearances?|status"
    r"|remarks?|descriptions?|p\.?a|p\.?d|e\.?d|s\.?d)"
)
_PROPERTY = re.compile(rf"(?:{_PARTS}|{PROPERTIES})", re.IGNORECASE)


def hold_properties_behind(text: str, items: Sequence[Item]) -> None:
    """Hold back items whose verb stands, behind the place, beside a bare property."""
    for item in items:
        if item.verb is None or item.verb_piece is None or canonical_verb(item.verb) == "amend":
            continue
        said = _beside(text, item, item.verb_piece)
        if said is not None:
            item.faults.append(Fault("change-unread", *said, {"written": text[slice(*said)]}))


def _beside(text: str, item: Item, verb: Piece) -> Piece | None:
    """The verb with the property before it or behind it, where both stand behind the place."""
    ends = [one.element.end for one in item.places if one.element.end <= verb[0]]
    if not ends or not item.words or item.words[0][0] >= ends[-1]:
        return None
    before = text[ends[-1] : verb[0]]
    if _PROPERTY.fullmatch(before.strip(_MARKS)):
        return verb[0] - len(before.lstrip(_MARKS)), verb[1]
    if before.strip(_MARKS):
        return None
    behind = text[verb[1] : verb[1] + _LONGEST].partition("\n")[0]
    if _PROPERTY.fullmatch(behind.strip(_MARKS)):
        return verb[0], verb[1] + len(behind.rstrip(_MARKS))
    return None
