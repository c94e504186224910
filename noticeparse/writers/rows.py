"""One action as one flat row: what the tables and the properties of a map layer have in common.

A row has every column of `COLUMNS` in that order; a value is text, a figure, true, false or None.
Units stand in the names.  A list is text with commas, or with semicolons where its parts may hold
a comma.  What has no column (sectors, sounds, companions, attributes) is in the words of `feature`
and in the JSON.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterable, Iterator
from decimal import Decimal
from typing import NamedTuple

from noticeparse.readers.references import notice_id
from noticeparse.records.action import Action, Move, Replace
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.chart import ChartSection
from noticeparse.records.feature import Feature
from noticeparse.records.finding import Finding
from noticeparse.records.geometry import Geometry
from noticeparse.records.notice import Notice
from noticeparse.writers.coordinates import all_decimal, all_readable
from noticeparse.writers.drawing import is_of_reference, is_on_wgs84
from noticeparse.writers.wording import all_changes, plain, sheet_words

Value = str | int | float | bool | Decimal | None
Row = dict[str, Value]

COLUMNS: dict[str, str] = {
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
    "destination_lat_deg": "as `lat_deg`, for the new place of a move",
    "destination_lon_deg": "as `lon_deg`, likewise",
    "destination": "as `positions`, likewise",
    "destination_deg": "as `positions_deg`, likewise",
    "reference": "the words that name what the place is told from",
    "reference_positions": "positions of a reference: never those of the feature itself",
    "reference_positions_deg": "the same in decimals of a degree",
    "sheet": "where its positions lie on the paper of the chart list",
    "findings": "errors and warnings that point at the action",
    "text": "the words of the action as written",
    "source": "name of the input",
    "line": "line on which it begins",
    "path": "JSON Pointer to the action in the JSON of its input",
}
"""The columns and what they mean."""

_OF_ACTION = re.compile(r"/notices/[0-9]+/charts/[0-9]+/actions/[0-9]+")


class Placed(NamedTuple):
    """An action with all that stands around it."""

    bulletin: Bulletin
    notice: Notice
    section: ChartSection
    action: Action
    path: str
    findings: list[Finding]
    """Those that point at the action or below it."""


def placed_actions(bulletin: Bulletin) -> Iterator[Placed]:
    """All actions of a bulletin, in text order."""
    told = findings_of_actions(bulletin.findings)
    for i, notice in enumerate(bulletin.notices):
        for j, section in enumerate(notice.charts):
            for k, action in enumerate(section.actions):
                path = f"/notices/{i}/charts/{j}/actions/{k}"
                yield Placed(bulletin, notice, section, action, path, told.get(path, []))


def findings_of_actions(findings: Iterable[Finding]) -> dict[str, list[Finding]]:
    """The findings that point at an action or below it, by the path of the action."""
    told: dict[str, list[Finding]] = defaultdict(list)
    for finding in findings:
        paths = (match[0] for path in finding.paths if (match := _OF_ACTION.match(path)))
        for path in dict.fromkeys(paths):
            told[path].append(finding)
    return told


def row_of(placed: Placed) -> Row:
    """The row of one action."""
    action = placed.action
    found = {
        **_head(placed),
        "verb": action.verb,
        "label": action.label,
        **_feature(action.feature),
        "changes": all_changes(action),
        **_replacement(action),
        **_geometry(action.geometry),
        **_places(placed),
        "sheet": sheet_words(action.sheet.positions) if action.sheet else None,
        "findings": _listed(
            f"{one.severity} {one.code}" for one in placed.findings if one.severity != "info"
        ),
        "text": action.text,
        "source": placed.bulletin.source.name,
        "line": action.span.line,
        "path": placed.path,
    }
    return {column: found[column] for column in COLUMNS}


def _head(placed: Placed) -> Row:
    notice, section = placed.notice, placed.section
    previous = section.previous
    return {
        "usable": placed.action.usable,
        "notice": notice.id,
        "notice_number": notice.number,
        "notice_year": notice.year,
        "notice_status": notice.status,
        "valid_from": notice.valid.from_ if notice.valid else None,
        "valid_until": notice.valid.until if notice.valid else None,
        "series": notice.series,
        "chart": section.chart,
        "international": section.international,
        "panel": section.panel,
        "previous": notice_id(previous) if previous else section.previous_written,
        "previous_number": previous.number if previous else None,
        "previous_year": previous.year if previous else None,
        "datum": section.datum.name if section.datum else None,
    }


def _feature(feature: Feature) -> Row:
    light, depth, clearance = feature.light, feature.depth, feature.clearance
    return {
        "feature": feature.text,
        "kind": feature.kind,
        "s57": _listed(feature.s57),
        "name": feature.name,
        "legend": feature.legend,
        "light": light.written if light else None,
        "light_period_s": light.period_s if light else None,
        "light_elevation_m": light.elevation_m if light else None,
        "light_ranges_nm": _listed(map(plain, light.ranges_nm)) if light else None,
        "depth_m": depth.value_m if depth else None,
        "depth_kind": depth.kind if depth else None,
        "clearance_m": clearance.value_m if clearance else None,
        "clearance_kind": clearance.kind if clearance else None,
        "height_m": feature.height_m,
        "colours": _listed(feature.colours),
        "topmark": feature.topmark,
        "status": _listed(feature.status),
    }


def _replacement(action: Action) -> Row:
    new = action.replacement if isinstance(action, Replace) else None
    return {
        "replacement": new.text if new else None,
        "replacement_kind": new.kind if new else None,
        "replacement_s57": _listed(new.s57) if new else None,
    }


def _geometry(geometry: Geometry) -> Row:
    arc, offset = geometry.arc, geometry.offset
    return {
        "shape": geometry.shape,
        "relation": geometry.relation,
        "direction": geometry.direction or (offset.direction if offset else None),
        "radius_nm": geometry.radius_nm,
        "arc_from_deg": arc.from_deg if arc else None,
        "arc_to_deg": arc.to_deg if arc else None,
        "arc_sense": arc.sense if arc else None,
        "arc_bearings": arc.bearings if arc else None,
        "offset_bearing_deg": offset.bearing_deg if offset else None,
        "offset_distance_nm": offset.distance_nm if offset else None,
        "reference": offset.reference_text if offset else None,
    }


def _places(placed: Placed) -> Row:
    action, geometry = placed.action, placed.action.geometry
    new = action.destination if isinstance(action, Move) else None
    own = [] if is_of_reference(geometry) else geometry.positions
    reference = geometry.positions if is_of_reference(geometry) else []
    if geometry.offset and geometry.offset.reference:
        reference = [*reference, geometry.offset.reference]
    lat_deg, lon_deg = _one_place(placed, geometry)
    new_lat_deg, new_lon_deg = _one_place(placed, new)
    return {
        "lat_deg": lat_deg,
        "lon_deg": lon_deg,
        "positions": all_readable(own),
        "positions_deg": all_decimal(own),
        "resolution_m": max((one.resolution_m for one in own), default=None),
        "position_quality": _listed(dict.fromkeys(one.quality for one in own if one.quality)),
        "destination_lat_deg": new_lat_deg,
        "destination_lon_deg": new_lon_deg,
        "destination": all_readable(new.positions) if new else None,
        "destination_deg": all_decimal(new.positions) if new else None,
        "reference_positions": all_readable(reference),
        "reference_positions_deg": all_decimal(reference),
    }


def _one_place(placed: Placed, geometry: Geometry | None) -> tuple[float | None, float | None]:
    """A place that may be plotted as it stands; programs plot columns of such names unasked."""
    if geometry is None or geometry.shape != "point" or is_of_reference(geometry):
        return None, None
    if not placed.action.usable or not is_on_wgs84(placed.section):
        return None, None
    position = geometry.positions[0]
    return position.lat, position.lon


def _listed(words: Iterable[str]) -> str | None:
    return ", ".join(words) or None
