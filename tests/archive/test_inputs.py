"""What is read, in which order, and what is said of the rest."""

from __future__ import annotations

import json
import os
from pathlib import Path

import pytest

from noticeparse.archive.inputs import list_inputs, of_shard
from tests.archive.folder import NAMES
from tests.command import GOOD, invoke


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
