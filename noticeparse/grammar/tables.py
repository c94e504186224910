"""Keeps the tables of a parser for the next run, as short lists and not as a pickle.

Lark can write and read a parser too; what it reads takes it three times as long.
"""

from __future__ import annotations

import re
from typing import Any

from lark import Lark
from lark.common import LexerConf, ParserConf
from lark.grammar import NonTerminal, Rule, RuleOptions, Terminal
from lark.lark import LarkOptions
from lark.lexer import PatternRE, PatternStr, TerminalDef
from lark.parser_frontends import ParsingFrontend
from lark.parsers.lalr_analysis import IntParseTable, Reduce, Shift
from lark.parsers.lalr_parser import LALR_Parser, _Parser

from noticeparse import store

_OPTIONS = ("keep_all_tokens", "expand1", "priority", "template_source")


def write(name: str, key: str, lark: Lark) -> None:
    """Keep the tables of a parser."""
    if store.folder() is None:
        return
    table = lark.parser.parser._parse_table
    number = {rule: row for row, rule in enumerate(lark.rules)}
    parts = {
        "terminals": [_terminal_row(one) for one in lark.terminals],
        "ignored": [str(one) for one in lark.ignore_tokens],
        "rules": [_rule_row(one) for one in lark.rules],
        # A rule is told from a state by its sign.
        "states": {
            state: {
                str(symbol): ~number[to] if action is Reduce else to
                for symbol, (action, to) in actions.items()
            }
            for state, actions in table.states.items()
        },
        "starts": {str(start): state for start, state in table.start_states.items()},
        "ends": {str(start): state for start, state in table.end_states.items()},
    }
    store.write(name, key, parts)


def _terminal_row(terminal: TerminalDef) -> list[Any]:
    pattern = terminal.pattern
    width = [pattern.min_width, pattern.max_width]
    flags = sorted(pattern.flags)
    return [str(terminal.name), terminal.priority, pattern.type, pattern.value, flags, width]


def _rule_row(rule: Rule) -> list[Any]:
    symbols = [
        [str(one.name), isinstance(one, Terminal) and [one.filter_out]] for one in rule.expansion
    ]
    alias = None if rule.alias is None else str(rule.alias)
    return [
        [str(rule.origin.name), rule.order, alias, symbols],
        {key: getattr(rule.options, key) for key in _OPTIONS},
        list(rule.options.empty_indices),
    ]


def read(name: str, key: str, options: dict[str, Any]) -> Lark | None:
    """The parser whose tables are kept under a name; None where none are."""
    kept = store.read(name, key)
    if kept is None:
        return None
    try:
        return _put_together(kept, options)
    except Exception:  # not the tables of this program, in whatever way
        return None


def _put_together(parts: dict[str, Any], options: dict[str, Any]) -> Lark:
    """A parser as Lark's own `load` makes it."""
    lark = Lark.__new__(Lark)
    lark.options = LarkOptions(options)
    lark.rules = [_rule(*row) for row in parts["rules"]]
    lark.terminals = [_terminal(*row) for row in parts["terminals"]]
    lark.ignore_tokens = parts["ignored"]
    lark.source_path = "<kept>"
    lark._terminals_dict = {one.name: one for one in lark.terminals}
    lark.lexer_conf = LexerConf(lark.terminals, re, lark.ignore_tokens)
    lark.lexer_conf.lexer_type = options["lexer"]
    lark._prepare_callbacks()
    conf = ParserConf(lark.rules, lark._callbacks, options["start"])
    conf.parser_type = "lalr"
    steps = [(Reduce, rule) for rule in lark.rules]
    states = {
        state: {symbol: (Shift, to) if to >= 0 else steps[~to] for symbol, to in actions.items()}
        for state, actions in parts["states"].items()
    }
    parser = LALR_Parser.__new__(LALR_Parser)
    parser.parser_conf = conf
    table: Any = IntParseTable(states, parts["starts"], parts["ends"])
    parser._parse_table = table
    parser.parser = _Parser(table, lark._callbacks)
    lark.parser = ParsingFrontend(lark.lexer_conf, conf, lark.options, parser=parser)
    return lark


def _terminal(
    name: str, priority: int, kind: str, value: str, flags: list[str], width: list[int]
) -> TerminalDef:
    if kind == PatternStr.type:
        return TerminalDef(name, PatternStr(value, flags), priority)
    pattern = PatternRE(value, flags)
    pattern._width = width  # else worked out anew, by parsing the pattern
    return TerminalDef(name, pattern, priority)


def _rule(head: list[Any], options: dict[str, Any], empty: list[bool]) -> Rule:
    name, order, alias, symbols = head
    expansion = [
        Terminal(symbol, *terminal) if terminal else NonTerminal(symbol)
        for symbol, terminal in symbols
    ]
    told = RuleOptions(**options, empty_indices=tuple(empty))
    return Rule(NonTerminal(name), expansion, order, alias, told)
