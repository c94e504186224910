"""The datum of positions: stated by every chart of a notice, and one for all of them."""

from __future__ import annotations

from collections.abc import Iterator

from noticeparse.checks.given import Given
from noticeparse.checks.trouble import Trouble
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.chart import ChartSection, Datum
from noticeparse.records.notice import Notice

# WGS84, ETRS89, NAD83, GDA94, GDA2020, NZGD2000, SIRGAS 2000, CGCS2000, JGD2000, JGD2011, PZ-90,
# GSK-2011: no more than about two metres apart, which no paper shows (IHO S-4, from memory).
_LIKE_WGS84 = frozenset({4326, 4258, 4269, 4283, 7844, 4167, 4674, 4490, 4612, 6668, 4740, 7683})


def check_datum_stated(bulletin: Bulletin, given: Given) -> Iterator[Trouble]:
    """One remark where no chart of the whole bulletin states a datum."""
    placed = [
        (pointer, section)
        for index, notice in enumerate(bulletin.notices)
        for pointer, section in _placed(notice, index)
    ]
    if not placed or any(section.datum for _, section in placed):
        return
    pointer, first = placed[0]
    yield Trouble("datum-not-stated", given.chart_of(first), [pointer])


def check_datums_agree(bulletin: Bulletin, given: Given) -> Iterator[Trouble]:
    """Notices of which one chart states a datum and another none, or another datum."""
    for index, notice in enumerate(bulletin.notices):
        placed = _placed(notice, index)
        stated = [section.datum for _, section in placed if section.datum]
        for pointer, section in placed:
            chart = section.chart or ""
            if section.datum is None and stated:
                code, values = "datum-of-some-charts", {"written": chart, "datum": stated[0].name}
            elif section.datum is not None and not is_one_datum(section.datum, stated[0]):
                values = {"written": chart, "datum": section.datum.name, "other": stated[0].name}
                code = "datum-differs"
            else:
                continue
            yield Trouble(code, given.chart_of(section), [pointer], values, section.chart)


def is_one_datum(one: Datum, other: Datum) -> bool:
    """Whether positions on the one may be plotted on the other as they are."""
    return one.name == other.name or {one.epsg, other.epsg} <= _LIKE_WGS84


def _placed(notice: Notice, index: int) -> list[tuple[str, ChartSection]]:
    """The charts of a notice that have actions with positions, each with its pointer."""
    return [
        (f"/notices/{index}/charts/{row}", section)
        for row, section in enumerate(notice.charts)
        if section.chart and any(action.geometry.positions for action in section.actions)
    ]
