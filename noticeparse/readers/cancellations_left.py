"""What in a stretch of prose may end a notice and is not read as a cancellation.

Numbers beside those that are cancelled, sentences that tell of an end in other words, and lists of
numbers without a year: all of these are told, for which notices they end is not certain.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.readers.cancelled import read_numbers

_JOINT = r"(?:[,;]|,? (?:and|AND)| &| /)[ \n]"
_MARK = r"(?: ?\([TP]\))?"
_BEHIND = re.compile(
    rf"(?: ?\([^()\n]{{1,60}}\))?{_JOINT}"
    r"(?:(?:[A-Z][A-Za-z.-]{0,20}|notices?|nos?\.?|number|of|the|also|series)[ \n]){0,6}"
    rf"[0-9]{{1,5}}{_MARK}(?:/[0-9]{{2,4}}(?![0-9/])"
    r"|(?:-[0-9]{2,4})?(?![0-9/°'-]|\.[0-9]| ?(?!and\b)[A-Za-z(]))"
)
"""`Cancels 30/26 (wreck) and 31/26`, `Cancels 38/26, 39-26`; no date: `Cancels 38/26, 3 June`."""
_IN_FRONT = re.compile(
    rf"(?<![0-9/])[0-9]{{1,5}}{_MARK}(?:[/-][0-9]{{2,4}})?{_JOINT}(?:nos?\.? )?$", re.IGNORECASE
)
"""`Notices 39-26 and 38/26 are cancelled`"""
_IN_FRONT_WIDTH = 40

_EXCEPT = re.compile(
    r",? \(?(?:save|except(?:ing)?|but not|other than|apart from|with the exception)\b"
    r"(?:[^.;\n]|\n(?!\n)){0,80}",
    re.IGNORECASE,
)
"""What stays in force of it: `Cancels 38/26, save that item 2 stays in force`."""

_END = re.compile(
    r"\b(?<!not )(?<!not be )(?<!not been )(?<!will be )(?<!may be )"
    r"(?:cancel(?:s|l?ed|ling)?|supersed(?:e|es|ed|ing)|expire[sd]?|lapse[sd]?|annul(?:s|led)?"
    r"|revoke[sd]?|no longer in force)\b",
    re.IGNORECASE,
)
_ENDS_A_NOTICE = re.compile(
    rf"(?:[^.;\n]|\n(?!\n)){{0,80}}{_END.pattern}(?:[^.;\n]|\n(?!\n)){{0,80}}", re.IGNORECASE
)
"""A sentence, as far as it may be wide, that tells of the end of a notice."""
_OF_NO_YEAR = re.compile(
    r"[\s(]*(?:(?:(?:this|the present) notice )?(?:hereby )?(?:cancels|supersedes|annuls|revokes) "
    rf"(?:notices? |nm |ntm )?(?:nos?\.? )?[0-9]{{1,5}}{_MARK}(?:,|$| and | & "
    rf"|[-–][0-9]{{1,5}}{_MARK}/[0-9]{{2}})"
    r"|notices? (?:nos?\.? )?[0-9]{1,5}(?:(?:, | and )[0-9]{1,5}){0,9} (?:is|are) (?:hereby )?"
    r"(?:cancell?ed|superseded|withdrawn)"
    r"|(?:the )?(?:former|previous|preceding|above|said|earlier|original|temporary|preliminary"
    r"|that) (?:notices?|corrections?|nm) (?:(?:is|are|has been|have been) )?(?:now |hereby )?"
    r"(?:cancell?ed|superseded))",
    re.IGNORECASE,
)
"""`Cancels 38, 39 and 40`, `Cancels 402-405(T)/24`, `Former notice cancelled`"""
_NOTICE = (
    r"(?:(?:former|previous|temporary|preliminary) ){0,2}(?:notices?|nm|ntm|corrections?)"
    rf"(?: to mariners)?(?: nos?\.?)? [0-9]{{1,5}}{_MARK}/[0-9]{{2,4}}"
)
_TAKES_OFF = re.compile(
    r"(?:\b(?:delete|remove|expunge|erase|strike out|replac(?:es|ing)|in (?:place|lieu) of)"
    rf" (?:the )?{_NOTICE}"
    rf"|\breplaces ?: ?[0-9]{{1,5}}{_MARK}/[0-9]{{2,4}}"
    rf"|\b{_NOTICE} (?:is|are|has been|have been|to be) (?:now |hereby )?(?:deleted|removed)"
    r")(?![0-9])",
    re.IGNORECASE,
)
"""`Delete former Notice 402(T)/24`"""


def cancellations_left(text: str, read: Sequence[tuple[int, int]]) -> Iterator[tuple[int, int]]:
    """The stretches of a text that may end a notice, outside those that are read already."""
    left = text
    for start, end in read:
        left = left[:start] + " " * (end - start) + left[end:]
        if before := _IN_FRONT.search(text, max(start - _IN_FRONT_WIDTH, 0), start):
            yield before.span()
        if more := _BEHIND.match(text, end) or _EXCEPT.match(text, end):
            yield start, more.end()
    yield from (one.span() for one in _TAKES_OFF.finditer(left))
    # The sentence is looked for from each of its characters on, so its verb is looked for first.
    for one in _ENDS_A_NOTICE.finditer(left) if _END.search(left) else ():
        # `Notice 402(T)/24 has expired`
        if read_numbers(one.group()) or _OF_NO_YEAR.match(one.group()):
            yield one.span()
