"""Chart arithmetic: against worked values, and against PROJ's Mercator to a thousandth of a mm."""

from __future__ import annotations

import random
from math import pi

import pytest

from noticeparse.chart_math import (
    Frame,
    distance_mm,
    east_of,
    equator_scale,
    is_inside,
    isometric_latitude,
    meridional_parts,
    mm_between,
    mm_per_metre,
    part_of_sheet,
    place_mm,
    size_mm,
)

# Worked values with 50 digits from the closed formulas of EPSG Guidance Note 7-2 and Snyder (USGS
# Professional Paper 1395), from the project's own notes on chart arithmetic; frame and positions
# are invented.
FRAME = Frame(-47.75, -124.75, -46.75, -123.25, scale=150000, scale_latitude=-47.0)
P1 = (-47.205666666666666, -123.76116666666667)
P2 = (-47.25, -123.83333333333333)


class TestWorkedValues:
    """Values that were worked out apart from this program."""

    def test_meridional_parts(self) -> None:
        assert isometric_latitude(47.5) == pytest.approx(0.93954611275451622937, rel=1e-14)
        assert meridional_parts(47.5) == pytest.approx(3229.921615125380594, rel=1e-14)
        assert meridional_parts(-47.5) == pytest.approx(-3229.921615125380594, rel=1e-14)

    def test_scale_at_the_equator(self) -> None:
        assert equator_scale(-47.0) == pytest.approx(0.68322265722449920573, rel=1e-14)
        assert equator_scale(47.0) == equator_scale(-47.0)

    def test_between_two_positions(self) -> None:
        right, up = mm_between(FRAME, P1, P2)
        assert right == pytest.approx(-36.5913858490915945, abs=1e-9)
        assert up == pytest.approx(-32.9990132969054456, abs=1e-9)
        assert distance_mm(FRAME, P1, P2) == pytest.approx(49.2733639700644247, abs=1e-9)

    def test_size_of_the_frame(self) -> None:
        assert size_mm(FRAME) == pytest.approx((760.559983007, 744.683685862), abs=1e-8)

    def test_place_within_the_frame(self) -> None:
        width, height = size_mm(FRAME)
        x_mm, y_mm = place_mm(FRAME, *P1)
        assert x_mm / width == pytest.approx(0.659222222222221414, abs=1e-12)
        assert 1 - y_mm / height == pytest.approx(0.453312407709437453, abs=1e-12)

    def test_a_move_of_three_centimetres(self) -> None:
        end = (-47.20565127162724, -123.70177144453821)
        assert distance_mm(FRAME, P1, end) == pytest.approx(30.1157549334071, abs=1e-9)

    def test_millimetres_of_a_metre(self) -> None:
        # 1 minute of latitude at 47.5 S is 1853.00981293085942 m.
        north, south = (-47.5 + 0.5 / 60, -124.0), (-47.5 - 0.5 / 60, -124.0)
        by_psi = distance_mm(FRAME, south, north) / 1853.00981293085942
        assert mm_per_metre(FRAME, -47.5) == pytest.approx(by_psi, rel=1e-6)
        assert mm_per_metre(FRAME, -47.0) == pytest.approx(1000 / 150000, rel=1e-14)

    def test_across_the_antimeridian(self) -> None:
        assert east_of(179.96666666666667, -179.95) * 60 == pytest.approx(5.0, abs=1e-9)


@pytest.mark.parametrize("latitude", [-89, -75, -47.25, -1, 0, 12.5, 60, 84])
def test_plane_is_that_of_proj(latitude: float) -> None:
    pyproj = pytest.importorskip("pyproj")
    dice = random.Random(latitude)
    for _ in range(50):
        west, width = dice.uniform(-180, 180), dice.uniform(0.01, 120)
        east = (west + width + 180) % 360 - 180
        south = dice.uniform(-80, 79)
        north = min(84.0, south + dice.uniform(0.01, 40))
        scale = dice.choice((1000, 12500, 50000, 150000, 3500000))
        frame = Frame(south, west, north, east, scale, latitude)
        # PROJ counts from a central meridian; the west limit is taken for it.
        plane = pyproj.Proj(proj="merc", ellps="WGS84", lat_ts=abs(latitude), lon_0=west)
        position = dice.uniform(south, north), west + dice.uniform(0, width)
        x_m, y_m = plane(position[1], position[0])
        corner = plane(west, south)
        found = place_mm(frame, *position)
        assert found[0] == pytest.approx((x_m - corner[0]) * 1000 / scale, abs=0.001)
        assert found[1] == pytest.approx((y_m - corner[1]) * 1000 / scale, abs=0.001)


