"""A chart that has the items of the one above: `The same entries on sheet 60, previously 71/26`.

`This also applies to charts 905 [590/26] and 906 [591/26]` says it in a sentence.  The head of
such a chart goes with that of the chart above, so that both share the items.
"""

from __future__ import annotations

import re

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.drafts import ChartDraft, Piece
from noticeparse.layout.line.elements import Line
from noticeparse.readers.heads import read_head

_WORD = r"(?:entries|items|corrections|changes|amendments|insertions|actions)"
_TOO = r"(?:also|too|likewise|equally|as well)"
_HOLD = (
    r"(?:appl(?:y|ies)|holds?|(?:is|are) valid|(?:is|are) to be (?:made|applied|carried out)"
    r"|refers?|relates?|concerns?|affects?|goe?s?)"
)
_LEADS = re.compile(
    rf"(?:and )?(?:the )?same(?: {_WORD})?(?: are)?(?: also)?(?: to be made| apply| hold)? "
    r"(?:on|for|to|in)(?: the)? (?=(?:charts?|chts?|sheets?)\b|[A-Z]{0,3}[0-9]{2,6}[A-Z]? ?\[)"
    r"|(?:and )?(?:this|these|it|they|the (?:above|foregoing|same)"
    r"|all (?:of )?(?:these|the above))"
    rf"(?: {_WORD})? (?:{_TOO} {_HOLD}|{_HOLD} {_TOO}) (?:(?:to|for|on|in) )?(?:the )?"
    r"(?=(?:charts?|chts?|sheets?)\b)",
    re.IGNORECASE,
)
_OF_ALL = re.compile(
    rf"(?:(?:the )?same {_WORD}|all {_WORD}|(?:the )?following(?: {_WORD})?|{_WORD})"
    r"(?: (?:are|apply|hold|to be made|are to be made|must be made))? (?:on|for|to|in) "
    r"(?P<all>both|all|each|the two|the three|either)(?: (?:of (?:them|these|the charts)|charts"
    r"|sheets|of these charts|these charts|the charts))?(?: alike| too)?[:.]?",
    re.IGNORECASE,
)
"""Between the charts and their items: `Same corrections on both:`."""
_COUNTS = {"both": 2, "the two": 2, "either": 2, "the three": 3}
_BARE = re.compile(
    rf"(?:[Aa]nd )?(?:[Tt]he )?[Ss]ame(?: {_WORD})? (?:on|for) "
    r"(?P<number>(?!(?:19|20)[0-9]{2}\b)[A-Z]{0,3}[0-9]{2,6}[A-Z]?)\.?"
)
"""Of a chart that has neither a word for one nor a notice before it."""
_ALONE = re.compile(
    rf"(?:the )?(?:same|all)?(?: ?{_WORD})?,? ?as (?:given |listed )?(?:above|(?:(?:on|for|in) )?"
    r"(?:charts?|sheets?) (?P<chart>[A-Z]{0,3}[0-9]{1,6}))\.?",
    re.IGNORECASE,
)
"""Alone below the head of a chart: `As above.`, `Same corrections as chart 802`."""
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
    if (all_of := _OF_ALL.fullmatch(words)) is not None and _is_above_all(assembly, all_of["all"]):
        assembly.notice.clauses.append((start, end))
        return True
    alone = _ALONE.fullmatch(words)
    if alone is not None and _takes_items_above(assembly, alone["chart"]):
        assembly.notice.clauses.append((start, end))
        return True
    bare = _BARE.fullmatch(words)
    if bare is not None:
        _share_with(assembly, (start, end), bare["number"])
        return True
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


def _takes_items_above(assembly: Assembly, number: str | None) -> bool:
    """Give the open chart the items of the one above; false where either has others."""
    assert assembly.notice is not None
    *above, last = assembly.notice.charts or [ChartDraft([], None)]
    if last.items or any(not line.is_blank for line in assembly.body):
        return False
    meant = (
        above[-1:] if number is None else [one for one in above if _is_of(assembly, one, number)]
    )
    if len(meant) != 1 or not meant[0].items:
        return False
    # A list of its own: what stands below is of this chart alone.
    last.items = list(meant[0].items)
    return True


def _is_of(assembly: Assembly, chart: ChartDraft, number: str) -> bool:
    """Whether the head of a section names a chart."""
    head = " ".join(assembly.text[slice(*piece)] for piece in chart.head)
    return number in [one.chart for one in read_head(head, None).charts]


def _share_with(assembly: Assembly, piece: Piece, number: str) -> None:
    """Give the items above to a chart that is told by its number alone."""
    assembly.end_body()
    assert assembly.notice is not None
    further = ChartDraft([piece], number, items=assembly.charts[-1].items)
    assembly.notice.charts.append(further)


def _is_above_all(assembly: Assembly, counted: str) -> bool:
    """Whether as many charts stand above as are counted, and none of them has items yet."""
    charts = assembly.notice.charts if assembly.notice is not None else []
    if any(chart.items for chart in charts) or any(not line.is_blank for line in assembly.body):
        return False
    heads = [" ".join(assembly.text[slice(*one)] for one in chart.head) for chart in charts]
    named = sum(len(read_head(words, None).charts) for words in heads)
    return named == _COUNTS.get(counted.lower(), max(named, 2))


def _is_above(assembly: Assembly, number: str | None) -> bool:
    """Whether a chart, where one is named, is one of those above whose items are meant."""
    return number is None or _is_of(assembly, assembly.charts[-1], number)
