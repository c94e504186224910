"""Charts that stand in brackets behind each item: `Wreck, P [204 (last correction 66-26), 210]`.

The brackets are blanked before the lines are laid out, so that they head no chart section and are
no words of a feature, and are then given to the items that they stand behind.  Where they cannot
be those of items the text is laid out with them: they head what stands below, or belong to prose.
"""

from __future__ import annotations

import re
from bisect import bisect_left, bisect_right
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Layout, NoticeDraft, Piece
from noticeparse.layout.line.elements import Line
from noticeparse.layout.line.lines import read_lines
from noticeparse.readers.charts_behind import read_charts_behind

_INNER = r"(?:[^()\[\]\n]|\n(?![ \t]{0,200}\n)|\([^()\[\]\n]{1,60}\)|\[[^()\[\]\n]{1,60}\]){1,400}"
_BRACKET = re.compile(
    r"[\[(](?=\s?(?:[a-z]{2,12}:? ){0,4}(?:the )?ch(?:arts?|ts?)\b\.?|\s?(?:INT )?[A-Z]{0,3}[0-9])"
    rf"{_INNER}[\])]",
    re.IGNORECASE,
)
_NAMES_CHARTS = re.compile(
    r"[\[(]\s?(?:(?:(?:to be )?(?:charted|shown|made) )?(?:for|on)|affects?|affecting)?:? ?"
    r"(?:the )?ch(?:arts?|ts?)\b\.?:? ?(?:(?:nos?|numbers?)\b\.?:? ?)?(?:INT )?[A-Z]{0,3}[0-9]",
    re.IGNORECASE,
)
_IS_PREVIOUS = re.compile(r"[\[(]\s?[0-9]{1,5}/[0-9]{2}\s?[\])]")
"""`[30/26]`, the notice before in the head of a chart: names no chart itself."""
_OTHERWISE = re.compile(r"\b(?:only|alone|not|except|all|both|items?)\b", re.IGNORECASE)
"""Words with which a bracket says more than the charts; other rules read it."""
_TELLS_PREVIOUS = re.compile(
    r"\b(?:last|prev|previous|after|update|former|preceding|notice|nm|ntm)\b|[\[/]", re.IGNORECASE
)
_BETWEEN = re.compile(r"[\s,;&]{0,40}(?:and\s{1,40})?")
_ENDS = re.compile(r"[ \t]{0,8}[.;:,]{0,2}[ \t]{0,200}(?:\n|\Z)|[ \t]?[.;][ \t]")
"""What shows that a line or sentence ends behind brackets."""
_JOINS = re.compile(
    r"[ \t]{0,8}[,;]?[ \t]{0,8}(?:and[ \t]{1,8}(?:also[ \t]{1,8})?)?", re.IGNORECASE
)
"""What joins two items on one line, so that charts on the line below are those of both."""
_STOPS = frozenset(".;,")
_MARKS = " \t\n.,;:_-"
_LINES_ABOVE = 12
"""How far above its charts an item may have its place."""


class Behind(NamedTuple):
    """Brackets, several in a row as one; whether they stand on lines that hold nothing else."""

    start: int
    end: int
    is_apart: bool


LayOut = Callable[[str, list[Line]], Layout]


def laid_out_with_charts(text: str, lines: list[Line], lay_out: LayOut) -> Layout:
    """The layout of a text, its items with the charts that stand behind them."""
    behind = list(_charts_behind(text, lines))
    while behind:
        blanked = _blanked(text, behind)
        layout = lay_out(blanked, _lines_of(text, blanked))
        told = [one for one in behind if layout.cut is None or one.start < layout.cut]
        found = _Found(text, layout, told)
        left = found.of_no_item()
        if not left:
            found.give()
            return layout
        behind = [one for one in behind if one not in left]
    return lay_out(text, lines)


