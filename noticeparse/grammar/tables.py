"""The tables that a parser goes by, as Lark works them out and as they are kept for the next run.

They are plain lists and numbers: Lark can write and read a parser too, and what it reads takes it
three times as long.  Of the rules of a grammar a notice needs a few; the others stay rows.
"""

from __future__ import annotations

from typing import Any, NamedTuple

from lark import Lark
from lark.grammar import NonTerminal, Rule, RuleOptions, Terminal
from lark.lexer import PatternRE, PatternStr, TerminalDef
from lark.parsers.lalr_analysis import Reduce

from noticeparse import store

_OPTIONS = ("keep_all_tokens", "expand1", "priority")


class Tables(NamedTuple):
    """What a parser goes by."""

    terminals: list[list[Any]]
    ignored: list[str]
    rules: list[list[Any]]
    states: dict[int, dict[str, int]]
    """By state and symbol: the state that a token or a completed rule leads to, or the rule that
    a token completes, told by its sign: `~` of its row."""
    starts: dict[str, int]
    ends: dict[str, int]

    def terminal_definitions(self) -> list[TerminalDef]:
        """The terminals as Lark has them."""
        return [_terminal(*row) for row in self.terminals]

    def rule(self, row: int) -> Rule:
        """One of the rules as Lark has it."""
        return _rule(*self.rules[row])


def of(lark: Lark) -> Tables:
    """The tables of a parser of Lark; its names are tokens, and become plain texts."""
    table = lark.parser.parser._parse_table
    number = {rule: row for row, rule in enumerate(lark.rules)}
    return Tables(
        [_terminal_row(one) for one in lark.terminals],
        [str(one) for one in lark.ignore_tokens],
        [_rule_row(one) for one in lark.rules],
        {
            state: {
                str(symbol): ~number[to] if action is Reduce else to
                for symbol, (action, to) in actions.items()
            }
            for state, actions in table.states.items()
        },
        {str(start): state for start, state in table.start_states.items()},
        {str(start): state for start, state in table.end_states.items()},
    )


def write(name: str, key: str, tables: Tables) -> None:
    """Keep the tables of a parser."""
    store.write(name, key, tuple(tables))


def read(name: str, key: str) -> Tables | None:
    """The tables that are kept under a name; None where none are."""
    kept = store.read(name, key)
    try:
        return None if kept is None else Tables(*kept)
    except TypeError:  # not the tables of this program
        return None


def _terminal_row(terminal: TerminalDef) -> list[Any]:
    pattern = terminal.pattern
    width = [pattern.min_width, pattern.max_width]
    flags = sorted(pattern.flags)
    return [str(terminal.name), terminal.priority, pattern.type, pattern.value, flags, width]


def _rule_row(rule: Rule) -> list[Any]:
    symbols = [
        [str(one.name), isinstance(one, Terminal) and [one.filter_out]] for one in rule.expansion
    ]
    alias, source = (
        None if one is None else str(one) for one in (rule.alias, rule.options.template_source)
    )
    options = {key: getattr(rule.options, key) for key in _OPTIONS}
    options["template_source"] = source
    return [str(rule.origin.name), rule.order, alias, symbols, options]


def _terminal(
    name: str, priority: int, kind: str, value: str, flags: list[str], width: list[int]
) -> TerminalDef:
    if kind == PatternStr.type:
        return TerminalDef(name, PatternStr(value, flags), priority)
    pattern = PatternRE(value, flags)
    pattern._width = width  # else worked out anew, by parsing the pattern
    return TerminalDef(name, pattern, priority)


def _rule(
    name: str, order: int, alias: str | None, symbols: list[Any], options: dict[str, Any]
) -> Rule:
    expansion = [
        Terminal(symbol, *terminal) if terminal else NonTerminal(symbol)
        for symbol, terminal in symbols
    ]
    return Rule(NonTerminal(name), expansion, order, alias, RuleOptions(**options))
