"""The command line, through click's runner and as a process of its own."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

import click
import pytest

from noticeparse.caution import CAUTION
from noticeparse.cli import cli
from noticeparse.version import VERSION
from tests.command import BAD, GOOD, invoke, process

COMMANDS = ("parse", "check", "charts", "position", "light", "depth", "schema", "explain")
POSITION = "47°12'.34S., 123°45'.67W."


@pytest.fixture
def good(tmp_path: Path) -> str:
    path = tmp_path / "good.txt"
    path.write_text(GOOD, "utf-8")
    return str(path)


@pytest.fixture
def bad(tmp_path: Path) -> str:
    path = tmp_path / "bad.txt"
    path.write_text(BAD, "utf-8")
    return str(path)


class TestHelp:
    """Help and version: told with examples, and at once."""

    @pytest.mark.parametrize("command", COMMANDS)
    @pytest.mark.parametrize("option", ["-h", "--help"])
    def test_every_command_has_help_with_examples(self, command: str, option: str) -> None:
        result = invoke(command, option)
        assert result.exit_code == 0
        assert "Examples:" in result.stdout
        assert f"  noticeparse {command}" in result.stdout
        assert not result.stderr

    def test_all_commands_are_tried_here(self) -> None:
        assert sorted(cli.commands) == sorted(COMMANDS)

    def test_front_page(self) -> None:
        shown = invoke("--help").stdout
        assert "Exit status:" in shown
        assert "An aid to a qualified officer only" in shown
        assert "..." not in shown.replace("COMMAND [ARGS]...", "")

    def test_version(self) -> None:
        assert invoke("--version").stdout == f"noticeparse {VERSION}\n"

    @pytest.mark.parametrize("arguments", [["--version"], ["--help"], ["parse", "--help"]])
    def test_parser_is_not_loaded_for_it(self, arguments: Sequence[str]) -> None:
        code = (
            "import sys; from noticeparse.cli import main\n"
            f"try: main({list(arguments)!r})\n"
            "except SystemExit as e: assert e.code == 0, e.code\n"
            "heavy = {'lark', 'pydantic', 'rich', 'dateutil'} & set(sys.modules)\n"
            "assert not heavy, heavy"
        )
        ran = subprocess.run([sys.executable, "-c", code], capture_output=True, check=False)
        assert ran.returncode == 0, ran.stderr.decode()

    def test_reading_does_not_load_what_only_a_terminal_needs(self, good: str) -> None:
        code = (
            "import sys; from noticeparse.cli import main\n"
            f"try: main(['parse', {good!r}])\n"
            "except SystemExit as e: assert e.code == 0, e.code\n"
            "heavy = {'rich', 'noticeparse.schema', 'difflib'} & set(sys.modules)\n"
            "assert not heavy, heavy"
        )
        ran = subprocess.run([sys.executable, "-c", code], capture_output=True, check=False)
        assert ran.returncode == 0, ran.stderr.decode()


class TestUsage:
    """What is not understood."""

    @pytest.mark.parametrize(
        "arguments",
        [
            [],
            ["no-such-command"],
            ["parse", "--no-such-option"],
            ["parse", "--format", "no-such-format"],
            ["parse", "--format", "jsonl", "--indent"],
            ["parse", "-", "-"],
            ["position"],
            ["position", "--fromat", "json", POSITION],
            ["depth", "-x", "8m"],
            ["explain"],
            ["explain", "--all", "depth-minus"],
        ],
        ids=" ".join,
    )
    def test_wrong_usage_is_2(self, arguments: Sequence[str]) -> None:
        result = invoke(*arguments)
        assert result.exit_code == 2
        assert not result.stdout
        assert "Usage:" in result.stderr

    def test_wrong_usage_of_a_process(self) -> None:
        ran = process("parse", "--no-such-option")
        assert (ran.returncode, ran.stdout) == (2, b"")
        assert b"No such option" in ran.stderr


class TestParse:
    """Records of one input and of several."""

    def test_one_file(self, good: str) -> None:
        result = invoke("parse", good)
        assert result.exit_code == 0
        assert result.stdout.count("\n") == 1
        record = json.loads(result.stdout)
        assert record["source"]["name"] == good
        assert record["caution"] == CAUTION
        assert record["notices"][0]["id"] == "2417/26"
        assert not result.stderr

    @pytest.mark.parametrize("arguments", [[], ["-"]], ids=["none", "dash"])
    def test_standard_input(self, arguments: Sequence[str]) -> None:
        result = invoke("parse", *arguments, given=GOOD)
        assert result.exit_code == 0
        assert json.loads(result.stdout)["source"]["name"] is None

    def test_standard_input_of_a_process(self) -> None:
        ran = process("parse", given=GOOD.encode())
        assert ran.returncode == 0
        assert json.loads(ran.stdout)["notices"][0]["number"] == 2417
        assert ran.stderr == b""

    def test_same_bytes_whatever_the_locale(self, good: str) -> None:
        ran = [
            process("parse", good, environment=environment).stdout
            for environment in (
                {"LC_ALL": "C", "PYTHONUTF8": "0", "PYTHONCOERCECLOCALE": "0"},
                {"PYTHONIOENCODING": "ascii"},
                {"LC_ALL": "C.UTF-8"},
            )
        ]
        assert len(set(ran)) == 1
        assert "47°12'" in ran[0].decode("utf-8")

    def test_error_findings_are_1_and_are_told(self, bad: str) -> None:
        result = invoke("parse", bad)
        assert result.exit_code == 1
        assert json.loads(result.stdout)["findings"]
        assert (
            result.stderr
            == f"noticeparse: {bad}: 1 error; `noticeparse check` shows what to look at\n"
        )

    def test_several_inputs_one_line_each(self, good: str, bad: str) -> None:
        result = invoke("parse", good, "-", bad, given=GOOD)
        names = [json.loads(line)["source"]["name"] for line in result.stdout.splitlines()]
        assert names == [good, None, bad]
        assert result.exit_code == 1

    def test_what_can_be_read_is_read(self, good: str, tmp_path: Path) -> None:
        binary = tmp_path / "notice.bin"
        binary.write_bytes(bytes(range(256)) * 4)
        result = invoke("parse", str(tmp_path / "none"), str(tmp_path), str(binary), good)
        assert result.exit_code == 2
        assert json.loads(result.stdout)["source"]["name"] == good
        assert result.stderr.splitlines() == [
            f"noticeparse: {tmp_path / 'none'}: no such file",
            f"noticeparse: {tmp_path}: a directory, not a file",
            f"noticeparse: {binary}: not a text file "
            "(binary data, or text in UTF-16 without its mark)",
        ]

    def test_json_lines(self, good: str) -> None:
        lines = invoke("parse", "--format", "jsonl", good, good).stdout.splitlines()
        kinds = [json.loads(line)["record"] for line in lines]
        assert kinds == ["notice", "bulletin"] * 2

    def test_indent(self, good: str) -> None:
        flat, indented = invoke("parse", good), invoke("parse", "--indent", good)
        assert json.loads(flat.stdout) == json.loads(indented.stdout)
        assert indented.stdout.count("\n") > 100

    def test_out(self, good: str, tmp_path: Path) -> None:
        out = tmp_path / "out.json"
        result = invoke("parse", good, "--out", str(out))
        assert (result.exit_code, result.stdout) == (0, "")
        assert out.read_bytes() == invoke("parse", good).stdout_bytes

    def test_out_is_made_only_for_data(self, tmp_path: Path) -> None:
        out = tmp_path / "out.json"
        assert invoke("parse", str(tmp_path / "none"), "--out", str(out)).exit_code == 2
        assert not out.exists()

    def test_out_spares_the_input(self, good: str) -> None:
        result = invoke("parse", good, "--out", good)
        assert result.exit_code == 2
        assert "give the output another name" in result.stderr
        assert Path(good).read_text("utf-8") == GOOD

    def test_out_that_cannot_be_written(self, good: str, tmp_path: Path) -> None:
        result = invoke("parse", good, "--out", str(tmp_path / "none" / "out.json"))
        assert result.exit_code == 2
        assert "cannot be written" in result.stderr
        assert invoke("parse", good, "--out", str(tmp_path)).exit_code == 2

    def test_bytes_that_are_not_utf_8(self, tmp_path: Path) -> None:
        path = tmp_path / "old.txt"
        path.write_bytes(b"Harbour caf\xe9 closed.\n" + GOOD.encode())
        record = json.loads(invoke("parse", str(path)).stdout)
        (finding,) = [one for one in record["findings"] if one["code"] == "text-not-utf8"]
        assert "byte 11" in finding["message"]
        assert (finding["span"]["line"], finding["span"]["column"]) == (1, 12)

    @pytest.mark.skipif(sys.platform == "win32", reason="names of files are bytes here")
    def test_name_that_is_no_text(self, tmp_path: Path) -> None:
        name = os.fsencode(tmp_path) + b"/week\xff\x1b.txt"
        try:
            Path(os.fsdecode(name)).write_text(BAD, "utf-8")
        except OSError:
            pytest.skip("the file system keeps to UTF-8")
        ran = process("parse", name)
        assert ran.returncode == 1
        assert json.loads(ran.stdout)["source"]["name"].endswith("week\ufffd\x1b.txt")
        assert b"\x1b" not in ran.stderr


UNREADABLE = [("empty", b""), ("blank", b"\n \n"), ("binary", b"\x00\x01" * 50)]


@pytest.mark.parametrize("given", [case[1] for case in UNREADABLE], ids=[c[0] for c in UNREADABLE])
@pytest.mark.parametrize("command", ["parse", "check", "charts"])
def test_unreadable_input_is_one_line_and_2(command: str, given: bytes) -> None:
    result = invoke(command, given=given)
    assert result.exit_code == 2
    assert not result.stdout
    lines = [
        line for line in result.stderr.splitlines() if line.startswith("noticeparse: <stdin>")
    ]
    assert len(lines) == 1


class TestCheck:
    """Findings for a person."""

    def test_findings_and_counts(self, bad: str) -> None:
        result = invoke("check", bad)
        assert result.exit_code == 1
        head = f"{bad}:3:17: error position-minutes-out-of-range: `47°72'.34S.`: 72.34 minutes"
        assert head in result.stdout
        assert "  hint: look for a digit slip and ask the issuer\n" in result.stdout
        counts, caution = result.stderr.splitlines()
        assert counts.startswith("1 notice, 1 action; 1 error, ")
        assert caution == CAUTION

    def test_no_error_is_0(self, good: str) -> None:
        assert invoke("check", good).exit_code == 0

    def test_one_line(self, good: str, bad: str) -> None:
        result = invoke("check", "--one-line", bad, good, "-", given=BAD)
        assert result.exit_code == 1
        errors = [line for line in result.stdout.splitlines() if " error " in line]
        assert [line.split(": ")[0] for line in errors] == [f"{bad}:3:17", "<stdin>:3:17"]
        assert result.stderr.startswith("3 notices, 3 actions; 2 errors, ")


class TestCharts:
    """Charts touched."""

    def test_list(self, good: str) -> None:
        result = invoke("charts", good)
        assert result.exit_code == 0
        assert result.stdout == (
            "Chart 802\n"
            f"  2417/26  1 action  after 2310/26 (not in this input)  {good}:1\n\n{CAUTION}\n"
        )
        assert not result.stderr

    def test_unusable(self, bad: str) -> None:
        result = invoke("charts", bad)
        assert result.exit_code == 1
        assert "1 action, 1 not usable" in result.stdout

    def test_none(self) -> None:
        result = invoke("charts", given="Fair winds to all.\n")
        assert (result.exit_code, result.stdout) == (0, "")
        assert result.stderr == "no chart is named\n"


def test_entry_point_is_declared() -> None:
    from importlib.metadata import entry_points

    (found,) = [one for one in entry_points(group="console_scripts") if one.name == "noticeparse"]
    assert found.value == "noticeparse.cli:main"


def test_group_is_a_click_command() -> None:
    assert isinstance(cli, click.Group)
