"""Words that stand where the verbs of a body stand, and are none that is known.

The verb above does not hold for them: `Removed: rock P` above `Fished up: wreck Q` says nothing of
the wreck that may be used.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.layout.evidence import lead_index
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.broken_verbs import broken_verb_end, is_cut_short
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.openings import only_qualifies, unknown_first_word, unknown_infinitive
from noticeparse.readers.places import is_connector

_WORDS_OF_VERB = 4
_LENGTH_OF_CUT = 4
_COURTESY = frozenset(("please", "kindly"))
_PART_OF_CHART = frozenset(("inset",))
"""What is a part of a chart elsewhere, and in the column of the verbs a slip for `insert`."""
_KEYED = re.compile(r"([A-Za-z](?:(?! [-–] )[A-Za-z' -]){1,40})(?::| [-–]) {1,12}(?=\S)")


class VerbPlace(NamedTuple):
    """Where the verbs of a body stand in their lines, and what stands behind them."""

    column: int | None
    """The column in which every line that opens with a verb has it, if that is one column."""
    has_marks: bool = False
    """Whether a colon or dash stands behind a verb that has its item on its own line."""
    has_gaps: bool = False
    """Whether a wide gap stands behind one."""
    has_verbs: bool = False
    """Whether any line opens with a verb."""
    are_cut: bool = False
    """Whether the verbs are cut short, as in telegrams: `Del`, `INS`."""
    things: frozenset[int] = frozenset()
    """The columns in which things stand behind verbs that open their lines."""


def verb_place(text: str, lines: Sequence[Line]) -> VerbPlace:
    """Where the verbs of these lines stand."""
    column = _column(lines)
    own = _behind_verbs(lines)
    things = frozenset(
        behind.start - line.start
        for line in lines
        for _, behind in _behind_verbs([line])
        if behind.kind == "words"
    )
    marks = [text[verb.end : verb.end + 3].lstrip()[:1] in (":", "-", "–") for verb, _ in own]
    gaps = [behind.gap for _, behind in own]
    leads = [line.elements[lead_index(line)] for line in lines if line.elements]
    verbs = [text[lead.start : lead.end] for lead in leads if lead.kind == "verb"]
    are_cut = bool(verbs) and all(len(verb) <= _LENGTH_OF_CUT for verb in verbs)
    return VerbPlace(column, any(marks), any(gaps), bool(verbs), are_cut, things)


def _behind_verbs(lines: Sequence[Line]) -> list[tuple[Element, Element]]:
    """The verbs that open their lines, each with what stands behind it there."""
    found = []
    for line in lines:
        at = lead_index(line) if line.elements else 0
        if len(line.elements) > at + 1 and line.elements[at].kind == "verb":
            found.append((line.elements[at], line.elements[at + 1]))
    return found


def _column(lines: Sequence[Line]) -> int | None:
    """The column in which every line that opens with a verb has it, if that is one column."""
    leads = [(line, line.elements[lead_index(line)]) for line in lines if line.elements]
    columns = [lead.start - line.start for line, lead in leads if lead.kind == "verb"]
    if len(set(columns)) != 1:
        return None
    column = columns[0]
    # A lone word may be a verb above its items, misspelt; it tells nothing of the column.
    others = [
        lead
        for line, lead in leads
        if lead.kind == "words" and lead.start - line.start == column and len(line.elements) > 1
    ]
    # A verb above its items stands in their column; a verb in its own line has words behind it.
    own = any(
        len(line.elements) > lead_index(line) + 1 for line, lead in leads if lead.kind == "verb"
    )
    return column if len(others) < len(columns) or own else None


def verb_index(text: str, line: Line) -> int:
    """The index of the element that stands where a verb may open the line.

    Before words that are no verb the number of a row is no letter: `5   INSET   legend`.
    """
    index = lead_index(line)
    first = line.elements[index]
    is_number = first.kind == "words" and text[first.start : first.end].strip(" .)").isdigit()
    behind = line.elements[index + 1 : index + 2]
    return index + 1 if is_number and behind and behind[0].kind == "words" else index


def unknown_verb_end(
    text: str, line: Line, index: int, verbs: VerbPlace, *, goes_on: bool = False
) -> int | None:
    """Where words end that stand in the place of a verb and are none; None for other words.

    A line that may go on with the item above stands in any column.
    """
    first = line.elements[index]
    words = text[first.start : first.end].rstrip(" :")
    broken = broken_verb_end(words) if verbs.has_verbs else None
    if broken is not None:
        return first.start + broken
    if verbs.column is None or first.start - line.start != verbs.column:
        return None if goes_on else _near_column(text, line, index, verbs)
    if " " in words:
        several = _several_words(text, line, index, verbs)
        if several is not None:
            return several
        head = _unknown_head(words, verbs)
        return None if head is None else first.start + len(head)
    if is_cut_short(words) if verbs.are_cut else words.lower() in _PART_OF_CHART:
        return first.end
    if not words.isalpha() or len(words) < 3 or has_kind(words) or is_connector(words):
        return None
    if len(line.elements) > index + 2 and not line.has("point", "half", "reference", "same"):
        # Several cells and no place: a row of titles.
        return None
    second = line.elements[index + 1] if len(line.elements) > index + 1 else None
    is_verb = second is None or (second.gap and second.kind == "words")
    return first.end if is_verb else None


def _unknown_head(words: str, verbs: VerbPlace) -> str | None:
    """What opens words in the place of a verb, and is none that is known."""
    head = words.partition(" ")[0]
    if verbs.are_cut and is_cut_short(head) and leads_feature(words[len(head) + 1 :]):
        return head
    return unknown_first_word(words) or unknown_infinitive(words)


def _near_column(text: str, line: Line, index: int, verbs: VerbPlace) -> int | None:
    """Where an unknown verb ends that stands beside the column of the verbs, left of the things.

    A blank more or fewer in front of a row does not make a thing of its verb.
    """
    first, behind = line.elements[index], line.elements[index + 1 : index + 2]
    column = first.start - line.start
    if not verbs.things or column >= min(verbs.things) or not line.has("point", "half"):
        return None
    words = text[first.start : first.end].rstrip(" :")
    if verbs.has_gaps and behind and behind[0].gap and behind[0].kind == "words":
        words = f"{words} {text[behind[0].start : behind[0].end]}"
    head = _unknown_head(words, verbs)
    # `Please the rock in P`: there the verb is left out.
    if head is None or head.lower() in _COURTESY:
        return None
    return first.start + len(head)


def _several_words(text: str, line: Line, index: int, verbs: VerbPlace) -> int | None:
    """Where several words end that are parted from a feature as the verbs here are."""
    first = line.elements[index]
    behind = line.elements[index + 1] if len(line.elements) > index + 1 else None
    words = text[first.start : first.end]
    keyed = _KEYED.match(words)
    if verbs.has_marks and keyed is not None:
        head, rest = keyed[1], words[keyed.end() :]
    elif (verbs.has_gaps or verbs.has_marks) and behind is not None and behind.gap:
        head = words.rstrip(" :")
        rest = text[behind.start : behind.end] if behind.kind == "words" else ""
    else:
        return None
    if not is_like_a_verb(head) or is_connector(head) or not leads_feature(rest):
        return None
    return first.start + len(head)


def is_like_a_verb(words: str) -> bool:
    """Whether words are few, without a figure, and tell nothing of a feature: `fished up`."""
    plain = all(word.replace("-", "").replace("'", "").isalpha() for word in words.split())
    if not plain or len(words.split()) > _WORDS_OF_VERB:
        return False
    return " " not in words or not (has_kind(words) or only_qualifies(words))


_FAR = 60


def is_lost_behind_stop(text: str, line: Line, index: int, verb: Element | None) -> bool:
    """Whether words behind a semicolon or stop begin as the verbs do, with a word that is none."""
    if index == 0 or verb is None:
        return False
    words = text[line.elements[index].start : line.elements[index].end]
    before = line.elements[index - 1]
    is_behind_stop = before.kind in PLACES and text[before.end - 1] == "."
    if before.kind != "semicolon" and not is_behind_stop and not words.startswith("/ "):
        return False
    if line.elements[index] is line.elements[-1]:
        # `retain` ends its line, and below it stands what is to be retained.
        words = f"{words} {text[line.end : line.end + _FAR].strip().partition(chr(10))[0]}"
    words = words.removeprefix("/ ")
    if broken_verb_end(words) is not None:
        return True
    first = unknown_first_word(words)
    above = text[verb.start : verb.end]
    if first is None:
        return False
    # A capital may begin a name; in capitals throughout it tells nothing.
    is_other = above.isupper() and words[len(first) :].isupper()
    return first.islower() or (above.isupper() and first.isupper()) or is_other


def is_denied(text: str, verb: Element) -> bool:
    """Whether words before a verb deny it, perhaps on the line above it: `Do not / delete`."""
    before = text[max(verb.start - _FAR, 0) : verb.start].lower().split()
    return bool(before) and before[-1] in ("not", "never", "neither", "nor", "don't")
