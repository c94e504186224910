"""Heads of notices and chart sections: numbers, charts, previous notices, datum, cancellations.

In comes the head as one stretch of words; out come its parts by kind, and from them the charts it
names.  Where a head names several charts, each part goes with the chart before it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from functools import cache, lru_cache

from noticeparse import grammar
from noticeparse.readers.cancelled import number_text, read_cancelled
from noticeparse.readers.chart_joints import (
    JOINTS,
    is_alike,
    is_joined,
    range_between,
    tells_of_several,
)
from noticeparse.readers.chart_list_numbers import without_list_numbers
from noticeparse.readers.chart_numbers import (
    next_chart,
    part_of_number,
    tell_of_no_chart,
    with_own_first,
)
from noticeparse.readers.dates import read_date
from noticeparse.readers.edition_dates import new_edition, tell_edition_dates, without_months
from noticeparse.readers.garbled_numbers import tell_garbled_numbers
from noticeparse.readers.head_values import (
    ChartHead,
    Head,
    HeadPart,
    read_datum,
    read_edition_number,
    read_items,
    read_panel,
    read_unit,
)
from noticeparse.readers.international_numbers import (
    international_number,
    share_international,
    with_international,
)
from noticeparse.readers.notices_before import (
    blame,
    set_listed,
    set_previous,
    set_shared,
    with_bare_numbers,
    with_list_apart,
)
from noticeparse.readers.panels import goes_beside, part_panels
from noticeparse.readers.taken_back import tells_end


@cache
def _scanner(*, may_cancel: bool) -> grammar.Scanner:
    # To look for a cancelled notice takes as long as for all other parts of a head.
    return grammar.scanner("head", "parts", without=() if may_cancel else ("CANCELS",))


def _scanned(text: str) -> Iterator[tuple[str, int, int]]:
    return _scanner(may_cancel=tells_end(text)).scan(text, 0, len(text))


@lru_cache(maxsize=2048)
def read_parts(text: str) -> tuple[HeadPart, ...]:
    """The parts of a head, in order."""
    return without_list_numbers(
        [HeadPart(kind, text[start:end], start, end) for kind, start, end in _scanned(text)]
    )


@lru_cache(maxsize=2048)
def head_kinds(text: str) -> frozenset[str]:
    """The kinds of the parts of a head."""
    return frozenset(part.kind for part in read_parts(text))


@lru_cache(maxsize=2048)
def opening_kind(text: str) -> str | None:
    """The kind of the first part of a head; the rest of it is not read."""
    return next((kind for kind, _, _ in _scanned(text)), None)


def is_international(text: str) -> bool:
    """Whether words are the international number of a chart, and nothing else."""
    kinds = head_kinds(text.strip(" -|/:"))
    return "INTERNATIONAL" in kinds and kinds <= {"INTERNATIONAL", "STOP", "COMMA"}


def opened_notice(text: str) -> str | None:
    """The number of the notice that a chart head opens, in a bulletin sorted by chart."""
    found = [part.text for part in read_parts(text) if part.kind == "THIS_NOTICE"]
    return number_text(found[-1]) if found else None


def read_head(text: str, near: int | None) -> Head:
    """The charts and notices that a head names; `near` is the edition's year."""
    head = Head()
    shared = ChartHead()
    chart: ChartHead | None = None
    expects_chart = names_several = False
    text = _BESIDE.sub(lambda found: " " * len(found[0]), text)
    parts, listed = with_list_apart(read_parts(text))
    parts = with_own_first(with_international(without_months(head, with_bare_numbers(parts))))
    for at, part in enumerate(parts):
        following = parts[at + 1] if at + 1 < len(parts) else None
        before = parts[at - 1] if at else None
        kind = part.kind
        if kind == "CHART_WORD":
            expects_chart = True
            names_several = tells_of_several(part.text)
        elif kind == "CHART_NUMBER" and (
            expects_chart
            or _is_another(chart, following)
            or (names_several and is_alike(text, before, part))
            or is_joined(parts[max(at - 2, 0) : at + 1], JOINTS)
        ):
            chart = next_chart(head, part, names_several=names_several)
            part_of_number(head, chart, text, part, before)
            expects_chart = False
        elif kind == "CHART_NUMBER":
            tell_of_no_chart(head, text, parts[max(at - 2, 0) : at + 1], is_listed=names_several)
        elif kind == "COMMA":
            expects_chart = expects_chart or chart is not None
        elif goes_beside(head, text, parts, at):
            expects_chart = expects_chart and kind == "PANEL_TOO"
        elif kind == "THIS_NOTICE":
            if chart is not None and head.this_notice is not None:
                # What is said of the chart before another notice of its card.
                chart.previous = chart.previous_written = None
            head.this_notice = (number_text(part.text), part.start, part.end)
        elif kind == "CANCELS":
            head.cancels += read_cancelled(part.text, near)
        elif names_several and (written := range_between(text, parts, at)):
            # `Charts 802 to 804`: whether there is one between is not said.
            expects_chart = True
            blame(head, "chart-range", written, part)
        else:
            _set(chart or shared, part, near, head)
            if expects_chart and kind == "OTHER" and part.text.isdigit():
                # `803 and 805/1`: what stands where a chart must, and is none.
                blame(head, "chart-unread", text[part.start : part.start + 12], part)
            if kind in ("OTHER_WORDS", "STOP", "OTHER"):
                # `Charts: 1420 [136/26]. 1421 [122/26].` or with a dash between
                another = names_several and part.text in (".", "-") and chart is not None
                expects_chart = another or (expects_chart and _leads_to_own(chart, shared, part))
    set_shared(head, parts, near)
    for part in set_listed(head, listed, near):
        _set(head.charts[-1] if head.charts else shared, part, near, head)
    _unread_words(head, text, parts)
    _bracketed_letters(head, parts)
    share_international(head, parts)
    _share(head, shared)
    part_panels(head)
    return head


