"""Keys that lead to the places of a record, whether they are known or not: `Boundary: P, Q, R`.

An office may name its places by any word.  What no key of places is must not pass for more of the
value above it: the record with such places is held back.
"""

from __future__ import annotations

import re
from collections.abc import Sequence, Set

from noticeparse.layout.column.columns import key_role
from noticeparse.layout.column.titles import Cells
from noticeparse.layout.item.states_below import tells_state_below
from noticeparse.layout.item.told_states import read_state
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.place.lettered_places import is_lettered
from noticeparse.layout.sentence.lead_words import hangs
from noticeparse.readers.features import has_kind, value_property
from noticeparse.readers.places import read_phrase
from noticeparse.readers.verbs import canonical_verb

UNKNOWN = "unknown_key"
"""The role of places behind a key that does not say how the feature lies to them."""
ENDS = "ends"
"""The role of both ends of a line or a move behind one key: `From - to: P - Q`."""
PLACED = frozenset(
    "position numbered latitude longitude from to joining bounded centred old new feature change"
    " remark vertex".split()
)
"""The roles of values that may hold places."""
_BELOW_A_FEATURE = frozenset(
    "position numbered latitude from joining bounded centred old new change".split()
)
_KEY = re.compile(r"[A-Za-z][A-Za-z0-9 /&().,'-]{0,40}:(?=\s|$)")
_SOURCE = re.compile(r"[A-Z][A-Za-z]{2,12}(?: [A-Za-z]{2,12}){0,3}[ \t]{0,20}:[ \t]{1,20}(?=\S)")
_BY_PHRASE = {
    "joining": "joining", "along": "joining", "bounded": "bounded", "within": "bounded",
    "centred": "centred", "from_": "from", "to": "to", "at": "position",
}  # fmt: skip
_PLAIN = {
    "point": "position", "points": "position", "site": "position", "spot": "position",
    "lies": "position", "located": "position", "position is": "position",
    "positions are": "position", "route": "joining", "track": "joining", "polygon": "bounded",
    "path": "joining", "vertices": "numbered",
}  # fmt: skip
"""Words that lead to places here, and are no titles of columns."""
_OF_RECORDS = frozenset(
    "verb feature position latitude old new from to light elevation depth colours clearance"
    " name legend".split()
)
"""Roles of keys that tell by themselves what stands behind them."""
_STATES = frozenset(("old", "new", "to", "from", "change"))
_ALONE = frozenset("from to joining bounded centred".split())
_PAIR = 2


def with_place_key(text: str, line: Line) -> Line:
    """The line; words with a colon before its places are a key."""
    first = line.elements[0] if line.elements else None
    if first is None or first.kind != "words":
        return line
    told = _KEY.match(text, first.start, first.end)
    if told is None or not (_holds_place(line.elements) or _stands_alone(text, line)):
        return line
    return as_key(text, line, told.end())


def with_known_key(text: str, line: Line, below: Line | None) -> Line:
    """The line; words that name what stands behind them are a key above another one of a record.

    `Measure: Establish` above `Object: buoy`.
    """
    end = known_key_end(text, line)
    return line if end is None or not opens_with_key(text, below) else as_key(text, line, end)


def opens_with_key(text: str, line: Line | None) -> bool:
    """Whether a line opens with a key that may stand in a record."""
    if line is None or line.is_blank:
        return False
    return line.elements[0].kind == "key" or known_key_end(text, line) is not None


def known_key_end(text: str, line: Line) -> int | None:
    """Where the words end that open a line and are the key of a record, if they are."""
    first = line.elements[0] if line.elements else None
    told = _KEY.match(text, first.start, line.end) if first and first.kind == "words" else None
    if first is None or told is None or told.end() > first.end:
        return None
    return told.end() if key_role(told[0], has_places=line.has(*PLACES)) in _OF_RECORDS else None


def as_key(text: str, line: Line, end: int, role: str | None = None) -> Line:
    """The line; its first words, up to an offset, are a key of this role."""
    first, *rest = line.elements
    start = end + len(text[end : first.end]) - len(text[end : first.end].lstrip())
    value = (first._replace(start=start),) if start < first.end else ()
    key = first._replace(kind="key", end=end, value=role)
    return line._replace(elements=(key, *value, *rest))


def with_source_key(text: str, line: Line) -> Line:
    """The line; the words that name a source within a record are a key: `Basis : survey by …`.

    So are unknown ones with words that tell nothing of a feature: `Contractor: Edderly Company`.
    """
    first = line.elements[0] if line.elements else None
    told = _SOURCE.match(text, first.start, line.end) if first else None
    if first is None or told is None:
        return line
    role = key_role(told[0], has_places=False)
    if role != "source" and (role is not None or not _is_aside(text, line, told.end())):
        return line
    rest = [
        e._replace(start=max(e.start, told.end())) for e in line.elements if e.end > told.end()
    ]
    key = first._replace(kind="key", end=told.end(), value=role or "aside")
    return line._replace(elements=(key, *rest))


def _is_aside(text: str, line: Line, start: int) -> bool:
    """Whether what stands behind an unknown key says nothing that may belong to a feature."""
    key, words = text[line.start : start].lower(), text[start : line.end]
    if any(e.kind != "words" for e in line.elements) or any(c.isdigit() for c in words):
        return False
    if (
        "name" in key
        or "call" in key
        or '"' in words
        or has_kind(key)
        or value_property(key) != {"unknown"}
    ):
        return False
    return not hangs(words) and value_property(words) <= {"unknown", "name"}