def _charts_behind(text: str, lines: Sequence[Line]) -> Iterator[Behind]:
    """The brackets that may stand behind an item, in text order."""
    found = [one.span() for one in _BRACKET.finditer(text) if _may_name_charts(one.group())]
    if not found:
        return
    starts = [line.start for line in lines]
    placed = [index for index, line in enumerate(lines) if line.has("point", "half")]
    for start, end in _in_a_row(text, found):
        row = bisect_right(starts, start) - 1
        above = bisect_right(placed, row) - 1
        if above < 0 or row - placed[above] > _LINES_ABOVE:
            continue
        is_apart = not text[lines[row].start : start].strip()
        if is_apart and not _ENDS.match(text, end):
            # `[Chart 61] Insert …` leads what stands behind it.
            continue
        yield Behind(start, end, is_apart)


def _may_name_charts(words: str) -> bool:
    if _IS_PREVIOUS.fullmatch(words) or _OTHERWISE.search(words):
        return False
    if not any(map(str.isdigit, words)):
        return False
    if _NAMES_CHARTS.match(words):
        return True
    head = read_charts_behind(words, None) if _TELLS_PREVIOUS.search(words) else None
    return head is not None and all(chart.previous_written for chart in head.charts)


def _in_a_row(text: str, found: Sequence[Piece]) -> list[Piece]:
    """The brackets, those with nothing between them as one."""
    joined: list[Piece] = []
    for start, end in found:
        between = _BETWEEN.match(text, joined[-1][1]) if joined else None
        if between is not None and between.end() == start:
            joined[-1] = (joined[-1][0], end)
        else:
            joined.append((start, end))
    return joined


def _blanked(text: str, behind: Sequence[Behind]) -> str:
    """The text with blanks for the brackets; a stop behind them stands where they began."""
    characters = list(text)
    for start, end, is_apart in behind:
        for at in range(start, end):
            if characters[at] != "\n":
                characters[at] = " "
        if text[end : end + 1] in _STOPS:
            characters[end] = " "
            if not is_apart and text[start - 1] == " ":
                characters[start - 1] = text[end]
    return "".join(characters)


def _lines_of(text: str, blanked: str) -> list[Line]:
    """The lines of a text with brackets blanked, without those that held nothing else."""
    kept: list[Line] = []
    dropped = 0
    for line in read_lines(blanked):
        if line.is_blank and text[line.start : line.end].strip():
            dropped += 1
        else:
            kept.append(line._replace(row=line.row - dropped))
    return kept


