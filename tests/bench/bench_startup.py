"""A cold start: one notice through the command line, against importing what it is built on.

    python -m tests.bench.bench_startup [--runs 10]

All are new processes that take turns; the figure is the ratio of the medians.  The first run,
which is left out, keeps tables and compiled modules for the others in a folder of its own, as an
installed program has them, see `noticeparse.store`.
"""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
import tempfile
from functools import partial
from pathlib import Path

from noticeparse.store import VARIABLE
from noticeparse.testing.generator import generate
from tests.bench.measure import machine, middle, table, wall_seconds

_COMMANDS = {
    "import lark, pydantic": ["-c", "import lark, pydantic"],
    "python -m noticeparse --version": ["-m", "noticeparse", "--version"],
}


def main() -> None:
    """Measure and print."""
    options = argparse.ArgumentParser(prog="python -m tests.bench.bench_startup")
    options.add_argument("--runs", type=int, default=10)
    given = options.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        notice = Path(folder) / "one_notice.txt"
        notice.write_text(generate(1, notices=1, layouts=("notice_first",)).text, "utf-8")
        parse = ["-m", "noticeparse", "parse", str(notice)]
        commands = {
            **_COMMANDS,
            "python -m noticeparse parse": parse,
            "the same, nothing kept": parse,
        }
        times: dict[str, list[float]] = {name: [] for name in commands}
        for _ in range(given.runs + 1):
            for name, arguments in commands.items():
                kept = "off" if name.endswith("nothing kept") else folder
                times[name].append(wall_seconds(partial(_run, arguments, folder, kept)))
    medians = {name: middle(found[1:]) for name, found in times.items()}
    base = medians["import lark, pydantic"]
    print(f"{machine()}; medians of {given.runs} runs, the first left out")
    rows = [(name, f"{1000 * one:.0f}", f"{one / base:.2f}") for name, one in medians.items()]
    print(table(("cold start of", "ms", "ratio"), rows))


def _run(arguments: list[str], folder: str, kept: str) -> None:
    environment = {**os.environ, VARIABLE: kept, "PYTHONPYCACHEPREFIX": folder}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    subprocess.run([sys.executable, *arguments], check=False, capture_output=True, env=environment)


if __name__ == "__main__":
    main()
