"""Parses by the tables that Lark has built, for the many short phrases of a notice.

The same steps and callbacks as Lark's own LALR parser, whose preparations for a text and look-ups
of rules take longer than the steps where a text is a few words.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, NamedTuple

from lark import Lark, Token, Transformer
from lark.exceptions import UnexpectedToken
from lark.parsers.lalr_analysis import Shift

from noticeparse.grammar.lexers import BasicLexer

_END = "$END"


def _unexpected(token: Token) -> UnexpectedToken:
    return UnexpectedToken(token, set())


class Inlined:
    """The methods of callbacks for Lark, without the three functions that it wraps each in.

    All callbacks have the mark `v_args(inline=True)`: what a rule is made of are their arguments.
    """

    def __init__(self, callbacks: Transformer[Any, Any]) -> None:
        self._callbacks = callbacks

    def __getattr__(self, name: str) -> Callable[[list[Any]], Any]:
        """The method for a rule; Lark makes a tree of a rule that has none."""
        method = getattr(self._callbacks, name).base_func
        return lambda parts: method(*parts)


class _Reduce(NamedTuple):
    """The last values become one."""

    size: int
    origin: str
    callback: Callable[[list[Any]], Any]


class _Position:
    """What the lexer is told of the parser: the state it is in, and its tables."""

    __slots__ = ("parse_conf", "position")

    def __init__(self, tables: Any, position: int) -> None:
        self.parse_conf = tables
        self.position = position


class PhraseParser:
    """Takes the place of the parser within a Lark; keeps no state of a text, so serves threads."""

    def __init__(self, lark: Lark) -> None:
        front: Any = lark.parser
        self.lexer: BasicLexer = front.lexer
        self.parser = front.parser
        self._tables = front.parser._parse_table
        self._only_start = lark.options.start[0] if len(lark.options.start) == 1 else None
        callbacks: dict[Any, Any] = lark._callbacks
        reduces = {
            rule: _Reduce(len(rule.expansion), rule.origin.name, callbacks[rule])
            for rule in lark.rules
        }
        origins = {rule.origin.name for rule in lark.rules}
        self._states: dict[int, dict[str, int | _Reduce]] = {
            state: {
                symbol: to if action is Shift else reduces[to]
                for symbol, (action, to) in actions.items()
            }
            for state, actions in self._tables.states.items()
        }
        """By state and symbol: the state that a token leads to, or the rule that it completes."""
        self._behind: dict[int, dict[str, int]] = {
            state: {origin: actions[origin][1] for origin in actions.keys() & origins}
            for state, actions in self._tables.states.items()
        }
        """By state and rule: the state that a completed rule leads to."""

    def parse(self, text: str, start: str | None = None, on_error: None = None) -> Any:
        """What the callbacks make of a text; Lark calls this.

        Raises lark.exceptions.UnexpectedInput where the text does not fit the grammar.
        """
        del on_error
        start = start or self._only_start
        stack: list[int] = [self._tables.start_states[start]]
        values: list[Any] = []
        position = _Position(self._tables, stack[0])
        for token in self.lexer.tokens(text, 0, len(text), position):
            position.position = self._shift(token, stack, values)
        end = self._tables.end_states[start]
        return self._finish(Token(_END, "", len(text)), stack, values, end)

    def _shift(self, token: Token, stack: list[int], values: list[Any]) -> int:
        """The state behind a token, all rules that it completes being applied."""
        kind = token.type
        step = self._states[stack[-1]].get(kind)
        while isinstance(step, _Reduce):
            self._reduce(step, stack, values)
            step = self._states[stack[-1]].get(kind)
        if step is None:
            raise _unexpected(token)
        stack.append(step)
        values.append(token)
        return step

    def _finish(self, token: Token, stack: list[int], values: list[Any], end: int) -> Any:
        while stack[-1] != end:
            step = self._states[stack[-1]].get(_END)
            if not isinstance(step, _Reduce):
                raise _unexpected(token)
            self._reduce(step, stack, values)
        return values[-1]

    def _reduce(self, rule: _Reduce, stack: list[int], values: list[Any]) -> None:
        size, origin, callback = rule
        parts: list[Any] = []
        if size:
            parts = values[-size:]
            del stack[-size:], values[-size:]
        values.append(callback(parts))
        stack.append(self._behind[stack[-1]][origin])
