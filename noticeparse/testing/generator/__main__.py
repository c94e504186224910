"""Writes one bulletin: `python -m noticeparse.testing.generator --seed 1 --size 2MB > file`."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from noticeparse.testing.generator import ALL, generate

_UNITS = {"B": 1, "KB": 1000, "MB": 1_000_000, "GB": 1_000_000_000}


def read_size(words: str) -> int:
    """A size in bytes: `2MB`, `10 kB`, `500`."""
    figures = words.strip().rstrip("kKmMgGbB ")
    unit = words.strip()[len(figures) :].strip().upper() or "B"
    if unit not in _UNITS:
        raise argparse.ArgumentTypeError(f"`{words}` is no size: write 500, 10kB or 2MB")
    return int(float(figures) * _UNITS[unit])


def main() -> None:
    """Write one bulletin to standard output."""
    options = argparse.ArgumentParser(
        prog="python -m noticeparse.testing.generator", description=__doc__
    )
    options.add_argument("--seed", type=int, default=1)
    options.add_argument("--size", type=read_size, default=10_000)
    options.add_argument("--layout", choices=ALL, action="append", help="default: any")
    options.add_argument("--truth", type=Path, help="write the truth of the text here, as JSON")
    given = options.parse_args()
    bulletin = generate(given.seed, size_bytes=given.size, layouts=given.layout or ALL)
    sys.stdout.buffer.write(bulletin.text.encode("utf-8"))
    if given.truth is not None:
        given.truth.write_text(bulletin.truth.to_json(), "utf-8")


if __name__ == "__main__":
    main()
