"""Compiled patterns that are kept between runs are those that would be compiled anew."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from noticeparse import grammar, patterns, store
from noticeparse.grammar.scanner import joined
from noticeparse.version import VERSION


@pytest.mark.parametrize(
    "file", sorted(path.name.removesuffix(".lark") for path in grammar.folder().iterdir())
)
def test_kept_patterns_are_those_that_are_compiled(file: str, cache_folder: Path) -> None:
    start = re.findall(r"(?m)^([a-z][a-z_]*) ?:", grammar.source(file))[0]
    pattern = joined(grammar.build(file, start).tables.terminal_definitions())
    made = patterns.compiled(pattern, "name")
    assert (cache_folder / "name").is_file()
    kept = patterns.read("name", pattern)
    assert kept is not None
    # Equal patterns have the same code; names of groups are compared beside.
    assert (kept, kept.groupindex, kept.flags) == (made, made.groupindex, made.flags)
    assert made == re.compile(pattern)


def test_pattern_of_another_python_is_compiled(cache_folder: Path) -> None:
    key = patterns._key("[0-9]+")
    for kept in ((), "no row", ("a", 0, 0, {}, b"\x01\x02\x03\x04")):
        store.write("name", key, kept)
        assert patterns.compiled("[0-9]+", "name") == re.compile("[0-9]+")


def compile_as_a_module(name: str) -> None:
    """Compile a pattern as a module that is imported in a run of its own."""
    re.purge()
    with patterns.kept_together("name"):
        re.compile(name, re.IGNORECASE)


def test_patterns_of_modules_are_kept_together(cache_folder: Path) -> None:
    compile_as_a_module("depths?")
    compile_as_a_module("heights?")
    re.purge()
    with patterns.kept_together("name"):
        kept = dict(patterns._read_all("name"))
    assert [key[1] for key in kept] == ["depths?", "heights?"]
    for (_, pattern, flags), made in kept.items():
        re.purge()
        assert made == re.compile(pattern, flags)


def test_more_patterns_than_python_keeps_are_kept_in_one_run(cache_folder: Path) -> None:
    most = vars(re)["_MAXCACHE"]
    pieces = [f"piece{number}" for number in range(most + 10)]
    re.purge()
    with patterns.kept_together("name"):
        for piece in pieces:
            re.compile(piece)
    re.purge()
    with patterns.kept_together("name"):
        known = {key[1] for key in vars(re)["_cache"]}
    assert known.issuperset(pieces)
    assert vars(re)["_MAXCACHE"] == most


def test_patterns_of_others_are_not_kept(cache_folder: Path) -> None:
    re.purge()
    re.compile("soundings?")
    with patterns.kept_together("name"):
        pass
    assert not cache_folder.exists()


def test_damaged_patterns_of_modules_are_compiled(cache_folder: Path) -> None:
    for kept in (1, "no rows", [(0, ("a", 0, 0, {}, b"\x01\x02\x03\x04"))]):
        store.write("name", patterns._key(VERSION), kept)
        compile_as_a_module("depths?")
        assert [key[1] for key in patterns._read_all("name")] == ["depths?"]


def test_where_nothing_is_kept_patterns_are_compiled(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv(store.VARIABLE, "off")
    compile_as_a_module("depths?")
    assert patterns._read_all("name") == {}
