"""Draws features: the words of a phrase and the record they must give."""

from __future__ import annotations

from dataclasses import dataclass, replace
from decimal import Decimal
from random import Random

from noticeparse.testing.generator import depths, lights, names
from noticeparse.testing.generator.depths import DepthStyle, Written, draw_depth
from noticeparse.testing.generator.lights import LightStyle, write_light, write_sectors
from noticeparse.testing.generator.phrases import AREAS, LINES, LIT, MOVABLE, POINTS, Sort
from noticeparse.testing.generator.truth import Feature, Light

LIT_WORDS = (
    ("light-buoy", "light-beacon"), ("light buoy", "light beacon"),
    ("lighted buoy", "lighted beacon"),
)  # fmt: skip
_CONTOURS_M = (2, 5, 10, 20, 30, 50, 100, 200)


@dataclass(frozen=True, slots=True)
class Hand:
    """How one office words its phrases."""

    lights: LightStyle
    depths: DepthStyle
    lit: tuple[str, str]
    joint: str
    """What stands between a mark and its light."""
    quotes: str = '""'

    def words(self, phrase: str) -> str:
        """A phrase with the office's words for lit marks."""
        return phrase.format(buoy=self.lit[0], beacon=self.lit[1])

    def name(self, words: str) -> str:
        """A name in the quotation marks of the office."""
        return self.quotes[0] + words + self.quotes[1]


def draw_hand(rng: Random, *, has_chart_heads: bool = True, is_deep: bool = False) -> Hand:
    """The habits of an office, and how deep its waters are.

    Without chart heads nothing but the depth can state its unit.
    """
    styles = [one for one in depths.STYLES if has_chart_heads or not one.head]
    return Hand(
        lights=rng.choice(lights.STYLES),
        depths=rng.choice(styles)._replace(is_deep=is_deep),
        lit=rng.choice(LIT_WORDS),
        joint=rng.choice((", ", " ")),
        quotes=rng.choice(('""', '""', "“”")),
    )


@dataclass(frozen=True, slots=True)
class Phrase:
    """A feature and its words."""

    feature: Feature
    words: str

    def renamed(self, words: str) -> Phrase:
        """The same feature in other words."""
        return replace(self, words=words)

    def for_several(self) -> Phrase:
        """The same without a name or number, which only one of several marks could have."""
        if self.feature.name is None:
            return self
        words = self.words.rpartition(self.feature.name)[0].rstrip(" ,(\"'“‘")
        return Phrase(replace(self.feature, name=None), words)


def draw_point(rng: Random, hand: Hand) -> Phrase:
    """A feature that has one position."""
    pick = rng.random()
    if pick < 0.30:
        return draw_lit(rng, hand)
    if pick < 0.55:
        return draw_sounding(rng, hand)
    if pick < 0.60:
        return draw_legend(rng, hand)
    if pick < 0.63:
        return draw_bridge(rng)
    return draw_unlit(rng, hand)


def draw_movable(rng: Random, hand: Hand) -> Phrase:
    """A mark that can be laid somewhere else."""
    if rng.random() < 0.5:
        return _unlit(rng, rng.choice([one for one in POINTS if one.kind in MOVABLE]), hand)
    return _lit(rng, rng.choice([one for one in LIT if one.kind in MOVABLE]), hand)


def draw_unlit(rng: Random, hand: Hand) -> Phrase:
    """A point feature without a light."""
    return _unlit(rng, rng.choice(POINTS), hand)


def _unlit(rng: Random, sort: Sort, hand: Hand) -> Phrase:
    words = rng.choice(sort.phrases)
    feature = Feature(sort.kind, (sort.s57,))
    if sort.kind == "buoy_special" and rng.random() < 0.3:
        return Phrase(replace(feature, colours=("yellow",)), words + ", yellow")
    if sort.kind == "anchor_berth":
        name = rng.choice("ABC") + str(rng.randint(1, 9))
        return Phrase(replace(feature, name=name), f"{words} {name}")
    if sort.kind in MOVABLE and rng.random() < 0.2:
        return _named(rng, feature, words, hand)
    return Phrase(feature, words)


def _named(rng: Random, feature: Feature, words: str, hand: Hand) -> Phrase:
    if rng.random() < 0.6:
        name = f"No {rng.randint(1, 28)}"
        return Phrase(replace(feature, name=name), f"{words} {name}")
    name = rng.choice(names.MARK_NAMES)
    return Phrase(replace(feature, name=name), f"{words} {hand.name(name)}")


