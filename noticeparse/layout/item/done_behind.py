"""Items that say behind the thing what was done with it: `Pile, removed   P`.

`Depth 14.2 m, replaced by depth 13.5 m   P`, `Cable, inserted, joining` above its places: the
participle is put in front of the thing as its verb, and the stretch is then cut like any other.
A line with a thing but without a participle is a stretch of its own and has no verb.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import takewhile
from re import Match
from typing import NamedTuple

from noticeparse.layout.evidence import OPEN_END, lead_index, tells
from noticeparse.layout.item.done_at_end import done_at_end
from noticeparse.layout.item.participles import fits_behind, participle
from noticeparse.layout.item.verb_last import Stretch, led
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.features import has_kind
from noticeparse.readers.places import read_phrase, split_phrase

_WORDS = ("words", "verb", "semicolon")
_MARKS = ("label", "bar")
_LONGEST = 400


class _Told(NamedTuple):
    """A line cut at its participle."""

    verb: Element
    thing: tuple[Element, ...]
    rest: tuple[Element, ...]
    """What it is joined to or becomes; the places are not among it."""
    line: Line
    """The line without its participle."""


def stands_done_behind(text: str, lines: Sequence[Line]) -> bool:
    """Whether participles behind things command here, and no verb stands above its items."""
    told = 0
    for at, line in enumerate(lines):
        is_rest = at > 0 and _is_open_name(text, lines[at - 1 : at])
        if _told(text, line, lines[at + 1 :], is_rest=is_rest) is not None:
            told += 1
        elif _heads(line):
            return False
    return told > 0


def with_participles_apart(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines of a body whose places stand above such things, each participle an element.

    `P` above `Wreck, inserted` and `Pile, removed`; any other body stays as it is.
    """
    if not _stand_above(text, lines):
        return list(lines)
    found = [_told(text, line, None, is_placed=True) for line in lines]
    others = [line for line, told in zip(lines, found, strict=True) if told is None]
    is_mixed = any(
        line.has("verb", "passive", "label") or has_kind(text[line.start : line.end])
        for line in others
    )
    if is_mixed or not any(found):
        return list(lines)
    return [
        line if told is None else _apart(told) for line, told in zip(lines, found, strict=True)
    ]


def _stand_above(text: str, lines: Sequence[Line]) -> bool:
    """Whether lines of places stand above lines of things: the first are places, the last none."""
    told = [line for line in lines if not line.is_blank]
    if not told or not told[0].has("point", "half") or told[-1].has("point", "half"):
        return False
    return all(
        line.has("point", "half") != any(tells(text, e) for e in line.elements) for line in told
    )


def _apart(told: _Told) -> Line:
    """The line with the participle behind its thing, as an element."""
    verb = told.verb._replace(kind="passive")
    at = told.line.elements.index(told.thing[-1]) + 1
    return told.line._replace(elements=(*told.line.elements[:at], verb, *told.line.elements[at:]))


def stands_in_rows(text: str, lines: Sequence[Line]) -> bool:
    """Whether each line is such an item or places below it, in columns: no sentence of prose."""
    told = [line for line in lines if not line.is_blank]
    found = [_told(text, line, told[at + 1 :]) for at, line in enumerate(told)]
    rows = all(
        (one is not None and _is_row(line)) or not _opens(text, line, in_front=False)
        for line, one in zip(told, found, strict=True)
    )
    return any(found) and rows


def _is_row(line: Line) -> bool:
    """Whether the place of a line, if it has one, stands in a column of its own."""
    return all(e.gap for e in line.elements if e.kind in PLACES)


def done_behind_stretches(text: str, lines: Sequence[Line]) -> Iterator[Stretch]:
    """The stretches of such a body: a thing with its participle, and the places below it."""
    kept: list[Line] = []
    verb: Element | None = None
    in_front = _stands_in_front(text, lines)
    is_done = False
    for at, line in enumerate(lines):
        is_rest = verb is None and bool(kept) and _is_open_name(text, kept)
        told = _told(text, line, None if in_front else lines[at + 1 :], is_rest=is_rest)
        told = told or _without_place(text, line, is_rest=is_rest)
        waits = is_rest
        end = None if told is not None or in_front else done_at_end(text, line)
        if end is not None:
            named = has_kind(text[end.line.start : end.line.end])
            waits = (is_rest and not named) if end.has_thing else _waits(text, kept)
            if end.has_thing or (waits and verb is None):
                told = _Told(end.verb, (), (), end.line)
        opens = told is not None or line.is_blank or _opens(text, line, in_front=in_front)
        goes_on = verb is not None and told is None and end is None
        broken = goes_on and _is_broken(text, kept)
        if kept and (is_done or (opens and not (told is not None and waits) and not broken)):
            yield Stretch(led(kept, verb), verb)
            kept, verb = [], None
        is_done = told is not None and not told.thing
        if told is not None:
            verb, line = told.verb, told.line
        else:
            line = _without_verb(line)
        kept.append(line)
    if kept:
        yield Stretch(led(kept, verb), verb)


def _heads(line: Line) -> bool:
    """Whether a line opens with a verb: beside it a participle may tell how a thing is."""
    return not line.is_blank and line.elements[lead_index(line)].kind == "verb"


