"""Tells where the words of a phrase begin that name what stays: `buoy but retain wreck`.

In come the items of a run; out comes the first that is no longer of the thing itself.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.readers.words import Item

_STAYING = frozenset("retain retains retaining retained leave leaving without".split())
_STAYING_BEHIND = frozenset("keep keeping not".split())
"""Words that name what stays only behind a joint: `but keep wreck`."""
_TURNS = frozenset(("but", "and", "yet", "while"))


def what_stays(items: Sequence[Item], *, opens: bool) -> int | None:
    """Where words of what stays, or is not there, begin: `buoy but retain wreck`."""
    for at, item in enumerate(items):
        if item.bracketed:
            continue
        turns = at > 0 and items[at - 1].text.lower() in _TURNS
        word = item.text.lower()
        if word in _STAYING or (turns and word in _STAYING_BEHIND):
            start = at - 1 if turns else at
            return None if start == 0 and opens else start
    return None
