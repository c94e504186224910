"""What stands below the frame of a plot: name, scale, key, what is not drawn, control lines."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from fractions import Fraction
from textwrap import wrap

from noticeparse.caution import CAUTION
from noticeparse.sheets import ListedSheet
from noticeparse.worksheet.drawing import Item, Path, Pen, Words
from noticeparse.worksheet.graticule import angle
from noticeparse.worksheet.model import counted
from noticeparse.worksheet.shapes import REASONS, Spread
from noticeparse.worksheet.symbols import SIGN_MM, SIGNS, VERBS, cross_hair, ring_of, sign

STRIP_MM = 92.0
_LEFT_MM = 30.0
_CONTROL_MM = 100.0
_CONTROL = Pen(0.15)
_SIZE, _LEAD = 3.2, 4.6
_TOP_MM = STRIP_MM - 12


def strip(
    name: str, listed: ListedSheet, found: Spread, *, drawn: int, page_width: float
) -> Iterator[Item]:
    """The words and the key, from the top down."""
    chart = listed.chart
    yield Words((_LEFT_MM, _TOP_MM - 5), name, 6.0, is_bold=True)
    scale = f"1:{chart.scale:,}".replace(",", " ")
    latitude = angle(Fraction(str(chart.scale_latitude)), is_parallel=True)
    title = f"{chart.title}. " if chart.title else ""
    datum = chart.datum.name if chart.datum else "datum not stated"
    lines = [
        f"{title}{scale} at {latitude}, Mercator, {datum}. Plot to lay over the chart; no chart."
    ]
    lines += [f"{account(found, drawn)} {left_out_words(found)}".strip(), CAUTION]
    y = _TOP_MM - 10.5
    columns = int((page_width - _LEFT_MM - 12) / (_SIZE * 0.53))
    for words in (part for line in lines for part in wrap(line, columns)[:4]):
        yield Words((_LEFT_MM, y), words, _SIZE)
        y -= _LEAD
    yield from _key()


def account(found: Spread, drawn: int) -> str:
    """`3 of 8 actions drawn here, 2 on another plot of the chart.`; the rest is not drawn."""
    numbers = {one.line.number for drawn_there in found.drawn.values() for one in drawn_there}
    total = len(numbers | {number for number, _ in found.left_out})
    elsewhere = len(numbers) - drawn
    other = f", {elsewhere} on another plot of the chart" if elsewhere else ""
    return f"{drawn} of {counted(total, 'action')} drawn here{other}."


def left_out_words(found: Spread) -> str:
    """`Not drawn: 4 (must not be applied).`, empty where all is drawn."""
    by_reason: dict[str, list[str]] = defaultdict(list)
    for number, reason in found.left_out:
        by_reason[reason].append(str(number))
    in_part = by_reason.pop("part", [])
    parts = [f"{', '.join(numbers)} ({REASONS[one]})" for one, numbers in by_reason.items()]
    words = [f"Not drawn: {'; '.join(parts)}."] if parts else []
    if in_part:
        words.append(f"{', '.join(in_part)}: {REASONS['part']}.")
    return " ".join(words)


def _key() -> Iterator[Item]:
    """The verbs and the signs, in columns."""
    for number, (verb, words) in enumerate(VERBS.items()):
        x, y = _LEFT_MM + 6 + (number % 3) * 48, 39.0 - (number // 3) * 12
        yield from cross_hair((x, y))
        yield from ring_of(verb, (x, y))
        yield Words((x + 7.5, y - 1.1), words, _SIZE)
    for number, (name, words) in enumerate(SIGNS.items()):
        x, y = _LEFT_MM + (number % 5) * 36, 17.5 - (number // 5) * 4.6
        yield from sign(name, x, y)
        yield Words((x + SIGN_MM + 1.2, y + 0.5), words, 2.7)


def controls() -> Iterator[Item]:
    """Two lines of 100 mm: what is printed at another size shows on a ruler."""
    x, y = _LEFT_MM, 5.0
    yield from _measure((x, y), (x + _CONTROL_MM, y))
    yield Words(
        (x + _CONTROL_MM + 3, y - 1.1), "100 mm, both lines: else it is not to scale", _SIZE
    )
    x, y = 6.0, 10.0
    yield from _measure((x, y), (x, y + _CONTROL_MM))


def _measure(start: tuple[float, float], end: tuple[float, float]) -> Iterator[Item]:
    yield Path([start, end], _CONTROL)
    is_level = start[1] == end[1]
    for number in range(11):
        share = number / 10
        x, y = (start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1]))
        half = 2.0 if number in (0, 10) else 1.0
        ends = [(x, y - half), (x, y + half)] if is_level else [(x - half, y), (x + half, y)]
        yield Path(ends, _CONTROL)
