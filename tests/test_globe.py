"""Lines and rings on the globe, against geometry worked out by an independent library."""

from __future__ import annotations

import random
from itertools import pairwise
from math import cos, radians, sin

import pytest
from geographiclib.geodesic import Geodesic
from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon, box, unary_union
from shapely.affinity import translate
from shapely.geometry import LineString, MultiLineString
from shapely.geometry.polygon import orient

from noticeparse.globe import CIRCLE_CORNERS, Point, arc, circle, line_parts, ring_parts

WEST, EAST = -180.0, 180.0

LINES: list[tuple[str, list[Point], list[list[Point]]]] = [
    ("plain", [(1, 2), (3, 4)], [[(1, 2), (3, 4)]]),
    ("eastward", [(179, 0), (-179, 2)], [[(179, 0), (EAST, 1)], [(WEST, 1), (-179, 2)]]),
    ("westward", [(-179, 0), (179, 2)], [[(-179, 0), (WEST, 1)], [(EAST, 1), (179, 2)]]),
    (
        "over and back",
        [(179, 0), (-179, 2), (179, 4)],
        [[(179, 0), (EAST, 1)], [(WEST, 1), (-179, 2), (WEST, 3)], [(EAST, 3), (179, 4)]],
    ),
    ("up to it", [(179, 0), (180, 2)], [[(179, 0), (180, 2)]]),
    ("up to its other name", [(179, 0), (-180, 2)], [[(179, 0), (EAST, 2)]]),
    ("along it", [(180, 0), (-180, 2)], [[(WEST, 0), (WEST, 2)]]),
    (
        "a corner on it",
        [(179, 0), (180, 1), (-179, 2)],
        [[(179, 0), (180, 1)], [(WEST, 1), (-179, 2)]],
    ),
    ("away from it", [(-180, 0), (-179, 2)], [[(-180, 0), (-179, 2)]]),
    ("away from its other name", [(180, 0), (-179, 2)], [[(WEST, 0), (-179, 2)]]),
    ("at one place", [(5, 5), (5, 5)], [[(5, 5), (5, 5)]]),
]


@pytest.mark.parametrize(
    ("points", "parts"), [case[1:] for case in LINES], ids=[case[0] for case in LINES]
)
def test_line_is_cut(points: list[Point], parts: list[list[Point]]) -> None:
    assert line_parts(points) == parts


RINGS: list[tuple[str, list[Point], list[Polygon]]] = [
    ("far from it", [(1, 1), (2, 1), (2, 2)], [Polygon([(1, 1), (2, 1), (2, 2)])]),
    (
        "over it",
        [(179, 0), (-179, 0), (-179, 1), (179, 1)],
        [box(179, 0, 180, 1), box(-180, 0, -179, 1)],
    ),
    ("touching it", [(179, 0), (-180, 0), (-180, 1), (179, 1)], [box(179, 0, 180, 1)]),
    ("touching it from the east", [(-179, 0), (180, 0), (-180, 1)], [
        Polygon([(-179, 0), (-180, 0), (-180, 1)]),
    ]),
    (
        # Two teeth of a comb lie across: three pieces.
        "concave",
        [(179, 0), (-179, 0), (-179, 1), (179.5, 1), (179.5, 2), (-179, 2), (-179, 3), (179, 3)],
        [
            Polygon([(179, 0), (180, 0), (180, 1), (179.5, 1), (179.5, 2), (180, 2), (180, 3),
                     (179, 3)]),
            box(-180, 0, -179, 1),
            box(-180, 2, -179, 3),
        ],
    ),
    (
        "a corner that touches it from within",
        [(179, 0), (-179, 0), (-179, 2), (180, 1), (179, 2)],
        [Polygon([(179, 0), (180, 0), (180, 1), (179, 2)]),
         Polygon([(-180, 0), (-179, 0), (-179, 2), (-180, 1)])],
    ),
    (
        "a notch that touches it from the west",
        [(-179, 0), (-179, 3), (179, 3), (180, 2), (179, 1), (179, 0)],
        [box(-180, 0, -179, 3),
         Polygon([(179, 0), (180, 0), (180, 2), (179, 1)]),
         Polygon([(180, 2), (180, 3), (179, 3)])],
    ),
]  # fmt: skip


@pytest.mark.parametrize("is_reversed", [False, True], ids=["one way", "the other way"])
@pytest.mark.parametrize(
    ("points", "pieces"), [case[1:] for case in RINGS], ids=[case[0] for case in RINGS]
)
def test_ring_is_cut(points: list[Point], pieces: list[Polygon], is_reversed: bool) -> None:
    for first in range(len(points)):
        turned = [*points[first:], *points[:first]]
        parts = ring_parts(turned[::-1] if is_reversed else turned)
        assert parts is not None
        found = [Polygon(part) for part in parts]
        assert len(found) == len(pieces)
        assert all(any(one.equals(other) for other in pieces) for one in found)


