"""Every written form of a position, and points drawn close to each other.

A form writes one coordinate by a pattern; what differs between offices is a line of the table.
"""

from __future__ import annotations

from random import Random
from typing import NamedTuple

from noticeparse.testing.generator.truth import Coordinate, Point


class Form(NamedTuple):
    """A way to write positions: `half` is the pattern of one coordinate.

    `{d}` degrees, `{n}` the same without noughts in front, `{m}` minutes, `{s}` seconds, `{f}`
    decimals, `{h}` hemisphere letter, `{w}` its word, `{g}` its sign, `{a}` the name of the axis.
    """

    name: str
    unit: int
    decimals: tuple[int, ...]
    half: str
    joint: str = " "
    ending: str = ""
    minutes: str | None = None
    """A coordinate that shares the degrees of the one before, where the form has such."""

    @property
    def is_signed(self) -> bool:
        """Whether a sign tells the hemisphere, and no letter."""
        return self.half.startswith("{g}")

    @property
    def has_halves(self) -> bool:
        """Whether each coordinate stands for itself, so that it can fill a column of its own."""
        return not self.is_signed


FORMS: tuple[Form, ...] = (
    Form("dm_symbols", 1, (1, 2, 3), "{d}°{m}.{f}'{h}", minutes="{m}.{f}'{h}"),
    Form("dm_symbols_whole", 1, (0,), "{d}°{m}'{h}"),
    Form("dm_primes", 1, (1, 2, 3), "{d}° {m}.{f}′ {h}", ", "),
    Form("dm_middot", 1, (1, 2, 3), "{d}° {m}´·{f}{h}.", ", "),
    Form("dm_middot_apart", 1, (2, 3), "{d}° {m}'·{f} {h}", minutes="{m}'·{f} {h}"),
    Form("dm_middot_inside", 1, (1, 2, 3), "{d}°{m}·{f}'{h}"),
    Form("dm_mark_first", 1, (1, 2, 3), "{d}°{m}'.{f}{h}", minutes="{m}'.{f}{h}"),
    Form("dm_mark_first_stop", 1, (2, 3), "{d}°{m}'.{f}{h}.", ", "),
    Form("dm_mark_apart", 1, (2,), "{d}° {m}' .{f} {h}", "   "),
    Form("dm_ordinal", 1, (2, 3), "{d}º{m}.{f}´{h}"),
    Form("dm_ring", 1, (2, 3), "{d}˚ {m}'.{f} {h}", ",  "),
    Form("dm_curly", 1, (2, 3), "{d}°{m}.{f}’{h}", ", "),
    Form("dm_deg", 1, (1, 2), "{d} deg {m}.{f} min {h}", ", "),
    Form("dm_words", 1, (2,), "{d} degrees {m}.{f} minutes {w}", ", "),
    Form("hyphen", 1, (1, 2, 3), "{d}-{m}.{f}{h}"),
    Form("hyphen_comma", 1, (1, 2), "{d}-{m}.{f}{h}", ", "),
    Form("hyphen_whole", 1, (0,), "{d}-{m}{h}"),
    Form("hyphen_typographic", 1, (2, 3), "{d}‑{m}.{f}{h}"),
    Form("blanks", 1, (1, 2, 3), "{d} {m}.{f} {h}"),
    Form("blanks_close", 1, (2, 3), "{d} {m}.{f}{h}"),
    Form("compact", 1, (1, 2, 3), "{d}{m}.{f}{h}"),
    Form("hemisphere_first", 1, (2, 3), "{h}{d} {m}.{f}"),
    Form("hemisphere_first_symbols", 1, (2, 3), "{h} {d}°{m}.{f}'"),
    Form("axis_named", 1, (2, 3), "{a} {d}°{m}.{f}'{h}"),
    Form("axis_named_words", 1, (2,), "{a}. {d}°{m}.{f}' {w}", ", "),
    Form("dms", 2, (1, 2), "{d}°{m}'{s}.{f}\"{h}"),
    Form("dms_whole", 2, (0,), "{d}°{m}'{s}\"{h}"),
    Form("dms_primes", 2, (1,), "{d}° {m}′ {s}.{f}″ {h}", ", "),
    Form("dms_words", 2, (1,), "{d} deg {m} min {s}.{f} sec {h}", ", "),
    Form("dms_hyphen", 2, (1,), "{d}-{m}-{s}.{f}{h}"),
    Form("dms_hyphen_whole", 2, (0,), "{d}-{m}-{s}{h}"),
    Form("decimal", 0, (4, 5), "{d}.{f}°{h}"),
    Form("decimal_plain", 0, (5,), "{d}.{f}{h}"),
    Form("decimal_signed", 0, (4, 5), "{g}{d}.{f}", ", "),
    Form("iso_degrees", 0, (5,), "{g}{d}.{f}", "", "/"),
    Form("iso_minutes", 1, (1, 2, 3), "{g}{d}{m}.{f}", "", "/"),
    Form("iso_seconds", 2, (1,), "{g}{d}{m}{s}.{f}", "", "/"),
    Form("iso_height", 2, (1,), "{g}{d}{m}{s}.{f}", "", "+12.5CRSWGS_84/"),
    Form("comma_decimal", 1, (2, 3), "{d}°{m},{f}'{h}"),
    Form("comma_decimal_semicolon", 1, (2, 3), "{d}°{m},{f}'{h}", "; "),
    Form("comma_decimal_slash", 1, (2,), "{d}°{m},{f}'{h}", " / "),
)
"""Degrees and minutes, minutes and seconds, decimal degrees, ISO 6709, with every sign in use."""

