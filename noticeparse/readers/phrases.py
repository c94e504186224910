"""Divides a feature phrase into segments, runs of words, companions and values.

In comes a phrase; out comes its division as the grammar `feature.lark` gives it, made of tokens
with their places in the text.  What the words mean is not looked up here.
"""

from __future__ import annotations

from functools import cache, lru_cache
from typing import Any, Literal, NamedTuple

from lark import Token
from lark.exceptions import LarkError

from noticeparse import grammar

Role = Literal["with", "on", "enclosed_by", "beside"]

LIGHTS = frozenset(("LIGHT", "LIGHT_WORDS", "SECTORS", "SOUND", "RACON", "AIS"))
"""Terminals that belong to the lights, sounds and radio aids of one structure."""


class CompanionRun(NamedTuple):
    """A role word and the words behind it; `lights` follow, of the companion or of the feature."""

    role: Role
    pieces: tuple[Token, ...]
    lights: tuple[Token, ...] = ()


class Segment(NamedTuple):
    """What stands between two separators; `pieces` belong to the feature, or are such lights."""

    pieces: tuple[Token, ...]
    companions: tuple[CompanionRun, ...]


class Legend(NamedTuple):
    """A legend or note: the word for it, and the wording token with its form."""

    word: Token
    wording: Token | None
    form: Literal["quoted", "open", "bare", "none"]
    after: Token | None


class Phrase(NamedTuple):
    """One phrase: a legend, or segments."""

    legend: Legend | None
    segments: tuple[Segment, ...]


Wording = tuple[Token | None, Literal["quoted", "open", "bare", "none"]]

_NO_WORDING: Wording = (None, "none")


class _Builder:
    """Rule by rule at parse time; keeps no state."""

    def phrase(self, inner: Phrase) -> Phrase:
        return inner

    def legend(self, word: Token, *rest: Any) -> Phrase:
        wording, form = rest[0] if rest else _NO_WORDING
        after = rest[1] if len(rest) > 1 else None
        return Phrase(Legend(word, wording, form, after), ())

    def quoted_wording(self, token: Token) -> Wording:
        return token, "quoted"

    def open_wording(self, token: Token) -> Wording:
        return token, "open"

    def bare_wording(self, token: Token) -> Wording:
        return token, "bare"

    def described(self, *segments: Segment) -> Phrase:
        return Phrase(None, segments)

    def segment(self, *parts: Any) -> Segment:
        pieces: list[Token] = []
        companions: list[CompanionRun] = []
        last: Any = None
        for part in parts:
            if isinstance(part, CompanionRun):
                companions.append(part)
            else:
                pieces += part
                if isinstance(last, CompanionRun):
                    companions[-1] = last._replace(lights=part)
            last = part
        return Segment(tuple(pieces), tuple(companions))

    def run(self, *tokens: Token) -> tuple[Token, ...]:
        return tokens

    def lights(self, *parts: Any) -> tuple[Token, ...]:
        tokens: list[Token] = []
        for part in parts:
            tokens += (part,) if isinstance(part, Token) else part
        return tuple(tokens)

    def companion(self, role: Role, run: tuple[Token, ...] = ()) -> CompanionRun:
        return CompanionRun(role, run)

    def enclosed_by(self, _: Token) -> Role:
        return "enclosed_by"

    def on(self, _: Token) -> Role:
        return "on"

    def with_(self, _: Token) -> Role:
        return "with"

    def beside(self, _: Token) -> Role:
        return "beside"


@cache
def _parser() -> grammar.PhraseParser:
    return grammar.build("feature", "phrase", callbacks=_Builder())


@lru_cache(maxsize=4096)
def divide(text: str) -> Phrase:
    """The division of a phrase; a text that the grammar does not take is one without segments."""
    try:
        phrase: Phrase = _parser().parse(text)
        return phrase
    except LarkError:
        return Phrase(None, ())


def place(token: Token) -> tuple[int, int]:
    """Where a token stands in the text."""
    start = token.start_pos or 0
    return start, start + len(token)
