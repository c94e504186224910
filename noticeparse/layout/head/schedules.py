"""A schedule of positions for several notices: letters in the notices, places at the end of all.

    Notice 12/26. Chart 802. Insert a wreck at A. Delete the pile at B.
    Notice 13/26. Chart 803. Insert a cable joining C and D.
    SCHEDULE OF POSITIONS
         A     46°51'12"S   124°08'30"W

Each notice is given the places whose letters it names, as if they stood at its own end.  Where one
has a list of its own, so may all, and each list stays where it stands.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.line.elements import Line
from noticeparse.layout.opening.notice_openings import notice_opening
from noticeparse.layout.place.lettered_places import is_lettered

_TITLE = re.compile(
    r"^[ \t]{0,40}(?:the )?(?:schedule|list|table|key|annex)\b[^\n]{0,40}\bpositions\b"
    r"[^\n]{0,40}$",
    re.IGNORECASE | re.MULTILINE,
)
_CODE = r"[A-Z][0-9]{0,2}(?![A-Za-z0-9])"
_JOINT = r"(?:,?\s{1,40}(?:and|to)\s{1,40}|,\s{0,40}|\s?-\s?)"
_NAMED = re.compile(
    r"\b(?:at|in|from|to|by|joining|connecting|between|on|of|off|near|through|positions?)"
    rf",?\s{{1,40}}(?P<letters>{_CODE}(?:{_JOINT}{_CODE}){{0,40}})"
)
_FEWEST = 2
"""Places of a schedule, and notices that may share it."""


def with_schedules_shared(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; places of a schedule behind several notices stand with those that name them."""
    if _TITLE.search(text) is None:
        return list(lines)
    at, end = _schedule(text, lines)
    openings = [
        index
        for index, line in enumerate(lines[:at])
        if line.has("number") and notice_opening(text, line) is not None
    ]
    if end - at <= _FEWEST or len(openings) < _FEWEST:
        return list(lines)
    if any(is_lettered(text, line.elements) for line in lines[openings[0] : at]):
        # A notice has places of its own, and the last list is that of the last notice.
        return list(lines)
    title, *places = lines[at:end]
    rows = {text[one.elements[0].start : one.elements[0].end].strip(" .:"): one for one in places}
    spans = list(zip(openings, [*openings[1:], at], strict=True))
    named = [
        _named(text[lines[start].start : lines[stop - 1].end], list(rows)) for start, stop in spans
    ]
    last = max((index for index, letters in enumerate(named) if letters), default=None)
    if last is None or len(rows) < len(places):
        return list(lines)
    # What no notice names is told where it stands.
    named[last] |= rows.keys() - set().union(*named)
    found = list(lines[: openings[0]])
    for (start, stop), letters in zip(spans, named, strict=True):
        found += lines[start:stop]
        if letters:
            found += [title, *(row for letter, row in rows.items() if letter in letters)]
    return [*found, *lines[end:]]


def _named(words: str, letters: Sequence[str]) -> set[str]:
    """The letters of the schedule that a notice names."""
    found: set[str] = set()
    for one in _NAMED.finditer(words):
        told = re.findall(_CODE, one["letters"])
        found.update(told)
        if "-" in one["letters"] and {told[0], told[-1]} <= set(letters):
            found.update(letters[letters.index(told[0]) : letters.index(told[-1]) + 1])
    return found & set(letters)


def _schedule(text: str, lines: Sequence[Line]) -> tuple[int, int]:
    """Where the last such title stands among the lines, and where its places end."""
    titles = [
        at
        for at, line in enumerate(lines)
        if line.has("words") and _TITLE.fullmatch(text, line.start, line.end) is not None
    ]
    at = titles[-1] if titles else len(lines)
    end = at + 1
    while end < len(lines) and is_lettered(text, lines[end].elements):
        end += 1
    return at, end
