"""Writes a chart list and a clean bulletin for it, of the invented Tavrenne Islands.

Every position lies on its sheet, every move is short, every figure fine enough, and every notice
names the one before it.  One fault may be planted; the writer then tells the line it stands on.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from math import cos, radians, sin
from random import Random

from noticeparse.chart_math import Frame, east_of, place_mm, size_mm

PLACES = ("Port Ellory", "Quill Sound", "Dunmarrow Point", "Sable Tooth Rocks", "Brannoch Rock")
FEATURES = ("wreck", "special buoy", "obstruction", "port-hand buoy", "rock", "pile", "beacon")
SCALES = (7500, 12500, 25000, 50000, 75000, 150000, 200000, 350000, 500000)
_MINUTE_M = 1852.0
_FINE_MM = 0.25
_COARSE_MM = 0.35
_MARGIN = 0.04
"""Share of the sheet along its frame that clean positions keep away from."""
_CLEAN_MOVE_MM = 26.0


@dataclass
class Sheet:
    """A chart or panel as listed, and the notice that was put on it last."""

    number: str
    panel: str | None
    frame: Frame
    last: str

    @property
    def head(self) -> str:
        """The chart in the words of a notice, and the notice before."""
        panel = f", {self.panel}" if self.panel else ""
        return f"Chart {self.number}{panel} [{self.last}] WGS84"

    def mm_per_minute(self) -> float:
        """Millimetres for a minute of latitude, at the latitude of the scale."""
        return _MINUTE_M * 1000 / self.frame.scale


@dataclass
class Week:
    """A chart list, a bulletin for it, and where the planted fault stands."""

    charts: str = ""
    lines: list[str] = field(default_factory=list)
    fault_line: int | None = None
    fault_words: str = ""

    @property
    def text(self) -> str:
        """The bulletin."""
        return "\n".join([*self.lines, ""])


def write_week(seed: str, fault: str | None = None) -> Week:
    """The same seed and fault give the same week.

    `fault` is None, or one of `outside`, `move`, `coarse`, `previous`.
    """
    dice = Random(seed)
    week = Week()
    sheets = [_sheet(dice, str(number)) for number in dice.sample(range(100, 3000), 3)]
    sheets += [_panel(dice, one) for one in sheets[:1]]
    week.charts = _chart_list(dice, sheets)
    week.lines = ["TAVRENNE ISLANDS NOTICES TO MARINERS (invented, not for navigation)", ""]
    numbers = sorted(dice.sample(range(2400, 2500), dice.randint(1, 4)))
    sections = [(number, dice.sample(sheets, dice.randint(1, 2))) for number in numbers]
    # The first notice is the one whose previous notice must be that of the list.
    faulty = (0, 0) if fault == "previous" else None
    if fault is not None and faulty is None:
        at = dice.randrange(len(sections))
        faulty = at, dice.randrange(len(sections[at][1]))
    for index, (number, touched) in enumerate(sections):
        week.lines += [f"{number}/26  TAVRENNE ISLANDS - {dice.choice(PLACES)} - Corrections."]
        for which, sheet in enumerate(touched):
            planted = fault if (index, which) == faulty else None
            _section(dice, week, sheet, planted)
        for sheet in {one.number: one for one in touched}.values():
            _applied(sheets, sheet.number, f"{number}/26")
        week.lines.append("")
    return week


def _applied(sheets: list[Sheet], number: str, notice: str) -> None:
    for sheet in sheets:
        if sheet.number == number:
            sheet.last = notice


def _sheet(dice: Random, number: str) -> Sheet:
    """A frame of 300 to 1000 mm, now and then across the antimeridian."""
    scale = dice.choice(SCALES)
    south = dice.uniform(-49, -46.5)
    crosses = dice.random() < 0.2
    height, width = (dice.uniform(300, 1000) * scale / 1000 / _MINUTE_M / 60 for _ in range(2))
    width /= cos(radians(south))
    west = 180 - dice.uniform(0.1, 0.9) * width if crosses else dice.uniform(-128, -122)
    east = (west + width + 180) % 360 - 180
    latitude = round(south + height / 2, dice.choice((0, 2)))
    limits = [round(one, 4) for one in (south, west, south + height, east)]
    last = f"{dice.randint(1800, 2399)}/26"
    return Sheet(number, None, Frame(*limits, scale=scale, scale_latitude=latitude), last)


def _panel(dice: Random, whole: Sheet) -> Sheet:
    """A panel within a chart, at three times its scale."""
    frame = whole.frame
    height, width = (frame.north - frame.south) / 8, frame.width_deg / 8
    south = frame.south + height * dice.uniform(1, 6)
    west = (frame.west + width * dice.uniform(1, 6) + 180) % 360 - 180
    east = (west + width + 180) % 360 - 180
    limits = [round(one, 4) for one in (south, west, south + height, east)]
    scale_latitude = round(south, 1)
    inner = Frame(*limits, scale=frame.scale // 3, scale_latitude=scale_latitude)
    return Sheet(whole.number, "panel B", inner, whole.last)


def _chart_list(dice: Random, sheets: list[Sheet]) -> str:
    rows = ["# invented, not for navigation"]
    columns = ["number", "panel", "scale", "scale_latitude", "south", "west", "north", "east"]
    columns += ["last_notice", "datum"]
    dice.shuffle(columns)
    rows.append(",".join(columns))
    for one in sheets:
        values = {
            **one.frame._asdict(),
            "number": one.number,
            "panel": one.panel or "",
            "datum": "WGS84",
            "last_notice": "" if one.panel else one.last,
        }
        rows.append(",".join(str(values[column]) for column in columns))
    return "\n".join([*rows, ""])


def _section(dice: Random, week: Week, sheet: Sheet, fault: str | None) -> None:
    if fault == "previous":
        words = (
            f"{dice.choice([one for one in range(1800, 2399) if str(one) not in sheet.last])}/26"
        )
        week.fault_line, week.fault_words = len(week.lines) + 1, words
        week.lines.append(sheet.head.replace(sheet.last, words))
    else:
        week.lines.append(sheet.head)
    count = dice.randint(1, 6)
    faulty = dice.randrange(count) if fault in ("outside", "move", "coarse") else None
    for index in range(count):
        planted = fault if index == faulty else None
        item, words = _item(dice, sheet, planted)
        if planted is not None:
            week.fault_line, week.fault_words = len(week.lines) + 1, words
        week.lines.append(item)


def _item(dice: Random, sheet: Sheet, fault: str | None) -> tuple[str, str]:
    """One item on one line, and the words in which the fault is."""
    decimals = _decimals(sheet)
    feature = dice.choice(FEATURES)
    start = _within(dice, sheet)
    if fault == "outside":
        words = written(_outside(dice, sheet), decimals)
    elif fault == "coarse":
        words = written(start, _coarse(sheet))
    else:
        words = written(start, decimals)
    if fault == "move" or (fault is None and dice.random() < 0.3):
        longest = dice.uniform(31, 90) if fault else dice.uniform(1, _CLEAN_MOVE_MM)
        end = written(_moved(dice, sheet, start, longest), decimals)
        return f"Move {feature} from {words} to {end}", end
    if fault is None and dice.random() < 0.2:
        other = written(_within(dice, sheet), decimals)
        return f"Insert submarine cable joining {words} {other}", words
    return f"{dice.choice(('Insert', 'Delete'))} {feature} {words}", words


def _decimals(sheet: Sheet) -> int:
    """Decimals of a minute that are fine enough on the sheet."""
    return next(n for n in range(2, 6) if 0.5 * 10**-n * sheet.mm_per_minute() < _FINE_MM)


def _coarse(sheet: Sheet) -> int:
    """The most decimals of a minute that are too coarse on the sheet."""
    return max(n for n in range(4) if 0.5 * 10**-n * sheet.mm_per_minute() > _COARSE_MM)


def _within(dice: Random, sheet: Sheet) -> tuple[float, float]:
    frame = sheet.frame
    up, right = (dice.uniform(_MARGIN, 1 - _MARGIN) for _ in range(2))
    latitude = frame.south + up * (frame.north - frame.south)
    return latitude, _wrapped(frame.west + right * frame.width_deg)


def _outside(dice: Random, sheet: Sheet) -> tuple[float, float]:
    """A position beyond one side of the frame, by 2 % of the sheet and a tenth of a minute."""
    frame = sheet.frame
    latitude, longitude = _within(dice, sheet)
    beyond = dice.uniform(0.02, 0.9)
    far = 0.1 / 60
    side = dice.choice("NSEW")
    height = beyond * (frame.north - frame.south) + far
    width = beyond * frame.width_deg + far
    if side in "NS":
        return (frame.north + height if side == "N" else frame.south - height), longitude
    return latitude, _wrapped(frame.east + width if side == "E" else frame.west - width)


def _moved(
    dice: Random, sheet: Sheet, start: tuple[float, float], length_mm: float
) -> tuple[float, float]:
    """A position at a distance on the paper, on the sheet where that can be."""
    for _ in range(40):
        turn = radians(dice.uniform(0, 360))
        minutes = length_mm / sheet.mm_per_minute()
        latitude = start[0] + minutes * cos(turn) / 60
        end = latitude, _wrapped(start[1] + minutes * sin(turn) / 60 / cos(radians(start[0])))
        x_mm, y_mm = place_mm(sheet.frame, *end)
        width_mm, height_mm = size_mm(sheet.frame)
        if 2 < x_mm < width_mm - 2 and 2 < y_mm < height_mm - 2:
            return end
    return end if length_mm > _CLEAN_MOVE_MM else start


def _wrapped(longitude: float) -> float:
    return east_of(0, longitude)


def written(place: tuple[float, float], decimals: int) -> str:
    """`46-30.00S 122-30.00W`."""
    return f"{_half(place[0], 2, 'NS', decimals)} {_half(place[1], 3, 'EW', decimals)}"


def _half(value: float, width: int, letters: str, decimals: int) -> str:
    steps = round(abs(value) * 60 * 10**decimals)
    degrees, rest = divmod(steps, 60 * 10**decimals)
    minutes = f"{rest / 10**decimals:0{3 + decimals if decimals else 2}.{decimals}f}"
    return f"{degrees:0{width}d}-{minutes}{letters[value < 0]}"
