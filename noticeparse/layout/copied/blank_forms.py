"""Room on a printed sheet for what is filled in by hand: boxes to tick, names, days.

`[ ] 1  Insert wreck P` and `Done by ........   Date ........` are for the person who corrects the
chart, and only they are left out.  A line with several boxes asks which of them holds, and where
some boxes are crossed the empty ones mean something: these are left as they stand.  The initials
of those who drew and checked a notice are left out where nothing else stands on their line.
"""

from __future__ import annotations

import re

from noticeparse.layout.drafts import Piece

_BOX = re.compile(r"^[ \t]{0,12}\[ {0,3}\](?= {1,6}[A-Za-z0-9(])(?![^\n\[]*\[[ xX]{0,3}\])", re.M)
"""An empty box in front of a line that has no other."""
_EMPTY = re.compile(r"\[ {0,3}\]")
_CROSSED = re.compile(r"\[ ?[xX] ?\]")
_ANSWERS = re.compile(r":?(?: {1,6}(?:yes|no|done)[ .:]{0,3}\[ {0,3}\]){1,3}[ \t]*$", re.I | re.M)
"""Boxes for the answers to a question, at the end of its line."""
_ROOM = re.compile(
    r"(?:^|(?<=  ))(?:(?:done|drawn|entered|applied|corrected|checked|verified|signed"
    r"|signature|initials?|name|rank|date)(?: (?:by|on|at))?:? {0,3}[._]{5,80}[ \t]{0,40}){1,4}$",
    re.I | re.M,
)
"""Words with dots behind them and nothing else, in cells of their own at the end of a line."""
_DOTS = re.compile(r"[._]{5}[^\n]*")
"""What such words have behind them, up to the end of the line."""
_INITIALS = (
    r"(?:(?:drawn|entered|plotted|drafted|typed|compiled|prepared|checked|verified|examined"
    r"|approved|proofed|signed)(?::| by:?)|initials:) {0,12}(?-i:[A-Z](?:\.? ?[A-Z]){1,3}\.?)"
)
_SIGNED = re.compile(
    r"^[ \t]{0,40}(?=[^\n]{0,60}\b(?:checked|verified|examined|approved|proofed|signed)\b)"
    rf"{_INITIALS}(?:(?: {{2,40}}|[ ]?[,;/|][ ]?){_INITIALS}){{1,3}}[ \t]*$",
    re.I | re.M,
)
"""Who drew a notice and who checked it, on a line of their own: `Drawn: EK   Checked: RMD`."""
_LEAST_BOXES = 2


def without_blank_forms(text: str) -> tuple[str, list[Piece]]:
    """The text with blanks for such room, and where it stood."""
    marks: list[Piece] = []
    if _EMPTY.search(text) is not None:
        if len(_BOX.findall(text)) >= _LEAST_BOXES and _CROSSED.search(text) is None:
            text = _without(text, _BOX, marks)
        text = _without(text, _ANSWERS, marks)
    text = _without(text, _SIGNED, marks)
    if "...." in text or "____" in text:
        text = _without_room(text, marks)
    return text, marks


def _without_room(text: str, marks: list[Piece]) -> str:
    """The text without room for what is written by hand, looked for where dots stand."""
    parts, at = [], 0
    for dots in _DOTS.finditer(text):
        start = text.rfind("\n", 0, dots.start()) + 1
        for found in _ROOM.finditer(text, start, dots.end()):
            marks.append(found.span())
            parts += [text[at : found.start()], " " * len(found.group())]
            at = found.end()
    return "".join((*parts, text[at:]))


def _without(text: str, pattern: re.Pattern[str], marks: list[Piece]) -> str:
    marks += [found.span() for found in pattern.finditer(text)]
    return pattern.sub(lambda found: " " * len(found.group()), text)
