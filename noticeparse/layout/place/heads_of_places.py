"""Lines of places that head what is told below them, and the numbers that a statement names.

`1) P`, `2) Q`, `3) R` and below them `Insert a farm, bounded by corners 1 to 3`: the numbers
belong to the places, and what is told names them.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.layout.drafts import Piece
from noticeparse.layout.evidence import AXIS_WORDS
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.letters import read_letters
from noticeparse.readers.places import read_phrase
from noticeparse.readers.verbs import canonical_verb

_COUNT = re.compile(
    r"(?:(?:corner|point|position|pos\.?|posn\.?|pt\.?|no\.?|nr\.?) ?)?\(?([0-9]{1,2})[.):]?",
    re.IGNORECASE,
)
_ONE = r"\(?[0-9]{1,2}\)?"
_NAMED = re.compile(
    r"(?P<kind>[ ,](?:corners?|points?|positions?|pos\.?|posns?\.?|nos?\.?|numbers?))?"
    rf"[ :]{{1,3}}(?P<all>{_ONE}(?:(?:,? and |, ?|,? & | to | ?- ?){_ONE}){{0,24}})[ .:]{{0,3}}",
    re.IGNORECASE,
)
_A_CIRCLE = re.compile(r"(?:the |a )?circle", re.IGNORECASE)
"""What has a radius and a centre: `In the circle of radius 0.4 M centred on P`."""
_LINKS = frozenset({"joining", "bounded", "within", "between", "along", "from_", "at", "to"})


TITLES_OF_CHANGES = frozenset(
    "action actions changes corrections details matter particulars text".split()
)
"""What may stand between a list of positions and what is to be done at them."""


def is_title_of_changes(text: str, line: Line) -> bool:
    """Whether a line is such a title and nothing else: `Details`."""
    words = text[line.start : line.end].strip(" :.-").lower()
    return words in TITLES_OF_CHANGES and line.has_only("words")


def head_of(text: str, line: Line, counts: Sequence[int]) -> list[Element] | None:
    """The elements of a line of places and words that relate to them alone; None for others.

    One of `counts` may stand before its place, and is then the label of the place.
    """
    found: list[Element] = []
    for index, element in enumerate(line.elements):
        count = count_before(text, line, counts) if index == 0 else None
        if count is not None:
            found.append(element._replace(kind="label", value=str(count)))
        elif element.kind == "words" and not text[element.start : element.end].strip(" -–:,."):
            found.append(element._replace(kind="bar"))
        elif element.kind in (*PLACES, "label", "bar", "semicolon") or (
            element.kind == "words" and _relates(text[element.start : element.end])
        ):
            found.append(element)
        else:
            return None
    return found if any(e.kind in ("point", "half", "reference") for e in found) else None


def named_head(text: str, line: Line, below: Line | None = None) -> list[Element] | None:
    """The label and place of a counted line that names its place, above commands without one.

    `1. Head of the pier, P` and further in below it `- delete light, F.G`: the name tells where,
    and not what is done there.
    """
    kinds = [one.kind for one in line.elements]
    if kinds != ["label", "words", "point"] or below is None or below.is_blank:
        return None
    label, words, place = line.elements
    is_named = text[words.start : words.end].rstrip().endswith((",", ":", " in", " at"))
    told = [one for one in below.elements if one.kind not in ("bar", "label")]
    commands = bool(told) and told[0].kind == "verb" and not below.has(*PLACES)
    if not (is_named and str(label.value).isdigit() and commands):
        return None
    is_within = below.indent(text) > line.indent(text)
    return [label, words._replace(kind="bar"), place] if is_within else None


def count_before(text: str, line: Line, counts: Sequence[int]) -> int | None:
    """The number before the place of a line, where it is one that is awaited."""
    first, *rest = line.elements
    if not rest or rest[0].kind not in ("point", "half") or first.kind not in ("words", "label"):
        return None
    told = _COUNT.fullmatch(text[first.start : first.end].strip())
    return int(told[1]) if told is not None and int(told[1]) in counts else None


def _relates(words: str) -> bool:
    if words.lower().strip(" .:,") in AXIS_WORDS:
        return True
    return all(
        part.kind != "words" or _A_CIRCLE.fullmatch(words, part.start, part.end)
        for part in read_phrase(words)
    )


def head_beside(
    text: str, line: Line, counts: Sequence[int]
) -> tuple[list[Element], list[Element]] | None:
    """The places in front of a command that has none of its own, and the command."""
    verb = next((i for i, e in enumerate(line.elements) if e.kind == "verb"), 0)
    told = list(line.elements[verb:])
    if not verb or len(told) < 2 or any(e.kind in PLACES for e in told):
        return None
    head = head_of(text, line._replace(elements=line.elements[:verb]), counts)
    behind = [e.kind for e in head or () if e.kind not in ("bar", "semicolon")]
    return (head, told) if head is not None and behind[-1] in ("point", "half") else None


_JOINS = re.compile(r"[,;.]?\s{0,4}(?:\band(?: then| also)?|\bthen|[,;.])\s{0,4}$", re.IGNORECASE)
"""What may stand between two commands."""
_VERB_BEHIND = re.compile(r"(?:,| [-–]|:) {1,4}(?P<verb>[A-Za-z]{3,12})\.?$")


def with_verb_behind(text: str, elements: Sequence[Element]) -> list[Element]:
    """The elements of a line; its last word as a verb where a comma parts it: `Rock, delete`."""
    last = elements[-1]
    told = _VERB_BEHIND.search(text[last.start : last.end]) if last.kind == "words" else None
    if told is None or told["verb"].endswith("ed") or canonical_verb(told["verb"]) is None:
        return list(elements)
    verb = Element("verb", last.start + told.start("verb"), last.start + told.end("verb"), False)
    return [*elements[:-1], last._replace(end=last.start + told.start()), verb]


def numbers_named(text: str, words: Sequence[Piece]) -> tuple[list[Piece], tuple[str, ...]]:
    """The words without the numbers of places that they end with, and these numbers.

    `farm, bounded by corners 1 to 4`; behind other words a number is that of a thing: `buoy No 4`.
    """
    if not words:
        return list(words), ()
    start, end = words[-1]
    told = next((m for m in _NAMED.finditer(text, start, end) if m.end() == end), None)
    if told is None:
        return list(words), ()
    before = text[start : told.start()].rstrip(" ,")
    parts = read_phrase(before)
    if not parts or parts[-1].kind not in _LINKS:
        return list(words), ()
    kept = [*words[:-1], (start, start + len(before))]
    return kept, read_letters(re.sub(_ONE, _bracketed, told["all"]))


def _bracketed(number: re.Match[str]) -> str:
    return f"({number[0].strip('()')})"


def commands_of(text: str, statement: list[Element]) -> Iterator[list[Element]]:
    """The commands of a statement: `Insert a wreck; delete the rock`, `… and delete the rock`."""
    at = 0
    for index, element in enumerate(statement):
        if index == 0 or element.kind != "verb" or statement[at].kind != "verb":
            continue
        before = statement[index - 1]
        link = _JOINS.search(text, before.start, before.end)
        if before.kind == "semicolon":
            yield statement[at : index - 1]
        elif before.kind == "words" and link is not None and index - 1 > at:
            yield [*statement[at : index - 1], before._replace(end=link.start())]
        else:
            continue
        at = index
    yield statement[at:]


def names_letter(statement: Sequence[Element]) -> bool:
    """Whether a statement says by a letter at which of the places it is: `the rock at (b)`."""
    kinds = [e.kind for e in statement]
    lead = next((i for i, kind in enumerate(kinds) if kind in ("verb", "words")), len(kinds))
    return "label" in kinds[lead:]
