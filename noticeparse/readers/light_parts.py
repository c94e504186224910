"""The parts of a light description, as the grammar hands them over.

In comes the text of one description, out come its parts in order; which light each belongs to and
whether it makes sense is decided by the caller.  Every part, token or tuple, has `type`,
`start_pos` and `end_pos`.
"""

from __future__ import annotations

from decimal import Decimal
from functools import cache
from typing import NamedTuple

from lark import Token, UnexpectedInput

from noticeparse.faults import Fault
from noticeparse.grammar import PhraseParser, build
from noticeparse.readers.amounts import shown

_LETTER_FIGURES = str.maketrans({"l": "1", "I": "1", "|": "1", "O": "0", ",": "."})
_UNITS = {"SECONDS": "s", "METRES": "m", "FEET": "ft", "MILES": "M"}
_FIGURES = frozenset({"NUMBER", "LIKE_NUMBER"})


class Measure(NamedTuple):
    """A figure or list of figures with its unit: `s`, `m`, `ft`, `M` or none."""

    type: str
    start_pos: int
    end_pos: int
    figures: tuple[Decimal, ...]
    splits: str
    """The signs between the figures, `/` `-` `,` one for each gap."""
    unit: str
    is_lone_capital: bool
    """The unit is written as a bare `M`: in telex capitals metres or miles."""
    is_in_capitals: bool
    """The unit is in capitals where a chart has small letters: `S`, `FT`."""
    has_comma: bool
    """A figure was read with a decimal comma."""
    like: Token | None
    """A figure written with letters."""


class Compound(NamedTuple):
    """A word with what belongs to it: Morse, a sound or racon, with letters and band."""

    type: str
    start_pos: int
    end_pos: int
    tokens: tuple[Token, ...]

    def token(self, *types: str) -> Token | None:
        """The token of one of these types."""
        return next((token for token in self.tokens if token.type in types), None)


Part = Token | Measure | Compound


def fault(code: str, text: str, start: int, end: int, **values: str) -> Fault:
    """A fault at a stretch of `text`, which its message quotes."""
    return Fault(code, start, end, {"written": shown(text[start:end]), **values})


def like_character(token: str) -> tuple[str, str]:
    """The letter that stands for a figure in `token`, and the figure read."""
    letter = next(one for one in token if one in "lIO|")
    return letter, letter.translate(_LETTER_FIGURES)


class _Callbacks:
    """Makes parts while parsing; keeps no state, so that threads may share the parser."""

    def start(self, *parts: Part) -> tuple[Part, ...]:
        return parts

    def measure(self, *tokens: Token) -> Measure:
        figures = [token for token in tokens if token.type in _FIGURES]
        last = tokens[-1]
        return Measure(
            "measure",
            start_of(tokens[0]),
            end_of(last),
            tuple(Decimal(figure.translate(_LETTER_FIGURES)) for figure in figures),
            "".join(token.strip() for token in tokens if token.type == "SPLIT"),
            _UNITS.get(last.type, ""),
            last == "M",
            last.type in ("SECONDS", "METRES", "FEET") and last.isupper(),
            any("," in figure for figure in figures),
            next((figure for figure in figures if figure.type == "LIKE_NUMBER"), None),
        )

    def morse(self, *tokens: Token) -> Compound:
        return _compound("morse", tokens)

    def sound(self, *tokens: Token) -> Compound:
        return _compound("sound", tokens)

    def racon(self, *tokens: Token) -> Compound:
        return _compound("racon", tokens)


def start_of(part: Part) -> int:
    """Offset of a part's first character."""
    return part.start_pos or 0


def end_of(part: Part) -> int:
    """Offset behind a part's last character."""
    return part.end_pos or 0


def _compound(name: str, tokens: tuple[Token, ...]) -> Compound:
    return Compound(name, start_of(tokens[0]), end_of(tokens[-1]), tokens)


@cache
def _parser() -> PhraseParser:
    return build("light", callbacks=_Callbacks())


def parts_of(text: str) -> tuple[Part, ...] | None:
    """The parts of a light description in order; None where the text cannot be cut."""
    try:
        parts: tuple[Part, ...] = _parser().parse(text)
    except UnexpectedInput:
        return None
    return parts
