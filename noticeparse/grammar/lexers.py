"""Gives Lark's parsers their tokens, from patterns that need not be compiled in every run.

The same terminals in the same order as Lark's own lexers.  The tokens know their offsets and no
lines; an error tells its place and not what was expected there; a terminal that is a literal is
never told apart from a pattern that fits it as well, which no grammar here asks for.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Set
from typing import Any

from lark import Token
from lark.common import LexerConf
from lark.exceptions import GrammarError, UnexpectedCharacters
from lark.lexer import Lexer, LexerState, TerminalDef

from noticeparse import patterns
from noticeparse.grammar.scanner import joined


def check(terminals: Iterable[TerminalDef]) -> None:
    """Look for terminals over which these lexers would not get on.

    Raises lark.exceptions.GrammarError.
    """
    for terminal in terminals:
        if terminal.pattern.min_width == 0:
            raise GrammarError(f"{terminal.name} may match nothing")


def _token(kind: str, words: str, start: int, end: int) -> Token:
    """A token of Lark, made without its many arguments."""
    token = str.__new__(Token, words)
    token.type, token.value, token.start_pos, token.end_pos = kind, words, start, end
    token.line = token.column = None
    return token


def _unexpected(text: str, at: int) -> UnexpectedCharacters:
    line, column = text.count("\n", 0, at) + 1, at - text.rfind("\n", 0, at)
    return UnexpectedCharacters(text, at, line, column)


class BasicLexer(Lexer):
    """Any terminal may stand anywhere."""

    # Lark's own name: `lex` is given the state of lexer and parser, as the lexers of Lark are.
    __future_interface__ = 2

    def __init__(self, conf: LexerConf) -> None:
        self._terminals = conf.terminals_by_name
        self._ignored = frozenset(conf.ignore)
        self._patterns: dict[int, re.Pattern[str]] = {}
        self._place: tuple[str, str] | None = None

    def keep(self, name: str, key: str) -> None:
        """Keep the patterns between runs, under names that begin with this, for this key."""
        self._place = name, key

    def lex(self, lexer_state: LexerState, parser_state: Any) -> Iterator[Token]:
        """The tokens of a text, as Lark asks for them."""
        part = lexer_state.text
        return self.tokens(part.text, part.start, part.end, parser_state)

    def tokens(self, text: str, at: int, end: int, parser_state: Any) -> Iterator[Token]:
        """The tokens between two offsets; each time the parser is in another state.

        Raises lark.exceptions.UnexpectedCharacters where no terminal fits.
        """
        ignored = self._ignored
        while at < end:
            pattern = self._patterns.get(parser_state.position) or self._pattern(parser_state)
            match = pattern.match(text, at, end)
            if match is None or match.lastgroup is None:
                raise _unexpected(text, at)
            start, at = at, match.end()
            if match.lastgroup not in ignored:
                yield _token(match.lastgroup, match.group(), start, at)

    def _pattern(self, parser_state: Any) -> re.Pattern[str]:
        """The pattern for the present state of the parser, and from now on for all alike."""
        states: dict[int, dict[str, int]] = parser_state.states
        allowed = self._allowed(states[parser_state.position])
        alike = [number for number, actions in states.items() if self._allowed(actions) == allowed]
        pattern = self._compiled(allowed, min(alike))
        self._patterns.update(dict.fromkeys(alike, pattern))
        return pattern

    def _compiled(self, allowed: Set[str], state: int) -> re.Pattern[str]:
        terminals = [self._terminals[name] for name in sorted(allowed)]
        if self._place is None:
            return re.compile(joined(terminals))
        # The number of a state is not the same in every table of one grammar: the terminals tell.
        name = f"{self._place[0]}.{state}.pattern"
        key = " ".join([self._place[1], *(one.name for one in terminals)])
        pattern = patterns.read(name, key)
        if pattern is None:
            pattern = re.compile(joined(terminals))
            patterns.write(name, key, pattern)
        return pattern

    def _allowed(self, actions: dict[str, int]) -> Set[str]:
        del actions
        return self._terminals.keys()


class ContextualLexer(BasicLexer):
    """Only terminals that the grammar allows in its present state are looked for."""

    def _allowed(self, actions: dict[str, int]) -> Set[str]:
        return {name for name in (*actions, *self._ignored) if name in self._terminals}
