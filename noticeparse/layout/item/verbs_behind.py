"""Lines that tell behind each thing what is done with it: `Wreck P inserted; pile Q deleted`.

Such a line is cut behind its verbs, so that none is taken for that of the next thing; in a list
under a heading a verb at the end of a row, or within the list, is not that of the rows below it.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterator, Sequence
from itertools import groupby, pairwise, takewhile

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import lead_index, tells
from noticeparse.layout.item.verb_last import FIELD_MARKS, leads_to_new, opens_with_marks
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.readers.verbs import canonical_verb

_VERBS = ("verb", "passive")
_FEWEST = 2
_STOPS = ".;,"
_WIDE = re.compile(r"(?<=[^ ]) {3,80}$")


def with_verbs_behind_apart(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines, those with several verbs behind their things as one for each verb."""
    if _begins_with_verb(lines):
        return list(lines)
    blocks = (list(block) for _, block in groupby(lines, lambda one: one.is_blank))
    return [own for block in blocks for line in _run_on(text, block) for own in _cut(text, line)]


def _run_on(text: str, block: Sequence[Line]) -> Sequence[Line]:
    """A block of lines as one, where its verbs stand behind and its sentences run over lines."""
    if block[0].is_blank or all(_ends_with_verb(text, line) for line in block):
        return block
    if not any(_has_verb_behind_place(line) for line in block):
        # `Pier light P`, and below it `Established`: each verb is told below its thing.
        return block
    if opens_with_marks(block):
        return block
    elements = tuple(element for line in block for element in line.elements)
    whole = block[-1]._replace(start=block[0].start, elements=elements)
    return [whole] if _ends(text, whole) else block


def _has_verb_behind_place(line: Line) -> bool:
    kinds = [one.kind for one in line.elements]
    return "verb" in kinds and any(kind in PLACES for kind in kinds[: kinds.index("verb")])


def _ends_with_verb(text: str, line: Line) -> bool:
    said = [one for one in line.elements if _says(text, one)]
    return bool(said) and said[-1].kind == "verb"


def _begins_with_verb(lines: Sequence[Line]) -> bool:
    """Whether the first verb has no place before it: the verbs lead, and lines may be wrapped."""
    elements = (element for line in lines for element in line.elements)
    before = takewhile(lambda one: one.kind not in ("verb", "passive"), elements)
    return not any(one.kind in PLACES for one in before)


def _cut(text: str, line: Line) -> Iterator[Line]:
    ends = _ends(text, line)
    if len(ends) < _FEWEST:
        yield line
        return
    for start, end in pairwise([0, *ends, len(line.elements)]):
        own = list(line.elements[start:end])
        while own and not any(map(str.isalnum, text[own[0].start : own[0].end])):
            own.pop(0)
        if own and start:
            words = text[own[0].start : own[0].end]
            lead = len(words) - len(words.lstrip(" .;,"))
            own[0] = own[0]._replace(start=own[0].start + lead, gap=True)
        if own:
            yield line._replace(start=own[0].start if start else line.start, elements=tuple(own))


def _ends(text: str, line: Line) -> list[int]:
    """Where a line is to be cut: behind each verb, if all stand behind thing and place."""
    verbs = [index for index, element in enumerate(line.elements) if element.kind == "verb"]
    if len(verbs) < _FEWEST or line.has("passive", "key", "number"):
        return []
    for start, verb in pairwise([-1, *verbs]):
        told = [e for e in line.elements[start + 1 : verb] if _says(text, e)]
        places = [index for index, e in enumerate(told) if e.kind in PLACES]
        if not places or places[-1] != len(told) - 1:
            return []
        # In a telegram the first thing may stand in the head: `CHART 904 WRECK P DELETED. …`
        if start >= 0 and (not tells(text, told[0]) or leads_to_new(text, told[0])):
            return []
    rest = line.elements[verbs[-1] + 1 :]
    if any(_says(text, one) for one in rest):
        # `insert wreck P delete rock Q`: only stops tell that a verb ends its own thing.
        ends = [text[line.elements[verb].end - 1 :].lstrip()[:1] for verb in verbs]
        is_told = text[line.elements[verbs[-1]].end - 1] in ".;"
        if not is_told or any(not end or end not in _STOPS for end in ends[:-1]):
            return []
    return [verb + 1 for verb in verbs]


def _says(text: str, element: Element) -> bool:
    """Whether an element is more than a mark, or the number of an item."""
    if element.kind in ("label", "bar", "semicolon"):
        return False
    return any(map(str.isalnum, text[element.start : element.end]))


