"""Invisible characters: left out, told, and never let two halves pass for one figure."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest

from noticeparse import (
    NoticeParseError,
    find_positions,
    parse,
    parse_depth,
    parse_light,
    parse_position,
)
from noticeparse.text import hidden_in, repair

HIDDEN = [
    ("none", "8.6m", []),
    ("direction between figures", "8\u202e6m", [(1, 2, True)]),
    ("no width between figures", "8\u200b\u200c₆", [(1, 3, True)]),
    ("between the halves of a dot", "8Â\x1b·6", [(1, 4, True)]),
    ("between letters", "bu\u00adoy", [(2, 3, False)]),
    ("behind a figure", "8\u200b m", [(1, 2, False)]),
    ("before a figure", "m \x078", [(2, 3, False)]),
    ("behind the last figure", "86\u200b", [(2, 3, False)]),
    ("mark at the start", "\ufeff8", []),
    ("more than a mark at the start", "\ufeff\u202e8", [(0, 2, False)]),
    ("control of a broken encoding", "8â€\x9d6", []),
    ("ligature", "8ﬁ6", []),
]


@pytest.mark.parametrize(
    ("given", "places"), [case[1:] for case in HIDDEN], ids=[case[0] for case in HIDDEN]
)
def test_invisible_characters_are_told(given: str, places: list[tuple[int, int, bool]]) -> None:
    assert [tuple(one) for one in hidden_in(repair(given))] == places


def test_invisible_characters_between_figures_are_a_warning() -> None:
    given = "Insert depth 8\u202e6m, bu\u200boy, 7\u200b2\u200b1 ab\u200bc"
    told = [
        (given[one.span.start : one.span.end], one.severity)
        for one in parse(given).findings
        if one.code == "text-control-character" and one.span
    ]
    assert told == [
        ("8\u202e6", "warning"),
        ("\u200b", "info"),
        ("7\u200b2", "warning"),
        ("2\u200b1", "warning"),
    ]


@pytest.mark.parametrize("read", [parse_depth, parse_light, parse_position])
def test_value_with_a_split_figure_is_refused(read: Callable[[str], object]) -> None:
    good = {
        parse_depth: "18m", parse_light: "Fl.15s", parse_position: "47°12'.34S., 123°45'.67W."
    }[read]  # fmt: skip
    read(good)
    at = re.search("[0-9][0-9]", good)
    assert at is not None
    with pytest.raises(NoticeParseError) as caught:
        read(f"{good[: at.start() + 1]}\u202e{good[at.start() + 1 :]}")
    assert caught.value.finding.severity == "warning"


def test_position_with_a_split_figure_is_left_out() -> None:
    good = "47°12'.34S., 123°45'.67W."
    split = good.replace("12", "1\u200b2")
    text = f"at {good} and {split} and \u200b{good}, 1\u200b1"
    assert [one.span.start for one in find_positions(text)] == [3, text.rindex("47")]
