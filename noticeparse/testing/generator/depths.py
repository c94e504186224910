"""Depths: figures in the unit of the chart, exact in metres, and the ways to write them."""

from __future__ import annotations

from decimal import Decimal
from random import Random
from typing import NamedTuple

from noticeparse.testing.generator.truth import Depth

FOOT_M = Decimal("0.3048")
FATHOM_M = Decimal("1.8288")
_SMALL = str.maketrans("0123456789", "₀₁₂₃₄₅₆₇₈₉")
_QUARTERS = {1: "¼", 2: "½", 3: "¾"}


class DepthStyle(NamedTuple):
    """How the depths of a chart are written, and the unit its head states (None: not stated)."""

    name: str
    chart_unit: str | None
    head: str
    is_deep: bool = False
    """The soundings of one notice lie in the same waters: all in tenths or in whole metres."""


STYLES = (
    DepthStyle("small", None, ""),
    DepthStyle("close", None, ""),
    DepthStyle("spaced", None, ""),
    DepthStyle("raised", None, ""),
    DepthStyle("words", None, ""),
    DepthStyle("small", "m", "depths in metres"),
    DepthStyle("fathoms", "fm_ft", "depths in fathoms and feet"),
    DepthStyle("fathoms small", "fm_ft", "depths in fathoms and feet"),
    DepthStyle("fathoms mixed", "fm_ft", "depths in fathoms and feet"),
    DepthStyle("feet", "ft", "depths in feet"),
)


class Written(NamedTuple):
    """A depth and its words."""

    depth: Depth
    words: str


def draw_depth(rng: Random, style: DepthStyle, kind: str = "sounding") -> Written:
    """A depth in the style of its chart; a drying height is small and negative."""
    if style.chart_unit == "fm_ft":
        return _fathoms(rng, style, kind)
    if style.chart_unit == "ft":
        feet = rng.randint(1, 9) if kind == "drying" else rng.randint(3, 90)
        return Written(Depth(_signed(feet * FOOT_M, kind), "ft", kind), f"{feet} feet")
    tenths = rng.randint(1, 29) if kind == "drying" else rng.randint(4, 209)
    metres = rng.randint(22, 160) if kind != "drying" and rng.random() < 0.25 else 22 + tenths // 2
    deep = kind != "drying" and style.is_deep
    value = Decimal(metres) if deep else Decimal(tenths) / 10
    depth = Depth(_signed(value, kind), style.chart_unit or _unit(style), kind)
    return Written(depth, _metres(value, style, is_whole=deep))


def _unit(style: DepthStyle) -> str | None:
    return None if style.name == "small" else "m"


def _signed(value: Decimal, kind: str) -> Decimal:
    return -value if kind == "drying" else value


def _metres(value: Decimal, style: DepthStyle, *, is_whole: bool) -> str:
    figures = str(value) if is_whole else f"{value:.1f}"
    whole, _, tenth = figures.partition(".")
    if style.name == "small":
        return whole + tenth.translate(_SMALL)
    if style.name == "raised":
        return figures.replace(".", "·") + "m"
    return figures + {"close": "m", "spaced": " m", "words": " metres"}[style.name]


def _fathoms(rng: Random, style: DepthStyle, kind: str) -> Written:
    fathoms = 0 if kind == "drying" else rng.randint(1, 40)
    feet = rng.randint(1, 5)
    value = _signed(fathoms * FATHOM_M + feet * FOOT_M, kind)
    if kind == "drying":
        return Written(Depth(-feet * FOOT_M, "ft", kind), f"{feet} ft")
    if style.name == "fathoms small":
        return Written(Depth(value, "fm_ft", kind), str(fathoms) + str(feet).translate(_SMALL))
    if style.name == "fathoms mixed":
        quarter = rng.choice((1, 2, 3))
        exact = (fathoms + Decimal(quarter) / 4) * FATHOM_M
        return Written(Depth(exact, "fm_ft", kind), f"{fathoms}{_QUARTERS[quarter]}")
    if rng.random() < 0.5:
        return Written(Depth(fathoms * FATHOM_M, "fm", kind), f"{fathoms} fathoms")
    return Written(Depth(value, "fm_ft", kind), f"{fathoms} fm {feet} ft")
