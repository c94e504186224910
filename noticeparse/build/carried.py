"""What a mark carries, taken from it or added to it: `Delete topmark from beacon`.

The mark stays, and the command is of the part alone, which stands on it.
"""

from __future__ import annotations

import re

from noticeparse.readers.amounts import ChartUnit
from noticeparse.readers.features import FeatureReading, read_feature
from noticeparse.readers.legends import collapsed
from noticeparse.readers.verbs import Verb

_PART = (
    r"(?:the |an? )?(?:top-?mark|(?:radar|retro)[ -]?reflector|racon ?(?:\([A-Z]{1,2}\))?"
    r"|AIS(?: transmitter| transponder)?|fog signal|light|daymark)"
    r"(?:, ?[A-Za-z0-9()+., ]{1,30})?"
)
_MARK = (
    r"(?:the |an? )?(?:[A-Za-z-]{3,20} ){0,3}(?:light-?)?(?:buoy|beacon|light|tower|pile|dolphin"
    r"|structure|mast|platform|pier)\b"
)
_AND = re.compile(r"\b(?:and|or|also)\b|[&/]", re.IGNORECASE)
"""What a second mark is joined by."""
_WORDS: dict[str, re.Pattern[str]] = {
    verb: re.compile(rf"(?P<part>{_PART})(?P<word> {word})(?= {_MARK})", re.IGNORECASE)
    for verb, word in (("delete", "from"), ("insert", "to"))
}


def as_carried(verb: Verb, text: str) -> str:
    """A phrase of the same length, in which what is taken from a mark stands on it."""
    words = _WORDS.get(verb)
    told = words.match(text) if words is not None else None
    if told is None or _AND.search(text, told.end()) is not None:
        return text
    start, end = told.span("word")
    return text[:start] + " on".ljust(end - start) + text[end:]


def read_carried(verb: Verb, text: str, unit: ChartUnit | None) -> FeatureReading:
    """The feature of a phrase; one that is taken from a mark or added to it stands on it."""
    plain = as_carried(verb, text)
    reading = read_feature(plain, unit)
    if plain == text:
        return reading
    return reading._replace(feature=reading.feature.model_copy(update={"text": collapsed(text)}))
