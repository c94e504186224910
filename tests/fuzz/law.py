"""Law: any bytes are read without an exception, to the last sign, and a usable place is true."""

from __future__ import annotations

import json
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
    for position in (*_usable_positions(bulletin), *find_positions(text)):
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


def _is_true(position: Position, text: str) -> None:
    """A stated position is on the globe, and its figures are all those of the text."""
    if position.via != "stated":
        return
    lat, lon = position.exact()
    assert -90 <= lat <= 90
    assert -180 <= lon <= 180
    assert (position.lat, position.lon) == (float(lat), float(lon))
    assert _is_within(_figures(position.written), _figures(text[position.span.start :]))
    if not position.written.endswith("/"):  # ISO 6709 may state a height and a datum behind
        assert _is_within(_figures(position.written), _figures(position.iso6709)), position


def _figures(text: str) -> str:
    return "".join(str(int(char)) for char in text if char.isdecimal())


def _is_within(few: str, many: str) -> bool:
    """Whether all of the few stand among the many, in their order."""
    rest = iter(many)
    return all(char in rest for char in few)