def _stands_in_front(text: str, lines: Sequence[Line]) -> bool:
    """Whether the first line with a place has it in front of the words."""
    for line in lines:
        first = next((e for e in line.elements if e.kind in PLACES or tells(text, e)), None)
        if first is not None:
            return first.kind in PLACES
    return False


def _opens(text: str, line: Line, *, in_front: bool) -> bool:
    """Whether a line without a participle begins something else."""
    if line.has("verb", "passive"):
        return True
    if in_front and line.elements[0].kind in PLACES:
        return True
    return any(tells(text, e) and not _relates(text, e) for e in line.elements)


def _relates(text: str, element: Element) -> bool:
    """Whether words only lead to a place: `joining`, `centred on`."""
    return all(part.kind != "words" for part in read_phrase(text[element.start : element.end]))


def _without_verb(line: Line) -> Line:
    """A line whose verb stands among its words, and is not sure, with words in its place."""
    elements = [
        e._replace(kind="words") if e.kind == "verb" and index > lead_index(line) else e
        for index, e in enumerate(line.elements)
    ]
    return line._replace(elements=tuple(elements))


def _without_place(text: str, line: Line, *, is_rest: bool) -> _Told | None:
    """A line that ends with its participle, and whose place is not where it should be."""
    told = _told(text, line, [], is_rest=is_rest, is_placed=True)
    return None if told is None or told.rest else told


def _is_broken(text: str, kept: Sequence[Line]) -> bool:
    """Whether the last line that was kept breaks off."""
    words = text[kept[-1].start : kept[-1].end].rstrip() if kept[-1].elements else ""
    last = words.rpartition(" ")[2].lower()
    return words[-1:] in (",", "/", "&") or last in OPEN_END or words.count('"') % 2 == 1


def _waits(text: str, kept: Sequence[Line]) -> bool:
    """Whether lines hold a thing whose places go on below."""
    return any(tells(text, e) for line in kept for e in line.elements) and _is_broken(text, kept)


def _is_open_name(text: str, kept: Sequence[Line]) -> bool:
    """Whether lines hold no place, and words that go on below and lead to none: `Buoy, "North`."""
    held = [e for line in kept for e in line.elements]
    if any(e.kind in PLACES for e in held) or not _is_broken(text, kept):
        return False
    parts = split_phrase(text[held[-1].start : held[-1].end]).parts
    return all(part.kind == "separator" for part in parts)


def _told(
    text: str,
    line: Line,
    below: Sequence[Line] | None,
    *,
    is_rest: bool = False,
    is_placed: bool = False,
) -> _Told | None:
    """The line cut at the one participle behind its thing; None for other lines.

    Its place stands on it or `below`, or elsewhere where it `is_placed`; `is_rest` where the line
    goes on with the name of a thing.
    """
    if line.is_blank or line.has("passive", "number", "key"):
        return None
    marks = list(takewhile(lambda e: e.kind in (*PLACES, *_MARKS), line.elements))
    run = list(takewhile(lambda e: e.kind in _WORDS, line.elements[len(marks) :]))
    behind = line.elements[len(marks) + len(run) :]
    if not run or run[0].kind != "words" or any(_tells_more(text, e) for e in behind):
        return None
    start, end = run[0].start, run[-1].end
    done = participle(text, start, min(end, start + _LONGEST), is_rest=is_rest)
    if done is None:
        return None
    letters = behind[:1] if behind and behind[0].kind == "label" else ()
    has_place = is_placed or any(e.kind in PLACES for e in (*marks, *behind)) or bool(letters)
    rest = text[done.end() : end].strip(" ,:;.-")
    if not fits_behind(text[done.start("verb") : done.end("verb")], rest):
        return None
    is_open = _is_broken(text, [line])
    if not has_place and not _has_places_below(text, below or (), is_open=is_open):
        return None
    return _cut(text, line, run, done)


def _tells_more(text: str, element: Element) -> bool:
    """Whether words behind a place say more than a bracket does: `(see block)`."""
    return tells(text, element) and text[element.start] not in "(["


def _has_places_below(text: str, below: Sequence[Line], *, is_open: bool) -> bool:
    """Whether the next line begins with a place, or goes on with the words that lead to one."""
    line = below[0] if below else None
    if line is None or line.is_blank:
        return False
    first = next((e for e in line.elements if e.kind not in _MARKS), None)
    if first is None:
        return False
    leads = first.kind == "words" and (is_open or _relates(text, first))
    return first.kind in PLACES or (leads and line.has("point", "half", "reference", "same"))


def _cut(text: str, line: Line, run: Sequence[Element], done: Match[str]) -> _Told:
    start, end = run[0].start, run[-1].end
    verb = Element("verb", done.start("verb"), done.end(), False)
    named = text[start : done.start()].rstrip(" ,-:;")
    rest = text[done.end() : end]
    lead = len(rest) - len(rest.lstrip(" ,:;-"))
    thing = (run[0]._replace(end=start + len(named)),)
    words = (Element("words", done.end() + lead, end, False),) if rest.strip(" ,:;-.") else ()
    at = line.elements.index(run[0])
    whole = (*line.elements[:at], *thing, *words, *line.elements[at + len(run) :])
    return _Told(verb, thing, words, line._replace(elements=whole))
