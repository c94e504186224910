"""One coordinate: from the terminal that found it to exact whole numbers.

The grammar says which form a coordinate has; here its figures are taken apart and judged.  Values
stay integers: a coordinate is `whole` units of 1/60**`unit` degree and `decimals` of the last
unit.
"""

from __future__ import annotations

import re
from typing import Literal, NamedTuple

from noticeparse.faults import Fault
from noticeparse.readers.rests_of_degrees import rest_of_degrees

Axis = Literal["latitude", "longitude"]

_AXES: dict[str, tuple[Axis, int]] = {
    "n": ("latitude", 1), "s": ("latitude", -1), "e": ("longitude", 1), "w": ("longitude", -1),
}  # fmt: skip
_LAST_DEGREE = {"latitude": 90, "longitude": 180}
# Figures before the decimal point of a compact coordinate, and the number of fields they hold.
_COMPACT = {
    "latitude": {1: 1, 2: 1, 4: 2, 6: 3},
    "longitude": {1: 1, 2: 1, 3: 1, 5: 2, 7: 3},
}
_FIGURES = re.compile(r"[0-9]+|(?<![A-Za-z])[.,](?=\s{0,2}[0-9])")
# A letter behind a figure may stand for one: `126°21'.26OW`.
_HEMISPHERE = re.compile(
    r"(?:(?<![A-Za-z])|(?<=[0-9.][OolI]))(north|south|east|west|[NSEW])(?![A-Za-z])\.?",
    re.IGNORECASE,
)
_LOOK_ALIKE = {"O": "0", "o": "0", "l": "1", "I": "1", "|": "1"}
_DEGREES_MARKED = re.compile(r"[°\-'*\ufffd]|deg", re.IGNORECASE)
_LOST_SYMBOL = re.compile("[�*]")
_DOUBTFUL_FIGURE = re.compile(r"[OoIlZSBb|]")
_BROKEN_BLANK = re.compile(r"\s*[0-9]{2,3} ?\n *[0-9]")
# A character lost in copying, right before a figure or behind one: `�6°12'S`, `4? 12.34 S`.
_LOST_BEFORE = re.compile("(?:[\ufffd?#]|[0-9\ufffd?#][\ufffd?#] )\\Z")
_DEGREES = re.compile(r"[0-9](?![0-9])")
_FIGURE_BEFORE = re.compile(r"[0-9] \Z")
_FIRST_FIGURES = re.compile(r"[0-9]{1,2}(?![0-9])")
_FIGURES_BEFORE = re.compile(r"(?<![0-9.,])(?<![Nn][Oo] )(?<![Nn][Oo]\. )([0-9]{1,2}) \Z")
_BLANK_BEFORE_POINT = re.compile(r"(?<![0-9])[0-9] [.,][0-9]")
# A mark in place of a figure, and the mark of the minutes behind: `123°5'.1'W`.
_TWO_MARKS = re.compile(r"(?<![0-9])[0-9]'[ ]?[.,][0-9]{1,6}'")
_BLANK_BEFORE_SIGN = re.compile(r"""(?<![0-9])[0-9] ['"]""")
_BLANKS_BEFORE_SIGNS = re.compile(r"""[0-9]{2} ['"]|[0-9] °(?![^'"]{0,12}[0-9]['"])""")
# `47°~3'.8S`: a sign that nobody knows stands for a figure, and degrees before it are not shared.
_UNKNOWN_SIGN = re.compile(r"[0-9][ ]?[°-][ ]?[^\s0-9A-Za-z°'\"]\Z")
_WHOLE_FIELD = re.compile(r"(?<![0-9.,])(?<![.,]\s)[0-9]+")
_AXIS_WORD = re.compile(r"(lat|lon)[a-z]*\.?", re.IGNORECASE)


class Coordinate(NamedTuple):
    """An exact coordinate, or the faults that forbid one (`fields` is then empty)."""

    axis: Axis | None
    sign: int
    fields: tuple[int, ...]
    """Degrees, minutes, seconds: as many as written; minutes alone where degrees are shared."""
    decimals: str
    unit: int
    """0 where the last field is degrees, 1 minutes, 2 seconds."""
    text: str
    start: int
    faults: tuple[Fault, ...] = ()

    @property
    def is_readable(self) -> bool:
        """Whether a value was read."""
        return bool(self.fields)

    @property
    def shares_degrees(self) -> bool:
        """Whether the degrees are those of the point before."""
        return self.unit == 1 and len(self.fields) == 1

    def ratio(self) -> tuple[int, int]:
        """Exact degrees as numerator and denominator, without sign."""
        whole = 0
        for field in self.fields:
            whole = whole * 60 + field
        scale = 10 ** len(self.decimals)
        return whole * scale + int(self.decimals or 0), 60**self.unit * scale

    def digits(self) -> str:
        """The digits of ISO 6709: fixed width, in the unit written."""
        width = 2 if self.axis == "latitude" else 3
        first, *others = self.fields
        body = f"{first:0{width}d}" + "".join([f"{field:02d}" for field in others])
        return f"{body}.{self.decimals}" if self.decimals else body


