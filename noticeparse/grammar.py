"""Finds the grammar files and builds their parsers, once each.

`grammars/` stands beside the package in a checkout or an editable install, and inside the package
when installed from a wheel.  Callbacks run at parse time and keep no state, so one parser may serve
several threads.
"""

from __future__ import annotations

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
    """The text of grammar file `name` (without its ending)."""
    return (folder() / f"{name}.lark").read_text("utf-8")


def from_folder(base: Any, path: str) -> tuple[str, str]:
    """Lark import hook: grammar files are found by name in the one folder."""
    return path, (folder() / path).read_text("utf-8")


def build(
    name: str,
    start: str | tuple[str, ...] = "start",
    *,
    callbacks: Transformer[Any, Any] | None = None,
    **options: Any,
) -> Lark:
    """An LALR parser for grammar file `name`; `callbacks` are called rule by rule while parsing."""
    return Lark(
        source(name),
        parser="lalr",
        start=list(start) if isinstance(start, tuple) else start,
        transformer=callbacks,
        import_paths=[from_folder],
        maybe_placeholders=False,
        **options,
    )
