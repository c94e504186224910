"""Bearings and distances told beside a position: `137°`, `2.4M`, `200m N`, `045° 0.6 miles`."""

from __future__ import annotations

import re

_SIDE = (
    r"(?:[NSEW]|[NS][EW]|NNE|ENE|ESE|SSE|SSW|WSW|WNW|NNW|(?:north|south)?-?(?:east|west)"
    r"|north|south)(?:wards?)?"
)
_BEARING = r"[0-9]{1,3}(?:\.[0-9]{1,2})?° ?(?:\(?(?:T|true|M|mag)\)?)?"
_FIGURE = r"[0-9]{1,5}(?:[.,][0-9]{1,3})?"
_MILE = r"n\.?m\.?|nautical miles?|miles?|cables?"
_MILES = rf"{_FIGURE} ?(?:(?-i:M)|{_MILE})"
_LENGTH = rf"{_FIGURE} ?(?:metres?|meters?|m|km|feet|ft|yards?|{_MILE})"
_ALONE = re.compile(
    rf"{_BEARING}(?:[ ,/]{{1,3}}{_MILES})?|{_MILES}(?:[ ,/]{{1,3}}{_BEARING})?"
    rf"|{_LENGTH},? (?:{_SIDE}|{_BEARING})|close(?:,? (?:to )?(?:the )?{_SIDE})?",
    re.IGNORECASE,
)
_FROM = re.compile(r" (?:of|from)(?: .{0,80})?$", re.IGNORECASE)


def is_way(words: str) -> bool:
    """Whether words are a bearing, a distance, or both, and nothing else.

    A distance in metres alone is none: it may be a height or a depth.
    """
    return _ALONE.fullmatch(words.strip(" ,.;()")) is not None


def tells_way(words: str) -> bool:
    """Whether words behind a position tell a way from it, or from a thing that they name."""
    return is_way(_FROM.sub("", words.strip(" ,.;()")))
