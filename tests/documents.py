"""The two documents: their code blocks run, and the tables in them that are made from the code.

`python -m tests.documents` writes the real outputs and tables into both; the tests compare.  Kinds
of block: `console` (a command line and what it prints), `pycon` (a Python session, one for the
whole document), `sh` (the set-up of the README), and a language with a file name: a part of it.
"""

from __future__ import annotations

import contextlib
import doctest
import inspect
import io
import os
import re
import subprocess
import sys
import tempfile
import traceback
from collections.abc import Callable, Iterable, Iterator
from pathlib import Path
from typing import Any, NamedTuple

import noticeparse
from noticeparse.catalogue import ENTRIES
from noticeparse.writers.columns import COLUMNS
from tests.corpus_files import ROOT
from tests.test_layers import LAYERS, MODULES, tree_of

README = ROOT / "README.md"
DEVELOPERS = ROOT / "DEVELOPERS.md"
DOCUMENTS = (README, DEVELOPERS)

_BLOCK = re.compile(r"^( *)```(\S*)(?: (\S+))?\n(.*?)^\1```$", re.MULTILINE | re.DOTALL)
_TABLE = re.compile(r"(?<=<!-- table: )(\w+)( -->\n)(.*?)(?=<!-- end -->)", re.DOTALL)
_COMMAND = re.compile(r"^\$ .*\n(?:> .*\n)*", re.MULTILINE)


class Block(NamedTuple):
    """A code block, its text without the indentation it stands in."""

    language: str
    file: str | None
    text: str
    line: int
    """1-based line of its fence."""


def blocks_of(text: str) -> Iterator[Block]:
    """The code blocks of a document, in order."""
    for match in _BLOCK.finditer(text):
        body = re.sub(f"^{match[1]}", "", match[4], flags=re.MULTILINE)
        yield Block(match[2], match[3], body, text.count("\n", 0, match.start()) + 1)


def run_console(text: str) -> str:
    """The block as a terminal would show it: each command, and what it prints on both streams."""
    shown = []
    for command in _COMMAND.findall(text):
        lines = command.splitlines()
        typed = "\n".join([lines[0][2:], *(line[2:] for line in lines[1:])])
        shown += [command, run_command(typed)]
    return "".join(shown)


def run_command(command: str) -> str:
    """What a shell command prints in the checkout, with `python` and `noticeparse` of this run."""
    with tempfile.TemporaryDirectory() as folder:
        for name, words in (("python", ""), ("noticeparse", " -m noticeparse")):
            script = Path(folder, name)
            script.write_text(f'#!/bin/sh\nexec "{sys.executable}"{words} "$@"\n', "utf-8")
            script.chmod(0o755)
        path = os.pathsep.join([folder, os.environ.get("PATH", os.defpath)])
        ran = subprocess.run(
            ["bash", "-c", command],
            cwd=ROOT,
            env={**os.environ, "PATH": path, "LC_ALL": "C.UTF-8", "NO_COLOR": "1"},
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            check=False,
            timeout=120,
        )
    return ran.stdout.decode("utf-8")


def run_session(text: str, names: dict[str, Any]) -> str:
    """The block as Python would show it; `names` are kept from block to block."""
    shown = []
    for example in doctest.DocTestParser().get_examples(text):
        first, *more = example.source.splitlines()
        shown += [f">>> {first}", *(f"... {line}".rstrip() for line in more)]
        shown += _printed(example.source, names).splitlines()
    return "\n".join(shown) + "\n"


def _printed(source: str, names: dict[str, Any]) -> str:
    printed = io.StringIO()
    with contextlib.redirect_stdout(printed), contextlib.chdir(ROOT):
        try:
            exec(compile(source, "<document>", "single"), names)
        except Exception as error:
            last = traceback.format_exception_only(error)[-1]
            print(f"Traceback (most recent call last):\n    ...\n{last}", end="")
    return printed.getvalue()


def codes_table() -> str:
    """Every finding code: how grave it is, what is said, and why it matters."""
    rows = [
        (f"`{entry.code}`", entry.severity, _plain(entry.message), entry.meaning)
        for _, entry in sorted(ENTRIES.items())
    ]
    return _table(("code", "severity", "message", "why it matters"), rows)


def columns_table() -> str:
    """The columns that the table and the map layer share."""
    return _table(("column", "meaning"), [(f"`{name}`", words) for name, words in COLUMNS.items()])


def layers_table() -> str:
    """The layers from the ground up: modules and packages, each with the first line it says."""
    rows = [
        (str(number), f"`{name or '__init__'}`", _first_line(name))
        for number, layer in enumerate(LAYERS)
        for name in layer
        if name in MODULES
    ]
    return _table(("layer", "module", "what it is"), rows)


def api_table() -> str:
    """The functions of the front door: how they are called, what they do, what they raise."""
    rows = []
    for name in noticeparse.__all__:
        function = getattr(noticeparse, name)
        if not inspect.isfunction(function):
            continue
        signature = inspect.signature(function)
        given = ", ".join(
            f"{one.name}=…" if one.default is not one.empty else one.name
            for one in signature.parameters.values()
        )
        words = " ".join(inspect.getdoc(function).split())  # type: ignore[union-attr]
        first = words.partition(". ")[0]
        told = "; ".join(re.findall(r"(?:Never raises|[Rr]aises [A-Z])[^.;]*", words))
        gives = signature.return_annotation
        rows.append((f"`{name}({given})`", f"`{gives}`", first.rstrip("."), told))
    return _table(("call", "gives", "what it does", "raises"), rows)


def _first_line(name: str) -> str:
    body = tree_of(name).body[0]
    docstring = body.value.value  # type: ignore[attr-defined]
    return str(docstring).partition("\n")[0]


def _plain(message: str) -> str:
    return re.sub(r"\{([a-z_]+)\}", r"‹\1›", message).replace("`", "").replace("|", "\\|")


def _table(head: tuple[str, ...], rows: Iterable[tuple[str, ...]]) -> str:
    lines = [head, tuple("---" for _ in head), *rows]
    return "".join(f"| {' | '.join(line)} |\n" for line in lines)


TABLES: dict[str, Callable[[], str]] = {
    "api": api_table,
    "codes": codes_table,
    "columns": columns_table,
    "layers": layers_table,
}


def tables_of(text: str) -> Iterator[tuple[str, str]]:
    """Name and text of each generated table of a document."""
    for match in _TABLE.finditer(text):
        yield match[1], match[3]


def refreshed(text: str) -> str:
    """The document with the real outputs of its blocks and the tables as the code has them."""
    names: dict[str, Any] = {}

    def block(match: re.Match[str]) -> str:
        indent, language, body = match[1], match[2], match[4]
        body = re.sub(f"^{indent}", "", body, flags=re.MULTILINE)
        if language == "console":
            body = run_console(body)
        elif language == "pycon":
            body = run_session(body, names)
        else:
            return match[0]
        body = re.sub(r"^(?=.)", indent, body, flags=re.MULTILINE)
        return f"{indent}```{language}\n{body}{indent}```"

    text = _TABLE.sub(lambda match: match[1] + match[2] + TABLES[match[1]](), text)
    return _BLOCK.sub(block, text)


def main() -> None:
    """Refresh both documents in place."""
    for path in DOCUMENTS:
        path.write_text(refreshed(path.read_text("utf-8")), "utf-8")


if __name__ == "__main__":
    main()
