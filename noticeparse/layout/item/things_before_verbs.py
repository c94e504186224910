"""Things that stand with a colon before their verb: `Rock: delete in P`; a line may have two."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from noticeparse.layout.evidence import OPEN_END
from noticeparse.layout.line.element_kinds import PLACES, ElementKind
from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.readers.features import has_kind, leads_feature

_VERBS: tuple[ElementKind, ...] = ("verb", "passive")


def stands_before_verb(text: str, line: Line, index: int) -> bool:
    """Whether a thing stands here, first in its line, before a verb with more behind it."""
    if len(line.elements) < index + 3 or line.elements[index + 1].kind != "verb":
        return False
    is_first = not any(element.kind in PLACES for element in line.elements[:index])
    return is_first and _names_thing(text, line, index)


def ends_behind_thing(text: str, verb: Element) -> bool:
    """Whether a verb stands behind a colon: `P: North Mole light: delete`."""
    return text[max(verb.start - 3, 0) : verb.start].rstrip()[-1:] == ":"


def without_colon(text: str, thing: Element) -> Element:
    """The words of a thing without the colon behind them."""
    return thing._replace(end=thing.start + len(text[thing.start : thing.end].rstrip(" :")))


def holds_no_more(text: str, line: Line | None, verb: Element, ends: bool) -> bool:
    """Whether a verb, which may end its line, commands nothing that follows it."""
    return _is_commanded(text, line, verb) or (ends and _ends_row(text, line, verb))


def _ends_row(text: str, line: Line | None, verb: Element) -> bool:
    """Whether a verb ends the row of its thing, and does not lead the next: `wreck, insert`."""
    elements = line.elements if line is not None else ()
    before = elements[elements.index(verb) - 1] if verb in elements[1:] else None
    if before is None or before.kind != "words":
        return False
    words = text[before.start : before.end].rstrip()
    is_joint = words[-1:] in ".;:" or words.split()[-1].lower() in OPEN_END | {"then", "also"}
    return not is_joint and has_kind(words)


def _is_commanded(text: str, line: Line | None, verb: Element) -> bool:
    """Whether a verb is itself what the verb before it commands: `Delete: Insert wreck in P`."""
    first = line.elements[0] if line is not None else verb
    is_second = first.kind == "verb" and first.start < verb.start
    return is_second and text[first.end : verb.start].strip() == ":"


def with_things_apart(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, `Wreck: insert in P. Rock: delete in Q` as one for each thing."""
    found: list[Line] = []
    for line in lines:
        cuts: list[int] = []
        if line.has(*_VERBS):
            cuts = [i for i in range(len(line.elements)) if _names_thing(text, line, i)]
        if len(cuts) < 2:
            found.append(line)
            continue
        for start, end in pairwise([0, *cuts[1:], len(line.elements)]):
            own = list(line.elements[start:end])
            if start:
                words = text[own[0].start : own[0].end]
                lead = len(words) - len(words.lstrip(" .;,"))
                own[0] = own[0]._replace(start=own[0].start + lead, gap=True)
            begin = own[0].start if start else line.start
            found.append(line._replace(start=begin, elements=tuple(own)))
    return found


def _names_thing(text: str, line: Line, index: int) -> bool:
    """Whether a thing with a colon stands before a verb here: `Wreck: insert`."""
    if index + 1 >= len(line.elements) or line.elements[index + 1].kind not in _VERBS:
        return False
    words = line.elements[index]
    said = text[words.start : words.end].rstrip()
    return words.kind == "words" and said.endswith(":") and has_kind(said)


def behind_thing(text: str, line: Line) -> int | None:
    """The index of the first verb of a line, behind a thing and a colon, where it names no other.

    `Light: amend range to 9M in P`, `Buoy: replace by beacon in P`.
    """
    at = next((i for i, e in enumerate(line.elements) if e.kind in _VERBS), 0)
    if not at or not _names_thing(text, line, at - 1):
        return None
    said = words_of(text, (e for e in line.elements[at + 1 :] if e.kind == "words"))
    return None if leads_feature(said) else at
