"""All bulletins as one GeoJSON FeatureCollection (RFC 7946), a feature a line.

A feature is an action on a chart; a move has two, at its old and its new place (`move_end`), each
with that place in the properties, which are named as in `columns`.  What is not drawn has a null
geometry, with the reason in `no_geometry` and its coordinates in the properties; see `drawing`.
Unusable actions are left out unless they are asked for, and then not drawn.  The collection
carries the caution in front and behind the features what was read and left out, for all and for
each input (foreign members, section 6.1): an aid to a qualified officer only, and every position
must be checked against the original notice.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterator
from typing import Any

from noticeparse.caution import CAUTION
from noticeparse.globe import CIRCLE_CORNERS
from noticeparse.numbers import as_number
from noticeparse.records.action import Move
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.geometry import Geometry
from noticeparse.version import VERSION
from noticeparse.writers import Part, Wishes, Writer
from noticeparse.writers.columns import COLUMNS, DESTINATION
from noticeparse.writers.drawing import draw
from noticeparse.writers.rows import Placed, place_of, placed_actions, row_of

Json = dict[str, Any]

# The geometry has the first two; a second pair beside it could be plotted in its place.
_ELSEWHERE = frozenset({"lat_deg", "lon_deg", *DESTINATION})

OWN_PROPERTIES = {
    "move_end": "of a move: from, at the old place, or to, at the new one",
    "no_geometry": "why nothing is drawn: unlocated, reference, datum, arc_open, form or unusable",
    "circle_corners": "number of corners with which a circle is drawn",
}
"""The properties that a row does not have, behind those that it has."""

PROPERTIES = (*(column for column in COLUMNS if column not in _ELSEWHERE), *OWN_PROPERTIES)
"""The properties of every feature, in order."""

COUNTS = {
    "notices": "notices read",
    "notices_without_action": "notices that hold no action, and so give no feature",
    "actions": "actions read, once for each chart",
    "unusable": "actions that must not be used",
    "unusable_left_out": "of these, left out here",
    "errors_outside_actions": "errors that point at no action: something may be missing",
    "features": "features here",
    "without_geometry": "features with a null geometry",
    "datum_not_stated": "features drawn though their chart states no datum",
}
"""What the collection counts, for all and for each input."""


class GeoJsonWriter(Writer):
    """One collection for all bulletins."""

    def __init__(self, wishes: Wishes) -> None:
        super().__init__(wishes)
        self._notes: list[str] = []
        self._counts = dict.fromkeys(COUNTS, 0)
        self._is_without_features = True

    def part(self, bulletin: Bulletin) -> Part:
        """The features of a bulletin, and what is counted in it."""
        counts = Counter(dict.fromkeys(COUNTS, 0))
        _count(bulletin, counts)
        lines = [_dumped(one) for one in self._features(bulletin, counts)]
        about = bulletin.model_dump(mode="json", include={"source", "edition"})
        return Part(",\n".join(lines), _dumped({**about, "counts": counts}))

    def add(self, part: Part) -> str:
        """The features, behind the head or a comma."""
        lead = "" if self._notes else f"{_head()}\n"
        self._notes.append(part.note)
        for key, count in json.loads(part.note)["counts"].items():
            self._counts[key] += count
        if not part.body:
            return lead
        lead += "" if self._is_without_features else ",\n"
        self._is_without_features = False
        return lead + part.body

    def end(self) -> str:
        """What was read and left out."""
        notes = ",\n".join(self._notes)
        return f'\n],"counts":{_dumped(self._counts)},"bulletins":[\n{notes}\n]}}\n'

    def _features(self, bulletin: Bulletin, counts: Counter[str]) -> Iterator[Json]:
        for placed in placed_actions(bulletin):
            if not placed.action.usable and not self.wishes.with_unusable:
                counts["unusable_left_out"] += 1
                continue
            for feature in _features_of(placed):
                is_drawn = feature["geometry"] is not None
                counts["features"] += 1
                counts["without_geometry"] += not is_drawn
                counts["datum_not_stated"] += is_drawn and placed.section.datum is None
                yield feature


def _count(bulletin: Bulletin, counts: Counter[str]) -> None:
    """Count what stands in the records."""
    for notice in bulletin.notices:
        actions = [action for section in notice.charts for action in section.actions]
        counts["notices"] += 1
        counts["notices_without_action"] += not actions
        counts["actions"] += len(actions)
        counts["unusable"] += sum(not action.usable for action in actions)
    counts["errors_outside_actions"] += sum(
        finding.severity == "error" and not any("/actions/" in path for path in finding.paths)
        for finding in bulletin.findings
    )


def _features_of(placed: Placed) -> Iterator[Json]:
    """The feature of an action, or the two of a move."""
    action = placed.action
    row = row_of(placed)
    if isinstance(action, Move):
        yield _feature(placed, row, action.geometry, "from")
        sheet = action.sheet.destination if action.sheet else []
        row = {**row, **place_of(placed, action.destination, sheet)}
        yield _feature(placed, row, action.destination, "to")
    else:
        yield _feature(placed, row, action.geometry, None)


def _feature(placed: Placed, row: Json, geometry: Geometry, end: str | None) -> Json:
    if placed.action.usable:
        drawn, reason = draw(geometry, placed.section)
    else:
        drawn, reason = None, "unusable"
    is_circle = drawn is not None and geometry.shape == "circle"
    own = {
        "move_end": end,
        "no_geometry": reason,
        "circle_corners": CIRCLE_CORNERS if is_circle else None,
    }
    found = {**row, **own}
    properties = {name: found[name] for name in PROPERTIES}
    return {"type": "Feature", "geometry": drawn, "properties": properties}


def _head() -> str:
    head = {
        "type": "FeatureCollection",
        "schema_version": Bulletin.model_fields["schema_version"].default,
        "generator": {"name": "noticeparse", "version": VERSION},
        "caution": CAUTION,
    }
    return f'{_dumped(head)[:-1]},"features":['


def _dumped(record: Any) -> str:
    return json.dumps(record, ensure_ascii=False, separators=(",", ":"), default=as_number)
