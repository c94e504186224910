"""A zip file may say anything of itself."""

from __future__ import annotations

import json
import os
import zipfile
from pathlib import Path

import pytest

from noticeparse.archive import zips
from tests.archive.folder import files_in
from tests.command import BAD, GOOD, invoke


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
