"""The list of the charts on board: a CSV or GeoJSON file in, its charts and findings out.

The format is our own.  A CSV file has a row of column names; lines that begin with `#` are
remarks.  A GeoJSON file (RFC 7946) has a feature for each chart, the same names in its properties;
its limits may stand in `bbox` instead.  A panel is a row of its own, with the number of its chart
and its name in `panel`.  What cannot be read leaves a finding, and the rest is used.
"""

from __future__ import annotations

from collections.abc import Iterable

from noticeparse.chart_list.charts import charts_of
from noticeparse.chart_list.columns import Slip, not_a_list
from noticeparse.chart_list.features import read_features
from noticeparse.chart_list.tables import read_table
from noticeparse.intake import NotReadable, decode
from noticeparse.records.chart_list import ChartList
from noticeparse.spans import LineIndex


def from_bytes(data: bytes, name: str | None = None) -> ChartList:
    """The charts of a list, with the faults of decoding the file among its findings.

    Raises NoticeParseError for what is no chart list at all.
    """
    try:
        intake = decode(data)
    except NotReadable as error:
        slip = Slip("chart-list-unreadable", {"reason": str(error)}, 0, 0)
        raise not_a_list(slip, LineIndex("")) from None
    slips = [Slip(fault.code, fault.values, 0, 0) for fault in intake.faults]
    return read_list(intake.text, name, slips)


def read_list(text: str, name: str | None = None, before: Iterable[Slip] = ()) -> ChartList:
    """The charts of a list; `name` is kept as that of the file, `before` are earlier slips.

    Raises NoticeParseError for what is no chart list at all.
    """
    lines = LineIndex(text)
    is_geojson = text.lstrip().startswith(("{", "["))
    found = read_features(text) if is_geojson else read_table(text)
    if isinstance(found, Slip):
        raise not_a_list(found, lines)
    charts, slips = charts_of(found.rows, lines)
    findings = sorted(
        (slip.finding(lines) for slip in (*before, *found.slips, *slips)),
        key=lambda one: one.span.start if one.span else 0,
    )
    return ChartList(name=name, charts=charts, findings=findings)
