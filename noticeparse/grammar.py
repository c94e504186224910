"""Finds the grammar files and builds their parsers, once each.

`grammars/` stands beside the package in a checkout or an editable install, and inside the package
when installed from a wheel.  Callbacks run at parse time and keep no state, so one parser may
serve several threads.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache
from importlib.resources import files
from importlib.resources.abc import Traversable
from pathlib import Path
from typing import Any

from lark import Lark, Transformer

_MAIN = "position.lark"


@cache
def folder() -> Traversable:
    """The folder that holds the `.lark` files.

    Raises FileNotFoundError where neither the installed package nor the checkout has it.
    """
    # An editable install leaves a stale copy of the folder in site-packages; `files()` points to
    # the checkout there, so the sibling folder of a checkout is looked at first.
    checkout = Path(__file__).resolve().parents[1]
    if (checkout / "pyproject.toml").is_file() and (checkout / "grammars" / _MAIN).is_file():
        return checkout / "grammars"
    packaged = files(__package__) / "grammars"
    if (packaged / _MAIN).is_file():
        return packaged
    raise FileNotFoundError("the grammar files of noticeparse are missing: install it again")


def source(name: str) -> str:
    """The text of grammar file `name` (without its ending).

    Raises FileNotFoundError.
    """
    return (folder() / f"{name}.lark").read_text("utf-8")


def from_folder(base: Any, path: str) -> tuple[str, str]:
    """Lark import hook: grammar files are found by name in the one folder.

    Raises FileNotFoundError.
    """
    return path, (folder() / path).read_text("utf-8")


def build(
    name: str,
    start: str | tuple[str, ...] = "start",
    *,
    callbacks: Transformer[Any, Any] | None = None,
    **options: Any,
) -> Lark:
    """An LALR parser for grammar file `name`; `callbacks` are called rule by rule while parsing.

    Raises FileNotFoundError, and lark.exceptions.GrammarError where the file is no grammar.
    """
    return Lark(
        source(name),
        parser="lalr",
        start=list(start) if isinstance(start, tuple) else start,
        transformer=callbacks,
        import_paths=[from_folder],
        maybe_placeholders=False,
        **options,
    )


def parsed(lark: Lark, text: str) -> Any:
    """What the callbacks of a parser make of a text; Lark's own types know only trees.

    Raises lark.exceptions.LarkError where the text does not fit the grammar.
    """
    return lark.parse(text)


class Scanner:
    """The terminals of a grammar file as one pattern, tried in the order in which Lark tries them.

    Gives plain tuples instead of token objects, over any stretch of a text without copying it; for
    texts that are lexed and not parsed this takes half the time of Lark's own lexer.
    """

    def __init__(self, lark: Lark) -> None:
        # Terminals that only make up others are no tokens; a lexer alone would keep them.
        named = {symbol.name for rule in lark.rules for symbol in rule.expansion}
        terminals = sorted(
            (t for t in lark.terminals if t.name in named or t.name in lark.ignore_tokens),
            key=lambda t: (-t.priority, -t.pattern.max_width, -len(t.pattern.value), t.name),
        )
        ignored = [t for t in terminals if t.name in lark.ignore_tokens]
        # Without %ignore a pattern that matches nothing, not the empty one, which never gets on.
        self._blank = re.compile("|".join(t.pattern.to_regexp() for t in ignored) or r"(?!)")
        self._pattern = re.compile(
            "|".join(
                f"(?P<{t.name}>{t.pattern.to_regexp()})"
                for t in terminals
                if t.name not in lark.ignore_tokens
            )
        )

    def scan(self, text: str, start: int, end: int) -> Iterator[tuple[str, int, int]]:
        """Terminal name, start and end of every token between two offsets of a text.

        What the grammar ignores is passed over; it has a terminal for any other character.

        Raises ValueError where it has not.
        """
        token_at, blank_at = self._pattern.match, self._blank.match
        at = start
        while at < end:
            if text[at] <= " ":
                blank = blank_at(text, at, end)
                if blank is not None:
                    at = blank.end()
                    continue
            match = token_at(text, at, end)
            if match is None:
                raise ValueError(f"no terminal for the character at offset {at}")
            yield match.lastgroup, at, match.end()  # type: ignore[misc]
            at = match.end()


def scanner(name: str, start: str = "start") -> Scanner:
    """A scanner over the terminals of grammar file `name`, for a rule that is a flat list of them.

    Raises FileNotFoundError, and lark.exceptions.GrammarError where the file is no grammar.
    """
    return Scanner(
        Lark(source(name), parser=None, lexer="basic", start=start, import_paths=[from_folder])
    )
