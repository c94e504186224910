"""Reads the figure and unit of a depth, clearance or height into exact metres.

In comes one statement, divided by `depth.lark` into senses and at most one amount; out come
metres and unit with the faults found.  A figure that may mean two things (`8 6`, a small figure
after feet) gives a fault and no value.  What the senses make of the value is not decided here.
"""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction
from functools import cache, lru_cache
from typing import Any, Literal, NamedTuple

from lark import Token
from lark.exceptions import LarkError

from noticeparse import grammar
from noticeparse.faults import Fault
from noticeparse.numbers import FATHOM_M, FOOT_M
from noticeparse.records.depth import DepthUnit

ChartUnit = Literal["m", "fm_ft", "ft", "fm"]

_FRACTIONS = {
    "½": Fraction(1, 2), "¼": Fraction(1, 4), "¾": Fraction(3, 4), "⅓": Fraction(1, 3),
    "⅔": Fraction(2, 3), "⅛": Fraction(1, 8), "⅜": Fraction(3, 8), "⅝": Fraction(5, 8),
    "⅞": Fraction(7, 8),
}  # fmt: skip
_PLAIN = str.maketrans("₀₁₂₃₄₅₆₇₈₉OoIl·,", "012345678900" + "11..")
_UNITS: dict[str, DepthUnit] = {"METRES": "m", "CAPITAL_M": "m", "FEET": "ft", "FATHOMS": "fm"}
_NOUGHT_AHEAD = re.compile("0[0-9]")
_OF_DEPTHS = frozenset(("DEPTH_WORD", "LEAST", "SWEPT", "DREDGED", "MAINTAINED", "NO_BOTTOM"))
_DEEPEST_IN_DECIMETRES = 100
_DEEPEST_IN_FEET = 6000
"""Charts give decimetres to some thirty metres only, and what is miles deep in fathoms."""
_UNLIKE = ((True, False), (False, True))
_METRES_IN = {"m": Decimal(1), "ft": FOOT_M, "fm": FATHOM_M, "fm_ft": FATHOM_M}


class Amount(NamedTuple):
    """A figure, its unit, and the feet behind fathoms."""

    figure: Token
    unit: Token | None
    feet: Token | None = None


class Statement(NamedTuple):
    """The senses told, by terminal, and the amount."""

    senses: dict[str, Token]
    amount: Amount | None


class _Builder:
    """Rule by rule at parse time; keeps no state."""

    def figure(self, token: Token) -> Token:
        return token

    unit = figure

    def amount(self, figure: Token, unit: Token | None = None) -> Amount:
        return Amount(figure, unit)

    several = amount

    def fathoms_and_feet(self, figure: Token, unit: Token, feet: Token, _: Token) -> Amount:
        return Amount(figure, unit, feet)

    def reading(self, *parts: Any) -> Statement:
        senses = {part.type: part for part in parts if isinstance(part, Token)}
        amounts = [part for part in parts if isinstance(part, Amount)]
        return Statement(senses, amounts[0] if amounts else None)

    def sense(self) -> None:
        """A word that carries nothing."""


@cache
def _parser() -> grammar.PhraseParser:
    return grammar.build("depth", "reading", callbacks=_Builder())


@lru_cache(maxsize=4096)
def divide_statement(text: str) -> Statement | None:
    """Senses and amount of a statement, None where the grammar does not take it."""
    try:
        statement: Statement = _parser().parse(text)
        return statement
    except LarkError:
        return None


def shown(text: str) -> str:
    """The words as a message shows them: blanks collapsed, cut when long."""
    words = " ".join(text[:200].split())
    return words if len(words) <= 40 else words[:39] + "…"


def _is_in_capitals(text: str) -> bool:
    """Whether a statement has words, and all of them in capitals."""
    return text.isupper() and any(word.isalpha() and len(word) > 2 for word in text.split())


