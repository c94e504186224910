"""Without an output directory the records follow each other."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from noticeparse.archive import run as archive_run
from noticeparse.archive.inputs import list_inputs
from noticeparse.writers import FORMATS, ending_of
from tests.archive.folder import NAMES, OTHER
from tests.command import invoke


class TestStream:
    """Without an output directory the records follow each other."""

    @pytest.mark.parametrize("form", sorted(FORMATS))
    def test_as_if_all_were_named(self, folder: Path, form: str) -> None:
        Path("z.txt").write_text(OTHER, "utf-8")
        together = invoke("parse", "--format", form, "archive/2025", "archive/b.txt")
        named = invoke("parse", "--format", form, "archive/2025/a.TXT", "archive/b.txt")
        assert together.stdout == named.stdout
        assert together.exit_code == named.exit_code == 1
        assert together.stderr == named.stderr

    @pytest.mark.parametrize("jobs", ["1", "2"])
    def test_all_outputs_at_once(self, folder: Path, jobs: str) -> None:
        """One map layer, one table and one text of all inputs, as if each had been named."""
        names = [f"all{ending_of(form)}" for form in FORMATS]
        outs = [one for name in names for one in ("--out", name)]
        wishes = ["--indent", "--bom", "--unusable"]
        named = ["archive/2025/a.TXT", "archive/b.txt", "archive/binary.txt"]
        first = invoke("parse", *named, *outs, *wishes)
        before = {name: Path(name).read_bytes() for name in names}
        for name in names:
            Path(name).unlink()
        second = invoke("parse", *named, *outs, *wishes, "--jobs", jobs)
        assert {name: Path(name).read_bytes() for name in names} == before
        assert (second.stdout, second.stderr) == (first.stdout, first.stderr)
        assert first.exit_code == second.exit_code == 2
        layer = json.loads(before["all.geojson"])
        assert layer["counts"]["notices"] == len(layer["bulletins"]) == 2
        assert layer["counts"]["unusable"] == 1
        assert layer["counts"]["unusable_left_out"] == 0
        assert before["all.csv"].startswith("\ufeff".encode())
        assert before["all.csv"].count(b"guarded,caution") == 1

    def test_what_an_output_lacks_is_told(self, folder: Path) -> None:
        (folder / "empty.txt").write_text("2419/26 Quill Sound - Wreck.\nChart 802\n", "utf-8")
        named = ["archive/b.txt", "archive/empty.txt", "--format", "geojson"]
        together = invoke("parse", *named, "--jobs", "2")
        assert "empty.txt: 1 notice without an action, not in geojson" in together.stderr
        assert "b.txt: 1 unusable action left out of geojson" in together.stderr
        assert together.stderr == invoke("parse", *named).stderr

    @pytest.mark.parametrize("form", sorted(FORMATS))
    def test_no_input_can_be_read(self, folder: Path, form: str) -> None:
        result = invoke("parse", "archive/binary.txt", "--jobs", "2", "--format", form)
        assert (result.exit_code, result.stdout) == (2, "")

    def test_bad_files_are_told_and_stop_nothing(self, folder: Path) -> None:
        result = invoke("parse", "archive")
        assert [json.loads(one)["source"]["name"] for one in result.stdout.splitlines()] == NAMES
        assert result.exit_code == 2
        assert "archive/binary.txt: not a text file" in result.stderr

    def test_one_file(self, folder: Path) -> None:
        result = invoke("parse", "archive", "--out", "all.json")
        assert result.stdout == ""
        assert Path("all.json").read_text("utf-8") == invoke("parse", "archive").stdout

    def test_jobs(self, folder: Path) -> None:
        several = invoke("parse", "archive", "--format", "jsonl", "--jobs", "2")
        one = invoke("parse", "archive", "--format", "jsonl")
        assert (several.stdout, several.stderr) == (one.stdout, one.stderr)

    def test_a_file_that_vanishes(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        def listed(*arguments: Any, **given: Any) -> Any:
            listing = list_inputs(*arguments, **given)
            (folder / "b.txt").unlink()
            return listing

        monkeypatch.setattr(archive_run, "list_inputs", listed)
        result = invoke("parse", "archive")
        assert "archive/b.txt: no such file" in result.stderr
        assert len(result.stdout.splitlines()) == 2


class TestUsage:
    """What does not go together is said before anything is read."""

    @pytest.mark.parametrize(
        ("arguments", "words"),
        [
            (["--jobs", "2"], "name the files"),
            (["--jobs", "2", "-"], "standard input goes by itself"),
            (["archive", "--charts", "c.csv"], "--charts goes with files named one by one"),
            (["archive", "--resume"], "--resume goes with --into only"),
            (["archive", "--into", "out", "--out", "x.json"], "do not go together"),
            (["archive", "--shard", "0/2"], "write 1/4 to 4/4"),
            (["archive", "--shard", "3/2"], "write 1/4 to 4/4"),
            (["archive", "--jobs", "0"], "not in the range"),
        ],
    )
    def test_refused(self, folder: Path, arguments: list[str], words: str) -> None:
        result = invoke("parse", *arguments)
        assert (result.exit_code, result.stdout) == (2, "")
        assert words in result.stderr
        assert not Path("out").exists()
