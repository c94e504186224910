"""What holds for every text: it is read, it is all accounted for, and every span points at it."""

from __future__ import annotations

import os
import time
from collections.abc import Iterator
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import example, given

from noticeparse import (
    NoticeParseError,
    find_positions,
    parse,
    parse_depth,
    parse_light,
    parse_position,
)
from noticeparse.records import Bulletin, Position

from .strategies import anything, bulletins, texts

FULL = os.environ.get("NOTICEPARSE_LAWS") == "full"
SPAN_KEYS = {"start", "end", "line", "column"}

REPEATED = (
    "0", "1 ", " ", "\t", "\n", ".", ",", ";", ":", "-", "/", "|", "(", ")", "[", '"', "'", "°",
    "·", "+", ">", "*", "A", "a", "F", "Q", "I", "W ", "S ", "₆", "½", "ﬁ", "\x00", "\u200b",
    "\ud800", "a-\n", "-\n", "(a) ", "a) ", "47-", "47°", "5m ",
    "12/26 ", "12/26\n", "Fl.", "Fl(", "and ",
    "Insert ", "Insert wreck\n", "Chart 802 ", "Chart 802\n", "47-12.34S 123-45.67W\n", "Page 4\n",
    "1. ", "ab\n\n", "no. ", "from ", "W 000-", "(T)", "> ", "Position: ", "2 miles ",
)  # fmt: skip


def spans_of(value: Any) -> Iterator[dict[str, int]]:
    if isinstance(value, dict):
        if value.keys() == SPAN_KEYS:
            yield value
        for part in value.values():
            yield from spans_of(part)
    elif isinstance(value, list):
        for part in value:
            yield from spans_of(part)


def stated_positions(bulletin: Bulletin) -> Iterator[Position]:
    def walk(value: Any) -> Iterator[Position]:
        if isinstance(value, Position):
            if value.via == "stated":
                yield value
        elif isinstance(value, list):
            for part in value:
                yield from walk(part)
        elif hasattr(type(value), "model_fields"):
            for name in type(value).model_fields:
                yield from walk(getattr(value, name))

    yield from walk(bulletin)


def solid(text: str) -> int:
    return sum(not char.isspace() for char in text)


@example("2417/26\nQuill \ud800 Sound\nInsert wr\ud800eck  47-12.34S 123-45.67W\n")
@given(anything)
def test_parse_reads_any_text_and_it_can_be_written(text: str) -> None:
    bulletin = parse(text)
    assert bulletin.source.characters == len(text)
    bulletin.model_dump_json()


@example("ß")  # two capitals
@given(texts)
def test_single_readers_refuse_in_one_way_only(text: str) -> None:
    for reader in (parse_position, parse_light, parse_depth):
        try:
            reader(text)
        except NoticeParseError as error:
            span = error.finding.span
            assert span is None or 0 <= span.start <= span.end <= len(text)
    find_positions(text)


@pytest.mark.parametrize("piece", REPEATED, ids=repr)
def test_one_piece_many_times(piece: str) -> None:
    parse(piece * ((100_000 if FULL else 10_000) // len(piece)))


@pytest.mark.skipif(not FULL, reason="a test of time, for a quiet machine")
@pytest.mark.parametrize("piece", REPEATED, ids=repr)
def test_time_grows_with_the_length(piece: str) -> None:
    parse(piece * 10)
    short, long = (seconds(piece * (size // len(piece))) for size in (50_000, 200_000))
    # Four times as much text; quadratic growth would take sixteen times as long.
    assert long < 8 * short + 0.5


def seconds(text: str) -> float:
    start = time.perf_counter()
    parse(text)
    return time.perf_counter() - start


@pytest.mark.parametrize("value", [None, 5, b"47-12.34S"])
def test_what_is_no_text_is_a_type_error(value: Any) -> None:
    for reader in (parse, parse_position, parse_light, parse_depth, find_positions):
        with pytest.raises(TypeError):
            reader(value)


@given(anything)
def test_every_character_is_accounted_for(text: str) -> None:
    bulletin = parse(text)
    coverage = bulletin.coverage
    assert coverage.characters == solid(text)
    assert coverage.read + coverage.ignored + coverage.unread == coverage.characters
    assert min(coverage.read, coverage.ignored, coverage.unread) >= 0
    unread = [(span.start, span.end) for span in coverage.unread_spans]
    assert unread == sorted(unread)
    assert all(a[1] <= b[0] for a, b in pairwise(unread))
    assert sum(solid(text[start:end]) for start, end in unread) == coverage.unread


@given(anything)
def test_every_unread_stretch_has_a_finding(text: str) -> None:
    bulletin = parse(text)
    told = [(f.span.start, f.span.end) for f in bulletin.findings if f.span is not None]
    for span in bulletin.coverage.unread_spans:
        silent = [
            at
            for at in range(span.start, span.end)
            if not text[at].isspace() and not any(start <= at < end for start, end in told)
        ]
        assert not silent


@given(anything)
def test_every_span_points_at_the_text(text: str) -> None:
    for span in spans_of(parse(text).model_dump(mode="json", by_alias=True)):
        start, end = span["start"], span["end"]
        assert 0 <= start <= end <= len(text)
        assert span["line"] == text.count("\n", 0, start) + 1
        assert span["column"] == start - (text.rfind("\n", 0, start) + 1) + 1


@given(bulletins)
def test_the_span_of_a_position_holds_its_words(text: str) -> None:
    found = list(stated_positions(parse(text)))
    assert found
    for position in found:
        assert position.written == " ".join(text[position.span.start : position.span.end].split())


@given(anything)
def test_the_span_of_a_position_holds_its_figures(text: str) -> None:
    for position in stated_positions(parse(text)):
        seen = text[position.span.start : position.span.end]
        figures = [c for c in position.written if c.isdecimal()]
        rest = iter(seen)
        assert all(figure in rest for figure in figures)


@given(anything)
def test_every_position_is_the_float_nearest_to_its_exact_value(text: str) -> None:
    for position in stated_positions(parse(text)):
        lat, lon = position.exact()
        assert (position.lat, position.lon) == (float(lat), float(lon))
        assert -90 <= lat <= 90
        assert -180 <= lon <= 180
        assert position.resolution_m > 0


@given(anything)
def test_positions_found_are_those_without_doubt(text: str) -> None:
    for position in find_positions(text):
        assert position.via == "stated"
        assert (position.lat, position.lon) == tuple(map(float, position.exact()))
