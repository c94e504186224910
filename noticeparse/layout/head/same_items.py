"""A chart that has the items of the one above: `The same entries on sheet 60, previously 71/26`.

Its head goes with that of the chart above, so that both share the items.
"""

from __future__ import annotations

import re

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.line.elements import Line
from noticeparse.readers.heads import read_head

_WORD = r"(?:entries|items|corrections|changes|amendments|insertions|actions)"
_LEADS = re.compile(
    rf"(?:and )?(?:the )?same(?: {_WORD})?(?: are)?(?: also)?(?: to be made| apply| hold)? "
    r"(?:on|for|to|in)(?: the)? (?=(?:charts?|chts?|sheets?)\b)",
    re.IGNORECASE,
)
_ENDS = re.compile(
    rf"[ :,;.-]{{1,4}}(?:the )?same(?: {_WORD})?"
    r"(?: as (?:above|(?:(?:on|for|in) )?(?:charts?|sheets?) (?P<chart>[A-Z]{0,3}[0-9]{1,6})))?"
    r"\.?$",
    re.IGNORECASE,
)


def takes_same_items(assembly: Assembly, line: Line) -> bool:
    """Whether a line gives a further chart the items of the chart above."""
    if assembly.notice is None or not assembly.charts or line.has("point", "half", "verb"):
        return False
    start, end = line.elements[0].start, line.elements[-1].end
    words = assembly.text[start:end]
    leads = _LEADS.match(words)
    if leads is not None:
        piece = (start + leads.end(), end)
    else:
        behind = _ENDS.search(words) if line.elements[0].kind == "chart" else None
        if behind is None or not _is_above(assembly, behind["chart"]):
            return False
        piece = (start, start + behind.start())
    assembly.end_body()
    assembly.charts[-1].head.append(piece)
    assembly.notice.clauses.append((start, end))
    return True


def _is_above(assembly: Assembly, number: str | None) -> bool:
    """Whether a chart, where one is named, is one of those above whose items are meant."""
    words = " ".join(assembly.text[slice(*piece)] for piece in assembly.charts[-1].head)
    above = [one.chart for one in read_head(words, None).charts]
    return number is None or number in above
