"""Whole outputs, and those kept as files, byte for byte; `--update-golden` writes them anew."""

from __future__ import annotations

from pathlib import Path

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from noticeparse.writers import AS_USUAL, Wishes, new_writer, write
from tests.corpus_files import CORPUS

FOLDER = Path(__file__).with_name("golden")
NAMES = ("demo", "demo_faulty")


def written(form: str, *bulletins: Bulletin, wishes: Wishes = AS_USUAL) -> str:
    """The whole output of bulletins in a format."""
    return "".join(write(new_writer(form, wishes), bulletins))


def written_of(name: str, form: str) -> str:
    """What a demonstration bulletin gives in a format."""
    text = (CORPUS / f"{name}.txt").read_text("utf-8")
    return written(form, parse(text, name=f"{name}.txt"))


def kept(name: str, found: str, config: pytest.Config) -> str:
    """The text of a golden file; that found, where the files are to be written anew."""
    path = FOLDER / name
    if config.getoption("--update-golden"):
        path.write_bytes(found.encode("utf-8"))
    return path.read_bytes().decode("utf-8")
