"""Lengths in bearings and radii: fractions, kilometres, yards, thousands; worked out on WGS84.

The international yard of 1959 is 0.9144 m and the nautical mile 1852 m (BIPM, SI Brochure, 9th
edition, table 8, names the mile); the geodesic is that of `geographiclib`.
"""

from __future__ import annotations

from decimal import Decimal

import pytest
from geographiclib.geodesic import Geodesic

from noticeparse import parse
from noticeparse.readers.offsets import length_nm, read_offset
from tests.short_notices import HEAD, P, actions_of, errors

METRES = Decimal(1852)
PRECISION = Decimal("0.000001")

LENGTHS = [
    ("radius 500m", "500"),
    ("radius 1,500m", "1500"),
    ("radius 1,500 metres", "1500"),
    ("radius 0,5 M", "926"),
    ("radius 0.5km", "500"),
    ("radius 300 yards", "274.32"),
    ("radius ½ mile", "926"),
    ("radius 1/2 mile", "926"),
    ("radius 1½ cables", "277.8"),
    ("500 metres radius", "500"),
]


@pytest.mark.parametrize(("words", "metres"), LENGTHS)
def test_length_of_a_radius(words: str, metres: str) -> None:
    assert abs(length_nm(words) * METRES - Decimal(metres)) < PRECISION
    bulletin = parse(f"{HEAD}Insert restricted area, {words}, centred on {P}\n")
    (action,) = actions_of(bulletin)
    assert errors(bulletin) == set()
    assert action.geometry.shape == "circle"
    assert action.geometry.radius_nm is not None
    assert abs(action.geometry.radius_nm * METRES - Decimal(metres)) < PRECISION


OFFSETS = [
    ("½M NE of", 45, "926"),
    ("1/2 mile NE of", 45, "926"),
    ("1½ miles 045° from", 45, "2778"),
    ("300 yards SW of", 225, "274.32"),
    ("1.5 km S of", 180, "1500"),
    ("045° x 0.3M from", 45, "555.6"),
    ("045°/3 cables from", 45, "555.6"),
]


@pytest.mark.parametrize(("words", "bearing", "metres"), OFFSETS)
def test_place_worked_out_from_another(words: str, bearing: int, metres: str) -> None:
    offset = read_offset(words)
    assert offset is not None
    assert offset.distance_nm is not None
    assert abs(offset.distance_nm * METRES - Decimal(metres)) < PRECISION
    bulletin = parse(f"{HEAD}Insert wreck {words} {P}\n")
    (action,) = actions_of(bulletin)
    assert errors(bulletin) == set()
    (here,) = action.geometry.positions
    (there,) = actions_of(parse(f"{HEAD}Insert wreck {P}\n"))[0].geometry.positions
    line = Geodesic.WGS84.Inverse(there.lat, there.lon, here.lat, here.lon)
    assert abs(line["s12"] - float(metres)) < 1
    assert abs(line["azi1"] % 360 - bearing) < 0.1


@pytest.mark.parametrize("words", ["radius 1,500 miles", "radius 5 leagues", "radius 1/3 mile"])
def test_what_is_no_length_makes_no_circle_in_silence(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert restricted area, {words}, centred on {P}\n")
    (action,) = actions_of(bulletin)
    assert action.geometry.radius_nm is None
    assert errors(bulletin)
