"""Changes of books among the lines of a notice: `Page 88, line 3: for "16 miles" read "14 miles"`.

They command nothing on a chart, whatever verb and position they hold; nor does what is told of a
book or an electronic chart by its code: `ENC TV4CORV1: insert rock P`.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.body.prose import paragraph
from noticeparse.layout.drafts import Prose
from noticeparse.layout.evidence import lead_index
from noticeparse.layout.line.elements import Line
from noticeparse.readers.books import BOOKS
from noticeparse.readers.verbs import canonical_verb

_ENTRY = re.compile(
    r"(?:on |in )?(?:the )?(?:pages?|pp?\.) ?[0-9]{1,4}\b[^:\n\"]{0,60}?"
    r"(?:: |:(?=\n)|[,;] (?:(?:left|right)[ -](?:hand )?column,? )?"
    r"(?:lines?|para(?:graph)?s?\.?|sections?|entry|entries|column|footnote|table)\b)"
    rf"|(?:in |from |corrections? to |amendments? to )?(?:the )?{BOOKS}"
    r"(?:,? (?:cells? )?\(?(?-i:[A-Z]{1,6})[ -]?(?-i:[A-Z0-9]{0,8}[0-9][A-Z0-9]{0,4})\)?)?"
    r"(?:,? \(?(?:vol(?:ume)?|part|book|edition|page|chapter|section)\b[^:\n]{0,40})?: ?\S",
    re.IGNORECASE,
)


def without_pages(text: str, lines: Sequence[Line]) -> tuple[list[Line], list[Prose]]:
    """The lines without such entries, each with the lines that go on with it, and the entries."""
    kept: list[Line] = []
    entries: list[list[Line]] = []
    is_open = False
    for line in lines:
        lead = None if line.is_blank else line.elements[lead_index(line)]
        opens = lead is not None and _ENTRY.match(text, lead.start) is not None
        is_open = opens or (is_open and not line.is_blank and not _commands(line))
        if opens:
            entries.append([])
        (entries[-1] if is_open else kept).append(line)
    return kept, [paragraph(text, [e for line in one for e in line.elements]) for one in entries]


def is_entry(words: str) -> bool:
    """Whether words are such an entry, which commands something: it limits no item beside it."""
    found = _ENTRY.match(words)
    behind = words[found.end() - 1 :].split() if found is not None else []
    return bool(behind) and canonical_verb(behind[0]) is not None


def _commands(line: Line) -> bool:
    """Whether a line is an item of its own below an entry."""
    return line.elements[0].kind == "verb" and line.has("point", "half", "reference")
