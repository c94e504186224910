"""Finds the grammar files and builds their parsers, once each.

`grammars/` stands beside the package in a checkout or an editable install, and inside the package
when installed from a wheel.  Callbacks run at parse time and keep no state, so one parser may
serve several threads.  What is worked out from the files is kept for the next run, see `store`.
"""

from __future__ import annotations

import hashlib
import re
import sys
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

from lark import Lark
from lark import __version__ as lark_version
from lark.common import LexerConf

from noticeparse import store
from noticeparse.grammar import tables
from noticeparse.grammar.lexers import BasicLexer, ContextualLexer, check
from noticeparse.grammar.parsing import PhraseParser
from noticeparse.grammar.scanner import Scanner, divided
from noticeparse.version import VERSION

if TYPE_CHECKING:
    from importlib.resources.abc import Traversable

__all__ = ["PhraseParser", "Scanner", "build", "folder", "from_folder", "scanner", "source"]

_MAIN = "position.lark"


@cache
def folder() -> Traversable:
    """The folder that holds the `.lark` files.

    Raises FileNotFoundError where neither the installed package nor the checkout has it.
    """
    # An editable install leaves a stale copy of the folder in site-packages; `files()` points to
    # the checkout there, so the sibling folder of a checkout is looked at first.
    checkout = Path(__file__).resolve().parents[2]
    if (checkout / "pyproject.toml").is_file() and (checkout / "grammars" / _MAIN).is_file():
        return checkout / "grammars"
    from importlib.resources import files  # not needed in a checkout, and slow to import

    packaged = files("noticeparse") / "grammars"
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


def _found(name: str) -> dict[str, Any]:
    """Where Lark looks for what a grammar file imports: never beside the script that runs."""
    # Without a path Lark asks after that script, which a worker process or a shell may not have.
    return {"source_path": f"{name}.lark", "import_paths": [from_folder]}


def build(
    name: str,
    start: str | tuple[str, ...] = "start",
    *,
    callbacks: object | None = None,
    lexer: str = "contextual",
) -> PhraseParser:
    """An LALR parser for grammar file `name`; `callbacks` are called rule by rule while parsing.

    A method of `callbacks` is called with what the rule of its name, or of its alias, is made of.

    Raises FileNotFoundError, and lark.exceptions.GrammarError where the file is no grammar.
    """
    starts = list(start) if isinstance(start, tuple) else [start]
    kind = BasicLexer if lexer == "basic" else ContextualLexer
    place = ".".join([name, *starts, lexer])
    table = tables.read(place, _key())
    if table is None:
        options: dict[str, Any] = {"lexer": kind, "start": starts, "maybe_placeholders": False}
        lark = Lark(source(name), parser="lalr", **options, **_found(name))
        check(lark.terminals)
        table = tables.of(lark)
        tables.write(place, _key(), table)
    own = kind(LexerConf(table.terminal_definitions(), re, table.ignored))
    own.keep(place, _key())
    return PhraseParser(table, own, callbacks, starts)


def scanner(name: str, start: str = "start", *, without: tuple[str, ...] = ()) -> Scanner:
    """A scanner over the terminals of grammar file `name`, for a rule that is a flat list of them.

    Terminals `without` which a text is known to be are not looked for.

    Raises FileNotFoundError, and lark.exceptions.GrammarError where the file is no grammar.
    """
    place = ".".join([name, start, *(f"no-{one}" for one in without), "scanner"])
    kept = store.read(place, _key())
    if kept is not None:
        tokens, ignored = kept
    else:
        lark = Lark(source(name), parser=None, lexer="basic", start=start, **_found(name))
        # Terminals that only make up others are no tokens; a lexer alone would keep them.
        named = {symbol.name for rule in lark.rules for symbol in rule.expansion}
        named = named.union(lark.ignore_tokens).difference(without)
        own = [t for t in lark.terminals if t.name in named]
        tokens, ignored = divided(own, lark.ignore_tokens)
        store.write(place, _key(), (tokens, ignored))
    return Scanner(tokens, ignored, place)


@cache
def _key() -> str:
    """What the tables that are kept depend on: the grammar files, and all that reads them."""
    digest = hashlib.blake2b(f"{VERSION}\n{lark_version}\n{sys.version}\n".encode())
    for path in sorted(folder().iterdir(), key=lambda path: path.name):
        text = path.read_bytes()
        digest.update(f"{path.name}\n{len(text)}\n".encode())
        digest.update(text)
    return digest.hexdigest()