def hold_behind_inner_verbs(text: str, lines: Sequence[Line], items: Sequence[Item]) -> None:
    """Hold back what follows, in a list under a heading, on an item with a verb of its own.

    Below `Insert` the list `(a) wreck P`, `(b) delete rock Q`, `(c) pile R` leaves open whether
    the pile is to be deleted too.
    """
    unsure = lines if _stand_below(text, lines) else list(_unsure_lines(text, lines))
    held = {line.start for line in unsure}
    starts = [line.start for line in lines]
    above = _last_verbs(lines)
    for item in items:
        if item.verb is None or not item.words:
            continue
        start, end = item.words[0][0], item.pieces[-1][1]
        at = bisect_right(starts, start) - 1
        own = lines[at] if at >= 0 and start < lines[at].end else None
        of_list = unsure is lines or not item.verb_piece
        is_unsure = of_list and own is not None and own.start in held
        if is_unsure or _has_verb_of_row(text, item, own, above[at] if at >= 0 else None):
            written = {"written": text[start : max(end for _, end in item.pieces)]}
            item.faults.append(Fault("item-without-verb", start, end, written))


def _last_verbs(lines: Sequence[Line]) -> list[Line | None]:
    """For each line the last one above it that has a verb."""
    found: list[Line | None] = []
    last: Line | None = None
    for line in lines:
        found.append(last)
        last = line if line.has("verb") else last
    return found


def _has_verb_of_row(text: str, item: Item, own: Line | None, above: Line | None) -> bool:
    """Whether an item has the verb of a row above it, or not the verb of its own row.

    In `rock / P / insert`, and below it `wreck / Q / delete`, each verb is that of its row.
    """
    if item.verb_piece is not None and item.verb_piece[0] > item.words[0][0]:
        return False
    verb = canonical_verb(item.verb or "")
    if own is not None and _is_row(text, own) and verb != _verb(text, own.elements[-1]):
        return True
    if above is None or not _is_row(text, above) or verb != _verb(text, above.elements[-1]):
        return False
    ends = [_verb(text, e) for e in own.elements if e.kind == "verb"] if own else []
    return verb not in ends


def _is_row(text: str, line: Line) -> bool:
    """Whether a line is whole in itself: thing, place, and in a field of its own the verb."""
    if line.is_blank or line.elements[-1].kind != "verb":
        return False
    *before, verb = line.elements
    told = [e for e in before if _says(text, e)]
    if not told or told[-1].kind not in PLACES or any(e.kind in _VERBS for e in before):
        return False
    marks = (*FIELD_MARKS, ",") if before[0].kind in ("label", "bar") else FIELD_MARKS
    in_field = verb.gap or text[before[-1].start : verb.start].rstrip().endswith(marks)
    return in_field and any(tells(text, e) for e in told)


def _stand_below(text: str, lines: Sequence[Line]) -> bool:
    """Whether verbs alone on their lines may stand below their things: `P`, `Wreck`, `Insert`."""
    told = [line for line in lines if not line.is_blank]
    verbs = [index for index, line in enumerate(told) if line.has("verb", "passive")]
    if not verbs or verbs[0] == 0 or not all(_is_heading(text, told[index]) for index in verbs):
        return False
    if any(line.has("label") for line in told[: verbs[0]]):
        return False
    if any(line.has(*PLACES) and any(tells(text, one) for one in line.elements) for line in told):
        # A thing with its place on one line, and below it what became of it.
        return False
    is_last = verbs[-1] == len(told) - 1
    has_thing = any(tells(text, one) for line in told[: verbs[0]] for one in line.elements)
    following = [told[index + 1] for index in verbs if index + 1 < len(told)]
    return has_thing and (is_last or all(one.elements[0].kind in PLACES for one in following))


def _unsure_lines(text: str, lines: Sequence[Line]) -> Iterator[Line]:
    """The lines without a verb behind one that changes that of its heading."""
    heading: Line | None = None
    changed = side_by_side = False
    for line in lines:
        if line.is_blank:
            heading, changed = None, False
        elif _is_heading(text, line):
            heading, changed = line, False
        elif heading is not None and _is_of_list(text, heading, line):
            verb = line.elements[lead_index(line)]
            if verb.kind == "verb":
                changed = _verb(text, verb) != _verb(text, heading.elements[0])
            elif changed and not line.has("verb", "passive"):
                yield line
        elif heading is not None and line.elements[lead_index(line)].kind == "verb":
            heading, changed = None, False
        if not line.is_blank and line.has("verb"):
            side_by_side = _has_columns(text, line)
        elif side_by_side and not line.is_blank and not line.has("passive"):
            yield line
        else:
            side_by_side = False


def _has_columns(text: str, line: Line) -> bool:
    """Whether commands stand side by side: whose is what stands below them is not told."""
    verbs = [index for index, element in enumerate(line.elements) if element.kind == "verb"]
    return any(
        line.elements[at - 1].kind == "bar" or _WIDE.search(text, 0, line.elements[at].start)
        for at in verbs[1:]
    )


def _is_heading(text: str, line: Line) -> bool:
    first = line.elements[0]
    return first.kind == "verb" and not any(_says(text, one) for one in line.elements[1:])


def _is_of_list(text: str, heading: Line, line: Line) -> bool:
    """Whether a line stands further in than the heading, or has a letter where that has none."""
    return line.elements[0].kind == "label" or line.indent(text) > heading.indent(text)


def _verb(text: str, verb: Element) -> str | None:
    return canonical_verb(words_of(text, [verb]).strip(" .:()"))