def draw_lit(rng: Random, hand: Hand) -> Phrase:
    """A mark or structure with its light."""
    return _lit(rng, rng.choice(LIT), hand)


def _lit(rng: Random, sort: Sort, hand: Hand) -> Phrase:
    assert sort.light is not None
    light = sort.light(rng)
    words = hand.words(rng.choice(sort.phrases))
    feature = Feature(sort.kind, _lit_classes(sort), light=light)
    if sort.kind == "sector_light" and rng.random() < 0.4:
        light = lights.with_sectors(rng)
        whole = f"{words}, {write_light(light, hand.lights)}, {write_sectors(light.sectors)}"
        return Phrase(replace(feature, light=light), whole)
    whole = words + hand.joint + write_light(light, hand.lights)
    if sort.kind == "light" and rng.random() < 0.2:
        return Phrase(replace(feature, companions=("breakwater",)), f"{whole}, on the breakwater")
    if "buoy" in words and rng.random() < 0.4:
        return _named(rng, feature, whole, hand)
    return Phrase(feature, whole)


def _lit_classes(sort: Sort) -> tuple[str, ...]:
    return (sort.s57,) if sort.s57 == "LIGHTS" else (sort.s57, "LIGHTS")


def draw_light(rng: Random, hand: Hand) -> tuple[Light, str]:
    """A major light and its character in words."""
    light = lights.major(rng)
    return light, write_light(light, hand.lights)


def draw_sounding(rng: Random, hand: Hand) -> Phrase:
    """A depth, a drying height, or the least depth over a danger."""
    pick = rng.random()
    if pick < 0.5:
        depth = draw_depth(rng, hand.depths)
        return _sounding(rng, depth)
    if pick < 0.6:
        depth = draw_depth(rng, hand.depths, "drying")
        return Phrase(
            Feature("drying_height", ("SOUNDG",), depth=depth.depth),
            f"drying height {depth.words}",
        )
    depth = draw_depth(rng, hand.depths, "least")
    kind, s57, words = rng.choice(
        (
            ("wreck_least_depth", "WRECKS", "wreck"),
            ("obstruction", "OBSTRN", "obstruction"),
            ("rock", "UWTROC", "rock"),
        )
    )
    return Phrase(Feature(kind, (s57,), depth=depth.depth), f"{words}, least depth {depth.words}")


def _sounding(rng: Random, depth: Written) -> Phrase:
    feature = Feature("sounding", ("SOUNDG",), depth=depth.depth)
    words = f"depth {depth.words}"
    if depth.depth.unit in (None, "m") and rng.random() < 0.15:
        enclosed = replace(feature, companions=("depth_contour",))
        around = next(line for line in _CONTOURS_M if line >= depth.depth.value_m)
        contour = rng.choice((f", enclosed by {around}m contour", " and associated contour"))
        return Phrase(enclosed, words + contour)
    return Phrase(feature, words)


def draw_legend(rng: Random, hand: Hand) -> Phrase:
    """Words to be written on the chart."""
    return write_legend(rng, hand, rng.choice(names.LEGENDS))


def write_legend(rng: Random, hand: Hand, wording: str) -> Phrase:
    """A legend of these words."""
    joint = rng.choice((" ", ", "))
    return Phrase(Feature("legend", (), legend=wording), f"legend{joint}{hand.name(wording)}")


def draw_bridge(rng: Random) -> Phrase:
    """A bridge with its clearance in metres."""
    clearance = Decimal(rng.randint(4, 60))
    feature = Feature("bridge", ("BRIDGE",), clearance_m=clearance)
    return Phrase(feature, f"bridge, vertical clearance {clearance} m")


def draw_line(rng: Random) -> Phrase:
    """A feature drawn as a line."""
    return _plain(rng, LINES)


def draw_area(rng: Random) -> Phrase:
    """A feature that has an extent."""
    return _plain(rng, AREAS)


def _plain(rng: Random, sorts: tuple[Sort, ...]) -> Phrase:
    sort = rng.choice(sorts)
    status = ("disused",) if sort.kind.endswith("_disused") else ()
    return Phrase(Feature(sort.kind, (sort.s57,), status=status), rng.choice(sort.phrases))
