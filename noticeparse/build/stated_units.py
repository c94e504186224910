"""The unit of depths that sentences of a notice state: `Note: chart 802 is a fathoms chart.`.

What a whole sentence says holds for the charts it names, or for all, where their own heads state
no unit.  Words of a unit that are not read so leave every bare depth in doubt.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.extents import quoting, within
from noticeparse.build.pointers import pointed
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft, Piece
from noticeparse.rare import in_small
from noticeparse.readers.head_values import read_unit
from noticeparse.readers.heads import read_parts
from noticeparse.records.action import Action, Amend, Replace
from noticeparse.records.chart import ChartSection
from noticeparse.records.depth import Depth, DepthUnit
from noticeparse.stretch import gather

_PLAIN = frozenset(
    "note notes nb remark remarks this these the all both each is are a an on in of for shown "
    "given stated expressed notice correction chart charts depths soundings".split()
)
"""Words that may stand beside the unit without another meaning."""
_PARTS = frozenset("DEPTH_UNIT CHART_WORD CHART_NUMBER COMMA STOP".split())
_SENTENCE = re.compile(r"[^.;]+(?:\.(?=[^ \n])[^.;]*)*")
_OF_DEPTHS = re.compile(
    r"\b(?:depths?|soundings?|charts?|figures|units?)\b[^.;]{0,80}?\b(?:fathoms|fms?|feet)\b"
    r"(?! (?:from|off|of|above|below|high|wide|long|deep))|\b(?:fathoms|fms)\b(?=\W*$)",
    re.IGNORECASE,
)
_OF_ITEMS = re.compile(
    r"\b(?:depths|soundings|figures)\b[^.;:]{0,40}\bin (?:fathoms(?: and feet)?|feet)\b",
    re.IGNORECASE,
)
_FIGURE = re.compile(r"[0-9½¼¾]")
_UNITS = ("fathom", "feet", "met", "ft", "fm")
"""Of these each word for a unit has one."""


def set_units(context: Context, draft: NoticeDraft, sections: Sequence[Section]) -> None:
    """Give the charts of a notice the unit that its sentences state for them."""
    for _, sentence in _sentences(context, draft):
        stated = _stated(sentence)
        if stated is None:
            continue
        unit, charts = stated
        for section in sections:
            if not charts or section.head.chart in charts:
                section.head.depth_unit = section.head.depth_unit or unit


def units_unread(
    context: Context, draft: NoticeDraft, path: str, charts: Sequence[ChartSection]
) -> Iterator[tuple[Fault, list[str]]]:
    """Words of a unit that no chart has taken, with the actions whose depths are bare."""
    bare = [
        one.pointer
        for one in pointed(path, charts)
        if one.section.depth_unit is None and _has_bare_depth(one.action)
    ]
    if not bare:
        return
    for item in (item for chart in draft.charts for item in chart.items):
        # `Insert the following depths in feet:` stands with the first of them alone.
        phrase = gather(context.text, item.words)
        if (found := _OF_ITEMS.search(phrase.text)) is not None:
            yield within(context, "depth-unit-unread", phrase, found.span()), bare
    for piece in (*draft.heading, *(piece for chart in draft.charts for piece in chart.head)):
        if _OF_DEPTHS.search(context.text[slice(*piece)]):
            yield quoting(context, "depth-unit-unread", piece), bare
    for piece, words in _sentences(context, draft):
        # With a figure they are a depth of their own: `The depth is now 4 fathoms.`
        if _stated(words) is None and _OF_DEPTHS.search(words) and not _FIGURE.search(words):
            yield quoting(context, "depth-unit-unread", piece), bare


def _sentences(context: Context, draft: NoticeDraft) -> Iterator[tuple[Piece, str]]:
    """The sentences of the prose and of the clauses of a notice, with their places."""
    prose = [piece for one in draft.prose for piece in one.pieces]
    for start, end in (*draft.clauses, *prose):
        for found in _SENTENCE.finditer(context.text, start, end):
            yield found.span(), found.group()


def may_state_unit(sentence: str) -> bool:
    """Whether a sentence holds a word for a unit; most hold none, and are not read for one."""
    plain = in_small(sentence)
    return any(unit in plain for unit in _UNITS)


def _stated(sentence: str) -> tuple[DepthUnit, frozenset[str]] | None:
    """The unit that a sentence states and says nothing else of, and the charts that it names."""
    if not may_state_unit(sentence):
        return None
    parts = read_parts(sentence)
    units = {read_unit(part.text) for part in parts if part.kind == "DEPTH_UNIT"}
    others = [part for part in parts if part.kind not in _PARTS]
    if len(units) != 1 or any(part.text.lower() not in _PLAIN for part in others):
        return None
    charts = frozenset(part.text for part in parts if part.kind == "CHART_NUMBER")
    return units.pop(), charts


def _has_bare_depth(action: Action) -> bool:
    features = [action.feature]
    if isinstance(action, Replace):
        features.append(action.replacement)
    features += [one.feature for feature in features for one in feature.companions]
    depths = [feature.depth for feature in features]
    if isinstance(action, Amend):
        depths += [one.new for one in action.changes if isinstance(one.new, Depth)]
    return any(depth is not None and depth.unit is None for depth in depths)
