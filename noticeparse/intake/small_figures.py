"""Lowered and raised figures as characters: `8₆`, `47°`, `6¼`.

The tenths of a depth are printed small and low (IHO S-4 B-412, from memory); a text that loses
this turns 8.6 m into 86 m.  What cannot be told is parted by U+FFFD, so that nobody reads it.
"""

from __future__ import annotations

from typing import Literal, NamedTuple

Level = Literal["plain", "low", "high", "doubt"]

LOW = str.maketrans("0123456789+-=()", "₀₁₂₃₄₅₆₇₈₉₊₋₌₍₎")
HIGH = str.maketrans("0123456789+-=()", "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻⁼⁽⁾")
DOUBT = "\ufffd"

_FRACTIONS = {
    "1/4": "¼", "1/2": "½", "3/4": "¾", "1/3": "⅓", "2/3": "⅔", "1/8": "⅛", "3/8": "⅜",
    "5/8": "⅝", "7/8": "⅞", "1/5": "⅕", "2/5": "⅖", "3/5": "⅗", "4/5": "⅘", "1/6": "⅙", "5/6": "⅚",
}  # fmt: skip
_BARS = "/⁄∕"
_ROUND = "oOº"
_STROKES = "lI|"
_SIGNS = "'′’°\""


class Mark(NamedTuple):
    """A character with its level; `doubt` is told of it where the level does not decide."""

    char: str
    level: Level


def written(marks: list[Mark], following: str = "") -> tuple[str, bool]:
    """A word of marked characters as plain text, and whether something in it is in doubt.

    `following` is the first character behind the word.
    """
    found: list[str] = []
    is_doubtful = False
    at = 0
    while at < len(marks):
        end = at + 1
        level = marks[at].level
        while end < len(marks) and marks[end].level == level:
            end += 1
        words = "".join(mark.char for mark in marks[at:end])
        if level == "high":
            fraction, more = _fraction(words, marks[end:])
            if fraction is not None:
                found.append(fraction)
                is_doubtful = is_doubtful or fraction[0] == DOUBT
                at = end + more
                continue
        before = found[-1][-1:] if found else ""
        behind = marks[end].char if end < len(marks) else following
        piece = _of_level(words, level, before, behind)
        is_doubtful = is_doubtful or (DOUBT in piece and DOUBT not in words)
        found.append(piece)
        at = end
    return "".join(found), is_doubtful


def _of_level(words: str, level: Level, before: str, behind: str) -> str:
    if level == "plain":
        return words
    if level == "doubt":
        return DOUBT + words
    if level == "low":
        if words.isdecimal() and words.isascii():
            return words.translate(LOW)
        # A letter set low beside a figure belongs to no form of a depth.
        return words if not (before and before in _FIGURES) else DOUBT + words
    return _raised(words, before, behind)


_FIGURES = "0123456789₀₁₂₃₄₅₆₇₈₉¼½¾⅓⅔⅛⅜⅝⅞"


def _raised(words: str, before: str, behind: str) -> str:
    is_figure = bool(before) and before in "0123456789"
    if is_figure and words in _ROUND:
        return "°"
    if is_figure and words == "0" and (behind.isdecimal() or behind == ""):
        return "°" if behind else "⁰"
    if is_figure and any(one in _STROKES for one in words):
        return DOUBT + words
    return words.translate(HIGH)


def _fraction(above: str, rest: list[Mark]) -> tuple[str | None, int]:
    """The fraction of raised figures, a bar and lowered ones; how many marks it takes more."""
    if not above.isdecimal() or not rest or rest[0].char not in _BARS:
        return None, 0
    end = 1
    while end < len(rest) and rest[end].char.isdecimal() and rest[end].level != "high":
        end += 1
    below = "".join(mark.char for mark in rest[1:end])
    if not below:
        return None, 0
    whole = f"{above}/{below}"
    return _FRACTIONS.get(whole, DOUBT + whole), end


def level_of(ratio: float, raised: float, *, behind_figure: bool, is_decimal: bool) -> Level:
    """The level of a figure by its size and height, both against the character before it.

    `raised` is in sizes of that character, negative for a lowered one; `behind_figure` whether
    that is a figure or the sign of an angle, `is_decimal` whether a decimal point stands between.
    """
    is_small = ratio <= 0.8
    if abs(raised) < 0.05 and (ratio >= 0.93 or is_decimal):
        return "plain"
    if is_decimal:
        return "doubt"
    if raised >= 0.2 and (is_small or raised >= 0.25) and raised <= 0.8:
        return "high"
    if is_small and -0.5 <= raised < 0.05:
        # Without a figure before it, only what is lowered as well is a small figure.
        return "low" if behind_figure or raised <= -0.08 else "plain"
    if ratio >= 0.93 and -0.5 <= raised <= -0.15:
        return "low"
    return "doubt" if behind_figure else "plain"


def follows_figure(char: str) -> bool:
    """Whether a small figure behind this character may be part of a value."""
    return char in _FIGURES or char in _SIGNS