def _leads_to_own(chart: ChartHead | None, shared: ChartHead, part: HeadPart) -> bool:
    """Whether a sign behind an international number leads to that of the chart itself.

    `Chart INT 1503 (802)`
    """
    return chart is None and part.text in "(-/" and shared.international is not None


_ALL_OTHERS = re.compile(r"\ball (?:the |other )?charts (?:of|in|covering)\b", re.IGNORECASE)
_BESIDE = re.compile(
    r"[\[(](?:adjoining|adjacent|neighbou?ring|related|see|see also|cf\.?|formerly|former|old"
    r"|superseded|replaces) charts? [^()\[\]\n]{1,40}[\])]",
    re.IGNORECASE,
)
"""`Chart 802 (adjoining chart 803)`: the chart in brackets is not corrected."""


_SAID_IN_BRACKETS = frozenset(
    "PREVIOUS NOTICE_NUMBER CANCELS NEW_EDITION EDITION DATUM INTERNATIONAL PANEL DATE".split()
)


def _unread_words(head: Head, text: str, parts: Sequence[HeadPart]) -> None:
    """Charts told by no number; `[3O/26]`: where the notice before stands, and is not read."""
    tell_garbled_numbers(head, text, parts)
    tell_edition_dates(head, text, parts)
    if head.charts and (others := _ALL_OTHERS.search(text)) is not None:
        blame(head, "chart-unread", others[0], parts[-1])
    for at, part in enumerate(parts):
        if part.text != "[" or not head.charts:
            continue
        end = next((i for i, one in enumerate(parts[at:], at) if one.text == "]"), None)
        inner = parts[at + 1 : end] if end is not None else ()
        if inner and not any(one.kind in _SAID_IN_BRACKETS for one in inner):
            blame(head, "previous-unread", text[part.start : inner[-1].end + 1], part)


