"""What the words beside a light say of it: when it shows, how many there are, what is not read.

In come the items of a phrase with the lights read from it; out come the lights with their remarks
and counts, and faults for bearings that went into no sector.  A figure is read or told, never
dropped.  Common practice, no published source.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.numbers import counted
from noticeparse.readers.amounts import shown
from noticeparse.readers.dates import MONTH
from noticeparse.readers.light_colours_apart import untold_lights, with_colour_apart
from noticeparse.readers.words import Item
from noticeparse.records.light import Light

_CONDITION = re.compile(
    r"(?P<remark>emergency|reserve|stand-?by|in fog|fog|by day|day(?:time)?|by night)"
    r"(?: (?:light|lt))?[ :,]*$",
    re.IGNORECASE,
)
_SEASON = re.compile(
    rf" ?\((?P<remark>(?:[0-9]{{1,2}} )?{MONTH}\.? ?(?:-|–|to) ?(?:[0-9]{{1,2}} )?{MONTH}\.?"
    r"|(?:summer|winter|seasonal)[a-z ]{0,20}|(?:by )?(?:day(?:time)?|night)|(?:in )?fog)\)",
    re.IGNORECASE,
)
_COUNTED = re.compile(r"\b(?P<count>two|three|four|five|six) $", re.IGNORECASE)
_COUNTED_LIGHTS = re.compile(
    r"(?<![\w.])(?P<count>two|three|four|five|six|[2-6]) (?:(?:fixed|flashing|red|green|white"
    r"|yellow|vertical|horizontal|(?:vertically|horizontally)(?:[ -]disposed)?) ){0,3}"
    r"(?:lights|lts\.?)[ ,:]*$",
    re.IGNORECASE,
)
"""`2 lights F.R (vert)` are two at one place, as `2F.R(vert)` is."""
_DISPOSED = re.compile(
    r"(?<![\w.])(?P<count>two|three|four|five|six|[2-6]) (?P<way>vertical|horizontal)"
    r"(?:ly)?(?:[ -]disposed)? (?:(?:fixed|flashing|red|green|white|yellow) ){0,2}$",
    re.IGNORECASE,
)
_DISPOSED_BEHIND = re.compile(
    r"\.? ?(?:lights?|lts?\.?)?[ ,]{0,2}\(?(?P<way>vert(?:ical(?:ly)?)?|hor(?:izontal(?:ly)?)?)"
    r"(?= disposed|\.?(?:[,;:)]|$)|\. )",
    re.IGNORECASE,
)
_COUNT_AHEAD = re.compile(
    r"(?<![\w.])(?P<count>two|three|four|five|six|[2-6]) (?:[a-z]+ )?$", re.I
)
"""`2 vertical F.G lights`, `two F.G. lights (vertical)`, `2F.G.vert`"""
_MAGNETIC = re.compile(r"\(?\bmag(?:netic)?\b\.?\)?", re.IGNORECASE)
_UNLIT = re.compile(r"\bunlit\b|\blight (?:is )?(?:discontinued|removed)\b", re.IGNORECASE)
_LETTER_AHEAD = re.compile(r"[FQ], ?(?=(?:Al|F|L|Fl|Oc|Iso|Q|V|U|I|Mo)[A-Za-z]{0,5}[.( ]|[FQ]\b)")
_SEPARATE = re.compile(r"\b(?:no|not fitted with(?: an?)?|without(?: an?)?) $", re.IGNORECASE)
_AXES = frozenset(("NAVLNE", "RECTRC"))


class Lights(NamedTuple):
    """Lights with what the words beside them say, and the faults found."""

    lights: tuple[Light, ...]
    faults: list[Fault]


def is_denied(text: str, item: Item) -> bool:
    """Whether the words before an aid say that there is none: `without AIS`."""
    return item.role in ("ais", "racon", "sound") and bool(_SEPARATE.search(text[: item.start]))


def in_context(
    text: str, items: Sequence[Item], lights: Sequence[Light], kind: str, s57: str
) -> Lights:
    """The lights of a phrase as the words around them mean them."""
    faults: list[Fault] = [] if lights else list(untold_lights(items, s57))
    at = 0
    told: list[Light] = []
    for light in lights:
        start = text.find(light.written, at)
        if start < 0:
            told.append(light)
            continue
        told.append(_with_words(text[at:start], light, text[start + len(light.written) :]))
        at = start + len(light.written)
    faults += _unread_bearings(items, told, kind, s57)
    if any(light.sectors for light in lights) and (mark := _MAGNETIC.search(text)):
        faults.append(_fault("sector-magnetic", text, *mark.span()))
    unlit = _UNLIT.search(text) if lights else None
    if unlit is not None:
        faults.append(_fault("light-said-unlit", text, *unlit.span()))
    return Lights(with_colour_apart(items, told, s57, faults), faults)


def letter_ahead(text: str, start: int, end: int, head_end: int) -> Fault | None:
    """`light-buoy F, Fl.R.5s`: the letter of the mark is no part of the character."""
    if text[head_end:start].strip() or not head_end:
        return None
    if _LETTER_AHEAD.match(text, start, end) is None:
        return None
    return _fault("light-character-unknown", text, start, end)


def _with_words(before: str, light: Light, behind: str) -> Light:
    update: dict[str, object] = {}
    remarks = list(light.remarks)
    for found in (_CONDITION.search(before), _SEASON.match(behind)):
        if found is not None and found["remark"] not in remarks:
            remarks.append(found["remark"])
    if remarks != light.remarks:
        update["remarks"] = remarks
    count = _COUNTED.search(before)
    lights = _COUNTED_LIGHTS.search(before)
    ahead, disposed = _DISPOSED.search(before), _DISPOSED_BEHIND.match(behind)
    if (told := ahead or disposed) is not None:
        is_vertical = told["way"].lower().startswith("vert")
        update["vertical" if is_vertical else "horizontal"] = True
        count = count or ahead or _COUNT_AHEAD.search(before)
    if lights is not None and _is_group(light, lights[0]):
        count = lights
    if count is not None and light.count == 1:
        update["count"] = counted(count["count"])
    return light.model_copy(update=update) if update else light


def _is_group(light: Light, words: str) -> bool:
    """Whether lights stand above or beside one another on one structure."""
    said = words.lower()
    return light.vertical or light.horizontal or "vertical" in said or "horizontal" in said


def _unread_bearings(
    items: Sequence[Item], lights: Sequence[Light], kind: str, s57: str
) -> list[Fault]:
    """A fault for each bearing of a light that went into no value."""
    found = [item for item in items if item.role == "bearing"]
    # The bearing of a line is held against its positions.
    if not found or s57 in _AXES or not (lights or s57 == "LIGHTS"):
        return []
    is_axis = any(light.directional or light.leading for light in lights)
    is_axis = is_axis or kind in ("directional_light", "leading_lights")
    code = "light-axis-not-kept" if is_axis and len(found) == 1 else "sector-not-read"
    return [Fault(code, one.start, one.end, {"written": shown(one.text)}) for one in found]


def _fault(code: str, text: str, start: int, end: int) -> Fault:
    return Fault(code, start, end, {"written": shown(text[start:end])})
