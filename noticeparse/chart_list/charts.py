"""From the rows of a chart list to charts: each value judged, panels completed by their chart."""

from __future__ import annotations

import re
from collections.abc import Iterable
from datetime import date
from typing import Any

from noticeparse.chart_list.columns import LIMITS, NEEDED, Row, Slip
from noticeparse.chart_math import Frame, size_mm
from noticeparse.readers.heads import read_head
from noticeparse.readers.references import read_number
from noticeparse.records.chart import Datum
from noticeparse.records.chart_list import ListedChart
from noticeparse.sheets import chart_key, panel_key
from noticeparse.spans import LineIndex

_SCALE = re.compile(
    r"(?:1 ?[:/] ?)?([1-9][0-9]{0,2}(?:[ ,'.][0-9]{3}){1,3}|[1-9][0-9]{0,8})(?:\.0)?"
)
_DEGREES = re.compile(r"[+-]?[0-9]{1,3}(?:\.[0-9]{0,20})?")
_LARGEST_SHEET_MM = 2500
"""Twice the longer side of the largest paper in use (ISO 216 A0: 1189 mm)."""

_UNITS = {
    "m": "m", "metre": "m", "metres": "m", "meters": "m", "fm": "fm_ft", "fathoms": "fm_ft",
    "fm_ft": "fm_ft", "fathoms and feet": "fm_ft", "ft": "ft", "feet": "ft",
}  # fmt: skip
_FROM_CHART = ("depth_unit", "datum", "edition", "edition_date", "last_notice")


def charts_of(rows: Iterable[Row], lines: LineIndex) -> tuple[list[ListedChart], list[Slip]]:
    """The charts that can be used, and one slip for each thing that cannot."""
    charts: dict[tuple[str, str], ListedChart] = {}
    slips: list[Slip] = []
    for row in rows:
        chart = _chart(row, lines, slips)
        if chart is None:
            continue
        key = chart_key(chart.number), panel_key(chart.panel or "")
        if key in charts:
            slips.append(row.slip("chart-list-chart-twice", written=_name(chart)))
        else:
            charts[key] = chart
    return [_completed(chart, charts) for chart in charts.values()], slips


def _name(chart: ListedChart) -> str:
    return f"{chart.number}, {chart.panel}" if chart.panel else chart.number


def _completed(chart: ListedChart, charts: dict[tuple[str, str], ListedChart]) -> ListedChart:
    """A panel with what its chart says of the whole sheet."""
    whole = charts.get((chart_key(chart.number), ""))
    if whole is None or whole is chart:
        return chart
    blank = [name for name in _FROM_CHART if getattr(chart, name) is None]
    return chart.model_copy(update={name: getattr(whole, name) for name in blank})


def _chart(row: Row, lines: LineIndex, slips: list[Slip]) -> ListedChart | None:
    """The chart of a row; None where one of the needed values is lost, with one slip."""
    written = row.values
    missing = [name for name in NEEDED if name not in written]
    if missing:
        slips.append(row.slip("chart-list-value-missing", columns=", ".join(missing)))
        return None
    needed = _needed(row)
    if isinstance(needed, Slip):
        slips.append(needed)
        return None
    if "scale_latitude" not in written:
        middle = f"{needed['scale_latitude']:.2f}"
        slips.append(row.slip("chart-list-latitude-assumed", degrees=middle))
    return ListedChart(
        number=written["number"],
        panel=written.get("panel"),
        title=written.get("title"),
        **needed,
        **_details(row, slips),
        line=lines.span(row.start, row.end).line,
    )


def _needed(row: Row) -> dict[str, Any] | Slip:
    """Scale and limits as figures, or the first slip in them."""
    written = row.values
    scale = _SCALE.fullmatch(written["scale"])
    if scale is None:
        return row.slip("chart-list-value-unread", written=written["scale"], column="scale")
    found: dict[str, Any] = {"scale": int(re.sub(r"[^0-9]", "", scale[1]))}
    for name in (*LIMITS, "scale_latitude"):
        if name not in written:
            continue
        if not _DEGREES.fullmatch(written[name]):
            return row.slip("chart-list-value-unread", written=written[name], column=name)
        found[name] = float(written[name])
    found.setdefault("scale_latitude", (found["south"] + found["north"]) / 2)
    reason = _impossible(found)
    if reason is not None:
        limits = ", ".join(written[name] for name in LIMITS)
        return row.slip("chart-list-limits-impossible", written=limits, reason=reason)
    return found


def _impossible(found: dict[str, Any]) -> str | None:
    """Why limits and scale cannot be those of a sheet of paper."""
    south, west, north, east = (found[name] for name in LIMITS)
    if not -90 < south < 90 or not -90 < north < 90 or not -90 < found["scale_latitude"] < 90:
        return "a latitude is not below 90"
    if abs(west) > 180 or abs(east) > 180:
        return "a longitude is over 180"
    if south >= north:
        return "south is not below north"
    if west == east:
        return "west is east"
    width, height = size_mm(
        Frame(south, west, north, east, found["scale"], found["scale_latitude"])
    )
    if max(width, height) > _LARGEST_SHEET_MM:
        return f"at 1:{found['scale']} {max(width, height) / 1000:.0f} m of paper"
    return None


def _details(row: Row, slips: list[Slip]) -> dict[str, Any]:
    """The values that a chart may lack; one that cannot be read is left out with a slip."""
    written = row.values
    found: dict[str, Any] = {
        "depth_unit": _UNITS.get(" ".join(written.get("depth_unit", "").casefold().split())),
        "datum": _datum(written["datum"]) if "datum" in written else None,
        "edition": written.get("edition"),
        "edition_date": _day(written.get("edition_date", "")),
        "last_notice": read_number(written.get("last_notice", ""), None),
    }
    for name, value in found.items():
        if value is None and name in written:
            slips.append(row.slip("chart-list-detail-unread", written=written[name], column=name))
    return found


def _datum(written: str) -> Datum:
    """The datum as chart heads name it; one that they do not know keeps its name."""
    for chart in read_head(f"Chart 0 {written}", None).charts:
        if chart.datum is not None:
            return chart.datum
    return Datum(name=written, epsg=None)


def _day(written: str) -> str | None:
    try:
        return date.fromisoformat(written).isoformat()
    except ValueError:
        return None
