"""Statements that share the place of another, and say that they are told of a place beside it.

`In P a wreck is inserted and the rock close N of it is deleted`: the rock is not at P.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Piece
from noticeparse.readers.places import read_phrase

_ELSEWHERE = re.compile(
    r"\b(?:of|from|to|near|beside|off|alongside|adjoining|against|behind|below|above|inside|outside"
    r"|around|opposite) (?:it|them|this|these|those|the (?:same|former|latter|new|old) [a-z]+)\b"
    r"|\b(?:nearby|close by|adjacent|elsewhere|alongside|further|farther|opposite)\b",
    re.IGNORECASE,
)
_ON_CHARTS = re.compile(r"\b(?:on|in|from) (?:the )?charts? [0-9A-Z]+", re.IGNORECASE)
_RELATES = frozenset({"offset", "close", "vicinity", "between", "within_of"})


def told_elsewhere(text: str, pieces: Sequence[Piece]) -> list[Fault]:
    """What in the words of a statement without a place of its own leads away from it."""
    for start, end in pieces:
        words = text[start:end].replace("\n", " ")
        if (chart := _ON_CHARTS.search(words)) is not None:
            return [_fault("item-of-one-chart", text, start, chart.span())]
        spans = [(part.start, part.end) for part in read_phrase(words) if part.kind in _RELATES]
        if (said := _ELSEWHERE.search(words)) is not None:
            spans.append(said.span())
        if spans:
            return [_fault("relation-unclear", text, start, spans[0])]
    return []


def _fault(code: str, text: str, start: int, span: Piece) -> Fault:
    at, end = start + span[0], start + span[1]
    return Fault(code, at, end, {"written": " ".join(text[at:end].split())})
