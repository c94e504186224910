"""From characters on a page to its rows of text, blanks and small figures as they are seen.

Only where a character stands counts, not the order in which the file draws it.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import pairwise
from statistics import median
from typing import NamedTuple

from noticeparse.intake.pdf.glyphs import LOST, Glyph
from noticeparse.intake.pdf.strays import strays
from noticeparse.intake.small_figures import Mark, follows_figure, level_of, written

_SAME_ROW = 0.25
_NEAR_ROW = 0.6
_BLANK = 0.17
_BLANK_DRAWN = 0.08
_WIDE = 1.0


class Row(NamedTuple):
    """One line of text, and the stretches in it that are in doubt or lost."""

    text: str
    x0: float
    base: float
    size: float
    page_x: float
    page_y: float
    doubtful: tuple[tuple[int, int], ...] = ()
    lost: tuple[tuple[int, int], ...] = ()
    marks: tuple[tuple[str, int, int], ...] = ()
    """What is to be said of its words: code, start, end."""


class _Word(NamedTuple):
    glyphs: list[Glyph]
    x0: float
    x1: float


def read_rows(glyphs: Sequence[Glyph]) -> list[Row]:
    """The rows of a part of a page that is read line by line, from its top."""
    lines = [_words(line) for line in _lines(glyphs)]
    lines = [words for words in lines if words]
    if not lines:
        return []
    left = min(words[0].x0 for words in lines)
    drawn = [glyph.x1 - glyph.x0 for glyph in glyphs if glyph.char != " "]
    unit = max(median(drawn), 0.1)
    gaps = [b.x0 - a.x1 for words in lines for a, b in pairwise(words)]
    usual = median(gaps) if gaps else 0.0
    wide = [_wide(words, usual) for words in lines]
    unit = _fitting(lines, wide, left, unit)
    stray = strays([[word.glyphs for word in words] for words in lines])
    rows: list[Row] = []
    for at, (words, marks) in enumerate(zip(lines, wide, strict=True)):
        in_doubt = {word for line, word in stray if line == at}
        rows.append(_row(words, marks, left, unit, in_doubt=in_doubt))
    return rows


def _lines(glyphs: Sequence[Glyph]) -> list[list[Glyph]]:
    """Characters that stand on one line, from its left, each line with what is raised in it."""
    groups: list[list[Glyph]] = []
    for glyph in sorted(glyphs, key=lambda one: one.line):
        last = groups[-1] if groups else None
        if last is not None and glyph.line - last[0].line <= _SAME_ROW * max(
            glyph.size, last[0].size
        ):
            last.append(glyph)
        else:
            groups.append([glyph])
    kept: list[list[Glyph]] = []
    for group in groups:
        if kept and _belongs(group, kept[-1]):
            kept[-1] = kept[-1] + group
        else:
            kept.append(group)
    return [sorted(group, key=lambda one: (round(one.x0, 2), one.order)) for group in kept]


def _belongs(group: list[Glyph], above: list[Glyph]) -> bool:
    """Whether two groups at different heights are one line: close, and nowhere over each other."""
    size = max(_size(group), _size(above))
    if group[0].line - above[0].line > _NEAR_ROW * size:
        return False
    room = 0.2 * size
    spans = [(one.x0, one.x1) for one in above if one.char != " "]
    for one in group:
        if one.char != " " and any(
            min(x1, one.x1) - max(x0, one.x0) > min(room, 0.4 * (one.x1 - one.x0))
            for x0, x1 in spans
        ):
            return False
    return True


def _base(glyphs: Sequence[Glyph]) -> float:
    counts = Counter((round(one.base, 1)) for one in glyphs if one.char != " ")
    return counts.most_common(1)[0][0] if counts else glyphs[0].base


def _size(glyphs: Sequence[Glyph]) -> float:
    return max(one.size for one in glyphs)


def _words(line: list[Glyph]) -> list[_Word]:
    """The words of a line; what is drawn twice to look bold is taken once."""
    words: list[list[Glyph]] = []
    last: Glyph | None = None
    is_parted = False
    for glyph in line:
        if glyph.char == " ":
            is_parted = True
            continue
        if last is not None and _is_drawn_twice(words, glyph):
            continue
        gap = glyph.x0 - last.x1 if last is not None else 0.0
        least = (_BLANK_DRAWN if is_parted else _BLANK) * glyph.size
        if last is None or gap > least:
            words.append([])
        words[-1].append(glyph)
        last, is_parted = glyph, False
    return [_Word(word, word[0].x0, max([one.x1 for one in word])) for word in words]


def _is_drawn_twice(words: list[list[Glyph]], glyph: Glyph) -> bool:
    return any(
        one.char == glyph.char
        and abs(one.x0 - glyph.x0) < 0.12 * glyph.size
        and abs(one.base - glyph.base) < 0.12 * glyph.size
        for one in words[-1][-2:]
    )


def _wide(words: list[_Word], usual: float) -> list[bool]:
    """Of each word, whether the gap before it is more than one blank, as between cells."""
    gaps = [b.x0 - a.x1 for a, b in pairwise(words)]
    blank = min(gaps) if len(gaps) > 1 else usual
    found = [False]
    for gap, word in zip(gaps, words[1:], strict=True):
        size = max(word.glyphs[0].size, 1.0)
        found.append(gap > _WIDE * size or (gap >= 0.5 * size and gap >= 1.8 * blank))
    return found


def _fitting(lines: list[list[_Word]], wide: list[list[bool]], left: float, unit: float) -> float:
    """The width of a column of characters at which cells below each other stay so."""
    least = unit
    for words, marks in zip(lines, wide, strict=True):
        length = -1
        for word, is_wide in zip(words, marks, strict=True):
            length += 1
            if is_wide:
                length += 1
                least = min(least, (word.x0 - left) / length)
                length = max(length, round((word.x0 - left) / least))
            length += len(word.glyphs)
    return max(least, 0.5 * unit)


def _row(
    words: list[_Word], wide: list[bool], left: float, unit: float, *, in_doubt: set[int]
) -> Row:
    first = words[0].glyphs[0]
    text = " " * min(round((words[0].x0 - left) / unit), 200)
    doubtful: list[tuple[int, int]] = []
    lost: list[tuple[int, int]] = []
    marks: list[tuple[str, int, int]] = []
    line = [glyph for word in words for glyph in word.glyphs]
    base, size = _base(line), _main_size(line)
    for at, (word, is_wide) in enumerate(zip(words, wide, strict=True)):
        if at:
            column = min(round((word.x0 - left) / unit), 1000)
            text += " " * max(2, column - len(text)) if is_wide else " "
        behind = words[at + 1].glyphs[0].char if at + 1 < len(words) else ""
        if _is_level(word.glyphs, base, size):
            piece, is_doubtful = "".join([glyph.char for glyph in word.glyphs]), False
        else:
            piece, is_doubtful = written(list(_marks(word.glyphs, base, size)), behind)
        if is_doubtful or at in in_doubt:
            doubtful.append((len(text), len(text) + len(piece)))
        elif LOST in piece:
            lost.append((len(text), len(text) + len(piece)))
        for code in {one.mark for one in word.glyphs} - {""}:
            marks.append((code, len(text), len(text) + len(piece)))
        text += piece
    return Row(
        text=text,
        x0=words[0].x0,
        base=base,
        size=size,
        page_x=first.page_x,
        page_y=min(glyph.page_y for glyph in line),
        doubtful=tuple(doubtful),
        lost=tuple(lost),
        marks=tuple(marks),
    )


def _is_level(word: list[Glyph], base: float, size: float) -> bool:
    """Whether all characters of a word are of one size on one line, and beside each other."""
    near = 0.02 * size
    last = word[0].x0
    for glyph in word:
        if abs(glyph.size - size) > near or abs(glyph.base - base) > near:
            return False
        if glyph.x0 < last - 0.3 * size:
            return False
        last = glyph.x1
    return True


def _main_size(line: list[Glyph]) -> float:
    return Counter(round(one.size, 1) for one in line).most_common(1)[0][0]


def _marks(word: list[Glyph], base: float, size: float) -> Iterator[Mark]:
    """The characters of a word, each held against the last one that is neither low nor high."""
    reference: Glyph | None = None
    is_decimal = False
    last: Glyph | None = None
    for glyph in word:
        before = reference
        if before is None or before.size <= 0:
            ratio, raised = glyph.size / max(size, 0.1), (base - glyph.base) / max(size, 0.1)
            behind_figure = False
        else:
            ratio = glyph.size / before.size
            raised = (before.base - glyph.base) / before.size
            behind_figure = follows_figure(before.char)
        if last is not None and _is_stacked(last, glyph):
            yield Mark(glyph.char, "doubt")
            last = glyph
            continue
        last = glyph
        may_be_raised = glyph.char in "oOºlI|" and behind_figure
        if not glyph.char.isdecimal() and not may_be_raised:
            yield Mark(glyph.char, "plain")
            if glyph.char in ".,·" and before is not None and before.char.isdecimal():
                is_decimal = True
            else:
                reference, is_decimal = glyph, False
            continue
        level = level_of(ratio, raised, behind_figure=behind_figure, is_decimal=is_decimal)
        if may_be_raised and level != "high":
            level = "plain"
        yield Mark(glyph.char, level)
        if level == "plain" and not is_decimal:
            reference = glyph


def _is_stacked(before: Glyph, glyph: Glyph) -> bool:
    """Whether a figure stands over or under the one before it, as in a fraction without a bar."""
    if not (before.char.isdecimal() and glyph.char.isdecimal()):
        return False
    overlap = before.x1 - glyph.x0
    return overlap > 0.4 * min(before.x1 - before.x0, glyph.x1 - glyph.x0)
