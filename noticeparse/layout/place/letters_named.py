"""Letters of listed places among words: `At A insert …`, `move the buoy from B to C`."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.line.lines import elements_between
from noticeparse.layout.place.codes_apart import CODE, codes_apart
from noticeparse.readers.places import is_connector, read_phrase

_NAMED = re.compile(
    rf"(?<![\w\"'.(/-]){CODE}(?:(?: ?[-–] ?| to )[A-Z](?![\w(]))?(?![\w\"'(/°-]|\.\w)(?! of\b)"
)
# What stands behind a letter that opens its line: `A: insert …`, `A and B`.
_FOLLOWS = re.compile(rf" ?[:,;–-]| (?:and|to|&) {CODE}(?!\w)|  |\s*(?![\s\S])")
_FAR = 120
_OF_LIGHTS = frozenset("FQ")
"""Letters that are the character of a light as well: `amended to F`."""


def with_references(text: str, lines: Sequence[Line], codes: set[str]) -> list[Line]:
    """The lines; letters of `codes` among their words are references to their places."""
    read: list[Line] = []
    for line in lines:
        goes_on = bool(read) and read[-1].row + 1 == line.row and _ends_in_letter(text, read[-1])
        read.append(_with_references(text, line, codes, goes_on=goes_on))
    return read


def _with_references(text: str, line: Line, codes: set[str], *, goes_on: bool) -> Line:
    found: list[Element] = []
    for element in codes_apart(text, line, codes):
        if element.kind == "words":
            found += _parted(text, element, codes, is_behind=goes_on and not found)
        else:
            found.append(element)
    return line if tuple(found) == line.elements else line._replace(elements=tuple(found))


def _ends_in_letter(text: str, line: Line) -> bool:
    """Whether a line ends in a reference, behind which the next may go on: `A, B` / `and C`."""
    told = [e for e in line.elements if text[e.start : e.end].strip(" ,;")]
    return bool(told) and told[-1].kind == "reference"


def _parted(text: str, element: Element, codes: set[str], *, is_behind: bool) -> Iterator[Element]:
    """Words with the letters of the list among them as references.

    `is_behind` where a letter stands before them.
    """
    at = element.start
    for match in _NAMED.finditer(text, element.start, element.end):
        # Only the last words before a letter lead to its place.
        before = text[max(at, match.start() - _FAR) : match.start()]
        behind = text[match.end() : match.end() + 6]
        ends_sentence = is_behind and before.strip() in (".", ";")
        if ends_sentence or (at == element.start and not before.strip()):
            is_behind = False
            if not _FOLLOWS.match(behind):
                # `A wreck has been found`: an article.
                continue
        if not _is_named(before, match[0], codes, is_behind=is_behind):
            continue
        start = match.start()
        end = match.end()
        if " to " in match[0] and before.rstrip().lower().endswith("from"):
            # `From B to C` are the two places of a move.
            end = start + match[0].index(" to ")
        yield from _words(text, at, start, element)
        gap = element.gap and start == element.start
        yield Element("reference", start, end, gap)
        at, is_behind = end, True
        if end < match.end():
            yield from _words(text, end, match.end() - 1, element)
            yield Element("reference", match.end() - 1, match.end(), False)
            at = match.end()
    yield from _words(text, at, element.end, element)


def _words(text: str, start: int, end: int, whole: Element) -> Iterator[Element]:
    """What stands between two letters; behind one a command may stand: `At A insert …`."""
    if start == whole.start:
        if text[start:end].strip():
            yield whole._replace(end=start + len(text[start:end].rstrip()))
        return
    yield from elements_between(text, start, end)


def _is_named(before: str, written: str, codes: set[str], *, is_behind: bool) -> bool:
    """Whether a capital names a place: behind a word that leads to one, or another letter."""
    code = re.split(r" ?[-–] ?| to ", written)[0]
    parts = read_phrase(before)
    if not parts:
        return code in codes and not is_behind
    if is_behind and is_connector(before.strip()):
        return True
    if parts[-1].kind in ("words", "separator"):
        return False
    return code not in _OF_LIGHTS or parts[-1].kind != "to"
