"""Items that speak of a plan, panel or inset which their section is not for: `rock (plan B)`.

Where a line between the items does so, `On the plan`, those below it may be of that panel too; and
where it holds what only the head of a chart does, they may be of that chart.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.build.extents import item_extent, quoting
from noticeparse.context import Context
from noticeparse.layout.drafts import Item, NoticeDraft, Piece
from noticeparse.rare import Rare
from noticeparse.readers.features import has_kind
from noticeparse.readers.verbs import canonical_verb
from noticeparse.stretch import gather, unquoted

_PANEL = r"(?:plan|panel|inset)s?"
_NAMES_PANEL = Rare(
    rf"\([^()]{{0,24}}\b{_PANEL}(?: [A-Z0-9]{{1,2}})?(?: (?:also|too|as well|only|alone))?\)"
    rf"|\b(?:on|in) (?:the |its |this |that )?{_PANEL}(?: [A-Z0-9]{{1,2}}(?![A-Za-z0-9])|[ ,.]*$)"
    rf"|, {_PANEL} [A-Z0-9]{{1,2}}(?![A-Za-z0-9])"
    r"|\bside [A-Z] of the (?:sheet|chart)\b",
    "inset panel plan the",
    re.IGNORECASE,
)
_NAMES_CHART = Rare(
    r"\b(?:(?:charts?|sheets?|map) (?:nos?\.? ?)?[A-Z]{0,3}[0-9]|INT [0-9])[^\n]{0,60}?"
    r"\b(?:WGS|datum|previous|last (?:notice|correct)|prev\b|edition)",
    "datum edition last prev wgs",
    re.IGNORECASE,
)
_TITLE = re.compile(r"^[ \t]*(?P<title>[A-Z][A-Z'-]{2,20}(?: [A-Z'-]{2,20}){0,4})[ \t.]*$", re.M)
_IS_PANEL = Rare(rf"[A-Z][A-Za-z' ]{{2,40}} {_PANEL}[.:]?", "inset panel plan")
_ALONE = re.compile(rf"{_PANEL} ?[.:]?", re.IGNORECASE)
"""A line between the items: `Plan`."""


def hold_back_of_panels(context: Context, items: Sequence[Item], panel: str | None) -> None:
    """Give such items of a section an error; `panel` is its own."""
    above: Piece | None = None
    head: Piece | None = None
    for item in items:
        if head is not None:
            _hold(context, item, "item-of-other-sheet", head)
        head = _head_told(context, item) or head
        piece, is_line = _panel_told(context, item)
        if piece is not None and _is_own(context, piece, panel):
            piece = None
        for one in (above, piece):
            if one is not None:
                _hold(context, item, "item-of-one-panel", one)
        above = piece if is_line and piece is not None else above


def hold_back_below_titles(
    context: Context, draft: NoticeDraft, items: Sequence[Item], panel: str | None
) -> None:
    """Give an error to items of a panel below a title that nobody knows: `APPROACHES`.

    The title may head another part of the chart.
    """
    if panel is None:
        return
    known = {*draft.class_headings, *draft.clauses, *draft.idle_verbs}
    title: Piece | None = None
    last = None
    for start, at in sorted((item_extent(item)[0], at) for at, item in enumerate(items)):
        if last is not None:
            for found in _TITLE.finditer(context.text, last, start):
                piece = found.span("title")
                is_known = piece in known or canonical_verb(found["title"]) is not None
                if not is_known and not has_kind(found["title"]) and context.written(*piece):
                    title = piece
        if title is not None:
            _hold(context, items[at], "item-of-other-sheet", title)
        last = max(last or 0, item_extent(items[at])[1])


def _hold(context: Context, item: Item, code: str, piece: Piece) -> None:
    fault = quoting(context, code, piece)
    if fault not in item.faults:
        item.faults.append(fault)


def _head_told(context: Context, item: Item) -> Piece | None:
    """Where words behind an item read like the head of a chart that was not taken for one."""
    words = gather(context.text, item.tail)
    told = _NAMES_CHART.search(unquoted(words.text))
    return words.extent(told.span()) if told is not None else None


def _panel_told(context: Context, item: Item) -> tuple[Piece | None, bool]:
    """Where an item names a panel, and whether it does so in a line of its own."""
    for pieces, is_line in ((item.words, not item.has_place), (item.tail, True)):
        words = gather(context.text, pieces)
        plain = unquoted(words.text)
        told = _NAMES_PANEL.search(plain)
        if told is None and is_line and not item.has_place:
            told = _IS_PANEL.fullmatch(plain.strip())
            if told is None and pieces and _opens_line(context, pieces[0][0]):
                told = _ALONE.fullmatch(plain.strip())
        if told is not None:
            start, end = words.extent(told.span())
            # `rock P (plan also)` says nothing of what stands on the next line.
            line = context.text.rfind("\n", 0, start) + 1
            is_apart = pieces[0][0] < line or not context.text[line : pieces[0][0]].strip()
            return (start, end), is_line and (is_apart or told[0][:1] != "(")
    return None, False


def _opens_line(context: Context, at: int) -> bool:
    return not context.text[context.text.rfind("\n", 0, at) + 1 : at].strip()


def _is_own(context: Context, piece: Piece, panel: str | None) -> bool:
    """Whether the panel named is that of the section."""
    return panel is not None and panel.lower() in context.text[slice(*piece)].lower()