NO_RINGS: list[tuple[str, list[Point]]] = [
    ("round the south pole", [(0, -80), (90, -80), (180, -80), (-90, -80)]),
    ("two corners", [(0, 0), (1, 1)]),
    ("one place", [(0, 0), (0, 0), (0, 0)]),
    ("a line there and back", [(0, 0), (1, 1), (0, 0)]),
]


@pytest.mark.parametrize("points", [c[1] for c in NO_RINGS], ids=[c[0] for c in NO_RINGS])
def test_what_is_no_ring(points: list[Point]) -> None:
    assert ring_parts(points) is None


@st.composite
def stars(draw: st.DrawFn) -> list[Point]:
    """Rings without a crossing, with teeth, somewhere near the antimeridian; x goes over 180."""
    count = draw(st.integers(3, 14))
    dice = random.Random(draw(st.integers(0, 2**32)))
    middle = draw(st.sampled_from([180.0, 179.5, 181.0, 178.0, -180.0, 0.0]))
    grid = draw(st.sampled_from([0.25, 0.01]))
    points = []
    for number in range(count):
        angle = radians(360 * (number + dice.random() * 0.8) / count)
        far = 0.4 + 3 * dice.random()
        x, y = far * cos(angle), far * sin(angle)
        points.append((round((middle + x) / grid) * grid, round((-47 + y) / grid) * grid))
    return points


@given(stars(), st.booleans())
def test_pieces_make_the_ring(points: list[Point], is_reversed: bool) -> None:
    whole = Polygon(points)
    if not whole.is_valid or whole.area == 0:
        return
    given = [((x + 180) % 360 - 180, y) for x, y in points]
    parts = ring_parts(given[::-1] if is_reversed else given)
    assert parts is not None
    pieces = [Polygon(part) for part in parts]
    for piece, part in zip(pieces, parts, strict=True):
        assert part[0] == part[-1]
        assert piece.is_valid
        assert piece.exterior.is_ccw
        assert piece.bounds[0] >= -180
        assert piece.bounds[2] <= 180
        assert all(abs(a[0] - b[0]) <= 180 for a, b in pairwise(part))
    turns = (-720, -360, 0, 360, 720)
    found = unary_union([translate(one, turn).buffer(0) for one in pieces for turn in turns])
    expected = unary_union([translate(orient(whole), turn) for turn in turns])
    difference = found.symmetric_difference(expected)
    assert difference.intersection(box(-360, -90, 360, 90)).area < 1e-9
    assert sum(one.area for one in pieces) == pytest.approx(whole.area)


def degrees(most: int) -> st.SearchStrategy[float]:
    return st.integers(-most * 100, most * 100).map(lambda number: number / 100)


@given(st.lists(st.tuples(degrees(180), degrees(80)), min_size=2, max_size=8))
def test_parts_make_the_line(points: list[Point]) -> None:
    parts = line_parts(points)
    assert (parts[0][0][1], parts[-1][-1][1]) == (points[0][1], points[-1][1])
    for before, after in pairwise(parts):
        # RFC 7946, 3.1.9: cut so that no part crosses the antimeridian.
        assert abs(before[-1][0]) == abs(after[0][0]) == 180
        assert before[-1][1] == after[0][1]
    counted = [points[0]]
    for lon, lat in points[1:]:
        step = (lon - counted[-1][0] + 180) % 360 - 180
        counted.append((counted[-1][0] + step, lat))
    length = MultiLineString(parts).length
    assert length == pytest.approx(LineString(counted).length, abs=1e-6)
    kept = {corner for part in parts for corner in part}
    assert all(point in kept or abs(point[0]) == 180 for point in points)


@pytest.mark.parametrize("centre", [(-123.5, -47.2), (180.0, -47.2), (-179.99, 89.0), (0.0, 0.0)])
@pytest.mark.parametrize("radius_m", [50.0, 1852.0, 50_000.0])
def test_circle_lies_at_its_radius(centre: Point, radius_m: float) -> None:
    corners = circle(centre, radius_m)
    assert len(corners) == CIRCLE_CORNERS
    for lon, lat in corners:
        line = Geodesic.WGS84.Inverse(centre[1], centre[0], lat, lon)
        assert line["s12"] == pytest.approx(radius_m, abs=0.02)
    sides = [*pairwise(corners), (corners[-1], corners[0])]
    for first, second in sides:
        along = Geodesic.WGS84.InverseLine(first[1], first[0], second[1], second[0])
        middle = along.Position(along.s13 / 2)
        line = Geodesic.WGS84.Inverse(centre[1], centre[0], middle["lat2"], middle["lon2"])
        assert 0 <= radius_m - line["s12"] <= 0.00035 * radius_m + 0.02


def test_arc_goes_from_end_to_end() -> None:
    points = arc((-123.5, -47.2), 1852.0, 15.0, 85.0)
    bearings = [Geodesic.WGS84.Inverse(-47.2, -123.5, lat, lon)["azi1"] for lon, lat in points]
    assert bearings[0] == pytest.approx(15, abs=1e-3)
    assert bearings[-1] == pytest.approx(100, abs=1e-3)
    assert bearings == sorted(bearings)
