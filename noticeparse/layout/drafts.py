"""What the layout makes of a bulletin, before any record is built: heads, items, prose in place.

A draft holds stretches of the repaired text and the elements in them; values are read from them
later.  Offsets count in the repaired text.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.layout.handed_on import HandedOn
from noticeparse.layout.line.elements import Element, Line
from noticeparse.records.reference import NoticeStatus

Piece = tuple[int, int]
"""A stretch of the repaired text."""


@dataclass
class Place:
    """A position, or a reference to positions, and the letter before it."""

    element: Element
    label: str | None = None
    scope: str | None = None
    """The letter above the number `(i)` of a list within a list."""


@dataclass
class Group:
    """The places that follow one stretch of relation words: `joining:` and its positions."""

    lead: list[Piece] = field(default_factory=list)
    role: str | None = None
    """What the column or key says: `to`, `numbered`, `joining`, `bounded`, `centred`."""
    places: list[Place] = field(default_factory=list)


class Added(NamedTuple):
    """Words from another column, and what to read before and behind them."""

    joint: str
    pieces: list[Piece]
    ending: str


@dataclass
class Item:
    """One action as it stands in the text."""

    verb: str | None = None
    verb_piece: Piece | None = None
    """Where its own verb stands; None where the verb is carried down from a heading."""
    label: str | None = None
    label_piece: Piece | None = None
    scope: str | None = None
    """The letter above its own number, in a list within a list."""
    words: list[Piece] = field(default_factory=list)
    """The feature phrase, with the relation words before the first place."""
    named: list[Piece] = field(default_factory=list)
    """Those of its words that are the name of a light, where a column of names says so."""
    groups: list[Group] = field(default_factory=list)
    tail: list[Piece] = field(default_factory=list)
    """Words behind the last place."""
    radius: Piece | None = None
    """The radius of a circle, where a column of its own says it."""
    change: list[Piece] = field(default_factory=list)
    """What the feature becomes, where a column or a key says so."""
    old: list[Piece] = field(default_factory=list)
    added: list[Added] = field(default_factory=list)
    """What other columns or keys say of the feature."""
    heading: Piece | None = None
    """The words for the class in the line that heads it: `depths` of `Depths to be inserted`."""
    number: Element | None = None
    """The number of its notice, where it stands in the item's own row."""
    charts: Piece | None = None
    """Where it says that it is for some charts of its notice only."""
    behind: Piece | None = None
    """The brackets behind it that name its charts, with the notice before of each."""
    is_list_of_places: bool = False
    """Whether it only gives letters to positions, for other items: `Positions: A P; B Q`."""
    equals: Piece | None = None
    """The words that name several depths, where it is one of them: `depths 6.1m and 7.4m`."""
    pieces: list[Piece] = field(default_factory=list)
    """All stretches of the item, in text order."""
    faults: list[Fault] = field(default_factory=list)

    @property
    def places(self) -> list[Place]:
        """The places of all its groups, one behind the other."""
        if len(self.groups) == 1:
            # As most have: this is asked for every item again and again.
            return [*self.groups[0].places]
        return [place for group in self.groups for place in group.places]

    @property
    def refers(self) -> bool:
        """Whether a place of it is a reference to another item, which may name its feature."""
        return any(place.element.kind != "point" for place in self.places)

    @property
    def has_place(self) -> bool:
        """Whether any place stands with the item."""
        # A plain loop: this is asked for every item again and again.
        for group in self.groups:  # noqa: SIM110
            if group.places:
                return True
        return False


@dataclass
class Prose:
    """A paragraph that is no action."""

    pieces: list[Piece]
    elements: list[Element]


@dataclass
class ChartDraft:
    """A chart section: its head as words, its items."""

    head: list[Piece] = field(default_factory=list)
    number: str | None = None
    """The chart number where a column gives it."""
    previous: Piece | None = None
    """The notice before, where a column gives it."""
    letters: Piece | None = None
    """The numbers of its items, where a column gives them."""
    panel: Piece | None = None
    """Its panel, where a column gives it without a word for one."""
    international: Piece | None = None
    """Its international number, where a column gives it without its letters."""
    items: list[Item] = field(default_factory=list)


@dataclass
class NoticeDraft:
    """A notice: its number, its heading, its chart sections and its prose."""

    number: Element | None = None
    number_words: str | None = None
    series: str | None = None
    is_radio: bool = False
    status: NoticeStatus | None = None
    """What words before its number say of it: `TEMPORARY NOTICE 40/26`."""
    mark_above: Piece | None = None
    """The line above it that says so of it, or may: `TEMPORARY`."""
    is_original: bool = False
    is_for_none: bool = False
    """Whether it says that it is for no chart."""
    heading: list[Piece] = field(default_factory=list)
    sources: list[Piece] = field(default_factory=list)
    clauses: list[Piece] = field(default_factory=list)
    """Sentences of the head that name cancelled notices, datum or validity."""
    cancelled: list[Piece] = field(default_factory=list)
    """The notices it cancels, from a column of their own."""
    charts: list[ChartDraft] = field(default_factory=list)
    prose: list[Prose] = field(default_factory=list)
    idle_verbs: list[Piece] = field(default_factory=list)
    """Verbs under which no item stands."""
    class_headings: list[Piece] = field(default_factory=list)
    """Lines that head items by their class, `Depths to be inserted`, or their name in a list, and
    degrees told once for the places below them."""
    repeats: bool = False
    """Whether each record of it names notice and chart anew."""
    end: int = 0
    start: int = 0


@dataclass
class ListDraft:
    """A list of the edition: its title line and its entries."""

    kind: str
    title: Line
    entries: list[Line] = field(default_factory=list)


@dataclass
class Layout:
    """Everything the layout found."""

    notices: list[NoticeDraft]
    lists: list[ListDraft]
    loose: list[Prose]
    """Prose that belongs to no notice."""
    front: list[Line] = field(default_factory=list)
    """Lines outside the notices: title, number and date of the edition, and whatever else."""
    ignored: list[Piece] = field(default_factory=list)
    left_out: list[Piece] = field(default_factory=list)
    """Lines that a text in the canonical layout has behind its mark for what it leaves out."""
    titles: list[Line] = field(default_factory=list)
    """Rows of column titles; one may state the datum of all positions below it."""
    cut: int | None = None
    """Where the layout ends, if not with the text."""
    handed_on: HandedOn = field(default_factory=HandedOn)
    """What the layout of what follows needs to know."""

    def leave_out(self, text: str, line: Line) -> None:
        """What a text leaves out is lost to its reader too; the lines of a block are one loss."""
        goes_on = bool(self.left_out) and not text[self.left_out[-1][1] : line.start].strip()
        start = self.left_out.pop()[0] if goes_on else line.start
        self.left_out.append((start, line.end))
