"""Heads of notices and chart sections: numbers, charts, previous notices, datum, cancellations.

In comes the head as one stretch of words; out come its parts by kind, and from them the charts it
names.  Where a head names several charts, each part goes with the chart before it.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from functools import cache, lru_cache
from itertools import zip_longest
from typing import NamedTuple

from noticeparse import grammar
from noticeparse.faults import Fault
from noticeparse.readers.dates import read_date
from noticeparse.readers.references import read_number
from noticeparse.records.chart import Datum
from noticeparse.records.depth import DepthUnit
from noticeparse.records.reference import NoticeRef

_EPSG: dict[str, tuple[str, int | None]] = {
    "WGS84": ("WGS84", 4326), "WGS1984": ("WGS84", 4326),
    "WORLDGEODETICSYSTEM1984": ("WGS84", 4326), "WGS72": ("WGS72", 4322),
    "ETRS89": ("ETRS89", 4258), "NAD83": ("NAD83", 4269), "NAD27": ("NAD27", 4267),
    "ED50": ("ED50", 4230), "EUROPEAN1950": ("ED50", 4230), "OSGB36": ("OSGB36", 4277),
    "TOKYO": ("Tokyo", 4301), "PULKOVO1942": ("Pulkovo 1942", 4284),
    "AGD66": ("AGD66", 4202), "AGD84": ("AGD84", 4203), "GDA94": ("GDA94", 4283),
    "GDA2020": ("GDA2020", 7844), "NZGD49": ("NZGD49", 4272), "NZGD2000": ("NZGD2000", 4167),
    "SAD69": ("SAD69", 4618), "SIRGAS2000": ("SIRGAS 2000", 4674), "CAPE": ("Cape", 4222),
    "CGCS2000": ("CGCS2000", 4490), "JGD2000": ("JGD2000", 4612), "JGD2011": ("JGD2011", 6668),
    "PZ90": ("PZ-90", 4740), "GSK2011": ("GSK-2011", 7683),
}  # fmt: skip
"""Datum names as written (capitals, no blanks) and the EPSG code of the 2D system."""


class HeadPart(NamedTuple):
    """A part of a head; offsets count in the stretch."""

    kind: str
    text: str
    start: int
    end: int


@dataclass
class ChartHead:
    """What a head says of one chart."""

    chart: str | None = None
    international: str | None = None
    panel: str | None = None
    edition: str | None = None
    edition_date: str | None = None
    previous: NoticeRef | None = None
    previous_written: str | None = None
    datum: Datum | None = None
    depth_unit: DepthUnit | None = None
    letters: frozenset[str] | None = None
    """Letters of the items that hold for this chart, where the head names them."""
    start: int = 0
    end: int = 0


@dataclass
class Head:
    """The charts of a head, the notice it opens, and the notices it cancels."""

    charts: list[ChartHead] = field(default_factory=list)
    this_notice: tuple[str, int, int] | None = None
    cancels: list[NoticeRef] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)


@cache
def _scanner() -> grammar.Scanner:
    return grammar.scanner("head", "parts")


@lru_cache(maxsize=2048)
def read_parts(text: str) -> tuple[HeadPart, ...]:
    """The parts of a head, in order."""
    return tuple(
        HeadPart(kind, text[start:end], start, end)
        for kind, start, end in _scanner().scan(text, 0, len(text))
    )


def head_kinds(text: str) -> set[str]:
    """The kinds of the parts of a head."""
    return {part.kind for part in read_parts(text)}


def opened_notice(text: str) -> str | None:
    """The number of the notice that a chart head opens, in a bulletin sorted by chart."""
    found = [part.text for part in read_parts(text) if part.kind == "THIS_NOTICE"]
    return _number_text(found[-1]) if found else None


def read_head(text: str, near: int | None) -> Head:
    """The charts and notices that a head names; `near` is the edition's year."""
    head = Head()
    shared = ChartHead()
    chart: ChartHead | None = None
    expects_chart = names_several = False
    parts = read_parts(text)
    for part, following in zip_longest(parts, parts[1:]):
        kind = part.kind
        if kind == "CHART_WORD":
            expects_chart = True
            names_several = part.text.lower().startswith("charts")
        elif kind == "CHART_NUMBER" and (expects_chart or _is_another(chart, following)):
            chart = ChartHead(chart=part.text.strip(), start=part.start, end=part.end)
            head.charts.append(chart)
            expects_chart = False
        elif kind == "COMMA":
            expects_chart = expects_chart or chart is not None
        elif kind == "THIS_NOTICE":
            number = _number_text(part.text)
            head.this_notice = (number, part.start, part.end)
        elif kind == "CANCELS":
            head.cancels += read_cancelled(part.text, near)
        else:
            _set(chart or shared, part, near, head)
            if kind in ("OTHER_WORDS", "STOP", "OTHER"):
                # `Charts: 1420 [136/26]. 1421 [122/26].` or with a dash between
                expects_chart = names_several and part.text in (".", "-") and chart is not None
    _share(head, shared)
    return head


