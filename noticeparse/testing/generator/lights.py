"""Lights: characters drawn by what the mark may show, and the ways to write them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal
from random import Random
from typing import NamedTuple

from noticeparse.testing.generator.truth import Light, Sector


class LightStyle(NamedTuple):
    """How an office writes characters: what stands between the parts, and the decimal sign."""

    name: str
    dot: str
    blank: str
    decimal: str


STYLES = (
    LightStyle("dotted", ".", "", "."),
    LightStyle("dotted, raised decimals", ".", "", "·"),
    LightStyle("spaced", " ", " ", "."),
)

_ONE = ("Fl", "Q", "Iso", "Oc", "LFl", "VQ")
_PERIODS = {
    "Fl": ("2", "2.5", "3", "4", "5", "6", "10"), "Iso": ("2", "4", "6", "8"),
    "Oc": ("3", "4", "5", "8", "10"), "LFl": ("6", "8", "10"),
}  # fmt: skip
_GROUPED = {2: ("5", "6", "8", "10"), 3: ("10", "12", "15", "20"), 4: ("12", "15", "20")}


def lateral(rng: Random, colour: str) -> Light:
    """A light of one colour as lateral marks show it."""
    if rng.random() < 0.35:
        group = rng.choice((2, 3, 4))
        period = Decimal(rng.choice(_GROUPED[group]))
        return Light("Fl", (colour,), (group,), period_s=period)
    rhythm = rng.choice(_ONE)
    periods = _PERIODS.get(rhythm)
    return Light(rhythm, (colour,), period_s=Decimal(rng.choice(periods)) if periods else None)


def port(rng: Random) -> Light:
    """The light of a port-hand mark, region A."""
    return lateral(rng, "R")


def starboard(rng: Random) -> Light:
    """The light of a starboard-hand mark, region A."""
    return lateral(rng, "G")


def special(rng: Random) -> Light:
    """The yellow light of a special mark."""
    if rng.random() < 0.3:
        return Light("Fl", ("Y",), (rng.choice((4, 5)),), period_s=Decimal(20))
    return Light("Fl", ("Y",), period_s=Decimal(rng.choice(_PERIODS["Fl"])))


def preferred(rng: Random) -> Light:
    """A composite group, as only preferred-channel marks show it."""
    return Light("Fl", (rng.choice("RG"),), (2, 1), period_s=Decimal(rng.choice(("10", "12"))))


def safe_water(rng: Random) -> Light:
    """Isophase, occulting, one long flash or Morse A, white."""
    rhythm, period = rng.choice((("Iso", 4), ("Iso", 10), ("Oc", 6), ("LFl", 10), ("Mo", 6)))
    morse = "A" if rhythm == "Mo" else None
    return _white(rng, rhythm, (), period, morse)


def isolated_danger(rng: Random) -> Light:
    """Two white flashes."""
    return _white(rng, "Fl", (2,), rng.choice((5, 10)))


def cardinal(quarter: str) -> Callable[[Random], Light]:
    """The white light of a cardinal mark; the groups follow the clock."""
    known: dict[str, tuple[tuple[str, tuple[int, ...], int | None], ...]] = {
        "north": (("Q", (), None), ("VQ", (), None)),
        "east": (("Q", (3,), 10), ("VQ", (3,), 5)),
        "south": (("Q+LFl", (6,), 15), ("VQ+LFl", (6,), 10)),
        "west": (("Q", (9,), 15), ("VQ", (9,), 10)),
    }

    def draw(rng: Random) -> Light:
        rhythm, groups, period = rng.choice(known[quarter])
        return _white(rng, rhythm, groups, period)

    return draw


def major(rng: Random) -> Light:
    """The light of a lighthouse: white, with elevation and range."""
    group = rng.choice(((), (2,), (3,), (4,)))
    period = Decimal(rng.choice(_GROUPED[group[0]] if group else ("5", "7.5", "10", "15")))
    reach = rng.randint(10, 24)
    return Light(
        "Fl", ("W",), group, period_s=period, elevation_m=Decimal(rng.randint(12, 88)),
        ranges_nm=(reach,), range_by_colour=(("W", reach),),
        is_colour_stated=rng.random() < 0.6,
    )  # fmt: skip


def minor(rng: Random) -> Light:
    """The light of a pier or breakwater."""
    light = flashing(rng)
    if rng.random() < 0.3:
        return replace(light, rhythm="F", period_s=None, count=2, is_vertical=True)
    return light


def flashing(rng: Random) -> Light:
    """The same, where it has a period."""
    colour, reach = rng.choice("RG"), rng.randint(2, 5)
    return Light(
        "Fl", (colour,), period_s=Decimal(rng.choice(("2", "3", "5"))),
        elevation_m=Decimal(rng.randint(3, 12)), ranges_nm=(reach,),
        range_by_colour=((colour, reach),),
    )  # fmt: skip


def sectored(rng: Random) -> Light:
    """A light of several colours, with a range each or the greatest and least."""
    colours = rng.choice((("W", "R", "G"), ("W", "R"), ("W", "G")))
    rhythm, groups = rng.choice((("Fl", ()), ("Fl", (2,)), ("Fl", (3,)), ("Oc", ()), ("Iso", ())))
    periods = _GROUPED[groups[0]] if groups else _PERIODS[rhythm]
    ranges = tuple(sorted(rng.sample(range(4, 18), len(colours)), reverse=True))
    by_colour: tuple[tuple[str, int | None], ...] = tuple(zip(colours, ranges, strict=True))
    if len(colours) == 3 and rng.random() < 0.5:
        by_colour = ((colours[0], ranges[0]), (colours[1], None), (colours[2], ranges[2]))
        ranges = (ranges[0], ranges[2])
    return Light(
        rhythm, colours, groups, period_s=Decimal(rng.choice(periods)),
        elevation_m=Decimal(rng.randint(6, 60)), ranges_nm=ranges, range_by_colour=by_colour,
    )  # fmt: skip


def with_sectors(rng: Random) -> Light:
    """A sectored light whose sectors are told; they meet at whole degrees and close the circle."""
    light = sectored(rng)
    count = len(light.colours)
    limits = sorted(rng.sample(range(0, 360, 5), count))
    order = [light.colours[i % count] for i in range(count)]
    sectors = tuple(
        Sector(colour, limits[i], limits[(i + 1) % count]) for i, colour in enumerate(order)
    )
    return Light(
        light.rhythm, light.colours, light.groups, period_s=light.period_s,
        elevation_m=light.elevation_m, ranges_nm=light.ranges_nm,
        range_by_colour=light.range_by_colour, sectors=sectors,
    )  # fmt: skip


def _white(
    rng: Random, rhythm: str, groups: tuple[int, ...], period: int | None, morse: str | None = None
) -> Light:
    period_s = None if period is None else Decimal(period)
    stated = rng.random() < 0.3
    return Light(rhythm, ("W",), groups, morse, period_s, is_colour_stated=stated)


def write_light(light: Light, style: LightStyle) -> str:
    """A character in one style, sectors left out."""
    opening = _rhythm(light)
    parts = [opening] if not light.is_colour_stated else [opening, "".join(light.colours)]
    if light.is_vertical:
        parts[-1] += "(vert)"
    figures = _figures(light, style)
    touches = opening.endswith(")") and not style.blank
    head = ("" if touches else style.dot).join(parts)
    if not figures:
        return head
    if style.blank:
        return style.blank.join((head, *figures))
    joint = "" if head.endswith(")") else style.dot if light.period_s is not None else ""
    return head + joint + "".join(figures)


def _rhythm(light: Light) -> str:
    rhythm, plus, long = light.rhythm.partition("+")
    count = str(light.count) if light.count > 1 else ""
    group = f"({light.morse})" if light.morse else ""
    if light.groups:
        group = "(" + "+".join(map(str, light.groups)) + ")"
    return count + rhythm + group + plus + long


def _figures(light: Light, style: LightStyle) -> list[str]:
    figures: list[str] = []
    if light.period_s is not None:
        figures.append(str(light.period_s).replace(".", style.decimal) + "s")
    if light.elevation_m is not None:
        figures.append(f"{light.elevation_m}m")
    if light.ranges_nm:
        is_cut = len(light.ranges_nm) < len(light.colours)
        joint = "-" if is_cut and len(light.ranges_nm) > 1 else "/"
        figures.append(joint.join(map(str, light.ranges_nm)) + "M")
    return figures


def write_sectors(sectors: tuple[Sector, ...]) -> str:
    """The sectors: `W 000°-090°, R 090°-170°`."""
    return ", ".join(f"{one.colour} {one.from_deg:03d}°-{one.to_deg:03d}°" for one in sectors)
