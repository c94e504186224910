"""A change of two figures alone: `Change 7m to 5m`.  A figure that stands alone is a depth.

Only behind a verb of its own: below other items the figures may be of the thing named there, and
in columns of what these are about.
"""

from __future__ import annotations

from collections.abc import Iterator

from noticeparse.build.extents import over
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.readers.changes import is_bare_change
from noticeparse.readers.verbs import Verb
from noticeparse.stretch import Stretch


def bare_change(context: Context, item: Item, words: Stretch, verb: Verb) -> Iterator[Fault]:
    """The fault of such a change where something else may say what the figures are of."""
    is_alone = item.verb_piece is not None and item.heading is None
    is_alone &= not (item.change or item.old or item.added)
    if verb == "amend" and not is_alone and is_bare_change(words.text):
        yield over(context, item, "item-without-feature")
