"""Lights as JSON has them, and what is told of them, written short."""

from __future__ import annotations

from typing import Any

from noticeparse.catalogue import lights, rhythms, sectors
from noticeparse.faults import Fault
from noticeparse.records.light import Light

ENTRIES = lights.ENTRIES + rhythms.ENTRIES + sectors.ENTRIES
CATALOGUE = {entry.code: entry for entry in ENTRIES}

PLAIN: dict[str, Any] = {
    "alternating": False,
    "groups": [],
    "morse": None,
    "colours": ["W"],
    "period_s": None,
    "elevation_m": None,
    "ranges_nm": [],
    "range_by_colour": {},
    "sectors": [],
    "vertical": False,
    "horizontal": False,
    "directional": False,
    "leading": False,
    "aero": False,
    "count": 1,
    "remarks": [],
}


def light(rhythm: str, litchr: int | None, **fields: Any) -> dict[str, Any]:
    """Fill up the fields of a light, as JSON has them, with empty ones."""
    stated = "colours" in fields
    return {"rhythm": rhythm, "litchr": litchr, "colour_stated": stated, **PLAIN, **fields}


def one_range(miles: float, *colours: str) -> dict[str, Any]:
    return {"ranges_nm": [miles], "range_by_colour": dict.fromkeys(colours or ("W",), miles)}


def arc(
    colour: str | None,
    first: float,
    second: float,
    visibility: str | None = None,
    miles: float | None = None,
) -> dict[str, Any]:
    return {
        "colour": colour,
        "from_deg": first,
        "to_deg": second,
        "range_nm": miles,
        "visibility": visibility,
    }


def as_json(read: Light) -> dict[str, Any]:
    fields = read.model_dump(mode="json")
    del fields["written"]
    return fields


def told(text: str, faults: tuple[Fault, ...]) -> list[tuple[str, str]]:
    return [(fault.code, text[fault.start : fault.end]) for fault in faults]


WRG: list[str] = ["W", "R", "G"]
