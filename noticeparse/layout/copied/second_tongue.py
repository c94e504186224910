"""Lines of a second language below those in English: `Insert  wreck P`, below it `Alvend  vrakka`.

A text is in two languages where a word that is none of the trade stands below the verb that opens
a line, the same below the same verb and another below another.  The words of these lines, and of
those below a thing that hold no word of the trade, say again what stands above: they are left out,
which is told once, and of lines without a verb at each.  Places on them are those of the item
above.  A line with a figure that the one above has not is left in, and told.
Source: common practice, no published source.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Piece
from noticeparse.readers.features import has_kind
from noticeparse.readers.openings import only_qualifies
from noticeparse.readers.places import is_connector
from noticeparse.readers.verbs import canonical_verb
from noticeparse.vocabulary import is_known_word

_LEAD = r"[ \t]{0,80}(?:(?:\(?[a-z0-9]{1,2}[.)]|[-*·])[ \t]{1,6})?"
_VERB = re.compile(rf"{_LEAD}([A-Z][A-Za-z]{{2,20}})\b(?![ ]{{0,2}}/)")
"""A verb that opens its line; one with a stroke has the other language on its own line."""
_FIRST = re.compile(r"[ \t]{0,80}([^\W\d_]{2,24})(?![\w'-])")
_WORDS = re.compile(
    r"[ \t]{0,80}(?P<words>\S(?:[^\n]{0,160}?\S)??)(?=[ \t]{2,}[(]?[-NSEW]?[ ]?[0-9]|[ \t]*$)"
)
"""The words of a line, without the places in a column behind them."""
_FIGURE = re.compile(r"[0-9]+(?:[.,][0-9]+)?")
_WORD = re.compile(r"[^\W\d_]+")
_BEHIND_STROKE = re.compile(
    r"\b(?:to|from|by|at|in|joining|between)(?P<words>[ ]{0,2}/[ ]{0,2}(?P<word>[^\W\d_]{1,12}))"
    r"(?=[ \t]{2}|[ \t]*$)"
)
"""`to / til` before a place: the word behind the stroke leads to it in the other language."""
_NO_VERBS = frozenset("for read chart charts found show changes".split())
"""Words that are forms of a verb, and often open a line that commands nothing."""
_FEWEST = 3
"""Lines below verbs that show the other language."""
_FEWEST_VERBS = 2
_MOST_ALONE = 5
"""One verb among so many may have no such line: the end of a page, an item told anew."""
_MOST_BELOW = 2
_FARTHEST_BELOW = 3
_WIDEST = 200
_LEADS_TO_SEVERAL = re.compile(
    r"\b(?:joining|between|bounded|within|limits?|through|following|from)\b", re.IGNORECASE
)
_PLACE = re.compile(r"[0-9][^A-Za-z\n]{0,12}[NSEW]\b")


class WithoutTongue(NamedTuple):
    """The text with blanks for the words of another language."""

    text: str
    marks: Sequence[Piece] = ()
    faults: tuple[Fault, ...] = ()
    rows: frozenset[int] = frozenset()
    """The lines on which nothing else stands: what is above and below them belongs together."""

    def until(self, end: int) -> tuple[Fault, ...]:
        """The faults that begin before an offset of the text."""
        return tuple(fault for fault in self.faults if fault.start < end)


class _Row(NamedTuple):
    start: int
    text: str


class _Tongue(NamedTuple):
    """The words that stand below verbs, and how far right of them."""

    verbs: frozenset[str]
    offset: int


def without_second_tongue(text: str) -> WithoutTongue:
    """The text without what is said again in another language, and what is told of it."""
    rows, at = [], 0
    for line in text.split("\n"):
        rows.append(_Row(at, line))
        at += len(line) + 1
    tongue = _tongue(rows)
    if tongue is None:
        return WithoutTongue(text)
    marks, others, apart = _said_again(rows, tongue)
    parts, at = [], 0
    for start, end in marks:
        parts += [text[at:start], " " * (end - start)]
        at = end
    told = [("text-second-language", one) for one in marks[:1]]
    told += [("text-said-again", one) for one in others]
    told += [("text-languages-differ", one) for one in apart]
    faults = [Fault(code, start, end, {"written": text[start:end]}) for code, (start, end) in told]
    left = "".join((*parts, text[at:])).split("\n")
    empty = frozenset(i for i, row in enumerate(rows) if row.text.strip() and not left[i].strip())
    return WithoutTongue("\n".join(left), marks, tuple(faults), empty)


def _tongue(rows: Sequence[_Row]) -> _Tongue | None:
    """The words of another language below the verbs of a text, if it has one in all of it."""
    below: dict[str, set[str]] = {}
    offsets: Counter[int] = Counter()
    alone = 0
    for at, row in enumerate(rows):
        verb = _verb(row.text)
        if verb is None:
            continue
        first = _below_verb(verb.start(1), rows[at + 1 : at + 1 + _FARTHEST_BELOW])
        if first is None:
            alone += 1
            continue
        below.setdefault(verb[1].lower(), set()).add(first[1].lower())
        offsets[first.start(1) - verb.start(1)] += 1
    count = offsets.total()
    if count < _FEWEST or alone * _MOST_ALONE > count or len(offsets) > 1:
        return None
    words = [word for told in below.values() for word in told]
    if len(below) < _FEWEST_VERBS or not len(words) == len(below) == len(set(words)):
        return None
    return _Tongue(frozenset(words), next(iter(offsets)))


def _below_verb(column: int, rows: Sequence[_Row]) -> re.Match[str] | None:
    """The strange word below a verb: on the next line, or in its column behind what goes on."""
    for index, row in enumerate(rows):
        first = _FIRST.match(row.text)
        if first is None or _verb(row.text) is not None:
            return None
        is_below = index == 0 or first.start(1) == column
        if is_below and _is_strange(first[1]) and not has_kind(row.text[:_WIDEST]):
            return first
    return None


def _verb(line: str) -> re.Match[str] | None:
    found = _VERB.match(line)
    if found is None or found[1].lower() in _NO_VERBS or canonical_verb(found[1]) is None:
        return None
    return found


def _is_strange(word: str) -> bool:
    """Whether a word is none of the trade, nor one that leads to a place."""
    return canonical_verb(word) is None and not is_known_word(word) and not is_connector(word)


def _said_again(rows: Sequence[_Row], tongue: _Tongue) -> tuple[list[Piece], ...]:
    """Where the words of the other language stand, those without a verb, and those left in."""
    marks: list[Piece] = []
    others: list[Piece] = []
    apart: list[Piece] = []
    column, above, below = None, "", 0
    for row in rows:
        found = _WORDS.match(row.text)
        if found is None:
            if row.text.strip():
                column = None
            continue
        words, start = found["words"], found.start("words")
        verb = _verb(row.text)
        first = words.split()[0].lower().rstrip(":,")
        is_verb_below = first in tongue.verbs and column is not None and not has_kind(words)
        is_below = start == column and below < _MOST_BELOW and _is_other_tongue(words)
        end = found.end("words")
        places = row.text[end:].rstrip()
        is_again = (is_verb_below or is_below) and _repeats(words, above)
        if is_again and (not places or places.strip() in above or _goes_on(above)):
            if places.strip() in above:
                end += len(places)
            marks.append((row.start + start, row.start + end))
            others += [] if is_verb_below else marks[-1:]
            # Below the line of a verb stands what goes on with it, or the next thing.
            below = _MOST_BELOW if is_verb_below else below + 1
            continue
        if is_verb_below:
            apart.append((row.start + start, row.start + end))
        above, below = row.text, 0
        stroke = _BEHIND_STROKE.search(row.text)
        if stroke is not None and _is_strange(stroke["word"]):
            marks.append((row.start + stroke.start("words"), row.start + stroke.end("words")))
        column = _column(row.text, verb, start)
    return marks, others, apart


def _repeats(words: str, above: str) -> bool:
    """Whether words hold no place, and no figure but those of the line above."""
    figures = _FIGURE.findall(above.replace(",", "."))
    own = _FIGURE.findall(words.replace(",", "."))
    return not _PLACE.search(words) and all(one in figures for one in own)


def _goes_on(above: str) -> bool:
    """Whether a place below may be one of the thing above: it has none yet, or a list of them."""
    return not _PLACE.search(above) or _LEADS_TO_SEVERAL.search(above) is not None


def _column(line: str, verb: re.Match[str] | None, start: int) -> int | None:
    """The column of the thing that a line names, None where it names none."""
    if verb is not None:
        behind = line[verb.end() :]
        return verb.end() + len(behind) - len(behind.lstrip(" \t:"))
    words = line.strip()
    is_thing = words[:1].islower() and (has_kind(words) or "legend" in words)
    return start if is_thing else None


def _is_other_tongue(words: str) -> bool:
    """Whether words may say a thing again: in small letters, none of them naming a thing here."""
    plain = _WORD.findall(words)
    if not plain or any(not word.islower() for word in plain) or "/" in words:
        return False
    if has_kind(words) or only_qualifies(words) or not _is_strange(plain[0]):
        return False
    return 2 * sum(map(_is_strange, plain)) > len(plain)