def follows_lost_figure(text: str, start: int) -> bool:
    """Whether a figure may be lost right before the coordinate at an offset of `text`."""
    return _LOST_BEFORE.search(text, max(0, start - 3), start) is not None


def follows_split_figure(text: str, start: int) -> bool:
    """Whether a figure before a blank may be the first of the degrees: `4 7°12'.34S`."""
    degrees = _DEGREES.match(text, start)
    return (
        degrees is not None and _FIGURE_BEFORE.search(text, max(0, start - 2), start) is not None
    )


def read_coordinate_in(text: str, kind: str, start: int, end: int) -> Coordinate:
    """The coordinate found at a stretch of `text`, refused where its first figure may be lost."""
    if follows_lost_figure(text, start) or _UNKNOWN_SIGN.search(text, max(0, start - 4), start):
        return _refused("position-unreadable", text[start:end].rstrip(), start)
    one = read_coordinate(kind, text[start:end], start)
    split = None
    if one.is_readable:
        split = rest_of_degrees(text, start) if one.shares_degrees else None
        split = _split_figure(text, one) if split is None else split
    if split is not None:
        # `12 4-21.11W`: the figures before the blank may be the first of these.
        refused = _refused("position-unreadable", text[split:end].rstrip(), split)
        return refused._replace(text=one.text, start=start)
    return one


def _split_figure(text: str, one: Coordinate) -> int | None:
    """Where figures begin that a blank parts from the degrees or minutes they may belong to.

    `Buoy No 4 7°12'.34S` has a number before its latitude; nothing stands before a longitude.
    """
    first = _FIRST_FIGURES.match(text, one.start)
    before = _FIGURES_BEFORE.search(text, max(0, one.start - 4), one.start)
    if first is None or before is None:
        return None
    width = 2 if one.shares_degrees or one.axis == "latitude" else 3
    if len(first[0]) + len(before[1]) > width or (width == 2 and len(first[0]) > 1):
        return None
    return before.start(1)


def read_coordinate(kind: str, text: str, start: int) -> Coordinate:
    """The coordinate found by terminal `kind` at offset `start`."""
    text = text.rstrip()
    if kind == "COORDINATE" and text[0].isdigit():
        # The common way to write one: figures and marks, one capital behind.
        body = text[:-1] if text[-1] == "." else text
        if body[-1] in "NSEW" and not body[-2].isalpha() and not _LOST_SYMBOL.search(body):
            stated, side = _AXES[body[-1].lower()]
            return _fields(kind, stated, side, body[:-1], text, start, [])
    match = _hemisphere(text)
    axis: Axis | None = None
    sign, figures = 1, text
    if match is not None:
        axis, sign = _AXES[match.group(1)[0].lower()]
        figures = text[: match.start()] + " " + text[match.end() :]
    word = _AXIS_WORD.match(text.lstrip("+-"))
    if word is not None:
        named: Axis = "latitude" if word.group(1).lower() == "lat" else "longitude"
        figures = figures.replace(word.group(), " ", 1)
        if axis is not None and axis != named:
            return _refused("position-hemisphere-conflict", text, start, axis=named)
        if axis is None:
            return _refused("position-hemisphere-missing", text, start)
    faults: list[Fault] = []
    if text[0] in "+-":
        return _refused("position-sign-and-hemisphere", text, start)
    if kind == "COORDINATE_CUT":
        return _refused("position-cut-off", text, start)
    if kind == "COORDINATE_DOUBTFUL":
        if len(_HEMISPHERE.findall(text)) > 1:
            return _refused("position-hemisphere-conflict", text, start, axis=str(axis))
        letters = _DOUBTFUL_FIGURE.findall(figures)
        parted = letters and not _DEGREES_MARKED.search(text)
        # Between blanks nothing but the letter itself tells that degrees end there.
        if parted or any(letter not in _LOOK_ALIKE for letter in letters):
            return _refused("position-unreadable", text, start)
        for letter in letters:
            figures = figures.replace(letter, _LOOK_ALIKE[letter])
        figures = figures.replace("·", ".")
        if letters:
            values = {"written": text, "letter": letters[0]}
            faults.append(Fault("position-letter-for-figure", start, start + len(text), values))
    if axis is None:
        return _refused("position-hemisphere-missing", text, start)
    if _LOST_SYMBOL.search(text):
        if not _has_all_figures(axis, figures):
            # `4� 12.34 S`: what was lost may as well be a figure.
            return _refused("position-unreadable", text, start)
        symbol = {"written": text}
        faults.append(Fault("position-symbol-lost", start, start + len(text), symbol))
    return _fields(kind, axis, sign, figures, text, start, faults)


