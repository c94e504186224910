"""Words in brackets in the head of a chart that are read as nothing: limits, and shifts of places.

`Chart 802 (not to be applied before 1 September 2026)` and `(positions to be moved 0.1' N)` change
what the commands below are worth, and these are held back; of other words, `(ask the pilots)`, it
is told that they are not kept.  A name in capitals, `(Port Ellory)`, is that of the chart.
`Positions should be moved 0.05' northward to agree with this chart` says the same in a sentence.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.extents import quoting
from noticeparse.build.pointers import pointed
from noticeparse.build.quality_of_heads import states_quality
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft, Piece
from noticeparse.readers.dates import MONTH
from noticeparse.readers.head_values import says_all_items
from noticeparse.readers.heads import head_kinds, read_parts
from noticeparse.records.chart import ChartSection
from noticeparse.stretch import gather, unquoted, without_asides

_BRACKET = re.compile(r"[(\[][^()\[\]\n]{3,200}[)\]]")
_VALUE = r"positions|latitudes|longitudes|co-?ordinates|depths|soundings|heights|elevations"
_LIMITS = re.compile(
    rf"\b(?:position|latitude|longitude|{_VALUE}|bearings?|not|only|alone|if|unless|until|when"
    r"|once|before|after|pending|provided|except|without|draft|proposed|provisional|void"
    r"|cancelled)\b",
    re.IGNORECASE,
)
_IS_NO_NAME = re.compile(
    r"\b(?:positions?|not|only|unless|until|if|pending|provisional|proposed|draft|void|cancelled)\b",
    re.IGNORECASE,
)
"""Words of statements, which no title of a chart has: `(Some Positions Approximate)`."""
_DATED = re.compile(rf"\b[0-9]{{1,2}} {MONTH}\b|\b{MONTH} [0-9]{{1,4}}\b", re.IGNORECASE)
_PLAIN = re.compile(
    r"\b(?:not (?:to be (?!used)|before|until|yet|valid)|(?:with )?effect(?:ive)? (?:from|on)"
    rf"|(?:before|after|until) [0-9]{{1,2}} {MONTH}|provisional(?:ly)?|tentative(?:ly)?)\b"
    r"[^()\[\].;]{0,60}",
    re.IGNORECASE,
)
"""Such words in a head that stand in no bracket."""
_WITHIN = r"(?:[^.;()\n]|\.(?=[0-9])|\n(?=[ \t]{0,40}[a-z0-9]))"
_SHIFTED = re.compile(
    rf"\b(?:{_VALUE})\b(?P<whose>[^.;()0-9]{{0,60}}?)"
    r"\b(?:should|must|shall|(?:need |ha[sv]e? )?to) (?:first |all |each |then )?be (?:first )?"
    r"(?:adjusted|moved|shifted|displaced|corrected|reduced|increased|raised|lowered|offset"
    r"|converted|amended)\b"
    rf"(?P<how>{_WITHIN}{{0,120}})"
    r"|\b(?:add|subtract|deduct|apply) [+-]?[0-9]"
    rf"{_WITHIN}{{1,40}}? (?:to|from) (?:all |the |these |each )?(?:of the )?(?:{_VALUE})\b",
    re.IGNORECASE,
)
_OF_NOTICES = frozenset({"NOTICE_NUMBER", "PREVIOUS", "PREVIOUS_LIST", "PREVIOUS_IN_BRACKETS"})
_AMOUNT = re.compile(r"[0-9]|\b(?:north|south|east|west)", re.IGNORECASE)
_OF_OTHERS = re.compile(
    r"\b(?:satellite|GPS|GNSS|WGS|derived|obtained|read|taken|on (?:the )?charts?)\b",
    re.IGNORECASE,
)
"""`Positions obtained by satellite should be moved …`: not those of the notice."""


def head_brackets(
    context: Context,
    draft: NoticeDraft,
    path: str,
    sections: Sequence[Section],
    charts: Sequence[ChartSection],
    *,
    until: int,
) -> Iterator[tuple[Fault, list[str]]]:
    """A fault for each such bracket or sentence, with the actions it is said of."""
    actions = list(pointed(path, charts))
    if draft.is_radio or not actions:
        return
    told = list(_unread(context, draft))
    for piece in told:
        below = [
            one.pointer
            for one in actions
            for section, chart in zip(sections, charts, strict=False)
            if chart is one.section and section.extent[0] <= piece[0] < section.extent[1]
        ]
        words = context.text[slice(*piece)]
        code = _code(words)
        # What is said of all positions stands in their records.
        if code is not None and states_quality(words) is None:
            yield quoting(context, code, piece), below
    first = draft.number.end if draft.number is not None else draft.start
    for found in _SHIFTED.finditer(unquoted(context.text[first:until])):
        how = found["how"]
        if _OF_OTHERS.search(found["whose"] or "") or (how and not _AMOUNT.search(how)):
            continue
        piece = first + found.start(), first + found.end()
        if not any(start < piece[1] and piece[0] < end for start, end in told):
            hit = [one.pointer for one in actions]
            yield quoting(context, "verb-limited-beside", piece), hit


def _unread(context: Context, draft: NoticeDraft) -> Iterator[Piece]:
    """Limits in heads, and brackets with words in them that belong to no part of the head."""
    for chart in draft.charts:
        head = gather(context.text, chart.head)
        for found in _PLAIN.finditer(without_asides(head.text)):
            yield head.extent(found.span())
        if "(" not in head.text and "[" not in head.text:
            continue
        parts = read_parts(head.text)
        for found in _BRACKET.finditer(head.text):
            start, end = found.span()
            inner = [one for one in parts if start < one.start and one.end < end]
            words = [one.text for one in inner if one.kind == "OTHER_WORDS"]
            is_name = all(len(one) < 2 or one[0].isupper() for one in words)
            if says_all_items(found[0]):
                continue
            if not is_name or (words and _IS_NO_NAME.search(found[0])):
                yield head.extent(found.span())


def _code(words: str) -> str | None:
    """What a bracket says of the commands; one that should name the notice before is told."""
    if _LIMITS.search(words):
        return "verb-limited-above"
    if _DATED.search(words):
        return "verb-dated"
    is_of_notice = words.startswith("[") or not head_kinds(words).isdisjoint(_OF_NOTICES)
    return None if is_of_notice else "chart-head-unread"
