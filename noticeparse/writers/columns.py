"""The columns of a row: the names that a table and a map layer share, and what they mean.

Units stand in the names.  A list is text with commas, or with semicolons where its parts may hold
a comma.  What has no column (sectors, sounds, companions, attributes) is in the words of `feature`
and in the JSON.
"""

from __future__ import annotations

_ACTION = {
    "usable": "false where an error points at the action: it must not be used",
    "notice": "number, mark and year of the notice",
    "notice_number": "its number alone; a spreadsheet may take `12/26` for a date",
    "notice_year": "its year",
    "notice_status": "permanent, temporary, preliminary or radio_warning",
    "valid_from": "first day or time of its stated validity",
    "valid_until": "last day or time of it",
    "series": "the words before the number of a radio warning or local notice",
    "chart": "chart number as written",
    "international": "international chart number",
    "panel": "plan, panel or inset",
    "previous": "the notice that must be on the chart before",
    "previous_number": "its number alone",
    "previous_year": "its year",
    "datum": "horizontal datum as stated; empty where none is",
    "verb": "insert, amend, replace, move or delete",
    "label": "the letter written before it",
    "feature": "the feature as written; of an amendment as before the change",
    "kind": "its kind in the vocabulary",
    "s57": "S-57 object classes",
    "name": "its name",
    "legend": "the words to be written on the chart",
    "light": "the light as written",
    "light_period_s": "period of the light, seconds",
    "light_elevation_m": "elevation of the light, metres",
    "light_ranges_nm": "ranges of the light, nautical miles",
    "depth": "the depth as written",
    "depth_m": "depth, metres; a drying height is negative",
    "depth_kind": "sounding, drying, swept, dredged, contour, least or no_bottom",
    "clearance_m": "clearance, metres",
    "clearance_kind": "vertical, horizontal, safe, open or closed",
    "height_m": "height of an object, metres",
    "colours": "S-57 colours in the order written",
    "topmark": "topmark",
    "status": "status words",
    "changes": "what an amendment changes, `light to Fl.5s9M; depth 8.6m to 7.9m`",
    "replacement": "the feature that takes its place, as written",
    "replacement_kind": "its kind",
    "replacement_s57": "its classes",
}

PLACE = {
    "shape": "point, points, line, area, circle, arc or unlocated",
    "relation": "how the feature lies to the positions",
    "direction": "compass direction from the reference",
    "radius_nm": "radius of a circle or arc, nautical miles",
    "arc_from_deg": "true bearing of the first end of an arc",
    "arc_to_deg": "true bearing of the second end",
    "arc_sense": "clockwise or anticlockwise; empty where not stated",
    "arc_bearings": "from_centre, from_seaward or not_stated",
    "offset_bearing_deg": "true bearing from a reference",
    "offset_distance_nm": "distance from it, nautical miles",
    "lat_deg": "latitude, south negative; only of one usable place of its own, on WGS84",
    "lon_deg": "longitude, west negative, likewise",
    "positions": "its own positions, in the unit and with the digits written, on `datum`",
    "positions_deg": "the same in decimals of a degree",
    "resolution_m": "half the last digit of the coarsest of them, metres",
    "position_quality": "approximate, doubtful or reported, where a position carries it",
    "reference": "the words that name what the place is told from",
    "reference_positions": "positions of a reference: never those of the feature itself",
    "reference_positions_deg": "the same in decimals of a degree",
    "sheet": "where its own positions lie on the paper of the chart list",
    "reference_sheet": "where those of a reference lie on it",
}
"""Where an action applies; a map layer has these for each end of a move."""

_OF_DESTINATION = (
    "lat_deg",
    "lon_deg",
    "shape",
    "relation",
    "direction",
    "positions",
    "positions_deg",
    "resolution_m",
    "position_quality",
    "reference",
    "reference_positions",
    "reference_positions_deg",
    "sheet",
    "reference_sheet",
)

DESTINATION = {f"destination_{name}": name for name in _OF_DESTINATION}
"""The columns of the new place of a move, and the column of `PLACE` that each is like."""

_SOURCE = {
    "findings": "errors and warnings that point at the action",
    "text": "the words of the action as written",
    "source": "name of the input",
    "line": "line on which it begins",
    "path": "JSON Pointer to the action in the JSON of its input",
}

COLUMNS = {
    **_ACTION,
    **PLACE,
    **{name: f"`{like}` of the new place of a move" for name, like in DESTINATION.items()},
    **_SOURCE,
}
"""The columns in order, and what they mean."""
