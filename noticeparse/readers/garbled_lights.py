"""Tells the letters and signs beside a light that went into no part of it: `F.X`, `Fl.R.Ss`.

A character with one wrong letter is no light, or a shorter one that is a light as well: `Fx.R`
leaves a mark dark, `Fl.R.Ss` a light without its period.  In come the items of a phrase with its
kind settled; out come faults (common practice, no published source).
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise, zip_longest

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.told import Told
from noticeparse.readers.words import Item
from noticeparse.vocabulary import kinds

_OF_LIGHTS = frozenset(("light", "light_words", "sectors"))
CLASSES = frozenset(("Fl", "LFl", "Oc", "Iso", "VQ", "UQ", "IQ", "IVQ", "IUQ"))
"""Whole classes, which are told to be unreadable where they were taken for no light."""
_LIKE_CLASS = re.compile(r"(?:[FQOIVL]|[FQOIVLM][A-Za-z]|[FQOIL][a-z]{2})[RGWY]?")
_PAINT = re.compile(r"[RGWY]{1,3}")
_PIECE = re.compile(r"[A-Z][A-Za-z]?|[sm]{1,2}")
"""A unit or a colour that hangs on a character and is not read with it."""
_COMPASS = frozenset("N E S W NE NW SE SW NNE ENE ESE SSE SSW WSW WNW NNW".split())
_WORDS = frozenset("IN OF ON OR IS IT IF LT II III IV VI VII".split())
"""Words of two letters and numbers of marks that begin as a class does."""
_MOST_BEHIND = 2
_HANGING = " .,:"


def garbled_lights(text: str, told: Told, kind: str) -> Iterator[Fault]:
    """Faults of letters where the character of a light stands, or directly behind it."""
    known = kinds().get(kind)
    if known is None or not (known.form or known.s57 == "LIGHTS") or " / " in text:
        return
    for light, behind in pairwise(told.items):
        if light.role in _OF_LIGHTS and _hangs_on(text, light, behind):
            yield _fault(behind)
    head = told.head
    if head is None or any(item.role in _OF_LIGHTS for item in told.items):
        return
    if known.s57 == "LIGHTS" or (head.sense is not None and head.sense.lit):
        yield from _in_place_of_light(text, told, head)


def _fault(item: Item) -> Fault:
    return Fault("feature-words-unread", item.start, item.end, {"written": shown(item.text)})


def _hangs_on(text: str, light: Item, behind: Item) -> bool:
    """Whether what stands directly behind a character is a piece of it: `Fl.G.s`, `F,G`."""
    gap = text[light.end : behind.start]
    if behind.bracketed or len(gap) > _MOST_BEHIND or gap.strip(_HANGING):
        return False
    if behind.role == "other":
        return behind.text not in "/|-–—&+[]"
    is_other = behind.text in _COMPASS or behind.text.upper() in _WORDS
    return behind.role == "unknown" and not is_other and _PIECE.fullmatch(behind.text) is not None


def _in_place_of_light(text: str, told: Told, head: Item) -> Iterator[Fault]:
    """The letters of a character that is none: `light, Fx.R`, `light-buoy F "T3"`."""
    behind = [item for item in told.items if item.start >= head.end and not item.bracketed]
    for item, following in zip_longest(behind, behind[1:]):
        if item.text in _WORDS | CLASSES or item.role not in ("unknown", "proper"):
            continue
        is_apart = bool(text[head.end : item.start].strip())
        is_like = _LIKE_CLASS.fullmatch(item.text) is not None
        if not is_apart:
            # `light-buoy F` has a name; what has another, or a colour, has none of one letter.
            is_like = is_like and following is not None and _is_name_or_colour(following)
        elif not is_like and text[item.start - 2 : item.start] not in (" .", ",."):
            # `light-buoy, .R` is told elsewhere.
            is_like = _PAINT.fullmatch(item.text) is not None
        if is_like:
            yield _fault(item)
            return


def _is_name_or_colour(item: Item) -> bool:
    is_colour = item.role == "unknown" and _PAINT.fullmatch(item.text) is not None
    return is_colour or item.role in ("quoted", "numbered", "number")
