"""What a row or a record of keys tells besides items: its notice, its source, information."""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.body.items_below_remarks import ends_above
from noticeparse.layout.body.prose import paragraph
from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import NoticeDraft, Prose
from noticeparse.layout.evidence import OPEN_END, tells
from noticeparse.layout.line.elements import Element, Line, has_words, words_of
from noticeparse.layout.line.halves import join_points
from noticeparse.layout.line.joints import opens_note
from noticeparse.layout.row.place_keys import opens_with_key
from noticeparse.layout.sentence.sentences import sentences
from noticeparse.layout.table.carried_verbs import PLACES_OF_RECORD, CarriedVerb
from noticeparse.layout.table.row_heads import HEAD_CELLS
from noticeparse.readers.references import is_marked
from noticeparse.readers.unchanged import changes_nothing, is_for_information

NAMING_CELLS = frozenset({*HEAD_CELLS, "notice", "year", "status", "previous"})
"""Roles of what names notice and chart of a row, and is no part of what the row says."""
_COUNT = re.compile(
    r"[0-9]{1,3}(?: ?(?:of|/) ?[0-9]{1,3})?[.)]?|[(\[]?(?:[0-9]{1,3}|[a-z])[)\]]", re.I
)
_OF_SENTENCES = frozenset({"words", "chart", "verb", "passive"})
"""Elements that a line may open with, in small letters, in the middle of a sentence."""
_AXES = {"latitude", "longitude"}
_PLACES = frozenset("position numbered latitude joining bounded centred from old".split())


def is_information(text: str, notice: NoticeDraft | None, verb: Sequence[Element]) -> bool:
    """Whether the words in the place of the verb say that a row is only to be known.

    A temporary notice need say no more than `none`.
    """
    words = words_of(text, verb).strip()
    if is_for_information(words):
        return True
    marked = notice is not None and is_marked(notice.number_words)
    return marked and changes_nothing(words)


def is_note_row(assembly: Assembly, cells: Cells) -> bool:
    """Whether a row is a note, or one without a verb under a temporary notice."""
    notice = assembly.notice
    is_marked_row = notice is not None and is_marked(notice.number_words)
    is_told = is_information(assembly.text, notice, cells.get("verb", []))
    return is_told or (is_marked_row and "verb" not in cells)


class Remark:
    """A remark behind its key, and the lines below it that are more of it."""

    def __init__(self, text: str, line: Line, values: list[Element]) -> None:
        self._text = text
        self._lines = [line]
        self._elements = list(values)
        self.prose = paragraph(text, values)

    def goes_on(self, line: Line) -> bool:
        """Take a line right below that goes on with the sentence."""
        if line.row != self._lines[-1].row + 1 or line.is_blank:
            return False
        first = line.elements[0]
        if ends_above(self._text, self._lines, line):
            return False
        is_more = self._text[first.start].islower() and first.kind in _OF_SENTENCES
        is_more |= self._is_open_before(first)
        if is_more:
            self._lines.append(line)
            self.prose.pieces += [(e.start, e.end) for e in line.elements]
            self._elements += line.elements
            self.prose.elements[:] = join_points(self._text, self._elements)
        return is_more

    def _is_open_before(self, first: Element) -> bool:
        """Whether a place belongs to the words above: `in 46 38.40 S`, or `in` alone."""
        last = self._elements[-1]
        if last.kind == "half" and first.kind == "half":
            return {last.value.axis, first.value.axis} == _AXES
        ends = self._text[last.start : last.end].rsplit(None, 1)[-1].lower()
        return first.kind in ("point", "half") and last.kind == "words" and ends in OPEN_END


def settled_role(assembly: Assembly, record: Cells, role: str, values: Sequence[Element]) -> str:
    """The role of a value where what stands above it tells more than its key."""
    notice = assembly.notice
    marked = notice is not None and is_marked(notice.number_words)
    if role == "feature" and values and not record and marked:
        # `Details:` of a temporary notice, behind which no command stands: its body in prose.
        role = "remark" if all(e.kind != "verb" for e in values) else role
    told = words_of(assembly.text, record.get("feature", [])).lower().strip(" ,.:")
    if role == "remark" and values and told.endswith(("legend", "note")):
        # `Text:` in the record of a legend or note gives its words.
        return role if "legend" in record else "legend"
    return role


def counts_record(text: str, role: str, values: Sequence[Element], below: Line | None) -> bool:
    """Whether a key only counts the record below it: `Correction: 1 of 4`, `Item: (b)`."""
    if not opens_with_key(text, below) or role not in ("verb", "feature", "items"):
        return False
    return _COUNT.fullmatch(" ".join(text[e.start : e.end] for e in values)) is not None


