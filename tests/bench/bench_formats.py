"""What each format of `parse` costs: the same records written in every one of them.

    python -m tests.bench.bench_formats [--size 1MB] [--runs 5]

The formats take turns in one process on texts of all layouts.  The whole way is reading, which is
measured too, and writing.
"""

from __future__ import annotations

import argparse
from functools import partial

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from noticeparse.testing.generator import generate
from noticeparse.testing.generator.__main__ import read_size
from noticeparse.writers import FORMATS, new_writer, write
from tests.bench.measure import forget, machine, middle, seconds, table


def written(form: str, bulletin: Bulletin) -> bytes:
    """A bulletin in a format, as the bytes of a file."""
    return b"".join(piece.encode() for piece in write(new_writer(form), [bulletin]))


def main() -> None:
    """Measure and print."""
    options = argparse.ArgumentParser(prog="python -m tests.bench.bench_formats")
    options.add_argument("--size", type=read_size, default=1_000_000)
    options.add_argument("--runs", type=int, default=5)
    given = options.parse_args()
    reading: list[float] = []
    writing: dict[str, list[float]] = {form: [] for form in FORMATS}
    sizes: dict[str, list[float]] = {form: [] for form in FORMATS}
    for seed in range(given.runs):
        text = generate(seed, size_bytes=given.size).text
        forget()
        reading.append(seconds(partial(parse, text)))
        bulletin = parse(text)
        for form in FORMATS:
            writing[form].append(seconds(partial(written, form, bulletin)))
            sizes[form].append(len(written(form, bulletin)) / len(text.encode()))
    size = given.size / 1e6
    print(f"{machine()}; reading {middle(reading):.2f} s for {size:g} MB of text")
    rows = []
    for form in FORMATS:
        taken = middle(writing[form])
        whole = taken + middle(reading)
        rows.append(
            (
                form,
                f"{taken:.3f}",
                f"{size / taken:.2f}",
                f"{size / whole:.3f}",
                f"{taken / whole:.0%}",
                f"{middle(sizes[form]):.1f}",
            )
        )
    titles = ("format", "s", "MB/s", "whole way MB/s", "share of it", "bytes / text")
    print(table(titles, rows))


if __name__ == "__main__":
    main()
