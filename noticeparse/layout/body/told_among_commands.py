"""Sentences that tell of several changes, among commands: `Insert … . The buoy in P is to be …`.

Commands are cut line by line, and their items begin at verbs.  A sentence in which each thing has
its verb behind it is cut by its clauses instead, where each of them has its thing and place.
"""

from __future__ import annotations

import re
from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Sequence
from itertools import groupby

from noticeparse.layout.body.prose import paragraph, sentence_items
from noticeparse.layout.drafts import Item
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.sentence.sentences import sentences

_FEWEST = 2
_OPEN = "sentence-told-twice"
_TOLD = ("words", "passive", "point")
_IN_COLUMNS = re.compile(r"\S(?: {3}|\t)[ \t]{0,80}\S")


def without_told(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[Item]]:
    """The lines without such sentences, and the items of these."""
    if any(line.has("charts_only", "key", "bar") for line in lines):
        # What stands for some charts, or in a form, holds for what stands below it.
        return list(lines), []
    found: list[Item] = []
    spans: list[tuple[int, int]] = []
    for is_blank, block in groupby(lines, lambda one: one.is_blank):
        if is_blank:
            continue
        elements = [element for line in block for element in line.elements]
        for sentence in _sentences(text, paragraph(text, elements).elements):
            items = _items(text, sentence)
            if items:
                found += items
                spans.append((sentence[0].start, sentence[-1].end))
    if not spans:
        return list(lines), []
    return list(_without(text, lines, spans)), found


def _sentences(text: str, elements: Sequence[Element]) -> Iterator[list[Element]]:
    """The sentences of a paragraph; a command with a capital behind a full stop opens one too."""
    start = 0
    for index, element in enumerate(elements):
        stops = index > 0 and text[elements[index - 1].end - 1] == "."
        if stops and element.kind == "verb" and text[element.start].isupper():
            yield from sentences(text, elements[start:index])
            start = index
    yield from sentences(text, elements[start:])


def _items(text: str, sentence: Sequence[Element]) -> list[Item]:
    """The items of a sentence of several changes; none where one of them has another fault.

    Where it is open which verb holds for what, they say so: a command would be read without it.
    """
    told = sum(one.kind == "passive" for one in sentence)
    opens = text[sentence[0].start].isupper() and sentence[0].kind == "words"
    if told < _FEWEST or not opens or any(one.kind not in _TOLD for one in sentence):
        return []
    if _IN_COLUMNS.search(text, sentence[0].start, sentence[-1].end) is not None:
        # `Wreck   P   to be entered`: rows, each a command of its own.
        return []
    items = [item for _, item in sentence_items(text, sentence)]
    whole = [item for item in items if item is not None and item.has_place]
    if len(whole) < len(items):
        return []
    if any(fault.code == _OPEN for item in whole for fault in item.faults):
        return whole
    return whole if len(items) >= told and not any(item.faults for item in whole) else []


def _without(text: str, lines: Sequence[Line], spans: Sequence[tuple[int, int]]) -> Iterator[Line]:
    """The lines, without what stands within some stretches of the text."""
    starts, ends = [start for start, _ in spans], [end for _, end in spans]
    for line in lines:
        kept = list(line.elements)
        last = kept[-1].end if kept else line.end
        for start, end in spans[bisect_right(ends, line.start) : bisect_left(starts, last)]:
            kept = [part for one in kept for part in _outside(text, one, start, end)]
        if kept or line.is_blank:
            yield line._replace(elements=tuple(kept))


def _outside(text: str, element: Element, start: int, end: int) -> Iterator[Element]:
    """What of an element stands before and behind a stretch."""
    if element.end <= start or element.start >= end:
        yield element
        return
    if element.start < start:
        yield element._replace(end=start)
    behind = text[end : element.end]
    if behind.strip():
        yield element._replace(start=element.end - len(behind.lstrip()))
