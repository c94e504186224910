"""Sentences by which a thing lies outside one of the charts of its notice.

`Item (b) outside limits of 905.`, `Chart 905 does not extend to the rock.`: what is to be done
there cannot be done, and nobody reads which item is meant.  The actions for that chart are held
back.  So are those that find nothing to change where `the rock is not charted on 905`; of a thing
to be inserted that is only the reason.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.extents import extent_of, quoting
from noticeparse.build.pointers import pointed
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft, Piece
from noticeparse.records.chart import ChartSection
from noticeparse.stretch import unquoted

_OUTSIDE = re.compile(
    r"\b(?:outside|beyond|off|not within|not in) (?:of )?(?:the )?"
    r"(?:limits?|borders?|area|coverage|edge|frame|neat ?line|charts?\b|sheets?\b"
    r"|[A-Z]{0,3}[0-9]{2,6}\b)"
    r"|\b(?:does|do) not (?:extend|reach|cover|include|take in|contain"
    r"|show (?:the|this|that|these|items?|it|them)\b)"
    r"|\bstops short\b",
    re.IGNORECASE,
)
_NOT_THERE = re.compile(
    r"\bnot (?:charted|shown|plotted|included|covered|depicted|marked|printed|present)"
    r" (?:on|in|by)\b",
    re.IGNORECASE,
)
_NAMED = re.compile(
    r"\b(?:charts?|sheets?|of|on|in|by|for|outside|beyond|off)(?: the)? "
    r"(?P<numbers>[A-Z]{0,3}[0-9]{1,6}[A-Z]?"
    r"(?:(?:, ?| and | or | ?& ?)[A-Z]{0,3}[0-9]{1,6}[A-Z]?)*)"
    r"(?![0-9A-Za-z°'/])(?!\.[0-9])",
    re.IGNORECASE,
)
_SENTENCE = re.compile(r"[^.;]+(?:\.(?! |$)[^.;]*)*")


def outside_charts(
    context: Context,
    draft: NoticeDraft,
    path: str,
    sections: Sequence[Section],
    charts: Sequence[ChartSection],
) -> Iterator[tuple[Fault, list[str]]]:
    """A fault for each such sentence of a notice, with the actions it hits."""
    known = {chart.chart for chart in charts if chart.chart and chart.actions}
    if len(known) < 2:
        return
    actions = list(pointed(path, charts))
    for start, end in _stretches(draft, sections):
        text = unquoted(context.text[start:end].replace("\n", " "))
        for sentence in _SENTENCE.finditer(text):
            named = _named(sentence.group()) & known
            is_outside = _OUTSIDE.search(sentence.group()) is not None
            is_told = is_outside or _NOT_THERE.search(sentence.group()) is not None
            if not is_told or not named or named == known:
                continue
            first = sentence.end() - len(sentence.group().lstrip())
            hit = [
                one.pointer
                for one in actions
                if one.section.chart in named and (is_outside or one.action.verb != "insert")
            ]
            if hit:
                piece = (start + first, start + sentence.end())
                yield quoting(context, "item-of-one-chart", piece), hit


def _stretches(draft: NoticeDraft, sections: Sequence[Section]) -> Iterator[Piece]:
    """The remarks, and sentences that were taken for items without a place."""
    for prose in draft.prose:
        yield prose.pieces[0][0], prose.pieces[-1][1]
    items = {id(item): item for section in sections for item in section.items}
    for item in items.values():
        if item.pieces and not item.has_place:
            yield extent_of(item.pieces)


def _named(sentence: str) -> set[str]:
    """The numbers that a sentence names as those of charts."""
    found = " ".join(one["numbers"] for one in _NAMED.finditer(sentence))
    return set(re.findall(r"[A-Z]{0,3}[0-9]+[A-Z]?", found))
