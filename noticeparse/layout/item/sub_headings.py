"""Lines above items that hold no verb: the names of waters, and headings that nobody can read."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.layout.column.columns import column_role
from noticeparse.layout.evidence import lead_index
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.broken_verbs import broken_verb_end, is_spaced_verb
from noticeparse.readers.features import has_kind, value_property
from noticeparse.readers.places import is_connector
from noticeparse.readers.verbs import canonical_verb

_LONGEST_HEADING = 60
_OF_NAMES = frozenset("of the and in at on off to near de du la le".split())


_BOTH = re.compile(
    r"[^\W\d_]{2,20}(?: [^\W\d_]{2,20}){0,2} ?/ ?[^\W\d_]{2,20}(?: [^\W\d_]{2,20}){0,2}"
)
_NOT_A_VERB = re.compile(r"(?:north|south|east|west|outer|inner|upper|lower|new|old)[a-z]*", re.I)


class VerbHeadings(NamedTuple):
    """In which ways verbs stand alone above their items."""

    are_ruled: bool
    """Between rules: `==== INSERT ====`."""
    are_double: bool
    """In two languages: `Insertar / Insert`."""


def verb_headings(text: str, lines: Sequence[Line]) -> VerbHeadings:
    """How the verbs of a body head their items."""
    ruled = double = False
    for line in lines:
        verbs = [e for e in line.elements if e.kind == "verb"]
        others = [text[e.start : e.end].strip() for e in line.elements if e.kind != "verb"]
        if len(verbs) != 1:
            continue
        is_bare = not any(any(map(str.isalnum, other)) for other in others)
        ruled |= is_bare and any(len(other) > 1 for other in others)
        double |= is_bare and "/" in text[verbs[0].start : verbs[0].end]
        double |= len(others) == 1 and others[0].endswith("/")
    return VerbHeadings(ruled, double)


def is_lost_heading(text: str, line: Line, verbs: VerbHeadings) -> bool:
    """Whether a line stands as the verb headings do, and is none: `==== DaLETE ====`.

    The names of waters stand so too; of those two languages agree, or they are words of the trade.
    """
    if not (verbs.are_ruled or verbs.are_double) or not line.has_only("words", "rule", "bar"):
        return False
    said = [e for e in line.elements if any(map(str.isalnum, text[e.start : e.end]))]
    if len(said) != 1:
        return False
    words = text[said[0].start : said[0].end].strip(" -=*#_:.")
    is_ruled = len(line.elements) > 1 or len(text[line.start : line.end].strip()) > len(words) + 3
    is_double = _BOTH.fullmatch(words) is not None
    if not ((verbs.are_ruled and is_ruled) or (verbs.are_double and is_double)):
        return False
    parts = [part.strip() for part in words.split("/")]
    if any(broken_verb_end(part) == len(part) for part in parts):
        return True
    if any(" " in part or _NOT_A_VERB.match(part) for part in parts):
        return False
    return all(value_property(part) == {"unknown"} for part in parts) and len(set(parts)) > 1


def is_title_of_waters(text: str, line: Line, lines: Sequence[Line]) -> bool:
    """Whether a line in capitals above all verbs names the waters of the chart."""
    if line is not lines[0] or len(line.elements) != 1 or len(lines) < 2:
        return False
    words = text[line.start : line.end]
    below = lines[1].elements
    is_plain = words.isupper() and not any(char.isdigit() for char in words)
    return is_plain and bool(below) and below[0].kind == "verb"


def is_unknown_heading(text: str, line: Line, verbs: VerbHeadings) -> bool:
    """Whether a line heads the items below it by words that nobody can read: `No longer there:`.

    A name in capitals, as of waters, heads them too, and leaves the verb above in force.
    """
    if is_lost_heading(text, line, verbs):
        return True
    if not line.has_only("words", "passive", "bar"):
        return False
    words = text[line.elements[0].start : line.elements[-1].end].strip(" -*·>")
    if is_spaced_verb(words.rstrip(" :.")):
        return True
    if len(words) > _LONGEST_HEADING or has_kind(words):
        return False
    plain = [word for word in words.rstrip(" :").split() if word.isalpha()]
    if not words.endswith(":"):
        # `RELOCATED ON SITE` in capitals, among other verbs of the kind.
        stands_alone = words.isupper() and len(line.elements) == 1
        return stands_alone and any(canonical_verb(word) for word in plain)
    is_name = all(word[0].isupper() or word in _OF_NAMES for word in plain)
    return bool(plain) and not is_name and not is_connector(words.rstrip(" :"))


def is_title_above(text: str, line: Line, below: Line | None) -> bool:
    """Whether a verb is a word of a title: `PORT ELLORY - change forms for charts`."""
    verbs = [element for element in line.elements if element.kind == "verb"]
    lead = line.elements[lead_index(line)]
    small = all(text[verb.start].islower() for verb in verbs)
    return small and lead not in verbs and below is not None and below.is_blank


def heads_columns(text: str, elements: Sequence[Element]) -> bool:
    """Whether a line holds several verbs beside titles of columns: `Position  Delete  Insert`."""
    if sum(e.kind == "verb" for e in elements) < 2:
        return False
    others = [text[e.start : e.end] for e in elements if e.kind not in ("verb", "bar")]
    titles = [part for words in others for part in re.split(r" {2,}|\t|\|", words) if part.strip()]
    return bool(titles) and all(column_role(title.strip()) is not None for title in titles)


def are_verbs(text: str, elements: Sequence[Element]) -> bool:
    """Whether a line holds verbs and marks alone; a colon may stand behind each of several."""
    if any(e.kind not in ("verb", "bar", "words") for e in elements):
        return False
    kinds = [
        e.kind
        for e in elements
        if e.kind != "words" or any(char.isalnum() for char in text[e.start : e.end])
    ]
    alone = {*kinds} in ({"verb"}, {"verb", "bar"})
    return alone and (len(kinds) == len(elements) or kinds.count("verb") > 1)
