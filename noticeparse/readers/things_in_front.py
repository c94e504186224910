"""Tells where the noun that names the kind is only what the real thing lies at or around.

`danger line round wreck` is no wreck, and `symbol enclosing rock` no rock.  In come the items of a
phrase with the one that names its kind; out come faults.  What the first thing is, the vocabulary
does not know; it is told, and the second is not taken for it in silence.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.told import RELATIONS, Told
from noticeparse.readers.words import Item
from noticeparse.vocabulary import kinds

_NOUNS = frozenset(
    ("drawing", "sound", "racon", "ais", "topmark", "light", "depth", "proper", "quoted")
)
_PLAIN_NOUNS = frozenset(
    "area areas centre corner danger end ends group groups head mark marks part parts point"
    " position row side structure".split()
)
_DANGERS = frozenset(("WRECKS", "UWTROC", "OBSTRN", "SBDARE", "SEAARE", "SOUNDG", "DEPARE"))


def things_in_front(text: str, told: Told) -> Iterator[Fault]:
    """A fault of the words in front of the kind that name something else, lying at it."""
    head = told.head
    if head is None:
        return
    ahead = _ahead(text, told.items, head)
    if any(item.text in ("/", "|") for item in ahead):
        # `cable submarino / submarine cable`: the same in two languages.
        return
    is_danger = kinds()[head.value].s57 in _DANGERS
    for at, item in enumerate(ahead):
        is_noun = any(map(_is_noun, ahead[:at]))
        if not _leads(item) or not (is_noun or any(one.role == "unknown" for one in ahead[:at])):
            continue
        # `data gathering buoy` says what a mark is for, `ring enclosing the pier` is no pier.
        has_article = re.match(r" (?:the|an?) ", text[item.end :]) is not None
        if is_noun or is_danger or has_article or item.text in RELATIONS:
            start, end = ahead[0].start, item.end
            yield Fault("feature-kinds-several", start, end, {"written": shown(text[start:end])})
            return


def _ahead(text: str, items: Sequence[Item], head: Item) -> list[Item]:
    """What stands in front of the kind, in the same run of words."""
    before = [item for item in items if item.start < head.start and not item.bracketed]
    found: list[Item] = []
    behind = head
    for item in reversed(before):
        if any(sign in text[item.end : behind.start] for sign in ",;:"):
            break
        found.insert(0, item)
        behind = item
    return found


def _leads(item: Item) -> bool:
    """Whether a word relates what stands before it to what stands behind: `round`, `enclosing`."""
    word = item.text
    if word in RELATIONS and item.role in ("unknown", "plain"):
        return True
    return item.role == "unknown" and word.islower() and word.endswith("ing")


def _is_noun(item: Item) -> bool:
    """Whether a word of the trade may be the thing itself."""
    return item.role in _NOUNS or item.text.lower() in _PLAIN_NOUNS
