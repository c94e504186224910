"""Sentences that bind items to one of the charts of their notice.

`Item 2 applies to chart 803 only.` below items of two charts: as long as nobody reads
which items are meant for which chart, none of them may be used.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft, Piece
from noticeparse.records.chart import ChartSection

_ITEMS = re.compile(
    r"\b(?:items?|corrections?|amendments?|entr(?:y|ies)|para(?:graph)?s?|actions?|insertions?"
    r"|additions?|deletions?|alterations?|changes?|above|foregoing|following|preceding|latter"
    r"|former|(?:insert|add|delet|remov|amend|mov|shown|chart)ed)\b|\((?:[0-9]{1,2}|[a-z])\)",
    re.IGNORECASE,
)
_BINDS = re.compile(
    r"\b(?:only|alone|not|except|omit(?:ted)?|appl(?:y|ies|ied|icable)|affects?|takes?|concerns?"
    r"|relates?|refers?|(?:is|are) for|(?:is|are) to be)\b|: ?item",
    re.IGNORECASE,
)
_CHARTS = re.compile(r"\bcharts? [^.;:]{0,60}", re.IGNORECASE)
_SENTENCE = re.compile(r"[^.;]+(?:\.(?! |$)[^.;]*)*")


def bound_to_one_chart(
    context: Context, draft: NoticeDraft, sections: Sequence[Section]
) -> Iterator[Fault]:
    """The sentences of a notice that bind items which several of its charts share."""
    shared = [item for section in sections for item in section.items]
    if len({id(item) for item in shared}) == len(shared):
        return
    known = {str(section.head.chart) for section in sections}
    for start, end in _stretches(draft, sections):
        text = context.text[start:end].replace("\n", " ")
        if "chart" not in text.lower():
            continue
        for sentence in _SENTENCE.finditer(text):
            if _binds(sentence.group(), known):
                words = sentence.group()
                first = start + sentence.start() + len(words) - len(words.lstrip())
                at = (first, start + sentence.end())
                yield Fault("item-of-one-chart", *at, {"written": context.written(*at)})


def actions_below(path: str, charts: Sequence[ChartSection]) -> list[str]:
    """The JSON Pointers of all actions of the charts of a notice."""
    return [
        f"{path}/charts/{index}/actions/{place}"
        for index, chart in enumerate(charts)
        for place in range(len(chart.actions))
    ]


def _stretches(draft: NoticeDraft, sections: Sequence[Section]) -> Iterator[Piece]:
    """Prose, heads of charts and words of items, each as one stretch."""
    charts = [section.head.chart for section in sections]
    read = {
        section.extent[0]
        for section in sections
        if section.head.letters is not None and charts.count(section.head.chart) == 1
    }
    for prose in draft.prose:
        yield prose.pieces[0][0], prose.pieces[-1][1]
    yield from draft.clauses
    for chart in draft.charts:
        # `Charts 802 (item 1 only), 803`: which items are meant has been read.
        if not (chart.head and chart.head[0][0] in read):
            yield from chart.head
    for item in {id(item): item for section in sections for item in section.items}.values():
        pieces = [piece for piece in item.pieces if piece != item.charts]
        if pieces:
            yield pieces[0][0], pieces[-1][1]


def _binds(sentence: str, known: set[str]) -> bool:
    """Whether a sentence tells of items, and of some of the charts but not of all."""
    charts = _CHARTS.search(sentence)
    if charts is None or not (_ITEMS.search(sentence) and _BINDS.search(sentence)):
        return False
    named = {word for one in _CHARTS.findall(sentence) for word in re.findall(r"\w+", one)} & known
    return bool(named) and (named < known or "respectively" in sentence)
