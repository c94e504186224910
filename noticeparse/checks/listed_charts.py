"""What a notice says of a chart, held against the chart list: edition, datum, unit, notice before.

Common practice of chart correction, no published source, where nothing else is named.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.checks.datums import is_one_datum
from noticeparse.checks.sheet_sections import SheetSection
from noticeparse.checks.trouble import Trouble
from noticeparse.readers.references import notice_id
from noticeparse.records.action import Action, Amend, Replace
from noticeparse.records.depth import Depth
from noticeparse.records.feature import Feature
from noticeparse.sheets import is_same_notice, own_reference

_UNITS = {"m": "metres", "fm": "fathoms", "ft": "feet", "fm_ft": "fathoms and feet"}
# On a chart in fathoms a depth may be written in fathoms, in feet or in both.
_FITS = {"m": {"m"}, "fm_ft": {"fm", "ft", "fm_ft"}, "ft": {"ft"}}


def check_listed(one: SheetSection) -> Iterator[Trouble]:
    """A chart or panel that the list has not, once for each."""
    if one.sheets or not one.is_first:
        return
    chart = one.section.chart or one.section.international or ""
    if not one.is_listed:
        yield one.trouble_of_head("chart-not-in-list", chart=chart)
    else:
        panel = one.section.panel or ""
        yield one.trouble_of_head("chart-panel-not-in-list", chart=chart, written=panel)


def check_edition(one: SheetSection) -> Iterator[Trouble]:
    """A notice for another edition than the one on board."""
    if not one.sheets:
        return
    listed, section = one.sheets[0].chart, one.section
    pairs = (
        (_figure(section.edition), _figure(listed.edition), section.edition, listed.edition),
        (section.edition_date, listed.edition_date, section.edition_date, listed.edition_date),
    )
    for stated, known, written, other in pairs:
        if stated and known and stated != known:
            values = {"written": written or "", "listed": other or ""}
            yield one.trouble_of_head("chart-edition-differs", **values)
            return


def _figure(edition: str | None) -> str | None:
    """The number of an edition: `3`, `3rd` and `Ed. 3` are the same."""
    figures = re.search(r"[0-9]{1,4}", edition or "")
    return str(int(figures.group())) if figures else None


def check_datum(one: SheetSection) -> Iterator[Trouble]:
    """Positions on another datum than the chart's: they would lie beside their true place."""
    stated = one.section.datum
    known = one.sheets[0].chart.datum if one.sheets else None
    if stated is None or known is None or None in (stated.epsg, known.epsg):
        return
    if stated.epsg != known.epsg and not is_one_datum(stated, known):
        yield one.trouble_of_head("chart-datum-differs", written=stated.name, listed=known.name)


def check_depth_units(one: SheetSection) -> Iterator[Trouble]:
    """Depths in another unit than the chart's.

    A section that states a unit is judged by it; its depths were held against it when read.
    """
    listed = one.sheets[0].chart.depth_unit if one.sheets else None
    if listed is None:
        return
    stated = one.section.depth_unit
    if stated is not None:
        if stated != listed:
            values = {"written": f"depths in {_UNITS[stated]}", "listed": _UNITS[listed]}
            yield one.trouble_of_head("depth-unit-not-of-chart", **values)
        return
    for placed in one.actions():
        for depth in _depths(placed.action):
            # Without a unit a depth is read as metres.
            if (depth.unit or "m") not in _FITS[listed] and depth.value_m is not None:
                values = {"written": depth.written, "listed": _UNITS[listed]}
                span = placed.action.span
                yield one.trouble("depth-unit-not-of-chart", span, [placed.pointer], **values)
                break


def _depths(action: Action) -> Iterator[Depth]:
    yield from _depths_of(action.feature)
    if isinstance(action, Replace):
        yield from _depths_of(action.replacement)
    if isinstance(action, Amend):
        for change in action.changes:
            yield from (one for one in (change.old, change.new) if isinstance(one, Depth))


def _depths_of(feature: Feature) -> Iterator[Depth]:
    if feature.depth is not None:
        yield feature.depth
    for companion in feature.companions:
        yield from _depths_of(companion.feature)


def check_previous(one: SheetSection) -> Iterator[Trouble]:
    """A notice before it that is neither the last one applied nor in the same bulletin."""
    last = one.sheets[0].chart.last_notice if one.sheets else None
    previous, notice = one.section.previous, one.notice
    if last is None or notice.status != "permanent":
        return
    own = own_reference(notice)
    if own is not None and own in one.chain.applied(last):
        values = {"written": notice_id(own), "last": notice_id(last)}
        yield one.trouble_of_head("notice-applied-already", **values)
        return
    if previous is None or is_same_notice(previous, last):
        return
    if not one.chain.has(previous, but=own):
        written = one.section.previous_written or notice_id(previous)
        values = {"written": written, "last": notice_id(last)}
        yield one.trouble_of_head("previous-not-last-applied", **values)
