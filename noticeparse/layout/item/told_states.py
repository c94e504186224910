"""What became of a thing, told below it as its former and its new state, or after its verb.

`Former character  F.G` above `New character  Fl.G.3s`; `Former position  as above` above `New
position  P`; `Established  Oc.6s` above `Sectors  R 020°-065°`.  In come the lines below the name
of a thing and its place, out comes what they make of its item.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Group, Item, Piece, Place
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line, words_of

_OLD = (
    "former|formerly|old|previous|previously|existing|earlier|was|from"
    "|(?:currently |presently |previously )?(?:charted|shown|published|printed|listed)"
)
_NEW = "new|now|amended|altered|revised|changed to|corrected|correct|to"
_FOUND = "surveyed|measured|observed|found|actual|true|latest|reported"
_PLANNED = "proposed|planned|projected|intended|future|expected|prospective"
_EITHER = "present"
_PARTS = (
    r"(?:nominal )?ranges?|periods?|elevations?|heights?|colou?rs?|sectors?|names?|numbers?"
    r"|topmarks?|shapes?|depths?|(?:vertical |horizontal )?clearances?"
    r"|sound signal|fog signal|racon"
)
_STATE = re.compile(
    rf"(?:(?P<old>{_OLD})|(?P<new>{_NEW})|(?P<either>{_EITHER})|(?P<found>{_FOUND})"
    rf"|(?P<plan>{_PLANNED}))(?![a-z-])[ :]{{0,4}}"
    r"(?:(?P<whole>characters?|characteristics?|lights?|description|state)"
    rf"|(?P<place>positions?|po?sn\.?|site|station)|(?P<part>(?:least )?(?:{_PARTS})))"
    r"(?![a-z]|-[a-z])[ :.=-]{0,12}",
    re.IGNORECASE,
)
_MORE = re.compile(
    r"(?:sectors?|characters?|characteristics?|lights?|elevations?|heights?|ranges?|periods?"
    r"|structures?|descriptions?|topmarks?|colou?rs?)(?![a-z])[ :.=-]{0,12}",
    re.IGNORECASE,
)
_WHOLE = re.compile(r"(?:characters?|characteristics?|lights?|descriptions?)", re.IGNORECASE)
_SAME = ("as above", "as charted", "as shown", "as given", "above", "as before", "as listed")


class State(NamedTuple):
    """One state of a thing, as a line tells it."""

    when: str
    """`old`, `new`, `plan`, `found`, or `either` for a word that stands for both: `present`.

    What was found is new where what is charted stands with it.
    """
    part: Piece | None
    """The word for the property, but for the whole character and the position."""
    is_position: bool
    values: tuple[Element, ...]


def read_state(text: str, line: Line) -> State | None:
    """The state that a line tells, or None."""
    if not line.elements or line.elements[0].kind not in ("words", "key", "verb"):
        return None
    first = line.elements[0]
    told = _STATE.match(text, first.start, line.end)
    if told is None:
        return None
    when = next(name for name in ("old", "new", "either", "found", "plan") if told[name])
    values = _behind(text, line, told.end())
    if not values:
        return None
    part = told.span("part") if told["part"] else None
    return State(when, part, bool(told["place"]), values)


def read_more(text: str, line: Line) -> tuple[Element, ...] | None:
    """What a line below `Established …` adds: `Sectors  R 020°-065°`; None for other lines."""
    first = line.elements[0] if line.elements else None
    told = _MORE.match(text, first.start, first.end) if first and first.kind == "words" else None
    if first is None or told is None or line.has("point", "half", "verb", "passive"):
        return None
    values = _behind(text, line, told.end())
    if not values:
        return None
    # `Character  Fl.3s` is a light with or without its key; `Elevation  12m` needs the key.
    return values if _WHOLE.match(told[0]) else line.elements


def _behind(text: str, line: Line, start: int) -> tuple[Element, ...]:
    """The elements of a line from an offset on."""
    found = [
        element._replace(start=max(element.start, start))
        for element in line.elements
        if element.end > start
    ]
    return tuple(e for e in found if text[e.start : e.end].strip(" :.-"))


def is_pair(states: Sequence[State]) -> bool:
    """Whether states tell what was and what is, of the same properties."""
    new = [one for one in states if one.when != "old"]
    if any(one.when in ("found", "plan") for one in states) and len(states) == len(new) == 1:
        return False
    return bool(new) and len({(one.is_position, one.part is None) for one in states}) == 1


def settle_states(text: str, item: Item, states: Sequence[State]) -> None:
    """Give an item what its states tell: an amendment of its character, or a move."""
    told = _divided(states)
    plan = next((one for one in states if one.when == "plan"), None)
    if plan is not None:
        # Proposed: what stands on the chart stays until the work is done.
        values = plan.values
        extent = (values[0].start, values[-1].end)
        written = {"written": " ".join(text[slice(*extent)].split())}
        item.faults.append(Fault("change-planned", *extent, written))
    old = next((one for when, one in told if when == "old"), None)
    new = next((one for when, one in told if when == "new"), None)
    start = item.pieces[0][0]
    end = max(e.end for state in states for e in state.values)
    written = {"written": " ".join(text[start:end].split())}
    if new is None or len({when for when, _ in told}) < len(told):
        item.verb = "amend"
        item.faults.append(Fault("sentence-told-twice", start, end, written))
        return
    if new.is_position:
        _settle_move(text, item, old, new, Fault("states-at-two-places", start, end, written))
        return
    item.verb = "amend"
    if new.part is not None:
        item.words.append(new.part)
    item.old += [(e.start, e.end) for e in (old.values if old else ())]
    item.change += [(e.start, e.end) for e in new.values]


def _divided(states: Sequence[State]) -> list[tuple[str, State]]:
    """Each state as `old` or `new`; `present` is what the other is not."""
    known = {one.when for one in states}
    either = "old" if known & {"new", "plan"} else "new"
    told = {"either": either, "found": "new", "plan": "new"}
    return [(told.get(one.when, one.when), one) for one in states]


def _settle_move(text: str, item: Item, old: State | None, new: State, fault: Fault) -> None:
    item.verb = "move"
    places = [Place(e) for e in new.values if e.kind in PLACES]
    item.groups.append(Group(role="to", places=places))
    if not places:
        # `New position  0.2 miles N`: from where, is not certain.
        extent = (new.values[0].start, new.values[-1].end)
        written = {"written": " ".join(text[slice(*extent)].split())}
        item.faults.append(Fault("move-without-destination", *extent, written))
    before = [e for e in (old.values if old else ()) if e.kind in PLACES and e.kind != "same"]
    said = words_of(text, old.values if old else ()).strip(" .").lower()
    above = [text[p.element.start : p.element.end] for g in item.groups[:-1] for p in g.places]
    told = [text[e.start : e.end] for e in before]
    if (old is not None and not before and said not in _SAME) or (before and told != above):
        item.faults.append(fault)
