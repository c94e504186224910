"""What is wrong with statements below places: whose place it is, or what commands."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element


def one_each(text: str, head: Sequence[Element], items: Sequence[Item]) -> Element | None:
    """The second of as many places as there are statements of one thing each; else None.

    They may be one for each, in order, or all for each; `P and Q` are both for each.
    """
    places = [e for e in head if e.kind in PLACES]
    if len(places) < 2 or len(places) != len(items):
        return None
    linked = any(e.kind == "words" and " and" in f" {text[e.start : e.end]}" for e in head)
    named = (" ".join(text[a:b] for a, b in item.words).rstrip(" .") for item in items)
    return None if linked or all(words.endswith("s") for words in named) else places[1]


def of_another(text: str, place: Element) -> Fault:
    """The fault of a place that may be that of another thing."""
    written = {"written": text[place.start : place.end]}
    return Fault("place-of-another", place.start, place.end, written)


def among_words(text: str, statement: Sequence[Element]) -> Fault:
    """The fault of a command that stands among words that name no thing."""
    start, end = statement[0].start, statement[-1].end
    return Fault("verb-within-words", start, end, {"written": text[start:end]})
