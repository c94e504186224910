"""Words with a colon before a command or sentence: where along the way, or something else.

`Quill Sound, North Mole:` and `km 12.4:` say where an item is met.  `Not yet in force:` and
`Close N:` change what the item means: it is held back.
"""

from __future__ import annotations

import re

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Piece
from noticeparse.readers.features import value_property
from noticeparse.readers.places import read_phrase

_HANGS = re.compile(
    r"\b(?:not|no|never|nor|neither|cancelled|withdrawn|deferred|suspended|superseded|revoked"
    r"|postponed|disregard|ignore|void|if|unless|until|when|while|once|after|before|during|from"
    r"|pending|provided|proposed|planned|projected|intended|future|former|formerly|temporary"
    r"|temporarily|except|instead|only|elsewhere|expired|lapsed|draft|provisional|provisionally"
    r"|alternative|alternatively|either|or|optional|incorrect|incorrectly|wrong|wrongly|erroneous"
    r"|misprint|mistaken)\b",
    re.IGNORECASE,
)
_OUTSIDE_TABLE = re.compile(
    r"(?:also,? )?(?:not tabulated|(?:not (?:(?:shown|given|printed|listed|included|entered) )?in"
    r"|outside(?: of)?|besides?|in addition to|further to|apart from|as well as) "
    r"(?:(?:the|this|these) )?(?:above )?(?:tables?|rows|columns)(?: (?:above|below))?)",
    re.IGNORECASE,
)
"""Words that say where a command is printed: `Not in the table: Insert wreck`."""
_CHARTS = re.compile(
    r"(?:(?:for|on|and|charts?|,|&|/|[0-9]{2,6}[A-Z]?|[A-Z]{1,3} ?[0-9]{1,6}) ?)+", re.IGNORECASE
)
_RELATES = frozenset(
    {"offset", "close", "joining", "bounded", "within", "centred", "between", "vicinity", "radius",
     "within_of", "arc", "bearings"}
)  # fmt: skip
_OF_WAYS = frozenset(
    "left right both either north south east west bank banks side sides shore shores stream"
    " channel river fairway centre center mile miles upper lower outer inner reach"
    " entrance".split()
)
"""Words of the place along a river or channel: `km 12.4, left bank`."""
_KEYS = frozenset(
    "details detail action actions correction corrections text notice remarks information subject "
    "item items entry change changes port harbour river area region coast place locality chart "
    "charts command order task".split()
)
"""Words that name a key of the form, and tell nothing of the item."""


def lead_faults(text: str, piece: Piece) -> list[Fault]:
    """What keeps the item behind such words from being read without them."""
    start, end = piece
    words = " ".join(text[start:end].split()).rstrip(" :")
    if not text[start:end].rstrip().endswith(":") or not words:
        return []
    code = _code(words)
    return [Fault(code, start, end, {"written": words})] if code else []


def hangs(words: str) -> bool:
    """Whether words make what they stand with hang on something: `not yet in force`."""
    return _HANGS.search(words) is not None


def names_charts(text: str, piece: Piece) -> bool:
    """Whether such words are numbers, as those of charts: `802:`, `For 802 and 803:`."""
    words = text[slice(*piece)].rstrip(" :")
    return any(char.isdigit() for char in words) and _CHARTS.fullmatch(words) is not None


def _code(words: str) -> str | None:
    if _OUTSIDE_TABLE.fullmatch(words):
        return None
    if hangs(words):
        return "verb-conditional"
    if any(part.kind in _RELATES for part in read_phrase(words)):
        return "relation-unclear"
    if value_property(words) & {"quality", "status", "condition", "negation"}:
        return "feature-words-unread"
    first = words.split()[0].lower()
    more = words.split()[1:]
    rest = [word for word in more if word.isalpha() and len(word) > 3]
    is_named = all(word[0].isupper() or word in _OF_WAYS for word in rest) and bool(more)
    return None if is_named or first in _KEYS else "feature-words-unread"
