"""One action as one flat row: what the tables and the properties of a map layer have in common.

A row has every column of `columns` in that order; a value is text, a figure, true, false or None.
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
from noticeparse.records.sheet import SheetPlace
from noticeparse.writers.columns import COLUMNS, DESTINATION
from noticeparse.writers.coordinates import all_decimal, all_readable
from noticeparse.writers.drawing import is_of_reference, is_on_wgs84
from noticeparse.writers.wording import all_changes, plain, sheet_words

Value = str | int | float | bool | Decimal | None
Row = dict[str, Value]

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
        **place_of(placed, action.geometry, action.sheet.positions if action.sheet else []),
        **_destination(placed),
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
        "depth": depth.written if depth else None,
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


def place_of(placed: Placed, geometry: Geometry, sheet: list[SheetPlace]) -> Row:
    """Where the action applies, or where a move goes to: the columns of `PLACE`."""
    arc, offset = geometry.arc, geometry.offset
    lat_deg, lon_deg = _one_place(placed, geometry)
    own, reference = geometry.positions, [offset.reference] if offset and offset.reference else []
    is_own = not is_of_reference(geometry)
    if not is_own:
        own, reference = [], [*own, *reference]
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
        "lat_deg": lat_deg,
        "lon_deg": lon_deg,
        "positions": all_readable(own),
        "positions_deg": all_decimal(own),
        "resolution_m": max((one.resolution_m for one in own), default=None),
        "position_quality": _listed(dict.fromkeys(one.quality for one in own if one.quality)),
        "reference": offset.reference_text if offset else None,
        "reference_positions": all_readable(reference),
        "reference_positions_deg": all_decimal(reference),
        "sheet": sheet_words(sheet) if is_own else None,
        "reference_sheet": None if is_own else sheet_words(sheet),
    }


def _destination(placed: Placed) -> Row:
    action = placed.action
    if not isinstance(action, Move):
        return dict.fromkeys(DESTINATION)
    sheet = action.sheet.destination if action.sheet else []
    found = place_of(placed, action.destination, sheet)
    return {name: found[like] for name, like in DESTINATION.items()}


def _one_place(placed: Placed, geometry: Geometry) -> tuple[float | None, float | None]:
    """A place that may be plotted as it stands; programs plot columns of such names unasked."""
    if geometry.shape != "point" or is_of_reference(geometry):
        return None, None
    if not placed.action.usable or not is_on_wgs84(placed.section):
        return None, None
    position = geometry.positions[0]
    return position.lat, position.lon


def _listed(words: Iterable[str]) -> str | None:
    return ", ".join(words) or None
