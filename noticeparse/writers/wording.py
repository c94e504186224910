"""Values of records in a few words: figures, notices, changes, places on the sheet."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from typing import Any

from noticeparse.records.action import Action, Amend, Change
from noticeparse.records.depth import Clearance, Depth
from noticeparse.records.feature import Ais, Racon, Sound
from noticeparse.records.light import Light, Sector
from noticeparse.records.sheet import SheetPlace

_UNITS = {"_s": " s", "_m": " m", "_nm": " M", "_deg": "°"}


def plain(figure: Decimal) -> str:
    """An exact figure without exponent and without noughts at its end."""
    words = f"{figure:f}"
    return words.rstrip("0").rstrip(".") if "." in words else words


def miles(figure: Decimal) -> str:
    """`0.27 M`: nautical miles to a fifth of a metre, since a text may state metres."""
    return f"{plain(round(figure, 4))} M"


def bearing(figure: Decimal) -> str:
    """`010°`, `096.5°`: three figures before the point, as bearings are written."""
    whole, dot, decimals = plain(figure).partition(".")
    return f"{whole:0>3}{dot}{decimals}°"


def change_words(change: Change) -> str:
    """`light to Fl(3)WRG.15s21m15-11M`, `depth 8.6m to 7.9m`, `light ranges to 11 M`."""
    name, unit = change.property, ""
    for ending, words in _UNITS.items():
        if name.endswith(ending):
            name, unit = name.removesuffix(ending), words
    name = name.replace(".", " ").replace("_", " ")
    quote = '"' if change.property.endswith("legend") else ""
    new = _value(change.new, unit, quote) or "none"
    old = _value(change.old, unit, quote)
    return f"{name} {old} to {new}" if old else f"{name} to {new}"


def all_changes(action: Action) -> str | None:
    """The changes of an amendment with a semicolon between them, None for other actions."""
    return "; ".join(map(change_words, action.changes)) if isinstance(action, Amend) else None


def _value(value: Any, unit: str, quote: str = "") -> str:
    if value is None:
        return ""
    if isinstance(value, Light | Depth | Clearance):
        return value.written
    if isinstance(value, Sound | Racon | Ais):
        return _aid(value)
    if isinstance(value, Sector):
        return _sector(value)
    if isinstance(value, list):
        return ", ".join(_value(one, unit) for one in value)
    return f"{plain(value)}{unit}" if isinstance(value, Decimal) else f"{quote}{value}{quote}"


def _aid(aid: Sound | Racon | Ais) -> str:
    if isinstance(aid, Ais):
        return "virtual" if aid.virtual else "at a mark"
    if isinstance(aid, Racon):
        return f"({aid.morse})" if aid.morse else "without a letter"
    group = f"({'+'.join(map(str, aid.group))})" if aid.group else ""
    period = f" {plain(aid.period_s)} s" if aid.period_s is not None else ""
    return f"{aid.kind}{group}{period}"


def _sector(sector: Sector) -> str:
    parts = [sector.colour, sector.visibility]
    words = " ".join(part for part in parts if part)
    limits = f"{bearing(sector.from_deg)}-{bearing(sector.to_deg)}"
    range_nm = f" {plain(sector.range_nm)} M" if sector.range_nm is not None else ""
    return f"{words} {limits}{range_nm}".strip()


def sheet_words(places: list[SheetPlace]) -> str | None:
    """`upper left, 104.3 mm right, 210.5 mm up` for each place, None where none is known.

    To a tenth of a millimetre, as fine as a pair of dividers; the JSON has the third decimal.
    """
    return "; ".join(", ".join(_sheet_parts(place)) for place in places) or None


def _sheet_parts(place: SheetPlace) -> Iterator[str]:
    if place.panel:
        yield place.panel
    if place.part is None:
        yield "outside the frame"
        return
    yield place.part
    yield f"{place.x_mm:.1f} mm right"
    yield f"{place.y_mm:.1f} mm up"
