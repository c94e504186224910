"""States told by keys below an amendment that has its thing: `was: Fl.R.3s` above `is: Fl.R.5s`.

    CHANGED   light
              47-01.2S 123-15.3W
              was: Fl.R.3s7m4M
              is:  Fl(2)R.6s7m6M

The lines are of the item above them and no record of their own.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import lead_index, tells
from noticeparse.layout.item.states import state_told
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.verbs import canonical_verb

_KEY = re.compile(r"[A-Za-z]{2,12} ?:(?=[ ]{1,12}\S)")
_OF_REPLACEMENT = frozenset((*PLACES, "verb", "words", "label", "bar"))
_MOST_STATES = 4
_MOST_PLACES = 12


def with_state_key(text: str, line: Line, body: Sequence[Line]) -> Line:
    """The line; such a word with a colon before what it tells is a key, however deep it stands."""
    first = line.elements[0] if line.elements else None
    if first is None or first.kind not in ("words", "key"):
        return line
    told = _KEY.match(text, first.start, line.end)
    if told is None:
        return line
    key = first._replace(kind="key", end=told.end(), value=state_told(told[0], "amend"))
    rest = [
        e._replace(start=max(e.start, told.end())) for e in line.elements if e.end > told.end()
    ]
    kept = (e._replace(start=e.end - len(text[e.start : e.end].lstrip())) for e in rest)
    apart = line._replace(elements=(key, *kept))
    return apart if tells_state_below(text, apart, body) else line


def tells_state_below(text: str, line: Line, body: Sequence[Line]) -> bool:
    """Whether a line tells a state, by words alone, of what an amendment above it names.

    A replacement may name its place alone: `Replace in P`, and below it `Old: buoy`.
    """
    if not _is_state(text, line) or line.has(*PLACES):
        return False
    above = _without(body, _MOST_STATES, lambda one: _is_state(text, one))
    above = _without(above, _MOST_PLACES, lambda one: _is_place(text, one))
    if not above or above[-1].is_blank:
        return False
    command = next((told for one in reversed(above) if (told := _command(one))), None)
    if command is None:
        return False
    verb = canonical_verb(command.value or text[command.start : command.end])
    if verb == "replace" and command in above[-1].elements:
        return all(e.kind in _OF_REPLACEMENT for e in above[-1].elements)
    return verb == "amend" and _names_thing(text, above[-1])


def hold_half_told(text: str, items: Sequence[Item]) -> None:
    """Hold back amendments whose old state alone is told: it is not what they change to."""
    for item in items:
        if item.old and not item.change and canonical_verb(item.verb or "") == "amend":
            start, end = item.old[0][0], item.old[-1][1]
            values = {"written": " ".join(text[start:end].split())}
            item.faults.append(Fault("new-value-empty", start, end, values))


def _without(lines: Sequence[Line], most: int, is_kind: Callable[[Line], bool]) -> Sequence[Line]:
    """The lines without those of a kind at their end."""
    end = len(lines)
    while end and len(lines) - end < most and not lines[end - 1].is_blank:
        if not is_kind(lines[end - 1]):
            break
        end -= 1
    return lines[:end]


def _is_state(text: str, line: Line) -> bool:
    """Whether a line opens with the key of a state that has a value: `was: Fl.R.3s`."""
    if len(line.elements) <= 1:
        return False
    key = line.elements[0]
    words = text[key.start : key.end].rstrip()
    is_key = key.kind in ("key", "words") and words.endswith(":")
    return is_key and state_told(words, "amend") is not None


def _is_place(text: str, line: Line) -> bool:
    return line.has(*PLACES) and not any(
        e.kind in ("verb", "passive", "key") or tells(text, e) for e in line.elements
    )


def _names_thing(text: str, line: Line) -> bool:
    """Whether a line holds words for a thing, behind its verb if it has one."""
    behind = line.elements[lead_index(line) :]
    if behind and behind[0].kind == "verb":
        behind = behind[1:]
    only = all(e.kind in (*PLACES, "words", "label") for e in behind)
    return only and any(tells(text, e) for e in behind)


def _command(line: Line) -> Element | None:
    """The verb that opens a line."""
    lead = line.elements[lead_index(line)] if line.elements else None
    return lead if lead is not None and lead.kind == "verb" else None
