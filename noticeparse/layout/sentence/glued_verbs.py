"""Verbs close behind a place that command what follows: `P).REMOVE`, `P   To be expunged :`.

A verb with no blank before it opens the next item, and one with a colon that ends its line heads
those below: each begins a line of its own, so that it is not taken for that of the place before
it; so does a second row that was joined to the line (common practice, no published source).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.layout.drafts import Piece
from noticeparse.layout.evidence import OPEN_END, PLACES
from noticeparse.layout.line.elements import Element, Line, has_words
from noticeparse.readers.verbs import canonical_verb

_GLUED = re.compile(r"(?P<stop>[)\]]{0,2}\.)(?P<verb>[A-Z][A-Za-z-]{2,18})(?![A-Za-z-])")


def with_glued_verbs_apart(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[Piece]]:
    """The lines, those with such a verb cut in front of it, and the verbs that end a line."""
    made = [part for line in lines for part in _parts(text, line)]
    known = {line.start for line in lines}
    heads = [one for one in made if one.start not in known and one.has_only("verb")]
    return made, [(_behind_words(text, one.start), one.end) for one in heads]


def _behind_words(text: str, start: int) -> int:
    """Where the marks begin that stand before an offset: `).REMOVE`."""
    while text[start - 1] in ").]":
        start -= 1
    return start


def _parts(text: str, line: Line) -> Iterator[Line]:
    elements = list(line.elements)
    for at in range(1, len(elements)):
        near = elements[max(at - 2, 0) : at + 1]
        if not any(e.kind in PLACES for e in near):
            continue
        cut = _cut(text, elements, at)
        if cut is None:
            continue
        before, behind = cut
        yield line._replace(end=behind[0].start, elements=tuple(before))
        yield from _parts(text, line._replace(start=behind[0].start, elements=tuple(behind)))
        return
    yield line


def _opens_row(text: str, elements: Sequence[Element], at: int) -> bool:
    """Whether a place opens a second row on a line: `P  Insert rock.  Q  Delete buoy`."""
    kinds = [e.kind for e in elements if e.kind not in ("label", "bar")]
    if kinds[:3] != ["point", "verb", "words"] or elements[at].kind != "point":
        return False
    behind = elements[at + 1 : at + 2]
    if elements[at - 1].kind != "words" or not behind or behind[0].kind != "verb":
        return False
    above = text[elements[at - 1].start : elements[at].start].rstrip()
    is_open = above.rpartition(" ")[2].lower() in OPEN_END
    return above.endswith(".") or (elements[at].gap and not is_open)


def _cut(
    text: str, elements: list[Element], at: int
) -> tuple[list[Element], list[Element]] | None:
    """The elements before a verb that stands so, and those from the verb on."""
    element, rest = elements[at], elements[at + 1 :]
    if _opens_row(text, elements, at):
        return elements[:at], [element._replace(gap=True), *rest]
    if element.kind in ("verb", "passive"):
        # In running words, `… P. Entered:` at a line's end opens the sentence below it.
        written = text[element.start : rest[-1].end if rest else element.end].rstrip()
        ends = element.gap and written.endswith(":") and not any(has_words(text, e) for e in rest)
        return (elements[:at], [element._replace(kind="verb")]) if ends else None
    glued = _GLUED.match(text, element.start, element.end) if element.kind == "words" else None
    if glued is None or canonical_verb(glued["verb"]) is None:
        return None
    stop = element._replace(end=glued.end("stop"))
    verb = element._replace(kind="verb", start=glued.start("verb"), end=glued.end(), gap=False)
    words = text[glued.end() : element.end]
    start = glued.end() + len(words) - len(words.lstrip())
    own = [element._replace(start=start)] if start < element.end else []
    return [*elements[:at], stop], [verb, *own, *rest]
