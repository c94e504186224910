"""A folder of inputs by their names, and what a run leaves in another."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from tests.command import GOOD

OTHER = GOOD.replace("2417", "2418")
NAMES = ["archive/2025/a.TXT", "archive/b.txt", "archive/c.zip/week 1/z.txt"]


def entries(directory: Path, name: str = "manifest.jsonl") -> list[dict[str, Any]]:
    """The lines of a manifest."""
    return [json.loads(line) for line in (directory / name).read_text("utf-8").splitlines()]


def files_in(directory: Path) -> set[str]:
    return {one.relative_to(directory).as_posix() for one in directory.rglob("*") if one.is_file()}
