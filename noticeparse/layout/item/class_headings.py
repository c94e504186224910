"""Lines that head items by their class and what is done with them: `Depths to be inserted`.

Each becomes the verb of the items below it, up to the next such line.  The class is told again of
items that name no kind of their own: `6.2  P` below `Depths to be inserted` is a depth.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.layout.drafts import Piece
from noticeparse.layout.evidence import lead_index, tells
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.place.counted import announces_places
from noticeparse.readers.features import has_kind
from noticeparse.readers.places import split_phrase
from noticeparse.readers.verbs import canonical_verb

_LONGEST = 80
_CLASSES = frozenset(
    "additions aids buoyage charted corrections dangers details features following hazards items "
    "information marks objects particulars works".split()
)
"""Words that name many things at once, besides the plural of a kind."""
_DONE = r"(?:[a-z-]{0,14}(?:ed|laid|awn|ken|uck)(?: (?:out|off|up|in|away|down))?)"
_ORDER = r"(?:insertion|addition|deletion|removal|withdrawal|amendment|alteration|relocation)"
_TOLD = re.compile(
    rf"(?P<things>[A-Za-z][A-Za-z,/& -]{{2,60}}?),?(?: -)? "
    r"(?:(?:listed|given|shown|described|specified) below )?"
    r"(?P<told>(?:(?:are |is |shall |should |will )?(?:to )?be |are |have been |were )?"
    rf"(?:newly )?{_DONE}"
    rf"|for {_ORDER}"
    r"|(?:to|which) (?:insert|add|delete|remove|amend|move|replace))"
    r"(?: (?:on|in|from|to) (?:the|this) charts?| as follows)?[ .:]{0,3}$",
    re.IGNORECASE,
)
_COMMANDED = re.compile(
    rf"(?P<told>to be {_DONE}|for {_ORDER}|insert|add|establish|lay|place|plot|enter|delete|remove"
    r"|withdraw|lift|erase|amend|move|shift|relocate|replace)"
    r"[ :-]{1,4}(?P<things>[A-Za-z][A-Za-z,/& -]{2,50}?)[ .:]{0,3}$",
    re.IGNORECASE,
)
_SPACE = re.compile(r"\s")
_POINTING = re.compile(r"(?:(?:the|these|those|all|following) ){0,4}", re.IGNORECASE)
IN_UNIT = re.compile(r",? (?:all )?in (?P<unit>metres|meters|fathoms|feet)$", re.IGNORECASE)
"""The unit of the figures below a class: `depths in feet`."""
_NO_NOUNS = frozenset("covers uncovers dries lies bares is has was as this its breaks".split())
_GOES_ON = re.compile(r"(?:and|or|but|which|that|with|of|in|on|at)(?![a-z-])")
"""Words that go on with the line above: `rock which covers`, and below it `and uncovers`."""
_SENTENCE = re.compile(
    r"\b(?:is|are|was|were|has|have|will|shall|should|must|may|can)\b[^.]{0,80}\.?$"
    r"|(?:^|\s)to keep\b|\badvised\b|\brequested\b",
    re.IGNORECASE,
)
_CLAUSE = re.compile(r"\b(?:that|are|is|been)\b", re.IGNORECASE)
_LISTING = ("the following ", "following ", "these ", "the ")


class ClassHeading(NamedTuple):
    """Such a line, and the words in it for the class."""

    line: Piece
    things: Piece
    verb: Element | None
    """None where the verb stands above the line."""


def with_class_headings(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[ClassHeading]]:
    """The lines with such headings as verbs, and the headings.

    Only where a body opens with one, or a colon ends the command: a line among others may go on
    with what stands above it.  A command that holds its own thing ends the list.
    """
    found = list(lines)
    headings: list[ClassHeading] = []
    rows, opens, is_open = 0, True, False
    for at, line in enumerate(lines):
        heading = (
            class_heading(text, line) if opens or headings or _orders_list(text, line) else None
        )
        if heading is not None and not _heads_items(text, lines[at + 1 :]):
            heading = None
        if heading is not None and heading.verb is not None:
            found[at] = line._replace(elements=(*line.elements[: _lead(line)], heading.verb))
            headings.append(heading)
            rows, is_open = 0, True
            continue
        if not headings:
            opens = opens and (line.is_blank or _introduces(text, line))
        elif is_open and _heads_unread(text, line, headings[-1:], lines[at + 1 :]):
            # `Dangers gone`: what is below it is not under the verb above.
            lost = Element("verb", line.elements[0].start, line.elements[-1].end, True)
            found[at] = line._replace(elements=(lost,))
        elif is_open and not line.is_blank:
            is_open = line.elements[_lead(line)].kind != "verb"
            if not is_open and line.has_only("label", "bar", "verb"):
                # `DELETE`: of the rows below the class is not told.
                verb = line.elements[-1]
                headings.append(ClassHeading((verb.start, verb.end), (verb.end, verb.end), verb))
            found[at] = _with_class(text, line, headings[-1].things, rows) if is_open else line
        rows += not line.is_blank
    return found, headings


_OPENS = re.compile(
    r"(?:the |these |those )?(?:following|undermentioned)\b[^.:;]{0,60}", re.IGNORECASE
)


def with_headings_whole(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, a heading that is broken over two as one: `The following port-hand` above."""
    found = list(lines)
    for at, line in enumerate(lines[:-1]):
        below = lines[at + 1]
        if line.is_blank or below.is_blank or not line.has_only("words"):
            continue
        if _OPENS.fullmatch(text, line.elements[0].start, line.elements[-1].end) is None:
            continue
        whole = below._replace(start=line.start, elements=(*line.elements, *below.elements))
        if class_heading(text, whole) is not None:
            found[at], found[at + 1] = line._replace(elements=()), whole
    return found


