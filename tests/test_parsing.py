"""The parser of short phrases does what Lark's own does with the same tables."""

from __future__ import annotations

from pathlib import Path

import pytest
from lark import Lark
from lark.exceptions import UnexpectedInput

from noticeparse import grammar
from noticeparse.grammar.parsing import PhraseParser
from tests.test_grammars import RULES, Rule


@pytest.mark.parametrize("rule", [one for one in RULES if one.accepts], ids=lambda one: one.name)
def test_trees_are_those_of_lark(rule: Rule) -> None:
    own = grammar.build(rule.file, rule.name)
    lark = Lark(
        (Path(str(grammar.folder())) / f"{rule.file}.lark").read_text("utf-8"),
        parser="lalr",
        start=rule.name,
        import_paths=[grammar.from_folder],
        maybe_placeholders=False,
    )
    assert isinstance(own, PhraseParser)
    for text in rule.accepts:
        try:
            expected = lark.parse(text)
        except UnexpectedInput:
            continue  # an example for the basic lexer
        assert own.parse(text) == expected


@pytest.mark.parametrize("text", ["", "417/26/", "417/"])
def test_what_does_not_fit_is_an_error_of_lark(text: str) -> None:
    with pytest.raises(UnexpectedInput):
        grammar.build("number", "number").parse(text)
