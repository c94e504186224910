"""How far an item reaches in the text, and faults of an item as a whole."""

from __future__ import annotations

from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece
from noticeparse.stretch import Stretch


def over(context: Context, item: Item, code: str, **values: str) -> Fault:
    """A fault of the whole item."""
    return quoting(context, code, item_extent(item), **values)


def quoting(context: Context, code: str, piece: Piece, **values: str) -> Fault:
    """A fault of a stretch of the text, whose message quotes it as it stands in the original."""
    return Fault(code, *piece, {"written": context.written(*piece), **values})


def within(
    context: Context, code: str, words: Stretch, span: tuple[int, int], **values: str
) -> Fault:
    """A fault of a span of some words, whose message quotes it."""
    return quoting(context, code, words.extent(span), **values)


def with_item(context: Context, item: Item, fault: Fault) -> Fault:
    """An unknown verb on the first line of its item stands for the whole item, which is lost."""
    start, end = item_extent(item)
    first, last = min(fault.start, start), max(fault.end, end)
    if fault.code != "verb-unknown" or "\n" in context.text[first : max(fault.end, start)]:
        return fault
    return fault._replace(start=first, end=last)


def item_extent(item: Item) -> Piece:
    """From the first character of an item to the last of its last position."""
    start = min(item.pieces)[0] if item.pieces else 0
    places = [place.element for group in item.groups for place in group.places]
    ends = [place.end for place in places]
    if places and not (item.words and item.words[0][0] > min([e.start for e in places])):
        return start, max(ends)
    added = [piece for one in item.added for piece in one.pieces]
    ends += [end for _, end in (*item.words, *item.change, *added)]
    # `depth 5 m, close E of this place`: how it lies to the place in front.
    leads = (piece for group in item.groups for piece in group.lead)
    ends += [end for start, end in leads if any(0 <= start - last <= 2 for _, last in item.words)]
    if not places:
        ends += [end for _, end in item.pieces]
    return start, max(ends, default=start)


def own_words(item: Item) -> list[Piece]:
    """The words of an item without a class that is told above it, of several."""
    kept = [w for w in item.words if any(a <= w[0] and w[1] <= b for a, b in item.pieces)]
    return kept or item.words


def extent_of(pieces: list[Piece]) -> Piece:
    """From the first character of some pieces to the last."""
    return min(start for start, _ in pieces), max(end for _, end in pieces)


def first_offset(items: list[Item]) -> int:
    """Where the first of some items starts."""
    return min((item_extent(item)[0] for item in items), default=0)


def last_offset(items: list[Item]) -> int:
    """Where the last of some items ends."""
    return max((item_extent(item)[1] for item in items), default=0)
