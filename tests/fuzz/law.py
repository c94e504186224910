"""Law: any bytes are read without an exception, to the last sign, and a usable place is true."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator

from noticeparse import (
    NoticeParseError,
    find_positions,
    parse,
    parse_depth,
    parse_light,
    parse_position,
)
from noticeparse.records import Bulletin, Position
from noticeparse.testing.reports import code_points


def check(data: bytes) -> None:
    """Hold the law against one input.

    AssertionError, or whatever a reader raises, breaks it; a note on it names the characters.
    """
    text = data.decode("utf-8", "surrogateescape")
    try:
        _hold(text)
    except Exception as error:
        error.add_note("\n  ".join([f"the text: {text!a}", *code_points(text)]))
        raise


def _hold(text: str) -> None:
    bulletin = parse(text)
    written = bulletin.model_dump_json()
    assert json.loads(written)["source"]["characters"] == len(text)
    assert parse(text).model_dump_json() == written, "the same text gives other bytes"
    coverage = bulletin.coverage
    assert coverage.characters == sum(not char.isspace() for char in text)
    assert coverage.read + coverage.ignored + coverage.unread == coverage.characters
    is_exchange_told = any(one.code == "position-exchanged" for one in bulletin.findings)
    for position in _usable_positions(bulletin):
        _is_true(position, text, is_exchange_told=is_exchange_told)
    for position in find_positions(text):
        _is_true(position, text)
    for read in (parse_position, parse_light, parse_depth):
        try:
            found = read(text)
        except NoticeParseError:
            continue
        if isinstance(found, Position):
            _is_true(found, text)


def _usable_positions(bulletin: Bulletin) -> Iterator[Position]:
    for notice in bulletin.notices:
        for section in notice.charts:
            for action in section.actions:
                if action.usable:
                    yield from action.geometry.positions


def _is_true(position: Position, text: str, *, is_exchange_told: bool = False) -> None:
    """A stated position is on the globe, and its figures are all those of the text, in order.

    Longitude may come first where that is told.
    """
    if position.via != "stated":
        return
    lat, lon = position.exact()
    assert -90 <= lat <= 90
    assert -180 <= lon <= 180
    assert (position.lat, position.lon) == (float(lat), float(lon))
    written = _figures(position.written)
    assert _is_within(written, _figures(text[position.span.start :]))
    first, second, _ = re.split("(?<=.)(?=[-+/])", position.iso6709)
    orders = [first + second, second + first] if is_exchange_told else [first + second]
    # ISO 6709 may state a height and a datum behind.
    is_whole = any(_is_within(written, _figures(order)) for order in orders)
    assert is_whole or position.written.endswith("/"), position


def _figures(text: str) -> str:
    return "".join(str(int(char)) for char in text if char.isdecimal())


def _is_within(few: str, many: str) -> bool:
    """Whether all of the few stand among the many, in their order."""
    rest = iter(many)
    return all(char in rest for char in few)
