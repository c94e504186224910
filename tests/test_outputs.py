"""`parse` with several outputs: each whole or not there, and all of them the same bytes again."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Iterator, Sequence
from pathlib import Path

import pytest

from noticeparse.console.outlet import NotWritable
from noticeparse.console.outputs import Outputs, Target, parts_of
from noticeparse.console.parsing import write_bulletins, write_parts
from noticeparse.pipeline import read_bulletin
from noticeparse.records.bulletin import Bulletin
from noticeparse.writers import AS_USUAL, ENDINGS, FORMATS
from tests.command import BAD, GOOD, invoke, process

ALL = [f"week{ending}" for ending in ENDINGS]


def outs(folder: Path, *names: str) -> list[str]:
    """The options for files of these names."""
    return [word for name in names for word in ("--out", str(folder / name))]


class TestSeveral:
    """Files of all formats at once."""

    def test_each_is_what_its_format_alone_gives(
        self, good: str, bad: str, tmp_path: Path
    ) -> None:
        result = invoke("parse", good, bad, *outs(tmp_path, *ALL))
        assert (result.exit_code, result.stdout) == (1, "")
        for ending, form in ENDINGS.items():
            alone = invoke("parse", "--format", form, good, bad)
            assert (tmp_path / f"week{ending}").read_bytes() == alone.stdout_bytes
        assert {path.name for path in tmp_path.iterdir()} == {*ALL, "good.txt", "bad.txt"}

    def test_same_bytes_again(self, good: str, tmp_path: Path) -> None:
        for folder, given in (("one", None), ("two", {"PYTHONHASHSEED": "7", "LC_ALL": "C"})):
            (tmp_path / folder).mkdir()
            options = outs(tmp_path / folder, *ALL)
            assert process("parse", good, *options, environment=given).returncode == 0
        for name in ALL:
            assert (tmp_path / "one" / name).read_bytes() == (tmp_path / "two" / name).read_bytes()

    def test_beside_standard_output(self, good: str, tmp_path: Path) -> None:
        result = invoke("parse", good, "--format", "csv", *outs(tmp_path, "a.json"), "--out", "-")
        assert result.stdout_bytes == invoke("parse", "--format", "csv", good).stdout_bytes
        assert (tmp_path / "a.json").read_bytes() == invoke("parse", good).stdout_bytes

    def test_format_is_for_other_endings(self, good: str, tmp_path: Path) -> None:
        assert not invoke("parse", good, "--format", "csv", *outs(tmp_path, "a.dat")).exit_code
        assert (tmp_path / "a.dat").read_bytes().startswith(b"usable,notice,")
        assert not invoke("parse", good, *outs(tmp_path, "b")).exit_code
        assert (tmp_path / "b").read_bytes().startswith(b'{"schema_version"')

    def test_mark_and_indent_go_where_they_belong(self, good: str, tmp_path: Path) -> None:
        options = outs(tmp_path, "a.csv", "a.json", "a.jsonl")
        assert not invoke("parse", good, "--bom", "--indent", *options).exit_code
        assert (tmp_path / "a.csv").read_bytes().startswith(b"\xef\xbb\xbfusable,")
        assert (tmp_path / "a.json").read_text("utf-8").count("\n") > 100
        assert (tmp_path / "a.jsonl").read_text("utf-8").count("\n") == 2

    def test_input_that_cannot_be_read(self, good: str, tmp_path: Path) -> None:
        result = invoke("parse", str(tmp_path / "none"), good, *outs(tmp_path, *ALL))
        assert result.exit_code == 2
        assert "no such file" in result.stderr
        for ending, form in ENDINGS.items():
            alone = invoke("parse", "--format", form, good)
            assert (tmp_path / f"week{ending}").read_bytes() == alone.stdout_bytes


USAGE = [
    ("twice", ["--out", "a.csv", "--out", "./a.csv"], "is named twice"),
    ("standard output twice", ["--out", "-", "--out", "-"], "- is named twice"),
    ("no name", ["--out", ""], "`` is no name of a file"),
    ("a folder", ["--out", f"none{os.sep}"], "is no name of a file"),
    ("no output in the format", ["--format", "csv", "--out", "a.json"], "--format csv has no out"),
    ("mark without csv", ["--bom"], "--bom goes with --format csv only"),
    ("unusable without geojson", ["--unusable", "--out", "a.csv"], "--unusable goes with"),
    ("indent without json", ["--indent", "--out", "a.csv"], "--indent goes with --format json"),
    ("no such format", ["--format", "xml"], "'xml' is not one of"),
]


@pytest.mark.parametrize(
    ("options", "words"), [case[1:] for case in USAGE], ids=[case[0] for case in USAGE]
)
def test_wrong_usage_writes_nothing(
    options: Sequence[str], words: str, good: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    result = invoke("parse", good, *options)
    assert (result.exit_code, result.stdout) == (2, "")
    assert words in " ".join(result.stderr.split())
    assert [*tmp_path.iterdir()] == [Path(good)]


class TestNotWhole:
    """What stands where something goes wrong."""

    def test_nothing_read_makes_no_file(self, tmp_path: Path) -> None:
        assert invoke("parse", str(tmp_path / "none"), *outs(tmp_path, *ALL)).exit_code == 2
        assert [*tmp_path.iterdir()] == []

    def test_output_that_is_an_input(self, good: str, tmp_path: Path) -> None:
        os.symlink(good, tmp_path / "link.txt")
        result = invoke("parse", good, *outs(tmp_path, "a.json", "link.txt"))
        assert result.exit_code == 2
        assert "link.txt: is an input too" in result.stderr
        assert Path(good).read_text("utf-8") == GOOD
        assert not (tmp_path / "a.json").exists()

    @pytest.mark.skipif(not Path("/dev/full").exists(), reason="no full device")
    def test_full_disk(self, good: str, tmp_path: Path) -> None:
        (tmp_path / "b.csv").write_text("old", "utf-8")
        options = outs(tmp_path, "a.json", "b.csv")
        result = invoke("parse", good, *options, "--out", "/dev/full")
        assert result.exit_code == 2
        assert "/dev/full: cannot be written" in result.stderr
        assert sorted(path.name for path in tmp_path.iterdir()) == ["b.csv", "good.txt"]
        assert (tmp_path / "b.csv").read_text("utf-8") == "old"

    def test_folder_that_is_not_there(self, good: str, tmp_path: Path) -> None:
        result = invoke("parse", good, *outs(tmp_path, "a.json", "none/b.csv"))
        assert result.exit_code == 2
        assert "there is no folder" in result.stderr
        assert [*tmp_path.iterdir()] == [Path(good)]

    def test_folder_that_vanishes(self, tmp_path: Path) -> None:
        places = [tmp_path / "stays" / "a.json", tmp_path / "goes" / "b.csv"]
        for place in places:
            place.parent.mkdir()

        def bulletins() -> Iterator[Bulletin]:
            yield read_bulletin(GOOD)
            shutil.rmtree(places[1].parent)

        outputs = Outputs([Target(str(one), "csv") for one in places], AS_USUAL)
        with pytest.raises(NotWritable, match=r"b\.csv: cannot be written: No such file"), outputs:
            write_bulletins(outputs, bulletins())
        assert [*(tmp_path / "stays").iterdir()] == []

    def test_what_a_killed_run_has_left(self, tmp_path: Path) -> None:
        left = tmp_path / f"a.csv.{os.getpid()}-0.part"
        left.write_text("left", "utf-8")
        with Outputs([Target(str(tmp_path / "a.csv"), "csv")], AS_USUAL) as outputs:
            write_bulletins(outputs, [read_bulletin(GOOD)])
        assert {path.name for path in tmp_path.iterdir()} == {"a.csv", left.name}
        assert left.read_text("utf-8") == "left"

    @pytest.mark.skipif(sys.platform == "win32", reason="pipes of the shell")
    def test_reader_that_goes_away_takes_no_file_with_it(self, tmp_path: Path) -> None:
        # More than a pipe holds, so that writing to it fails.
        week = tmp_path / "week.txt"
        week.write_text(GOOD * 300, "utf-8")
        command = f'"{sys.executable}" -m noticeparse parse --out - --out "$1" "$2" "$2" "$2"'
        ran = subprocess.run(
            ["bash", "-c", f"{command} | head -c 10", "bash", tmp_path / "a.csv", week],
            capture_output=True, text=True, check=False, timeout=60,
        )  # fmt: skip
        assert ran.stdout == '{"schema_v'
        assert "Traceback" not in ran.stderr
        expected = invoke("parse", "--format", "csv", *[str(week)] * 3).stdout_bytes
        assert (tmp_path / "a.csv").read_bytes() == expected


class TestTold:
    """What is said beside the data."""

    def test_what_a_format_of_actions_lacks(self, tmp_path: Path) -> None:
        path = tmp_path / "week.txt"
        path.write_text(f"{BAD}\nTAVRENNE COASTAL WARNING 41/26\nBUOY ADRIFT.\n", "utf-8")
        lines = invoke("parse", str(path), *outs(tmp_path, "a.geojson", "a.csv")).stderr
        assert lines.splitlines() == [
            f"noticeparse: {path}: 1 error; `noticeparse check` shows what to look at",
            f"noticeparse: {path}: 1 notice without an action, not in geojson and csv",
            f"noticeparse: {path}: 1 unusable action left out of geojson; --unusable puts them in",
        ]
        asked = invoke("parse", str(path), "--unusable", *outs(tmp_path, "a.geojson")).stderr
        assert "left out" not in asked

    @pytest.mark.parametrize("form", ["json", "jsonl", "text"])
    def test_nothing_where_all_is_written(self, form: str, good: str) -> None:
        assert invoke("parse", "--format", form, good).stderr == ""


class TestParts:
    """Parts made elsewhere."""

    def test_are_the_same(self, tmp_path: Path) -> None:
        bulletins = [read_bulletin(text, name="w.txt") for text in (GOOD, BAD, "")]
        for folder in ("here", "elsewhere"):
            (tmp_path / folder).mkdir()
        forms = [*FORMATS]
        with Outputs(targets(tmp_path / "here"), AS_USUAL) as outputs:
            write_bulletins(outputs, bulletins)
        with Outputs(targets(tmp_path / "elsewhere"), AS_USUAL) as outputs:
            write_parts(outputs, (parts_of(one, forms, AS_USUAL) for one in bulletins))
        for form in forms:
            here, elsewhere = tmp_path / "here" / form, tmp_path / "elsewhere" / form
            assert here.read_bytes() == elsewhere.read_bytes() != b""


def targets(folder: Path) -> list[Target]:
    return [Target(str(folder / form), form) for form in FORMATS]
