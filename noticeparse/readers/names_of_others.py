"""Names and numbers in a phrase that are those of something else.

`wreck N of Dunmarrow Point`, `light-buoy, sync with No 4`, `light-buoy No 5, to mark Brack Rock`
and `buoy, Point Ellory light bearing 300°` name another thing, and
`(Also List of Lights K1234.5)` a book.
"""

from __future__ import annotations

import re

from noticeparse.readers.dates import is_of_date
from noticeparse.readers.words import Item

_BEFORE = re.compile(
    r"\b(?:similar to|same as|like|sync(?:h?r?oni[sz]ed)? with|in (?:line|transit) with"
    r"|(?:to mark|marking|covering|covers)(?: the)?|new (?:name|number)(?: is)?:?)"
    r" (?:light-?)?(?:buoy )?$",
    re.IGNORECASE,
)
_LIES_THERE = re.compile(
    r"(?:\b(?:[NSEW]{1,3}|(?:north|south)?-?(?:east|west)|north|south"
    r"|(?:north|south|east|west)ward|abreast|seaward|clear|entrance|inside|outside|part|end|side"
    r"|middle|centre|mouth|vicinity) of"
    r"|\b(?:in|inside|within|outside|into|across|through|along|opposite|towards?|off|approaches to"
    r"|entrance to|close to|adjacent to|between|from|near)) (?:the )?$",
    re.IGNORECASE,
)
"""What leads to a place: `wreck N of Dunmarrow Point`, `buoy in Quill Sound`."""
_TELLER = re.compile(
    r"\b(?:(?-i:by)|according to|reports? (?:of|from)|(?:reported|received|sighted) from)"
    r"(?: the)?(?: (?:[mfs]/?[vyt]|m/?t|s/?s|r/?v|h\.?m\.?s|master of|survey vessel"
    r"|vessel|ship|yacht|tug|ferry|trawler|dredger|tanker"
    r"|pilot(?: boat| vessel)?|lighthouse)\.?){0,2} $",
    re.IGNORECASE,
)
"""What leads to the ship that told it: `reported 2025 by MV Halcyon`."""
_BEHIND = re.compile(
    r"(?:\.? [A-Z][a-z]+)?(?:'?s)? cross\b|(?: [A-Z][a-z]+){0,3}"
    r"(?: (?:light|lt|beacon|buoy|lighthouse|church|tower))?,? (?:bearing|bears) [0-9]"
)
_OF_A_BOOK = re.compile(
    r"\((?:also|see(?: also)?|list of lights|l\.?l\.?)\b[^()]*$", re.IGNORECASE
)
_PATTERNS = ("Ch", "Cheq")
"""Chequers: `beacon, RW Ch`."""
_WIDTH = 40


_ABBREVIATIONS = frozenset("pa pd ed sd rep wk obstn unexam subm".split())


def is_abbreviation(item: Item) -> bool:
    """Whether a quotation is an abbreviation of the chart: `wreck with "PA"` has no name."""
    return item.role == "quoted" and item.text.strip('". ').lower() in _ABBREVIATIONS


_ADDRESSES = re.compile(
    r"(?:For|See|Note|Please)(?= )"
    r"|(?:Mariners|Masters|Shipmasters|Captains|Skippers|Seafarers|Vessels|Ships|Owners|Users)"
    r"(?=, [a-z]| (?:and|or|in|on|of|who|are|is|should|must|may|will|shall|passing)\b)"
)
"""Who is told, and how a sentence to them begins: `Mariners are advised …`; not `Ships Rock`."""


def is_no_name(text: str, item: Item) -> bool:
    """Whether a name or number is a date's or another thing's, by the words beside it."""
    if item.role == "proper" and is_of_date(text, item.start, item.end):
        return True
    if item.role not in ("proper", "numbered"):
        return is_abbreviation(item)
    if item.text in _PATTERNS or _ADDRESSES.match(text, item.start) is not None:
        return True
    before = text[max(item.start - _WIDTH, 0) : item.start]
    if item.role == "proper" and (_LIES_THERE.search(before) or _TELLER.search(before)):
        return True
    is_beside = _BEFORE.search(before) or _OF_A_BOOK.search(before + item.text)
    return bool(is_beside or _BEHIND.match(text, item.end))
