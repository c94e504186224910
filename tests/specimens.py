r"""The specimens of the catalogue, read: a bad one gives its finding, a good one gives none.

A specimen is the body of a notice for a metric chart, put under `HEAD`; a whole text where it
names a chart or a notice number of its own at the start of a line; one light, as the command
`light` reads it; or a list of charts.  What is held against a list is read with that of `sheets`.
`\\xe9` in it stands for the byte E9, to show what is no UTF-8.  What only a file
shows is put into one by `file_specimens`.
"""

from __future__ import annotations

import re
from typing import NamedTuple

from noticeparse import NoticeParseError, parse_light
from noticeparse.catalogue import ENTRIES, chart_lists, files, sheets
from noticeparse.chart_list import read_list
from noticeparse.faults import pointed
from noticeparse.files import read_intake
from noticeparse.intake import decode, read
from noticeparse.parts import Terms, read_parts
from noticeparse.pipeline import read_bulletin
from noticeparse.readers.lights import read_aids, read_light
from noticeparse.records.finding import Severity
from tests.file_specimens import file_with
from tests.short_notices import HEAD

# In a notice the words behind a light or an aid belong to the feature; these codes are for what
# is given as one light alone.
OF_ONE_LIGHT = frozenset(
    {
        "aid-remark-not-kept",
        "light-axis-not-kept",
        "light-group-out-of-place",
        "light-leftover-figure",
        "light-leftover-words",
        "light-several",
        "sector-unreadable",
        "sound-range-not-kept",
    }
)
# The grammar of a feature hands on only what begins as an aid; the reader tells of all else.
OF_ONE_AID = frozenset({"aid-unreadable"})

# What is told of a list of charts itself, and of a notice that is held against one.
OF_A_LIST = frozenset(entry.code for entry in chart_lists.ENTRIES)
AGAINST_A_LIST = frozenset(entry.code for entry in sheets.ENTRIES)

# What is told of a text that is too long to be read as one; here that is one of a few lines.
OF_PARTS = frozenset({"text-cut", "text-in-parts"})
_MOST_AS_ONE = 60

# What a file shows and its text does not.
OF_A_FILE = frozenset(entry.code for entry in files.ENTRIES)

# Codes of what is no notice, or none that a text gives.
OF_A_VALUE = OF_ONE_LIGHT | OF_ONE_AID | OF_A_LIST | OF_PARTS | OF_A_FILE

_WHOLE = re.compile(r"(?:Chart |(?s:.*^)[0-9]+(?:\([TP]\))?/[0-9]+ )", re.MULTILINE)
_BYTE = re.compile(rb"\\x([0-9a-f]{2})")


class Told(NamedTuple):
    """A finding, its stretch counted from the start of the specimen."""

    code: str
    severity: Severity
    start: int
    end: int
    message: str


def told_of(code: str, text: str) -> list[Told]:
    """What is told of a specimen of `code`, without its marks."""
    if code in OF_A_LIST:
        return _of_list(text)
    if code in OF_ONE_LIGHT | OF_ONE_AID:
        return _of_value(code, text)
    if code in OF_PARTS:
        return [one for one in _of_parts(text) if one.code == code]
    given = under_head(text)
    before = given.index(text)
    if code in OF_A_FILE:
        return _of_file(code, given[:before], text)
    if _BYTE.search(text.encode("utf-8", "surrogatepass")):
        intake = decode(_BYTE.sub(_as_byte, given.encode("utf-8")), "specimen.txt")
        bulletin = read_bulletin(intake.text, faults=intake.faults)
    else:
        charts = read_list(sheets.SPECIMEN_LIST) if code in AGAINST_A_LIST else None
        bulletin = read_bulletin(given, charts=charts)
    found = []
    for one in bulletin.findings:
        assert one.span is not None
        start, end = one.span.start - before, one.span.end - before
        # Four signs of the specimen are one byte of the text.
        end += 3 * len(_BYTE.findall(text[start : end + 3].encode("utf-8", "surrogatepass")))
        found.append(Told(one.code, one.severity, start, end, one.message))
    return found


def _of_list(text: str) -> list[Told]:
    try:
        findings = read_list(text).findings
    except NoticeParseError as error:
        findings = [error.finding]
    return [
        Told(one.code, one.severity, one.span.start, one.span.end, one.message)
        for one in findings
        if one.span is not None
    ]


def _of_parts(text: str) -> list[Told]:
    """What is told of a text that may be longer than what is read as one."""
    terms = Terms(whole=_MOST_AS_ONE, part=_MOST_AS_ONE // 2)
    return [
        Told(one.code, one.severity, one.span.start, one.span.end, one.message)
        for part in read_parts([text], terms)
        for one in part.findings
        if one.span is not None
    ]


def _of_file(code: str, head: str, text: str) -> list[Told]:
    """What is told of a text in a file that shows the fault of the code, or no fault."""
    plain, start, end = pointed(ENTRIES[code].bad)
    marked = (start + len(head), end + len(head)) if text == plain else None
    intake = read(*file_with(code, head + text, marked))
    assert intake.text.rstrip("\n") == (head + text).rstrip("\n")
    return [
        Told(
            one.code,
            one.severity,
            one.span.start - len(head),
            one.span.end - len(head),
            one.message,
        )
        for one in read_intake(intake).findings
        if one.span is not None
    ]


def _as_byte(match: re.Match[bytes]) -> bytes:
    return bytes([int(match[1], 16)])


def _of_value(code: str, text: str) -> list[Told]:
    faults = (read_aids if code in OF_ONE_AID else read_light)(text).faults
    found = [
        Told(
            one.code,
            ENTRIES[one.code].severity,
            one.start,
            one.end,
            ENTRIES[one.code].message.format(**one.values),
        )
        for one in faults
    ]
    try:
        parse_light(text)
    except NoticeParseError as error:
        one = error.finding
        if one.code == "light-several" and one.span is not None:
            found.append(Told(one.code, one.severity, one.span.start, one.span.end, one.message))
    return found


def under_head(text: str) -> str:
    """A specimen as a whole text, under `HEAD` where it has no head of its own."""
    return ("" if _WHOLE.match(text) else HEAD) + text + "\n"


def bad_text(code: str) -> str:
    """The whole text of a bad specimen, for those that are no single value."""
    return under_head(pointed(ENTRIES[code].bad).text)
