"""Outputs kept as files, byte for byte; `--update-golden` writes them anew."""

from __future__ import annotations

from pathlib import Path

import pytest

from noticeparse import parse
from noticeparse.writers import new_writer, write

FOLDER = Path(__file__).with_name("golden")
CORPUS = Path(__file__).resolve().parents[1] / "corpus_synthetic"
NAMES = ("demo", "demo_faulty")


def written_of(name: str, form: str) -> str:
    """What a demonstration bulletin gives in a format."""
    text = (CORPUS / f"{name}.txt").read_text("utf-8")
    return "".join(write(new_writer(form), [parse(text, name=f"{name}.txt")]))


def kept(name: str, found: str, config: pytest.Config) -> str:
    """The text of a golden file; that found, where the files are to be written anew."""
    path = FOLDER / name
    if config.getoption("--update-golden"):
        path.write_bytes(found.encode("utf-8"))
    return path.read_bytes().decode("utf-8")
