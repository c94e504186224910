"""The folder that all tests of an archive read."""

from __future__ import annotations

import zipfile
from pathlib import Path

import pytest

from tests.archive.folder import OTHER
from tests.command import BAD, GOOD


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
