"""A thing that is not known, between two places in a sentence: `A wreck in P and the gizmo in Q`.

What is read there is one thing with two places, and the second is not its own.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.line.elements import Element, words_of
from noticeparse.readers.features import has_kind
from noticeparse.readers.places import is_connector

_AND_THE = re.compile(r"and\s{1,80}(?:an?|the|another)\s")
_OF_LINE = re.compile(
    r"\b(?:join|connect|link|bound|between|from|through|along|limit)", re.IGNORECASE
)
"""Words of a line or limit, of which `joining P and the shore in Q` names a point."""


def unknown_thing(text: str, item: Item, lead: Sequence[Element]) -> list[Fault]:
    """What is wrong with the place behind such words."""
    words = words_of(text, lead).lstrip(" ,;")
    if _AND_THE.match(words) is None or is_connector(words) or has_kind(words):
        return []
    if any(_OF_LINE.search(text, *piece) for piece in (*item.words, *item.groups[0].lead)):
        return []
    values = {"written": " ".join(words.split())}
    return [Fault("place-of-another", lead[0].start, lead[-1].end, values)]