def with_blank_key(text: str, line: Line, below: Line | None, known: Set[str]) -> Line:
    """The line; one of the `known` keys alone, without a value, is a key all the same."""
    first = line.elements[0] if len(line.elements) == 1 else None
    if (
        first is None
        or first.kind != "words"
        or text[first.start : first.end].strip() not in known
    ):
        return line
    if below is not None and not below.is_blank and below.elements[0].kind != "key":
        return line
    return line._replace(elements=(first._replace(kind="key"),))


def role_of_places(words: str, values: Sequence[Element]) -> str:
    """The role of places behind a key within a record, by the key's words alone."""
    plain = " ".join(words.lower().strip(" :").split())
    role = _PLAIN.get(plain) or key_role(words, has_places=True)
    if role in PLACED:
        return role
    kinds = [part.kind for part in read_phrase(words.strip(" :")) if part.kind != "separator"]
    if kinds == ["from_", "to"]:
        return ENDS
    told = {_BY_PHRASE.get(kind, UNKNOWN) for kind in kinds}
    only = all(e.kind in (*PLACES, "label", "semicolon", "bar") or _is_mark(e) for e in values)
    return told.pop() if len(told) == 1 and only else UNKNOWN


def leads_commands(role: str, line: Line) -> bool:
    """Whether a whole item, its verb behind it, has a key: `Text: Buoy: delete in P`."""
    at = next((i for i, e in enumerate(line.elements) if e.kind == "verb"), 0)
    placed = _holds_place(line.elements[at:])
    return at > 1 and placed and role in ("verb", "feature", "remark", "change")


def only_leads(text: str, role: str, line: Line, above: Sequence[Line]) -> bool:
    """Whether a key leads a list: `Position: a) P`, or whole items: `Details: Insert …`.

    So does the other end of a way that an item begins, `Move buoy, from: P` above `to: Q`, and
    one that tells a state of the thing named with its place above: `New range: 9M`, or
    below an amendment `was: Fl.3s`.
    """
    if role in _STATES and tells_state_below(text, line, above):
        return True
    if role == "to" and above and _begins_way(text, above[-1]):
        return True
    if role == "sectors" and above and above[-1].has("point", "half"):
        # Those of the light right above, whose item has its place.
        return True
    if role in _STATES and read_state(text, line) is not None:
        last = above[-1] if above else None
        if last is not None and not last.is_blank:
            return last.has("point", "half") or read_state(text, last) is not None
        return False
    behind = line.elements[1:3]
    if role == "position":
        return is_lettered(text, behind)
    return role == "feature" and [e.kind for e in behind[:1]] == ["verb"]


_FROM = re.compile(r"\bfrom ?:?\s{0,80}\Z", re.IGNORECASE)


def _begins_way(text: str, line: Line) -> bool:
    """Whether a line ends with `from` and a place."""
    *words, place = line.elements or (None,)
    if place is None or place.kind not in ("point", "half") or not words:
        return False
    return _FROM.search(text, line.start, place.start) is not None


def is_below_a_feature(text: str, below: Line | None, *, is_key: bool) -> bool:
    """Whether the line below a verb with its feature is a key that may stand there.

    Where the verb is no key itself, that is one of places alone.
    """
    if below is None or below.is_blank:
        return False
    key = with_place_key(text, below).elements[0]
    if key.kind != "key" or (key not in below.elements and has_kind(text[key.start : key.end])):
        # `Insert the following:` above `Wreck: P` heads a list.
        return False
    if is_key and key_role(text[key.start : key.end], has_places=True) in _BELOW_A_FEATURE:
        return True
    return len(below.elements) == 1 or below.has("point", "half")


def settled(text: str, cells: Cells) -> Cells:
    """The cells of a record; two ends behind one key are those of its move, or of a line."""
    if {"position", "centred"} <= cells.keys():
        # `At: P` and `Centre: Q`: which of them is its place is not said.
        cells[UNKNOWN] = [*cells.get(UNKNOWN, []), *cells.pop("centred")]
    if ENDS not in cells:
        return cells
    ends = cells.pop(ENDS)
    verb = canonical_verb(" ".join(text[e.start : e.end] for e in cells.get("verb", [])))
    places = [e for e in ends if e.kind in PLACES]
    if PLACED & cells.keys() - {"feature", "remark"} or len(places) != _PAIR:
        return {**cells, UNKNOWN: ends}
    if verb == "move":
        return {**cells, "from": places[:1], "to": places[1:]}
    return {**cells, "joining": ends}


def _holds_place(elements: Sequence[Element]) -> bool:
    return any(e.kind in ("point", "half", "reference") for e in elements)


def _stands_alone(text: str, line: Line) -> bool:
    """Whether a line is a key of places above them: `Boundary:`."""
    words = text[line.start : line.end].strip()
    is_key = len(line.elements) == 1 and words.endswith(":")
    return is_key and role_of_places(words, ()) in _ALONE


def _is_mark(element: Element) -> bool:
    return element.kind == "words" and element.end - element.start < _PAIR