def test_psi_is_that_of_proj_on_the_unit_sphere_of_the_ellipsoid() -> None:
    pyproj = pytest.importorskip("pyproj")
    plane = pyproj.Proj(proj="merc", a=1.0, rf=298.257223563)
    for tenth in range(-850, 851, 7):
        assert isometric_latitude(tenth / 10) == pytest.approx(plane(0, tenth / 10)[1], abs=1e-14)


CROSSING = Frame(-48, 179, -46, -178.5, scale=500000, scale_latitude=-47)
WORLD = Frame(-60, -180, 60, 180, scale=30000000, scale_latitude=0)


class TestFrame:
    """Inside and outside, and the ninths of the sheet."""

    @pytest.mark.parametrize("longitude", [179.0, 179.5, 180.0, -180.0, -179.5, -178.5])
    def test_inside_across_the_antimeridian(self, longitude: float) -> None:
        assert is_inside(CROSSING, -47, longitude)
        assert place_mm(CROSSING, -47, longitude)[0] >= 0

    @pytest.mark.parametrize("longitude", [178.99, -178.49, 0.0, -123.0])
    def test_outside_across_the_antimeridian(self, longitude: float) -> None:
        assert not is_inside(CROSSING, -47, longitude)
        assert part_of_sheet(CROSSING, -47, longitude) is None

    def test_beside_the_frame_it_is_near(self) -> None:
        assert place_mm(CROSSING, -47, 178.9)[0] == pytest.approx(-15.2, abs=0.1)
        assert place_mm(CROSSING, -47, -178.4)[0] > size_mm(CROSSING)[0]

    def test_edge_is_inside_and_rounding_is_forgiven(self) -> None:
        assert is_inside(FRAME, -46.75, -123.25)
        assert is_inside(FRAME, -46.75 + 0.009 / 60, -123.25)
        assert not is_inside(FRAME, -46.75 + 0.011 / 60, -123.25)
        assert not is_inside(FRAME, -47, -123.25 + 0.011 / 60)

    def test_all_longitudes(self) -> None:
        assert WORLD.width_deg == 360
        assert all(is_inside(WORLD, 0, longitude) for longitude in range(-180, 181, 15))
        assert size_mm(WORLD)[0] == pytest.approx(2 * pi * 6378137 * 1000 / 30000000)

    @pytest.mark.parametrize(
        ("part", "latitude", "longitude"),
        [
            ("lower left", -47.75, -124.75),
            ("lower centre", -47.7, -124.0),
            ("lower right", -47.7, -123.3),
            ("centre left", -47.25, -124.7),
            ("centre", -47.25, -124.0),
            ("centre right", -47.25, -123.3),
            ("upper left", -46.8, -124.7),
            ("upper centre", -46.8, -124.0),
            ("upper right", -46.75, -123.25),
            (None, -46.0, -124.0),
        ],
    )
    def test_ninths(self, part: str | None, latitude: float, longitude: float) -> None:
        assert part_of_sheet(FRAME, latitude, longitude) == part

    def test_ninths_are_equal_on_the_paper_and_not_in_latitude(self) -> None:
        tall = Frame(0, 0, 60, 10, scale=10000000, scale_latitude=0)
        third = size_mm(tall)[1] / 3
        assert place_mm(tall, 24.9, 5)[1] > third
        assert part_of_sheet(tall, 24.9, 5) == "centre"
        assert part_of_sheet(tall, 19.9, 5) == "lower centre"
