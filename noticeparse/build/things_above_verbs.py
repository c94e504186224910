"""Verbs with a place, below a line of their own for the thing: what is read stands elsewhere.

    2   Sallow Bank west cardinal light-buoy
        established   P
        now           VQ(9)10s

The thing of `established P` is the one named above it, and not what the lines below tell of it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.extents import over
from noticeparse.context import Context
from noticeparse.layout.drafts import Item, Piece
from noticeparse.readers.features import has_kind
from noticeparse.readers.verbs import canonical_verb

_CODE = "place-of-another"
_COUNTED = re.compile(r"[ \t]*\(?[0-9]{1,3}[.)]?[ \t]{1,9}(?=[^\W\d_]|\")")
_LED = re.compile(
    r"[ \t]{0,40}(?P<verb>[A-Za-z]{3,15})(?: (?:from|at|in|on|to))?[ \t:.–-]{1,40}", re.IGNORECASE
)
"""A line up to its place, where a verb stands and nothing else."""
_PLACE = re.compile(r"[0-9] ?['°\"]|[0-9]['\"]? ?[NSEW]\b")
_DONE = re.compile(r"[A-Za-z]{3,15}(?:ed|wn|id)", re.IGNORECASE)
"""`established`, `withdrawn`, `laid`: what was done to a thing named before."""
_MOST_LINES = 3
_FIRST_WORD = re.compile(r"[A-Za-z]{2,15}")


def hold_back_below_things(context: Context, items: Sequence[Item]) -> None:
    """Give items whose verb stands below a thing that is not read with it an error."""
    for item in items:
        place = min((one.element.start for one in item.places), default=0)
        start = context.text.rfind("\n", 0, place) + 1
        led = _LED.fullmatch(context.text, start, place)
        if led is None or canonical_verb(led["verb"]) is None:
            continue
        verb = led["verb"]
        for above in _lines_above(context.text, start):
            is_read = any(above[0] <= begin < above[1] for begin, _ in item.words)
            line = context.text[slice(*above)]
            if is_read or not line.strip() or _PLACE.search(line):
                break
            if _names_thing(line, verb):
                item.faults.append(over(context, item, _CODE))
                break


def _lines_above(text: str, start: int) -> Iterator[Piece]:
    """The lines above the one that begins at an offset, over which a thing may be wrapped."""
    for _ in range(_MOST_LINES):
        if start == 0:
            return
        end = start - 1
        start = text.rfind("\n", 0, end) + 1
        yield start, end


def _names_thing(line: str, verb: str) -> bool:
    """Whether a line names a thing without a place, of which a verb below it may tell.

    A command, `Insert P`, may stand below a title; below a counted line it tells of that.
    """
    counted = _COUNTED.match(line)
    words = line[counted.end() :] if counted is not None else line
    first = _FIRST_WORD.match(words.strip())
    if not any(c.isalpha() for c in words) or (first and canonical_verb(first.group())):
        return False
    return counted is not None or (_DONE.fullmatch(verb) is not None and has_kind(words))
