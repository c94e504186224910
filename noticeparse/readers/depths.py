"""Reads depths, drying heights, clearances and heights of objects as written in a phrase.

In comes one statement (`least depth 9₈`, `dries 3 feet`, `vertical clearance 18 m`) and the unit of
the chart; out comes the record in exact metres with the faults found.  A figure that may mean two
things (`8 6`, a small figure after feet) gives a fault and no value.
"""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction
from functools import cache, lru_cache
from typing import Any, Literal, NamedTuple

from lark import Lark, Token, Transformer, v_args
from lark.exceptions import LarkError

from noticeparse import grammar
from noticeparse.faults import Fault
from noticeparse.numbers import FATHOM_M, FOOT_M
from noticeparse.records.depth import Clearance, Depth, DepthKind, DepthUnit

ChartUnit = Literal["m", "fm_ft", "ft", "fm"]

_DEEPEST_M = 11_000
_HIGHEST_DRYING_M = 15
_FRACTIONS = {
    "½": Fraction(1, 2), "¼": Fraction(1, 4), "¾": Fraction(3, 4), "⅓": Fraction(1, 3),
    "⅔": Fraction(2, 3), "⅛": Fraction(1, 8), "⅜": Fraction(3, 8), "⅝": Fraction(5, 8),
    "⅞": Fraction(7, 8),
}  # fmt: skip
_PLAIN = str.maketrans("₀₁₂₃₄₅₆₇₈₉OoIl·,", "012345678900" + "11..")
_UNITS: dict[str, DepthUnit] = {"METRES": "m", "CAPITAL_M": "m", "FEET": "ft", "FATHOMS": "fm"}
_METRES_IN = {"m": Decimal(1), "ft": FOOT_M, "fm": FATHOM_M, "fm_ft": FATHOM_M}
_KINDS: tuple[tuple[str, DepthKind], ...] = (
    ("DRIES", "drying"), ("NO_BOTTOM", "no_bottom"), ("CONTOUR", "contour"), ("SWEPT", "swept"),
    ("DREDGED", "dredged"), ("MAINTAINED", "dredged"), ("LEAST", "least"), ("PLUS", "drying"),
)  # fmt: skip
SAFE_CLEARANCE_QUALITY = "least depth unknown, safe clearance at value shown"
_QUALITIES = (
    ("NO_BOTTOM", "no bottom found at value shown"),
    ("MAINTAINED", "maintained depth"),
    ("UNCONFIRMED", "value reported (not confirmed)"),
    ("REPORTED", "value reported (not surveyed)"),
    ("DOUBTFUL", "doubtful sounding"),
    ("LEAST", "least depth known"),
    ("SWEPT", "least depth known"),
)


class DepthReading(NamedTuple):
    """One statement: a depth, a clearance, or for a safe clearance over a wreck both."""

    depth: Depth | None
    clearance: Clearance | None
    faults: tuple[Fault, ...]
    reported_year: int | None = None


class HeightReading(NamedTuple):
    """The height of an object in metres."""

    height_m: Decimal | None
    faults: tuple[Fault, ...]


class _Amount(NamedTuple):
    figure: Token
    unit: Token | None
    feet: Token | None = None


class _Statement(NamedTuple):
    senses: dict[str, Token]
    amount: _Amount | None


@v_args(inline=True)
class _Builder(Transformer[Token, _Statement]):
    """Rule by rule at parse time; keeps no state."""

    def figure(self, token: Token) -> Token:
        return token

    unit = figure

    def amount(self, figure: Token, unit: Token | None = None) -> _Amount:
        return _Amount(figure, unit)

    several = amount

    def fathoms_and_feet(self, figure: Token, unit: Token, feet: Token, _: Token) -> _Amount:
        return _Amount(figure, unit, feet)

    def reading(self, *parts: Any) -> _Statement:
        senses = {part.type: part for part in parts if isinstance(part, Token)}
        amounts = [part for part in parts if isinstance(part, _Amount)]
        return _Statement(senses, amounts[0] if amounts else None)

    def sense(self) -> None:
        """A word that carries nothing."""


@cache
def _parser() -> Lark:
    return grammar.build("depth", "reading", callbacks=_Builder())


@lru_cache(maxsize=4096)
def _statement(text: str) -> _Statement | None:
    try:
        return _parser().parse(text)  # type: ignore[return-value]
    except LarkError:
        return None


def shown(text: str) -> str:
    """The words as a message shows them: blanks collapsed, cut when long."""
    words = " ".join(text[:200].split())
    return words if len(words) <= 40 else words[:39] + "…"


