"""Small figures in a row of their own that belong to the figure of the row beside it.

The parts of a stacked fraction, and figures set very low, stand so: left alone they look like page
numbers, and what they leave behind is another value.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from noticeparse.intake.pdf.glyphs import Glyph

_SMALL = 0.85
_REACH = 1.3
_CLOSE = 0.75
_BESIDE = 0.7
_OFF, _OVER = 0.12, 0.3
_MOST_FIGURES = 3
_MOST_STRAYS = 50
_ROWS_AROUND = 2


def strays(lines: Sequence[Sequence[list[Glyph]]]) -> set[tuple[int, int]]:
    """Line and word of every stray small figure, and of the figure that it belongs to.

    `lines` are words of characters, from the top of a page on.
    """
    found: set[tuple[int, int]] = set()
    for at, line in enumerate(lines):
        near = range(max(at - _ROWS_AROUND, 0), min(at + _ROWS_AROUND + 1, len(lines)))
        is_alone = all(_is_figure(word) for word in line)
        named = list(enumerate(line)) if is_alone else list(_foreign(line))
        for number, stray in named[:_MOST_STRAYS]:
            owners = {(o, place) for o in near if o != at for place in _owners(stray, lines[o])}
            if owners:
                found |= owners | {(at, number)}
    return found


def _foreign(line: Sequence[list[Glyph]]) -> Iterator[tuple[int, list[Glyph]]]:
    """Figures that stand in the way of a line, small and off its base, as those of another do."""
    least = _SMALL * max(one.size for word in line for one in word)
    bases = {round(one.base, 1) for word in line for one in word if one.size >= least}
    for number, word in enumerate(line):
        small = [at for at, one in enumerate(word) if one.size < least and one.char.isdecimal()]
        for at in small:
            one = word[at]
            if any(abs(one.base - base) <= _OFF * least for base in bases):
                continue
            beside = [word[n] for n in (at - 1, at + 1) if 0 <= n < len(word)]
            crosses = any(
                min(one.x1, other.x1) - max(one.x0, other.x0) > _OVER * (one.x1 - one.x0)
                for other in beside
            )
            if crosses or (len(small) == len(word) <= _MOST_FIGURES):
                yield number, [one]


def _is_figure(word: list[Glyph]) -> bool:
    return len(word) <= _MOST_FIGURES and all(
        one.char.isdecimal() or one.char == "/" for one in word
    )


def _owners(word: list[Glyph], line: Sequence[list[Glyph]]) -> Iterator[int]:
    """The words of a line with a figure beside, over or under a stray one."""
    first, last = word[0], word[-1]
    for place, other in enumerate(line):
        for one in other:
            apart = abs(one.base - first.base)
            is_small = first.size < _SMALL * one.size and apart <= _REACH * one.size
            if not (is_small or apart <= _CLOSE * one.size):
                continue
            room = _BESIDE * one.size
            if one.char.isdecimal() and first.x0 - room <= one.x1 and one.x0 <= last.x1 + room:
                yield place
                break
