"""`noticeparse check` and `charts`: findings and charts touched, for a person."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from noticeparse import parse
from noticeparse.caution import CAUTION
from noticeparse.console import colour
from noticeparse.records.finding import Finding
from tests.command import BAD, GOOD, invoke

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
        head = f"{bad}:3:17: error position-minutes-out-of-range (notice 2417/26, chart 802)\n"
        assert result.stdout.startswith(head)
        assert "\n  `47°72'.34S.`: 72.34 minutes; 59 is the last\n  why:  " in result.stdout
        assert "\n  hint: look for a digit slip and ask the issuer\n" in result.stdout
        assert result.stdout.endswith(f"\n\n{CAUTION}\n")
        (counts,) = result.stderr.splitlines()
        assert counts.startswith("1 notice, 1 action; 1 error, ")

    def test_no_finding_is_0(self, good: str) -> None:
        result = invoke("check", good)
        assert (result.exit_code, result.stdout) == (0, f"{CAUTION}\n")
        assert result.stderr == "1 notice, 1 action; 0 errors, 0 warnings, 0 infos\n"

    def test_brief(self, good: str, bad: str) -> None:
        result = invoke("check", "--brief", bad, good, "-", given=BAD)
        assert result.exit_code == 1
        errors = [line for line in result.stdout.splitlines() if " error " in line]
        assert [line.split(": ")[0] for line in errors] == [f"{bad}:3:17", "<stdin>:3:17"]
        assert result.stdout.endswith(f"\n\n{CAUTION}\n")
        assert result.stderr.startswith("3 notices, 3 actions; 2 errors, ")

    def test_brief_is_for_a_person(self, good: str) -> None:
        assert invoke("check", "--brief", "--format", "json", good).exit_code == 2

    def test_warnings_may_fail(self, good: str) -> None:
        text = GOOD.replace("Insert depth 8m", "Insert depth 8.65m")
        assert invoke("check", given=text).exit_code == 0
        assert invoke("check", "--fail-on", "warning", given=text).exit_code == 1
        assert invoke("check", "--fail-on", "warning", good).exit_code == 0
        assert invoke("check", "--fail-on", "warning", given=BAD).exit_code == 1

    def test_json(self, bad: str) -> None:
        result = invoke("check", "--format", "json", bad, bad)
        assert result.exit_code == 1
        record, _ = map(json.loads, result.stdout.splitlines())
        assert [*record] == ["schema_version", "generator", "caution", "source", "findings"]
        assert record["source"]["name"] == bad
        whole = json.loads(invoke("parse", bad).stdout)
        assert record["findings"] == whole["findings"] != []

    def test_json_lines(self, bad: str) -> None:
        *found, last = map(
            json.loads, invoke("check", "--format", "jsonl", bad).stdout.splitlines()
        )
        whole = json.loads(invoke("parse", bad).stdout)
        assert found == [{"record": "finding", **one} for one in whole["findings"]]
        assert (last["record"], last["source"]["name"]) == ("bulletin", bad)
        assert last["caution"] == CAUTION

    def test_colour_is_for_a_terminal_that_shows_it(self, monkeypatch: pytest.MonkeyPatch) -> None:
        for name in ("NO_COLOR", "TERM"):
            monkeypatch.delenv(name, raising=False)
        monkeypatch.setenv("WT_SESSION", "1")
        assert "\x1b" not in invoke("check", given=BAD).stdout
        assert not colour.is_wanted(is_terminal=False)
        assert colour.is_wanted(is_terminal=True)
        monkeypatch.setenv("NO_COLOR", "")  # empty: nobody has said no
        assert colour.is_wanted(is_terminal=True)
        monkeypatch.setenv("NO_COLOR", "1")
        assert not colour.is_wanted(is_terminal=True)
        monkeypatch.delenv("NO_COLOR")
        monkeypatch.setenv("TERM", "dumb")
        assert not colour.is_wanted(is_terminal=True)


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
        assert result.stderr == ""

    def test_findings_outside_any_notice(self, good: str, monkeypatch: pytest.MonkeyPatch) -> None:
        bulletin = parse(GOOD)
        lost = [
            Finding(
                code="text-garbled", severity=severity, message="m", hint=None, span=None,
                notice=None, chart=None, paths=paths,
            )
            for severity, paths in (
                ("error", []), ("error", []), ("warning", []), ("error", ["/notices/0"]),
            )
        ]  # fmt: skip
        changed = bulletin.model_copy(update={"findings": lost})
        monkeypatch.setattr("noticeparse.console.session.read_intake", lambda *_, **__: changed)
        result = invoke("charts", good)
        assert result.exit_code == 1
        assert result.stderr == (
            "2 errors, 1 warning outside any notice; `noticeparse check` shows what to look at\n"
        )

    def test_number_twice_is_1(self, good: str) -> None:
        result = invoke("charts", good, good)
        assert result.exit_code == 1
        assert f"the same as {good}:1" in result.stdout
        assert result.stderr == (
            "a notice stands twice or the order runs in a circle; settle it by hand\n"
        )

    def test_circle_is_1(self) -> None:
        other = GOOD.replace("2310", "2417").replace("2417/26 ", "2310/26 ", 1)
        result = invoke("charts", given=f"{GOOD}\n{other}")
        assert "name each other as the previous" in result.stdout
        assert result.exit_code == 1

    def test_none(self) -> None:
        result = invoke("charts", given="Fair winds to all.\n")
        assert (result.exit_code, result.stdout) == (0, "")
        assert result.stderr == "no chart is named\n"

    def test_none_where_nothing_could_be_read(self, tmp_path: Path) -> None:
        result = invoke("charts", str(tmp_path / "none"))
        assert (result.exit_code, result.stdout) == (2, "")
        assert "no chart" not in result.stderr
