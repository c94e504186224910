"""Bulletins whose letters, blanks or lines were turned on their way: read or reported, whole."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from noticeparse import parse
from tests.corpus_files import TEXTS, name_of

TURNS: dict[str, Callable[[str], str]] = {
    "capitals": str.upper,
    "small letters": str.lower,
    "titles": str.title,
    "wide gaps": lambda text: text.replace(" ", "  "),
    "a blank line behind every line": lambda text: text.replace("\n", "\n\n"),
    "one line": lambda text: text.replace("\n", " "),
    "last line first": lambda text: "\n".join(reversed(text.split("\n"))),
}


@pytest.mark.parametrize("turn", TURNS.values(), ids=TURNS)
@pytest.mark.parametrize("path", TEXTS, ids=name_of)
def test_every_character_is_accounted_for(path: Path, turn: Callable[[str], str]) -> None:
    coverage = parse(turn(path.read_text("utf-8"))).coverage
    assert coverage.read + coverage.ignored + coverage.unread == coverage.characters


def test_a_line_of_corners_behind_marks_of_mail_has_no_item_before_it() -> None:
    text = (
        "> cable area, bounded by (b) 47°18'·50 s., 123°34'·00 w.\n"
        "> (d) 47°18'·90 s., 123°33'·10 w.\n> (e) 47°18'·90 s., 123°34'·00 w."
    )
    bulletin = parse(text)
    assert {one.code for one in bulletin.findings if one.severity == "error"} == {
        "item-without-verb"
    }
