"""Parses by the tables that Lark has built, for the many short phrases of a notice.

The same steps and callbacks as Lark's own LALR parser, whose preparations for a text and look-ups
of rules take longer than the steps where a text is a few words.  Nothing is made of a rule before
a text has it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, NamedTuple

from lark import Token, Tree
from lark.exceptions import UnexpectedToken
from lark.parse_tree_builder import ParseTreeBuilder

from noticeparse.grammar.lexers import BasicLexer
from noticeparse.grammar.tables import Tables

_END = "$END"


def _unexpected(token: Token) -> UnexpectedToken:
    return UnexpectedToken(token, set())


class _Inlined:
    """The methods of callbacks as Lark asks for them; what a rule is made of are the arguments."""

    def __init__(self, callbacks: object) -> None:
        self._callbacks = callbacks

    def __getattr__(self, name: str) -> Callable[[list[Any]], Any]:
        """The method for a rule; Lark makes a tree of a rule that has none."""
        if name.startswith("_"):
            raise AttributeError(name)  # no rule, or one that is no part of the tree
        method = getattr(self._callbacks, name)
        return lambda parts: method(*parts)


class _Reduce(NamedTuple):
    """The last values become one."""

    size: int
    origin: str
    callback: Callable[[list[Any]], Any]


class _Position:
    """What the lexer is told of the parser: the state it is in, and its states."""

    __slots__ = ("position", "states")

    def __init__(self, states: dict[int, dict[str, int]], position: int) -> None:
        self.states = states
        self.position = position


class PhraseParser:
    """Calls the callbacks rule by rule; keeps no state of a text, so serves threads."""

    def __init__(
        self,
        tables: Tables,
        lexer: BasicLexer,
        callbacks: object | None,
        starts: Sequence[str],
    ) -> None:
        self.tables = tables
        self.lexer = lexer
        self._callbacks = None if callbacks is None else _Inlined(callbacks)
        self._only_start = starts[0] if len(starts) == 1 else None
        self._reduces: list[_Reduce | None] = [None] * len(tables.rules)

    def parse(self, text: str, start: str | None = None) -> Any:
        """What the callbacks make of a text, or the tree of Lark where there are none.

        Raises lark.exceptions.UnexpectedInput where the text does not fit the grammar.
        """
        start = start or self._only_start or ""
        states, ends = self.tables.states, self.tables.ends
        stack: list[int] = [self.tables.starts[start]]
        values: list[Any] = []
        position = _Position(states, stack[0])
        for token in self.lexer.tokens(text, 0, len(text), position):
            position.position = self._shift(token, stack, values)
        return self._finish(Token(_END, "", len(text)), stack, values, ends[start])

    def _shift(self, token: Token, stack: list[int], values: list[Any]) -> int:
        """The state behind a token, all rules that it completes being applied."""
        kind, states = token.type, self.tables.states
        step = states[stack[-1]].get(kind)
        while step is not None and step < 0:
            self._reduce(~step, stack, values)
            step = states[stack[-1]].get(kind)
        if step is None:
            raise _unexpected(token)
        stack.append(step)
        values.append(token)
        return step

    def _finish(self, token: Token, stack: list[int], values: list[Any], end: int) -> Any:
        while stack[-1] != end:
            step = self.tables.states[stack[-1]].get(_END)
            if step is None or step >= 0:
                raise _unexpected(token)
            self._reduce(~step, stack, values)
        return values[-1]

    def _reduce(self, row: int, stack: list[int], values: list[Any]) -> None:
        size, origin, callback = self._reduces[row] or self._reduce_of(row)
        parts: list[Any] = []
        if size:
            parts = values[-size:]
            del stack[-size:], values[-size:]
        values.append(callback(parts))
        stack.append(self.tables.states[stack[-1]][origin])

    def _reduce_of(self, row: int) -> _Reduce:
        """What a rule does, worked out where it is first needed."""
        rule = self.tables.rule(row)
        callback = ParseTreeBuilder([rule], Tree).create_callback(self._callbacks)[rule]
        made = self._reduces[row] = _Reduce(len(rule.expansion), rule.origin.name, callback)
        return made