class _Reader:
    """Value and faults of one amount; lives for one call."""

    def __init__(self, text: str, statement: _Statement, chart_unit: ChartUnit | None) -> None:
        self.text = text
        self.senses = statement.senses
        self.amount = statement.amount
        self.chart_unit = chart_unit
        self.faults: list[Fault] = []

    def blame(self, code: str) -> None:
        amount = self.amount
        start, end = _stretch(self.text)
        if amount is not None:
            last = amount.unit or amount.figure
            start, end = amount.figure.start_pos or 0, last.end_pos or len(self.text)
        self.faults.append(Fault(code, start, end, {"written": shown(self.text[start:end])}))

    def value(self) -> tuple[Decimal | None, DepthUnit | None]:
        """Metres and unit of a depth; a fault says why there is no value."""
        amount = self.amount
        if amount is None or self.doubtful_figure(amount.figure):
            return None, None
        unit = _UNITS[amount.unit.type] if amount.unit else self.chart_unit
        self.check_unit(amount.unit)
        if amount.feet is not None:
            return self.with_feet(amount.figure, int(amount.feet)), "fm_ft"
        if amount.figure.type == "SMALL":
            return self.with_small_figure(amount.figure, unit)
        number = _number(amount.figure)
        if number is None:
            self.blame("depth-unread")
            return None, unit
        self.check_decimals(amount.figure, unit)
        return _exact(number, _METRES_IN[unit or "m"]), unit

    def doubtful_figure(self, figure: Token) -> bool:
        code = {
            "APART": "depth-figures-apart",
            "RAISED": "depth-figure-raised",
            "SEVERAL": "depth-several",
        }.get(figure.type)
        if code is None and "MINUS" in self.senses:
            code = "depth-minus"
        if code is None and figure.type == "DECIMAL" and re.search(r",[0-9]{3}$", figure):
            code = "depth-thousands"
        if code is not None:
            self.blame(code)
        elif figure.type == "LETTERED":
            self.blame("depth-letter-in-figure")
        return code is not None

    def check_unit(self, unit: Token | None) -> None:
        written = _UNITS[unit.type] if unit else None
        if unit is not None and unit.type == "CAPITAL_M":
            self.blame("depth-capital-m")
        chart = self.chart_unit
        if written and chart and (written == "m") != (chart == "m"):
            self.blame("depth-unit-differs")
        elif written == "fm" and chart == "ft":
            self.blame("depth-unit-differs")

    def check_decimals(self, figure: Token, unit: DepthUnit | None) -> None:
        decimals = len(re.split("[.,·]", figure)[-1]) if figure.type == "DECIMAL" else 0
        if unit in ("m", None) and decimals > 1:
            self.blame("depth-decimals")
        whole = figure.type == "WHOLE" and (self.amount is None or self.amount.unit is None)
        if whole and len(figure) == 4 and 1900 <= int(figure) <= 2100:
            self.blame("depth-like-a-year")

    def with_small_figure(
        self, figure: Token, unit: DepthUnit | None
    ) -> tuple[Decimal | None, DepthUnit | None]:
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

    def with_feet(self, fathoms: str, feet: int) -> Decimal | None:
        if feet > 5:
            self.blame("depth-feet-over-five")
            return None
        number = _number(fathoms)
        metres = None if number is None else _exact(number, FATHOM_M)
        if metres is None:
            self.blame("depth-unread")
            return None
        return metres + feet * FOOT_M


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


def _exact(number: Decimal | Fraction, metres: Decimal) -> Decimal | None:
    if isinstance(number, Decimal):
        return number * metres
    value = number * Fraction(metres)
    rest = value.denominator
    for prime in (2, 5):
        while rest % prime == 0:
            rest //= prime
    return None if rest > 1 else Decimal(value.numerator) / Decimal(value.denominator)


def _stretch(text: str) -> tuple[int, int]:
    end = len(text.rstrip(" ,;:"))
    return min(len(text) - len(text.lstrip(" ,;:")), end), end


def _unread(text: str) -> DepthReading:
    start, end = _stretch(text)
    return DepthReading(None, None, (Fault("depth-unread", start, end, {"written": shown(text)}),))


@lru_cache(maxsize=4096)
def read_depth(text: str, chart_unit: ChartUnit | None = None) -> DepthReading:
    """The depth or clearance stated by `text`; `8₄` is 8 fathoms 4 feet on a chart in fathoms."""
    statement = _statement(text)
    if statement is None or "HEIGHT_WORD" in statement.senses:
        return _unread(text)
    senses = statement.senses
    if "CLEARANCE_WORD" in senses:
        return _clearance(text, statement, chart_unit)
    if statement.amount is None:
        return _unknown_depth(text, senses) if "UNKNOWN" in senses else _unread(text)
    told = set(senses) - {"BRACKET", "YEAR", "OPEN", "CLOSED", "SAFE", "HORIZONTAL"}
    unit = statement.amount.unit
    if unit is not None and unit.type == "CAPITAL_M" and not told:
        return _unread(text)
    return _depth(text, statement, chart_unit)


