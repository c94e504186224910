"""Lines and the elements they hold.

In comes the repaired text; out come its lines, each with its elements: points, labels, references,
notice numbers, chart words, verbs, and the stretches of words between them.  A word counts as a
verb or a chart head only where one may stand: at the start of a line, behind a wide gap, a bar, a
semicolon, a full stop or a position.  What the line is for is not decided here.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

from noticeparse import grammar
from noticeparse.layout.line.chunks import chunks
from noticeparse.layout.line.element_kinds import KINDS, ElementKind
from noticeparse.layout.line.elements import Element, Line, holds_more, is_count
from noticeparse.layout.line.joints import (
    heads_a_section,
    is_aside,
    is_bullet,
    is_lettered_chart,
    is_note,
    is_number,
    joins_commands,
    leads_on,
    leads_to_place,
    runs_on,
    speaks_of_sheets,
    told_heading,
    verb_of_key,
)
from noticeparse.layout.line.noun_commands import commands_by_noun, leaves_place_above
from noticeparse.layout.line.pairing import Pairing
from noticeparse.layout.line.row_ends import settle_ends
from noticeparse.layout.line.said_of_charts import says_which_chart, tells_of_all_charts
from noticeparse.layout.line.told_leads import with_told_lead
from noticeparse.readers.coordinates import read_coordinate, read_coordinate_in
from noticeparse.readers.positions import PointReading, read_signed_in
from noticeparse.readers.verbs import is_told_by_agent

_ASKS = (". please", "; please")
_RESTRICTED = frozenset({"label", "verb", "chart", "charts_only"})
_PARTICIPLES = (
    "laid", "relaid", "re-laid", "taken ", "struck ", "written ", "drawn ", "gone", "built",
    "found",
)  # fmt: skip
"""Verbs in the past tense that do not end like the others."""
_BEFORE_AN_OPENING = frozenset(
    "label semicolon bar point half reference same number key rule charts_only".split()
)


@cache
def _scanner() -> grammar.Scanner:
    return grammar.scanner("line")


def read_lines(text: str) -> Iterator[Line]:
    """The lines of a repaired text, blank ones included, in order."""
    reader = _LineReader(text)
    for start, end in chunks(text):
        yield from reader.chunk(start, end)


def elements_between(text: str, start: int, end: int) -> tuple[Element, ...]:
    """The elements of a stretch of one line, read as if nothing stood before it."""
    return next((line.elements for line in _LineReader(text).chunk(start, end)), ())


class _LineReader:
    def __init__(self, text: str) -> None:
        self._text = text
        self._row = 0
        self._pairing = Pairing(text)
        self._behind_place = False
        """Whether the line above holds a position."""

    def chunk(self, start: int, end: int) -> Iterator[Line]:
        line_start = start
        tokens: list[tuple[str, int, int]] = []
        for token in _scanner().scan(self._text, start, end):
            if token[0] == "BREAK":
                yield self._line(line_start, token[1], tokens)
                line_start, tokens = token[2], []
            else:
                tokens.append(token)
        if line_start < end:
            yield self._line(line_start, end, tokens)

    def _line(self, start: int, end: int, tokens: list[tuple[str, int, int]]) -> Line:
        row = self._row
        # A coordinate may hold the line break; the lines it takes count all the same.
        self._row += 1 + self._text.count("\n", start, end)
        elements = self._elements(tokens)
        lead = int(len(elements) > 1 and is_count(self._text, elements[0]))
        if (heading := told_heading(self._text, elements[lead:])) is not None:
            # `The following are to be inserted:` commands what stands below it.
            elements = [heading]
        elif led := with_told_lead(self._text, elements):
            elements = led
        elif [e.kind for e in elements] == ["charts_only"] and self._text[
            elements[0].start
        ] not in "([":
            elements = [elements[0]._replace(kind="chart")]
        elif elements and elements[0].kind == "key":
            elements[0] = self._key(elements)
        elif is_note(self._text, elements):
            elements = [Element("words", elements[0].start, elements[-1].end, True)]
        self._behind_place = leaves_place_above(self._text, elements, self._behind_place)
        return Line(row, start, end, tuple(elements))

    def _key(self, elements: list[Element]) -> Element:
        """The key of a line, or the verb `Change:` where a whole item stands behind it."""
        key = elements[0]
        whole = any(e.kind in ("point", "half", "reference") for e in elements[2:])
        # `Changes: Wreck: insert in P` has its verb behind the thing.
        whole = whole and not any(e.kind in ("verb", "passive") for e in elements[1:])
        verb = verb_of_key(self._text, key.start, key.end) if whole else None
        return key if verb is None else key._replace(kind="verb", start=verb[0], value=verb[1])

    def _elements(self, tokens: list[tuple[str, int, int]]) -> list[Element]:
        """The elements of a line; words that follow each other without a gap are one."""
        text = self._text
        self._pairing.begin_line()
        found: list[Element] = []
        words: list[int] = []
        """Start, end and gap of the words under way, or nothing."""
        last_end, behind_bar = -1, True
        for token, start, end in tokens:
            gap = behind_bar or start - last_end >= 2 or text[last_end:start] == "\t"
            behind_bar = False
            kind = KINDS[token]
            if kind == "passive" and tells_of_all_charts(text, start, end):
                kind = "words"
            if end - start == 1 and (last_end < 0 or (gap and text[start] == "·")):
                kind = "bar" if is_bullet(text, start) else kind
            if kind in _RESTRICTED and token != "VERB_THERE":
                if (token == "VERB_NOUN" and (words or holds_more(found))) or (
                    token == "VERB_BY_NOUN"
                    and not commands_by_noun(
                        text, (start, end), found, words, is_below=self._behind_place
                    )
                ):
                    kind = "words"
                else:
                    kind = self._restricted(kind, start, end, gap, found, words)
            if kind == "words":
                last_end = end - 1 if text[end - 1] == " " else end
                if words and not gap:
                    words[1] = last_end
                    continue
                _give_words(found, words)
                words[:] = (start, last_end, gap)
                continue
            _give_words(found, words)
            last_end = end
            if kind == "half" and is_lettered_chart(text, start, end, found):
                found.append(Element("words", start, end, gap))
            elif kind == "half":
                self._pairing.coordinate(found, read_coordinate_in(text, token, start, end), gap)
            elif kind == "point":
                found.append(self._whole(token, start, end, gap))
            else:
                value = text[start:end].strip("().[]:-/ ") if kind == "label" else None
                found.append(Element(kind, start, end, gap, value))
                behind_bar = kind == "bar"
        _give_words(found, words)
        settle_ends(text, found)
        return found

    def _whole(self, kind: str, start: int, end: int, gap: bool) -> Element:
        if kind == "BARE_PAIR":
            figures = self._text[start:end].rstrip(" EW")
            faults = read_coordinate("COORDINATE_BARE", figures, start).faults
            return Element("point", start, end, gap, PointReading(None, faults, start, end))
        if kind == "COORDINATE_ON_SAME":
            return self._on_same(start, end, gap)
        return self._pairing.point(read_signed_in(self._text, start, end), gap)

    def _on_same(self, start: int, end: int, gap: bool) -> Element:
        """The point of a coordinate on the parallel or the meridian of the point before."""
        tokens = _scanner().scan(self._text, start + 1, end)
        found = [one for one in tokens if one[0].startswith("COORDINATE")]
        # Where nothing of it is a coordinate by itself, it is refused as one that is cut.
        kind, at, _ = found[-1] if found else ("COORDINATE_CUT", start, end)
        return self._pairing.on_same(read_coordinate_in(self._text, kind, at, end), start, gap)

    def _restricted(
        self,
        kind: ElementKind,
        start: int,
        end: int,
        gap: bool,
        found: list[Element],
        words: list[int],
    ) -> ElementKind:
        """The kind of an element that may only stand in some places; elsewhere it is words."""
        text = self._text
        before_end = words[1] if words else found[-1].end if found else -1
        if kind == "charts_only":
            # `Items 1 and 2 apply to chart 802 only.` is a sentence; `last corrected by 30/26
            # (both charts)` is the notice before.
            is_of_number = bool(found) and found[-1].kind == "number" and not words
            is_said = bool(words) and not gap and text[start] not in "(["
            return "words" if is_said or is_of_number else kind
        if kind == "label":
            letter = text[start:end].strip("().[]:-/ ")
            behind_key = len(found) == 1 and found[0].kind == "key"
            counts = text[start] == "[" and len(found) == 1 and found[0].kind == "verb"
            behind_key = behind_key or counts
            gap = gap or (not words and (behind_key or text[start - 2 : start] == "; "))
            is_free = gap or (letter.isalpha() and letter.islower())
            return kind if is_free and not (words and before_end == start) else "words"
        behind_dash = text[before_end - 2 : before_end] == " -"
        if kind == "verb" and speaks_of_sheets(text, start):
            return "words"
        is_past = kind == "verb" and _is_past(text, start, end)
        if (
            is_past
            and not (behind_dash and leads_on(text, end))
            and not (text[before_end - 1 : before_end] == ":" and leads_to_place(text, end))
        ):
            # `established in …` behind a line end is prose; a past tense commands only in columns,
            # behind a dash, `buoy - moved to`, and behind a colon: `buoy: removed in position 2`.
            return "words"
        if kind == "chart" and words and not found and says_which_chart(text[words[0] : end]):
            return kind
        if kind == "chart" and not gap and is_aside(text, start, before_end):
            return "words"
        tells = text[start] in "[(" if kind == "verb" else heads_a_section(text, end)
        if gap or tells or before_end < 0 or (not words and found[-1].kind in _BEFORE_AN_OPENING):
            return kind
        if kind == "verb" and joins_commands(text, before_end, end):
            # `… in P and delete …`: behind a position or another verb of the sentence.
            telling = ("verb", "point", "reference", "half")
            if self._behind_place or any(element.kind in telling for element in found):
                return kind
        if kind == "verb" and found and self._is_behind_comma(found[-1], words):
            return kind
        if kind == "verb" and found and found[-1].kind == "chart" and is_number(text, words):
            return kind
        if text[before_end - 1] == "," and (kind == "chart" or text[end : end + 1] == ":"):
            return kind
        asks = kind == "verb" and text[before_end - 8 : before_end].lower() in _ASKS
        if text[before_end - 1] in ".:;)]>/" or behind_dash or asks:
            return kind
        return "words"

    def _is_behind_comma(self, last: Element, words: list[int]) -> bool:
        """Whether only a comma stands between a position and here: `… in P, insert a jetty`."""
        if last.kind not in ("point", "half", "reference"):
            return False
        link = self._text[words[0] : words[1]].strip().lower() if words else ""
        return link in (",", ", and", "; and")


def _is_past(text: str, start: int, end: int) -> bool:
    """Whether a verb in the past tense goes on with a word, and does not say who did it."""
    told = text[start:end].lower()
    is_past = told.endswith("ed") or told.startswith(_PARTICIPLES)
    return is_past and runs_on(text, end) and not is_told_by_agent(text[start:end])


def _give_words(found: list[Element], words: list[int]) -> None:
    if words:
        found.append(Element("words", words[0], words[1], bool(words[2])))
        words.clear()
