"""Words of a light's character and what they stand for: tables, and look-ups in them.

In come the words as the grammar cut them out; out come the contract's rhythm names, colour letters
and S-57 codes.  Nothing is judged here.  Sources: IHO S-57 attribute LITCHR; INT 1 section P for
the abbreviations; the older forms and the words of prose from memory.
"""

from __future__ import annotations

from functools import lru_cache
from typing import cast

from noticeparse.records.light import LightColour, Rhythm

_CLASSES: dict[str, tuple[str, ...]] = {
    "f": ("F",),
    "fl": ("Fl",),
    "lfl": ("LFl",),
    "q": ("Q",),
    "vq": ("VQ",),
    "uq": ("UQ",),
    "iq": ("IQ",),
    "ivq": ("IVQ",),
    "iuq": ("IUQ",),
    "oc": ("Oc",),
    "occ": ("Oc",),
    "iso": ("Iso",),
    # Older abbreviations.
    "qk": ("Q",),
    "qkfl": ("Q",),
    "vqk": ("VQ",),
    "vqkfl": ("VQ",),
    "veryqk": ("VQ",),
    "veryqkfl": ("VQ",),
    "iqk": ("IQ",),
    "iqkfl": ("IQ",),
    "intqk": ("IQ",),
    "intqkfl": ("IQ",),
    "ivqk": ("IVQ",),
    "ivqkfl": ("IVQ",),
    "intvqk": ("IVQ",),
    "intvqkfl": ("IVQ",),
    "slfl": ("Fl", "LFl"),
    "longfl": ("LFl",),
    "eint": ("Iso",),
    # Words of prose.
    "fixed": ("F",),
    "fixedandflashing": ("F", "Fl"),
    "flashing": ("Fl",),
    "longflashing": ("LFl",),
    "quick": ("Q",),
    "quickflashing": ("Q",),
    "veryquick": ("VQ",),
    "veryquickflashing": ("VQ",),
    "ultraquick": ("UQ",),
    "ultraquickflashing": ("UQ",),
    "interruptedquick": ("IQ",),
    "interruptedquickflashing": ("IQ",),
    "interruptedveryquick": ("IVQ",),
    "interruptedveryquickflashing": ("IVQ",),
    "interruptedultraquick": ("IUQ",),
    "interruptedultraquickflashing": ("IUQ",),
    "occulting": ("Oc",),
    "isophase": ("Iso",),
    "isophased": ("Iso",),
    "equalinterval": ("Iso",),
}
"""Class word, small letters without blanks and stops, and the classes it names."""

LOOK_ALIKES: dict[str, tuple[str, str, str]] = {
    "LF1": ("LFl", "1", "l"),
    "LFI": ("LFl", "I", "l"),
    "LF|": ("LFl", "|", "l"),
    "F1": ("Fl", "1", "l"),
    "FI": ("Fl", "I", "l"),
    "F|": ("Fl", "|", "l"),
    "0C": ("Oc", "0", "O"),
    "LSO": ("Iso", "l", "I"),
    "1SO": ("Iso", "1", "I"),
    "|SO": ("Iso", "|", "I"),
    "IS0": ("Iso", "0", "o"),
}
"""Class words with one wrong character: class, character written, character read."""

_COMBINED: dict[tuple[str, ...], Rhythm] = {
    ("F", "Fl"): "FFl",
    ("F", "LFl"): "FLFl",
    ("Oc", "Fl"): "OcFl",
    ("Fl", "LFl"): "Fl+LFl",
    ("LFl", "Fl"): "Fl+LFl",
    ("Q", "LFl"): "Q+LFl",
    ("VQ", "LFl"): "VQ+LFl",
    ("UQ", "LFl"): "UQ+LFl",
}

NEEDS_PLUS = frozenset({("Fl", "LFl"), ("LFl", "Fl"), ("Q", "LFl"), ("VQ", "LFl"), ("UQ", "LFl")})
"""Pairs of classes that are one character only where a plus joins them."""