def _depth(text: str, statement: _Statement, chart_unit: ChartUnit | None) -> DepthReading:
    reader = _Reader(text, statement, chart_unit)
    senses = statement.senses
    kind = next((kind for sense, kind in _KINDS if sense in senses), "sounding")
    value, unit = reader.value()
    if value is not None and value > _DEEPEST_M:
        reader.blame("depth-impossible")
        value = None
    if value is None:
        if not any(fault.code in _NO_VALUE for fault in reader.faults):
            reader.blame("depth-unread")
        return DepthReading(None, None, tuple(reader.faults))
    if kind == "drying":
        if value > _HIGHEST_DRYING_M:
            reader.blame("depth-drying-high")
        value = -value
    if unit is None:
        reader.blame("depth-unit-not-stated")
    quality = next((words for sense, words in _QUALITIES if sense in senses), None)
    start, end = _stretch(text)
    depth = Depth(
        written=" ".join(text[start:end].split()),
        value_m=value,
        unit=unit,
        quality=quality,
        kind=kind,
    )
    return DepthReading(depth, None, tuple(reader.faults), _year(senses))


_NO_VALUE = {
    "depth-feet-over-five", "depth-figure-raised", "depth-figures-apart", "depth-impossible",
    "depth-minus", "depth-several", "depth-small-figure-of-feet", "depth-thousands",
    "depth-unread",
}  # fmt: skip


def _year(senses: dict[str, Token]) -> int | None:
    # The year behind `dredged to` is that of the survey, not of a report.
    if "REPORTED" not in senses:
        return None
    written = senses["REPORTED"] + senses.get("YEAR", "")
    digits = "".join(character for character in written if character.isdigit())
    return int(digits[:4]) if len(digits) >= 4 else None


def _unknown_depth(text: str, senses: dict[str, Token]) -> DepthReading:
    start, end = _stretch(text)
    written = " ".join(text[start:end].split())
    kind: DepthKind = "least" if "LEAST" in senses else "sounding"
    depth = Depth(written=written, value_m=None, unit=None, quality="depth unknown", kind=kind)
    return DepthReading(depth, None, ())


def _clearance(text: str, statement: _Statement, chart_unit: ChartUnit | None) -> DepthReading:
    senses = statement.senses
    reader = _Reader(text, statement, None)
    value, unit = reader.value()
    if value is None:
        if not reader.faults:
            return _unread(text)
        return DepthReading(None, None, tuple(reader.faults))
    start, end = _stretch(text)
    written = " ".join(text[start:end].split())
    over_ground = senses["CLEARANCE_WORD"].lower().startswith("clear") and "SAFE" in senses
    if unit is None and chart_unit in ("ft", "fm", "fm_ft") and not over_ground:
        reader.blame("clearance-unit-unclear")
        return DepthReading(None, None, tuple(reader.faults))
    if unit is None and chart_unit is None:
        reader.blame("clearance-unit-not-stated")
    kind = _clearance_kind(senses)
    depth = None
    if over_ground:
        # A safe clearance over a wreck is a depth in the unit of soundings (INT 1 K30, QUASOU 7).
        safe = _depth(text, statement, chart_unit).depth
        if safe is not None and safe.value_m is not None:
            value = safe.value_m
            depth = safe.model_copy(update={"kind": "swept", "quality": SAFE_CLEARANCE_QUALITY})
    clearance = Clearance(written=written, value_m=value, kind=kind)
    return DepthReading(depth, clearance, tuple(reader.faults))


def _clearance_kind(
    senses: dict[str, Token],
) -> Literal["vertical", "horizontal", "safe", "open", "closed"]:
    if "SAFE" in senses:
        return "safe"
    if "HORIZONTAL" in senses:
        return "horizontal"
    if "OPEN" in senses:
        return "open"
    return "closed" if "CLOSED" in senses else "vertical"


@lru_cache(maxsize=4096)
def read_height(text: str) -> HeightReading:
    """The height of an object in metres; it needs its unit, for the chart's is that of depths."""
    statement = _statement(text)
    if statement is None or statement.amount is None:
        return HeightReading(None, _unread(text).faults)
    reader = _Reader(text, statement, None)
    value, unit = reader.value()
    if value is None:
        return HeightReading(None, tuple(reader.faults) or _unread(text).faults)
    if unit is None:
        reader.blame("clearance-unit-not-stated")
    return HeightReading(value, tuple(reader.faults))
