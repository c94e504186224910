"""Positions, offsets, datums and units against the outside: standards and programs of others.

Each table names its source.  Where a program of others reads a form correctly, ours gives the same
value; where one reads a contradiction as if nothing were wrong, ours refuses.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

import pygeodesy
import pytest
from geographiclib.geodesic import Geodesic
from geopy import Point
from pygeodesy import dms
from pyproj import CRS, Geod
from pyproj.database import get_units_map

from noticeparse import NoticeParseError, find_positions, parse, parse_depth, parse_position
from noticeparse.build.positions import distance_m
from noticeparse.checks.outliers import distance_nm
from noticeparse.numbers import CABLE_M, FATHOM_M, FOOT_M, NAUTICAL_MILE_M
from noticeparse.readers.head_values import _EPSG, read_datum
from noticeparse.readers.offsets import COMPASS
from noticeparse.records import Position
from tests.short_notices import HEAD_WITHOUT_UNIT as HEAD

WGS84 = Geod(ellps="WGS84")
LIGHT = "47-12.34S 123-45.67W"
LIGHT_DEG = (-(47 + 12.34 / 60), -(123 + 45.67 / 60))

ANNEX_H = {
    # ISO 6709:2008, annex H, the examples as commonly quoted (from memory).
    "+40-075CRSWGS_84/": ("40", "-75"),
    "+40.20361-075.00417CRSWGS_84/": ("40.20361", "-75.00417"),
    "+40.20361-075.00417+350.517CRSWGS_84/": ("40.20361", "-75.00417"),
    "+4012.22-07500.25CRSWGS_84/": ("40 12.22", "-75 0.25"),
    "+4012-07500/": ("40 12", "-75 0"),
    "+401213.1-0750015.1CRSWGS_84/": ("40 12 13.1", "-75 0 15.1"),
    "+401213-0750015/": ("40 12 13", "-75 0 15"),
    "+00-025/": ("0", "-25"),
    "+46+002/": ("46", "2"),
    "+48.52+002.20/": ("48.52", "2.20"),
    "+48.8577+002.295/": ("48.8577", "2.295"),
    "+27.5916+086.5640+8850CRSWGS_84/": ("27.5916", "86.5640"),
    "+90+000/": ("90", "0"),
    "-90+000+2800CRSWGS_84/": ("-90", "0"),
    "+38-097/": ("38", "-97"),
    "+40.6894-074.0447/": ("40.6894", "-74.0447"),
}


def exact(fields: str) -> Fraction:
    first, *rest = fields.split()
    parts = [Fraction(f) / 60**n for n, f in enumerate([first.lstrip("-"), *rest])]
    size = sum(parts, Fraction(0))
    return -size if first.startswith("-") else size


@pytest.mark.parametrize(("text", "fields"), ANNEX_H.items(), ids=ANNEX_H)
def test_iso_6709_annex_h(text: str, fields: tuple[str, str]) -> None:
    position = parse_position(text)
    assert position.exact() == (exact(fields[0]), exact(fields[1]))
    assert find_positions(f"The corner {text} of the area")[0].iso6709 == position.iso6709


def test_points_of_iso_6709_follow_each_other() -> None:
    found = find_positions("+4012.22-07500.25/+4013.22-07501.25/")
    assert [position.iso6709 for position in found] == [
        "+4012.22-07500.25/", "+4013.22-07501.25/",
    ]  # fmt: skip


COORDINATES = (
    "47°12.34'S", "47° 12.34' S", "47°12′20.4″S", "47°12'20.4\"S", "47 12.34 S", "47 12 20.4 S",
    "4712.34S", "471220.4S", "47.20567S", "47.20567°S", "47°12'S",
)  # fmt: skip


@pytest.mark.parametrize("text", COORDINATES)
@pytest.mark.parametrize("reader", [dms.parseDMS, dms.parseDDDMMSS], ids=lambda f: f.__name__)
def test_pygeodesy_reads_the_same(text: str, reader: Callable[[str], float]) -> None:
    theirs = reader(text)
    if not abs(theirs) <= 90:
        pytest.skip("taken for decimal degrees there")
    assert parse_position(f"{text} 123°45.67'W").lat == pytest.approx(theirs, abs=1e-12)


def test_pygeodesy_reads_the_same_pair() -> None:
    # It rounds to six decimals here.
    theirs = pygeodesy.parse3llh("47°12.34'S, 123°45.67'W")
    ours = parse_position("47°12.34'S, 123°45.67'W")
    assert (ours.lat, ours.lon) == pytest.approx((theirs.lat, theirs.lon), abs=5e-7)


GEOPY_READS = (
    # The forms of geopy.Point's own documentation, moved to the islands, and some of ours.
    "47°12.34'S 123°45.67'W",
    "47°12'20.4\"S 123°45'40.2\"W",
    "47° 12′ 20.4″ S, 123° 45′ 40.2″ W",
    "47° 12' 20'' S / W 123° 45' 40''",
    "S 47°12' 20'' / W 123°45' 40''",
    "47°12m20s S 123°45m40s W",
    "47 12.34m S, 123 45.67m W",
    "47.20567°S 123.76117°W",
    "47.20567S, 123.76117W",
    "-47.20567, -123.76117",
    "-47.20567;-123.76117",
    "-47.20567 -123.76117",
    "47°12.34' S;123°45.67' W",
)


@pytest.mark.parametrize("text", GEOPY_READS)
def test_geopy_reads_the_same(text: str) -> None:
    theirs = Point(text)
    ours = parse_position(text)
    assert (ours.lat, ours.lon) == pytest.approx((theirs.latitude, theirs.longitude), abs=1e-12)


GEOPY_GUESSES = (
    # A sign against a letter, no hemisphere, 75 minutes: read there without a word.
    "41.5 N -81.0 W", "-41.5 S;81.0 E", "47.20567 123.76117", "47.20567, 123.76117",
    "47°75'20\"S 123°45'40\"W", "47°12'75\"S 123°45'40\"W",
)  # fmt: skip


@pytest.mark.parametrize("text", GEOPY_GUESSES)
def test_what_geopy_guesses_is_refused(text: str) -> None:
    Point(text)
    with pytest.raises(NoticeParseError):
        parse_position(text)


PLAIN_NAMES = {"CGCS2000": "chinageodeticcoordinatesystem2000"}


def plain(name: str) -> str:
    return "".join(c for c in name.lower() if c.isalnum())


@pytest.mark.parametrize("written", _EPSG)
def test_datum_has_the_code_of_its_2d_system(written: str) -> None:
    # The EPSG dataset in pyproj.
    datum = read_datum(written)
    assert datum.epsg is not None
    crs = CRS.from_epsg(datum.epsg)
    assert plain(crs.name) == PLAIN_NAMES.get(written, plain(datum.name))
    assert crs.is_geographic
    assert len(crs.axis_info) == 2


@pytest.mark.parametrize("written", ["undetermined datum", "datum: unknown", "local datum"])
def test_datum_without_a_code(written: str) -> None:
    assert read_datum(written).epsg is None


UNITS = {"foot": FOOT_M, "fathom": FATHOM_M, "nautical mile": NAUTICAL_MILE_M}


@pytest.mark.parametrize(("name", "metres"), UNITS.items())
def test_unit_is_that_of_the_epsg_dataset(name: str, metres: object) -> None:
    assert float(str(metres)) == get_units_map(category="linear")[name].conv_factor


def test_units_by_definition() -> None:
    # ISO 80000-3: the mile of navigation is 1852 m; a cable is a tenth of it, a fathom six feet.
    assert CABLE_M * 10 == NAUTICAL_MILE_M == 1852
    assert FATHOM_M == 6 * FOOT_M
    assert parse_depth("3fm 2ft").value_m == 3 * FATHOM_M + 2 * FOOT_M


def worked_out(words: str, reference: str = LIGHT) -> Position:
    bulletin = parse(f"{HEAD}Insert wreck {words} Brannoch Rock light in {reference}\n")
    (action,) = bulletin.notices[0].charts[0].actions
    (position,) = action.geometry.positions
    assert (position.via, action.geometry.relation) == ("offset", "from_reference")
    return position


OFFSETS = {
    "137°T, 2.4M from": (137, 2.4),
    "2.4 miles 137° from": (137, 2.4),
    "0.6 miles 240° from": (240, 0.6),
    "bearing 155° and 0.2 miles from": (155, 0.2),
    "15 cables 040° from": (40, 1.5),
    "4 cables 000° from": (0, 0.4),
    "12.25 miles 359.5° from": (359.5, 12.25),
    "1.5 nautical miles 090° from": (90, 1.5),
    **{f"3.0 miles {point} of": (22.5 * n, 3.0) for n, point in enumerate(COMPASS)},
}


@pytest.mark.parametrize(("words", "offset"), OFFSETS.items(), ids=OFFSETS)
def test_offset_is_the_geodesic(words: str, offset: tuple[float, float]) -> None:
    bearing, miles = offset
    position = worked_out(words)
    karney = Geodesic.WGS84.Direct(*LIGHT_DEG, bearing, miles * 1852)
    lon, lat, _ = WGS84.fwd(LIGHT_DEG[1], LIGHT_DEG[0], bearing, miles * 1852)
    assert (position.lat, position.lon) == pytest.approx(
        (karney["lat2"], karney["lon2"]), abs=1e-9
    )
    assert (position.lat, position.lon) == pytest.approx((lat, lon), abs=1e-9)
    assert position.exact() == pytest.approx((lat, lon), abs=position.resolution_m / 30000)


def test_offset_to_eleven_figures() -> None:
    # Karney's direct geodesic on WGS84, worked out once with GeographicLib 2.1.
    position = worked_out("137°T, 2.4M from")
    assert position.lat == pytest.approx(-47.234899315245066, abs=1e-9)
    assert position.lon == pytest.approx(-123.72113410810519, abs=1e-9)


RESOLUTIONS = {
    # The largest of: the anchor's, half the last figure of the distance, the distance times half
    # the last figure of the bearing (a compass point of sixteen: 11.25 degrees to each side).
    "137°T, 2.4M from": 93.0,
    "137°T, 2.40M from": 39.0,
    "137.0°T, 2.400M from": 9.3,
    "15 cables 040° from": 93.0,
    "2.4 miles SE of": 870.0,
}


@pytest.mark.parametrize(("words", "metres"), RESOLUTIONS.items(), ids=RESOLUTIONS)
def test_resolution_of_an_offset(words: str, metres: float) -> None:
    assert worked_out(words).resolution_m == metres


@pytest.mark.parametrize(
    ("reference", "words", "lon"),
    [
        ("47-12.34S 179-58.00E", "5.0 miles 090° from", -179.91),
        ("47-12.34S 179-58.00W", "5.0 miles 270° from", 179.91),
    ],
)
def test_offset_across_the_antimeridian(reference: str, words: str, lon: float) -> None:
    assert worked_out(words, reference).lon == pytest.approx(lon, abs=0.01)


PAIRS = {
    # Geodesics of GeographicLib 2.1, metres.
    "near": (LIGHT, "47-15.00S 123-50.00W", 7359.526598185613),
    "antimeridian": ("46-59.50S 179-58.00E", "47-00.50S 179-57.00W", 6603.278010816812),
}


@pytest.mark.parametrize(("first", "second", "metres"), PAIRS.values(), ids=PAIRS)
def test_distance(first: str, second: str, metres: float) -> None:
    one, other = parse_position(first), parse_position(second)
    _, _, theirs = WGS84.inv(one.lon, one.lat, other.lon, other.lat)
    assert distance_m(one, other) == pytest.approx(metres, abs=1e-3)
    assert distance_m(one, other) == pytest.approx(theirs, abs=1e-6)
    rough = distance_nm((one.lat, one.lon), (other.lat, other.lon))
    assert rough * 1852 == pytest.approx(metres, rel=0.01)


def test_resolution_is_near_half_the_last_figure_on_the_ground() -> None:
    # One minute of latitude is 1842.9 m at the equator and 1861.6 m at the pole on WGS84.
    for lat in (0.0, -47.5, 89.0):
        _, _, minute = WGS84.inv(0.0, lat, 0.0, lat + 1 / 60)
        assert parse_position(LIGHT).resolution_m == pytest.approx(minute / 200, rel=0.01)
