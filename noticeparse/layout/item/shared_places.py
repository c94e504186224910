"""Two commands of one sentence with one place behind the second: `Delete wreck and insert rock P`.

The place is that of both, as long as nothing but `and` stands between thing and verb.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from noticeparse.layout.drafts import Group, Item, Piece
from noticeparse.readers.places import read_phrase
from noticeparse.readers.verbs import canonical_verb

_JOINT = " and"
_PLAIN = frozenset({"words", "at", "separator"})
"""Parts of a phrase that tell no other relation to a place."""


def share_places(text: str, items: Sequence[Item]) -> None:
    """Give each such first command the place of the second."""
    for first, second in pairwise(items):
        words = _words_before(text, first, second)
        if words is not None and _may_share(text, second):
            first.words[-1] = words
            first.groups = [_copied(group) for group in second.groups]


def _words_before(text: str, first: Item, second: Item) -> Piece | None:
    """The last words of a command without a place, without the joint to the command behind it."""
    if first.has_place or first.verb_piece is None or not first.words:
        return None
    if second.verb_piece is None or canonical_verb(first.verb or "") in (None, "move"):
        return None
    start, end = first.words[-1]
    between = text[end : second.verb_piece[0]]
    said = text[start:end].rstrip()
    if between.strip(" \n") or between.count("\n") > 1 or not said.endswith(_JOINT):
        return None
    return start, start + len(said.removesuffix(_JOINT).rstrip(" ,;"))


def _may_share(text: str, second: Item) -> bool:
    """Whether a command is done at one place, at which another may be done too.

    What lies close to a place, or is joined by several, lies there alone.
    """
    is_known = canonical_verb(second.verb or "") not in (None, "move")
    if not is_known or len(second.groups) != 1 or len(second.places) != 1 or not second.words:
        return False
    leads = [*second.words, *second.groups[0].lead]
    parts = [part for start, end in leads for part in read_phrase(text[start:end])]
    return second.groups[0].role is None and all(part.kind in _PLAIN for part in parts)


def _copied(group: Group) -> Group:
    return replace(group, places=list(group.places), lead=list(group.lead))
