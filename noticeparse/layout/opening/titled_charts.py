"""Charts told by what stands behind their number: title, edition, international number, a row.

`802 - Quill Sound - Edition 4`, `802 [30/26]`, `802 Quill Sound [30/26]`: they need no other word.
"""

from __future__ import annotations

import re

from noticeparse.layout.opening.recognise import DETAILS, is_chart_number
from noticeparse.readers.heads import head_kinds

_NUMBER_FIRST = re.compile(r"(?!N[OR]\b)(?:[A-Z]{1,3}[ -])?[0-9A-Z-]+(?=[ ,])")
_NAME_OF_PANEL = re.compile(r"(?<=(?i:panel|inset) [A-Z0-9]) \([A-Z][^()\n]{1,40}\)")
_BARE_HEAD = DETAILS | {"STOP", "COMMA", "DATE"}
_WITH_INTERNATIONAL = _BARE_HEAD - {"PANEL", "PREVIOUS_LIST"} | {"NOTICE_NUMBER"}
_FEWEST_FIGURES = 3
_TITLED = re.compile(
    r" (?:- )?[A-Z][a-z][A-Za-z' ,&-]{1,60}?[,.]? \[[0-9]{1,5}(?:\([TP]\))?/(?:19|20)?[0-9]{2}\]"
    r"(?: (?:WGS|INT|Depth|Sounding|\()[^;\n]{1,60})?[.:]?$"
    r"|  {1,12}[0-9]{1,3}(?:st|nd|rd|th)? ?[Ee]d\.? (?:[^\n]{4,20} )?(?i:last (?:nm|notice|ntm) )"
)


def opens_titled_chart(words: str) -> int:
    """The length of the chart number that opens a chart's title and edition, or 0.

    `802 - Quill Sound - Edition 4 - 12 June 2020`, `805 (INT 9805) - Approaches - WGS84`; or
    before the rest of a bare head: `802 [30/26]`, `TV 802, WGS 84 [30/26]`.
    """
    found = _NUMBER_FIRST.match(words)
    if found is None or not is_chart_number(found[0]):
        return 0
    number, rest = found[0], words[found.end() :]
    kinds = head_kinds(_NAME_OF_PANEL.sub("", rest))
    if kinds & {"PREVIOUS_IN_BRACKETS", "NEW_EDITION"} and kinds <= _BARE_HEAD:
        # `802 (INT 9802) [30/26] WGS84`, `TV 415, Panel B, WGS 84 [New edition]`
        return len(number)
    if "INTERNATIONAL" in kinds and kinds <= _WITH_INTERNATIONAL:
        # `802 (INT 9802)`, `TV 802, INT 9802, 30/26`
        return len(number)
    if number.isdigit() and len(number) >= _FEWEST_FIGURES and _TITLED.match(rest) is not None:
        # `802 Quill Sound [30/26]`, `802   51 Ed. 6/15/24   LAST NM 30/26`
        return len(number)
    if not rest.lstrip().startswith(("-", "(INT", "INT ")):
        return 0
    told = kinds & {"EDITION", "NEW_EDITION", "DATUM", "INTERNATIONAL", "PREVIOUS", "DATE"}
    return len(number) if len(told) > 1 or "EDITION" in kinds else 0
