"""One file for each input, and the manifest."""

from __future__ import annotations

import errno
import io
import os
from pathlib import Path
from typing import Any

import pytest

from noticeparse.archive import runners
from noticeparse.archive.work import Done, Options, work
from noticeparse.console.outlet import Outlet
from noticeparse.version import VERSION
from noticeparse.writers import FORMATS, ending_of
from tests.archive.folder import NAMES, entries, files_in
from tests.command import BAD, GOOD, invoke


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