def _has_all_figures(axis: Axis, figures: str) -> bool:
    """Whether degrees, minutes and seconds have as many figures as is usual for them."""
    fields = _WHOLE_FIELD.findall(figures)
    return [*map(len, fields)] == [2 if axis == "latitude" else 3, 2, 2][: len(fields)]


def _hemisphere(text: str) -> re.Match[str] | None:
    """The letter in front where one stands there, else the last one."""
    found = list(_HEMISPHERE.finditer(text))
    if not found:
        return None
    return found[0] if found[0].start() == 0 else found[-1]


def _refused(code: str, text: str, start: int, **values: str) -> Coordinate:
    fault = Fault(code, start, start + len(text), {"written": text, **values})
    return Coordinate(None, 1, (), "", 0, text, start, (fault,))


def _fields(
    kind: str, axis: Axis, sign: int, figures: str, text: str, start: int, faults: list[Fault]
) -> Coordinate:
    parts = _FIGURES.findall(figures)
    decimals = ""
    if len(parts) >= 2 and parts[-2] in ".,":
        decimals = parts[-1]
        parts = parts[:-2]
    if kind == "COORDINATE_DOUBTFUL" and _BROKEN_BLANK.match(figures):
        # A figure at a line end may end the words before as well as begin the position.
        return _refused("position-unreadable", text, start)
    if not parts or "." in parts or "," in parts or _lacks_figure(text):
        return _refused("position-unreadable", text, start)
    if len(parts) == 1 and kind != "COORDINATE_MINUTES":
        split = _compact(axis, parts[0])
        if split is None or (len(split) == 1 and not decimals and len(parts[0]) > 3):
            return _refused("position-unreadable", text, start)
        parts = split
    sixties = parts if kind == "COORDINATE_MINUTES" else parts[1:]
    if len(parts) > 3 or any(len(part) > 2 and int(part) < 60 for part in sixties):
        # `47°021.41S`: which of the three figures is one too many cannot be told.
        return _refused("position-unreadable", text, start)
    is_marked = '"' in text
    if kind == "COORDINATE_DOUBTFUL" and is_marked == bool(len(parts) < 3):
        return _refused("position-seconds-unclear", text, start)
    fields = tuple(map(int, parts))
    unit = 1 if kind == "COORDINATE_MINUTES" else len(fields) - 1
    if axis == "longitude" and "-" in text and len(parts[0]) == 2 and unit == len(fields) - 1:
        values = {"written": text}
        faults.append(Fault("position-longitude-digits", start, start + len(text), values))
    if axis == "latitude" and len(parts[0]) == 3 and unit == len(fields) - 1:
        values = {"written": text}
        faults.append(Fault("position-latitude-digits", start, start + len(text), values))
    found = Coordinate(axis, sign, fields, decimals, unit, text, start, tuple(faults))
    return _in_range(found)


def _lacks_figure(text: str) -> bool:
    """Whether a blank stands for a figure before a point or sign: `47-0 .55S`, `48°33'3 "S`.

    Some write a blank before each of their signs.
    """
    has_none = _BLANK_BEFORE_POINT.search(text) or _TWO_MARKS.search(text)
    return has_none is not None or (
        _BLANK_BEFORE_SIGN.search(text) is not None and _BLANKS_BEFORE_SIGNS.search(text) is None
    )


def _compact(axis: Axis, digits: str) -> list[str] | None:
    count = _COMPACT[axis].get(len(digits))
    if count is None:
        return None
    if count == 1:
        return [digits]
    width = 2 if axis == "latitude" else 3
    return [digits[:width], *(digits[i : i + 2] for i in range(width, len(digits), 2))]


def _in_range(found: Coordinate) -> Coordinate:
    """Refuse what is not on the globe; 60 minutes are never carried (ISO 6709, 6.3)."""
    assert found.axis is not None
    sixties = found.fields if found.shares_degrees else found.fields[1:]
    for name, field in zip(("minutes", "seconds"), sixties, strict=False):
        if field > 59:
            code = f"position-{name}-out-of-range"
            last = found.decimals if name == ("minutes", "seconds")[len(sixties) - 1] else ""
            figure = f"{field}.{last}" if last else str(field)
            return _refused(code, found.text, found.start, figure=figure)
    if found.fields[0] >= _LAST_DEGREE[found.axis] and not found.shares_degrees:
        numerator, denominator = found.ratio()
        if numerator > _LAST_DEGREE[found.axis] * denominator:
            figure = str(found.fields[0])
            code = "position-degrees-out-of-range"
            return _refused(code, found.text, found.start, figure=figure, axis=found.axis)
    return found
