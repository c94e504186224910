"""Words of the trade that say much of a thing and go into no value of its record.

`floating platform`, `light-buoy, summer`, `doubtful wreck`: a record without them looks whole.  In
come the items of a phrase with its kind settled; out come faults, none for words that are kept.
Common practice, no published source.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.marks import read_colour_letters
from noticeparse.readers.told import Told
from noticeparse.readers.words import Item
from noticeparse.vocabulary import kinds

_STATES = frozenset("derelict damaged dilapidated doubtful suspected approximate circa".split())
"""Conditions, and doubts that do not say what is doubtful."""
_ALONE = frozenset("summer winter covers breaks".split())
"""Seasons and what rocks do, where no noun stands behind them as in `winter seas`."""
_GOES_ON = re.compile(r" (?!only|months|season)[A-Za-z]")
_SHORT = frozenset(("c", "ca", "DW", "TE"))
"""Circa, deep water, temporarily extinguished."""
_OF_LIGHTS = frozenset("day daytime night fog emergency reserve standby".split())
_FLOATING = frozenset(("SLCONS", "OFSPLF", "LNDMRK", "PILPNT", "BRIDGE"))
"""Classes of what stands firm unless it is said to float."""
_AXES = frozenset(("NAVLNE", "RECTRC", "LIGHTS"))
"""Classes whose bearing is held against their positions, or told with the light."""
_LIT = frozenset(("light", "light_words", "sectors"))
_WORDS = frozenset(("unknown", "plain"))
_NOTES = frozenset(("note", "notes", "legend", "legends", "caution", "the note", "a note"))


def weighty_words(text: str, told: Told, kind: str) -> Iterator[Fault]:
    """Faults of such words and bearings, and of a note whose words are not told."""
    known = kinds().get(kind)
    s57 = known.s57 if known is not None else ""
    is_lit = any(item.role in _LIT for item in told.items)
    for before, item in zip((None, *told.items), told.items, strict=False):
        # `Fl.Y.5s (summer)` is a remark of the light.
        is_remark = before is not None and before.role in _LIT and item.text.lower() in _ALONE
        if is_remark and item.bracketed:
            continue
        is_asked = before is not None and before.role == "kind"
        if item.role == "other" and item.text == "?" and (is_asked or not item.bracketed):
            # `wreck?`, `wreck (rock?)`: whether it is one, or whether it is there.
            yield _fault("feature-words-unread", item)
        elif _is_state(text, item) and not _is_depth_doubtful(item, kind):
            yield _fault("feature-words-unread", item)
        elif _is_bearing(item) and not is_lit and s57 not in _AXES:
            yield _fault("feature-figure-unread", item)
    yield from _ground(told, kind)
    yield from _lost_masts(told, kind, s57)
    yield from _beside_kind(told, s57, is_lit=is_lit)
    yield from _other_ranges(told, is_lit=is_lit)
    yield from _boards(text, told)
    for one in told.companions:
        words = text[one.start : one.end]
        if words.lower() in _NOTES:
            yield Fault("feature-words-unread", one.start, one.end, {"written": shown(words)})


def _fault(code: str, item: Item) -> Fault:
    return Fault(code, item.start, item.end, {"written": shown(item.text)})


def _is_state(text: str, item: Item) -> bool:
    """Whether a word tells a state, a season or a doubt."""
    if item.role not in _WORDS:
        return False
    word = item.text.lower()
    if word in _ALONE:
        return _GOES_ON.match(text, item.end) is None
    return item.text in _SHORT or word in _STATES


def _is_bearing(item: Item) -> bool:
    """Whether a figure in degrees is a bearing, and no half of a position."""
    return item.role == "bearing" and item.text[:3].isdigit()


def _is_depth_doubtful(item: Item, kind: str) -> bool:
    """`depth 5m, doubtful`: of nothing but a depth, of which the record says so."""
    return item.text.lower() == "doubtful" and kind == "sounding"


def _boards(text: str, told: Told) -> Iterator[Fault]:
    """`beacon, red square dayboard`, `light, Fl.R.3s, daymark`: of the mark, or beside it."""
    for item in told.roles("kind"):
        if item.value != "daymark" or item == told.head:
            continue
        colours = [one for one in told.roles("colour") if one.end < item.start <= one.end + 12]
        if text[: item.start].lower().endswith("and "):
            yield _fault("feature-kind-apposed", item)
        elif colours and told.head is not None and colours[-1].start > told.head.end:
            yield _fault("feature-words-unread", colours[-1])
        elif told.head is not None and _APPOSED.search(text, told.head.end, item.start):
            yield _fault("feature-kind-apposed", item)


_APPOSED = re.compile(r", (?:[a-z]+ )?$")


def _ground(told: Told, kind: str) -> Iterator[Fault]:
    """`nature of seabed, M.S`: the letters of the ground, of which the record has none."""
    if kind == "seabed_nature":
        letters = (one for one in told.roles("unknown") if len(one.text) < _LEAST_OF_GROUND)
        yield from (_fault("feature-words-unread", one) for one in letters)


_LEAST_OF_GROUND = 3


def _lost_masts(told: Told, kind: str, s57: str) -> Iterator[Fault]:
    """`dangerous wreck, masts visible`, `wreck (masts)`: of two kinds of wreck one is kept."""
    if s57 != "WRECKS" or kind == "wreck_masts":
        return
    for item in told.items:
        is_mast = item.role == "wreck" and item.value == "masts"
        if is_mast or (item.role == "kind" and item.bracketed and item.value == "radio_mast"):
            yield _fault("feature-words-unread", item)


def _beside_kind(told: Told, s57: str, *, is_lit: bool) -> Iterator[Fault]:
    """`floating platform`; `fog light`, `Dir WRG light` and `R sector` without a character."""
    for item, behind in pairwise(told.items):
        if behind != told.head or item.role not in _WORDS or item.bracketed:
            continue
        word = item.text.lower()
        if word == "floating" and s57 in _FLOATING:
            yield _fault("feature-words-unread", item)
        elif s57 == "LIGHTS" and not is_lit and (word in _OF_LIGHTS or _is_colour(item)):
            yield _fault("light-character-missing", item)


def _is_colour(item: Item) -> bool:
    return item.text == "Dir" or set(item.text) <= set("WRGY")


def _other_ranges(told: Told, *, is_lit: bool) -> Iterator[Fault]:
    """`Fl.R.5s5M (by day 6M)`, and the paint of `RW "QS" Mo(A)`, which has no noun."""
    for item, behind in pairwise(told.items if is_lit else ()):
        is_range = item.role == "number" and behind.text == "M" and item.bracketed
        if is_range:
            yield _fault("feature-figure-unread", item)
    first = told.items[0] if told.items and told.head is None and is_lit else None
    is_paint = first is not None and first.role == "unknown"
    is_told = first is not None and (len(first.text) > 1 or _is_mark(told.items))
    if first and is_paint and is_told and read_colour_letters(first.text) is not None:
        yield _fault("feature-words-unread", first)


_FORMS = frozenset("NCS")
"""Nun, can and spar."""


def _is_mark(items: Sequence[Item]) -> bool:
    """Whether a letter is the paint of a mark, by its number behind it: `R "4"`, `R N "4"`."""
    behind = next((one for one in items[1:] if one.text not in _FORMS), None)
    return behind is not None and behind.role in ("quoted", "number", "numbered", "code")
