"""Where the project lies, and the files of its synthetic corpus."""

from __future__ import annotations

from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
CORPUS = ROOT / "corpus_synthetic"
CLEAN = sorted((CORPUS / "clean").glob("*.txt"))
EDITION = CORPUS / "demo_edition.txt"
FAULTY = [*sorted((CORPUS / "faulty").glob("*.txt")), EDITION]
TEXTS = CLEAN + FAULTY


def name_of(path: Path) -> str:
    """`clean/weekly_full`."""
    return f"{path.parent.name}/{path.stem}"
