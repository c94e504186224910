"""Lists of depths that change: `depths: 7m to 6m, P; 8m to 7m, Q`.

The word in front of the first two figures is that of each further pair, as long as nothing but
pairs of figures follow: behind `wreck, 7m to 6m, P` they may be of the wreck or of another thing.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.item.kinds_of_names import stands_next
from noticeparse.readers.change_units import is_bare_change
from noticeparse.readers.verbs import canonical_verb
from noticeparse.stretch import gather

_DEPTHS = re.compile(r"(?P<word>(?:depth|sounding)s?)[ :,]{1,3}", re.IGNORECASE)
_JOINT = re.compile(r"[ ,;]*(?:(?:and|&) )?")


def give_depths_changed(text: str, items: Sequence[Item]) -> None:
    """Tell the word for depths again of items that hold an old and a new figure alone."""
    word: Piece | None = None
    above: Item | None = None
    for item in items:
        words = gather(text, item.words)
        is_next = word is not None and above is not None and stands_next(text, above, item)
        above = item
        is_plain = len(item.words) == 1 and not (item.change or item.old or item.added)
        if canonical_verb(item.verb or "") != "amend" or not is_plain:
            word = None
            continue
        joint = _JOINT.match(words.text)
        start = joint.end() if joint is not None else 0
        if is_next and word is not None and is_bare_change(words.text[start:]):
            item.words[:] = [word, (words.outer(start), item.words[0][1])]
            continue
        told = _DEPTHS.match(words.text)
        is_list = told is not None and is_bare_change(words.text[told.end() :])
        word = words.extent(told.span("word")) if told is not None and is_list else None
