"""Lists whose first words say what is meant of each thing in them.

    Delete topmarks of:
      beacon Brack    47-12.34S 123-45.67W
      buoy No 2       47-13.34S 123-45.67W

Only the topmark of the buoy goes, and `Delete legends: Foul P; Wreck Q` takes no wreck off the
chart.  The first words are told again of each further item of the list where it is sure that they
hold for it; where they may end with their line, or with the first thing, the item is held back.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.evidence import split_lead
from noticeparse.readers.features import has_kind

_ARTICLES = r"(?:(?:all|both|the|these|of|their|new|old|existing) ){0,3}"
_COLOUR = r"(?:(?:in )?(?:magenta|purple|violet|red|black|blue|green) )?"
_WORDINGS = re.compile(
    rf"{_ARTICLES}{_COLOUR}(?:legends|notes|labels|inscriptions|captions|abbreviations)"
    r"(?![a-z-])[ ,]*(?P<colon>:?)[ ]*",
    re.IGNORECASE,
)
_ONE_EACH = (
    r"(?:top-?marks|daymarks|racons|fog[ -]signals|AIS(?: transmitters| transponders)?"
    r"|(?:radar|retro)[ -]?reflectors|safety zones|names|numbers|colours|heights|elevations"
    r"|bells|whistles|gongs|characters|P\.?A\.?|P\.?D\.?|E\.?D\.?|position approximate)"
)
"""What a thing has one of: of several, each belongs to another thing."""
_MAY_BE_MANY = r"(?:lights|sectors|legends|notes|(?:danger )?(?:circles|lines|limits)|contours)"
_PARTS = re.compile(
    rf"{_ARTICLES}(?:(?P<one>{_ONE_EACH})|{_MAY_BE_MANY})"
    r" (?:of|on|from|at|to|for|around|round|against)(?![a-z])(?P<colon> ?:)? ?",
    re.IGNORECASE,
)
_OWN_LEAD = re.compile(
    r"(?:and |also |, ?)*(?:the |an? )?(?:legend|note|label|caption|word|abbreviation"
    r"|top-?mark|daymark|racon|fog|AIS|radar|light(?:s? (?:of|on|from|at)\b|s?,)|safety zone|name"
    r"|number (?:of|on))",
    re.IGNORECASE,
)
"""What says for itself what it is."""
_JOINT = re.compile(r"[ ,;]*(?:(?:and|also|&) )*(?:the )?", re.IGNORECASE)
_AND = re.compile(r"[ ,;]*(?:and|&) ", re.IGNORECASE)
_BLANK = re.compile(r"\n *\n")
_MANY = re.compile(r"[a-z]{3,}s\b(?! light)", re.IGNORECASE)


class _Lead(NamedTuple):
    """The first words of a list."""

    piece: Piece
    is_wording: bool
    """Whether words for the chart follow, and not the things that have a part."""
    is_sure: bool
    """Whether they hold for more than the first thing of their line."""
    is_of_many: bool
    """Whether the first thing they hold for is several: `topmarks on beacons`."""
    heads: bool
    """Whether they stand on a line of their own."""
    style: str
    first: Piece
    """The words of the first thing."""
    end: int
    """Where the first item ends."""


def give_parts(text: str, items: Sequence[Item]) -> None:
    """Tell the first words of such lists again, or hold back the items of which it is not sure."""
    lead: _Lead | None = None
    above: Item | None = None
    for item in items:
        if above is None or item.verb_piece is not None or item.verb != above.verb:
            lead = None
        own = _lead(text, item)
        told, above = above, item
        lead = own or lead
        if own is not None or lead is None or told is None or not item.has_place:
            continue
        if not item.words or says_what_it_is(text[slice(*item.words[0])]):
            continue
        start, end = item.words[0]
        if _has_ended(text, lead, told, start):
            lead = None
        elif _holds_for(text, lead, told, item):
            joint = _JOINT.match(text, start, end)
            item.words[0] = (joint.end() if joint is not None else start, end)
            item.words.insert(0, lead.piece)
        elif has_kind(text[start:end]):
            stop = item.words[-1][1]
            values = {"written": " ".join(text[start:stop].split())}
            item.faults.append(Fault("feature-kinds-several", start, stop, values))


def _lead(text: str, item: Item) -> _Lead | None:
    """What the words of an item begin with, where several things may have it."""
    if not item.words or not item.has_place:
        return None
    start, end = item.words[0]
    found = _PARTS.match(text, start, end)
    is_wording = found is None
    found = found or _WORDINGS.match(text, start, end)
    if found is None:
        return None
    stop = start + len(text[start : found.end()].rstrip(" ,"))
    rest = split_lead(text, [(found.end(), end), *item.words[1:]])[0]
    said = " ".join(text[a:b] for a, b in rest if b > a).strip(" ,:;")
    heads = "\n" in text[stop : rest[0][0]] if rest and rest[0][1] > rest[0][0] else False
    heads = heads or (found.end() == end and "\n" in text[end : end + 2])
    is_of_many = not is_wording and _MANY.search(said.partition(",")[0]) is not None
    is_sure = is_wording or bool(found["colon"]) or bool(found["one"])
    return _Lead(
        (start, stop), is_wording, is_sure and not is_of_many, is_of_many, heads,
        style_of(said), next((piece for piece in rest if piece[1] > piece[0]), (end, end)),
        max(b for _, b in item.pieces),
    )  # fmt: skip


def are_wordings(things: str) -> bool:
    """Whether a class is that of words on the chart: `magenta legends`."""
    return _WORDINGS.fullmatch(things) is not None


def are_parts(things: str) -> bool:
    """Whether a class is that of parts, each of which belongs to another thing: `topmarks`."""
    found = _PARTS.fullmatch(f"{things.strip(' :')} of")
    return found is not None and found["one"] is not None


def says_what_it_is(words: str) -> bool:
    """Whether words name a part or a legend themselves, whatever is told above them."""
    return _OWN_LEAD.match(words) is not None


def style_of(words: str) -> str:
    """How words for the chart are set: in quotes, with a capital, or as other words."""
    return '"' if words[:1] == '"' else "A" if words[:1].isupper() else "a"


def _holds_for(text: str, lead: _Lead, above: Item, item: Item) -> bool:
    """Whether the first words of a list are sure to hold for a further item."""
    start, end = item.words[0]
    joint = _JOINT.match(text, start, end)
    own = text[joint.end() if joint is not None else start : end]
    if lead.is_wording and style_of(own) != lead.style:
        return False
    if lead.heads:
        return not _stands_apart(text, lead, above, start)
    before = text[max(end for _, end in above.pieces) : start]
    goes_on = "\n" not in before or _AND.match(text, start, end) is not None
    return lead.is_sure and goes_on


def _has_ended(text: str, lead: _Lead, above: Item, start: int) -> bool:
    """Whether a list of several things ended with the line above: `topmarks on beacons P, Q`."""
    last = max(end for _, end in above.pieces)
    rest, line_end, _ = text[last:start].partition("\n")
    if lead.heads or not line_end or rest.strip(" .)]"):
        return False
    is_further = last > lead.end and lead.end <= min(above.pieces)[0]
    is_further = is_further and "\n" not in text[lead.end : min(above.pieces)[0]]
    return lead.is_of_many or len(above.places) > 1 or is_further


def _stands_apart(text: str, lead: _Lead, above: Item, start: int) -> bool:
    """Whether a thing stands less far in than the first one of a list, or behind a blank line."""
    columns = [at - text.rfind("\n", 0, at) for at in (start, lead.first[0])]
    between = text[max(end for _, end in above.pieces) : start]
    is_spaced = _BLANK.search(text, lead.piece[1], lead.first[0]) is not None
    return columns[0] < columns[1] or (_BLANK.search(between) is not None and not is_spaced)
