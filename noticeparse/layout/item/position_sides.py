"""On which side of their words the positions of lines stand: before them, behind them, above."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise, takewhile

from noticeparse.layout.evidence import tells
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.features import leads_feature
from noticeparse.readers.places import is_connector
from noticeparse.readers.verbs import canonical_verb


def stands_position_first(text: str, lines: Sequence[Line]) -> bool:
    """Whether the positions of these lines stand before what they belong to."""
    if stands_above(text, lines):
        return True
    by_verbs, by_lines = _told_by_verbs(text, lines), told_by_lines(text, lines)
    if by_verbs * by_lines < 0 and abs(by_lines) > abs(by_verbs):
        # A verb here and there does not outweigh how the lines are set.
        return by_lines > 0
    return (by_verbs or by_lines + _told_by_turns(text, lines)) > 0


def stands_above(text: str, lines: Sequence[Line]) -> bool:
    """Whether places stand on lines of their own, above the words: the first is a place.

    The last are words; read the other way round, neither would belong to anything.
    """
    told: list[bool] = []
    for line in lines:
        # `Resite buoy to P`, below the place from which it is moved.
        places = line.has(*PLACES) and not _says_where_to(text, line)
        if places and (line.has("verb") or any(tells(text, e) for e in line.elements)):
            return False
        if places or line.has("verb"):
            told.append(places)
    return bool(told) and told[0] and not told[-1]


def _says_where_to(text: str, line: Line) -> bool:
    """Whether a line is a command to move, and its only place the new one."""
    at = next((i for i, e in enumerate(line.elements) if e.kind in PLACES), 0)
    others = [e for e in line.elements[at + 1 :] if e.kind in PLACES]
    verbs = [text[e.start : e.end] for e in line.elements[:at] if e.kind == "verb"]
    leads_to = text[line.start : line.elements[at].start].rstrip().lower().endswith(" to")
    return leads_to and not others and "move" in map(canonical_verb, verbs)


def told_by_lines(text: str, lines: Sequence[Line]) -> int:
    """Lines that hold both with the position in front, less those with it behind."""
    balance = 0
    for above, line in pairwise([None, *lines]):
        if line is None or not line.has("point", "half"):
            continue
        if above is not None and _goes_on_below(text, above):
            continue
        first = next(e for e in line.elements if e.kind in PLACES or tells(text, e))
        if first.kind not in PLACES or _has_figure_in_front(text, line):
            balance -= 1
        elif any(tells(text, e) for e in line.elements):
            balance += 1
    return balance


def _goes_on_below(text: str, line: Line) -> bool:
    """Whether the place that a line leads to, or the rest of one, stands on the next line."""
    if line.is_blank or line.elements[-1].kind == "half":
        return not line.is_blank
    words = text[line.start : line.end].rstrip()
    return words.endswith("°") or words.rpartition(" ")[2].lower() in _LEADS_BELOW


_LEADS_BELOW = frozenset("in from to at joining between by and of".split())


def _has_figure_in_front(text: str, line: Line) -> bool:
    """Whether a bare figure stands before the place, and a mere remark in brackets behind it.

    `7.2 P (PA)`: the figure is the depth, and the bracket is no feature.
    """
    at = next(i for i, e in enumerate(line.elements) if e.kind in PLACES)
    figures = [text[e.start : e.end].strip() for e in line.elements[:at] if e.kind == "words"]
    behind = [text[e.start : e.end].strip() for e in line.elements if tells(text, e)]
    is_figure = len(figures) == 1 and _FIGURE.fullmatch(figures[0]) is not None
    in_brackets = bool(behind) and all(one[:1] + one[-1:] == "()" for one in behind)
    return is_figure and in_brackets and not any(leads_feature(one.strip("()")) for one in behind)


_FIGURE = re.compile(r"[0-9]{1,3}(?:\.[0-9]{1,2})?")


def _told_by_verbs(text: str, lines: Sequence[Line]) -> int:
    """Verbs that stand between position and feature, or before the position, less the others."""
    balance = 0
    last: Element | None = None
    for line in lines:
        for index, element in enumerate(line.elements):
            if element.kind == "verb" and not index and _goes_on_with(text, last, element):
                # `in P, Q and R` and below it `insert an area; …`: a line end parts the sentence.
                balance += int(not any(e.kind in PLACES for e in _clause(line.elements)))
            elif element.kind == "verb":
                balance += _told_by_verb(text, line.elements, index)
        last = line.elements[-1] if line.elements else None
    return balance


def _goes_on_with(text: str, last: Element | None, verb: Element) -> bool:
    """Whether a small verb that opens a line goes on behind the place that ends the line above."""
    return last is not None and last.kind in PLACES and text[verb.start].islower()


def _clause(elements: Sequence[Element]) -> list[Element]:
    """What stands behind a verb that opens its line, up to the next clause."""
    return list(takewhile(lambda e: e.kind not in _ENDS, elements[1:]))


_ENDS = ("verb", "semicolon")


def _told_by_verb(text: str, elements: Sequence[Element], index: int) -> int:
    """1 where the position stands before the feature of this verb, -1 behind, 0 not told."""
    behind = next((e for e in elements[index + 1 :] if e.kind in ("words", "point")), None)
    if behind is None:
        return 0
    # Behind a semicolon stands the place of the next one: `in P insert rock; in Q delete buoy`.
    rest = list(takewhile(lambda e: e.kind not in _ENDS, elements[index + 1 :]))
    place = next((i for i, e in enumerate(rest) if e.kind in PLACES), len(rest))
    if behind.kind == "words" and is_connector(text[behind.start : behind.end]):
        # `to insert, in P, a wreck`
        before_place = any(tells(text, e) for e in rest[:place])
        return int(not before_place and any(tells(text, e) for e in rest[place:]))
    before = elements[index - 1] if index else None
    in_columns = (
        before is not None
        and before.kind in (*PLACES, "bar")
        and elements[index].gap
        and any(e.kind in PLACES for e in elements[:index])
    )
    if behind.kind == "point" or in_columns:
        return 1
    # `In P, insert a wreck.`: places and links alone before the verb, none behind the feature.
    lead = list(takewhile(lambda e: e.kind not in _ENDS, reversed(elements[:index])))
    opens = any(e.kind in PLACES for e in lead) and not any(tells(text, e) for e in lead)
    if not opens or place < len(rest):
        return -1
    start, end = elements[index].start, elements[index].end
    # `… and P. Move the buoy from`, in a narrow column: its place stands on the next line.
    return 0 if text[start - 2 : start] == ". " and text[start + 1 : end].islower() else 1


def _told_by_turns(text: str, lines: Sequence[Line]) -> int:
    """Where positions and words have lines of their own: verbs above a position, less others."""
    balance = 0
    behind_verb = True
    for line in lines:
        if not line.elements:
            continue
        has_verb = line.has("verb")
        words = (has_verb or behind_verb) and any(tells(text, e) for e in line.elements)
        if has_verb and not words:
            behind_verb = not line.has("point", "half")
            continue
        places = line.has("point", "half")
        if behind_verb and not (places and words):
            balance += 1 if places else -1
        behind_verb = False
    return balance
