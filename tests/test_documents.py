"""README and DEVELOPERS: blocks run and show what they really give, tables are the code's.

`python -m tests.documents` writes anew what differs; read the difference before it is taken.
"""

from __future__ import annotations

import os
import re
import subprocess
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

import noticeparse
from noticeparse.caution import CAUTION
from noticeparse.checks import CHECKS
from noticeparse.version import VERSION
from tests.bare_venv import OFFLINE, copy_checkout, make_bare_venv, run
from tests.documents import (
    DEVELOPERS,
    DOCUMENTS,
    README,
    ROOT,
    TABLES,
    Block,
    blocks_of,
    run_console,
    run_session,
    tables_of,
)

SCRIPT = ROOT / ".ci" / "run"
HOOKS = ROOT / ".pre-commit-config.yaml"
DEMO = ROOT / "corpus_synthetic" / "demo.txt"
FAULTY = ROOT / "corpus_synthetic" / "demo_faulty.txt"


def text_of(path: Path) -> str:
    return path.read_text("utf-8")


def blocks(*languages: str) -> list[Any]:
    return [
        pytest.param(block, id=f"{path.name}-{block.line}")
        for path in DOCUMENTS
        for block in blocks_of(text_of(path))
        if block.language in languages
    ]


class TestBlocks:
    """Code blocks, each by its kind."""

    @pytest.mark.parametrize("path", DOCUMENTS, ids=lambda path: path.name)
    def test_every_block_is_of_a_kind_that_is_run(self, path: Path) -> None:
        text = text_of(path)
        found = list(blocks_of(text))
        assert found
        assert text.count("```") == 2 * len(found)
        for block in found:
            is_run = block.language in ("console", "pycon") or (path, block.language) == (
                README,
                "sh",
            )
            assert is_run or block.file, f"{path.name}:{block.line}"

    @pytest.mark.parametrize("block", blocks("console"))
    def test_command_prints_what_is_shown(self, block: Block) -> None:
        assert block.text.startswith("$ ")
        assert run_console(block.text) == block.text

    @pytest.mark.parametrize("path", DOCUMENTS, ids=lambda path: path.name)
    def test_session_gives_what_is_shown(self, path: Path) -> None:
        names: dict[str, Any] = {}
        sessions = [block for block in blocks_of(text_of(path)) if block.language == "pycon"]
        assert sessions
        for block in sessions:
            assert run_session(block.text, names) == block.text, f"{path.name}:{block.line}"

    def test_part_of_a_file_is_as_it_stands_there(self) -> None:
        parts = [block for path in DOCUMENTS for block in blocks_of(text_of(path)) if block.file]
        assert parts
        for block in parts:
            assert f"\n{block.text}" in text_of(ROOT / str(block.file))

    def test_blocks_that_differ_are_seen(self) -> None:
        assert run_console("$ echo one\ntwo\n") == "$ echo one\none\n"
        assert run_session(">>> 1 + 1\n3\n", {}) == ">>> 1 + 1\n2\n"


@pytest.mark.parametrize("name", TABLES)
def test_table_is_that_of_the_code(name: str) -> None:
    assert dict(tables_of(text_of(DEVELOPERS)))[name] == TABLES[name]()


class TestReadme:
    """The first page: short, with the caution, and with specimens that read as it says."""

    def test_length(self) -> None:
        assert len(text_of(README).splitlines()) <= 150

    def test_caution(self) -> None:
        before_all_else = " ".join(text_of(README).partition("\n## ")[0].split())
        assert "issuing authority's notice governs" in before_all_else
        assert "every position must be checked against" in before_all_else
        assert CAUTION in " ".join(text_of(README).split())

    def test_commands_are_all_named(self) -> None:
        from noticeparse.cli import cli

        for command in cli.commands:
            assert f"`{command}`" in text_of(README), command

    def test_public_names_are_told(self) -> None:
        words = text_of(README) + text_of(DEVELOPERS)
        for name in set(noticeparse.__all__) - {"__version__"}:
            assert re.search(rf"`{name}`|\bnoticeparse\.(errors\.)?{name}\b", words), name


READERS: dict[str, Callable[[str], object]] = {
    "position": noticeparse.parse_position,
    "light": noticeparse.parse_light,
    "depth": noticeparse.parse_depth,
}


def specimens() -> list[Any]:
    """Each specimen of the list, under the thing it shows; some have a line below the first."""
    section = text_of(README).partition("## What it reads\n")[2].partition("\n## ")[0]
    return [
        pytest.param(thing, specimen, id=specimen)
        for thing, rest in re.findall(r"^- \*\*(.+?)\*\*: (.*)$", section, re.MULTILINE)
        for specimen in re.findall(r"`([^`]+)`", rest.replace("`, below it `", "\n"))
    ]


@pytest.mark.parametrize(("thing", "specimen"), specimens())
def test_specimen_is_read(thing: str, specimen: str) -> None:
    if thing in READERS:
        READERS[thing](specimen)
        return
    bulletin = noticeparse.parse(specimen)
    assert {one.severity for one in bulletin.findings} <= {"info"}
    assert bulletin.coverage.unread == 0
    actions = [action for chart in bulletin.notices[0].charts for action in chart.actions]
    if thing in ("insert", "amend", "replace", "move", "delete"):
        assert [action.verb for action in actions] == [thing]
    elif thing in ("line", "circle"):
        assert [action.geometry.shape for action in actions] == [thing]
    elif thing == "radio warning":
        assert bulletin.notices[0].status == "radio_warning"
    else:
        assert actions


