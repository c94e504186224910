"""Nouns that command what stands behind them: `Insertion of a rock` above its position.

The same words open titles and sentences: `Removal of the wreck in P has begun.`
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.line.elements import Element
from noticeparse.readers.verbs import canonical_verb

_FAR = 400
_LINES = 6
_POSITION = re.compile(
    r"[0-9]{1,3} ?[°-] ?[0-9]{2}|[0-9]{4,7}(?:\.[0-9]{1,4})? ?[NS]|[0-9]\.[0-9]{3,8}°? ?[NS]"
    r"|[+-][0-9]{1,2}\.[0-9]{3,}"
)
_OTHERS = re.compile(
    r"[ \t]{0,20}(?:\n|\Z|(?:charts?|chts?|sheets?)\b|[0-9]{1,5} ?(?:\([TP]\))? ?/)", re.IGNORECASE
)
_TOLD = re.compile(
    r"\b(?:is|are|was|were|be|been|being|will|would|has|have|had|may|might|shall|should|must|can"
    r"|could|began|begins?|begun|starts?|started|commence[sd]?|continue[sd]?|took|takes|expected"
    r"|planned|proposed|intended|pending|due|until|completed|requires?|required|ends?|ended"
    r"|delayed|postponed|scheduled)\b",
    re.IGNORECASE,
)
_BEHIND = re.compile(
    r"(?:[^A-Za-z]|(?<![A-Za-z])(?:[NSEWMm]|P[AD]|ED|SD|and|to|from|of|in|radius|charts?|only|met"
    r"res|miles?|cables?|close|above|below|WGS|datum|approx(?:imate(?:ly)?)?|positions?|doubtful)"
    r"(?![A-Za-z]))*",
    re.IGNORECASE,
)
"""What may stand behind the last position of a command; other words make it a sentence."""
_QUOTED = re.compile(r'"[^"\n]{0,80}"')
_BRACKET = re.compile(r"(?<=[NSEWnsew.]) {0,40}\([^()\n]{1,60}\)")
"""What says more of a position right in front of it: `P (km 62.3, left bank)`."""


def leaves_place_above(text: str, elements: Sequence[Element], is_below: bool) -> bool:
    """Whether the line below these elements stands below a place: theirs, or that above both.

    Under one place there may be several commands: `Insertion of a light-buoy`, `Deletion of a`.
    """
    for element in elements:
        if element.kind in ("point", "half"):
            return True
    first = elements[0] if elements else None
    if first is None or first.kind != "verb" or not is_below:
        return False
    return text[first.start : first.end].endswith((" of", " in"))


def commands_by_noun(
    text: str,
    noun: tuple[int, int],
    found: Sequence[Element],
    words: Sequence[int],
    *,
    is_below: bool,
) -> bool:
    """Whether a noun is a command, behind elements and words of its line, or below a place.

    In small letters it is one right behind a place alone: `P: insertion of a rock`.
    """
    start, end = noun
    is_next = not words or not text[words[0] : words[1]].strip(" :,;-")
    if text[start].islower() and not (is_next and found and found[-1].kind in _PLACED):
        return False
    if any(element.kind == "number" for element in found):
        return False
    placed = is_next and any(e.kind in ("point", "half", "reference") for e in found)
    return _is_command(text, end, behind_place=placed or (not found and is_below))


_PLACED = ("point", "half", "reference", "bar")


def _is_command(text: str, end: int, *, behind_place: bool) -> bool:
    """Whether a noun that ends at an offset is a command, and no title and no sentence.

    A position stands behind it, before other heads and commands, or right before it.
    """
    said = _QUOTED.sub("", _stretch(text, end, behind_place=behind_place))
    place = _POSITION.search(said)
    is_told = _TOLD.search(said) is not None
    if is_told or not (place is not None or behind_place):
        return False
    last = list(_POSITION.finditer(said))[-1:]
    behind = _BRACKET.sub("", said[last[0].end() :]) if last else ""
    return _BEHIND.fullmatch(behind) is not None


def _stretch(text: str, end: int, *, behind_place: bool) -> str:
    """The words behind the noun: its line, and those below it up to the next item."""
    lines = text[end : end + _FAR].split("\n")[:_LINES]
    kept = [lines[0]]
    for line in lines[1:]:
        placed = behind_place or _POSITION.search(kept[-1]) is not None
        if _OTHERS.match(line) or (placed and not line.lstrip()[:1].islower()):
            break
        first = line.split(None, 1)[0] if line.strip() else ""
        if first[:1].isupper() and canonical_verb(first.rstrip(":")) is not None:
            break
        kept.append(line)
    return "\n".join(kept)
