"""Law: any bytes are read without an exception, to the last character, and a usable place is true.

`python -m tests.fuzz.harness -runs=100000` runs it under Atheris, from the texts of `corpus/`; it
takes libFuzzer's options.  What it finds is kept in a folder of its own unless one is named.
"""

from __future__ import annotations

import json
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from noticeparse import (
    NoticeParseError,
    find_positions,
    parse,
    parse_depth,
    parse_light,
    parse_position,
)
from noticeparse.records import Bulletin, Position

CORPUS = Path(__file__).parent / "corpus"


def check(data: bytes) -> None:
    """Hold the law against one input; AssertionError, or whatever a reader raises, breaks it."""
    text = data.decode("utf-8", "surrogateescape")
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
    """A stated position is on the globe, as exact as its digits, and these stand in the text."""
    if position.via != "stated":
        return
    lat, lon = position.exact()
    assert -90 <= lat <= 90
    assert -180 <= lon <= 180
    assert (position.lat, position.lon) == (float(lat), float(lon))
    seen = iter(text[position.span.start : position.span.end])
    figures = [char for char in position.written if char.isdecimal()]
    assert all(figure in seen for figure in figures), position


def main() -> None:
    """Run under Atheris."""
    import atheris

    options = [argument for argument in sys.argv[1:] if argument.startswith("-")]
    folders = [argument for argument in sys.argv[1:] if not argument.startswith("-")]
    with tempfile.TemporaryDirectory() as found:
        own: list[Any] = folders or [found]
        atheris.instrument_all()
        atheris.Setup([sys.argv[0], *options, *own, str(CORPUS)], check)
        atheris.Fuzz()


if __name__ == "__main__":
    main()
