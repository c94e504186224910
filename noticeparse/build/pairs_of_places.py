"""Places of several lines or areas under one feature, which are no one line through all of them.

`cables between P and Q and between R and S` are two cables, and so are `pipelines joining P and Q,
R and S`; one line would run from the end of the first to the beginning of the second.  The same is
told by rows that hold a line or an area each, and by letters: `cables, (a)-(b) and (c)-(d)`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from noticeparse.build.extents import item_extent, over
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.numbers import COUNT_WORDS, counted
from noticeparse.rare import Rare
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import gather, unquoted

_FEWEST = 4
_CORNERS = 3
_BEGINS_ANEW = Rare(
    r"\b(?:between|joining|connecting|from)\b", "between connecting from joining", re.IGNORECASE
)
_AND = re.compile(r"(?:^|[ ,;.\n])(?:and|&)(?:[ \n]|$)", re.IGNORECASE)
_LISTS = re.compile(r"[,;]")
_PAIRS = re.compile(r"[ ]*(?:and|&|to|[-–—→])[ ]*(?:\([a-z0-9]{1,2}\) ?)?", re.IGNORECASE)
"""Between the two ends of one line."""
_RUNS = re.compile(r"[ ]*(?:to|[-–—→])[ ]*", re.IGNORECASE)
_NEXT_PAIR = re.compile(
    r"[ ]*(?:[;.] ?)?\n\s*(?:\(?[a-z0-9]{1,2}[).] ?)?|, ?and (?:\([a-z0-9]{1,2}\) ?)?",
    re.IGNORECASE,
)
"""Between a line and the next one: a new row, or `, and` where a pair has `and` alone."""
_LETTERS = r"\(?[a-z]\)? ?(?:-|–|to) ?\(?[a-z]\)?"
_LETTERED = re.compile(rf"(?<![A-Za-z(]){_LETTERS}(?:,|;| ?&|,? and) {_LETTERS}(?![A-Za-z])")
_IN_A_ROW = re.compile(r"[ ]*(?:,|,? ?and|,? ?&) ?", re.IGNORECASE)
_NEXT_AREA = re.compile(r"[ ]*;? ?\n\s*(?P<letter>\(?[a-z0-9]{1,2}[).] ?)?|[ ]*; ?", re.IGNORECASE)
_PLURAL = re.compile(
    r"\b(?:areas|zones|farms|grounds|fields|cages|reefs|anchorages|lanes|sites|havens|parks"
    r"|sanctuaries|reserves|parcels|sections|polygons)\b",
    re.IGNORECASE,
)
_NUMBER = re.compile(
    rf"(?:the |new )*(?P<number>[2-9]|{'|'.join(COUNT_WORDS)}) (?:[a-z-]+ ){{0,4}}?[a-z-]+s\b",
    re.IGNORECASE,
)


def pairs_of_places(context: Context, item: Item, geometry: Geometry) -> Iterator[Fault]:
    """A fault where the words between the places of a line or area part them into several."""
    if geometry.shape not in ("line", "area", "points") or len(geometry.positions) < _FEWEST:
        return
    places = sorted((place.element.start, place.element.end) for place in item.places)
    joints = [context.text[end:start] for (_, end), (start, _) in pairwise(places)]
    words = unquoted(gather(context.text, item.words).text)
    whole = unquoted(context.text[slice(*item_extent(item))])
    if geometry.shape == "line":
        is_several = _are_pairs(joints) or _LETTERED.search(whole) is not None
    elif geometry.shape == "points":
        is_several = _in_turn(joints, _RUNS)
    else:
        is_several = _are_rings(joints, words, len(geometry.positions))
    if is_several:
        yield over(context, item, "relation-unclear")


def _are_pairs(joints: list[str]) -> bool:
    """Whether the joints begin a line anew: by a word, behind an end of the list, or by rows."""
    anew = any(_BEGINS_ANEW.search(joint) for joint in joints[1:])
    ended = next((at for at, joint in enumerate(joints) if _AND.search(joint)), len(joints))
    goes_on = any(_LISTS.search(joint) and not _AND.search(joint) for joint in joints[ended + 1 :])
    parted = any(map(_parts_lines, joints, joints[1:], joints[2:]))
    return anew or goes_on or parted or _in_turn(joints, _PAIRS)


def _parts_lines(before: str, joint: str, behind: str) -> bool:
    """Whether a bare line end parts two pairs: `P and Q`, and on the next line `R and S`."""
    is_bare = "\n" in joint and not joint.strip()
    return is_bare and all(_AND.search(one) for one in (before, behind))


def _in_turn(joints: list[str], of_pair: re.Pattern[str]) -> bool:
    """Whether each other joint links two ends, and those between them lead to the next pair."""
    return len(joints) % 2 == 1 and all(
        (_NEXT_PAIR if at % 2 else of_pair).fullmatch(joint) for at, joint in enumerate(joints)
    )


def _are_rings(joints: list[str], words: str, count: int) -> bool:
    """Whether the corners stand in rows of three and more, each of them an area of its own.

    A list that a narrow column breaks has its commas at the line ends too.
    """
    told = _NUMBER.match(words)
    if told is not None and counted(told["number"]) * _CORNERS <= count:
        return True
    if not all(_IN_A_ROW.fullmatch(joint) or _NEXT_AREA.fullmatch(joint) for joint in joints):
        return False
    rows, has_letters = [1], False
    for joint in joints:
        following = None if _IN_A_ROW.fullmatch(joint) else _NEXT_AREA.fullmatch(joint)
        if following is None:
            rows[-1] += 1
        else:
            rows.append(1)
            has_letters |= following["letter"] is not None
    is_plural = has_letters or _PLURAL.search(words) is not None
    return min(rows) >= _CORNERS and len(rows) > 1 and is_plural