def _bracketed_letters(head: Head, parts: Sequence[HeadPart]) -> None:
    """`Chart 802 (A)`: a panel, a letter of items, or none of both."""
    for chart, left, letter, right in zip(parts, parts[1:], parts[2:], parts[3:], strict=False):
        is_letter = letter.kind == "OTHER_WORDS" and len(letter.text) == 1
        if chart.kind == "CHART_NUMBER" and is_letter and left.text + right.text == "()":
            blame(head, "chart-head-unread", f"({letter.text})", letter)


def _once(chart: ChartHead, name: str, value: object, part: HeadPart, head: Head) -> None:
    """Tell a second panel, international number or notice before: only one is kept."""
    known = getattr(chart, name)
    if known is not None and known != value:
        blame(head, "chart-head-unread", part.text.strip("()[],; "), part)
        return
    setattr(chart, name, value)


def _is_another(chart: ChartHead | None, following: HeadPart | None) -> bool:
    """Whether a number behind a whole head has details of its own: `[12/26] - 512 [9/26]`."""
    if chart is None or chart.previous_written is None or following is None:
        return False
    return following.kind in (
        "PREVIOUS_IN_BRACKETS", "INTERNATIONAL", "NEW_EDITION", "NOTICE_NUMBER",
    )  # fmt: skip


def _set(chart: ChartHead, part: HeadPart, near: int | None, head: Head) -> None:
    kind, text = part.kind, part.text
    chart.end = max(chart.end, part.end)
    if kind in ("PREVIOUS", "PREVIOUS_IN_BRACKETS", "NOTICE_NUMBER"):
        set_previous(chart, part, near, head)
    elif kind == "NEW_EDITION":
        _once(chart, "previous_written", text.strip("[]() ,;"), part, head)
        number, day = new_edition(text, near)
        chart.edition, chart.edition_date = chart.edition or number, chart.edition_date or day
    elif kind == "INTERNATIONAL":
        _once(chart, "international", international_number(text), part, head)
    elif kind == "EDITION":
        chart.edition = read_edition_number(text)
    elif kind == "DATE":
        written, faults = read_date(text, near)
        chart.edition_date = written if written and len(written) == 10 else None
        head.faults += [fault.shifted(part.start) for fault in faults]
    elif kind == "DATUM":
        _once(chart, "datum", read_datum(text), part, head)
    elif kind == "DEPTH_UNIT":
        _once(chart, "depth_unit", read_unit(text), part, head)
    elif kind in ("PANEL", "MAIN_PANEL"):
        _set_panel(chart, part, head)
    elif kind == "ITEM_LETTERS":
        chart.letters = read_items(text)


def _set_panel(chart: ChartHead, part: HeadPart, head: Head) -> None:
    """The panel of a chart; its main part has no name, and goes with no panel."""
    panel = None if part.kind == "MAIN_PANEL" else read_panel(part.text)
    told = chart.is_main or chart.panel is not None
    if told and (chart.is_main != (panel is None) or chart.panel != panel):
        blame(head, "chart-head-unread", part.text.strip("()-,;: "), part)
    elif panel is None:
        chart.is_main = True
    else:
        chart.panel = panel


def _share(head: Head, shared: ChartHead) -> None:
    """Datum and unit said of the last chart, or before the first, hold for all of them."""
    if not head.charts:
        if shared != ChartHead():
            head.charts.append(shared)
        return
    last = head.charts[-1]
    for name in ("datum", "depth_unit"):
        said = getattr(shared, name) or getattr(last, name)
        if any(getattr(one, name) for one in head.charts[:-1]):
            continue
        for one in head.charts:
            setattr(one, name, getattr(one, name) or said)
    for name in ("previous", "previous_written", "international", "edition", "edition_date"):
        if getattr(shared, name) and not getattr(head.charts[0], name):
            setattr(head.charts[0], name, getattr(shared, name))
