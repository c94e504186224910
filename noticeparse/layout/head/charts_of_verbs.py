"""Charts that stand between a verb and its thing: `Insert on chart 802: wreck P`.

They are those of that command alone, and are put in front of the verb as `On chart 802 only:` is.
"""

from __future__ import annotations

import re

from noticeparse.layout.evidence import lead_index
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.features import has_kind

_NUMBER = r"[A-Z]{0,3} ?[0-9]{1,6}[A-Z]?(?![0-9A-Za-z.°'/])"
_INT = (
    r"(?: ?(?:\(?INT\.? ?[0-9]{1,5}\)?|[\[(](?:[a-z ]{0,24}[0-9]{1,5}/[0-9]{2,4}|WGS[ -]?84)[\])]"
    r")){0,3}"
)
_CHARTS = re.compile(
    r",? ?[(\[]?(?:(?:on|from|in|to|for) )(?:the )?(?:charts?|chts?\.?) ?(?:nos?\.? ?)?"
    rf"{_NUMBER}{_INT}(?:(?:, and |, | and | & )(?:chart )?{_NUMBER}{_INT}){{0,11}}"
    r"(?: only| alone)?[)\]]?(?: ?[:,;-] ?| )",
    re.IGNORECASE,
)

_LEADS = re.compile(r"(?:the |these )?following\b|as follows\b", re.IGNORECASE)
_OF_CHARTS = frozenset({"words", "chart", "number"})


def with_charts_of_verb(text: str, line: Line) -> Line:
    """The line, with the charts behind its verb in front of it; else as it is."""
    at = lead_index(line)
    if not line.has("verb") or line.elements[at].kind != "verb":
        return line
    verb, *rest = line.elements[at:]
    told = _charts(text, rest)
    if told is None:
        return line
    (start, end), left = told
    charts = Element("charts_only", start, end, True)
    return line._replace(elements=(*line.elements[:at], charts, verb, *left))


def _charts(text: str, rest: list[Element]) -> tuple[tuple[int, int], list[Element]] | None:
    """Where the charts stand in the words right behind a verb, and what is left behind them."""
    words = 0
    while words < len(rest) and rest[words].kind in _OF_CHARTS and not rest[words].gap:
        words += 1
    if not words:
        return None
    start, end = rest[0].start, rest[words - 1].end
    found = _CHARTS.match(text, start, min(end + 1, len(text)))
    if found is None or found.end() > rest[-1].end - 1:
        return None
    cut = found.end()
    behind = text[cut : rest[-1].end]
    if _LEADS.match(behind) or not has_kind(behind):
        # `INSERT ON CHART 802 [3/26]` heads the lines below.
        return None
    left = [e._replace(start=max(e.start, cut), gap=True) for e in rest if e.end > cut]
    return (start, len(text[:cut].rstrip())), left