def _is_another(chart: ChartHead | None, following: HeadPart | None) -> bool:
    """Whether a number behind a whole head has details of its own: `[12/26] - 512 [9/26]`."""
    if chart is None or chart.previous_written is None or following is None:
        return False
    return following.kind in ("PREVIOUS_IN_BRACKETS", "INTERNATIONAL", "NEW_EDITION")


def _set(chart: ChartHead, part: HeadPart, near: int | None, head: Head) -> None:
    kind, text = part.kind, part.text
    chart.end = max(chart.end, part.end)
    if kind in ("PREVIOUS", "PREVIOUS_IN_BRACKETS"):
        chart.previous = read_number(_number_text(text), near) or _of_no_year(text)
        chart.previous_written = " ".join(text.strip("[]() ,;").split())
    elif kind == "NUMBER_ALONE" or (kind == "NOTICE_NUMBER" and chart.previous is None):
        chart.previous = read_number(text, near)
        chart.previous_written = text.strip()
    elif kind == "NEW_EDITION":
        chart.previous_written = text.strip("[]() ,;")
    elif kind == "INTERNATIONAL":
        chart.international = "INT " + "".join(c for c in text if c.isdigit())
    elif kind == "EDITION":
        chart.edition = text.split()[-1].strip(".")
    elif kind == "DATE":
        written, faults = read_date(text, near)
        chart.edition_date = written if written and len(written) == 10 else None
        head.faults += [fault.shifted(part.start) for fault in faults]
    elif kind == "DATUM":
        chart.datum = read_datum(text)
    elif kind == "DEPTH_UNIT":
        chart.depth_unit = read_unit(text)
    elif kind == "PANEL":
        chart.panel = _panel(text)
    elif kind == "ITEM_LETTERS":
        chart.letters = read_items(text)


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


def _of_no_year(text: str) -> NoticeRef | None:
    """The notice before where its year is left out: `[previous notice 577]`."""
    number = text.strip("[]() ").rpartition(" ")[2]
    return (
        NoticeRef(number=int(number), year=None, status="permanent")
        if number.isdecimal()
        else None
    )


def _number_text(text: str) -> str:
    """The notice number within the words around it."""
    parts = read_numbers(text)
    return parts[0] if parts else text


@lru_cache(maxsize=2048)
def read_numbers(text: str) -> tuple[str, ...]:
    """All notice numbers within a stretch of words."""
    found = _number_scanner().scan(text, 0, len(text))
    return tuple(text[start:end] for kind, start, end in found if kind != "OTHER")


@cache
def _number_scanner() -> grammar.Scanner:
    return grammar.scanner("numbers", "numbers")


def read_cancelled(text: str, near: int | None) -> list[NoticeRef]:
    """The notices named as cancelled in a clause."""
    return [ref for number in read_numbers(text) if (ref := read_number(number, near))]


def read_datum(text: str) -> Datum:
    """A datum by its common name, with the EPSG code of its 2D system (EPSG dataset)."""
    letters = "".join(c for c in text.upper() if c.isalnum())
    for written, (name, epsg) in _EPSG.items():
        if written in letters:
            return Datum(name=name, epsg=epsg)
    if "SATELLITE" in letters:
        return Datum(name="WGS84", epsg=4326)
    words = text.strip("() ")
    return Datum(name=words.partition(":")[2].strip() or words, epsg=None)


def read_unit(text: str) -> DepthUnit:
    """The unit in which a head says that depths are given."""
    words = text.lower()
    if "fathom" in words:
        return "fm_ft"
    return "ft" if "feet" in words else "m"


def _panel(text: str) -> str:
    plain = text.strip("()-,;: ").replace('"', "")
    return " ".join(plain.split()).replace(" :", ":")


_LETTER = re.compile(r"\b(?:[a-z]|[0-9]{1,2})\b|-")


def read_items(text: str) -> frozenset[str]:
    """Letters or numbers of items, ranges filled in: `(a-c)`, `(items 2 and 3 only)`."""
    letters: list[str] = []
    is_range = False
    for mark in _LETTER.findall(text.replace(" to ", "-")):
        if mark == "-":
            is_range = True
            continue
        if is_range and letters:
            letters += _between(letters[-1], mark)
        letters.append(mark)
        is_range = False
    return frozenset(letters)


def _between(first: str, last: str) -> list[str]:
    if first.isdigit() and last.isdigit():
        return [str(number) for number in range(int(first) + 1, int(last))]
    if first.isalpha() and last.isalpha():
        return [chr(code) for code in range(ord(first) + 1, ord(last))]
    return []