class AmountReader:
    """Value and faults of one amount; lives for one call."""

    def __init__(self, text: str, statement: Statement, chart_unit: ChartUnit | None) -> None:
        self.text = text
        self.senses = statement.senses
        self.amount = statement.amount
        self.chart_unit = chart_unit or _unit_of_chart(self.senses)
        self.faults: list[Fault] = []

    def blame(self, code: str) -> None:
        """Notes a fault of the amount."""
        amount = self.amount
        start, end = stretch_of(self.text)
        if amount is not None:
            last = amount.feet or amount.unit or amount.figure
            first = self.senses["MINUS"] if code == "depth-minus" else amount.figure
            start, end = first.start_pos or 0, last.end_pos or len(self.text)
        self.faults.append(Fault(code, start, end, {"written": shown(self.text[start:end])}))

    def value(self) -> tuple[Decimal | None, DepthUnit | None]:
        """Metres and unit of a depth; a fault says why there is no value."""
        amount = self.amount
        if amount is None or self.doubtful_figure(amount.figure):
            return None, None
        unit = _UNITS[amount.unit.type] if amount.unit else self.chart_unit
        self.check_unit(amount.unit)
        if amount.feet is not None:
            return self.fathoms_and_feet(amount.figure, amount.feet), "fm_ft"
        if amount.figure.type == "SMALL":
            return self.with_small_figure(amount.figure, unit)
        number = _number(amount.figure)
        if number is None:
            self.blame("depth-unread")
            return None, unit
        self.check_decimals(amount.figure, unit)
        return exact(number, _METRES_IN[unit or "m"]), unit

    def doubtful_figure(self, figure: Token) -> bool:
        """Whether the figure could be another one, so that none is taken."""
        code = {
            "APART": "depth-figures-apart",
            "RAISED": "depth-figure-raised",
            "SEVERAL": "depth-several",
        }.get(figure.type)
        if code is None and "MINUS" in self.senses:
            code = "depth-minus"
        if code is None and self._dries_with_depth(figure):
            code = "depth-and-drying"
        if code is None and "BOUND" in self.senses:
            code = "depth-bound-only"
        if code is None and figure.type == "DECIMAL" and re.search(r",[0-9]{3}$", figure):
            code = "depth-thousands"
        if code is not None:
            self.blame(code)
        elif figure.type == "LETTERED":
            self.blame("depth-letter-in-figure")
        return code is not None

    def _dries_with_depth(self, figure: Token) -> bool:
        """Whether a figure is said to dry and to be a depth: not in `depth, dries 0.6m`."""
        depth, dries = self.senses.get("DEPTH_WORD"), self.senses.get("DRIES")
        if depth is None or dries is None:
            return False
        start, end = depth.end_pos or 0, dries.start_pos or 0
        is_thing = start <= end < (figure.start_pos or 0) and "," in self.text[start:end]
        return not is_thing

    def check_unit(self, unit: Token | None) -> None:
        """Notes a unit that is not the chart's, or may be miles."""
        written = _UNITS[unit.type] if unit else None
        # In words all in capitals the letter tells nothing, and a depth has no miles.
        if unit is not None and unit.type == "CAPITAL_M" and not _is_in_capitals(self.text):
            self.blame("depth-capital-m")
        chart = self.chart_unit
        is_metric = (written == "m", chart == "m")
        if written and chart and (is_metric in _UNLIKE or (written == "fm" and chart == "ft")):
            self.blame("depth-unit-differs")

    def check_decimals(self, figure: Token, unit: DepthUnit | None) -> None:
        """Notes decimals no chart shows, and a figure that may be a year."""
        decimals = len(re.split("[.,·]", figure)[-1]) if figure.type == "DECIMAL" else 0
        if unit in ("m", None) and decimals > 1:
            self.blame("depth-decimals")
        if _NOUGHT_AHEAD.match(figure) or self._is_too_fine(figure, unit):
            self.blame("depth-figure-odd")
        whole = figure.type == "WHOLE" and (self.amount is None or self.amount.unit is None)
        if whole and len(figure) == 4 and 1900 <= int(figure) <= 2100:
            self.blame("depth-like-a-year")

    def _is_too_fine(self, figure: Token, unit: DepthUnit | None) -> bool:
        """Whether a depth has decimetres where charts have none, or is of miles in feet."""
        if figure.type not in ("WHOLE", "DECIMAL") or _OF_DEPTHS.isdisjoint(self.senses):
            return False
        deepest = _DEEPEST_IN_FEET if unit == "ft" else _DEEPEST_IN_DECIMETRES
        has_tenths = figure.type == "DECIMAL" and unit in ("m", None)
        number = _number(figure)
        return number is not None and number > deepest and (has_tenths or unit == "ft")

    def with_small_figure(
        self, figure: Token, unit: DepthUnit | None
    ) -> tuple[Decimal | None, DepthUnit | None]:
        """Metres and decimetres, or fathoms and feet, by the unit."""
        plain = figure.translate(_PLAIN).replace(" ", "")
        digits = sum(character in "₀₁₂₃₄₅₆₇₈₉" for character in figure)
        whole, small = plain[:-digits], plain[-digits:]
        if unit == "ft":
            self.blame("depth-small-figure-of-feet")
            return None, unit
        if digits > 1:
            self.blame("depth-unread")
            return None, unit
        if unit in ("fm", "fm_ft"):
            return self.with_feet(whole, int(small)), "fm_ft"
        return Decimal(f"{whole}.{small}"), unit

    def fathoms_and_feet(self, fathoms: Token, feet: Token) -> Decimal | None:
        """Metres of `3 fm 2 ft`: feet beside them leave fathoms no fraction or small figure."""
        if fathoms.type not in ("WHOLE", "LETTERED") or feet.type != "WHOLE":
            self.blame("depth-unread")
            return None
        return self.with_feet(fathoms, int(feet))

    def with_feet(self, fathoms: str, feet: int) -> Decimal | None:
        """Metres of fathoms and feet; a fathom holds six feet."""
        if feet > 5:
            self.blame("depth-feet-over-five")
            return None
        number = _number(fathoms)
        metres = None if number is None else exact(number, FATHOM_M)
        if metres is None:
            self.blame("depth-unread")
            return None
        return metres + feet * FOOT_M


