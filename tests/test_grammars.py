"""Every rule of every grammar file, tried on the examples that stand above it.

`//: ` lines must parse with the rule below them as start, `//! ` lines must not.  The parser of
each rule gets the lexer that the readers give to its file, found in their source, since a text may
fit under one lexer and not under the other.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import NamedTuple

import pytest
from lark import Lark, Tree
from lark.exceptions import GrammarError, LarkError

import noticeparse
from noticeparse import grammar
from noticeparse.grammar.lexers import BasicLexer, check

PACKAGE = Path(noticeparse.__file__).parent
FILES = sorted(path.name.removesuffix(".lark") for path in grammar.folder().iterdir())
RULE = re.compile(r"[?!]{0,2}(_?[a-z][a-z0-9_]*)(?:\.-?[0-9]+)?[ \t]*:")


class Rule(NamedTuple):
    """A rule with the examples above it."""

    file: str
    name: str
    accepts: tuple[str, ...]
    rejects: tuple[str, ...]


def rules_of(file: str) -> Iterator[Rule]:
    """The rules of a file; an example that stands above something else is an error."""
    accepts: list[str] = []
    rejects: list[str] = []
    for line in grammar.source(file).splitlines():
        if line.startswith("//: "):
            accepts.append(line[4:])
        elif line.startswith("//! "):
            rejects.append(line[4:])
        elif line.startswith("//"):
            continue
        else:
            match = RULE.match(line)
            if match:
                yield Rule(file, match.group(1), tuple(accepts), tuple(rejects))
            elif accepts or rejects:
                pytest.fail(f"{file}.lark: examples {accepts + rejects} stand above no rule")
            accepts, rejects = [], []


RULES = [rule for file in FILES for rule in rules_of(file)]


@cache
def lexers() -> dict[str, str]:
    """The lexer that the package's own code names for each grammar file it builds."""
    found: dict[str, str] = {}
    for path in PACKAGE.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.Call) and (file := _file_of(node)):
                found[file] = _lexer_of(node)
    return found


def _file_of(call: ast.Call) -> str | None:
    """The file of `build("light", …)`, `grammar.build("head", …)`, `grammar.scanner("line")`."""
    if ast.unparse(call.func).rpartition(".")[2] not in ("build", "scanner") or not call.args:
        return None
    first = call.args[0]
    return (
        first.value if isinstance(first, ast.Constant) and isinstance(first.value, str) else None
    )


def _lexer_of(call: ast.Call) -> str:
    if ast.unparse(call.func).endswith("scanner"):
        return "basic"
    named = [keyword.value for keyword in call.keywords if keyword.arg == "lexer"]
    return str(ast.literal_eval(named[0])) if named else "contextual"


@cache
def parser_of(file: str, rule: str) -> Lark:
    return grammar.build(file, rule, lexer=lexers().get(file, "contextual"))


def examples(kind: str) -> list[object]:
    return [
        pytest.param(rule, text, id=f"{rule.file}-{rule.name}-{text}")
        for rule in RULES
        for text in getattr(rule, kind)
    ]


def test_readers_name_the_files_they_build() -> None:
    built = set(lexers())
    assert built <= set(FILES)
    assert {"position", "place", "head", "line", "light", "sector"} <= built
    assert {file for file in built if lexers()[file] == "basic"} >= {"position", "place", "line"}


def test_grammar_files_are_there() -> None:
    assert len(FILES) >= 15
    assert {rule.file for rule in RULES} == set(FILES)


@pytest.mark.parametrize(("rule", "text"), examples("accepts"))
def test_example_parses(rule: Rule, text: str) -> None:
    parser_of(rule.file, rule.name).parse(text)


@pytest.mark.parametrize(("rule", "text"), examples("rejects"))
def test_counter_example_does_not_parse(rule: Rule, text: str) -> None:
    with pytest.raises(LarkError):
        parser_of(rule.file, rule.name).parse(text)


@cache
def larks_own(file: str, rule: str) -> Lark:
    """The parser of a rule with Lark's lexer in place of ours."""
    return Lark(
        grammar.source(file),
        parser="lalr",
        lexer=lexers().get(file, "contextual"),  # type: ignore[arg-type]
        start=rule,
        import_paths=[grammar.from_folder],
        maybe_placeholders=False,
    )


@pytest.mark.parametrize(("rule", "text"), [*examples("accepts"), *examples("rejects")])
def test_lexers_are_as_larks_own(rule: Rule, text: str) -> None:
    ours, own = (build(rule.file, rule.name) for build in (parser_of, larks_own))
    for given in (text, f" {text}  ", text[:-1], text[1:], f"{text} {text}"):
        assert outcome(ours, given) == outcome(own, given)


def outcome(lark: Lark, text: str) -> object:
    """The tree with the place of every token, or None where the text does not fit."""
    try:
        tree = lark.parse(text)
    except LarkError:
        return None
    tokens = tree.scan_values(lambda _: True) if isinstance(tree, Tree) else [tree]
    return tree, [(one.type, one.start_pos, one.end_pos) for one in tokens]


@pytest.mark.parametrize("file", FILES)
def test_no_literal_fits_a_pattern_too(file: str) -> None:
    # Lark's lexers would tell the two apart, ours do not.
    rule = next(rule for rule in RULES if rule.file == file)
    terminals = larks_own(file, rule.name).terminals
    patterns = [one for one in terminals if one.pattern.type == "re"]
    for literal in (one for one in terminals if one.pattern.type == "str"):
        for one in patterns:
            if one.priority == literal.priority:
                match = re.match(one.pattern.to_regexp(), literal.pattern.value)
                assert not match or match.group() != literal.pattern.value


def test_terminal_that_may_match_nothing_is_refused() -> None:
    with pytest.raises(GrammarError, match="A may match nothing"):
        check(Lark("start: A B\nA: /a?/\nB: /b/", lexer=BasicLexer, parser="lalr").terminals)


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: f"{rule.file}-{rule.name}")
def test_every_rule_has_an_example(rule: Rule) -> None:
    assert rule.accepts


@pytest.mark.parametrize("file", FILES)
def test_every_file_has_an_example_and_a_head(file: str) -> None:
    assert any(rule.accepts for rule in RULES if rule.file == file)
    assert grammar.source(file).startswith("// ")


@pytest.mark.parametrize("file", FILES)
def test_figures_are_ascii(file: str) -> None:
    # `\d` takes the digits of every script, and int() would then read them.
    assert r"\d" not in grammar.source(file)


@pytest.mark.parametrize("file", FILES)
def test_repetitions_of_a_set_are_bounded(file: str) -> None:
    # An open one lets every token look through the rest of the text: quadratic time.
    open_ended = re.compile(r"(?<!\\)\][*+]")
    lines = grammar.source(file).splitlines()
    patterns = [line for line in lines if not line.startswith(("//", "%ignore"))]
    assert [line for line in patterns if open_ended.search(line)] == []


@pytest.mark.parametrize("file", FILES)
def test_file_is_of_a_size_to_read(file: str) -> None:
    lines = grammar.source(file).splitlines()
    assert len(lines) <= 120
    assert [line for line in lines if len(line) > 99] == []
