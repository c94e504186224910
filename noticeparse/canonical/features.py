"""The phrase that describes a feature.

First comes the phrase as it was written, for no word of it may be lost, with light and depth in
their canonical form; where that does not say what the record says, a phrase made of its values.
Every phrase handed out reads back as the record.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.canonical import figures, lights
from noticeparse.canonical.composing import composed
from noticeparse.canonical.sameness import is_alike
from noticeparse.canonical.trying import Faults, those_that_read
from noticeparse.canonical.words import on_one_line, read_as
from noticeparse.readers.amounts import ChartUnit, divide_statement
from noticeparse.readers.features import read_feature
from noticeparse.readers.phrases import place
from noticeparse.records.depth import Depth
from noticeparse.records.feature import Feature

_STOPS = " .,;:"
_FEET = re.compile(r"^\s*(?:ft|feet|foot)\b\.?", re.IGNORECASE)


def wordings(feature: Feature, unit: ChartUnit | None) -> Iterator[str]:
    """Phrases that read back as the feature, the best first; none where nothing does."""

    def read(words: str) -> Faults | None:
        reading = read_feature(read_as(words), unit)
        return reading.faults if is_alike(reading.feature, feature) else None

    return those_that_read([own_wordings(feature), composed(feature)], read, feature)


def own_wordings(feature: Feature) -> list[str]:
    """The words of a feature, with its values as charts have them and as they were written."""
    return [_with_values(_phrase(feature.text), feature), on_one_line(feature.text)]


def all_wordings(feature: Feature) -> list[str]:
    """Phrases that may do, each once, the best first; the caller sees whether they do."""
    found = dict.fromkeys([*own_wordings(feature), *composed(feature)])
    return [words for words in found if words]


def _with_values(words: str, feature: Feature) -> str:
    """The phrase with its light and its depths written as charts and their keys write them."""
    for light in (feature.light, *feature.more_lights):
        told = _phrase(light.written) if light is not None else ""
        if light is not None and told != "light":
            # Its sectors may stand apart from it in the phrase, and then stay there.
            words = _exchanged(words, told, lights.light(light, with_sectors="°" in told))
    if feature.depth is not None:
        told = _phrase(feature.depth.written)
        words = _exchanged(words, told, _phrase(depth_statement(feature.depth)))
    for companion in feature.companions:
        inner = _phrase(companion.feature.text)
        words = _exchanged(words, inner, _with_values(inner, companion.feature))
    return words


def _phrase(words: str) -> str:
    return on_one_line(words).rstrip(_STOPS)


def _exchanged(words: str, old: str, new: str) -> str:
    """The words with a stretch of them exchanged, if it stands there just once."""
    return words.replace(old, new) if old and words.count(old) == 1 else words


def depth_statement(depth: Depth) -> str:
    """The statement as written, its figure with the unit in which it is given."""
    words = on_one_line(depth.written)
    statement = divide_statement(read_as(words))
    amount = statement.amount if statement is not None else None
    figure = figures.depth(depth.value_m, depth.unit) if depth.value_m is not None else None
    if amount is None or figure is None:
        return words
    start, end = place(amount.figure)[0], place(amount.feet or amount.unit or amount.figure)[1]
    rest = words[end:] if amount.feet is None else _FEET.sub("", words[end:], count=1)
    return words[:start] + figure + rest
