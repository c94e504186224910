"""Sentences that bind items to one of the charts of their notice.

`Item 2 applies to chart 803 only.` below items of two charts: as long as nobody reads
which items are meant for which chart, none of them may be used.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.all_charts import told_of_charts
from noticeparse.build.bare_lists import bare_lists, is_bare_list, labels_of
from noticeparse.build.extents import quoting
from noticeparse.build.heads_of_all import is_count_of
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft, Piece
from noticeparse.numbers import ROMAN
from noticeparse.readers.head_values import HeadPart, read_items
from noticeparse.readers.heads import read_parts
from noticeparse.stretch import Stretch, gather

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
_EXCEPTS = re.compile(
    r"\b(?:except(?:ing)?|without|excluding|apart from|other than|save for|but (?:for|not)|minus"
    r"|less) (?:for )?(?:the|its|that|those|these|any|item|no\.?|\()",
    re.IGNORECASE,
)
"""`The same on chart 803 without the deletion`, also where the sentence names all the charts."""
_MARKS = frozenset(".:()[]-")
_COUNTED = re.compile(r"(?:item|sub-?item|entr(?:y|ies)|para|paragraph|row|line)s?", re.IGNORECASE)
_CHARTS = re.compile(r"\bcharts? [^.;:]{0,60}", re.IGNORECASE)
_SENTENCE = re.compile(r"[^.;]+(?:\.(?! |$)[^.;]*)*")


def bound_to_one_chart(
    context: Context, draft: NoticeDraft, sections: Sequence[Section]
) -> Iterator[Fault]:
    """The sentences of a notice that bind items which several of its charts share."""
    shared = [item for section in sections for item in section.items]
    labels = labels_of(shared)
    is_shared = len({id(item) for item in shared}) < len(shared)
    if is_shared or any(not section.items for section in sections):
        yield from _lists_apart(context, draft, labels)
    if not is_shared:
        return
    yield from _unread_lists(context, draft, labels)
    known = {str(section.head.chart) for section in sections}
    for start, end in _stretches(draft, sections):
        text = context.text[start:end].replace("\n", " ")
        if _is_lost_list(text):
            yield quoting(context, "item-of-one-chart", (start, end))
        if "chart" not in text.lower():
            continue
        for sentence in _SENTENCE.finditer(text):
            if _binds(sentence.group(), known) or _counts_others(sentence.group(), known):
                words = sentence.group()
                first = start + sentence.start() + len(words) - len(words.lstrip())
                at = (first, start + sentence.end())
                yield quoting(context, "item-of-one-chart", at)


def _unread_lists(context: Context, draft: NoticeDraft, labels: frozenset[str]) -> Iterator[Fault]:
    """Lists of items beside the charts of a head that cannot be read for certain."""
    for chart in draft.charts:
        words = gather(context.text, chart.head)
        parts = [part for part in read_parts(words.text) if part.text not in _MARKS]
        for part in bare_lists(read_parts(words.text), labels):
            yield _unread(context, words, part)
        for at, part in enumerate(parts):
            if part.kind == "ITEM_LETTERS":
                if not _is_certain(parts, at):
                    yield _unread(context, words, part)
            elif part.kind == "OTHER_WORDS" and _is_left(words.text, parts[at - 1], part):
                yield _unread(context, words, part)


def _lists_apart(context: Context, draft: NoticeDraft, labels: frozenset[str]) -> Iterator[Fault]:
    """Lists of items on a line of their own, right above or below that of a chart."""
    text = context.text
    heads = [piece for chart in draft.charts for piece in chart.head]
    first = [prose.pieces[0] for prose in draft.prose]
    for start, end in (*first, *draft.heading, *draft.clauses, *heads):
        if not is_bare_list(text[start:end], labels):
            continue
        gaps = [text[e:start] if e <= start else text[end:s] for s, e in heads if s != start]
        if any(gap.count("\n") < 2 and not gap.strip(" \n.:") for gap in gaps):
            yield quoting(context, "item-of-one-chart", (start, end))


def _is_certain(parts: Sequence[HeadPart], at: int) -> bool:
    """Whether a list of items can be read, and is for the chart before it and no other.

    `2705 and 2706 items (i) to (iii)` may be for both.
    """
    kinds = [part.kind for part in parts[:at]]
    if "CHART_NUMBER" not in kinds or read_items(parts[at].text) is None:
        return False
    chart = len(kinds) - 1 - kinds[::-1].index("CHART_NUMBER")
    behind = [part for part in parts[at + 1 : at + 3] if part.kind != "COMMA"]
    before = [part for part in parts[max(at - 2, 0) : at] if part.kind != "COMMA"]
    beside = (*before[-1:], *behind[:1])
    if "ITEM_LETTERS" in kinds[chart:] or any(_goes_with(part) for part in beside):
        return False
    shares = kinds[max(chart - 2, 0) : chart] == ["CHART_NUMBER", "COMMA"]
    return not shares or "only" in parts[at].text.lower()


def _is_lost_list(words: str) -> bool:
    """Whether words are a list of items that its chart has lost: `Items (i) and (iii).`."""
    if _COUNTED.match(words) is None:
        return False
    others = [
        one for one in read_parts(words) if one.kind not in ("ITEM_LETTERS", "STOP", "COMMA")
    ]
    return all(_COUNTED.fullmatch(one.text) for one in others)


def _goes_with(part: HeadPart) -> bool:
    """Whether what stands beside a list of items says something of it: `except items (i)`.

    A chart that is named again behind it may be the one that it is for.
    """
    plain = part.kind == "OTHER_WORDS" and part.text.lower() not in ("for", "only")
    return plain or part.kind == "CHART_WORD"


def _is_left(text: str, before: HeadPart, part: HeadPart) -> bool:
    """Whether a word counts items, and is of no list that was read: `items one and two`."""
    if before.text.lower() == "all":
        return False
    if text[part.start - 1 : part.start] + text[part.end : part.end + 1] == "()":
        return part.text.lower() in ROMAN
    return _COUNTED.fullmatch(part.text) is not None


def _unread(context: Context, words: Stretch, part: HeadPart) -> Fault:
    start, end = words.extent((part.start, part.end))
    return quoting(context, "item-of-one-chart", (start, end))


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
    heads = [piece for chart in draft.charts for piece in chart.head]
    for start, end in draft.clauses:
        # `The above corrections also apply to chart 803` is the head of that chart.
        if not any(start <= first and last <= end for first, last in heads):
            yield start, end
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
    excepts = _EXCEPTS.search(sentence) is not None
    if charts is None or not (excepts or (_ITEMS.search(sentence) and _BINDS.search(sentence))):
        return False
    named = {word for one in _CHARTS.findall(sentence) for word in re.findall(r"\w+", one)} & known
    return bool(named) and (named < known or excepts or "respectively" in sentence)


def _counts_others(sentence: str, known: set[str]) -> bool:
    """Whether a sentence counts its charts, and not all: `On both charts insert …` of three."""
    told = told_of_charts(sentence)
    return told is not None and not is_count_of(told, len(known))
