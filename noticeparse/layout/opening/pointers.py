"""Words before a number that only point to another notice: `Ref: NM 12/26`, `Related NM 12/26`."""

from __future__ import annotations

import re

from noticeparse.layout.line.elements import Line

_OTHERS = frozenset(
    "weekly monthly fortnightly quarterly annual previous last see cancels replaces supersedes"
    " amends corrects extends repeats former preceding related associated original linked earlier"
    " superseded superseding cancelled canceled withdrawn expired replaced amended corrected"
    " relevant connected corresponding initial prior parent existing following cf vide also"
    " compare consult this these erratum errata corrigendum corrigenda updates updating updated"
    " modifies modified modifying revises revised confirms confirmed confirming continues"
    " continued completes concludes supplements reinstates reissues restates affects apply applies"
    " disregard ignore void voids pending awaiting remark remarks subject source authority"
    " basis".split()
)
"""A first word by which an edition or another notice is named, and never a series."""
_REFERENCE = re.compile(
    r"(?:(?:our|your|further|other) )?(?:refs?|references?|re)\b[.: ]*", re.IGNORECASE
)
_ENDS = re.compile(
    r"\b(?:refs?|references?)[.: ]{1,4}(?:(?:nm|ntm|notice)s?\.? )?$", re.IGNORECASE
)
_OPENS_NUMBER = re.compile(
    r"^[ \t>*]{0,8}(?:[A-Za-z][A-Za-z.]{0,12}[ :]{1,3}){0,3}"
    r"[0-9]{1,5} ?(?:\([TP]\))?/(?:19|20)?[0-9]{2}\b",
    re.MULTILINE,
)
_LONGEST = 40
_NEAR = 4000
"""Characters within which the head of the notice stands in which another one is referred to."""


def names_another(words: str) -> bool:
    """Whether the first word before a number tells that it is that of another notice."""
    return words.split(" ", 1)[0].lower().strip(".:") in _OTHERS


def ends_with_reference(words: str) -> bool:
    """Whether words lead to the number of another notice: `Our Ref. 12/26`."""
    return _ENDS.search(words, max(len(words) - _LONGEST, 0)) is not None


_OPENS_BLOCK = re.compile(
    r"^[ \t>*]{0,8}(?P<words>(?:[A-Za-z][A-Za-z.]{0,12}[ :]{1,3}){0,3}?)"
    r"(?:(?:nm|ntm|no|nr)\.? ?)?[0-9]{1,5} ?(?:\([TP]\) ?)?/(?:19|20)?[0-9]{2}\b",
    re.IGNORECASE,
)
_CHART = re.compile(r"[ \t]{0,8}(?:charts?|int)\b", re.IGNORECASE)
_BLOCK = 600
"""Characters above a line in which the head that it goes on with stands."""
_MOST_LINES = 8


def goes_on_below_head(text: str, line: Line, series: str) -> bool:
    """Whether a number with a word of its own goes on with the notice above: `Local NM 12/26`.

    No blank line parts it from the head of a notice that is not numbered so; and what it names has
    not been told yet, or no chart stands below it.
    """
    above = text[max(line.start - _BLOCK, 0) : line.start].rpartition("\n\n")[2].split("\n")[:-1]
    has_chart = False
    for words in reversed(above[-_MOST_LINES:]):
        if _CHART.match(words) is not None:
            has_chart = True
        opened = _OPENS_BLOCK.match(words)
        if opened is None:
            continue
        if opened["words"].strip(" :").lower() == series.lower():
            return False
        below = text[line.end : line.end + _BLOCK].lstrip("\n")
        return not has_chart or _CHART.match(below) is None
    return False


def is_reference(text: str, line: Line, words: str) -> bool:
    """Whether `Ref: NM 12/26` points to another notice from within one.

    An office may number its own so; then no other number opens a line above, a blank line parts
    it from what stands there, and a heading stands below it.
    """
    if _REFERENCE.match(words) is None:
        return False
    above = text[max(line.start - _NEAR, 0) : line.start]
    if not above.strip():
        return False
    below = text[line.end : line.end + 80].lstrip(" \t").removeprefix("\n").lstrip(" \t")
    has_heading = below[:1].isalnum() and not below.lower().startswith(("chart", "int "))
    is_apart = above.endswith("\n\n") or not above.rpartition("\n")[0].rpartition("\n")[2].strip()
    others = (
        one for one in _OPENS_NUMBER.finditer(above) if _REFERENCE.match(one[0].strip()) is None
    )
    return not (has_heading and is_apart) or next(others, None) is not None
