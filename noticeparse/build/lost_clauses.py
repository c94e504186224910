"""Words of an item that readers pass over, and that weaken what is read of it.

`wreck at or near P` does not lie at P for certain, and a rock `over which the sea breaks` is more
than its depth.  They are told (common practice, no published source).
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.build.extents import within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.stretch import gather, unquoted

_LOST = re.compile(
    r"\b(?:at|in|on) or (?:near|about|around|close to|in the vicinity of)(?=[ ,:]*$)"
    r"|\b(?:over|on) which (?:the )?(?:sea|seas|swell) breaks?\b(?: heavily)?",
    re.IGNORECASE,
)


def lost_clauses(context: Context, item: Item) -> Iterator[Fault]:
    """A fault for each of such words, before the place or behind it."""
    for pieces in (item.words, item.tail):
        words = gather(context.text, pieces)
        for found in _LOST.finditer(unquoted(words.text)):
            yield within(context, "feature-words-unread", words, found.span())
