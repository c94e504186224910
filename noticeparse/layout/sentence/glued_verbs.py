"""Verbs close behind a place that command what follows: `P).REMOVE`, `P   To be expunged :`.

A verb with no blank before it opens the next item, and one with a colon that ends its line heads
those below: each begins a line of its own, so that it is not taken for that of the place before
it; so does a second row that was joined to the line (common practice, no published source).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.layout.drafts import Piece
from noticeparse.layout.evidence import OPEN_END
from noticeparse.layout.line.element_kinds import PLACES
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
    own: list[Element] = []
    start = line.start
    for at, element in enumerate(line.elements):
        if own and any(e.kind in PLACES for e in (*own[-2:], element)):
            cut = _cut(text, own, line.elements[at : at + _WITHIN])
            if cut is not None:
                stop, opening = cut
                yield line._replace(start=start, end=opening[0].start, elements=(*own, *stop))
                own, start = opening, opening[0].start
                continue
        own.append(element)
    if own and own[0].kind == "verb" and start != line.start:
        # The colon of a heading is of the verb itself.
        own = own if any(has_words(text, e) for e in own[1:]) else own[:1]
    yield line._replace(start=start, elements=tuple(own))


_WITHIN = 4
"""Elements that tell whether one of them begins a line of its own."""


def _opens_row(text: str, own: Sequence[Element], ahead: Sequence[Element]) -> bool:
    """Whether a place opens a second row on a line: `P  Insert rock.  Q  Delete buoy`."""
    kinds = [e.kind for e in own[: _WITHIN + 1] if e.kind not in ("label", "bar")]
    place, last = ahead[0], own[-1]
    if kinds[:3] != ["point", "verb", "words"] or place.kind != "point":
        return False
    if last.kind != "words" or len(ahead) < 2 or ahead[1].kind != "verb":
        return False
    above = text[last.start : place.start].rstrip()
    is_open = above.rpartition(" ")[2].lower() in OPEN_END
    return above.endswith(".") or (place.gap and not is_open)


def _cut(
    text: str, own: Sequence[Element], ahead: Sequence[Element]
) -> tuple[list[Element], list[Element]] | None:
    """What of the first element ahead goes with those before it, and what opens a new line."""
    element, *rest = ahead
    if _opens_row(text, own, ahead):
        return [], [element._replace(gap=True)]
    if element.kind in ("verb", "passive"):
        # In running words, `… P. Entered:` at a line's end opens the sentence below it.
        written = text[element.start : rest[-1].end if rest else element.end].rstrip()
        ends = element.gap and written.endswith(":") and not any(has_words(text, e) for e in rest)
        return ([], [element._replace(kind="verb")]) if ends else None
    glued = _GLUED.match(text, element.start, element.end) if element.kind == "words" else None
    if glued is None or canonical_verb(glued["verb"]) is None:
        return None
    stop = element._replace(end=glued.end("stop"))
    verb = element._replace(kind="verb", start=glued.start("verb"), end=glued.end(), gap=False)
    words = text[glued.end() : element.end]
    start = glued.end() + len(words) - len(words.lstrip())
    return [stop], [verb, *([element._replace(start=start)] if start < element.end else [])]
