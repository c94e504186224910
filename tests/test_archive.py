"""Many files in one run: the same bytes however it is done, and nothing half done."""

from __future__ import annotations

import errno
import io
import json
import os
import signal
import subprocess
import sys
import threading
import time
import zipfile
from pathlib import Path
from typing import Any

import pytest

from noticeparse.archive import run as archive_run
from noticeparse.archive import runners, zips
from noticeparse.archive.inputs import list_inputs, of_shard
from noticeparse.archive.runners import Asked, Order, Pool, in_order
from noticeparse.archive.work import Done, Options, work
from noticeparse.console.outlet import Outlet
from noticeparse.console.outputs import Target
from noticeparse.version import VERSION
from noticeparse.writers import FORMATS, Part, ending_of
from tests.command import BAD, GOOD, invoke

OTHER = GOOD.replace("2417", "2418")


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A directory with good files, bad ones, a zip file and a file of another kind."""
    monkeypatch.chdir(tmp_path)
    archive = tmp_path / "archive"
    (archive / "2025").mkdir(parents=True)
    (archive / "b.txt").write_text(BAD, "utf-8")
    (archive / "2025" / "a.TXT").write_text(GOOD, "utf-8")
    (archive / "binary.txt").write_bytes(bytes(range(9)) * 9)
    (archive / "picture.png").write_bytes(b"\x89PNG")
    with zipfile.ZipFile(archive / "c.zip", "w") as file:
        file.writestr("week 1/z.txt", OTHER)
        file.writestr("readme.md", "no notice")
    return archive


NAMES = ["archive/2025/a.TXT", "archive/b.txt", "archive/c.zip/week 1/z.txt"]


def entries(directory: Path, name: str = "manifest.jsonl") -> list[dict[str, Any]]:
    return [json.loads(line) for line in (directory / name).read_text("utf-8").splitlines()]


def files_in(directory: Path) -> set[str]:
    return {one.relative_to(directory).as_posix() for one in directory.rglob("*") if one.is_file()}


class TestInputs:
    """What is read, in which order, and what is said of the rest."""

    def test_directory(self, folder: Path) -> None:
        listing = list_inputs(["archive"])
        assert [one.name for one in listing.inputs] == [
            NAMES[0], NAMES[1], "archive/binary.txt", NAMES[2]
        ]  # fmt: skip
        assert listing.inputs[0].output == os.path.join("2025", "a.TXT")
        assert len(listing.notes) == 2
        assert "1 file is of no kind that is read and passed over" in listing.notes[1]

    def test_pattern(self, folder: Path) -> None:
        listing = list_inputs(["archive/**/*.[tT]*"])
        assert [one.output for one in listing.inputs] == [
            os.path.join("2025", "a.TXT"), "b.txt", "binary.txt"
        ]  # fmt: skip

    def test_pattern_without_a_match(self, folder: Path) -> None:
        result = invoke("parse", "archive/*.nothing")
        assert (result.exit_code, result.stdout) == (2, "")
        assert "archive/*.nothing: no file matches" in result.stderr

    def test_a_file_named_like_a_pattern(self, folder: Path) -> None:
        Path("week[1].txt").write_text(GOOD, "utf-8")
        assert json.loads(invoke("parse", "week[1].txt").stdout)["source"]["name"] == "week[1].txt"

    def test_a_directory_that_holds_itself(self, folder: Path) -> None:
        (folder / "2025" / "again").symlink_to(folder)
        listing = list_inputs(["archive"])
        assert len(listing.inputs) == 4
        assert any("1 link to directories not followed" in one for one in listing.notes)

    @pytest.mark.parametrize("pattern", ["archive/**/*.txt", "archive/**", "arch*/**/b.txt"])
    def test_a_pattern_in_a_circle(self, folder: Path, pattern: str) -> None:
        for name in ("again", "and again"):
            (folder / "2025" / name).symlink_to(folder)
        names = [one.name for one in list_inputs([pattern]).inputs]
        assert names.count("archive/b.txt") == 1
        assert not [one for one in names if "again" in one]

    def test_what_is_no_pattern(self, folder: Path) -> None:
        result = invoke("parse", "archive/**.txt")
        assert result.exit_code == 2
        assert "archive/**.txt: no" in result.stderr

    def test_output_directory_is_no_input(self, folder: Path) -> None:
        for _ in range(2):
            result = invoke("parse", "archive", "--format", "json", "--into", "archive/out")
        (folder / "out" / "note.txt").write_text(GOOD, "utf-8")
        assert len(list_inputs(["archive"], apart_from="archive/out").inputs) == 4
        assert result.exit_code == 2

    @pytest.mark.skipif(os.geteuid() == 0, reason="to the superuser everything is permitted")
    def test_no_permission(self, folder: Path) -> None:
        (folder / "2025").chmod(0)
        try:
            result = invoke("parse", "archive")
        finally:
            (folder / "2025").chmod(0o700)
        assert "archive/2025: no permission to read it" in result.stderr

    def test_pipes_are_not_waited_for(self, folder: Path) -> None:
        os.mkfifo(folder / "pipe.txt")
        assert len(list_inputs(["archive"]).inputs) == 4

    def test_shards_are_each_input_once_and_stand_still(self, folder: Path) -> None:
        for number in range(40):
            (folder / f"{number}.txt").write_text(GOOD, "utf-8")
        inputs = list_inputs(["archive"]).inputs
        shards = [list(of_shard(inputs, (number, 3))) for number in (1, 2, 3)]
        assert sorted(one for shard in shards for one in shard) == sorted(inputs)
        assert all(len(shard) > 5 for shard in shards)
        fewer = [one for one in inputs if one.output != "7.txt"]
        assert [one for one in shards[0] if one.output != "7.txt"] == list(of_shard(fewer, (1, 3)))


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


class TestOutputDirectory:
    """One file for each input, and the manifest."""

    def test_files_and_manifest(self, folder: Path) -> None:
        result = invoke("parse", "archive", "--into", "out")
        out = Path("out")
        assert result.exit_code == 2
        assert files_in(out) == {
            "2025/a.TXT.json", "b.txt.json", "c.zip/week 1/z.txt.json", "manifest.jsonl"
        }  # fmt: skip
        assert (out / "b.txt.json").read_text("utf-8") == invoke("parse", "archive/b.txt").stdout
        by_name = {one["name"]: one for one in entries(out)}
        assert list(by_name) == [NAMES[0], NAMES[1], "archive/binary.txt", NAMES[2]]
        bad = by_name["archive/b.txt"]
        assert (bad["notices"], bad["error"], bad["version"]) == (1, 1, VERSION)
        assert bad["findings"]["position-minutes-out-of-range"] == 1
        assert bad["bytes"] == (out / bad["output"]).stat().st_size
        assert by_name["archive/binary.txt"]["refusal"].startswith("not a text file")
        assert "3 files read, 1 with errors, 1 refused" in result.stderr

    @pytest.mark.parametrize("form", sorted(FORMATS))
    @pytest.mark.parametrize("jobs", [[], ["--jobs", "2"]], ids=["one process", "two"])
    def test_each_format_whole(self, folder: Path, form: str, jobs: list[str]) -> None:
        """One file for each input, as if that had been read alone."""
        own = {"csv": ["--bom"], "geojson": ["--unusable"], "json": ["--indent"]}.get(form, [])
        options = ["--format", form, *own]
        invoke("parse", "archive/b.txt", "archive/2025", "--into", "out", *options, *jobs)
        for name, output in (("archive/b.txt", "b.txt"), (NAMES[0], "a.TXT")):
            alone = invoke("parse", name, *options).stdout_bytes
            assert Path(f"out/{output}{ending_of(form)}").read_bytes() == alone
        assert entries(Path("out"))[0]["unusable"] == 1

    def test_other_wishes_are_read_anew(self, folder: Path) -> None:
        again = ["parse", "archive/b.txt", "--into", "out", "--format", "geojson", "--resume"]
        assert "1 kept from before" not in invoke(*again).stderr
        assert "1 kept from before" in invoke(*again).stderr
        assert "1 file read" in invoke(*again, "--unusable").stderr

    def test_the_same_bytes_with_jobs(self, folder: Path) -> None:
        invoke("parse", "archive", "--into", "one")
        invoke("parse", "archive", "--into", "two", "--jobs", "2")
        assert files_in(Path("one")) == files_in(Path("two"))
        for name in files_in(Path("one")):
            assert (Path("one") / name).read_bytes() == (Path("two") / name).read_bytes()

    def test_resumed(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        whole = invoke("parse", "archive", "--into", "out", "--format", "jsonl")
        before = Path("out/manifest.jsonl").read_bytes()
        read: list[str] = []

        def counted(data: bytes, name: str, options: Options) -> Done:
            read.append(name)
            return work(data, name, options)

        monkeypatch.setattr(runners, "work", counted)
        again = ["parse", "archive", "--into", "out", "--format", "jsonl", "--resume"]
        result = invoke(*again)
        assert read == ["archive/binary.txt"]
        assert result.exit_code == whole.exit_code == 2
        assert "0 files read, 3 kept from before, 1 with errors" in result.stderr
        assert Path("out/manifest.jsonl").read_bytes() == before

        (folder / "b.txt").write_text(GOOD, "utf-8")
        Path("out/2025/a.TXT.jsonl").write_bytes(b"cut off")
        invoke(*again)
        assert read[1:] == [NAMES[0], NAMES[1], "archive/binary.txt"]
        assert b"cut off" not in Path("out/2025/a.TXT.jsonl").read_bytes()
        invoke(*again[:-1], "--region", "A", "--resume")
        assert read[4:] == [*NAMES[:2], "archive/binary.txt", NAMES[2]]

    def test_an_older_version_is_not_gone_on_with(
        self, folder: Path, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        invoke("parse", "archive/b.txt", "--into", "out")
        manifest = Path("out/manifest.jsonl")
        manifest.write_text(manifest.read_text("utf-8").replace(VERSION, "0.0.1"), "utf-8")
        result = invoke("parse", "archive/b.txt", "--into", "out", "--resume")
        assert "1 file read" in result.stderr

    @pytest.mark.parametrize("rest", ["{", "[]\n", '{"output":7}\n', "\x00\n", '{"output":"b'])
    def test_a_manifest_that_is_cut_off(self, folder: Path, rest: str) -> None:
        invoke("parse", "archive/2025", "archive/b.txt", "--into", "out")
        manifest = Path("out/manifest.jsonl")
        first = manifest.read_text("utf-8").splitlines(keepends=True)[0]
        manifest.write_text(first + rest, "utf-8")
        result = invoke("parse", "archive/2025", "archive/b.txt", "--into", "out", "--resume")
        assert "1 file read, 1 kept from before" in result.stderr
        assert len(entries(Path("out"))) == 2

    def test_records_of_what_an_input_was_do_not_stay(self, folder: Path) -> None:
        invoke("parse", "archive", "--into", "out")
        (folder / "b.txt").write_bytes(b"\0\1\2" * 99)
        invoke("parse", "archive", "--into", "out", "--resume")
        assert "b.txt.json" not in files_in(Path("out"))

    def test_two_inputs_for_one_output(self, folder: Path) -> None:
        Path("other").mkdir()
        Path("other/B.txt").write_text(GOOD, "utf-8")
        result = invoke("parse", "archive/b.txt", "other", "archive/b.txt", "--into", "out")
        assert "other/B.txt: its output would take the place of that of archive/b.txt" in (
            result.stderr
        )
        assert "archive/b.txt: is named twice and read once" in result.stderr
        assert result.exit_code == 2

    def test_no_output_takes_the_place_of_an_input(self, folder: Path) -> None:
        Path("b.txt.json").write_text(GOOD, "utf-8")
        result = invoke("parse", "archive/b.txt", "b.txt.json", "--into", ".")
        assert "archive/b.txt: its output would take the place of an input" in result.stderr
        assert Path("b.txt.json").read_text("utf-8") == GOOD
        result = invoke("parse", "archive", "--out", "archive/b.txt")
        assert result.exit_code == 2
        assert "archive/b.txt: is an input too" in result.stderr
        assert (folder / "b.txt").read_text("utf-8") == BAD

    def test_no_output_takes_the_place_of_the_manifest(self, folder: Path) -> None:
        Path("manifest").write_text(GOOD, "utf-8")
        result = invoke("parse", "manifest", "--format", "jsonl", "--into", "out")
        assert "take the place of the manifest" in result.stderr
        assert entries(Path("out"))[0]["refusal"]

    def test_shards(self, folder: Path) -> None:
        for number in (1, 2):
            invoke("parse", "archive", "--into", "out", "--shard", f"{number}/2")
        invoke("parse", "archive", "--into", "whole")
        names = {one for one in files_in(Path("out")) if not one.startswith("manifest")}
        assert names == files_in(Path("whole")) - {"manifest.jsonl"}
        both = [*entries(Path("out"), "manifest-1-of-2.jsonl")]
        both += entries(Path("out"), "manifest-2-of-2.jsonl")
        assert sorted(one["name"] for one in both) == sorted(
            one["name"] for one in entries(Path("whole"))
        )
        # What shards have done counts for a run of the whole.
        result = invoke("parse", "archive", "--into", "out", "--resume")
        assert "0 files read, 3 kept from before" in result.stderr

    def test_full_disk(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        """The run stops, what was in its place stays, and nothing half-written is left."""
        invoke("parse", "archive", "--into", "out")
        before = (Path("out") / "b.txt.json").read_bytes()
        write = Outlet.write_bytes

        class Full(io.BytesIO):
            def write(self, data: Any) -> int:
                raise OSError(errno.ENOSPC, "No space left on device")

        def written(self: Outlet, data: bytes) -> None:
            if self._path and self._path.endswith("b.txt.json"):
                self._stream()
                self._file = Full()
            write(self, data)

        monkeypatch.setattr(Outlet, "write_bytes", written)
        (folder / "b.txt").write_text(BAD * 2, "utf-8")
        result = invoke("parse", "archive", "--into", "out", "--resume")
        assert result.exit_code == 2
        assert "cannot be written: No space left on device" in result.stderr
        assert (Path("out") / "b.txt.json").read_bytes() == before
        assert not [one for one in files_in(Path("out")) if one.endswith(".part")]
        monkeypatch.undo()
        os.chdir(folder.parent)
        result = invoke("parse", "archive", "--into", "out", "--resume")
        assert "1 file read, 2 kept from before" in result.stderr

    def test_an_output_that_has_no_place(self, folder: Path) -> None:
        """A directory stands where the file goes: that one is refused, the others are written."""
        Path("out/b.txt.json").mkdir(parents=True)
        result = invoke("parse", "archive", "--into", "out")
        assert "archive/b.txt: its output cannot be written" in result.stderr
        assert "2025/a.TXT.json" in files_in(Path("out"))

    def test_no_directory(self, folder: Path) -> None:
        result = invoke("parse", "archive", "--into", "archive/b.txt")
        assert result.exit_code == 2
        assert (folder / "b.txt").read_text("utf-8") == BAD
        assert "Traceback" not in result.stderr


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


class TestZip:
    """A zip file may say anything of itself."""

    def names(self, *entries: tuple[str | zipfile.ZipInfo, bytes]) -> tuple[list[str], str]:
        with zipfile.ZipFile("a.zip", "w", zipfile.ZIP_DEFLATED) as file:
            for name, data in entries:
                file.writestr(name, data)
        result = invoke("parse", "a.zip")
        names = [json.loads(one)["source"]["name"] for one in result.stdout.splitlines()]
        return names, result.stderr

    def test_bomb(self, folder: Path) -> None:
        names, told = self.names(("zero.txt", b" " * 9_000_000), ("a.txt", GOOD.encode()))
        assert names == ["a.zip/a.txt"]
        assert "zero.txt: unpacks to more than 200 times its size" in told

    def test_text_that_is_said_to_be_short(self, folder: Path) -> None:
        """Never more is unpacked than was said."""
        self.names(("a.txt", b" " * 9_000_000))
        data = Path("a.zip").read_bytes()
        size = (9_000_000).to_bytes(4, "little")
        Path("a.zip").write_bytes(data.replace(size, (100).to_bytes(4, "little")))
        result = invoke("parse", "a.zip")
        assert (result.exit_code, result.stdout) == (2, "")
        assert "a.zip/a.txt: cannot be unpacked" in result.stderr

    def test_too_large_in_all(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setattr(zips, "_MOST_IN_ALL", 200)
        names, told = self.names(("a.txt", GOOD.encode()), ("b.txt", GOOD.encode()))
        assert names == []
        assert "a.zip: unpacks to more than" in told

    def test_too_many(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setattr(zips, "_MOST_MEMBERS", 1)
        names, told = self.names(("a.txt", GOOD.encode()), ("b.txt", GOOD.encode()))
        assert names == []
        assert "holds 2 files; 1 at most" in told

    def test_zip_in_zip(self, folder: Path) -> None:
        names, told = self.names(("in.ZIP", b"PK"), ("a.txt", GOOD.encode()))
        assert names == ["a.zip/a.txt"]
        assert "in.ZIP: a zip file in a zip file is not opened" in told

    @pytest.mark.parametrize(
        "path", ["../a.txt", "/etc/a.txt", "a/../../b.txt", "c:/a.txt", "a\\..\\b.txt", "a//b.txt"]
    )
    def test_paths_that_lead_out(self, folder: Path, path: str) -> None:
        info = zipfile.ZipInfo("x")
        info.filename = path
        names, told = self.names((info, GOOD.encode()))
        assert names == []
        assert "its path leads out of the zip file" in told
        invoke("parse", "a.zip", "--into", "out")
        assert files_in(Path("out")) == {"manifest.jsonl"}

    @pytest.mark.filterwarnings("ignore:Duplicate name")
    def test_two_of_one_name(self, folder: Path) -> None:
        names, told = self.names(("a.txt", GOOD.encode()), ("a.txt", BAD.encode()))
        assert names == ["a.zip/a.txt"]
        assert "another file in the zip file has the same name" in told

    def test_encrypted(self, folder: Path) -> None:
        self.names(("a.txt", GOOD.encode()))
        data = bytearray(Path("a.zip").read_bytes())
        data[data.index(b"PK\x01\x02") + 8] |= 1
        Path("a.zip").write_bytes(data)
        assert "a.txt: is encrypted" in invoke("parse", "a.zip").stderr

    def test_damaged(self, folder: Path) -> None:
        self.names(("a.txt", os.urandom(5000)))
        data = bytearray(Path("a.zip").read_bytes())
        data[60:90] = bytes(30)
        Path("a.zip").write_bytes(data)
        assert "a.txt: cannot be unpacked" in invoke("parse", "a.zip").stderr

    def test_no_zip_file(self, folder: Path) -> None:
        Path("a.zip").write_text(GOOD, "utf-8")
        result = invoke("parse", "a.zip")
        assert "a.zip: no zip file that can be read" in result.stderr
        assert result.exit_code == 2
        assert "b.zip: no such file" in invoke("parse", "b.zip").stderr


def dies(data: bytes, name: str, options: Options) -> Done:
    """A worker that falls over one text, in a process of its own."""
    if name == "bad":
        os.kill(os.getpid(), signal.SIGKILL)
    return Done(parts=[Part(name)])


class TestWorkers:
    """A text that brings down its process costs itself alone."""

    def test_process_that_dies(self, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setattr(runners, "work", dies)
        names = ["a", "b", "bad", *"cdefghij"]
        asked = (Asked(one, Order(b"", one, Options(("json",)))) for one in names)
        pool = Pool(2)
        found = dict(in_order(pool, 3, asked))
        pool.close()
        assert list(found) == names
        assert {name: done.parts[0].body for name, done in found.items() if name != "bad"} == {
            one: one for one in names if one != "bad"
        }
        assert "the process that read it ended" in (found["bad"].refusal or "")

    def test_fault_of_the_program(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        def fails(*_: Any, **__: Any) -> None:
            raise RecursionError("too deep")

        monkeypatch.setattr("noticeparse.archive.work.read_intake", fails)
        done = work(GOOD.encode(), "a.txt", Options(("json",)))
        assert done.refusal == "a fault of this program: RecursionError: too deep"


def started(*arguments: str) -> subprocess.Popen[bytes]:
    """The program under test, run in the directory that is the current one."""
    return subprocess.Popen(
        [sys.executable, "-m", "noticeparse", "parse", *arguments],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        start_new_session=True,
        # Where the tests run in the background, Ctrl-C would be ignored in what they begin.
        preexec_fn=lambda: signal.signal(signal.SIGINT, signal.SIG_DFL),
        env={**os.environ, "PYTHONPATH": str(Path(archive_run.__file__).parents[2])},
    )


@pytest.mark.skipif(sys.platform == "win32", reason="signals as POSIX has them")
@pytest.mark.parametrize("jobs", ["1", "2"])
def test_interrupted(folder: Path, jobs: str) -> None:
    """Ctrl-C leaves whole files, and a manifest from which the run goes on."""
    for number in range(60):
        (folder / f"n{number}.txt").write_text(GOOD * 40, "utf-8")
    manifest = Path("out/manifest.jsonl")
    run = started("archive", "--into", "out", "--jobs", jobs)
    while not (manifest.exists() and manifest.stat().st_size > 1000):
        assert run.poll() is None
        time.sleep(0.02)
    os.killpg(run.pid, signal.SIGINT)
    _, told = run.communicate(timeout=60)
    assert run.returncode == 130
    assert b"--resume goes on from it" in told
    assert b"Traceback" not in told
    done = [one for one in entries(Path("out")) if one["output"]]
    assert 0 < len(done) < 60
    for name in files_in(Path("out")) - {"manifest.jsonl"}:
        json.loads((Path("out") / name).read_text("utf-8"))
    result = invoke("parse", "archive", "--into", "out", "--resume")
    assert f"{len(done)} kept from before" in result.stderr
    assert len(entries(Path("out"))) == 64


def test_reader_that_goes_away(folder: Path) -> None:
    run = started("archive", "--jobs", "2")
    assert run.stdout is not None
    assert run.stderr is not None
    run.stdout.close()
    told = run.stderr.read()
    run.stderr.close()
    assert run.wait(timeout=60) in (0, 1, 2)
    assert b"Traceback" not in told


class TestCluster:
    """The same job on dask.distributed."""

    def test_two_workers(self, folder: Path) -> None:
        distributed = pytest.importorskip("distributed", reason="needs the extra `cluster`")
        with distributed.LocalCluster(
            n_workers=2, threads_per_worker=1, dashboard_address=None, silence_logs=50
        ) as cluster:
            address = cluster.scheduler_address
            far = invoke("parse", "archive", "--cluster", address)
            invoke("parse", "archive", "--into", "far", "--cluster", address)
        near = invoke("parse", "archive")
        assert (far.stdout, far.stderr, far.exit_code) == (near.stdout, near.stderr, 2)
        invoke("parse", "archive", "--into", "near")
        for name in files_in(Path("near")):
            assert (Path("near") / name).read_bytes() == (Path("far") / name).read_bytes()

    def test_nobody_answers(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        pytest.importorskip("distributed", reason="needs the extra `cluster`")
        monkeypatch.setattr("noticeparse.archive.cluster._WAIT_S", 1)
        result = invoke("parse", "archive", "--cluster", "tcp://127.0.0.1:9")
        assert (result.exit_code, result.stdout) == (2, "")
        assert "--cluster: no cluster answers" in result.stderr

    def test_without_the_extra(self, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setitem(sys.modules, "distributed", None)
        result = invoke("parse", "archive", "--cluster", "local")
        assert result.exit_code == 2
        assert "needs the extra `cluster`" in result.stderr


def test_not_in_the_main_thread(folder: Path) -> None:
    """Signals are for the main thread alone; a run elsewhere goes without."""
    statuses: list[int] = []

    def go() -> None:
        plan = archive_run.Plan(targets=[Target("all.json", "json")])
        statuses.append(archive_run.parse_archive(["archive/b.txt"], Options(("json",)), plan))

    thread = threading.Thread(target=go)
    thread.start()
    thread.join()
    assert statuses == [1]
