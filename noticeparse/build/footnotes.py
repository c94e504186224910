"""Marks of notes on items, `wreck¹`, and what the notes say of them, `¹ Not on chart 904`.

A note that limits the command holds it back; of every other it is said that there is one, since
what it says may weigh as much.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from noticeparse.build.extents import item_extent, quoting
from noticeparse.build.pointers import Pointed, pointed
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.line.footnotes import (
    FARTHEST,
    Mark,
    bracketed_marks,
    bracketed_note,
    marks_in,
    note_of,
)
from noticeparse.layout.sentence.lead_words import hangs
from noticeparse.readers.limiting_lines import limits_items, limits_last
from noticeparse.readers.limiting_words import limits_in
from noticeparse.records.chart import ChartSection
from noticeparse.stretch import unquoted


def footnotes(
    context: Context,
    path: str,
    sections: Sequence[Section],
    charts: Sequence[ChartSection],
    *,
    until: int,
) -> Iterator[tuple[Fault, list[str]]]:
    """A fault for each item with a mark; the notes of a notice stand before `until`."""
    items = list({id(item): item for section in sections for item in section.items}.values())
    if not items:
        return
    first = min(item_extent(item)[0] for item in items)
    text = unquoted(context.text[first:until])
    notes: dict[str, str] | None = None
    actions = list(pointed(path, charts))
    for item in items:
        for mark in _marks_of(text, first, item):
            notes = _notes(text) if notes is None else notes
            note = notes.get(mark.key)
            if note is None and mark.key[0] in "*(":
                # Stars without a note are ornaments, or tell of first publication, and a letter
                # is that of a place.
                continue
            code = "item-limited" if note is not None and _limits(note) else "item-with-note"
            piece = mark.span[0] + first, mark.span[1] + first
            yield quoting(context, code, piece), _of(context, item, actions)


def _marks_of(text: str, first: int, item: Item) -> Iterator[Mark]:
    """The marks on the lines of an item, in the text that begins with the first of all items."""
    start, end = item_extent(item)
    farthest = min(len(text), end - first + FARTHEST)
    stop = text.find("\n", end - first, farthest)
    stop = farthest if stop < 0 else stop
    yield from marks_in(text, start - first, stop)
    yield from bracketed_marks(text, start - first, stop)


def _notes(text: str) -> dict[str, str]:
    """What the notes in a text say, by their marks."""
    found: dict[str, str] = {}
    at = 0
    while at < len(text):
        end = text.find("\n", at)
        end = len(text) if end < 0 else end
        note = note_of(text, at, end) or bracketed_note(text, at, end)
        if note is not None:
            found.setdefault(*note)
        at = end + 1
    return found


def _limits(note: str) -> bool:
    plain = note.strip(" .")
    return (
        hangs(plain)
        or limits_last(plain)
        or limits_items(plain) is not None
        or next(limits_in(plain), None) is not None
    )


def _of(context: Context, item: Item, actions: Sequence[Pointed]) -> list[str]:
    start = context.span(*item_extent(item)).start
    return [one.pointer for one in actions if one.action.span.start == start]
