"""What stands before the sentence of a line: `km 12.4, left bank:`, and lines that hang from it.

A bulletin with one item a line may open each with a station of the river, a place or a key word.
It says where along the way the item is met, not what it is; the position stands in the sentence.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import takewhile

from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.line.elements import Line, words_of
from noticeparse.layout.line.lines import elements_between
from noticeparse.layout.place.counted import with_decimal_counts
from noticeparse.layout.sentence.lead_words import lead_faults, names_charts
from noticeparse.readers.dates import MONTH
from noticeparse.readers.features import has_kind
from noticeparse.readers.places import is_connector

_LONGEST = 60
_FIGURE = r"[0-9]{1,4}(?:[.,][0-9]{1,3})?"
STATION = re.compile(
    r"(?:(?:at|near|about|by) )?(?:the )?(?:river )?"
    rf"(?:(?:km|kilomet(?:re|er)s?|miles?|mile ?post|station|lock)\.? ?(?:no\.? ?)?{_FIGURE}"
    rf"|{_FIGURE} ?(?:km|mi)\b)(?: ?(?:[-–/]|to) ?{_FIGURE})?",
    re.IGNORECASE,
)
SIDE = re.compile(
    r",? ?\(?(?:on )?(?:the )?"
    r"(?:(?:left|right|both|either|north|south|east|west|l\.?|r\.?)[ -]?"
    r"(?:banks?|sides?|shores?|b\.?)"
    r"|mid-?(?:stream|channel|river)|centre|center|(?:in )?(?:the )?fairway)\)?",
    re.IGNORECASE,
)
# The mark behind it, and the article or capital with which the sentence begins.
_BEHIND = re.compile(r"([,:.]?(?: ?[-–](?= ))?) {1,20}(?:an? |the |[A-Z])", re.IGNORECASE)


_OPENS = re.compile(r" {0,20}(?:an?|the|one|two|three)(?![a-z])", re.IGNORECASE)


def _with_date_apart(text: str, line: Line) -> Line:
    """The line; the date before the verb of a row that ends in its notice's number is a mark."""
    first = line.elements[0]
    if first.kind != "words" or line.elements[-1].kind != "number":
        return line
    told = _DATE.match(text, first.start, first.end)
    if told is None:
        return line
    rest = line.elements[1:]
    if told.end() < first.end:
        rest = elements_between(text, told.end(), line.end)
    if not rest or rest[0].kind != "verb":
        return line
    mark = first._replace(kind="bar", end=first.start + len(told[0].rstrip()))
    return line._replace(elements=(mark, rest[0]._replace(gap=True), *rest[1:]))


_KEY = re.compile(
    r"(?:positions?|posn?|alterations?|details|particulars|information|changes?|corrections?"
    r"|amendments?|action)\.? ?(?:\. ?-{1,2}(?= )|\.-{1,2})[ ]{0,8}",
    re.IGNORECASE,
)
"""`Position. - P`, and below it `Alteration. - The light is to be …`: the old print of a key."""


_DATE = re.compile(
    rf"(?:[0-9]{{1,2}}(?:st|nd|rd|th)?\.?[ -]?{MONTH}\.?(?:,?[ -]?(?:19|20)?[0-9]{{2}})?"
    rf"|{MONTH}\.? [0-9]{{1,2}}(?:,? (?:19|20)[0-9]{{2}})?"
    r"|(?:19|20)[0-9]{2}-[0-9]{2}-[0-9]{2}|[0-9]{1,2}\.[0-9]{1,2}\.(?:(?:19|20)?[0-9]{2})?"
    r"|[0-9]{1,2}/[0-9]{1,2}/(?:19|20)[0-9]{2})[.,:]?(?: {1,4}-)?(?: {1,20}|$)",
    re.IGNORECASE,
)


