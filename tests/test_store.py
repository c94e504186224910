"""What is kept between runs: never needed, never trusted without looking, never in the way."""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from lark import Lark

from noticeparse import grammar, store
from tests.command import GOOD


@pytest.mark.parametrize(
    "value", [b"\x00one\ntwo\r\n", "8₆", [("one", 2, None), {3: frozenset("ab")}]]
)
def test_what_is_kept_is_found_again(value: object, cache_folder: Path) -> None:
    assert store.read("name", "key") is None
    store.write("name", "key", value)
    assert store.read("name", "key") == value
    assert [path.name for path in cache_folder.iterdir()] == ["name"]


def test_another_name_or_key_is_a_miss(cache_folder: Path) -> None:
    store.write("name", "key", b"one")
    shutil.copy(cache_folder / "name", cache_folder / "other")
    assert store.read("other", "key") is None
    assert store.read("name", "other key") is None
    store.write("name", "other key", b"two")
    assert store.read("name", "key") is None
    assert store.read("name", "other key") == b"two"


def test_another_form_is_a_miss(cache_folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    store.write("name", "key", b"one")
    monkeypatch.setattr(store, "FORM", store.FORM + 1)
    assert store.read("name", "key") is None


def test_damage_is_a_miss(cache_folder: Path) -> None:
    store.write("name", "key", b"one two three")
    whole = (cache_folder / "name").read_bytes()
    for at in range(len(whole)):
        (cache_folder / "name").write_bytes(whole[:at] + bytes([whole[at] ^ 1]) + whole[at + 1 :])
        assert store.read("name", "key") is None
        (cache_folder / "name").write_bytes(whole[:at])
        assert store.read("name", "key") is None
    (cache_folder / "name").write_bytes(whole)
    assert store.read("name", "key") == b"one two three"


@pytest.mark.skipif(os.name == "nt", reason="Windows has other permissions")
def test_what_others_may_write_is_not_read(
    cache_folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    store.write("name", "key", b"one")
    assert (cache_folder / "name").stat().st_mode & 0o777 == 0o600
    assert cache_folder.stat().st_mode & 0o777 == 0o700
    for mode in (0o620, 0o602):
        (cache_folder / "name").chmod(mode)
        assert store.read("name", "key") is None
    (cache_folder / "name").chmod(0o644)
    assert store.read("name", "key") == b"one"
    (cache_folder / "link").symlink_to(cache_folder / "name")
    assert store.read("link", "key") is None
    os.mkfifo(cache_folder / "pipe")
    assert store.read("pipe", "key") is None
    monkeypatch.setattr(store, "_user", lambda: os.geteuid() + 1)
    assert store.read("name", "key") is None


@pytest.mark.skipif(os.name == "nt", reason="Windows has other permissions")
def test_nothing_is_left_in_a_folder_of_others(cache_folder: Path) -> None:
    cache_folder.mkdir(parents=True)
    cache_folder.chmod(0o777)
    store.write("name", "key", b"one")
    assert list(cache_folder.iterdir()) == []


def test_folder_that_cannot_be_made_is_no_trouble(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "file").write_text("in the way", "utf-8")
    monkeypatch.setenv(store.VARIABLE, str(tmp_path / "file"))
    store.write("name", "key", b"one")
    assert store.read("name", "key") is None
    assert (tmp_path / "file").read_text("utf-8") == "in the way"


def test_failing_write_leaves_nothing(cache_folder: Path) -> None:
    (cache_folder / "name").mkdir(parents=True)  # a file cannot take the cache_folder of a folder
    cache_folder.chmod(0o700)
    store.write("name", "key", b"one")
    assert store.read("name", "key") is None
    assert [path.name for path in cache_folder.iterdir()] == ["name"]


@pytest.mark.parametrize("value", ["", "0", "off", "OFF", "no"])
def test_switched_off(value: str, monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv(store.VARIABLE, value)
    assert store.folder() is None
    store.write("name", "key", b"one")
    assert store.read("name", "key") is None
    assert list(tmp_path.iterdir()) == []


@pytest.mark.skipif(os.name == "nt", reason="Windows has another folder")
def test_place_where_none_is_chosen(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv(store.VARIABLE)
    monkeypatch.delenv("XDG_CACHE_HOME", raising=False)
    monkeypatch.setenv("HOME", str(tmp_path))
    tag = sys.implementation.cache_tag
    assert store.folder() == f"{tmp_path}/.cache/noticeparse/{tag}"
    monkeypatch.setenv("XDG_CACHE_HOME", "not/absolute")
    assert store.folder() == f"{tmp_path}/.cache/noticeparse/{tag}"
    monkeypatch.setenv("XDG_CACHE_HOME", "/elsewhere")
    assert store.folder() == f"/elsewhere/noticeparse/{tag}"
    monkeypatch.setenv("HOME", str(tmp_path / "missing"))
    assert store.folder() is None


@pytest.fixture
def grammars(tmp_path: Path, cache_folder: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A copy of the grammar files, which may be changed."""
    copy = tmp_path / "grammars"
    shutil.copytree(str(grammar.folder()), copy)
    monkeypatch.setattr(grammar, "folder", lambda: copy)
    grammar._key.cache_clear()
    monkeypatch.setattr(grammar, "Lark", _counting(built := []))
    monkeypatch.setattr(grammar, "_built", built, raising=False)
    return copy


def _counting(built: list[str]) -> Callable[..., Lark]:
    def make(text: str, **options: object) -> Lark:
        built.append(text)
        return Lark(text, **options)  # type: ignore[arg-type]

    return make


def ranges(text: str) -> list[str]:
    return [str(one) for one in grammar.build("value", "ranges").parse(text).children]


def scanned(text: str) -> list[tuple[str, int, int]]:
    return [*grammar.scanner("line").scan(text, 0, len(text))]


def test_tables_are_worked_out_once(grammars: Path) -> None:
    text = "Insert depth 7m 46-48.22S 125-17.41W"
    first = ranges("15/12M"), scanned(text)
    built: list[str] = grammar._built  # type: ignore[attr-defined]
    assert len(built) == 2
    assert (ranges("15/12M"), scanned(text)) == first
    assert len(built) == 2
    assert ranges("15/12M") == ["15", "/", "12", "M"]
    assert scanned(text)[0] == ("VERB", 0, 6)


def test_changed_grammar_is_read_anew(grammars: Path) -> None:
    ranges("15/12M")
    imported = grammars / "position.lark"
    imported.write_text(imported.read_text("utf-8") + "\n// changed\n", "utf-8")
    grammar._key.cache_clear()
    ranges("15/12M")
    assert len(grammar._built) == 2  # type: ignore[attr-defined]


@pytest.mark.parametrize(("file", "start"), [("light", "start"), ("depth", "reading")])
def test_kept_parser_is_the_one_that_was_built(file: str, start: str, cache_folder: Path) -> None:
    built, kept = grammar.build(file, start), grammar.build(file, start)
    assert kept is not built
    assert kept.tables == built.tables
    lark = Lark(
        grammar.source(file),
        parser="lalr",
        start=start,
        import_paths=[grammar.from_folder],
        maybe_placeholders=False,
    )
    rules = [kept.tables.rule(row) for row in range(len(lark.rules))]
    assert rules == lark.rules
    assert [vars(one.options) for one in rules] == [
        {**vars(one.options), "empty_indices": ()} for one in lark.rules
    ]
    assert [one.alias for one in rules] == [one.alias for one in lark.rules]
    terminals = [
        [(one.name, one.priority, one.pattern, one.pattern.max_width) for one in definitions]
        for definitions in (kept.tables.terminal_definitions(), lark.terminals)
    ]
    assert terminals[0] == terminals[1]


def test_tables_of_another_form_are_worked_out_anew(grammars: Path, cache_folder: Path) -> None:
    ranges("15/12M")
    store.write("value.ranges.contextual", grammar._key(), {"data": {}})
    assert ranges("15/12M") == ["15", "/", "12", "M"]
    assert len(grammar._built) == 2  # type: ignore[attr-defined]


def parsed(folder: Path | str) -> bytes:
    """What the program gives with a cache folder."""
    done = subprocess.run(
        [sys.executable, "-m", "noticeparse", "parse"],
        input=GOOD.encode(),
        env={**os.environ, store.VARIABLE: str(folder)},
        capture_output=True,
        check=True,
    )
    assert done.stderr == b""
    return done.stdout


def test_output_is_the_same_with_and_without(tmp_path: Path) -> None:
    (tmp_path / "file").touch()
    whole = parsed(tmp_path / "cache")
    kept = [path for path in (tmp_path / "cache").rglob("*") if path.is_file()]
    assert len(kept) > 20
    assert parsed(tmp_path / "cache") == whole
    for path in kept:
        path.write_bytes(path.read_bytes()[:-1])
    assert parsed(tmp_path / "cache") == whole
    assert parsed("off") == whole
    assert parsed(tmp_path / "file") == whole


def test_it_is_worked_out_in_a_process_without_a_script_too(tmp_path: Path) -> None:
    """So a worker of a service begins that was started from a shell of Python."""
    program = (
        "import sys\n"
        "text = sys.stdin.read()\n"
        "del sys.modules['__main__']\n"
        "import noticeparse\n"
        "print(len(noticeparse.parse(text).notices), end='')\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", program],
        input=GOOD.encode(),
        env={**os.environ, store.VARIABLE: str(tmp_path)},
        capture_output=True,
        check=False,
    )
    assert (done.stdout, done.stderr) == (b"1", b"")


def test_threads_may_begin_at_once(tmp_path: Path) -> None:
    program = (
        "import noticeparse, sys\n"
        "from concurrent.futures import ThreadPoolExecutor\n"
        "text = sys.stdin.read()\n"
        "with ThreadPoolExecutor(8) as pool:\n"
        "    read = [*pool.map(lambda _: noticeparse.parse(text).model_dump_json(), range(8))]\n"
        "assert len(set(read)) == 1\n"
        "sys.stdout.write(read[0])\n"
    )
    outputs = {
        subprocess.run(
            [sys.executable, "-c", program],
            input=GOOD.encode(),
            env={**os.environ, store.VARIABLE: str(tmp_path)},
            capture_output=True,
            check=True,
        ).stdout
        for _ in range(2)
    }
    assert len(outputs) == 1
    assert not [path for path in tmp_path.rglob("*") if re.search(r"\.[0-9]+-[0-9]+$", path.name)]
