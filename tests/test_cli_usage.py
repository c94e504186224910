"""Help, wrong usage, and the entry point of the command line."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Sequence
from importlib.metadata import entry_points
from pathlib import Path

import pytest

from noticeparse.caution import CAUTION
from noticeparse.cli import cli
from noticeparse.version import VERSION
from tests.command import POSITION, invoke, process

COMMANDS = (
    "parse", "check", "charts", "tidy", "position", "light", "depth", "schema", "explain", "serve",
    "fuzz", "sheet",
)  # fmt: skip


class TestHelp:
    """Help and version: told with examples, and at once."""

    @pytest.mark.parametrize("command", COMMANDS)
    @pytest.mark.parametrize("option", ["-h", "--help"])
    def test_every_command_has_help_with_examples(self, command: str, option: str) -> None:
        result = invoke(command, option)
        assert result.exit_code == 0
        assert "Examples:" in result.stdout
        assert f"  noticeparse {command}" in result.stdout
        assert CAUTION in " ".join(result.stdout.split())
        assert not result.stderr

    def test_all_commands_are_tried_here(self) -> None:
        assert sorted(cli.commands) == sorted(COMMANDS)

    def test_front_page(self) -> None:
        shown = invoke("--help").stdout
        assert "Exit status:" in shown
        assert " ".join(shown.split()).count(CAUTION) == 1
        assert "..." not in shown.replace("COMMAND [ARGS]...", "")

    def test_exit_statuses(self) -> None:
        for command in set(COMMANDS) - {"schema"}:
            assert "\n  Exit status:\n    0  " in invoke(command, "--help").stdout, command
        assert "a code is not known" in invoke("explain", "--help").stdout

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
            ["serve", "--port", "65536"],
            ["serve", "--max-body", "0"],
            ["serve", "now"],
        ],
        ids=" ".join,
    )
    def test_wrong_usage_is_2(self, arguments: Sequence[str]) -> None:
        result = invoke(*arguments)
        assert result.exit_code == 2
        assert not result.stdout
        assert "Usage:" in result.stderr

    def test_unknown_ending_is_not_filled_with_json(self, good: str, tmp_path: Path) -> None:
        sheet = tmp_path / "week.xls"
        refused = invoke("parse", good, "--out", str(sheet))
        assert refused.exit_code == 2
        assert "no format is known" in refused.stderr
        assert not sheet.exists()
        assert invoke("parse", good, "--format", "csv", "--out", str(sheet)).exit_code == 0
        assert sheet.read_text("utf-8").startswith("usable,notice,")

    def test_wrong_usage_of_a_process(self) -> None:
        ran = process("parse", "--no-such-option")
        assert (ran.returncode, ran.stdout) == (2, b"")
        assert b"No such option" in ran.stderr


def test_entry_point_is_declared() -> None:
    (found,) = [one for one in entry_points(group="console_scripts") if one.name == "noticeparse"]
    assert found.value == "noticeparse.cli:main"
