"""The law of the harness over the texts it starts from, and a few runs under Atheris."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from tests.fuzz import harness

SEEDS = sorted(harness.CORPUS.iterdir())


def test_there_are_seeds() -> None:
    assert len(SEEDS) >= 12


@pytest.mark.parametrize("path", SEEDS, ids=lambda path: path.name)
def test_seed_keeps_the_law(path: Path) -> None:
    harness.check(path.read_bytes())


def test_a_broken_law_is_seen(monkeypatch: pytest.MonkeyPatch) -> None:
    (position,) = harness.find_positions("47-12.34S 123-45.67W")
    wrong = position.model_copy(update={"lat": position.lat + 1})
    monkeypatch.setattr(harness, "find_positions", lambda text: [wrong])
    with pytest.raises(AssertionError):
        harness.check(b"47-12.34S 123-45.67W")


def test_under_atheris(tmp_path: Path) -> None:
    pytest.importorskip("atheris")
    command = [sys.executable, "-m", "tests.fuzz.harness", "-runs=40", str(tmp_path)]
    root = Path(__file__).parents[2]
    ran = subprocess.run(command, capture_output=True, cwd=root, check=False, timeout=300)
    assert ran.returncode == 0, ran.stderr.decode("utf-8", "replace")[-2000:]
    assert b"Done 40 runs" in ran.stderr
