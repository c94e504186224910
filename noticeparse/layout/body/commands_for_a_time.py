"""Commands of a temporary notice that say so: `In pencil, move:`, `Until further notice delete:`.

All that such a notice commands goes on the chart in pencil, and for a time: the words that say it
do not limit the command.  In a permanent notice they do, and are left alone here.  Among such
commands the numbered paragraphs that command nothing are what the notice tells.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.layout.body.prose import paragraph
from noticeparse.layout.drafts import Piece, Prose
from noticeparse.layout.evidence import lead_index
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.features import leads_feature
from noticeparse.readers.for_a_time import command_for_a_time, heads_list

_TELLING = re.compile(r"\b(?:is|are|was|were|has|have|had|will|may|shall|should|must|can)\b")


def with_commands_for_a_time(
    text: str, lines: Sequence[Line]
) -> tuple[list[Line], list[Prose], list[Piece]]:
    """The body of a temporary notice, such verbs apart; what it tells besides; words of time."""
    found = {row: made for row, line in enumerate(lines) if (made := _command(text, line))}
    if not found:
        return list(lines), [], []
    body = [found[row].line if row in found else line for row, line in enumerate(lines)]
    marks = {mark for one in found.values() if (mark := _mark(text, one.line)) is not None}
    told = list(_paragraphs(text, body, marks, min(found)))
    taken = {row for rows in told for row in rows}
    prose = [paragraph(text, [e for row in rows for e in body[row].elements]) for rows in told]
    kept = [line._replace(elements=()) if row in taken else line for row, line in enumerate(body)]
    return kept, prose, [piece for one in found.values() for piece in one.of_time]


class _Command(NamedTuple):
    line: Line
    of_time: list[Piece]
    """What stands on it beside the verb, and says for how long or with what."""


def _command(text: str, line: Line) -> _Command | None:
    """The line with the verb of its command apart; None for all other lines."""
    if line.is_blank:
        return None
    lead = lead_index(line)
    start = line.elements[lead].start
    words = text[start : line.end]
    match = command_for_a_time(words)
    if match is None:
        return None
    cut, rest = start + match.end(), words[match.end() :]
    is_head = heads_list(rest)
    if not is_head and (match["told"] or not leads_feature(rest.strip(" :"))):
        return None
    group = match.lastgroup or "verb"
    own = start + match.start(group), start + match.end(group)
    verb = line.elements[lead]._replace(kind="verb", start=own[0], end=own[1], value=None)
    behind = () if is_head else tuple(_behind(text, line.elements[lead:], cut))
    end = line.elements[-1].end if is_head else cut
    if group == "pencil":
        own = (start, start)  # its own words say that it is for a time
    of_time = [(a, b) for a, b in ((start, own[0]), (own[1], end)) if text[a:b].strip(" :")]
    return _Command(line._replace(elements=(*line.elements[:lead], verb, *behind)), of_time)


def _behind(text: str, elements: Sequence[Element], cut: int) -> Iterator[Element]:
    for element in elements:
        if element.start >= cut:
            yield element
        elif (words := text[cut : element.end].lstrip(" :")) and element.end > cut:
            yield element._replace(start=element.end - len(words), gap=False)


def _mark(text: str, line: Line) -> tuple[int, bool] | None:
    """The column of the label of a line, and whether it is a figure."""
    first = line.elements[0] if line.elements else None
    if first is None or first.kind != "label":
        return None
    return first.start - line.start, text[first.start : first.end].strip("().").isdigit()


def _paragraphs(
    text: str, lines: Sequence[Line], marks: set[tuple[int, bool]], first: int
) -> Iterator[list[int]]:
    """The rows of each paragraph that tells something, and stands beside or above the commands."""
    rows: list[int] = []
    for row, line in enumerate(lines):
        opens = line.is_blank or line.elements[0].kind in ("label", "bar") or line.has("verb")
        if opens and rows:
            if _tells(text, [lines[one] for one in rows], marks, is_above=rows[0] < first):
                yield rows
            rows = []
        if not line.is_blank:
            rows.append(row)
    if rows and _tells(text, [lines[one] for one in rows], marks, is_above=rows[0] < first):
        yield rows


def _tells(
    text: str, block: Sequence[Line], marks: set[tuple[int, bool]], *, is_above: bool
) -> bool:
    if any(line.has("verb", "chart", "key") for line in block):
        return False
    if _mark(text, block[0]) not in marks and not is_above:
        return False
    lead = lead_index(block[0])
    words = text[block[0].elements[lead].start : block[-1].end].strip()
    return words[:1].isupper() and words.endswith(".") and _TELLING.search(words) is not None
