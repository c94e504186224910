"""Evidence by which lines are cut into items: what opens one, what goes on, what stands where.

Plain functions over lines and words; nothing is kept.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise, takewhile

from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.line.element_kinds import ElementKind
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.line.joints import BULLETS
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.openings import only_qualifies
from noticeparse.readers.places import is_connector, only_relates, split_phrase
from noticeparse.stretch import gather

PLACES: frozenset[ElementKind] = frozenset({"point", "half", "reference", "same"})
"""Kinds of element that give a position."""

AXIS_WORDS = frozenset({"lat", "latitude", "long", "lon", "longitude", "and"})
"""Words that may stand between the two halves of a position."""

_LINKS = ("by", "with", "for")
OPEN_END = frozenset(
    "and or of with by from to into in at on the a an for joining between within near over "
    "least old former marking towards across substitute read this these its their".split()
)
"""Words that nothing ends with."""


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
        places = line.has(*PLACES)
        if places and (line.has("verb") or any(tells(text, e) for e in line.elements)):
            return False
        if places or line.has("verb"):
            told.append(places)
    return bool(told) and told[0] and not told[-1]


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


_SOUNDING = re.compile(r"[0-9]{1,4}[₀-₉¼½¾⅓⅔⅛⅜⅝⅞]")
"""A figure that can be nothing but a depth: `7₂` in front of its place."""


def tells(text: str, element: Element) -> bool:
    """Whether an element is words that do more than link positions or name their halves."""
    return element.kind == "words" and _tell(text[element.start : element.end])


@lru_cache(maxsize=8192)
def _tell(words: str) -> bool:
    # Each of the ways to cut a body asks this of the same words again.
    if _SOUNDING.fullmatch(words.strip()):
        return True
    if not any(c.isalpha() for c in words):
        # A figure, as `1.` before the items of a list, tells nothing.
        return False
    return words.lower().strip(" .:") not in AXIS_WORDS and not only_relates(words)


def lead_index(line: Line) -> int:
    """The index of the element that opens a line, behind a bullet, letter or number before it."""
    index = 0
    while index + 1 < len(line.elements) and line.elements[index].kind in ("label", "bar"):
        index += 1
    return index


def is_complete(words: str, *, is_replacement: bool) -> bool:
    """Whether a description could end here: it names a feature and does not break off."""
    last = words.rstrip()
    if not last or last[-1] in ",;:-&/(" or not has_kind(words):
        return False
    if words.count('"') % 2:
        return False
    if last.split()[-1].lower() in OPEN_END:
        return False
    return not (is_replacement and _lacks_replacement(last))


def _lacks_replacement(words: str) -> bool:
    """Whether a replacement is under way whose second feature is not yet named."""
    second = min((words.rpartition(f" {link} ")[2] for link in _LINKS), key=len)
    return second == words or not has_kind(second)


def stands_behind_blank(text: str, start: int) -> bool:
    """Whether the line above the one that holds offset `start` is blank."""
    line_start = text.rfind("\n", 0, start)
    return not text[text.rfind("\n", 0, line_start) + 1 : line_start].strip()


def may_be_item(text: str, start: int, words: str) -> bool:
    """Whether words that begin there name a feature, and are an item though without a place.

    Behind a blank line, words without a figure are a remark or a signature.
    """
    is_bare = not any(c.isdigit() for c in words)
    return has_kind(words) and not (stands_behind_blank(text, start) and is_bare)


def opens_a_line(text: str, start: int) -> bool:
    """Whether nothing but a bullet stands before offset `start` on its line."""
    before = text[text.rfind("\n", 0, start) + 1 : start].strip()
    return not before or before in BULLETS


def opens_paragraph(text: str, line: Line) -> bool:
    """Whether a line opens with a letter, number or bullet; `>` is a quote of mail."""
    first = line.elements[0]
    is_bullet = first.kind == "bar" and text[first.start : first.end].strip() in BULLETS - {">"}
    return is_bullet or (first.kind == "label" and first.gap)


def verb_places(lines: Sequence[Line]) -> frozenset[int]:
    """The places among the elements of their lines in which verbs stand behind a position."""
    return frozenset(
        index
        for line in lines
        for index, element in enumerate(line.elements)
        if element.kind == "verb" and any(e.kind in PLACES for e in line.elements[:index])
    )


def split_lead(text: str, pieces: list[Piece]) -> tuple[list[Piece], list[Piece]]:
    """The words before the first place: what describes the feature, and the relation."""
    words = gather(text, pieces)
    end = split_phrase(words.text).description_end
    if not 0 < end < len(words.text):
        return pieces, []
    cut = words.outer(end)
    before = [(a, min(b, cut)) for a, b in pieces if a < cut]
    behind = [(max(a, cut), b) for a, b in pieces if b > cut]
    return before, behind


def breaks_off(text: str, item: Item) -> bool:
    """Whether a list of positions stops at a comma, so that more stand behind a blank line."""
    places = item.groups[-1].places
    end = places[-1].element.end if places else 0
    return text[end : end + 4].partition("\n")[0].strip() in (",", "and", "&")


def qualifies(text: str, waiting: Element, feature: Element) -> bool:
    """Whether words on a line of their own begin the description on the line below: `port-hand`.

    They stand in its column, name no kind, and say what may stand before one.
    """
    if _column(text, waiting.start) != _column(text, feature.start):
        return False
    return only_qualifies(text[waiting.start : waiting.end])


def _column(text: str, start: int) -> int:
    return start - text.rfind("\n", 0, start)
