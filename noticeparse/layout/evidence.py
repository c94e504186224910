"""Evidence by which lines are cut into items: what opens one, what goes on, what stands where.

Plain functions over lines and words; nothing is kept.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache

from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.line.joints import BULLETS
from noticeparse.readers.features import has_kind
from noticeparse.readers.openings import only_qualifies
from noticeparse.readers.places import only_relates, split_phrase
from noticeparse.stretch import gather

AXIS_WORDS = frozenset({"lat", "latitude", "long", "lon", "longitude", "and"})
"""Words that may stand between the two halves of a position."""

PROPERTIES = (
    r"(?:the )?(?:name|number|character(?:istics?)?|period|(?:nominal )?range|elevation|height"
    r"|colours?|sectors?|legend|depth|topmark|shape|clearance|wording)"
)
"""A pattern of what may be altered of a feature that itself stays."""

_LINKS = ("by", "with", "for")
OPEN_END = frozenset(
    "and or of with by from to into in at on the a an for joining between within near over "
    "least old former marking towards across substitute read this these its their".split()
)
"""Words that nothing ends with."""


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
