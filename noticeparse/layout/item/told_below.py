"""Bodies in which each thing is named with its place, and the line below tells what became of it.

`PIER LIGHT, 47-06.0S 125-16.9W.` and below it `Range increased to 18M.`: the two lines are one
item.  The verb is put in front of it and the rest behind its place, and it is then cut like any
other.  Lines that tell a former and a new state are read by `told_states`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from noticeparse.layout.drafts import Piece
from noticeparse.layout.evidence import lead_index, tells
from noticeparse.layout.item.told_states import State, is_pair, read_more, read_state
from noticeparse.layout.item.verb_last import Stretch, led
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.verbs import canonical_verb

# What may stand before the participle and changes nothing of it.
_FILLERS = frozenset("permanently now newly has have been is are since".split())
_PARTICIPLES = ("ed", "withdrawn", "laid")
_LEADS_ON = ("to", "from", "by", "into")
_MOST_WORDS = 6
_MOST_LINES = 4
"""Lines between the name of a thing and the end of its position."""


class _Clause(NamedTuple):
    """What a line tells of the thing above it, as elements."""

    verb: Element
    rest: tuple[Element, ...]
    """The property before the participle, what it becomes, and the rest of the line."""


class _Group(NamedTuple):
    head: list[Line]
    """The lines that name the thing and its place."""
    told: list[Line]
    """The line with its clause and those that add to it, or the lines that tell its states."""
    clause: _Clause | None
    states: list[State]


def stands_told_below(text: str, lines: Sequence[Line]) -> bool:
    """Whether things stand over what is told of them, and no other verb commands here."""
    first = next((line for line in lines if not line.is_blank), None)
    if first is None or first.has("verb", "passive"):
        return False
    parts = list(_parts(text, lines))
    others = [part for part in parts if isinstance(part, Line)]
    if any(_may_head(text, part, below) for part, below in pairwise(parts)):
        return False
    return len(others) < len(parts) and not any(line.has("verb", "passive") for line in others)


def _may_head(text: str, part: _Group | Line, below: _Group | Line) -> bool:
    """Whether a participle alone on its line, without a full stop, may head what stands below."""
    if isinstance(part, Line) or part.clause is None or part.clause.rest:
        return False
    ends = text[part.told[0].start : part.told[0].end].rstrip()[-1:] in (".", ";")
    return not ends and isinstance(below, Line) and below.has("point", "half")


def told_below_stretches(text: str, lines: Sequence[Line]) -> Iterator[Stretch]:
    """The stretches of such a body, in order."""
    kept: list[Line] = []
    for part in _parts(text, lines):
        if isinstance(part, Line):
            kept.append(part)
            continue
        if kept:
            yield Stretch(kept, None)
            kept = []
        yield _stretch(text, part)
    if kept:
        yield Stretch(kept, None)


def _stretch(text: str, group: _Group) -> Stretch:
    if group.clause is None:
        told = tuple((e.start, e.end) for line in group.told for e in line.elements)
        return Stretch(group.head, None, states=tuple(group.states), told=told)
    verb, rest = group.clause
    more = (read_more(text, line) for line in group.told[1:])
    rest = (*rest, *(element for one in more for element in one or ()))
    changes = canonical_verb(text[verb.start : verb.end].split()[-1]) == "amend"
    if changes and all(element.kind == "words" for element in rest):
        return Stretch(led(group.head, verb), verb, tuple((e.start, e.end) for e in rest))
    return Stretch(led([*group.head, group.told[0]._replace(elements=rest)], verb), verb)


def _parts(text: str, lines: Sequence[Line]) -> Iterator[_Group | Line]:
    """The groups, and each line that is part of none."""
    head: list[Line] = []
    group: _Group | None = None
    for line in lines:
        if group is not None and _goes_on(text, group, line):
            continue
        if group is not None:
            yield from _whole(group)
            group = None
        group = _opened(text, head, line) if head and _is_named(text, head) else None
        if group is not None:
            head = []
            continue
        goes_on = bool(head) and not line.is_blank and _runs_on(text, head, line)
        if not goes_on or len(head) == _MOST_LINES:
            yield from head
            head = []
        if line.is_blank or line.has("verb", "passive"):
            yield from head
            yield line
            head = []
        else:
            head.append(line)
    if group is not None:
        yield from _whole(group)
    yield from head


def _runs_on(text: str, head: Sequence[Line], line: Line) -> bool:
    """Whether a line goes on with the name of a thing; a sentence or a letter parts them."""
    ends = text[head[-1].start : head[-1].end].rstrip()[-1:] in (".", ":")
    opens = len(line.elements) > 1 and line.elements[0].kind == "label"
    return not (ends or opens or _is_named(text, head))


def _opened(text: str, head: list[Line], line: Line) -> _Group | None:
    """The group that a line opens below the name of a thing; None where it tells nothing."""
    state = read_state(text, line)
    is_old = state is not None and state.when == "old"
    clause = None if is_old else _clause(text, line)
    if clause is not None:
        return _Group(head, [line], clause, [])
    return _Group(head, [line], None, [state]) if state is not None else None


def _goes_on(text: str, group: _Group, line: Line) -> bool:
    """Take a line that tells more of the thing of an open group."""
    if line.is_blank:
        return False
    if group.clause is None:
        state = read_state(text, line)
        if state is None:
            return False
        group.states.append(state)
        group.told.append(line)
        return True
    amends = canonical_verb(text[group.clause.verb.start : group.clause.verb.end].split()[-1])
    if amends == "insert" and read_more(text, line) is not None:
        group.told.append(line)
        return True
    return False


def _whole(group: _Group) -> Iterator[_Group | Line]:
    """The group, or its lines where its states do not tell what the thing becomes."""
    if group.clause is not None or is_pair(group.states):
        yield group
    else:
        yield from (*group.head, *group.told)


def _is_named(text: str, head: Sequence[Line]) -> bool:
    """Whether lines hold words for a thing, and end with its place."""
    last = [e for e in head[-1].elements if e.kind in PLACES or tells(text, e)]
    named = any(tells(text, e) for line in head for e in line.elements)
    return named and bool(last) and last[-1].kind in PLACES


def _clause(text: str, line: Line) -> _Clause | None:
    """`Established.`, `Moved to P`, `Range increased to 18M`: what a line tells; else None."""
    if line.is_blank:
        return None
    first = line.elements[lead_index(line)]
    if first.kind not in ("words", "verb"):
        return None
    said: list[str] = []
    at = first.start
    for word in text[first.start : first.end].split()[:_MOST_WORDS]:
        start = text.index(word, at)
        at = start + len(word)
        plain = word.strip(".,:;").lower()
        if plain in _FILLERS:
            continue
        if plain.endswith(_PARTICIPLES) and canonical_verb(plain) is not None:
            fits = _fits(text, said, start, at)
            return _divided(text, line, first, (start, at), said) if fits else None
        said.append(word)
    return None


def _fits(text: str, said: Sequence[str], start: int, end: int) -> bool:
    """Whether the participle tells all: `Reported removed` and `Temporarily laid` do not."""
    behind = text[end : end + 80].split()
    leads_on = bool(behind) and behind[0].lower().strip(":") in _LEADS_ON
    if canonical_verb(text[start:end].strip(".,:;")) == "amend":
        return leads_on
    return not said and (leads_on or text[end - 1] in ".;" or not text[end : end + 1].strip())


def _divided(
    text: str, line: Line, first: Element, participle: Piece, said: Sequence[str]
) -> _Clause:
    start, end = participle
    if not said:
        # `Permanently withdrawn`: the verb as it is written.
        start = first.start
    stop = start + len(text[start:end].rstrip(".,:;"))
    verb = Element("verb", start, stop, True)
    pieces = [(first.start, start), (end, first.end)]
    words = [Element("words", *piece, True) for piece in pieces if text[slice(*piece)].strip()]
    index = line.elements.index(first)
    return _Clause(verb, (*words, *line.elements[index + 1 :]))
