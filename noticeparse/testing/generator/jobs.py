"""Draws what is to be done, apart from how a layout writes it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from decimal import Decimal
from random import Random
from typing import NamedTuple

from noticeparse.testing.generator import lights, names
from noticeparse.testing.generator.coordinates import Water
from noticeparse.testing.generator.depths import draw_depth
from noticeparse.testing.generator.features import (
    Hand,
    Phrase,
    draw_area,
    draw_line,
    draw_lit,
    draw_movable,
    draw_point,
    draw_unlit,
    write_legend,
)
from noticeparse.testing.generator.lights import write_light
from noticeparse.testing.generator.truth import Action, Change, Feature, Point


class Verbs(NamedTuple):
    """The words of an office for the five actions; `joint` parts old from new in a replacement."""

    insert: str
    amend: str
    replace: str
    move: str
    delete: str
    joint: str

    def word(self, verb: str) -> str:
        """The written word of a verb."""
        return str(getattr(self, verb))


VERBS = (
    Verbs("Insert", "Amend", "Replace", "Move", "Delete", "by"),
    Verbs("Insert", "Amend", "Replace", "Move", "Delete", "with"),
    Verbs("Add", "Change", "Substitute", "Relocate", "Delete", "for"),
    Verbs("Establish", "Change", "Replace", "Reposition", "Discontinue", "with"),
    Verbs("Insert", "Modify", "Replace", "Shift", "Expunge", "by"),
    Verbs("Insert", "Alter", "Substitute", "Move", "Remove", "for"),
    Verbs("Place", "Correct", "Replace", "Transfer", "Erase", "by"),
)


@dataclass(frozen=True, slots=True)
class Job:
    """One action and its words: `words` go before its places, `link` tells their relation."""

    verb: str
    words: str
    feature: Feature
    points: tuple[Point, ...]
    shape: str = "point"
    relation: str = "at"
    link: str = ""
    direction: str | None = None
    radius_nm: Decimal | None = None
    destination: Point | None = None
    changes: tuple[Change, ...] = ()
    replacement: Feature | None = None
    other_words: str = ""
    """What comes in a replacement, or what an amended feature becomes."""
    subject: str = ""
    """What is amended, as the subject of a sentence; empty where it makes no sentence."""

    def phrase(self, verbs: Verbs) -> str:
        """The words in full; a replacement is joined as the verb of the office asks."""
        if self.verb != "replace":
            return self.words
        if verbs.joint == "for":
            return f"{self.other_words} for {self.words}"
        return f"{self.words} {verbs.joint} {self.other_words}"

    def action(self, notice: str, chart: str, line: int) -> Action:
        """The action as it stands in its notice."""
        return Action(
            notice=notice, chart=chart, line=line, verb=self.verb, feature=self.feature,
            points=self.points, shape=self.shape, relation=self.relation,
            direction=self.direction, radius_nm=self.radius_nm, destination=self.destination,
            changes=self.changes, replacement=self.replacement,
        )  # fmt: skip


Draw = Callable[[Random, Hand, Water], Job]


def draw_job(rng: Random, hand: Hand, water: Water) -> Job:
    """Any action."""
    pick = rng.random()
    for limit, draw in _DRAWS:
        if pick < limit:
            return draw(rng, hand, water)
    return _at_point("delete", rng, hand, water)


def _insert_point(rng: Random, hand: Hand, water: Water) -> Job:
    return _at_point("insert", rng, hand, water)


def _at_point(verb: str, rng: Random, hand: Hand, water: Water) -> Job:
    phrase = draw_point(rng, hand)
    if phrase.feature.kind == "legend" and rng.random() < 0.5:
        return Job(
            verb, phrase.words, phrase.feature, (water.point(),), relation="centred_on",
            link="centred on",
        )  # fmt: skip
    return Job(verb, phrase.words, phrase.feature, (water.point(),))


def _several_points(rng: Random, hand: Hand, water: Water) -> Job:
    phrase = draw_unlit(rng, hand).for_several()
    verb = rng.choice(("insert", "delete"))
    points = tuple(water.point() for _ in range(rng.randint(2, 3)))
    return Job(verb, phrase.words, phrase.feature, points, shape="points")


def _line(rng: Random, hand: Hand, water: Water) -> Job:
    phrase = draw_line(rng)
    verb = rng.choice(("insert", "insert", "delete"))
    points = tuple(water.line(rng.randint(2, 6)))
    return Job(verb, phrase.words, phrase.feature, points, "line", "joining", "joining")


def _area(rng: Random, hand: Hand, water: Water) -> Job:
    phrase = draw_area(rng)
    verb = rng.choice(("insert", "insert", "delete"))
    points = tuple(water.ring())
    return Job(verb, phrase.words, phrase.feature, points, "area", "within", "bounded by")


def _circle(rng: Random, hand: Hand, water: Water) -> Job:
    phrase = draw_area(rng)
    radius = Decimal(rng.choice(("0.5", "1", "1.5", "2")))
    unit = "mile" if radius == 1 else "miles"
    return Job(
        "insert", f"{phrase.words}, radius {radius} {unit}", phrase.feature, (water.point(),),
        "circle", "centred_on", "centred on", radius_nm=radius,
    )  # fmt: skip


def _move(rng: Random, hand: Hand, water: Water) -> Job:
    phrase = draw_movable(rng, hand)
    start, end = water.point(), water.point()
    return Job("move", phrase.words, phrase.feature, (start,), link="from", destination=end)


def _replace(rng: Random, hand: Hand, water: Water) -> Job:
    old, new = rng.choice((_depths, _dangers, _marks, _legends))(rng, hand)
    return Job(
        "replace", old.words, old.feature, (water.point(),), replacement=new.feature,
        other_words=new.words,
    )  # fmt: skip


def _depths(rng: Random, hand: Hand) -> tuple[Phrase, Phrase]:
    found = []
    for _ in range(2):
        depth = draw_depth(rng, hand.depths)
        feature = Feature("sounding", ("SOUNDG",), depth=depth.depth)
        found.append(Phrase(feature, f"depth {depth.words}"))
    return found[0], found[1]


def _dangers(rng: Random, hand: Hand) -> tuple[Phrase, Phrase]:
    depth = draw_depth(rng, hand.depths, "least")
    old = rng.choice((("wreck", "WRECKS"), ("obstruction", "OBSTRN"), ("rock", "UWTROC")))
    kind, s57, words = rng.choice(
        (("wreck_least_depth", "WRECKS", "wreck"), ("obstruction", "OBSTRN", "obstruction"))
    )
    new = Feature(kind, (s57,), depth=depth.depth)
    before = Phrase(Feature(old[0], (old[1],)), old[0])
    return before, Phrase(new, f"{words}, least depth {depth.words}")


def _marks(rng: Random, hand: Hand) -> tuple[Phrase, Phrase]:
    return draw_movable(rng, hand), draw_lit(rng, hand)


def _legends(rng: Random, hand: Hand) -> tuple[Phrase, Phrase]:
    old, new = rng.sample(names.LEGENDS, 2)
    return write_legend(rng, hand, old), write_legend(rng, hand, new)


def _amend(rng: Random, hand: Hand, water: Water) -> Job:
    made = rng.choice(_AMENDS)(rng, hand)
    return Job(
        "amend", made.words, made.feature, (water.point(),), changes=(made.change,),
        other_words=made.becomes, subject=made.subject,
    )  # fmt: skip


class _Amended(NamedTuple):
    words: str
    feature: Feature
    change: Change
    subject: str
    becomes: str


def _whole_light(rng: Random, hand: Hand) -> _Amended:
    light = rng.choice((lights.major, lights.minor, lights.sectored))(rng)
    written = write_light(light, hand.lights)
    feature = Feature("light", ("LIGHTS",))
    return _Amended(f"light to {written}", feature, Change("light", light), "light", written)


def _range(rng: Random, hand: Hand) -> _Amended:
    light = lights.major(rng)
    reach = light.ranges_nm[0] - rng.randint(1, 6)
    feature = Feature("light", ("LIGHTS",), light=light)
    written = write_light(light, hand.lights)
    change = Change("light.ranges_nm", (reach,), light.ranges_nm)
    words = f"light {written}: range to {reach}M"
    return _Amended(words, feature, change, f"range of the light {written}", f"{reach}M")


def _elevation(rng: Random, hand: Hand) -> _Amended:
    height = Decimal(rng.randint(5, 60))
    change = Change("light.elevation_m", height)
    words = f"elevation of light to {height}m"
    feature = Feature("light", ("LIGHTS",))
    return _Amended(words, feature, change, "elevation of the light", f"{height}m")


def _period(rng: Random, hand: Hand) -> _Amended:
    light = lights.flashing(rng)
    assert light.period_s is not None
    period = light.period_s + 1
    written = write_light(light, hand.lights)
    change = Change("light.period_s", period, light.period_s)
    feature = Feature("light", ("LIGHTS",), light=light)
    words = f"light {written}: period to {period}s"
    return _Amended(words, feature, change, f"period of the light {written}", f"{period}s")


def _legend(rng: Random, hand: Hand) -> _Amended:
    old, new = rng.sample(names.LEGENDS, 2)
    feature = Feature("legend", (), legend=old)
    words = f"legend {hand.name(old)} to {hand.name(new)}"
    change = Change("legend", new, old)
    return _Amended(words, feature, change, f"legend {hand.name(old)}", hand.name(new))


def _depth(rng: Random, hand: Hand) -> _Amended:
    old, new = draw_depth(rng, hand.depths), draw_depth(rng, hand.depths)
    feature = Feature("sounding", ("SOUNDG",), depth=old.depth)
    words = f"depth {old.words} to {new.words}"
    return _Amended(words, feature, Change("depth", new.depth), f"depth {old.words}", new.words)


def _name(rng: Random, hand: Hand) -> _Amended:
    old, new = rng.sample(range(1, 40), 2)
    feature = Feature("buoy_special", ("BOYSPP",), name=f"No {old}")
    change = Change("name", f"No {new}", f"No {old}")
    return _Amended(f"special buoy No {old} to No {new}", feature, change, "", f"No {new}")


_AMENDS: tuple[Callable[[Random, Hand], _Amended], ...] = (
    _whole_light, _whole_light, _range, _elevation, _period, _legend, _depth, _name,
)  # fmt: skip

_DRAWS: tuple[tuple[float, Draw], ...] = (
    (0.40, _insert_point),
    (0.50, _line),
    (0.57, _area),
    (0.59, _circle),
    (0.63, _several_points),
    (0.71, _move),
    (0.78, _amend),
    (0.85, _replace),
)


def in_order(jobs: list[Job]) -> list[Job]:
    """Jobs grouped by verb, as lists under verb headings are."""
    order = ("insert", "amend", "replace", "move", "delete")
    return sorted(jobs, key=lambda job: order.index(job.verb))


def at_reference(job: Job, points: tuple[Point, ...], direction: str | None) -> Job:
    """The job at positions named before: `at (a) above`, `close N of (a) above`."""
    if direction is None:
        return replace(job, points=points)
    return replace(job, points=points, relation="close", direction=direction)