_LITCHR: dict[str, int] = {
    "F": 1,
    "Fl": 2,
    "LFl": 3,
    "Q": 4,
    "VQ": 5,
    "UQ": 6,
    "Iso": 7,
    "Oc": 8,
    "IQ": 9,
    "IVQ": 10,
    "IUQ": 11,
    "Mo": 12,
    "FFl": 13,
    "Fl+LFl": 14,
    "OcFl": 15,
    "FLFl": 16,
    "Q+LFl": 25,
    "VQ+LFl": 26,
    "UQ+LFl": 27,
}
_LITCHR_ALTERNATING: dict[str, int] = {
    "Oc": 17,
    "LFl": 18,
    "Fl": 19,
    "Al": 28,
    "F": 28,
    "FFl": 29,
}
_GROUP_ALTERNATING = 20

_COLOURS: dict[str, LightColour] = {
    "W": "W",
    "R": "R",
    "G": "G",
    "Y": "Y",
    "BU": "Bu",
    "BL": "Bu",
    "VI": "Vi",
    "OR": "Or",
    "AM": "Am",
    "WHITE": "W",
    "RED": "R",
    "GREEN": "G",
    "YELLOW": "Y",
    "BLUE": "Bu",
    "VIOLET": "Vi",
    "ORANGE": "Or",
    "AMBER": "Am",
}

_SOUNDS = {
    "fog horn": "horn",
    "foghorn": "horn",
    "fog siren": "siren",
    "whis": "whistle",
    "dia": "diaphone",
    "explos": "explosive",
    "naut": "nautophone",
}
"""Abbreviations of fog signals; the other words are those of S-57 CATFOG already."""


@lru_cache(maxsize=512)
def classes_of(word: str) -> tuple[str, ...]:
    """The classes that a class word names: `Fl`, `Int Qk Fl`, `Group Occulting`."""
    small = "".join(letter for letter in word.casefold() if letter.isalpha())
    for prefix in ("composite", "single", "group"):
        small = small.removeprefix(prefix)
    return _CLASSES[small.replace("andgroup", "and")]


def rhythm_of(classes: tuple[str, ...]) -> Rhythm | None:
    """The contract's name for a class or a pair of classes, None where no light has such."""
    if len(classes) == 1:
        return cast(Rhythm, classes[0])
    return _COMBINED.get(classes)


def litchr_of(rhythm: Rhythm, *, alternating: bool, plain_group: bool) -> int | None:
    """The S-57 LITCHR code, None where the list has none.

    `Al.Fl(2)` is 20 (group alternating); `Al.Fl(2W+1R)`, whose colours stand in the brackets, 19.
    """
    if not alternating:
        return _LITCHR.get(rhythm)
    if rhythm == "Fl" and plain_group:
        return _GROUP_ALTERNATING
    return _LITCHR_ALTERNATING.get(rhythm)


def colour_of(word: str) -> LightColour | None:
    """The colour of a letter or word, None for B alone: a mark's black is never a light's blue."""
    return _COLOURS.get(word.upper())


@lru_cache(maxsize=512)
def split_colours(run: str) -> tuple[str, ...]:
    """The letters of a run of colours, `WRBu` in `W`, `R`, `Bu`; a letter unknown stands alone."""
    letters: list[str] = []
    at = 0
    while at < len(run):
        width = 2 if len(run) > at + 1 and colour_of(run[at : at + 2]) is not None else 1
        letters.append(run[at : at + width])
        at += width
    return tuple(letters)


@lru_cache(maxsize=512)
def split_group(brackets: str) -> tuple[tuple[int, ...], tuple[str, ...]]:
    """The figures in `(2+1)` or `(2W+1R)`, and the colour letters behind them."""
    terms = [term.strip() for term in brackets.strip("()").split("+")]
    figures = tuple(int(term.rstrip("WRGYBuViOrAm")) for term in terms)
    colours = tuple(term.lstrip("0123456789") for term in terms)
    return figures, tuple(colour for colour in colours if colour)


def sound_of(word: str) -> str:
    """The S-57 CATFOG word of a fog signal as written."""
    small = word.casefold()
    return _SOUNDS.get(small, small)
