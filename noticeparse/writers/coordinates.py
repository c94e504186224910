"""Positions spelled out: with the digits as they were written, and in decimals of a degree."""

from __future__ import annotations

from collections.abc import Iterable

from noticeparse.records.position import Position

_MARKS = "°'\""


def split_iso6709(written: str) -> tuple[str, str]:
    """The latitude and the longitude of an ISO 6709 text, each with its sign."""
    body = written.rstrip("/")
    cut = max(body.rfind("+"), body.rfind("-"))
    return body[:cut], body[cut:]


def angle_parts(written: str, width: int, hemispheres: str) -> list[str]:
    """`-4712.34` is `47°`, `12.34'`, `S`: the digits as they stand."""
    whole, dot, decimals = written[1:].partition(".")
    fields = [whole[:width], *(whole[at : at + 2] for at in range(width, len(whole), 2))]
    fields[-1] += dot + decimals
    parts = [field + mark for field, mark in zip(fields, _MARKS, strict=False)]
    return [*parts, hemispheres[written[0] == "-"]]


def readable(position: Position) -> str:
    """`47°12.34'S 123°45.67'W`, in the unit and with the digits in which it was written."""
    latitude, longitude = split_iso6709(position.iso6709)
    north = "".join(angle_parts(latitude, 2, "NS"))
    return f"{north} {''.join(angle_parts(longitude, 3, 'EW'))}"


def all_readable(positions: Iterable[Position]) -> str | None:
    """The positions with a semicolon between them, None where there are none."""
    return "; ".join(map(readable, positions)) or None


def all_decimal(positions: Iterable[Position]) -> str | None:
    """`47.2056667S 123.7611667W`, seven decimals, with a semicolon between them.

    Letters and not signs: a spreadsheet works out `-47.2 -123.8` as a sum.
    """
    return "; ".join(f"{_decimal(p.lat, 'NS')} {_decimal(p.lon, 'EW')}" for p in positions) or None


def _decimal(degrees: float, hemispheres: str) -> str:
    return f"{abs(degrees):.7f}{hemispheres[degrees < 0]}"