def _unit_of_chart(senses: dict[str, Token]) -> ChartUnit | None:
    """The unit that the statement itself gives the chart: `3₂ (fathoms chart)`."""
    written = senses.get("CHART_UNIT", "").lower()
    if "fathom" in written:
        return "fm_ft"
    return "ft" if "feet" in written else "m" if written else None


def _number(figure: str) -> Decimal | Fraction | None:
    """The number written, None where it makes no sense."""
    kind = figure.type if isinstance(figure, Token) else "WHOLE"
    if kind in ("MIXED", "FRACTION"):
        return _fraction(figure)
    return Decimal(figure.translate(_PLAIN).replace(" ", ""))


def _fraction(figure: str) -> Fraction | None:
    if figure[-1] in _FRACTIONS:
        return int(figure[:-1].strip() or 0) + _FRACTIONS[figure[-1]]
    whole, _, rest = figure.rpartition(" ")
    upper, _, lower = rest.partition("/")
    # `61/4` is 6 1/4 that lost its blank, not 61 quarters.
    if not 0 < int(upper) < int(lower):
        return None
    return int(whole or 0) + Fraction(int(upper), int(lower))


def exact(number: Decimal | Fraction, metres: Decimal) -> Decimal | None:
    """The number in metres, None where no finite decimal holds it (a third of a metre)."""
    if isinstance(number, Decimal):
        return number * metres
    value = number * Fraction(metres)
    rest = value.denominator
    for prime in (2, 5):
        while rest % prime == 0:
            rest //= prime
    return None if rest > 1 else Decimal(value.numerator) / Decimal(value.denominator)


def stretch_of(text: str) -> tuple[int, int]:
    """The text without separators at its ends."""
    end = len(text.rstrip(" ,;:"))
    return min(len(text) - len(text.lstrip(" ,;:")), end), end
