"""Charts that a notice names beside its commands, and that get none of them.

`This correction also applies to chart 803`, `Chart 802 (also 803) [310/26]`: what is to be done on
that chart is lost.  Where a command stands on the line of such a number and its notice before, or
the number ends the command, `… P. (803)`, nobody can say that it is for the chart of the head.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence, Set

from noticeparse.build.extents import item_extent, quoting
from noticeparse.build.pointers import Pointed, pointed
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, NoticeDraft, Piece
from noticeparse.records.chart import ChartSection
from noticeparse.stretch import unquoted

_NUMBER = r"[A-Z]{0,3}[0-9]{2,6}[A-Z]?"
_CHARTS = (
    rf"(?:{_NUMBER})(?:(?:, ?| and |, and | ?& ?){_NUMBER}){{0,8}}(?![0-9A-Za-z'°/-])(?!\.[0-9])"
)
_TOO = r"(?:also|too|likewise|equally|similarly|as well|in addition|additionally|further|same)"
_SAID_TOO = tuple(
    re.compile(words, re.IGNORECASE)
    for words in (
        rf"\b{_TOO}\b[^.;\n]{{0,60}}?\b(?:charts?|sheets?)(?: nos?\.?)? (?P<charts>{_CHARTS})",
        rf"[(\[](?:and )?{_TOO} (?:for |on |in )?(?P<charts>{_CHARTS})",
        rf"\b(?:charts?|sheets?)(?: nos?\.?)? (?P<charts>{_CHARTS})[^.;\n]{{0,40}}?\b{_TOO}\b",
    )
)
_WITH_NOTICE = re.compile(
    rf"(?<![0-9A-Za-z./°'-])(?<!INT )(?P<number>(?!(?:19|20)[0-9]{{2}}\b){_NUMBER})"
    r"(?: \(INT [0-9]{1,5}\))? ?\[[0-9]{1,5}(?:\([TP]\))?/[0-9]{2,4}\]"
)
_AT_END = re.compile(
    rf"[ \t.,;]{{0,4}}(?:[-–—] ?(?P<dashed>{_CHARTS})|\((?P<bracket>{_CHARTS})\))[ \t.]*(?=\n|\Z)"
)
_ASIDE = re.compile(r"\b(?:see|refer|consult|compare|shown|not|no)\b", re.IGNORECASE)
"""`See also chart 801`, `not on chart 801`: nothing is to be done there."""
_FOLLOWS = re.compile(r"[^.\n]{0,80}?(?:\bfollow|:)", re.IGNORECASE)
"""`Please also correct chart 803 as follows`: told as what items follow."""
_LONG = 3
"""Figures of a number behind a place that may be a chart of no head; fewer may be a height."""
_EACH = re.compile(_NUMBER)


def charts_left_out(
    context: Context,
    draft: NoticeDraft,
    path: str,
    sections: Sequence[Section],
    charts: Sequence[ChartSection],
    *,
    until: int,
) -> Iterator[tuple[Fault, list[str]]]:
    """A fault for each such chart, with the actions that may be for it, or are all there are."""
    actions = list(pointed(path, charts))
    if draft.is_radio or not actions:
        return
    heads = [piece for one in draft.charts for piece in one.head]
    everywhere = [one.pointer for one in actions]
    known = {one.chart for one in charts if one.chart}
    items = {id(item): item for section in sections for item in section.items}
    first = draft.number.end if draft.number is not None else draft.start
    text = unquoted(context.text[first:until])
    for found in (one for pattern in _SAID_TOO for one in pattern.finditer(text)):
        numbers = found["charts"]
        if not _named(numbers) <= known and not _is_aside(text, found.span()):
            piece = first + found.start(), first + found.end()
            yield quoting(context, "chart-left-out", piece, chart=numbers), everywhere
    for found in _WITH_NOTICE.finditer(text):
        piece = first + found.start(), first + found.end()
        if found["number"] in known or any(a < piece[1] and piece[0] < b for a, b in heads):
            continue
        hit = _behind(context, piece, actions)
        if hit:
            yield quoting(context, "item-of-one-chart", piece), hit
        elif _is_row_of_list(context, draft, piece, known):
            yield quoting(context, "chart-left-out", piece, chart=found["number"]), everywhere
    for piece, item in _at_ends(context, list(items.values()), known):
        at = context.span(*item_extent(item)).start
        hit = [one.pointer for one in actions if one.action.span.start == at]
        yield quoting(context, "item-of-one-chart", piece), hit


def _at_ends(
    context: Context, items: Sequence[Item], known: Set[str]
) -> Iterator[tuple[Piece, Item]]:
    """The charts behind the places of items: one of several, or one like those of the notice."""
    for item in items:
        end = item_extent(item)[1]
        found = _AT_END.match(context.text, end) if item.has_place else None
        if found is None or any(one.code == "item-of-one-chart" for one in item.faults):
            continue
        named = _named(found["dashed"] or found["bracket"])
        is_like = all(
            len(one) >= _LONG and any(len(one) == len(k) for k in known) for one in named
        )
        if named < known or (is_like and named.isdisjoint(known)):
            start = end + len(found[0]) - len(found[0].lstrip(" \t.,;"))
            yield (start, found.end()), item


def _is_row_of_list(context: Context, draft: NoticeDraft, piece: Piece, known: Set[str]) -> bool:
    """Whether a chart opens a line of prose below another: `611 [12/26] the lot`.

    It is of the list above, and what is said of it is not understood.
    """
    opens = not context.text[context.text.rfind("\n", 0, piece[0]) + 1 : piece[0]].strip(" \t-*•")
    pieces = (one for prose in draft.prose for one in prose.pieces)
    return opens and bool(known) and any(a <= piece[0] < b for a, b in pieces)


def _is_aside(text: str, span: tuple[int, int]) -> bool:
    """Whether a sentence gives the chart it names nothing, or heads what follows."""
    start = max(text.rfind("\n", 0, span[0]), text.rfind(". ", 0, span[0])) + 1
    said = text[max(start, span[0] - 80) : span[1]]
    return _ASIDE.search(said) is not None or _FOLLOWS.match(text, span[1]) is not None


def _named(words: str) -> set[str]:
    return set(_EACH.findall(words.upper()))


def _behind(context: Context, piece: Piece, actions: Sequence[Pointed]) -> list[str]:
    """The actions that begin on the line of a chart, behind it or around it."""
    start = context.text.rfind("\n", 0, piece[0]) + 1
    below = context.text.find("\n", piece[1])
    below = below if below >= 0 else len(context.text)
    first, last = context.repaired.original(start), context.repaired.original(below)
    return [one.pointer for one in actions if first <= one.action.span.start < last]
