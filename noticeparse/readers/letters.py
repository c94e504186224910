"""Letters and numbers of a reference: `(a)-(d) above` names a, b, c and d."""

from __future__ import annotations

from functools import cache, lru_cache

from lark import Token
from lark.exceptions import LarkError

from noticeparse import grammar
from noticeparse.numbers import ROMAN


class _Callbacks:
    def run(self, first: Token, last: Token | None = None) -> list[str]:
        return [str(first)] if last is None else _counted(str(first), str(last))

    def nested(self, token: Token) -> list[str]:
        return [token[0] + "." + token.rpartition("(")[2]]

    def letters(self, *runs: list[str]) -> tuple[str, ...]:
        return tuple(letter for run in runs for letter in run)


def _counted(first: str, last: str) -> list[str]:
    """The letters from first to last; `c-a` for a run that nobody can count."""
    if first.isdigit() and last.isdigit() and int(first) <= int(last):
        return [str(number) for number in range(int(first), int(last) + 1)]
    if (roman := _roman(first, last)) is not None:
        return roman
    # `(aa)-(ac)` counts its last letter; `(aa)-(cc)` may leave out `ab` or not.
    is_run = first[:-1] == last[:-1] and first[-1] <= last[-1]
    if len(first) != len(last) or not is_run or first.islower() != last.islower():
        return [f"{first}-{last}"]
    return [first[:-1] + chr(code) for code in range(ord(first[-1]), ord(last[-1]) + 1)]


def _roman(first: str, last: str) -> list[str] | None:
    """The Roman numbers from first to last: from `(i)` on, or where one has two signs or more.

    In a list of letters no item is `(ii)`, so that `(i)-(v)` is reported there.
    """
    is_counted = first == "i" or len(first) > 1 or len(last) > 1
    if not (is_counted and first in ROMAN and last in ROMAN):
        return None
    start, end = ROMAN.index(first), ROMAN.index(last)
    return ROMAN[start : end + 1] if start < end else None


@cache
def _parser() -> grammar.PhraseParser:
    return grammar.build("letters", "letters", callbacks=_Callbacks())


@lru_cache(maxsize=1024)
def read_letters(text: str) -> tuple[str, ...]:
    """The letters that a reference names, in order.

    A number under a letter, `(b)(iii)`, is given as `b.iii`.  What cannot be read is given as it
    stands: no item has such a letter, so that the reference is reported and no position is lost.
    """
    try:
        letters: tuple[str, ...] = _parser().parse(text)
    except LarkError:
        letters = ()
    return letters or (" ".join(text.split()),)
