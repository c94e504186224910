"""The whole way from text to JSON bytes against a scanner written by hand for the same layout.

    python -m tests.bench.bench_whole [--size 1MB] [--runs 5]

Both make the same pydantic records, which is looked at first; then they take turns in one process,
each run on a text of its own and with empty caches.
"""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from functools import partial
from typing import Any

from noticeparse import parse
from noticeparse.records import Bulletin
from noticeparse.testing.generator import generate
from noticeparse.testing.generator.__main__ import read_size
from tests.bench.hand_scanner import scan, scan_bulletin
from tests.bench.measure import forget, machine, middle, seconds, table

_LAYOUT = ("notice_first",)


def read(text: str) -> bytes:
    """The bulletin of a text as JSON bytes, the way of the library."""
    return parse(text).model_dump_json().encode()


def unlike(one: Any, other: Any, path: str = "") -> Iterator[str]:
    """Where two JSON values differ."""
    if isinstance(one, dict) and isinstance(other, dict):
        for key in one:
            yield from unlike(one[key], other.get(key), f"{path}/{key}")
    elif isinstance(one, list) and isinstance(other, list) and len(one) == len(other):
        for index, (left, right) in enumerate(zip(one, other, strict=True)):
            yield from unlike(left, right, f"{path}/{index}")
    elif one != other:
        yield f"{path}: by hand {str(one)[:60]}, noticeparse {str(other)[:60]}"


def same_notices(text: str) -> tuple[int, int, list[str]]:
    """Notices that are alike in both, all notices, and the first difference of each unlike one."""
    hand, own = scan_bulletin(text), parse(text)
    differences = [
        difference
        for left, right in zip(_notices(hand), _notices(own), strict=True)
        if (difference := next(unlike(left, right), None)) is not None
    ]
    return len(hand.notices) - len(differences), len(hand.notices), differences


def _notices(bulletin: Bulletin) -> list[Any]:
    notices: list[Any] = bulletin.model_dump(mode="json")["notices"]
    return notices


def main() -> None:
    """Compare, measure, print."""
    options = argparse.ArgumentParser(prog="python -m tests.bench.bench_whole")
    options.add_argument("--size", type=read_size, default=1_000_000)
    options.add_argument("--runs", type=int, default=5)
    given = options.parse_args()
    texts = [
        generate(seed, size_bytes=given.size, layouts=_LAYOUT).text for seed in range(given.runs)
    ]
    alike, count, differences = same_notices(texts[0])
    print(f"{machine()}; records alike in {alike} of {count} notices")
    for difference in differences[:5]:
        print("  unlike", difference)
    by_hand, own = [], []
    for text in texts:
        forget()
        by_hand.append(seconds(partial(scan, text)))
        forget()
        own.append(seconds(partial(read, text)))
    size = middle([len(text.encode()) for text in texts]) / 1e6
    rows = []
    for name, times in (("scanner by hand", by_hand), ("noticeparse", own)):
        taken = middle(times)
        ratio = taken / middle(by_hand)
        rows.append((name, f"{taken:.2f}", f"{size / taken:.2f}", f"{ratio:.2f}"))
    print(table(("text to JSON bytes", "s", "MB/s", "time / by hand"), rows))


if __name__ == "__main__":
    main()
