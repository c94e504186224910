"""Positions that a list names for the items below: `Positions (1) P`, `Insert wreck at (1)`."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import chain
from typing import NamedTuple

from noticeparse.build.extents import item_extent, over
from noticeparse.build.geometry import read_geometry
from noticeparse.build.positions import Labels, scoped
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, Piece
from noticeparse.layout.place.heads_of_places import TITLES_OF_CHANGES
from noticeparse.readers.letters import read_letters
from noticeparse.readers.places import is_connector
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import gather


def announced_letters(context: Context, item: Item) -> tuple[str, ...]:
    """The letters of `Positions (1) P (2) Q`, to which later items refer; else none."""
    places = item.places
    words = gather(context.text, item.words).text.strip(" :.,")
    behind = gather(context.text, item.tail).text.strip(" :.,").lower()
    if item.is_list_of_places:
        return tuple(place.label for place in places if place.label is not None)
    if not is_connector(words) or (words and not words.lower().startswith("pos")):
        return ()
    if behind and behind not in TITLES_OF_CHANGES:
        return ()
    letters = tuple(place.label for place in places if place.label is not None)
    return letters if len(letters) == len(places) else ()


class Listed(NamedTuple):
    """A list of positions under one of its charts, and what is told of it there."""

    item: Item
    letters: tuple[str, ...]
    faults: list[Fault]
    labels: Labels
    path: str
    chart: str | None


class ListsOfPlaces:
    """The lists of positions of a notice; items under any of its charts may name their letters."""

    def __init__(self) -> None:
        self._listed: list[Listed] = []

    def add(self, listed: Listed) -> None:
        """A list, whose section may go on."""
        self._listed.append(listed)

    def untold(self, context: Context) -> Iterator[Listed]:
        """The lists with a position that no item names, each with a fault for it."""
        referred: dict[Piece, set[str]] = {}
        for one in self._listed:
            referred.setdefault(item_extent(one.item), set()).update(one.labels.referred)
        for one in self._listed:
            if not referred[item_extent(one.item)].issuperset(one.letters):
                one.faults.append(over(context, one.item, "item-without-verb"))
                yield one


def note_labels(context: Context, item: Item, labels: Labels) -> None:
    """Let an item that is no action name positions that later items refer to."""
    words = gather(context.text, item.words)
    read_geometry(
        context,
        item,
        (),
        words,
        labels,
        kind="unknown",
        is_move=False,
        says_limit=False,
        faults=[],
    )
    labels.unnamed.update(announced_letters(context, item))
    if item.is_list_of_places:
        for place in item.places:
            if place.element.value.faults:
                labels.doubts[str(place.label)] = tuple(place.element.value.faults)


def names_by_reference(context: Context, item: Item, labels: Labels) -> bool:
    """Whether an item without words refers to another one that may name its feature.

    A letter of a list of positions names none.
    """
    places = [place.element for place in item.places]
    told = [read_letters(context.text[e.start : e.end]) for e in places if e.kind == "reference"]
    return item.refers and not (told and labels.unnamed.issuperset(chain.from_iterable(told)))


def define_label(item: Item, labels: Labels, geometry: Geometry, faults: list[Fault]) -> None:
    """Let the letter of an item stand for its place in what is told below it."""
    # A letter of a list of places stands for that place, and not for the item that has it too.
    if item.label is None or item.label_piece is None or item.label in labels.unnamed:
        return
    if not labels.define(scoped(item.label, item.scope), list(geometry.positions)):
        values = {"letter": item.label}
        faults.append(Fault("letter-used-twice", *item.label_piece, values))
