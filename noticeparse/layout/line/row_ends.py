"""What the first or last words of a line are, told by the elements beside them.

A single capital before a position is its letter; a notice number in brackets behind a verb and a
position is that of the row.
"""

from __future__ import annotations

from noticeparse.layout.line.elements import Element
from noticeparse.layout.line.joints import is_letter
from noticeparse.readers.references import read_number

_FEWEST = 3
"""Elements of a row with a number at its end."""


def settle_ends(text: str, found: list[Element]) -> None:
    """Let the words at the ends of a line be a letter or a number, where they are one."""
    at = int(len(found) > 2 and found[0].kind == "key")
    opens = len(found) > at + 1 and found[at].kind == "words"
    if opens and found[at + 1].kind in ("point", "half"):
        letter = text[found[at].start : found[at].end]
        if is_letter(letter):
            found[at] = found[at]._replace(kind="label", value=letter)
    is_numbered = [one.kind for one in found[-2:]] == ["number", "verb"]
    if is_numbered and text[found[-1].start : found[-1].end].lower().startswith("withdrawn"):
        # `Notice 598/26 withdrawn.`: the notice, and nothing on a chart
        found[-1] = found[-1]._replace(kind="words")
    if len(found) >= _FEWEST and found[-1].kind == "words":
        found[-1] = _number(text, found)


def _number(text: str, found: list[Element]) -> Element:
    """The last element, as the number of its row: `Wreck, P, insert (20/26)`."""
    last = found[-1]
    words = text[last.start : last.end]
    inner = words[1:-1]
    if words[:1] + words[-1:] != "()" or "/" not in inner or not inner[:1].isdigit():
        return last
    kinds = {element.kind for element in found}
    if "verb" not in kinds or kinds.isdisjoint(("point", "half")):
        return last
    if read_number(inner, None) is not None:
        return Element("number", last.start + 1, last.end - 1, last.gap)
    return last
