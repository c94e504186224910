"""Pieces of an item that were cut off it at words which open none of their own.

`cable between P and Q (passing R)`, `zone bounded by P; Q; arc of 2M radius centred on R; S`,
`cable joining P and Q, except between R and S`: without the piece the item is another, and the
piece is no feature.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.build.extents import item_extent, over
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.evidence import opens_a_line
from noticeparse.layout.item.listed_places import is_whole_list
from noticeparse.readers.features import has_kind
from noticeparse.stretch import gather

_LINK = r"[ ,;:.]{0,3}+(?:\n[ \t]*(?=[a-z(]))?(?:(?:and|then|thence|along|by|but|on) ){0,2}"
_TORN = (
    r"(?:\((?:passing|running|via|through|by way of)\b"
    r"|(?:(?:an?|the) )?(?:circular )?arcs? (?:of|with|centred|radius|from|through|[0-9])"
    r"(?! (?:visibility|light))"
    r"|\(?(?P<exception>except(?:ing)?|excluding|save for|not including|with the exception of)\b"
    r"(?! (?:(?:on |for )?charts?|where|as|that)\b))"
)
_BEHIND = re.compile(rf"{_LINK}(?P<torn>{_TORN})", re.IGNORECASE)
_PIECE = re.compile(rf"[ ,;]{{0,3}}+{_TORN}", re.IGNORECASE)
_IN_ORDER = re.compile(
    r"[ ,;:.]{0,3}+\n?+[ \t]*+(?:(?:taken|joined|drawn|connected|joining|and) )*"
    r"in (?:the|this|that) (?:order|sequence)\b(?P<letters>[^\n]{0,80})",
    re.IGNORECASE,
)
_JOINED_TO = re.compile(
    r"[ ,;:.]{0,3}+(?:\n[ \t]*)?(?P<torn>(?:and|to|with) (?:(?:the|an?) )?existing\b)",
    re.IGNORECASE,
)
"""`cable joining P, Q` and below it `and existing cable in R`: the line goes on to R."""
_JOINS = re.compile(r"\b(?:joining|between|connecting|from|linking)\b", re.IGNORECASE)
_KEYED = re.compile(r"[A-Z][A-Za-z ]{1,24}?[ \t]{0,12}:[ \t]")
"""A key that nobody knows, as `Type: Buoy` below the place of another record."""
_LEADS_ON = re.compile(r"[a-z0-9)\"',.] (?:or|for|with|as|plus)[ ,;:]{0,4}$", re.IGNORECASE)
"""The end of a description behind which more of it must stand: `light-buoy for`."""
_LETTER = re.compile(r"\(([a-z0-9]{1,2})\)|(?<![A-Za-z0-9])([A-Z])(?![A-Za-z0-9])")


def torn_items(context: Context, item: Item) -> Iterator[Fault]:
    """The fault of a piece that is read as an item, and that of the item it was cut from."""
    words = gather(context.text, item.words).text
    piece = _PIECE.match(words) or _IN_ORDER.match(words) or _JOINED_TO.match(words)
    if item.verb_piece is None and piece is not None:
        # An exception limits the command, and that is told.
        if piece.groupdict().get("exception") is None:
            yield over(context, item, "item-without-feature")
        return
    if not item.words and item.tail and _is_next_record(context.text, item.tail[0]):
        yield over(context, item, "item-without-feature")
        return
    # `P cable, joining this position with`: the other places stand below.
    is_open = not item.added and not is_whole_list(context.text, item)
    if item.has_place and is_open and _LEADS_ON.search(words, max(len(words) - 12, 0)):
        yield over(context, item, "item-torn")
        return
    end = item_extent(item)[1]
    behind = _BEHIND.match(context.text, end, end + 200)
    if behind is None and _JOINS.search(words):
        behind = _JOINED_TO.match(context.text, end, end + 200)
    if behind is not None and not any(a <= behind.start("torn") < b for a, b in item.pieces):
        yield over(context, item, "item-torn")
    elif (order := _IN_ORDER.match(context.text, end, end + 200)) is not None:
        told = [a or b for a, b in _LETTER.findall(order["letters"])]
        read = [place.label for place in item.places if place.label is not None]
        if told and read and told != read:
            yield over(context, item, "item-torn")


def _is_next_record(text: str, piece: Piece) -> bool:
    """Whether words behind a place open a line with a key, so that they begin what comes next."""
    keyed = _KEYED.match(text, *piece) if opens_a_line(text, piece[0]) else None
    return keyed is not None and has_kind(text[keyed.end() : piece[1]])