def test_all_things_have_specimens() -> None:
    assert len({case.values[0] for case in specimens()}) >= 12


class TestDemonstration:
    """The bulletin that the set-up reads, and its faulty twin."""

    def test_is_clean(self) -> None:
        bulletin = noticeparse.parse(text_of(DEMO))
        assert bulletin.findings == []
        assert bulletin.coverage.unread == 0
        assert len(bulletin.notices) == 2
        for notice in bulletin.notices:
            verbs = {action.verb for chart in notice.charts for action in chart.actions}
            assert [chart.chart for chart in notice.charts] == ["802", "803"]
            assert verbs == {"insert", "amend", "replace", "move", "delete"}

    def test_faulty_has_three_planted_slips(self) -> None:
        pairs = zip(text_of(DEMO).splitlines(), text_of(FAULTY).splitlines(), strict=True)
        planted = [row for row, (good, bad) in enumerate(pairs, 1) if good != bad]
        findings = noticeparse.parse(text_of(FAULTY)).findings
        assert len(planted) == 3
        assert [finding.span.line for finding in findings if finding.span] == planted
        assert {finding.severity for finding in findings} == {"error", "warning"}

    @pytest.mark.parametrize("path", [DEMO, FAULTY], ids=lambda path: path.stem)
    def test_is_marked(self, path: Path) -> None:
        assert "invented, not for navigation" in text_of(path).splitlines()[0]


def set_up_commands() -> list[str]:
    """The two commands of the README: reading the demonstration, and the tests."""
    found = [block.text for block in blocks_of(text_of(README)) if block.language == "sh"]
    assert all(text.count("\n") == 1 for text in found)
    return [text.strip() for text in found]


class TestSetUp:
    """The two commands, and the script that ends with one of them."""

    @pytest.fixture
    def checkout(self, tmp_path: Path) -> Path:
        """A copy whose environment is there already, so that no index is needed."""
        checkout = copy_checkout(tmp_path / "checkout")
        make_bare_venv(checkout / ".venv")
        return checkout

    def test_there_are_two(self) -> None:
        first, second = set_up_commands()
        assert "corpus_synthetic/demo.txt" in first
        assert "-m pytest" in second

    def test_first_reads_the_demonstration(self, checkout: Path) -> None:
        printed = run(["bash", "-c", set_up_commands()[0]], cwd=checkout, environment=OFFLINE)
        assert '"id": "2417/26"' in printed
        assert '"findings": []' in printed

    def test_second_finds_the_tests(self, checkout: Path) -> None:
        # Collected only: they are running at this moment.
        printed = run(
            ["bash", "-c", set_up_commands()[1]],
            cwd=checkout,
            environment={**OFFLINE, "PYTEST_ADDOPTS": "--collect-only -p no:cacheprovider"},
        )
        assert "tests/test_documents.py" in printed
        assert "tests/test_packaging.py" in printed
        assert "error" not in printed.rpartition("\n\n")[2]

    def test_script_runs_the_very_command(self) -> None:
        lines = [line.strip() for line in text_of(SCRIPT).splitlines()]
        assert lines.count(set_up_commands()[1]) == 1
        assert "set -euo pipefail" in lines

    def test_script_can_be_run(self) -> None:
        assert os.access(SCRIPT, os.X_OK)
        subprocess.run(["bash", "-n", SCRIPT], check=True)
        wrong = subprocess.run([SCRIPT, "no-such-mode"], capture_output=True, check=False)
        assert wrong.returncode == 2

    def test_hook_calls_the_script(self) -> None:
        assert "entry: .ci/run lint\n" in text_of(HOOKS)


class TestDevelopers:
    """The second page."""

    def test_caution(self) -> None:
        assert CAUTION in " ".join(text_of(DEVELOPERS).partition("\n## ")[0].split())

    def test_checks_are_all_named(self) -> None:
        for check in CHECKS:
            assert check.__name__ in text_of(DEVELOPERS)

    def test_release_notes_of_this_version(self) -> None:
        assert f"\n### {VERSION}\n" in text_of(DEVELOPERS).partition("## Release notes")[2]

    def test_files_that_are_named_are_there(self) -> None:
        named = re.findall(r"`((?:tests|noticeparse|corpus_synthetic|\.ci)/[\w./]*)`", _prose())
        assert len(named) > 10
        assert [name for name in named if not (ROOT / name).exists()] == []

    def test_links_lead_somewhere(self) -> None:
        heads = re.findall(r"^#+ (.*)$", _prose(), re.MULTILINE)
        anchors = {re.sub(r"[^\w -]", "", head.lower()).replace(" ", "-") for head in heads}
        links = set(re.findall(r"\]\(#([\w-]+)\)", _prose()))
        assert links
        assert links <= anchors


def _prose() -> str:
    return text_of(DEVELOPERS).replace("/NAME.txt", "/")


# Folders of one machine, spelled so that this line does not hold them.
MACHINE_PATH = re.compile(
    r"(?<![\w.])/(?:" + "|".join(("work", "tmp", "root", "home", "opt")) + ")/"
)


@pytest.mark.parametrize(
    "path", [*DOCUMENTS, SCRIPT, HOOKS, ROOT / "pyproject.toml", DEMO, FAULTY],
    ids=lambda path: path.name,
)  # fmt: skip
def test_no_path_of_a_machine(path: Path) -> None:
    assert MACHINE_PATH.findall(text_of(path)) == []
