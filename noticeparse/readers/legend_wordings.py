"""Tells the wording of a bare legend from words that say how or where it stands on the chart.

In come the words behind the noun (`Foul, orientated N/S`, `Works, at light`); out comes where the
wording ends.  In quotes the wording ends with them, and none of this is asked.
"""

from __future__ import annotations

import re

from noticeparse.readers.told import told_by

_COLOUR = r"(?:magenta|purple|violet|red|black|blue|green|grey)"
_LINES = r"(?:[1-9]|one|two|three|four|a single|single)[ -]lines?"
_LETTERS = (
    r"(?:(?:small|large|upright|sloping|italic|capital|block|bold|hairline|lower[ -]case) ){0,2}"
    r"(?:letters|lettering|type|italics|capitals|characters)"
)
_POINT = r"(?:[NESW]{1,3}|north|east|south|west|northeast|northwest|southeast|southwest)"
_AXIS = rf"{_POINT} ?(?:[/-]|to|and) ?{_POINT}(?![A-Za-z])"
_MANNER = (
    rf"(?:in (?:{_COLOUR}(?: ink)?|{_LINES}|(?:brackets|parentheses)|{_LETTERS})(?![A-Za-z-])"
    rf"|on {_LINES}(?![A-Za-z-])"
    r"|(?:orient(?:at)?ed|orientation|aligned|parallel (?:to|with)|following the"
    r"|curved|written|printed"
    r"|(?:running|extending|reading|lying) (?:along|across|parallel|from|(?-i:[NESW]))"
    rf"|centred|centered|centering|centring)(?![A-Za-z-])|{_AXIS})"
)
_MANNER_BEHIND = re.compile(
    rf"(?:\s?[,;]\s?(?:and |to be |all )?|\s?\(|\s){_MANNER}"
    rf"|(?:\s?[,;]\s?|\s?\()(?:{_COLOUR}\)?$|[0-9]{{3}}°)",
    re.IGNORECASE,
)
"""A manner of writing; only behind a comma or bracket may it begin with points of the compass."""
_NEEDS_COMMA = re.compile(rf"\s{_AXIS}", re.IGNORECASE)
_PLACE_BEHIND = re.compile(
    r"(?:\s?[,;]\s?(?:and )?|\s?\()"
    r"(?:at|near|close(?: [NSEW]{1,3})?(?: to| of)?|adjacent to|next to|by|beside|alongside"
    r"|against|off|on|along|across|within|in|over|above|below|under|beneath|around|round|between"
    r"|[NSEW]{1,3} of)"
    r" (?:(?:the|an?|this|that|same|new|existing) ){0,2}(?P<thing>[A-Za-z][A-Za-z -]{2,60})\)?$",
    re.IGNORECASE,
)
_GROUND = frozenset("coast shore coastline shoreline land chart title edge border".split())


def end_of_wording(words: str) -> int:
    """Where the wording ends; the length of the words where all of them belong to it."""
    place = _PLACE_BEHIND.search(words)
    end = place.start() if place is not None and _is_thing(place["thing"]) else len(words)
    for found in _MANNER_BEHIND.finditer(words, 1, end):
        if _NEEDS_COMMA.match(found[0]) is None:
            return found.start()
    return end or len(words)


def leads_to_thing(words: str) -> bool:
    """Whether words behind a wording name a thing, at which the legend stands."""
    place = _PLACE_BEHIND.search(words)
    return place is not None and _is_thing(place["thing"])


_SEVERAL = re.compile(r" ?(?:[,;/&+]|\band\b) ?(?![^()]*\))")


def holds_several(noun: str, words: str) -> bool:
    """Whether the noun speaks of more than one legend, and the words may be two: `A and B`."""
    return noun.rstrip(" ,:;").lower().endswith("s") and _SEVERAL.search(words) is not None


def _is_thing(words: str) -> bool:
    """Whether words in small letters name something that a legend may stand at."""
    if words[:1].isupper() and not words.isupper():
        return False
    return told_by(words).head is not None or words.split()[-1].lower() in _GROUND
