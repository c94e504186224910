"""What stands behind a semicolon or a line end: another clause, or the next thing of a list."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from itertools import takewhile

from noticeparse.layout.evidence import opens_a_line, tells
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.readers.features import leads_feature, read_feature, value_property
from noticeparse.readers.places import is_connector, read_phrase, split_phrase

_FAR = 8
"""Lines on which a clause may give its places."""
_LIGHTS = frozenset(("light", "light_words", "sectors"))
_NAMES = frozenset(("numbered", "quoted", "proper", "code"))


def elements_behind(lines: Sequence[Line], element: Element) -> list[Element]:
    """The elements behind one, on its line and on those below it, up to a blank line."""
    at = bisect_right(lines, element.start, key=lambda line: line.start) - 1
    below = takewhile(lambda line: not line.is_blank, lines[at : at + _FAR])
    return [one for line in below for one in line.elements if one.start > element.start]


def opens_clause(text: str, behind: Sequence[Element], *, by_verb: bool) -> bool:
    """Whether elements open another clause: a place, or words that lead to places of a verb.

    `bounded by P, Q and R insert an area` does, `bounded by P, Q and R` alone goes on; so does a
    place alone where only a verb can tell (`by_verb`).
    """
    if not behind:
        return False
    leads = 0 if behind[0].kind in PLACES else 1
    words = words_of(text, behind[:leads])
    if len(behind) <= leads or behind[leads].kind not in PLACES:
        return False
    if not by_verb and (not leads or is_connector(words)):
        return True
    told = next((one for one in behind[leads:] if not _is_of_places(text, one)), None)
    return told is not None and told.kind == "verb" and not split_phrase(words).description_end


def opens_led_row(text: str, lead: Element, behind: Sequence[Element]) -> bool:
    """Whether words lead to places with a thing of their own: `joining P, Q and R   cable`.

    Of two places in one row the thing behind them is told; a list that goes on has none.
    """
    first = read_phrase(text[lead.start : lead.end])[:1]
    leads = bool(first) and first[0].kind not in ("words", "separator")
    if not leads or not behind or behind[0].kind not in PLACES:
        return False
    told = next((one for one in behind if not _is_of_places(text, one)), None)
    if told is None or told.kind != "words" or opens_a_line(text, told.start):
        return False
    return leads_feature(text[told.start : told.end])


def is_row_of(text: str, line: Line | None, reference: Element) -> bool:
    """Whether words of a feature stand behind a reference, in a column of their own."""
    if line is None or reference.kind != "reference":
        return False
    behind = (e for e in line.elements if e.start > reference.start)
    return any(e.gap and tells(text, e) and leads_feature(text[e.start : e.end]) for e in behind)


def _is_of_places(text: str, element: Element) -> bool:
    """Whether an element is a place, or what joins two of them."""
    return element.kind in PLACES or is_connector(words_of(text, [element]))


def is_cut_behind_stop(text: str, first: Element, before: str, below: str) -> bool:
    """Whether a line end cuts the words of a thing behind a semicolon: `…; starboard-hand / buoy`.

    Then the words before it make another thing of those below.
    """
    if text[max(first.start - 4, 0) : first.start].rstrip()[-1:] != ";":
        return False
    whole, rest = (read_feature(words).feature.kind for words in (f"{before} {below}", below))
    return whole not in (rest, "unknown")


def opens_named_row(text: str, first: Element, before: str, below: str) -> bool:
    """Whether a light behind a place ends its row, and the next begins with a name.

    `No 1, P, Fl.G.3s` and below it `No 2, Q, Fl.R.3s`: each light is that of its own row.
    """
    if opens_a_line(text, first.start):
        return False
    lit, named = value_property(before.strip(" ,;")), value_property(below.strip(" ,;"))
    return bool(lit) and lit <= _LIGHTS and bool(named) and named <= _NAMES
