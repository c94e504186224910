"""Words of the original text, brought onto one line, and as the readers will see them."""

from __future__ import annotations

import re

from noticeparse.records.feature import Feature
from noticeparse.text import repair
from noticeparse.vocabulary import is_known_word

# Marks of a quotation or a list that a reader left before a phrase.
_MARKS = "> "
_WORD = re.compile(r"[A-Za-z]+|[0-9]+")
_JOINTS = frozenset({"a", "an", "the", "of", "and", "to", "from", "in", "at", "by", "for", "on"})
_CUT = re.compile(r"([A-Za-z]+)[-‐‑­] ([a-z]+)")


def on_one_line(words: str) -> str:
    """Words as written, with those that a line end had cut joined again: `dan- gerous`."""
    return _CUT.sub(_joined, " ".join(words.split()).lstrip(_MARKS))


def _joined(cut: re.Match[str]) -> str:
    whole = cut[1] + cut[2]
    return whole if is_known_word(whole) else f"{cut[1]}-{cut[2]}"


def read_as(words: str) -> str:
    """The words after the repair of look-alikes, as the readers are given them."""
    return repair(words).text


def holds_words_of(phrase: str, feature: Feature) -> bool:
    """Whether no word by which a feature is described is missing: `inner` of `inner light`.

    Its light and depth are values, and may be written in another way.
    """
    words = on_one_line(feature.text)
    below = (feature, *(one.feature for one in feature.companions))
    values = [light for one in below for light in (one.light, *one.more_lights)]
    for value in (*values, *(one.depth for one in below)):
        if value is not None and value.written:
            told = re.escape(on_one_line(value.written))
            words = re.sub(rf"(?<![A-Za-z0-9]){told}(?![A-Za-z0-9])", " ", words)
    return _words_in(words) - _JOINTS <= _words_in(phrase)


def _words_in(words: str) -> set[str]:
    return set(_WORD.findall(read_as(words).lower()))
