"""What heads are made of: the records of their parts, and the values of single parts."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.numbers import ROMAN
from noticeparse.records.chart import Datum
from noticeparse.records.depth import DepthUnit
from noticeparse.records.reference import NoticeRef


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
    is_main: bool = False
    """Whether the head says that the main part of the chart is meant."""
    further: list[str | None] = field(default_factory=list)
    """Other panels of this chart that share what is said of it; None is its main part."""
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


_EPSG: dict[str, tuple[str, int | None]] = {
    "WGS84": ("WGS84", 4326), "WGS1984": ("WGS84", 4326),
    "WORLDGEODETICSYSTEM1984": ("WGS84", 4326), "WGS72": ("WGS72", 4322),
    "ETRS89": ("ETRS89", 4258), "NAD83": ("NAD83", 4269), "NAD27": ("NAD27", 4267),
    "NAD1983": ("NAD83", 4269), "NAD1927": ("NAD27", 4267),
    "ED50": ("ED50", 4230), "EUROPEAN1950": ("ED50", 4230), "OSGB36": ("OSGB36", 4277),
    "TOKYO": ("Tokyo", 4301), "PULKOVO1942": ("Pulkovo 1942", 4284),
    "AGD66": ("AGD66", 4202), "AGD84": ("AGD84", 4203), "GDA94": ("GDA94", 4283),
    "GDA2020": ("GDA2020", 7844), "NZGD49": ("NZGD49", 4272), "NZGD2000": ("NZGD2000", 4167),
    "SAD69": ("SAD69", 4618), "SIRGAS2000": ("SIRGAS 2000", 4674), "CAPE": ("Cape", 4222),
    "CGCS2000": ("CGCS2000", 4490), "JGD2000": ("JGD2000", 4612), "JGD2011": ("JGD2011", 6668),
    "PZ90": ("PZ-90", 4740), "GSK2011": ("GSK-2011", 7683),
}  # fmt: skip
"""Datum names as written (capitals, no blanks) and the EPSG code of the 2D system."""


_OF_A_YEAR = re.compile(r",? (?:19|20)[0-9]{2}$")
_OF_A_DAY = re.compile(r",? (?:dated|published|printed|issued|of)$", re.IGNORECASE)
_ORDINAL = re.compile(r"(?:[0-9]{1,2}(?:st|nd|rd|th)|first|second|third|fourth|fifth)(?= )", re.I)


def read_edition_number(words: str) -> str:
    """`4` of `edition 4`, `4th` of `4th edition 2025`."""
    ordinal = _ORDINAL.match(words)
    if ordinal is not None:
        return ordinal.group()
    return _OF_A_YEAR.sub("", _OF_A_DAY.sub("", words)).split()[-1].strip(".,")


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
    if "fathom" in words or "fm" in words:
        return "fm_ft"
    return "ft" if "feet" in words or "ft" in words else "m"


_BESIDE_NAME = re.compile(
    r"^(?:(?:and|also|with|plus|&|on|in) )?(?:(?:the|its|also|for) )*(?=plan|panel|inset)"
    r"|[ ,]+(?:only|alone|also|too|as well)$",
    re.IGNORECASE,
)
"""What is no part of the name of a panel: `plan A only`, `and its inset`."""


def read_panel(text: str) -> str:
    """The words that name a panel, without the marks around them."""
    plain = text.strip("()-,;: ").replace('"', "")
    return _BESIDE_NAME.sub("", " ".join(plain.split()).replace(" :", ":"))


ALL_ITEMS = r"all(?: the)?(?: items)?(?: of (?:them|the items))?"
"""What says that a chart takes every item of its notice: `611 [12/26] - all items`."""
_ALL_ITEMS = re.compile(rf"\(?{ALL_ITEMS}\)?\.?", re.IGNORECASE)
_LETTER = re.compile(r"\b(?:[ivx]{1,5}|[a-z]|[0-9]{1,2})\b|-")
LETTERS = "abcdefghijklmnopqrstuvwxyz"


def says_all_items(words: str) -> bool:
    """Whether words behind a chart are that it takes every item: `all`, `(all items)`."""
    return _ALL_ITEMS.fullmatch(words.strip()) is not None


def items_told(words: str) -> frozenset[str] | None:
    """The items in a cell beside a chart; None where it takes all.

    What cannot be read for certain leaves every item without this chart.
    """
    return None if says_all_items(words) else read_items(words) or frozenset()


def read_items(text: str) -> frozenset[str] | None:
    """Letters or numbers of items, ranges filled in: `(a-c)`, `items (i) to (iii)`.

    None where they are not certain: of two kinds, or a range that does not go up.
    """
    marks = _LETTER.findall(re.sub(r"\s+to\s+", "-", text.replace("\n", " ")))
    order = _order([mark for mark in marks if mark != "-"], is_range="-" in marks)
    if order is None:
        return None
    letters: list[str] = []
    is_range = False
    for mark in marks:
        if mark == "-":
            is_range = True
            continue
        if is_range:
            ends = [order.index(one) if one in order else -1 for one in (*letters[-1:], mark)]
            if len(ends) < 2 or not 0 <= ends[0] < ends[1]:
                return None
            letters += order[ends[0] + 1 : ends[1]]
        letters.append(mark)
        is_range = False
    return frozenset(letters)


def _order(marks: list[str], *, is_range: bool) -> list[str] | None:
    """The marks of the kind of these in their order: numbers, Roman numbers, letters."""
    if all(mark.isdigit() for mark in marks):
        return [str(number) for number in range(100)]
    is_roman = all(mark in ROMAN for mark in marks)
    if is_roman and (marks[0] == "i" or any(len(mark) > 1 for mark in marks)):
        return ROMAN
    if is_roman and is_range:
        # `(v) to (x)`: six of one kind, or three of the other.
        return None
    return list(LETTERS) if all(mark in LETTERS for mark in marks) else None
