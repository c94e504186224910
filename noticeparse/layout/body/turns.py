"""Lines alone between items that turn to another chart, or to a book: `(803)`, `List of Lights`.

What stands below such a line may correct something else than the chart above.  As nobody can tell
for certain, the items below are told so, and held back where words and no mere figure turn.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.copied.page_numbers import awaits_figure
from noticeparse.layout.drafts import Item, Piece, Prose
from noticeparse.layout.evidence import lead_index
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Line
from noticeparse.layout.line.told_elsewhere import tells_where_more_is
from noticeparse.readers.books import BOOKS

_FIGURE = re.compile(
    r"[-(\[] ?[A-Z]{0,3}[0-9]{3,5}[A-Z]? ?[-)\]][.:]?|(?:[Ss]heet )?[A-Z]{0,3}[0-9]{3,5}[.:]?"
)
_SHEET = re.compile(
    r"(?:(?:and|also|similarly|likewise|further|then),? )?(?:on|for|in) (?:"
    r"(?:the |an? |both |all |each )(?:[a-z-]{2,20} ){0,3}"
    r"(?:charts?|sheets?|plans?|insets?|panels?)"
    r"|[A-Z]{0,3} ?[0-9]{2,5}(?=[.:]?$|,| and | & | ?[(\[]))(?:[ ,(\[][^.;:\n]{0,40})?[ .:]*",
    re.IGNORECASE,
)
_CHANGES = (
    r"(?:(?:corrections?|amendments?|changes?|additions?|alterations?|updates?) (?:to|in|of|for) "
    r"|(?:amend|correct|in|for) )?"
)
_BOOK = re.compile(
    rf"{_CHANGES}(?:the )?(?:[a-z'-]{{2,20}} ){{0,3}}?{BOOKS}"
    r"(?:,? \(?(?:vol(?:ume)?|part|book|edition|page)\b[^.:\n]{0,24})?[ .:]*",
    re.IGNORECASE,
)
_LONGEST = 90


class Turn(NamedTuple):
    """Such a line: where it stands, and what is told of the items below it."""

    piece: Piece
    code: str


class Turned(NamedTuple):
    """A body without the lines that only turn, these as prose, and the turns."""

    lines: list[Line]
    prose: list[Prose]
    turns: list[Turn]


def without_turns(text: str, lines: Sequence[Line]) -> Turned:
    """The body with such lines taken out; a bare figure stays, since it may go on an item."""
    found = Turned([], [], [])
    for index, line in enumerate(lines):
        turn = None if line.is_blank else _turn(text, line)
        if turn is None or not (_ends(text, lines[:index], turn) and _opens(lines[index + 1 :])):
            found.lines.append(line)
            continue
        found.turns.append(turn)
        if text[turn.piece[0]].isdigit():
            found.lines.append(line)
        else:
            found.prose.append(Prose([turn.piece], []))
    return found


def give_turns(text: str, items: Sequence[Item], turns: Sequence[Turn]) -> None:
    """Tell the items below each turn of it, up to the next one."""
    for item in items:
        start = min((piece[0] for piece in item.pieces), default=0)
        turn = next((one for one in reversed(turns) if one.piece[0] < start), None)
        if turn is not None:
            written = " ".join(text[slice(*turn.piece)].split())
            item.faults.append(Fault(turn.code, *turn.piece, {"written": written}))


def _turn(text: str, line: Line) -> Turn | None:
    if line.has("point", "half", "reference", "semicolon", "passive", "number"):
        return None
    words = text[line.start : line.end].strip()
    start = text.index(words, line.start)
    piece = (start, start + len(words))
    if len(words) > _LONGEST:
        return None
    if _FIGURE.fullmatch(words) is not None:
        return Turn(piece, "item-below-figure")
    if not words[0].isupper() or tells_where_more_is(words):
        return None
    if _SHEET.fullmatch(words) is not None:
        return Turn(piece, "item-of-other-sheet")
    return Turn(piece, "item-of-book") if _BOOK.fullmatch(words) is not None else None


def _ends(text: str, above: Sequence[Line], turn: Turn) -> bool:
    """Whether the item above is whole: nothing of it goes on with the line."""
    last = next((line for line in reversed(above) if not line.is_blank), None)
    if last is None:
        return turn.code == "item-of-book"
    if above[-1].is_blank or text[last.start : last.end].rstrip().endswith("."):
        return True
    is_placed = last.elements[-1].kind in PLACES or last.elements[0].kind in PLACES
    return is_placed and not awaits_figure(text, last)


def _opens(below: Sequence[Line]) -> bool:
    """Whether an item stands right below: a verb opens it, or it has its place there."""
    first = next((line for line in below if not line.is_blank), None)
    if first is None:
        return False
    opens = first.elements[lead_index(first)].kind == "verb"
    return opens or (first.has("words") and first.has("point", "half", "reference"))
