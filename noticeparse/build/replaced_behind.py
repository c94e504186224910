"""What takes the place of another thing, where it is told behind the one position of both.

`Delete buoy P, replaced by a light-buoy, Q.R`, `Delete rock P (insert wreck)` and `Insert wreck P,
replacing rock` are replacements, if nothing else is said there.  Where the second thing stands is
sure: nothing names another place.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import NamedTuple

from noticeparse.context import Context
from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.evidence import opens_a_line
from noticeparse.readers.features import has_kind, leads_feature, read_feature, value_property
from noticeparse.readers.swaps import read_swap
from noticeparse.readers.verbs import Verb, canonical_verb
from noticeparse.stretch import gather

_SAYS = r"(?:(?:and|which|that|it|is|are|has|have|been|to|be|being) ){0,4}"
_OPEN, _CLOSE = r"[ ,;:-]*(?P<open>[(\[] ?)?", r"(?P<close> ?[)\]])?[ .]*"
_THING = r"(?:(?:an?|the) )?(?P<{}>[^()\[\];:\n]+?)"
_TOLD = {
    "delete": re.compile(
        rf"{_OPEN}(?:{_SAYS}(?:(?:replaced|substituted) (?:by|with)"
        rf"|(?:insert|substitute)(?: instead)?:?) {_THING.format('behind')}"
        rf"|(?:and )?{_THING.format('before')} {_SAYS}(?:inserted|substituted)){_CLOSE}",
        re.IGNORECASE,
    ),
    "insert": re.compile(
        rf"{_OPEN}(?:{_SAYS}(?:replaces|replacing|replace|in place of|in lieu of|instead of)"
        rf" {_THING.format('behind')}"
        rf"|(?:and )?{_THING.format('before')} {_SAYS}(?:deleted|expunged)){_CLOSE}",
        re.IGNORECASE,
    ),
}
"""What may stand behind the place under a verb, and nothing besides."""
_LINKS = {"delete": " by ", "insert": " for "}
_ELSEWHERE = re.compile(
    r"\b(?:close|near|in|at|off|of|from|to|between|above|below|and|or|which|that|if|when|not|only"
    r"|inserted|added|deleted|remain\w*|old|former|existing)\b",
    re.IGNORECASE,
)
"""Words by which the second thing may lie elsewhere, or more is said than what it is."""
_INNOCENT = frozenset(
    ("feature-class-unknown", "feature-support-not-stated", "depth-unit-not-stated")
)


class _Second(NamedTuple):
    """Where the second thing stands in the text, and the joint before it in a phrase."""

    piece: Piece
    link: str


def is_in_place(context: Context, item: Item, verb: Verb) -> bool:
    """Whether a deletion or insertion tells behind its place that it is a replacement."""
    return _second(context, item, verb) is not None


def with_thing_in_place(context: Context, item: Item, verb: Verb) -> tuple[Item, str]:
    """The item with nothing behind its place but the second thing, and the joint before it.

    Other items stay as they are, with no joint.
    """
    written = canonical_verb(item.verb or "")
    second = _second(context, item, written) if verb == "replace" and written else None
    return (item, "") if second is None else (replace(item, tail=[second.piece]), second.link)


def _second(context: Context, item: Item, verb: Verb) -> _Second | None:
    if verb not in _TOLD or len(item.tail) != 1 or len(item.places) != 1:
        return None
    start, end = item.tail[0]
    told = _TOLD[verb].fullmatch(context.text, start, end)
    if told is None or bool(told["open"]) != bool(told["close"]):
        return None
    name = "behind" if told["behind"] else "before"
    first, second = gather(context.text, item.words).text.strip(" ,"), told[name]
    if item.old or item.change or item.added or opens_a_line(context.text, start):
        return None
    if _ELSEWHERE.search(second) or not _names_both(first, second):
        return None
    swap = read_swap(f"{first}{_LINKS[verb]}{second}")
    known = "unknown" not in (swap.feature.kind, swap.replacement.kind)
    is_sure = known and all(fault.code in _INNOCENT for fault in swap.faults)
    return _Second(told.span(name), _LINKS[verb]) if is_sure else None


def _names_both(first: str, second: str) -> bool:
    """Whether both name a thing, or both a depth."""
    if value_property(second) == {"measure"}:
        return value_property(first) == {"measure"} or _is_depth(first)
    return has_kind(first) and leads_feature(second)


def _is_depth(words: str) -> bool:
    return read_feature(words).feature.kind == "sounding"
