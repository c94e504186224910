"""Signs and letters before the items that stand for verbs, where a key gives each its verb.

`Signs: + insert, - delete` above, and below it `+ wreck P`: the sign is the verb of its line.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence

from noticeparse.layout.drafts import Group, Item, NoticeDraft
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.codes import NEW_PLACE, SIGNS, read_codes
from noticeparse.readers.verbs import canonical_verb

_SIGN = re.compile(rf"[(\[]?([{re.escape(''.join(sorted(SIGNS)))}])[)\]]?(?=[ \t])")

_NAMES_KEY = ("key", "code", "letters", "signs", "symbols")


def with_sign(text: str, line: Line, codes: Mapping[str, str]) -> Line:
    """The line, with the sign that opens it read as its verb; `codes` is the key to the signs.

    A letter stands for a verb where it has a cell of its own: `E   Wreck   P`.
    """
    if not codes or not line.elements:
        return line
    lead = int(len(line.elements) > 1 and line.elements[0].kind == "label")
    first, behind = line.elements[lead], line.elements[lead + 1 :]
    letters = text[first.start : first.end].strip(" .:()[]")
    if letters in codes.keys() - SIGNS and first.kind == "words" and behind:
        is_item = behind[0].gap and behind[0].kind not in ("verb", "chart", "number", "key")
        verb = Element("verb", first.start, first.end, True, codes[letters])
        return line._replace(elements=(*line.elements[:lead], verb, *behind)) if is_item else line
    found = _SIGN.match(text, first.start, line.end)
    if found is None or found[1] not in codes or first.kind not in ("bar", "words"):
        return line
    start, end = found.span()
    rest: tuple[Element, ...] = behind
    if end < first.end:
        stop = end + len(text[end : first.end]) - len(text[end : first.end].lstrip())
        rest = (first._replace(kind="words", start=stop, gap=True), *behind)
    if not rest or rest[0].kind in ("verb", "chart", "number"):
        # A bullet before a command.
        return line
    verb = Element("verb", start, end, True, codes[found[1]])
    return line._replace(elements=(*line.elements[:lead], verb, *rest))


def set_new_places(items: Sequence[Item], codes: Mapping[str, str]) -> None:
    """Let the second of the two places of a move be the new one, where the key says so."""
    if NEW_PLACE not in codes:
        return
    for item in items:
        if len(item.groups) != 1 or canonical_verb(item.verb or "") != "move":
            continue
        places = item.groups[0].places
        if len(places) == 2 and all(place.element.kind == "point" for place in places):
            item.groups.append(Group(role="to", places=[places.pop()]))


def takes_codes(text: str, line: Line, codes: dict[str, str], notice: NoticeDraft | None) -> bool:
    """Take a line that is a key to letters or signs, `I = insert, D = delete`, into `codes`."""
    if line.has("point", "half", "number"):
        return False
    words = text[line.start : line.end].lower()
    tells = words.lstrip(" ([\"'")[:1] in SIGNS or " new " in words
    tells = tells or words.lstrip().startswith(_NAMES_KEY)
    if not (tells or line.has("verb", "bar")):
        return False
    goes_on = bool(codes) and notice is None and words.lstrip(" ([\"'")[:1] in SIGNS
    told = read_codes(text[line.start : line.end], goes_on=goes_on)
    if told.keys() == {NEW_PLACE} and notice is not None:
        # Within a notice a sentence on the new position is said of its item alone.
        return False
    codes.update(told)
    return bool(told)
