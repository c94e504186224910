"""Tells the words in front of a kind or depth that are none of the trade: `noth cardinal buoy`.

A letter that is lost or exchanged turns one kind into another that is read as well: `danegrous
wreck` is read as a wreck, `wrekc, least depth 12.4 m` as a depth of clear water.  In come the
items of a phrase with its kind settled; out come faults (common practice, no published source).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from functools import lru_cache
from itertools import pairwise

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.slips import one_slip_from
from noticeparse.readers.told import Told
from noticeparse.readers.verbs import canonical_verb
from noticeparse.readers.words import Item
from noticeparse.vocabulary import is_known_word, kinds

_DESCRIBING = frozenset(
    "category colour shape lit light kind wreck status water virtual quality condition".split()
)
"""Roles of words in front of a kind that belong to its name."""
_BEFORE_DEPTHS = frozenset(("unknown", "colour", "wreck", "status", "other"))
_WATERS = frozenset(("area", "channel", "berth"))
"""What has a depth of its own: `dedged area with a depth of 9.5 m` is no sounding."""
_DEPTHS = frozenset(("SOUNDG", "DEPCNT"))
_NARROWED = frozenset(("WRECKS", "UWTROC", "OBSTRN", "CBLSUB", "CBLOHD", "PIPSOL", "PIPOHD"))
"""Classes of what a word in front makes another kind: `dangerous`, `overhead`."""
_BILINGUAL = re.compile(r" / |\|")
_BOUND = frozenset("cardinal hand water danger".split())
"""Words that name no kind of mark without the word before them."""
_NO_THINGS = frozenset(
    "following additional present recent said respective adjacent nearby individual lesser shoaler"
    " shoalest shallowest minimum surveyed latest another various less actual wrong true these"
    " those controlling natural general".split()
)
"""What is said of any thing or depth without naming one."""
_OF_USE = frozenset("visitors visitor yacht club naval military trade freight".split())
"""What is said of a mark or cable by its users: `visitors mooring buoy`."""
_WITH = re.compile(r"\bwith (?:an? |its )?$", re.IGNORECASE)
_LONG_WORD = 5
_LONG_CAPITALS = 7
"""In capitals a word may be a name, and a short one is near many others."""
_SHORTEST_WORD = 3


def misspelt_words(text: str, told: Told, kind: str) -> Iterator[Fault]:
    """Faults of unknown words in front of the kind, and of a thing whose depth alone is read."""
    if kind == "unknown" or _BILINGUAL.search(text) is not None:
        # `cable submarino / submarine cable`: the same in two languages.
        return
    thing = _thing_with_depth(text, told, kind)
    if thing:
        yield _fault("feature-kinds-several", text, thing)
        return
    for run in _unknown_runs(text, told, kind):
        yield _fault("feature-words-unread", text, run)
    for item in _words_with(text, told):
        if is_near_word(item.text):
            yield _fault("feature-words-unread", text, [item])


def _fault(code: str, text: str, run: Sequence[Item]) -> Fault:
    start, end = run[0].start, run[-1].end
    return Fault(code, start, end, {"written": shown(text[start:end])})


def _thing_with_depth(text: str, told: Told, kind: str) -> list[Item]:
    """The words before a depth that name a thing nobody knows: `wrekc, least depth 12.4 m`."""
    known = kinds().get(kind)
    if known is None or known.s57 not in _DEPTHS:
        return []
    ahead: list[Item] = []
    for item in told.items:
        if item.role in ("depth", "measure") or (item.role == "water" and ahead):
            break
        ahead.append(item)
    else:
        return []
    if any(item.role not in _BEFORE_DEPTHS and item.text not in _WATERS for item in ahead):
        return []
    return ahead if any(_is_strange(item) or _is_cut(text, item) for item in ahead) else []


def _is_cut(text: str, item: Item) -> bool:
    """Whether a word breaks off: `wr..., least depth 13.4 m`."""
    is_word = item.role == "unknown" and item.text.isalpha() and item.text.islower()
    return is_word and text.startswith(("...", "- "), item.end)


def _unknown_runs(text: str, told: Told, kind: str) -> Iterator[list[Item]]:
    """The words in front of the kind, in one row with it, that the vocabulary does not know."""
    known, head = kinds().get(kind), told.head
    if known is None or head is None:
        return
    is_narrowed = bool(known.form) or known.s57 in _NARROWED
    run: list[Item] = []
    row = _row_before(text, told.items, head)
    for item, behind in pairwise((*row, head)):
        is_bound = bool(known.form) and behind.text.lower().split()[0] in _BOUND
        is_other = is_bound or (is_narrowed and _tells_more(item.text)) or is_near_word(item.text)
        if is_other and _is_strange(item):
            run.append(item)
        elif run:
            yield run
            run = []
    if run:
        yield run


def _tells_more(word: str) -> bool:
    """Whether a word may make another thing of the kind; one of its use does not."""
    return word.islower() and not word.endswith("ing") and word not in _OF_USE


def _words_with(text: str, told: Told) -> Iterator[Item]:
    """Strange words of what goes with the thing: `light-buoy with topmrak`."""
    for item in told.items:
        is_long = len(item.text) > _LONG_WORD and item.text.islower()
        if is_long and _is_strange(item) and _WITH.search(text, 0, item.start):
            yield item


def _row_before(text: str, items: Sequence[Item], head: Item) -> list[Item]:
    """What stands in front of the kind and belongs to its name."""
    row = [item for item in items if item.start < head.start and not item.bracketed]
    row.append(head)
    first = len(row) - 1
    for at in range(len(row) - 2, -1, -1):
        item, behind = row[at], row[at + 1]
        is_of_name = item.role in _DESCRIBING or item.role == "unknown" or item.text in _BOUND
        if not is_of_name or text[item.end : behind.start].strip(" -"):
            break
        first = at
    return row[first:-1]


def _is_strange(item: Item) -> bool:
    """Whether an item is a word, and none of the trade or of what lies on the ground."""
    word = item.text
    if item.role != "unknown" or item.bracketed or not word.isalpha() or word in _NO_THINGS:
        return False
    is_word = len(word) >= _SHORTEST_WORD and not is_known_word(word)
    return is_word and canonical_verb(word) is None


@lru_cache(maxsize=4096)
def is_near_word(word: str) -> bool:
    """Whether one letter lost, added or exchanged makes a word of the trade of it."""
    plain = word.lower()
    if len(plain) < (_LONG_CAPITALS if word.isupper() else _LONG_WORD) or not plain.isascii():
        return False
    return any(map(is_known_word, one_slip_from(plain)))
