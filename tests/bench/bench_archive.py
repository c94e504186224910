"""How long an archive takes: one process, several, and workers of a cluster on this machine.

    python -m tests.bench.bench_archive [--files 80] [--size 25kB] [--jobs 2]

The files are of every layout of the generator.  Each way must give the same bytes.
"""

from __future__ import annotations

import argparse
import os
import resource
import subprocess
import sys
import tempfile
import time
from collections.abc import Sequence
from pathlib import Path

from noticeparse.testing.generator import ALL, generate
from noticeparse.testing.generator.__main__ import read_size
from tests.bench.measure import machine, table


def write_archive(directory: Path, files: int, size: int) -> int:
    """Fill a directory; how many bytes it holds."""
    directory.mkdir()
    length = 0
    for number in range(files):
        layout = ALL[number % len(ALL)]
        text = generate(number, size_bytes=size, layouts=(layout,)).text
        length += (directory / f"{number:04}.txt").write_bytes(text.encode())
    return length


def seconds_of(archive: Path, into: Path, *options: str) -> tuple[float, float]:
    """What one run takes from start to end, by the clock and of the processors."""
    command = [sys.executable, "-m", "noticeparse", "parse", str(archive), "--into", str(into)]
    start, used = time.perf_counter(), _used()
    ran = subprocess.run([*command, *options], stderr=subprocess.PIPE, check=False)
    if ran.returncode not in (0, 1):
        raise SystemExit(ran.stderr.decode())
    return time.perf_counter() - start, _used() - used


def _used() -> float:
    of_children = resource.getrusage(resource.RUSAGE_CHILDREN)
    return of_children.ru_utime + of_children.ru_stime


def bytes_in(directory: Path) -> dict[str, bytes]:
    """The files of a directory by name."""
    return {one.name: one.read_bytes() for one in directory.rglob("*") if one.is_file()}


def main(arguments: Sequence[str] | None = None) -> None:
    """Print a row for each way."""
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--files", type=int, default=80)
    options.add_argument("--size", type=read_size, default=25_000)
    options.add_argument("--jobs", default="2")
    given = options.parse_args(arguments)
    ways = {
        "one process": (),
        f"{given.jobs} jobs": ("--jobs", given.jobs),
        f"cluster, {given.jobs} local workers": ("--cluster", "local", "--jobs", given.jobs),
    }
    with tempfile.TemporaryDirectory() as name:
        root = Path(name)
        length = write_archive(root / "in", given.files, given.size)
        print(machine(), f"{os.cpu_count()} processors, {given.files} files", sep=", ")
        rows, first = [], None
        for way, extra in ways.items():
            seconds, used = seconds_of(root / "in", root / "out", *extra)
            found = bytes_in(root / "out")
            first = first or found
            if found != first:
                raise SystemExit(f"{way}: other bytes")
            rows.append((way, f"{seconds:.1f}", f"{used:.1f}", f"{length / 1e6 / seconds:.2f}"))
    print(table(("way", "seconds", "of processors", "MB/s"), rows))


if __name__ == "__main__":
    main()
