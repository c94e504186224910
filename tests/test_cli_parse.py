"""`noticeparse parse`: records of one input and of several."""

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
from noticeparse.writers import Part
from noticeparse.writers.json_out import JsonWriter
from tests.command import BAD, GOOD, invoke, process


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
        result = invoke("parse", str(tmp_path / "none"), str(binary), good)
        assert result.exit_code == 2
        assert json.loads(result.stdout)["source"]["name"] == good
        assert result.stderr.splitlines() == [
            f"noticeparse: {tmp_path / 'none'}: no such file",
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
        assert [*tmp_path.iterdir()] == [Path(good), out]

    def test_out_in_place_of_a_file(self, good: str, tmp_path: Path) -> None:
        out, link = tmp_path / "out.json", tmp_path / "link.json"
        out.write_text("old", "utf-8")
        out.chmod(0o600)
        link.symlink_to(out)
        assert invoke("parse", good, "--out", str(link)).exit_code == 0
        assert link.is_symlink()
        assert json.loads(out.read_text("utf-8"))["source"]["name"] == good
        assert out.stat().st_mode & 0o777 == 0o600

    def test_out_dash_is_standard_output(self, good: str) -> None:
        assert invoke("parse", good, "--out", "-").stdout == invoke("parse", good).stdout

    def test_out_is_whole_or_not_at_all(
        self, good: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        out = tmp_path / "out.json"
        out.write_text("old", "utf-8")

        added: list[Part] = []

        def add_one_and_fail(writer: JsonWriter, part: Part) -> str:
            if added:
                raise KeyboardInterrupt
            added.append(part)
            return part.body

        monkeypatch.setattr(JsonWriter, "add", add_one_and_fail)
        with pytest.raises(click.exceptions.Abort):
            cli.main(["parse", "--indent", good, good, "--out", str(out)], standalone_mode=False)
        assert added
        assert out.read_text("utf-8") == "old"
        assert sorted(tmp_path.iterdir()) == [Path(good), out]

    @pytest.mark.skipif(not Path("/dev/full").exists(), reason="no full device")
    def test_out_to_a_device(self, good: str) -> None:
        result = invoke("parse", good, "--out", "/dev/full")
        assert result.exit_code == 2
        assert (
            result.stderr == "noticeparse: /dev/full: cannot be written: No space left on device\n"
        )
        assert Path("/dev/full").is_char_device()

    def test_out_is_made_only_for_data(self, tmp_path: Path) -> None:
        out = tmp_path / "out.json"
        assert invoke("parse", str(tmp_path / "none"), "--out", str(out)).exit_code == 2
        assert not out.exists()

    def test_out_spares_the_input(self, good: str) -> None:
        result = invoke("parse", good, "--out", good)
        assert result.exit_code == 2
        assert "give the output another name" in result.stderr
        assert Path(good).read_text("utf-8") == GOOD

    @pytest.mark.parametrize("dash", ["", "-"])
    def test_out_spares_the_input_of_the_shell(self, good: str, dash: str) -> None:
        with open(good, "rb") as given:
            ran = subprocess.run(
                [sys.executable, "-m", "noticeparse", "parse", "--out", good, *dash],
                stdin=given, capture_output=True, check=False, timeout=60,
            )  # fmt: skip
        assert ran.returncode == 2
        assert b"give the output another name" in ran.stderr
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
