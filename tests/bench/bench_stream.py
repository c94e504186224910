"""What a stream of any length takes: time and peak memory of `parse --format jsonl -`.

    python -m tests.bench.bench_stream [--size 5MB --size 20MB --size 100MB] [--layout LAYOUT]

Flat memory is one figure in the last column, whatever the size.  The text comes through a pipe.
"""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
import tempfile
import time
from collections.abc import Sequence

from noticeparse.testing.generator import ALL
from noticeparse.testing.generator.__main__ import read_size
from tests.bench.measure import machine, table

_SIZES = (5_000_000, 20_000_000, 100_000_000)
_PARSE = (sys.executable, "-m", "noticeparse", "parse", "--format", "jsonl", "-")


def stream(size: int, layout: str) -> tuple[str, ...]:
    """One row: size, notices and megabytes out, seconds, MB/s and the peak of memory."""
    with tempfile.TemporaryFile() as text, tempfile.TemporaryFile() as out:
        writing = (sys.executable, "-m", "noticeparse.testing.generator", "--seed", "3")
        subprocess.run(
            [*writing, "--size", str(size), "--layout", layout], stdout=text, check=True
        )
        text.seek(0)
        start = time.perf_counter()
        with subprocess.Popen(["cat"], stdin=text, stdout=subprocess.PIPE) as pipe:
            reading = subprocess.Popen(
                _PARSE, stdin=pipe.stdout, stdout=out, stderr=subprocess.DEVNULL
            )
            _, status, used = os.wait4(reading.pid, 0)
            reading.returncode = os.waitstatus_to_exitcode(status)
        seconds = time.perf_counter() - start
        if reading.returncode not in (0, 1):
            raise SystemExit(f"the stream ended with status {reading.returncode}")
        length = os.fstat(text.fileno()).st_size
        written = os.fstat(out.fileno()).st_size
    return (
        f"{length / 1e6:,.0f} MB",
        f"{written / 1e6:,.0f} MB",
        f"{seconds:.0f}",
        f"{length / 1e6 / seconds:.2f}",
        f"{used.ru_maxrss / 1000:,.0f} MB",
    )


def main(arguments: Sequence[str] | None = None) -> None:
    """Print a row for each size."""
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--size", type=read_size, action="append")
    options.add_argument("--layout", choices=ALL, default="notice_first")
    given = options.parse_args(arguments)
    print(machine())
    rows = [stream(size, given.layout) for size in given.size or _SIZES]
    print(table(("text", "records", "seconds", "MB/s", "peak memory"), rows))


if __name__ == "__main__":
    main()
