"""What is left of degrees in front of minutes: `Lat. 4 11'.80 S`, `4■■14'.20 S`.

Such minutes are not of the degrees of the position before, which they would share
(common practice, no published source).
"""

from __future__ import annotations

import re

_SIGN = r"[^\s\w.,;:()'\"&/+°>*<=|…·•\[\]–—-]"
_REST = re.compile(
    rf"(?:(?:lat|lon)[a-z]{{0,6}}\.? ?(?:[0-9]{{1,3}}{_SIGN}{{0,4}}|{_SIGN}{{1,4}}) ?"
    r"|(?:(?<![a-z])(?:in|at|to|from|and|positions?)|[,;:]) [0-9]{1,2} "
    rf"|[0-9]{{1,3}}{_SIGN}{{1,4}} ?|(?<=\S ){_SIGN}{{1,4}} ?|{_SIGN}{{2,4}} ?)\Z",
    re.IGNORECASE,
)
"""One sign alone at the head of a line marks an item."""
_FARTHEST = 18


def rest_of_degrees(text: str, start: int) -> int | None:
    """Where something begins right before the minutes at `start` that can only be such a rest."""
    found = _REST.search(text, max(0, start - _FARTHEST), start)
    return found.start() if found is not None else None
