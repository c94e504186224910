"""How the time grows with the text, and what hostile characters cost.

    python -m tests.bench.bench_growth [--largest 20MB] [--layout notice_first]

A time that grows as the text does keeps MB/s level and gives the ratio of the sizes.
"""

from __future__ import annotations

import argparse
from collections.abc import Callable, Sequence
from functools import partial

from noticeparse.testing.generator import ALL, generate
from noticeparse.testing.generator.__main__ import read_size
from tests.bench.bench_whole import read
from tests.bench.measure import forget, machine, middle, seconds, table

_SIZES = (10_000, 100_000, 1_000_000, 5_000_000, 20_000_000)
_RUN = 100_000
_HEAD = "1/26 TAVRENNE ISLANDS\nChart 802\nInsert\n  depth 8.6m  47-12.34S 123-45.67W\n"


def growth(sizes: Sequence[int], layout: str) -> list[tuple[str, ...]]:
    """A row per size: seconds, MB/s, and the time against that of the size before."""
    rows: list[tuple[str, ...]] = []
    before: tuple[int, float] | None = None
    for size in sizes:
        text = generate(1, size_bytes=size, layouts=(layout,)).text
        length = len(text.encode())
        times = []
        for _ in range(5 if size <= 100_000 else 1):
            forget()
            times.append(seconds(partial(read, text)))
        taken = middle(times)
        ratio = "" if before is None else f"{taken / before[1]:.1f} for {length / before[0]:.1f}"
        speed = length / 1e6 / taken
        rows.append((f"{size / 1000:,.0f} kB", f"{taken:.2f}", f"{speed:.3f}", ratio))
        before = (length, taken)
    return rows


def hostile(limit_s: float) -> list[tuple[str, ...]]:
    """A row per run of one thing: the time at two lengths, and their ratio (2 where it is linear).

    A tenth of the first length is tried before; what would take longer than `limit_s` is left out.
    """
    rows: list[tuple[str, ...]] = []
    for name, unit in _HOSTILE.items():
        tenth = _seconds(unit, _RUN // 10)
        if tenth > limit_s / 10:
            rows.append((name, f"{tenth:.2f} for a tenth", "", "too slow"))
            continue
        once = _seconds(unit, _RUN)
        if once > limit_s:
            rows.append((name, f"{once:.2f}", "", f"too slow: {once / tenth:.0f} for 10"))
            continue
        twice = _seconds(unit, 2 * _RUN)
        rows.append((name, f"{once:.2f}", f"{twice:.2f}", f"{twice / once:.1f}"))
    return rows


def _seconds(unit: str | Callable[[int], str], length: int) -> float:
    run = unit(length) if callable(unit) else unit * (length // len(unit))
    text = _HEAD + run + "\nDelete\n  rock  47-12.36S 123-45.69W\n"
    forget()
    return seconds(partial(read, text))


def _unlike_places(length: int) -> str:
    """One notice whose items all lie apart, over three degrees."""
    lines = []
    for i in range(length // 36):
        lat = f"{46 + i % 3}-{i * 7 % 60:02d}.{i % 100:02d}S"
        lines.append(f"insert rock {lat} 12{3 + i % 4}-{i * 11 % 60:02d}.5W\n")
    return "".join(lines)


def _unlike_notices(length: int) -> str:
    """Notices of one item each, every number another one."""
    lines = (
        f"{i}/26 Quill Sound. Chart {i}: insert rock, 47-{i % 60:02d}.3S 123-45.5W\n"
        for i in range(1, length // 62)
    )
    return "".join(lines)


def _one_line_under_charts(length: int) -> str:
    """Commands under several charts that all stand on one line."""
    command = "A wreck has been inserted in 47-12.34S 123-45.67W; "
    return "\n2/26 Quill Sound\nCharts 802 (3/26), 803 (4/26)\n" + command * (
        length // len(command)
    )


_HOSTILE: dict[str, str | Callable[[int], str]] = {
    "digits": "7", "blanks": " ", "quotes": '"', "opening brackets": "(",
    "closing brackets": ")", "letters": "x", "capitals": "Q", "dots": ".", "commas": ",",
    "degree signs": "°", "minute marks": "'", "hyphens": "-", "slashes": "/", "semicolons": ";",
    "bars": "|", "tabs": "\t", "line feeds": "\n", "words": "north ", "depths": "8.6 m ",
    "halves": "47-12.34S ", "positions": "47-12.34S 123-45.67W ", "labels": "(a) ",
    "verbs": "insert ", "heads": "12/26\n", "charts": "Chart 802\n", "lights": "Fl(3)WRG.15s ",
    "items": "insert rock 47-12.34S 123-45.67W\n", "unlike places in one notice": _unlike_places,
    "unlike notices": _unlike_notices,
    "garbled heads": "33b3/26  QUILL SOUND\nChart 802\nInsert rock 47-12.34S 123-45.67W\n",
    "garbled heads alone": "33b3/26  QUILL SOUND\nInsert rock 47-12.34S 123-45.67W\n",
    "places before verbs": "In 47-12.34S 123-45.67W, insert a rock.\n",
    "verbs behind places": "Rock  47-12.34S 123-45.67W  to be inserted\n",
    "numbered places": "1.  47-12.34S 123-45.67W rock\n",
    "tags": "<insert>rock</insert>\n", "exported rows": '"12/26","802","insert","rock"\n',
    "one line under several charts": _one_line_under_charts,
    "listed aids": "  0412  Karra Head\n    47-12.34S 123-45.67W\n    Insert light, Fl.5s.\n",
    "rules of a table": "| INSERT | |\n", "two states": "Existing: rock\nAmended to read: wreck\n",
}  # fmt: skip


def main() -> None:
    """Measure and print both tables."""
    options = argparse.ArgumentParser(prog="python -m tests.bench.bench_growth")
    options.add_argument("--largest", type=read_size, default=_SIZES[-1])
    options.add_argument("--layout", choices=ALL, default="notice_first")
    options.add_argument("--limit", type=float, default=20.0, help="seconds for the first length")
    options.add_argument("--only", choices=("sizes", "hostile"))
    given = options.parse_args()
    read(_HEAD)
    print(machine())
    if given.only != "hostile":
        sizes = [size for size in _SIZES if size <= given.largest]
        titles = ("text", "s", "MB/s", "time, for so much more text")
        print(table(titles, growth(sizes, given.layout)))
    if given.only != "sizes":
        titles = (f"{_RUN:,} characters of", "s", "s for twice", "ratio")
        print(table(titles, hostile(given.limit)))


if __name__ == "__main__":
    main()
