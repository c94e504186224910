"""Signs and letters before the items that stand for verbs, where a key gives each its verb.

`Signs: + insert, - delete` above, and below it `+ wreck P`: the sign is the verb of its line.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence

from noticeparse.layout.drafts import Group, Item, NoticeDraft
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.codes import NEW_PLACE, SIGNS, explains_abbreviations, read_codes
from noticeparse.readers.verbs import canonical_verb

_SIGN = re.compile(rf"[(\[]?([{re.escape(''.join(sorted(SIGNS)))}])[)\]]?(?=[ \t])")

_NAMES_KEY = ("key", "code", "letters", "signs", "symbols")
"""Words that open a line which is a key."""


def with_code(text: str, line: Line, codes: Mapping[str, str]) -> Line:
    """The line, with the sign or letters that open it read as its verb; `codes` is the key."""
    if not codes or not line.elements:
        return line
    lead = int(len(line.elements) > 1 and line.elements[0].kind == "label")
    first, behind = line.elements[lead], line.elements[lead + 1 :]
    rest = _behind_letters(text, first, behind, codes)
    if rest is None:
        rest = _behind_sign(text, line, first, behind, codes)
    return line if rest is None else line._replace(elements=(*line.elements[:lead], *rest))


def _behind_letters(
    text: str, first: Element, behind: Sequence[Element], codes: Mapping[str, str]
) -> list[Element] | None:
    """The verb of letters in a cell of their own, `E   Wreck   P`, and what stands behind them.

    Letters that the key does not have are a verb that nobody knows.
    """
    letters = text[first.start : first.end].strip(" .:()[]")
    told = [code for code in codes if code.isalpha()]
    is_code = letters in told or (letters.isalpha() and letters.isupper() and len(letters) == 1)
    if not told or not is_code or first.kind != "words" or not behind or not behind[0].gap:
        return None
    if behind[0].kind in ("verb", "chart", "number", "key"):
        return None
    return [Element("verb", first.start, first.end, True, codes.get(letters)), *behind]


def _behind_sign(
    text: str, line: Line, first: Element, behind: Sequence[Element], codes: Mapping[str, str]
) -> list[Element] | None:
    """The verb of a sign, and what stands behind it; None for the bullet of a command."""
    found = _SIGN.match(text, first.start, line.end)
    if found is None or found[1] not in codes or first.kind not in ("bar", "words"):
        return None
    start, end = found.span()
    rest = [*behind]
    if end < first.end:
        stop = end + len(text[end : first.end]) - len(text[end : first.end].lstrip())
        rest.insert(0, first._replace(kind="words", start=stop, gap=True))
    if not rest or rest[0].kind in ("verb", "chart", "number"):
        return None
    return [Element("verb", start, end, True, codes[found[1]]), *rest]


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


_LISTED = re.compile(
    r"[ \t]{0,20}([A-Z]{1,4})(?:[ \t]{0,8}[=:–-][ \t]{0,8}|[ \t]{1,8})([a-z]{3,20})\b[^\n]{0,80}"
)


def _is_listed(text: str, line: Line) -> bool:
    """Whether a line is one of a list that gives letters their verbs: `I   insert`."""
    at = text.rfind("\n", 0, line.start) + 1
    own = _LISTED.match(text, at)
    if own is None or canonical_verb(own[2]) is None:
        return False
    above = text.rfind("\n", 0, max(at - 1, 0)) + 1
    near = (_LISTED.match(text, above) if at else None, _LISTED.match(text, own.end() + 1))
    return any(
        one is not None and one[1] != own[1] and canonical_verb(one[2]) is not None for one in near
    )


_LINES_OF_KEY = 6


def _is_of_key(text: str, line: Line) -> bool:
    """Whether a line explains short forms, by itself or as the end of the lines above it."""
    start = line.start
    for _ in range(_LINES_OF_KEY):
        words = " ".join(text[start : line.end].split())
        if "=" in words and explains_abbreviations(words):
            return True
        above = text.rfind("\n", 0, max(start - 1, 0)) + 1
        if above >= start or "=" not in text[above:start]:
            return False
        start = above
    return False


def takes_codes(text: str, line: Line, codes: dict[str, str], notice: NoticeDraft | None) -> bool:
    """Take a line that is a key to letters or signs, `I = insert, D = delete`, into `codes`.

    A key to other short forms, `Wk = wreck, Rk = rock`, is taken as well.
    """
    if line.has("point", "half", "number"):
        return False
    return _takes_verbs(text, line, codes, notice) or _is_of_key(text, line)


def _takes_verbs(text: str, line: Line, codes: dict[str, str], notice: NoticeDraft | None) -> bool:
    words = text[line.start : line.end].lower()
    tells = words.lstrip(" ([\"'")[:1] in SIGNS or " new " in words
    tells = tells or words.lstrip().startswith(_NAMES_KEY)
    is_listed = notice is None and _is_listed(text, line)
    if not (tells or is_listed or line.has("verb", "bar")):
        return False
    goes_on = bool(codes) and notice is None and words.lstrip(" ([\"'")[:1] in SIGNS
    given = " ".join(text[line.start : line.end].split())
    told = read_codes(given, goes_on=goes_on or is_listed)
    if told.keys() == {NEW_PLACE} and notice is not None:
        # Within a notice a sentence on the new position is said of its item alone.
        return False
    codes.update(told)
    return bool(told)
