"""The scanner of a grammar's terminals, where a grammar is not as the scanner would have it."""

from __future__ import annotations

import pytest
from lark import Lark

from noticeparse.grammar.scanner import Scanner, divided


def scanner(grammar: str) -> Scanner:
    lark = Lark(grammar, parser=None, lexer="basic")
    return Scanner(*divided(lark.terminals, lark.ignore_tokens), "test")


FIGURE = "start: FIGURE\nFIGURE: /[0-9]+/\n%import common.WS\n"


def test_what_is_ignored_is_passed_over() -> None:
    scanned = scanner(FIGURE + "%ignore WS\n").scan(" 12  3 ", 0, 7)
    assert [*scanned] == [("FIGURE", 1, 3), ("FIGURE", 5, 6)]


def test_grammar_that_ignores_nothing_comes_to_an_end() -> None:
    with pytest.raises(ValueError, match="no terminal for the character at offset 2"):
        [*scanner("start: FIGURE\nFIGURE: /[0-9]+/\n").scan("12 3", 0, 4)]


def test_character_without_a_terminal_is_an_error() -> None:
    with pytest.raises(ValueError, match="offset 1"):
        [*scanner(FIGURE + "%ignore WS\n").scan("1x", 0, 2)]
