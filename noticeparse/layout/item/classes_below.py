"""Lines below a verb that head its items by their class: `INSERT`, `Wrecks`, and rows further in.

    Insert
      Wrecks
        least depth 13.7 m      48°04'.66S 126°35'.03W
        position approximate    48°05'.10S 126°35'.80W

Each row below is of that class; it is told again of those that name no kind of their own.  Above
items that command each for itself, `BUOYS` and below it `- Laid: port-hand buoy  P`, such a line
says nothing more, and is no item of the verb above it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.drafts import Piece
from noticeparse.layout.evidence import lead_index
from noticeparse.layout.item.class_headings import ClassHeading, are_many
from noticeparse.layout.item.classes_told import is_its_depth
from noticeparse.layout.item.parts_of_lists import are_wordings, says_what_it_is
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.layout.sentence.lead_words import hangs
from noticeparse.readers.features import has_kind

_CLASS = re.compile(r"[A-Z][A-Za-z]{2,14}(?:[ -][A-Za-z]{3,14}){0,3}s ?:?")
# The same without a plural of its own: `Buoys and beacons`, `Buoyage`.
_CLASSES = re.compile(r"[A-Z][A-Za-z]{2,14}(?:(?:,? and |, | & |[ -])[A-Za-z]{3,14}){0,4} ?:?")


def with_classes_below(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[ClassHeading]]:
    """The lines without such headings, the class told in their rows, and the headings."""
    found: list[Line] = []
    headings: list[ClassHeading] = []
    things: Piece | None = None
    column = 0
    is_under_verb = False
    for at, line in enumerate(lines):
        if line.is_blank:
            found.append(line)
            continue
        indent = line.indent(text)
        if things is not None and indent <= column:
            things = None
        if is_under_verb and _heads(text, line, _next_row(lines, at)):
            start, end = line.elements[0].start, line.elements[-1].end
            things, column = (start, start + len(text[start:end].rstrip(" :"))), indent
            headings.append(ClassHeading((start, end), things, None))
            found.append(line._replace(elements=()))
            continue
        if things is None and _heads_commands(text, lines, at):
            start, end = line.elements[0].start, line.elements[-1].end
            headings.append(ClassHeading((start, end), (start, end), None))
            found.append(line._replace(elements=()))
            continue
        is_under_verb = is_under_verb or line.elements[0].kind == "verb"
        found.append(line if things is None else _told(text, line, things))
    return found, headings


def _next_row(lines: Sequence[Line], at: int, step: int = 1) -> Line | None:
    """The next line below, or with -1 above, that is not blank."""
    at += step
    while 0 <= at < len(lines) and lines[at].is_blank:
        at += step
    return lines[at] if 0 <= at < len(lines) else None


def _heads(text: str, line: Line, row: Line | None) -> bool:
    """Whether a line is a class alone, and the next one a row that stands further in."""
    words = text[line.elements[0].start : line.elements[-1].end]
    if not line.has_only("words") or _CLASS.fullmatch(words) is None or not has_kind(words):
        return False
    if row is None or row.indent(text) <= line.indent(text) or row.has("verb", "passive"):
        return False
    return row.has("words") and row.has(*PLACES)


def _heads_commands(text: str, lines: Sequence[Line], at: int) -> bool:
    """Whether a line is a class alone, between items that have each a verb of their own."""
    line = lines[at]
    words = text[line.elements[0].start : line.elements[-1].end]
    if not line.has_only("words") or _CLASSES.fullmatch(words) is None or not are_many(words):
        return False
    if hangs(words):
        # `During the works:` limits the commands below it.
        return False
    row, above = _next_row(lines, at), _next_row(lines, at, -1)
    if row is None or not _commands(text, row) or line.indent(text) > row.indent(text):
        return False
    is_apart = not at or lines[at - 1].is_blank or words.endswith(":") or lead_index(row) > 0
    is_set_off = words.isupper() and not text[row.start : row.end].isupper()
    is_set_off = is_set_off and not _stands_in_list(lines[:at])
    # Further out than the rows on both sides of it: ` Depths` between `  Insert depth 7 m   P`.
    is_outside = line.indent(text) < min(one.indent(text) for one in (row, above or row))
    if not (is_apart or is_set_off or is_outside):
        # A thing of the verb above whose place was lost.
        return False
    # A line that breaks off goes on with the words below it.
    return above is None or (above.has(*PLACES) and not _breaks_off(text, above))


def _stands_in_list(above: Sequence[Line]) -> bool:
    """Whether the last verb above stands alone on its line, over a list of things."""
    last = next((line for line in reversed(above) if line.has("verb")), None)
    return last is not None and last.has_only("verb", "bar")


def _commands(text: str, row: Line) -> bool:
    """Whether a line opens with a verb and names the thing that is its object."""
    lead = lead_index(row)
    elements = row.elements[lead:]
    if len(elements) < 2 or elements[0].kind != "verb":
        return False
    return has_kind(words_of(text, [e for e in elements[1:] if e.kind == "words"]))


def _breaks_off(text: str, line: Line) -> bool:
    return text[line.start : line.end].rstrip().endswith((",", ";", " and", "-"))


def _told(text: str, line: Line, things: Piece) -> Line:
    """A row with its class in front of its words, where they name no kind."""
    first = next((i for i, one in enumerate(line.elements) if one.kind == "words"), None)
    if first is None or line.has("verb", "passive") or not line.has(*PLACES):
        return line
    words = text[line.elements[first].start : line.elements[first].end]
    is_depth = is_its_depth(text[slice(*things)], words)
    is_wording = are_wordings(text[slice(*things)]) and not says_what_it_is(words)
    is_thing = has_kind(words) and not (is_depth or is_wording)
    if is_thing or not any(map(str.isalnum, words)):
        return line
    named = Element("words", *things, gap=True)
    return line._replace(elements=(*line.elements[:first], named, *line.elements[first:]))
