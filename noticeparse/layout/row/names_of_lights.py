"""Names under NAME beside the characters of lights: `Tui Reef | P | Q.R.6m3M | Fl.R.2s6m5M`.

The name of such a light may be that of a reef or a pier, and neither is what is corrected.  A name
that holds the word for a mark stays as it is written: the column is one of descriptions then.
Source: common practice, no published source.
"""

from __future__ import annotations

import re

from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import Item
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import words_of
from noticeparse.layout.row.cells import is_nothing
from noticeparse.readers.features import read_feature, value_property
from noticeparse.readers.verbs import canonical_verb
from noticeparse.vocabulary import is_known_word, kinds

_CHARACTERS = ("old", "new", "light")
_HIGH_OR_FAR = re.compile(r"[0-9] ?(?:m[0-9 ]|m$|M(?![a-z]))")
"""An elevation or a range: what floats shows neither as a rule."""
_NAME = re.compile(
    r"[A-Z][A-Za-z'.-]{1,30}(?: (?:of|the|de|la|[A-Z][A-Za-z'.-]{1,30})){0,5}(?:, [a-z ]{2,30})?"
)
_OF_LAND = frozenset(("UWTROC", "SLCONS", "LNDARE", "LNDRGN", "SBDARE", "SEAARE", "SOUNDG"))
"""Classes of what lights are named after."""


def set_name_of_light(text: str, item: Item, cells: Cells) -> None:
    """Note of an item that its words are the name of a light, where its row says so."""
    if "name" not in cells or "feature" in cells or canonical_verb(item.verb or "") == "replace":
        return
    pieces = [(e.start, e.end) for e in cells["name"] if e.kind not in PLACES]
    if not pieces or item.words != pieces or not _are_characters(text, cells):
        return
    if _is_name(" ".join(text[start:end] for start, end in pieces)):
        item.named = pieces


def _are_characters(text: str, cells: Cells) -> bool:
    """Whether the row holds characters of lights that stand on land, and no other state."""
    told = [words_of(text, cells[role]).strip() for role in _CHARACTERS if role in cells]
    said = [words for words in told if not is_nothing(words)]
    are_lights = all(value_property(words) == {"light"} for words in said)
    return are_lights and any(_HIGH_OR_FAR.search(words) for words in said)


def _is_name(words: str) -> bool:
    """Whether words are a proper name, and that of no mark."""
    if _NAME.fullmatch(words) is None:
        return False
    known = kinds().get(read_feature(words).feature.kind)
    own = words.split(",")[0].split()
    strange = len(own) > 1 or not is_known_word(own[0])
    return strange and (known is None or known.s57 in _OF_LAND)