RARE_FORMS: tuple[Form, ...] = (
    Form("dm_unpadded", 1, (0, 1, 2, 3), "{n}°{m}.{f}'{h}"),
    Form("dm_letter_d", 1, (1, 2), "{d}d{m}.{f}'{h}"),
    Form("dm_names", 1, (1, 2, 3), "{d}°{m}.{f}' {w}"),
    Form("en_dash", 1, (1, 2, 3), "{d}–{m}.{f} {h}"),
    Form("thin_blanks", 1, (2, 3), "{d}°\u2009{m}.{f}'\u00a0{h}"),
    Form("compact_whole", 1, (0,), "{d}{m}{h}"),
    Form("dms_compact", 2, (0, 1), "{d}{m}{s}.{f}{h}"),
    Form("dms_long_words", 2, (0, 1), "{d} degrees {m} minutes {s}.{f} seconds {w}", ", "),
    Form("decimal_names", 0, (3, 4), "{d}.{f}° {w}", ", "),
    Form("iso_whole", 1, (0,), "{g}{d}{m}", "", "/"),
)
"""Forms that notices seldom have: for those who read any text, and not for whole bulletins."""

_NAMES = {"N": "North", "S": "South", "E": "East", "W": "West"}


def write_half(pattern: str, one: Coordinate, *, letter: str) -> str:
    """One coordinate by its pattern, in the hemisphere N, S, E or W."""
    degrees, minutes, seconds, decimals = one.fields()
    is_lat = letter in "NS"
    if not decimals:
        pattern = pattern.replace(".{f}", "").replace("·{f}", "").replace(",{f}", "")
    return pattern.format(
        d=f"{degrees:02d}" if is_lat else f"{degrees:03d}",
        n=degrees,
        m=f"{minutes:02d}",
        s=f"{seconds:02d}",
        f=decimals,
        h=letter,
        w=_NAMES[letter],
        g="-" if letter in "SW" else "+",
        a="Lat" if is_lat else "Long",
    )


def write_point(form: Form, point: Point, letters: str = "SW") -> str:
    """A position in one form; `letters` are its hemispheres."""
    lat, lon = (
        write_half(form.half, one, letter=letter)
        for one, letter in zip(point, letters, strict=True)
    )
    return lat + form.joint + lon + form.ending


def write_shared(form: Form, point: Point, before: Point, *, is_last: bool) -> str | None:
    """A position that leaves out the degrees of the one before it, or None where it can not.

    The last of a list may leave out its latitude too.
    """
    if form.minutes is None or not _same_degrees(point, before):
        return None
    lon = write_half(form.minutes, point.lon, letter="W")
    if is_last and point.lat == before.lat:
        return lon
    return write_half(form.minutes, point.lat, letter="S") + " " + lon


def _same_degrees(point: Point, before: Point) -> bool:
    return (
        point.lat.fields()[0] == before.lat.fields()[0]
        and point.lon.fields()[0] == before.lon.fields()[0]
    )


class Centre(NamedTuple):
    """The middle of the waters that a notice is about, in tenths of a minute south and west."""

    lat: int
    lon: int


def draw_centre(rng: Random) -> Centre:
    """A place within the Tavrenne Islands, some miles from their limits."""
    return Centre(
        rng.randint(46 * 600 + 100, 49 * 600 - 100), rng.randint(122 * 600 + 100, 128 * 600 - 100)
    )


class Water:
    """A stretch of water a few miles across; draws points in it, no point twice."""

    def __init__(self, rng: Random, form: Form, centre: Centre) -> None:
        self._rng = rng
        self._form = form
        self.decimals = rng.choice(form.decimals)
        self._scale = 60**form.unit * 10**self.decimals
        self._lat = centre.lat * self._scale // 600
        self._lon = centre.lon * self._scale // 600
        self._drawn: set[tuple[int, int]] = set()
        # Two miles and a half each way; whole minutes need more room.
        self._reach = max(self._scale // 24, 4)

    @property
    def form(self) -> Form:
        """The form in which its positions are written."""
        return self._form

    def point(self) -> Point:
        """A new point; beside the one drawn where that is taken."""
        rng, reach = self._rng, self._reach
        lat = self._lat + rng.randint(-reach, reach)
        lon = self._lon + rng.randint(-reach, reach)
        while (lat, lon) in self._drawn:
            lat, lon = lat + 1, lon + 1
        self._drawn.add((lat, lon))
        return self._made(lat, lon)

    def line(self, count: int) -> list[Point]:
        """Points of a line, each another one; some keep the latitude of the point before."""
        points = [self.point() for _ in range(count)]
        if count > 2 and self._rng.random() < 0.3:
            points[1] = points[1]._replace(lat=points[0].lat)
        return points

    def ring(self) -> list[Point]:
        """The four corners of an area, not closed."""
        one, two = self.point(), self.point()
        if one.lat == two.lat or one.lon == two.lon:
            return self.ring()
        return [one, Point(one.lat, two.lon), two, Point(two.lat, one.lon)]

    def _made(self, lat: int, lon: int) -> Point:
        unit, decimals = self._form.unit, self.decimals
        return Point(Coordinate(lat, unit, decimals), Coordinate(lon, unit, decimals))
