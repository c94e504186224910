"""Families of faults of depths, drying heights and clearances: INT 1 section I, IHO S-4 B-410."""

from __future__ import annotations

from random import Random

from tests.faults.planting import Family, Phrases, of_phrases

_SMALL = "₀₁₂₃₄₅₆₇₈₉"
_DANGERS = ("wreck", "obstruction", "rock")


def _two_decimals(rng: Random) -> tuple[str, str]:
    whole, tenths = rng.randint(1, 19), rng.randint(1, 9)
    return f"depth {whole}.{tenths}{rng.randint(1, 9)}m", f"depth {whole}.{tenths}m"


def _beyond_contour(rng: Random) -> tuple[str, str]:
    contour = rng.choice((2, 5, 10, 20))
    shoal = f"{contour - 1}.{rng.randint(1, 9)}m"
    hole = f"{contour + rng.randint(0, 30)}.{rng.randint(1, 9)}m"
    around = rng.choice((", enclosed by {}m contour", " and associated {}m contour"))
    return f"depth {hole}{around.format(contour)}", f"depth {shoal}{around.format(contour)}"


def _least_deeper(rng: Random) -> tuple[str, str]:
    danger, least = rng.choice(_DANGERS), rng.randint(6, 15)
    words = f"{danger}, least depth {least}.5m, depth "
    return f"{words}{rng.randint(2, least)}m", f"{words}{least + rng.randint(2, 20)}m"


def _overhead(rng: Random) -> tuple[str, str]:
    kind = rng.choice(("overhead cable", "bridge"))
    figure = rng.randint(5, 40)
    return f"{kind}, depth {figure}m", f"{kind}, vertical clearance {figure}m"


def _dries_with_depth(rng: Random) -> tuple[str, str]:
    figure = f"{rng.randint(0, 3)}.{rng.randint(1, 9)}m"
    return f"rock, depth dries {figure}", f"rock, dries {figure}"


def _minus(rng: Random) -> tuple[str, str]:
    kind, words = rng.choice(
        (("bridge", "vertical clearance"), ("rock", "dries"), ("wreck", "least depth"))
    )
    figure = f"{rng.randint(1, 9)}.{rng.randint(1, 9)}m"
    return f"{kind}, {words} -{figure}", f"{kind}, {words} {figure}"


def _no_clearance(rng: Random) -> tuple[str, str]:
    kind = rng.choice(("overhead cable", "bridge"))
    return f"{kind}, vertical clearance 0m", f"{kind}, vertical clearance {rng.randint(5, 40)}m"


def _drying_high(rng: Random) -> tuple[str, str]:
    return f"rock, dries {rng.randint(16, 40)}m", f"rock, dries {rng.randint(1, 9)}m"


def _lost_small_figure(rng: Random) -> tuple[Phrases, Phrases]:
    # The lost one is like its neighbours, and far deeper than them as it stands.
    whole, small = rng.randint(8, 14), rng.randint(1, 9)
    beside = f"depth {whole + rng.randint(-1, 1)}{_SMALL[rng.randint(1, 9)]}"
    return (beside, f"depth {whole}{small}"), (beside, f"depth {whole}{_SMALL[small]}")


def _too_deep(rng: Random) -> tuple[str, str]:
    return f"depth {rng.randint(11_100, 99_000)}m", f"depth {rng.randint(20, 90)}m"


FAMILIES: tuple[Family, ...] = (
    of_phrases("two decimals", "depth-decimals", _two_decimals, metric=True),
    of_phrases("beyond the contour", "depth-deeper-than-contour", _beyond_contour, metric=True),
    of_phrases("least depth deeper", "depth-least-deeper", _least_deeper, metric=True),
    of_phrases("depth of what is overhead", "depth-of-overhead", _overhead, metric=True),
    of_phrases("dries and has a depth", "depth-and-drying", _dries_with_depth, metric=True),
    of_phrases("minus", "depth-minus", _minus, metric=True),
    of_phrases("clearance of nought", "clearance-zero", _no_clearance, metric=True),
    of_phrases("drying height too great", "depth-drying-high", _drying_high, metric=True),
    of_phrases("small figure lost", "depth-subscript-lost", _lost_small_figure, metric=True),
    of_phrases("deeper than any sea", "depth-impossible", _too_deep, metric=True),
)
"""Depths and clearances that disagree with their unit, sign or neighbours."""
