"""Room on a printed sheet for what is filled in by hand: boxes to tick, names, days.

`[ ] 1  Insert wreck P` and `Done by ........   Date ........` are for the person who corrects the
chart.  A line with several boxes asks which of them holds, and is left as it stands.
"""

from __future__ import annotations

import re

from noticeparse.layout.drafts import Piece

_BOX = re.compile(r"^[ \t]{0,12}\[ {0,3}\](?= {1,6}[A-Za-z0-9(])(?![^\n\[]*\[[ xX]{0,3}\])", re.M)
_ANSWERS = re.compile(r":?(?: {1,6}(?:yes|no|done)[ .:]{0,3}\[ {0,3}\]){1,3}[ \t]*$", re.I | re.M)
_ROOM = re.compile(
    r"^[^\n\[]{0,80}\b(?:done|drawn|entered|applied|corrected|checked|verified|signed|signature"
    r"|initials?|name|rank|date)(?: (?:by|on|at))?:? {0,3}(?:[._]{5}|(?:[._] ){4})[^\n]{0,120}$",
    re.I | re.M,
)
_LEAST_BOXES = 2


def without_blank_forms(text: str) -> tuple[str, list[Piece]]:
    """The text with blanks for such room, and where it stood."""
    marks: list[Piece] = []
    if "[" in text and len(_BOX.findall(text)) >= _LEAST_BOXES:
        text = _without(text, _BOX, marks)
    if "]" in text:
        text = _without(text, _ANSWERS, marks)
    if "...." in text or "____" in text:
        text = _without(text, _ROOM, marks)
    return text, marks


def _without(text: str, pattern: re.Pattern[str], marks: list[Piece]) -> str:
    marks += [found.span() for found in pattern.finditer(text)]
    return pattern.sub(lambda found: " " * len(found.group()), text)
