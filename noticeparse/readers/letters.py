"""Letters of a reference: `(a)-(d) above` names a, b, c and d."""

from __future__ import annotations

from functools import cache, lru_cache
from typing import Any

from lark import Lark, Token, Transformer, v_args
from lark.exceptions import LarkError

from noticeparse import grammar


@v_args(inline=True)
class _Callbacks(Transformer[Token, Any]):
    def run(self, first: Token, last: Token | None = None) -> list[str]:
        if last is None or len(first) != 1 or len(last) != 1:
            return [str(first)] if last is None else [str(first), str(last)]
        return [chr(code) for code in range(ord(first), ord(last) + 1)]

    def nested(self, token: Token) -> list[str]:
        return [token[0] + "." + token.rpartition("(")[2]]

    def letters(self, *runs: list[str]) -> tuple[str, ...]:
        return tuple(letter for run in runs for letter in run)


@cache
def _parser() -> Lark:
    return grammar.build("letters", "letters", callbacks=_Callbacks())


@lru_cache(maxsize=1024)
def read_letters(text: str) -> tuple[str, ...]:
    """The letters that a reference names, in order; none where it cannot be read.

    A number under a letter, `(b)(iii)`, is given as `b.iii`.
    """
    try:
        letters: tuple[str, ...] = grammar.parsed(_parser(), text)
    except LarkError:
        return ()
    return letters