def _orders_list(text: str, line: Line) -> bool:
    """Whether a line is a command for a list: `Establish these light-buoys:`, `Delete wrecks:`.

    Or a sentence that tells what is done with one: `The following wrecks are deleted:`.
    """
    elements = line.elements[_lead(line) :]
    if not elements or elements[0].kind != "verb":
        return False
    first = text[elements[0].start : elements[0].end]
    if len(elements) < 2 and not first.lower().startswith(_LISTING):
        return False
    return text[line.start : line.end].rstrip().endswith(":")


def _with_class(text: str, line: Line, things: Piece, rows: int) -> Line:
    """A row with the class before its figure, `6.2  P`, or behind its count, `1  P`."""
    words = [element for element in line.elements if element.kind == "words"]
    figures = [one for one in words if _is_figure(text, one)]
    if len(figures) != 1 or any(tells(text, one) for one in words):
        return line
    figure = figures[0]
    at = line.elements.index(figure)
    named = Element("words", *without_unit(text, things), True)
    count = text[figure.start : figure.end].strip(" .")
    if count == str(rows + 1) and at == 0:
        label = figure._replace(kind="label", value=count)
        return line._replace(elements=(label, named, *line.elements[1:]))
    return line._replace(elements=(*line.elements[:at], named, *line.elements[at:]))


def without_unit(text: str, things: Piece) -> Piece:
    """The words for a class without the unit of its figures: `depths` of `depths in feet`."""
    unit = IN_UNIT.search(text[slice(*things)])
    return things if unit is None else (things[0], things[0] + unit.start())


def _heads_unread(
    text: str, line: Line, above: Sequence[ClassHeading], below: Sequence[Line]
) -> bool:
    """Whether a line that nobody can read stands as the heading above it does."""
    if line.is_blank or not line.has_only("words", "passive", "verb"):
        return False
    start, end = line.elements[0].start, line.elements[-1].end
    if line.elements[0].kind == "verb" and not text[line.elements[0].end : end].strip(" :"):
        # `Insert:` alone can be read, and ends the class.
        return False
    words = text[start:end]
    if any(char.isdigit() or char == '"' for char in words) or _SENTENCE.search(words):
        # `Mariners are advised to keep clear.` is no heading, and its last word no verb.
        return False
    columns = [start - text.rfind("\n", 0, start) for start in (start, above[0].line[0])]
    rows = [row for row in below[:2] if not row.is_blank]
    hang = bool(rows) and rows[0].elements[0].start - rows[0].start + 1 > columns[0]
    stands_alike = hang or are_many(text[start:end].split()[0])
    return columns[0] == columns[1] and stands_alike and _heads_items(text, below)


def _introduces(text: str, line: Line) -> bool:
    """Whether a line above the first heading is a sentence that tells of no change."""
    is_plain = line.has_only("words", "number")
    return is_plain and text[line.start : line.end].rstrip().endswith(".")


def _lead(line: Line) -> int:
    return lead_index(line) if line.elements and line.elements[0].kind in ("label", "bar") else 0


def class_heading(text: str, line: Line) -> ClassHeading | None:
    """What a line heads, as the verb that it commands; None for other lines."""
    elements = line.elements[_lead(line) :]
    if not elements or any(e.kind not in ("words", "passive", "verb") for e in elements):
        return None
    start, end = elements[0].start, elements[-1].end
    if end - start > _LONGEST or announces_places(text, line):
        return None
    said = _SPACE.sub(" ", text[start:end])  # a heading may be broken over two lines
    told = _TOLD.match(said) or _COMMANDED.match(said)
    verb = None if told is None else canonical_verb(told["told"])
    if told is None or verb is None or not are_many(told["things"]):
        return None
    if _CLAUSE.search(told["things"]):
        # `Mariners are advised that the following buoys have been removed:`
        return None
    a, b = told.span("things")
    pointing = _POINTING.match(told.string, a, b)
    a = pointing.end() if pointing is not None else a
    verb_element = Element("verb", start, end, True, verb)
    return ClassHeading((start, end), (start + a, start + b), verb_element)


def are_many(things: str) -> bool:
    """Whether words name things of a class, and not one of them."""
    things = IN_UNIT.sub("", things)
    plain = [word.strip(",:") for word in things.lower().split() if word.strip(",:")]
    if plain[0] in ("a", "an"):
        return False
    last = plain[-1]
    is_plural = last.endswith("s") and any(
        word.endswith("s") and word not in _NO_NOUNS for word in plain
    )
    return last in _CLASSES or (is_plural and has_kind(things))


def _heads_items(text: str, below: Sequence[Line]) -> bool:
    """Whether the line below begins with a thing that has a place, here or on the next lines."""
    rows = [line for line in below[:4] if not line.is_blank]
    if not rows:
        return False
    told = [e for e in rows[0].elements if e.kind not in ("label", "bar")]
    if told and told[0].kind in PLACES:
        # `P  6.2`: the place stands in front.
        return any(tells(text, e) or _is_figure(text, e) for e in told)
    if not told or not (tells(text, told[0]) or _is_figure(text, told[0])):
        return False
    first = text[told[0].start : told[0].end]
    if _GOES_ON.match(first) is not None or not split_phrase(first).description_end:
        return False
    return any(e.kind in PLACES for row in rows[:3] for e in row.elements)


def _is_figure(text: str, element: Element) -> bool:
    return element.kind == "words" and text[element.start].isdigit()
