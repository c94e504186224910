"""The keys of every record, which record stands where, and what a path leads to.

Written out by hand from the output contract; further keys may only stand behind these.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

ACTION_HEAD = ("verb", "written_verb", "label", "feature")
ACTION_TAIL = ("geometry", "text", "span", "usable", "sheet")

KEYS: dict[str, tuple[str, ...]] = {
    "Bulletin": (
        "schema_version", "generator", "caution", "source", "edition", "notices", "lists",
        "findings", "coverage",
    ),
    "Generator": ("name", "version"),
    "Source": ("name", "media_type", "sha256", "characters"),
    "Edition": ("title", "number", "year", "issued", "first_notice", "last_notice"),
    "List": ("kind", "title", "entries", "span"),
    "ListEntry": ("chart", "notices", "text", "span"),
    "Coverage": ("characters", "read", "ignored", "unread", "unread_spans"),
    "Span": ("start", "end", "line", "column"),
    "Notice": (
        "id", "number", "year", "status", "series", "original_information", "heading", "regions",
        "subjects", "authority", "valid", "cancels", "charts", "remarks", "span", "findings",
    ),
    "Validity": ("from", "until", "written"),
    "NoticeRef": ("number", "year", "status"),
    "Remark": ("text", "positions", "dates", "span"),
    "ChartSection": (
        "chart", "international", "panel", "edition", "edition_date", "previous",
        "previous_written", "datum", "depth_unit", "actions", "span",
    ),
    "Datum": ("name", "epsg"),
    "insert": ACTION_HEAD + ACTION_TAIL,
    "amend": (*ACTION_HEAD, "changes", *ACTION_TAIL),
    "replace": (*ACTION_HEAD, "replacement", *ACTION_TAIL),
    "move": (*ACTION_HEAD, "destination", *ACTION_TAIL),
    "delete": ACTION_HEAD + ACTION_TAIL,
    "Change": ("property", "old", "new"),
    "Feature": (
        "kind", "s57", "text", "name", "legend", "light", "more_lights", "depth", "clearance",
        "height_m", "colours", "colour_pattern", "shape", "topmark", "sound", "racon", "ais",
        "status", "reported_year", "companions", "attributes",
    ),
    "Clearance": ("written", "value_m", "kind"),
    "Sound": ("kind", "group", "period_s"),
    "Racon": ("morse",),
    "Ais": ("virtual",),
    "Companion": ("role", "feature"),
    "Light": (
        "written", "rhythm", "alternating", "groups", "morse", "colours", "colour_stated",
        "period_s", "elevation_m", "ranges_nm", "range_by_colour", "sectors", "vertical",
        "horizontal", "directional", "leading", "aero", "count", "remarks", "litchr",
    ),
    "Sector": ("colour", "from_deg", "to_deg", "range_nm", "visibility"),
    "Depth": ("written", "value_m", "unit", "quality", "kind"),
    "Geometry": ("shape", "relation", "direction", "radius_nm", "arc", "offset", "positions"),
    "Arc": ("from_deg", "to_deg", "sense", "bearings"),
    "Offset": ("bearing_deg", "direction", "distance_nm", "reference", "reference_text"),
    "Position": (
        "lat", "lon", "iso6709", "written", "resolution_m", "label", "via", "quality", "span",
    ),
    "Sheet": ("positions", "destination"),
    "SheetPlace": ("panel", "x_mm", "y_mm", "part"),
    "Finding": ("code", "severity", "message", "hint", "span", "notice", "chart", "paths"),
}  # fmt: skip

PARTS: dict[str, dict[str, str]] = {
    "Bulletin": {
        "generator": "Generator", "source": "Source", "edition": "Edition", "notices": "Notice",
        "lists": "List", "findings": "Finding", "coverage": "Coverage",
    },
    "List": {"entries": "ListEntry", "span": "Span"},
    "ListEntry": {"notices": "NoticeRef", "span": "Span"},
    "Coverage": {"unread_spans": "Span"},
    "Notice": {
        "valid": "Validity", "cancels": "NoticeRef", "charts": "ChartSection",
        "remarks": "Remark", "span": "Span", "findings": "Finding",
    },
    "Remark": {"positions": "Position", "span": "Span"},
    "ChartSection": {
        "previous": "NoticeRef", "datum": "Datum", "actions": "Action", "span": "Span",
    },
    "Feature": {
        "light": "Light", "more_lights": "Light", "depth": "Depth", "clearance": "Clearance",
        "sound": "Sound", "racon": "Racon", "ais": "Ais", "companions": "Companion",
    },
    "Companion": {"feature": "Feature"},
    "Light": {"sectors": "Sector"},
    "Geometry": {"arc": "Arc", "offset": "Offset", "positions": "Position"},
    "Offset": {"reference": "Position"},
    "Position": {"span": "Span"},
    "Sheet": {"positions": "SheetPlace", "destination": "SheetPlace"},
    "Finding": {"span": "Span"},
    **{
        verb: {
            "feature": "Feature", "changes": "Change", "replacement": "Feature",
            "destination": "Geometry", "geometry": "Geometry", "span": "Span",
            "sheet": "Sheet",
        }
        for verb in ("insert", "amend", "replace", "move", "delete")
    },
}  # fmt: skip


def records(value: Any, kind: str = "Bulletin") -> Iterator[tuple[str, dict[str, Any]]]:
    """Every record of a dump with its kind, from the tables above."""
    if value is None:
        return
    if isinstance(value, list):
        for one in value:
            yield from records(one, kind)
        return
    own = value["verb"] if kind == "Action" else kind
    yield own, value
    for key, part in PARTS.get(own, {}).items():
        if key in value:
            yield from records(value[key], part)


def resolve(document: Any, pointer: str) -> Any:
    """What a JSON Pointer points at (RFC 6901, section 4); raises where it points nowhere."""
    assert pointer == "" or pointer.startswith("/")
    for token in pointer.split("/")[1:]:
        key = token.replace("~1", "/").replace("~0", "~")
        if isinstance(document, list):
            assert key.isascii()
            assert key.isdigit()
            assert key == "0" or not key.startswith("0")
            document = document[int(key)]
        else:
            document = document[key]
    return document