def ends_value(text: str, value: Sequence[Element], line: Line) -> bool:
    """Whether a line without a key commands something of its own, or is a note, and no value."""
    first = line.elements[0]
    if first.kind != "verb":
        return opens_note(text[first.start : line.end])
    placed = any(one.kind in ("point", "half", "reference") for one in value)
    # `Insert wreck, P` is whole; a small verb may go on with a sentence.
    is_whole = text[first.start].isupper() and line.has("words") and line.has("point", "half")
    return placed or is_whole or text[first.end : line.end].lstrip()[:1] == ":"


def stands_left_of_key(text: str, key: Element, value: Sequence[Element], line: Line) -> bool:
    """Whether words stand left of the key above them, whose value is a place: none of its own.

    MOVED   port-hand buoy
            is in: 47-01.41S 123-15.33W
    NEW     tide gauge
    """
    first = line.elements[0] if line.elements else None
    if first is None or first.kind != "words" or not tells(text, first):
        return False
    if not any(one.kind in ("point", "half", "reference") for one in value):
        return False
    column = key.start - (text.rfind("\n", 0, key.start) + 1)
    return first.start - line.start < column and not opens_with_key(text, line)


def goes_on_with_notice(assembly: Assembly, line: Line, number: Element) -> bool:
    """Whether a record names the notice anew that the one above it named."""
    notice = assembly.notice
    solid = [e for e in line.elements if has_words(assembly.text, e)]
    if notice is None or notice.number_words != assembly.words(number):
        return False
    kinds = [e.kind for e in solid[:3]]
    if kinds[:2] != ["key", "number"] or kinds[2:] not in ([], ["chart"]):
        return False
    notice.repeats = True
    notice.clauses.append((solid[0].start, number.end))
    return True


def opens_record(
    assembly: Assembly, record: Cells, role: str, key: Element, carried: CarriedVerb
) -> bool:
    """Whether the key of a notice, chart or verb opens the next record, the one above being whole.

    The first record then had the same key above it, as a head; that of a verb within it.
    """
    has_verb = carried.holds_for(assembly.notice, record)
    if role == "verb":
        return has_verb
    if not has_verb and "verb" not in record:
        return False
    if role in record or record.keys().isdisjoint(PLACES_OF_RECORD):
        return False
    if role == "notice":
        notice = assembly.notice
        if notice is None or notice.number is None:
            return False
        above = assembly.text[notice.start : notice.number.start]
    elif role == "chart":
        chart = assembly.charts[-1] if assembly.charts else None
        if chart is None or not chart.head or chart.number is not None or chart.items:
            return False
        above = assembly.text[slice(*chart.head[0])]
    else:
        return False
    before, now = (words.split(":")[0].split() for words in (above, assembly.words(key)))
    # `Chart: 802` above, and now `Charts: 803, 804`.
    return ":" in above and now in (before, [*before[:-1], f"{before[-1]}s"])


def without_statements(
    text: str, role: str, values: list[Element]
) -> tuple[list[Element], list[Element]]:
    """What a key says of the notice, and the sentences behind it, which are of its body."""
    said = list(sentences(text, values))
    for index, sentence in enumerate(said):
        if role == "heading":
            commands = any(e.kind in ("verb", "passive") for e in sentence)
            behind = [e for one in said[index:] for e in one]
            placed = any(e.kind in ("point", "half", "reference") for e in behind)
            is_statement = commands and placed
        else:
            is_statement = index > 0 and role != "source"
        if is_statement:
            kept = [e for one in said[:index] for e in one]
            return kept, [e for one in said[index:] for e in one]
    return values, []


def give_source(assembly: Assembly, cells: Cells) -> None:
    """Give the source that a record names to its notice, and what unknown keys say."""
    if aside := cells.pop("aside", []):
        assembly.add_prose(Prose([(aside[0].start, aside[-1].end)], []))
    if assembly.notice is not None:
        assembly.notice.sources += [(e.start, e.end) for e in cells.pop("source", [])]


def give_information(assembly: Assembly, cells: Cells) -> bool:
    """Keep a record that is for information only as a remark of its notice."""
    if not is_information(assembly.text, assembly.notice, cells.get("verb", [])):
        return False
    told = sorted(
        (e for role, cell in cells.items() if role not in NAMING_CELLS for e in cell),
        key=lambda e: e.start,
    )
    kept = [e for e in told if has_words(assembly.text, e)]
    assembly.end_body()
    assembly.add_prose(Prose([(e.start, e.end) for e in kept], kept))
    return True
