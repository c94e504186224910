"""`noticeparse fuzz`: this reader, a command; reports; statuses; the same again."""

from __future__ import annotations

import json
import os
import shlex
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import pytest

from noticeparse.caution import CAUTION
from noticeparse.testing.targets import CommandTarget, NoAnswer, ThisReader, open_target
from tests.command import invoke
from tests.corpus_files import ROOT
from tests.service import until

MINUTES = "minutes-of-60"
HERE = f'"{sys.executable}" -m noticeparse.testing.answering'

PATIENT = ("--timeout", "120")
"""For a command that begins with the whole package, on a machine that has much else to do."""

CARRIES_OVER = """
import json, re, sys
from noticeparse.testing.answering import answer
def carried(match):
    return f"{int(match[1]) + 1}{match[2]}{int(match[3]) - 60:02d}"
for line in sys.stdin:
    text = re.sub("([0-9]+)([-°]) ?([6-9][0-9])(?=[.'SNEW])", carried, json.loads(line))
    print(answer("positions", text), flush=True)
"""
"""A reader that makes 48 degrees 12 minutes of 47 degrees 72."""


@pytest.fixture(autouse=True)
def _commands_read_with_this_package(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("PYTHONPATH", str(ROOT))


@pytest.fixture
def carrying(tmp_path: Path) -> str:
    script = tmp_path / "carrying.py"
    script.write_text(CARRIES_OVER, "utf-8")
    return f'"{sys.executable}" "{script}"'


class TestThisReader:
    """Without a target."""

    def test_all_is_well(self) -> None:
        result = invoke("fuzz", "depths", "--examples", "5")
        assert result.exit_code == 0
        assert "FAILED" not in result.stdout
        assert result.stdout.rstrip().endswith(CAUTION)
        assert "0 failed" in result.stderr

    def test_list(self) -> None:
        result = invoke("fuzz", "positions", "--list")
        assert result.exit_code == 0
        assert f"{MINUTES:34}refused     60 minutes or more\n" in result.stdout

    def test_nothing_is_left_where_it_runs(
        self, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.chdir(tmp_path)
        monkeypatch.delenv("HYPOTHESIS_STORAGE_DIRECTORY", raising=False)
        invoke("fuzz", "lights", "--only", "as-it-is", "--examples", "3")
        assert not list(tmp_path.iterdir())


class TestCommand:
    """A command that is asked line by line."""

    def test_a_good_one(self) -> None:
        command = f"{HERE} positions"
        result = invoke("fuzz", "positions", "--examples", "4", "--target", command, *PATIENT)
        assert result.exit_code == 0, result.stdout
        assert f"{command}: " in result.stderr

    def test_a_bad_one_is_shown_small_and_with_its_code_points(self, carrying: str) -> None:
        given = ("fuzz", "positions", "--target", carrying, "--only", MINUTES, "--examples", "30")
        result = invoke(*given, *PATIENT)
        assert result.exit_code == 1
        assert f"FAILED  {MINUTES}" in result.stdout
        assert "60.0'" in result.stdout  # shrunk to the least that fails
        assert "U+00B0 DEGREE SIGN at " in result.stdout
        assert "it cannot be read for certain" in result.stdout
        assert f"| {carrying}\n" in result.stdout
        again = f"--only {MINUTES} --examples 30 --seed 0 --target {shlex.quote(carrying)}\n"
        assert again in result.stdout
        assert invoke(*given, *PATIENT).stdout == result.stdout

    @pytest.mark.skipif(os.name == "nt", reason="the reproduction is for a POSIX shell")
    def test_the_reproduction_can_be_pasted(self, carrying: str) -> None:
        text = "47°72.34'S 123°45.67'W\n"
        pasted = CommandTarget(carrying, 20).reproduction(text)
        # `python` is the one of the person who pastes, whose environment is active.
        path = os.pathsep.join((str(Path(sys.executable).parent), os.environ["PATH"]))
        active = {**os.environ, "PATH": path}
        ran = subprocess.run(["sh", "-c", pasted], capture_output=True, check=True, env=active)
        assert json.loads(ran.stdout)["iso6709"] == "-4812.34-12345.67/"
        assert pasted.isascii()
        ours = ThisReader("positions").reproduction(text)
        ran = subprocess.run(["sh", "-c", ours], capture_output=True, check=False, env=active)
        assert b"72.34 minutes; 59 is the last" in ran.stderr

    @pytest.mark.parametrize(
        "words", ["no-such-command", "'unclosed", "true", "echo no-json", "", " "]
    )
    def test_one_that_does_not_answer(self, words: str) -> None:
        result = invoke("fuzz", "positions", "--target", words)
        assert result.exit_code == 2
        assert "the target does not answer" in result.stderr
        assert not result.stdout

    def test_one_that_hangs(self) -> None:
        result = invoke("fuzz", "positions", "--target", "sleep 60", "--timeout", "0.2")
        assert result.exit_code == 2
        assert "does it flush its output after each line?" in result.stderr

    def test_one_that_ends_is_started_again(self) -> None:
        command = f'{sys.executable} -c "print(input()); input(); raise SystemExit(3)"'
        target = open_target("positions", command, 20)
        with pytest.raises(NoAnswer, match="exit status 3"):
            target.ask("47-12.34S 123-45.67W")
        assert json.loads(target.ask("again")) == "again"
        target.close()

    def test_one_that_gives_two_lines(self) -> None:
        code = "for text in open(0): print(1, flush=True); print(2, flush=True)"
        target = CommandTarget(f'{sys.executable} -c "{code}"', 20)
        assert json.loads(target.ask("first")) == 1
        until(lambda: not target._lines.empty())
        with pytest.raises(NoAnswer, match="more than one line"):
            target.ask("second")
        target.close()

    def test_one_whose_answer_is_nested_too_deeply(self) -> None:
        code = "for text in open(0): print(100000 * chr(91), flush=True)"
        result = invoke("fuzz", "positions", "--target", f'{sys.executable} -c "{code}"')
        assert result.exit_code == 2
        assert "is no JSON" in result.stderr

    def test_a_late_answer_is_no_answer_to_the_next_text(self) -> None:
        code = "import time; print(input(), flush=True); input(); time.sleep(5); print(1)"
        target = CommandTarget(f'{sys.executable} -c "{code}"', 20)
        assert json.loads(target.ask("first")) == "first"
        target._seconds = 0.1
        with pytest.raises(NoAnswer, match="no answer within"):
            target.ask("second")
        target._seconds = 20
        assert json.loads(target.ask("third")) == "third"
        target.close()


class TestReports:
    """JSON and JUnit, by the ending of the file."""

    def test_json(self, tmp_path: Path, carrying: str) -> None:
        path = tmp_path / "report.json"
        given = ("--only", MINUTES, "--only", "as-it-is", "--examples", "20", "--seed", "5")
        result = invoke(
            "fuzz", "positions", "--target", carrying, *PATIENT, *given, "--report", str(path)
        )
        assert result.exit_code == 1
        report = json.loads(path.read_text("utf-8"))
        assert (report["kind"], report["seed"], report["failed"]) == ("positions", 5, 1)
        assert report["caution"] == CAUTION
        good, bad = report["mutations"]
        assert (good["name"], good["examples"], good["failure"]) == ("as-it-is", 20, None)
        assert bad["failure"]["text"].isprintable()
        assert any(words.startswith("U+00B0") for words in bad["failure"]["code_points"])
        assert bad["codes"] == ["position-minutes-out-of-range"]

    def test_junit(self, tmp_path: Path, carrying: str) -> None:
        path = tmp_path / "report.xml"
        given = ("--only", MINUTES, "--only", "as-it-is", "--examples", "20")
        invoke("fuzz", "positions", "--target", carrying, *PATIENT, *given, "--report", str(path))
        suite = ElementTree.parse(path).getroot()
        assert (suite.attrib["tests"], suite.attrib["failures"]) == ("2", "1")
        good, bad = suite.findall("testcase")
        assert good.find("failure") is None
        told = bad.find("failure")
        assert told is not None
        assert "again:" in str(told.text)

    def test_junit_holds_what_xml_cannot(self, tmp_path: Path) -> None:
        script, path = tmp_path / "odd.py", tmp_path / "report.xml"
        script.write_text(r"""for _ in open(0): print(r'"\u0000\ufffe"', flush=True)""", "utf-8")
        command = f'"{sys.executable}" "{script}"'
        given = ("--only", "figure-split", "--target", command, *PATIENT, "--report", str(path))
        assert invoke("fuzz", "depths", *given).exit_code == 1
        ElementTree.parse(path)

    def test_one_that_cannot_be_written(self, tmp_path: Path) -> None:
        given = ("--only", "as-it-is", "--examples", "2")
        path = tmp_path / "no" / "folder.json"
        result = invoke("fuzz", "depths", *given, "--report", str(path))
        assert result.exit_code == 2
        assert "cannot be written" in result.stderr
        assert not result.stdout  # told before the work


class TestUsage:
    """What is asked for wrongly."""

    @pytest.mark.parametrize(
        ("arguments", "words"),
        [
            (("tides",), "tides"),
            (("depths", "--report", "report.txt"), "end it with .json, or .xml"),
            (("depths", "--examples", "0"), "--examples"),
            (("depths", "--seed", "-1"), "--seed"),
            (("depths", "--timeout", "0"), "--timeout"),
            (("depths", "--only", "no-such-thing"), "--list shows them"),
        ],
    )
    def test_wrong_usage(self, arguments: tuple[str, ...], words: str) -> None:
        result = invoke("fuzz", *arguments)
        assert result.exit_code == 2
        assert words in result.stderr

    def test_without_hypothesis(self, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setattr("noticeparse.console.fuzz.find_spec", lambda name: None)
        result = invoke("fuzz", "depths")
        assert result.exit_code == 2
        assert "pip install 'noticeparse[qa]'" in result.stderr
