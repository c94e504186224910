"""Paragraphs among commands that command nothing: what is said to mariners, notes, plans.

Only what stands behind a blank line or a place, or calls itself a note, and says something in a
sentence is taken out before a body is cut into items; all else may be an item and is never passed
over here.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from noticeparse.layout.body.items_below_remarks import HeldBelow, part_remark
from noticeparse.layout.body.prose import paragraph
from noticeparse.layout.drafts import Piece, Prose
from noticeparse.layout.evidence import lead_index, stands_behind_blank
from noticeparse.layout.line.element_kinds import PLACES, ElementKind
from noticeparse.layout.line.elements import Line
from noticeparse.layout.line.footnotes import is_bracketed_footnote, is_footnote
from noticeparse.layout.line.joints import opens_note
from noticeparse.layout.row.unknown_keys import is_of_key, key_columns, opens_key
from noticeparse.readers.features import has_kind
from noticeparse.readers.misspelt_verbs import is_misspelt_verb
from noticeparse.readers.openings import unknown_first_word
from noticeparse.readers.verbs import canonical_verb

_MODALS = frozenset("will should must shall may advised requested".split())
"""Words of what is to come or to be heeded; no command and no description of a feature."""
_TELLING = frozenset("is are was were has have lies lie keep".split())
"""Words of a sentence that may stand in the description of a feature too."""

_FEWEST_OF_SENTENCE = 5
"""Words of a sentence that tells something; fewer may name a feature."""


class WithoutRemarks(NamedTuple):
    """A body of commands without its remarks, and these."""

    lines: list[Line]
    remarks: list[Prose]
    held: list[HeldBelow]
    """Items that a remark above them may speak of."""


def without_remarks(text: str, lines: Sequence[Line]) -> WithoutRemarks:
    """The lines of a body of commands without its remarks, and the remarks."""
    kept: list[Line] = []
    found: list[Prose] = []
    held: list[HeldBelow] = []
    column: int | None = None
    heads = False
    keys = key_columns(text, lines)
    areas = {line.start: _area(text, line) for line in lines}
    found += [Prose([area], []) for area in areas.values() if area is not None]
    lines = [line._replace(elements=()) if areas[line.start] else line for line in lines]
    blocks = list(_blocks(text, lines, keys))
    for block, following in zip(blocks, [*blocks[1:], []], strict=True):
        if is_of_key(text, block, keys) or (
            _informs(text, block)
            if column is None
            else _is_remark(text, block, column, heads=heads)
        ):
            own, below = (
                (len(block), None) if column is None else part_remark(text, block, following)
            )
            found.append(paragraph(text, [e for line in block[:own] for e in line.elements]))
            kept += block[own:]
            held += [below] if below is not None else []
        else:
            kept += block
            commands = [line for line in block if line.has("verb")]
            heads = _heads(commands[-1]) if commands else heads
            columns = [_lead(line) for line in commands]
            column = min([one for one in (column, *columns) if one is not None], default=None)
    return WithoutRemarks(kept, found, held)


_INFORMED = re.compile(
    r"(?:(?:(?:All )?[A-Z][a-z]{2,14}(?:,? (?:and|or) [a-z]{3,14}){0,2} are|Notice is) "
    r"(?:hereby |also )?(?:informed|advised|notified|given|reminded)|It is (?:hereby )?notified)"
    r"\s{1,20}that\b"
)
"""`Mariners are advised that`: what is said behind it explains the commands below it."""


def _informs(text: str, block: Sequence[Line]) -> bool:
    """Whether a paragraph above all commands informs of them, and has no place of its own."""
    if not block or block[0].is_blank or not all(line.has_only(*_PLAIN) for line in block):
        return False
    ends = text[block[0].start : block[-1].end].rstrip().endswith(".")
    return ends and _INFORMED.match(text, block[0].elements[0].start) is not None


_PLAIN: tuple[ElementKind, ...] = ("words", "passive")

_BETWEEN_MARKS = re.compile(
    r"[ \t]*(?P<mark>\*{1,3}|={1,3}|~{1,3}|-{2,3}|#{1,3}) ?"
    r"(?P<name>[A-Z][A-Za-z' ,.&-]{2,60}?) ?(?P=mark)[ \t]*"
)
_CLASS = re.compile(r"[A-Z][A-Za-z-]{2,20}(?: [a-z-]{2,20})?s?")
"""`** Light-buoys **`: what stands below it may be told by that class."""
_SAYS_MORE = re.compile(
    r"\b(?:charts?|sheets?|plans?|panels?|insets?|only|not|temporary|preliminary|proposed|if|until"
    r"|notices?|cancelled|information|examples?)\b",
    re.IGNORECASE,
)


def _area(text: str, line: Line) -> Piece | None:
    """The name of a part of the sheet on a line between marks: `** Tarn Channel **`."""
    told = None if line.is_blank else _BETWEEN_MARKS.fullmatch(text, line.start, line.end)
    if told is None or not line.has_only("words", "bar"):
        return None
    name = told["name"]
    is_class = _CLASS.fullmatch(name) is not None and has_kind(name)
    is_verb = canonical_verb(name) is not None or is_misspelt_verb(name)
    return None if is_class or is_verb or _SAYS_MORE.search(name) else told.span("name")


def _blocks(text: str, lines: Sequence[Line], keys: frozenset[int]) -> Iterator[list[Line]]:
    """The paragraphs, each blank line one of its own; a note is one up to the next command."""
    block: list[Line] = []
    in_note = False
    column: int | None = None
    for line in lines:
        is_note = opens_key(text, line, keys) or (
            not line.is_blank
            and (_is_footnote(text, line) or opens_note(text[line.elements[0].start : line.end]))
        )
        is_new = is_note or (bool(block) and _begins_remark(text, block[-1], line, column))
        if line.has("verb"):
            column = min(_lead(line), _lead(line) if column is None else column)
        if block and (line.is_blank or is_new or block[-1].is_blank):
            yield block
            block = []
        elif in_note and line.has("verb", "label"):
            yield block
            block, in_note = [], False
        block.append(line)
        in_note = is_new or (in_note and not line.is_blank)
    if block:
        yield block


def _is_footnote(text: str, line: Line) -> bool:
    """Whether a line is the note of a mark above it, and neither a command nor a place."""
    if line.is_blank or line.has("verb", "point", "half"):
        return False
    told = is_bracketed_footnote if line.has("label") else is_footnote
    return told(text, line.elements[0].start, line.end)


def _begins_remark(text: str, above: Line, line: Line, column: int | None) -> bool:
    """Whether a remark begins close below an item; `column` is that of the commands above."""
    if line.is_blank or above.is_blank or line.has("verb", "label", "bar", "point", "half"):
        return False
    return (
        _begins_to_advise(text, above, line)
        or _stands_beside(text, above, line)
        or (column is not None and _closes(text, above, line, column))
    )


def _begins_to_advise(text: str, above: Line, line: Line) -> bool:
    """Whether a sentence to mariners begins close below the place of an item."""
    last = next((e for e in reversed(above.elements) if text[e.start : e.end] != "."), None)
    if last is None or last.kind not in PLACES:
        return False
    words = text[line.start : line.end].replace(",", " ").split()
    return bool(words) and words[0][0].isupper() and not _MODALS.isdisjoint(words)


def _stands_beside(text: str, above: Line, line: Line) -> bool:
    """Whether a sentence stands below a command with its thing, in the same column.

    `The dredger works between the two buoys.`: each item has a verb of its own, and this has none.
    """
    if not line.has_only("words") or not above.has("verb"):
        return False
    if _heads(above) or _lead(above) != _lead(line):
        return False
    return above.elements[lead_index(above)].kind == "verb" and _is_sentence(text, line)


def _is_sentence(text: str, line: Line) -> bool:
    words = text[line.start : line.end].strip()
    opens = words.startswith(("The ", "A ", "An ", "These ", "This ", "All "))
    return opens and words.endswith(".") and len(words.split()) >= _FEWEST_OF_SENTENCE


_CONDITIONS = frozenset(
    "until till if when while only from during after before unless provided except".split()
)


def _closes(text: str, above: Line, line: Line, column: int) -> bool:
    """Whether a line left of all commands, close below the place of an item, closes the list.

    `Sheet closed 14 Aug, J. Amory.`: a capital begins it, and it names no feature and no place.
    """
    if _lead(line) >= column:
        return False
    last = next((e for e in reversed(above.elements) if text[e.start : e.end] != "."), None)
    if last is None or last.kind not in PLACES or not line.has_only("words"):
        return False
    words = text[line.elements[0].start : line.end]
    is_condition = words.split()[0].strip(",.").lower() in _CONDITIONS
    return words[:1].isupper() and not is_condition and not has_kind(words)


def _is_bracketed(text: str, block: Sequence[Line]) -> bool:
    """Whether a paragraph of its own stands in brackets, and says something in a sentence.

    `(The agent says the new wharf is in use already.)` behind a blank line: no words of an item.
    """
    start = block[0].elements[0].start
    said = text[start : block[-1].end].strip()
    if said[:1] + said[-1:] != "()" or "(" in said[1:] or not stands_behind_blank(text, start):
        return False
    if not all(line.has_only("words", "semicolon") for line in block):
        return False
    words = [word.strip(".,;:()") for word in said.split()]
    is_told = not (_MODALS | _TELLING | {"says", "said"}).isdisjoint(words)
    # `(The rock beside it is to be deleted.)` is not passed over.
    commands = any(canonical_verb(word) is not None for word in words)
    return said[1:2].isupper() and said[-2] in ".!" and is_told and not commands


def _heads(line: Line) -> bool:
    """Whether a verb stands alone on its line: what is below it may be one of its items."""
    return line.has_only("verb", "label", "bar")


def _lead(line: Line) -> int:
    return line.elements[lead_index(line)].start - line.start


def _is_remark(text: str, block: Sequence[Line], column: int, *, heads: bool) -> bool:
    if not block or block[0].is_blank:
        return False
    if _is_footnote(text, block[0]):
        return True
    if any(line.has("verb", "label", "bar") for line in block):
        return False
    first = block[0].elements[0]
    words = text[first.start : first.end]
    if opens_note(text[first.start : block[0].end]):
        return True
    if _is_bracketed(text, block):
        return True
    is_sentence = (
        first.kind == "words" and words[0].isupper() and unknown_first_word(words) is None
    )
    in_columns = any(e.gap for line in block for e in line.elements[1:])
    if not is_sentence or in_columns or first.start - block[0].start > column:
        return False
    sentence = text[block[0].start : block[-1].end].replace(",", " ").replace(".", " ")
    if first.start - block[0].start < column and not stands_behind_blank(text, first.start):
        has_place = any(line.has("point", "half", "reference") for line in block)
        return not (has_place or has_kind(sentence))
    told = {words.split()[0].lower(), *sentence.split()}
    if not heads and first.start - block[0].start == column and _is_sentence(text, block[0]):
        return True
    if has_kind(words) and heads:
        return False
    return bool(told & _MODALS) or (bool(told & _TELLING) and not has_kind(words))