class _Found:
    """The brackets, and the items of the layout that they stand behind."""

    def __init__(self, text: str, layout: Layout, behind: Sequence[Behind]) -> None:
        self._text = text
        self._layout = layout
        self._items = [_items_of(draft) for draft in layout.notices]
        pieces = sorted(
            (end, start, index, at)
            for index, items in enumerate(self._items)
            for at, item in enumerate(items)
            for start, end in item.pieces
        )
        self._ends = [piece[0] for piece in pieces]
        self._of_ends = [(index, self._items[index][at]) for _, _, index, at in pieces]
        self._owners = {one: self._owners_of(one) for one in behind}

    def _owners_of(self, one: Behind) -> list[tuple[int, Item]]:
        """The items whose words or place stand right before brackets, each with its notice."""
        at = bisect_right(self._ends, one.start)
        end = self._ends[at - 1] if at else 0
        if not at or self._text[end : one.start].strip(_MARKS):
            return []
        first = bisect_left(self._ends, end)
        found = {id(item): (index, item) for index, item in self._of_ends[first:at]}
        if one.is_apart:
            # Below `Insert:` they head the items that follow.
            ends = {key: i.verb_piece and i.verb_piece[1] for key, (_, i) in found.items()}
            found = {key: told for key, told in found.items() if ends[key] != end}
            for index, item in [*found.values()]:
                found |= {id(other): (index, other) for other in self._beside(index, item)}
        return list(found.values())

    def _beside(self, index: int, item: Item) -> Iterator[Item]:
        """The items before this one on the same line, joined to it: `wreck P, and rock Q`."""
        above = next((i for i, one in enumerate(self._items[index]) if one is item), 0)
        for other in reversed(self._items[index][:above]):
            start, end = min(item.pieces)[0], max(other.pieces)[1]
            if _JOINS.fullmatch(self._text, end, max(start, end)) is None:
                return
            yield other
            item = other

    def of_no_item(self) -> list[Behind]:
        """The brackets that cannot be those of items."""
        left = [one for one, owners in self._owners.items() if not owners]
        if any(one.is_apart and self._heads(one) for one in left):
            return [one for one in self._owners if one.is_apart or one in left]
        for index, items in enumerate(self._items):
            apart = [one for one in self._of_notice(index) if one.is_apart]
            if apart and self._is_of_section(index, items, apart):
                left += apart
        return left

    def _of_notice(self, index: int) -> list[Behind]:
        return [one for one, owners in self._owners.items() if owners and owners[0][0] == index]

    def _heads(self, one: Behind) -> bool:
        """Whether brackets stand above all that their notice says."""
        drafts = [draft for draft in self._layout.notices if draft.start <= one.start]
        if not drafts:
            return True
        items = self._items[len(drafts) - 1]
        said = [item.pieces for item in items] + [prose.pieces for prose in drafts[-1].prose]
        return not any(start < one.start for pieces in said for start, _ in pieces)

    def _is_of_section(self, index: int, items: list[Item], apart: list[Behind]) -> bool:
        """Whether brackets on lines of their own head what stands below, or are a foot for all."""
        bound = {id(item) for one in self._of_notice(index) for _, item in self._owners[one]}
        free = [item for item in items if id(item) not in bound]
        if not free or len(apart) < len(self._of_notice(index)):
            return False
        has_head = any(chart.head or chart.number for chart in self._layout.notices[index].charts)
        if id(max(items, key=lambda item: min(item.pieces))) not in bound:
            return has_head
        return len(apart) == 1 and (has_head or not self._stand_elsewhere(index))

    def _stand_elsewhere(self, index: int) -> bool:
        """Whether another notice has several items, and charts behind each."""
        counts = Counter(owners[0][0] for owners in self._owners.values() if owners)
        return any(other != index and count > 1 for other, count in counts.items())

    def give(self) -> None:
        """Give the brackets to the items that they stand behind, what is in doubt with a fault."""
        for one, owners in self._owners.items():
            for index, item in owners:
                reason = self._doubt(index, item, one)
                if reason is not None:
                    item.faults.append(charts_unread(self._text, (one.start, one.end), reason))
                item.behind = item.behind or (one.start, one.end)
                item.pieces = sorted([*item.pieces, (one.start, one.end)])

    def _doubt(self, index: int, item: Item, one: Behind) -> str | None:
        """Why brackets may not be those of the item before them, or not of it alone."""
        if item.behind is not None or item.charts is not None:
            return "other charts stand with the item too"
        places = [place.element.start for place in item.places]
        if places and min(places) < one.start < max(places):
            return "they stand between two places"
        if _ENDS.match(self._text, one.end) or any(start > one.start for start, _ in item.pieces):
            return None
        end = self._text.find("\n", one.end)
        for other in self._items[index]:
            if one.end <= min(other.pieces)[0] < (end if end >= 0 else len(self._text)):
                reason = "they stand between two items"
                other.faults.append(charts_unread(self._text, (one.start, one.end), reason))
                return reason
        return None


def charts_unread(text: str, piece: Piece, reason: str) -> Fault:
    """The fault of charts that stand behind an item and cannot be told for certain."""
    written = " ".join(text[slice(*piece)].split())
    return Fault("item-charts-unread", *piece, {"written": written, "reason": reason})


def _items_of(draft: NoticeDraft) -> list[Item]:
    """The items of a notice, each once, whichever of its charts hold it."""
    items = {id(item): item for chart in draft.charts for item in chart.items if item.pieces}
    return list(items.values())
