"""A racon on a line of its own below the mark that carries it: `Insert light-buoy P`, `Racon(B)`.

The words name a kind and could be an item that lost its place.  They say more of the thing above
where they stand further in than that, and it is a mark or light that has none yet.
"""

from __future__ import annotations

import re

from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import opens_a_line
from noticeparse.readers.features import leads_feature, read_feature, value_property
from noticeparse.readers.verbs import canonical_verb
from noticeparse.stretch import gather

_AIDS = frozenset(("racon", "sound", "ais"))
_JOINT = re.compile(r"^(?:and |with |fitted with )", re.IGNORECASE)
_CARRIERS = ("BOY", "BCN", "LIGHTS", "LITFLT", "LITVES", "LNDMRK", "OFSPLF", "PILPNT")
_STAYS = frozenset(("insert", "delete", "move"))
"""Verbs that make no other thing of it, which could be what has the racon."""


def begins_another(text: str, item: Item, start: int, words: str) -> bool:
    """Whether words that begin at `start`, below an item with its place, are one of their own."""
    return opens_a_line(text, start) and not says_more(text, item, start, words)


def says_more(text: str, item: Item, start: int, words: str) -> bool:
    """Whether such words name no thing, or the racon of the thing that the item is of."""
    if not leads_feature(words):
        return True
    roles = value_property(_JOINT.sub("", words))
    if "racon" not in roles or not roles <= _AIDS or canonical_verb(item.verb or "") not in _STAYS:
        return False
    is_next = item.has_place and text.count("\n", item.places[-1].element.end, start) == 1
    is_whole = len(item.places) == 1 and item.words and not item.tail
    if not is_whole or not is_next or not _is_further_in(text, item, start):
        return False
    if not _ends_its_line(text, start, words):
        return False
    feature = read_feature(gather(text, item.words).text).feature
    return feature.racon is None and any(one.startswith(_CARRIERS) for one in feature.s57)


def _is_further_in(text: str, item: Item, start: int) -> bool:
    """Whether words stand further in than an item, and not where one more of a list would."""
    below = _column(text, start)
    in_line = item.label_piece is None and below == _column(text, item.words[0][0])
    return below > _column(text, item.pieces[0][0]) and not in_line


def _column(text: str, offset: int) -> int:
    return offset - text.rfind("\n", 0, offset)


def _ends_its_line(text: str, start: int, words: str) -> bool:
    """Whether nothing stands behind words on their last line: `Racon(B) discontinued`."""
    end = start
    for word in words.split():
        end = text.find(word, end) + len(word)
    line_end = text.find("\n", end)
    return not text[end : line_end if line_end >= 0 else len(text)].strip(" .,;")