def with_marks_apart(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; a count `2.1` before their words is a label.

    A key in the old print is a mark, and so is the date of the notice that a row names.
    """
    counted = with_decimal_counts(text, lines)
    return [
        line if line.is_blank else _with_date_apart(text, _with_key_apart(text, line))
        for line in counted
    ]


def is_key(words: str) -> bool:
    """Whether words are such a key and nothing else: `Position. -`."""
    told = _KEY.match(f"{words} ")
    return told is not None and told.end() > len(words)


def _with_key_apart(text: str, line: Line) -> Line:
    first, *rest = line.elements
    told = _KEY.match(text, first.start, line.end) if first.kind == "words" else None
    if told is None:
        return line
    mark = first._replace(kind="bar", end=first.start + len(told[0].rstrip()), gap=True)
    own = (first._replace(start=told.end(), gap=True),) if told.end() < first.end else ()
    return line._replace(elements=(mark, *own, *rest))


def blocks_of_items(text: str, lines: Sequence[Line]) -> Iterator[list[Line]]:
    """The lines in blocks that each open with what leads an item, which is set apart as a label.

    A line that comes back to the column of the first, from others that hang to the right of it,
    opens a block as well; `to` above the new place of a move does not.  What stands behind a
    blank line does not hang: it is the first line of a paragraph.
    """
    block: list[Line] = []
    is_whole = True
    for line in lines:
        lead = None if line.is_blank else _lead_end(text, line)
        is_whole = is_whole and not line.is_blank
        hangs = len(block) > 1 and is_whole
        comes_back = hangs and line.indent(text) == block[0].indent(text) < block[-1].indent(text)
        if block and (lead is not None or (comes_back and not _leads_on(text, line))):
            yield block
            block, is_whole = [], True
        block.append(line if lead is None else _parted(text, line, lead))
    if block:
        yield block


def _leads_on(text: str, line: Line) -> bool:
    """Whether a line begins within a sentence: `to` that leads to a place, or `is deleted`."""
    first = line.elements[0]
    words = text[first.start : first.end].strip(" :")
    if first.kind == "passive":
        return words.islower()
    return first.kind == "words" and words.islower() and is_connector(words)


def without_leads(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[tuple[Piece, int]]]:
    """The lines of a body with commands without their leads, and where each lead stood.

    A lead is given with the start of what stands behind it.
    """
    found: list[Line] = []
    leads: list[tuple[Piece, int]] = []
    for line in lines:
        end = None if line.is_blank else _lead_end(text, line, is_sentence=False)
        if end is None:
            found.append(line)
            continue
        parted = _parted(text, line, end)
        label, *rest = parted.elements
        leads.append(((label.start, label.end), rest[0].start))
        rest[0] = rest[0]._replace(gap=True)
        found.append(parted._replace(elements=tuple(rest)))
    return found, leads


def give_leads(
    text: str, body_items: Sequence[Item], leads: Sequence[tuple[Piece, int]]
) -> list[Piece]:
    """Give each lead to the item that it stands before; those that lead none are left over."""
    first = {min(start for start, _ in item.pieces): item for item in body_items if item.pieces}
    left: list[Piece] = []
    for piece, behind in leads:
        if behind in first:
            item = first[behind]
            item.pieces.insert(0, piece)
            if names_charts(text, piece):
                item.charts = item.charts or piece
            else:
                item.faults += lead_faults(text, piece)
        else:
            left.append(piece)
    return left


def _lead_end(text: str, line: Line, *, is_sentence: bool = True) -> int | None:
    """Where what leads an item ends on its line; None where nothing does."""
    first = line.elements[0]
    if first.kind != "words" or len(line.elements) < 2:
        return None
    words = text[first.start : min(line.end, first.start + 2 * _LONGEST)]
    end = _station_end(words, first.end - first.start if line.elements[1].gap else None)
    if end is None and line.elements[1].kind == "verb":
        end = _end_before_verb(text, line)
    elif end is None and is_sentence:
        head, colon, rest = words[:_LONGEST].partition(": ")
        if not colon or '"' in head or not rest.lstrip()[:1].isupper():
            return None
        if has_kind(head) and not _names_its_own(text, line, rest):
            return None
        end = len(head) + 1
    return first.start + end if end is not None and end <= first.end - first.start else None


def _names_its_own(text: str, line: Line, rest: str) -> bool:
    """Whether a sentence has a feature of its own: `Old Bridge: A light …`, not `The range …`."""
    if not _OPENS.match(rest):
        return False
    said = [text[e.start : e.end] for e in line.elements if e.kind == "words"]
    own = " ".join(said).partition(": ")[2] or " ".join(said[1:])
    return has_kind(own)


def _end_before_verb(text: str, line: Line) -> int | None:
    """The length of words with a colon before a command that names what it is about."""
    first = line.elements[0]
    words = text[first.start : first.end].rstrip()
    behind = line.elements[2:]
    if has_kind(words):
        # `Rock: delete in P. Insert wreck in Q`: of the rock nothing more is said than its place.
        behind = tuple(takewhile(lambda e: e.kind not in ("point", "half", "reference"), behind))
    said = words_of(text, (e for e in behind if e.kind == "words"))
    if said.startswith(("by ", "with ")):
        # `Light-buoy: replace by beacon in P`: the thing that goes.
        return None
    is_lead = words.endswith(":") and len(words) < _LONGEST and '"' not in words
    return len(words) if is_lead and has_kind(said) else None


def _station_end(words: str, whole: int | None) -> int | None:
    """Where a station with its side ends: `km 12.4, left bank:`; None where none stands first."""
    station = STATION.match(words)
    if station is None:
        return None
    side = SIDE.match(words, station.end())
    end = side.end() if side else station.end()
    behind = _BEHIND.match(words, end)
    if behind is None and whole is not None and not words[end:whole].strip(" ,.:-"):
        return whole
    return behind.end(1) if behind else None


def _parted(text: str, line: Line, end: int) -> Line:
    first = line.elements[0]
    label = first._replace(kind="label", end=end, gap=True)
    end += len(text[end : first.end]) - len(text[end : first.end].lstrip(" "))
    rest = (first._replace(start=end),) if end < first.end else ()
    return line._replace(elements=(label, *rest, *line.elements[1:]))
