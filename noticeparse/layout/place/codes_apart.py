"""Codes of listed places that stand apart from the words: `wreck (P1)`, `wreck          A`.

In come the words of a line and the codes that a list gives to its places; out come the words
without such codes, and the codes as references.  What is led to, `at A`, is read elsewhere.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.letters import read_letters

CODE = "[A-Z]{1,2}[0-9]{0,2}"
"""The letter of a place, or letters with a number."""
_CODES = rf"{CODE}(?:(?:, ?and |, ?| and | & | ?- ?| to ){CODE}){{0,24}}"
_IN_BRACKETS = re.compile(
    rf"(?<=[ \t])(?<!acon )(?<!ACON )(?:\({_CODES}\)|\[{_CODES}\])(?=[ \t]*[.;,]?(?:[ \t\n]|$))"
)
_ALONE = re.compile(rf"(?:[(\[]{_CODES}[)\]]|{_CODES})[.;,]?")


def codes_apart(text: str, line: Line, codes: set[str]) -> Iterator[Element]:
    """The elements of a line, codes in brackets or in a column behind the words as references."""
    for index, element in enumerate(line.elements):
        if element.kind != "words":
            yield element
        elif index and element.gap and _names(text, element.start, element.end, codes):
            yield element._replace(kind="reference")
        else:
            yield from _parted(text, element, codes)


def _names(text: str, start: int, end: int, codes: set[str]) -> bool:
    words = text[start:end].rstrip(" .;,")
    told = _ALONE.fullmatch(words) is not None
    return told and codes.issuperset(read_letters(words))


def _parted(text: str, element: Element, codes: set[str]) -> Iterator[Element]:
    at = element.start
    for told in _IN_BRACKETS.finditer(text, element.start, element.end):
        if not codes.issuperset(read_letters(told[0])):
            continue
        if text[at : told.start()].strip():
            yield element._replace(
                start=at,
                end=at + len(text[at : told.start()].rstrip()),
                gap=element.gap and at == element.start,
            )
        yield Element("reference", told.start(), told.end(), False)
        behind = text[told.end() : element.end]
        at = told.end() + len(behind) - len(behind.lstrip())
    if at == element.start or text[at : element.end].strip():
        yield element._replace(start=at, gap=element.gap and at == element.start)
