"""A checkout and a virtual environment without the program, for installing it as a stranger would.

No index is asked: what the program depends on, and what builds it, comes by a `.pth` file from the
environment that runs the tests, where the program itself is left out.
"""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sysconfig
import venv
from collections.abc import Mapping, Sequence
from pathlib import Path

from tests.corpus_files import ROOT

_NOT_SHIPPED = {".git", ".venv", "dist", "build"}

# The program itself, what leads to it, and pip, which `venv` would not install beside another.
_LEFT_OUT = re.compile(r"noticeparse|\.pth$|^(?:pip|setuptools)(?:-|$)")

# pip reads `0` of an option that begins with `no` as: take that away.
OFFLINE = {"PIP_NO_INDEX": "1", "PIP_NO_DEPS": "1", "PIP_NO_BUILD_ISOLATION": "0"}


def copy_checkout(to: Path) -> Path:
    """The checkout without caches and products, in the folder `to`."""

    def ignored(folder: str, names: Sequence[str]) -> set[str]:
        top = _NOT_SHIPPED if Path(folder) == ROOT else set()
        return {
            n for n in names if n in top or n == "__pycache__" or n.endswith(("_cache", ".pyc"))
        }

    shutil.copytree(ROOT, to, ignore=ignored)
    return to


def make_bare_venv(at: Path) -> Path:
    """A virtual environment that sees the dependencies but not the program; gives its Python."""
    venv.create(at, symlinks=True)
    python = at / "bin" / "python"
    dependencies = at / "dependencies"
    dependencies.mkdir()
    for entry in _installed():
        if not _LEFT_OUT.search(entry.name):
            (dependencies / entry.name).symlink_to(entry)
    purelib = run([python, "-c", "import sysconfig; print(sysconfig.get_path('purelib'))"])
    Path(purelib.strip(), "dependencies.pth").write_text(f"{dependencies}\n", "utf-8")
    return python


def _installed() -> set[Path]:
    """What stands in the folders of packages of the running environment."""
    folders = {Path(sysconfig.get_path(name)) for name in ("purelib", "platlib")}
    return {entry for folder in folders for entry in folder.iterdir()}


def run(
    command: Sequence[str | Path],
    *,
    cwd: Path | None = None,
    environment: Mapping[str, str] | None = None,
) -> str:
    """What a command prints; fails with both streams where it ends otherwise than with 0."""
    # The folder of the checkout must not be found by way of the environment.
    inherited = {name: value for name, value in os.environ.items() if name != "PYTHONPATH"}
    ran = subprocess.run(
        [str(word) for word in command],
        cwd=cwd,
        env={**inherited, **(environment or {})},
        capture_output=True,
        check=False,
        timeout=300,
    )
    assert ran.returncode == 0, (ran.stdout + ran.stderr).decode("utf-8", "replace")
    return ran.stdout.decode("utf-8")
