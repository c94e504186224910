"""The law of the harness over the texts it starts from, and a few runs under Atheris."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from tests.fuzz import law
from tests.fuzz.harness import CORPUS

SEEDS = sorted(CORPUS.iterdir())


def test_there_are_seeds() -> None:
    assert len(SEEDS) >= 12


@pytest.mark.parametrize("path", SEEDS, ids=lambda path: path.name)
def test_seed_keeps_the_law(path: Path) -> None:
    law.check(path.read_bytes())


def test_a_broken_law_is_seen(monkeypatch: pytest.MonkeyPatch) -> None:
    (position,) = law.find_positions("47-12.34S 123-45.67W")
    wrong = position.model_copy(update={"lat": position.lat + 1})
    monkeypatch.setattr(law, "find_positions", lambda text: [wrong])
    with pytest.raises(AssertionError) as broken:
        law.check("47-12.34S 123-45.67W\u00a0".encode())
    assert "U+00A0 NO-BREAK SPACE at 20" in broken.value.__notes__[0]


def test_a_figure_lost_is_seen(monkeypatch: pytest.MonkeyPatch) -> None:
    (position,) = law.find_positions("47-12.3S 123-45.6W")
    wrong = position.model_copy(update={"written": "47-12.34S 123-45.67W"})
    monkeypatch.setattr(law, "find_positions", lambda text: [wrong])
    with pytest.raises(AssertionError):
        law.check(b"47-12.34S 123-45.67W")


def test_under_atheris(tmp_path: Path) -> None:
    pytest.importorskip("atheris")
    command = [sys.executable, "-m", "tests.fuzz.harness", "-runs=24", str(tmp_path)]
    root = Path(__file__).parents[2]
    ran = subprocess.run(command, capture_output=True, cwd=root, check=False, timeout=300)
    assert ran.returncode == 0, ran.stderr.decode("utf-8", "replace")[-2000:]
    assert b"Done 24 runs" in ran.stderr
