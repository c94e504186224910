"""All forms of a position: texts, what readers by others make of them, command, service."""

from __future__ import annotations

import json

import httpx2
import pytest
from geopy import Point
from pygeodesy import dms
from pyproj import CRS

from noticeparse import find_positions, parse_position
from noticeparse.caution import CAUTION
from noticeparse.writers.position_forms import PositionForm, forms_of
from tests.command import invoke
from tests.service import PLAIN

POSITION = "47°12'.34S., 123°45'.67W."
TEXTS = {
    "degrees and decimal minutes, as on charts": "47°12'.34S., 123°45'.67W.",
    "degrees and decimal minutes": "47°12.34'S 123°45.67'W",
    "degrees and decimal minutes, hyphens": "47-12.34S 123-45.67W",
    "degrees and decimal minutes, blanks": "47 12.34S 123 45.67W",
    "degrees and decimal minutes, letters first": "S47 12.34 W123 45.67",
    "degrees and decimal minutes, in one": "4712.34S 12345.67W",
    "degrees, minutes, seconds": "47°12'20.4\"S 123°45'40.2\"W",
    "degrees, minutes, seconds, hyphens": "47-12-20.4S 123-45-40.2W",
    "degrees, minutes, seconds, letters first": "S47-12-20.4 W123-45-40.2",
    "decimal degrees": "47.2057°S 123.7612°W",
    "decimal degrees, signs": "-47.2057, -123.7612",
    "ISO 6709, degrees": "-47.2057-123.7612/",
    "ISO 6709, degrees and minutes": "-4712.34-12345.67/",
    "ISO 6709, degrees, minutes, seconds": "-471220.4-1234540.2/",
}


def forms(text: str) -> dict[str, PositionForm]:
    return {form.name: form for form in forms_of(parse_position(text)).forms}


def test_every_form() -> None:
    assert {name: form.text for name, form in forms(POSITION).items()} == TEXTS
    rounded = {name: form.rounded_to for name, form in forms(POSITION).items() if not form.exact}
    assert rounded == {
        "decimal degrees": "0.0001°",
        "decimal degrees, signs": "0.0001°",
        "ISO 6709, degrees": "0.0001°",
    }


@pytest.mark.parametrize("name", TEXTS)
def test_found_in_running_text(name: str) -> None:
    (found,) = find_positions(f"A wreck lies in {TEXTS[name]}, dangerous to navigation.")
    assert found.exact() == parse_position(TEXTS[name]).exact()


SPECIMENS = {
    # Given, name of the form, text: worked out by hand.
    "whole minutes": ("47°12'S 123°45'W", "degrees, minutes, seconds", "47°12'00\"S 123°45'00\"W"),
    "coarse degrees": ("47°12'S 123°45'W", "decimal degrees", "47.20°S 123.75°W"),
    "each half as written": (
        "47°12'S 123°45.67'W", "ISO 6709, degrees and minutes", "-4712-12345.67/",
    ),
    "a tenth of a second": (
        "-471220.5-1234540.2/", "degrees and decimal minutes", "47°12.342'S 123°45.670'W",
    ),
    "nearly a whole degree": (
        "-475959.9-1235959.9/", "degrees and decimal minutes", "47°59.998'S 123°59.998'W",
    ),
    "small and north-east": ("0-00.05N 7-03.00E", "decimal degrees, signs", "+0.0008, +7.0500"),
    "equator and last meridian": ("0-00.00S 180-00.00E", "ISO 6709, degrees and minutes",
                                  "+0000.00-18000.00/"),
    "pole": ("90-00N 000-00W", "decimal degrees", "90.00°N 000.00°E"),
    "quality": ("47-12.3S 123-45.6W PD", "degrees and decimal minutes, hyphens",
                "47-12.3S 123-45.6W (PD)"),
    "seven decimals": ("-47.2056712-123.7611712/", "decimal degrees",
                       "47.2056712°S 123.7611712°W"),
}  # fmt: skip


