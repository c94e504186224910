"""The kinds of element that a line may hold, and the kind that each terminal of a line makes."""

from __future__ import annotations

from typing import Literal

ElementKind = Literal[
    "words", "point", "half", "label", "reference", "same", "verb", "passive", "key", "number",
    "chart", "charts_only", "semicolon", "bar", "rule",
]  # fmt: skip

PLACES: frozenset[ElementKind] = frozenset({"point", "half", "reference", "same"})
"""Kinds of element that give a position."""

KINDS: dict[str, ElementKind] = {
    "COORDINATE": "half", "COORDINATE_HEMISPHERE_FIRST": "half", "COORDINATE_MINUTES": "half",
    "COORDINATE_DOUBTFUL": "half", "COORDINATE_BARE": "half", "COORDINATE_CUT": "half",
    "ISO_POINT": "point", "SIGNED_PAIR": "point", "BARE_PAIR": "point",
    "COORDINATE_ON_SAME": "point",
    "REFERENCE": "reference", "REFERENCE_LIST": "reference",
    "ITEM_REFERENCE": "reference", "PARAGRAPH_REFERENCE": "reference", "SAME_POSITION": "same",
    "LABEL": "label", "LABEL_BRACKETED": "label",
    "NOTICE_NUMBER": "number", "HEAD_NUMBER": "number",
    "CHART": "chart", "CHART_AT_FOOT": "chart", "CHARTS_ONLY": "charts_only",
    "VERB": "verb", "VERB_NOUN": "verb", "VERB_THERE": "verb", "VERB_FOR": "verb",
    "VERB_OF_CHART": "verb", "VERB_AGENT": "verb", "VERB_BY_NOUN": "verb", "VERB_CHART": "verb",
    "VERB_ABROAD": "verb",
    "PASSIVE": "passive", "KEY": "key", "SEMICOLON": "semicolon", "RULE": "rule",
    "BAR": "bar", "LEADER": "bar", "COURTESY": "bar", "FOREIGN": "bar", "ITEM_COUNT": "bar",
    "WORDS": "words", "CHUNK": "words", "ARROW": "words", "OTHER": "words", "STAR": "words",
    "SECTOR": "words", "CHART_ITEMS": "words",
}  # fmt: skip
