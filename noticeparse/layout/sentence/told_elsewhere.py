"""Statements that share the place of another, and say that they are told of a place beside it.

`In P a wreck is inserted and the rock close N of it is deleted`: the rock is not at P.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Piece
from noticeparse.layout.evidence import split_lead
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element
from noticeparse.readers.places import read_phrase

_ELSEWHERE = re.compile(
    r"\b(?:of|from|to|near|beside|off|alongside|adjoining|against|behind|below|above|inside|outside"
    r"|around|opposite) (?:it|them|this|these|those|the (?:same|former|latter|new|old) [a-z]+)\b"
    r"|\b(?:nearby|close by|adjacent|elsewhere|alongside|further|farther|opposite)\b",
    re.IGNORECASE,
)
_ON_CHARTS = re.compile(r"\b(?:on|in|from) (?:the )?charts? [0-9A-Z]+", re.IGNORECASE)
_THIS_PLACE = re.compile(
    r"(?<=[a-z] )(?:this|that|the (?:same|said|above)) (?:place|position|point)[ .]{0,3}$",
    re.IGNORECASE,
)
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


class Beside(NamedTuple):
    """A thing that lies beside the one place above it."""

    words: list[Piece]
    lead: list[Piece]
    """How it lies to that place."""
    place: Element


def beside_place(text: str, pieces: Sequence[Piece], head: Sequence[Element]) -> Beside | None:
    """The words for a thing that is told to lie beside the one place above it.

    `depth 8.4 m, close E of this place` below `At P`; None where other words tell where it is.
    """
    pointing = _THIS_PLACE.search(text, *pieces[-1]) if pieces else None
    places = [e for e in head if e.kind in PLACES]
    if pointing is None or len(places) != 1 or places[0].kind != "point":
        return None
    leads = [text[e.start : e.end] for e in head if e.kind == "words"]
    if any(part.kind not in ("at", "separator") for one in leads for part in read_phrase(one)):
        return None
    words, lead = split_lead(text, [*pieces[:-1], (pieces[-1][0], pointing.start())])
    relation = " ".join(text[a:b] for a, b in lead).replace("\n", " ")
    kinds = [part.kind for part in read_phrase(relation) if part.kind != "separator"]
    is_one = kinds in (["close"], ["offset"]) and not told_elsewhere(text, words)
    return Beside(words, lead, places[0]) if is_one else None


def _fault(code: str, text: str, start: int, span: Piece) -> Fault:
    at, end = start + span[0], start + span[1]
    return Fault(code, at, end, {"written": " ".join(text[at:end].split())})