@pytest.mark.parametrize(("given", "name", "text"), SPECIMENS.values(), ids=SPECIMENS)
def test_specimen(given: str, name: str, text: str) -> None:
    assert forms(given)[name].text == text


@pytest.mark.parametrize(
    ("given", "left_out"),
    [
        ("-47.2-123.7/", {"decimal degrees, signs"}),
        ("-47-123/", {"decimal degrees, signs"}),
        (
            "-47.205671234-123.761171234/",
            {name for name, text in TEXTS.items() if "'" in text or "-47-" in text}
            | {name for name in TEXTS if name.endswith(("hyphens", "first", "blanks", "seconds"))},
        ),
    ],
)
def test_left_out_where_the_form_is_not_read(given: str, left_out: set[str]) -> None:
    missing = set(TEXTS) - set(forms(given))
    assert missing <= left_out
    assert missing


PYGEODESY = [
    name for name, text in TEXTS.items() if "°" in text and "." in text and "chart" not in name
]


@pytest.mark.parametrize("name", PYGEODESY)
def test_pygeodesy_reads_the_same(name: str) -> None:
    lat, lon = TEXTS[name].split(" ")
    ours = parse_position(TEXTS[name])
    assert dms.parseDMS2(lat, lon) == pytest.approx((ours.lat, ours.lon), abs=1e-9)


GEOPY = [
    name
    for name in TEXTS
    if name.split(", ")[-1] not in ("hyphens", "letters first", "in one", "as on charts")
    and not name.startswith("ISO")
    and "blanks" not in name
]


@pytest.mark.parametrize("name", GEOPY)
def test_geopy_reads_the_same(name: str) -> None:
    theirs, ours = Point(TEXTS[name]), parse_position(TEXTS[name])
    assert (theirs.latitude, theirs.longitude) == pytest.approx((ours.lat, ours.lon), abs=1e-9)


def test_proj_reads_the_degrees_minutes_seconds() -> None:
    # PROJ takes angles of its own notation, which has a `d` for the degree mark.
    lat, lon = TEXTS["degrees, minutes, seconds"].replace("°", "d").split(" ")
    (operation,) = [CRS.from_proj4(f"+proj=tmerc +lat_0={lat} +lon_0={lon}").coordinate_operation]
    theirs = {one.name: one.value for one in operation.params}
    ours = parse_position(POSITION)
    assert theirs["Latitude of natural origin"] == pytest.approx(ours.lat, abs=1e-12)
    assert theirs["Longitude of natural origin"] == pytest.approx(ours.lon, abs=1e-12)


class TestCommand:
    """`noticeparse position --forms`."""

    def test_text(self) -> None:
        result = invoke("position", "--forms", POSITION, "47-12")
        assert result.exit_code == 1
        rows = result.stdout.splitlines()
        assert rows[0] == POSITION
        for name, text in TEXTS.items():
            (row,) = [row for row in rows if row.startswith(f"  {name}  ")]
            assert row.removeprefix(f"  {name}").strip().startswith(text)
            assert row.endswith("rounded to 0.0001°") == (not forms(POSITION)[name].exact)
        assert rows[-1] == CAUTION
        assert "9.3 m" in result.stdout
        assert "`47-12` cannot be read" in result.stderr

    def test_json(self) -> None:
        result = invoke("position", "--forms", "--format", "json", POSITION, "47-12")
        assert result.exit_code == 1
        read, refused = map(json.loads, result.stdout.splitlines())
        assert read == forms_of(parse_position(POSITION)).model_dump(mode="json")
        assert [*refused] == ["error", "text"]


def test_service(client: httpx2.Client) -> None:
    answer = client.post("/v1/position-forms", json={"texts": [POSITION, "47-12"]}).json()
    assert answer["caution"] == CAUTION
    read, refused = answer["results"]
    assert read == forms_of(parse_position(POSITION)).model_dump(mode="json")
    assert refused["text"] == "47-12"
    assert refused["error"]["code"] == "position-unreadable"
    lines = client.post("/v1/position-forms", content=f"{POSITION}\n", headers=PLAIN).json()
    assert lines["results"] == [read]
