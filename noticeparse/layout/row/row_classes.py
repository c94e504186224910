"""The class that the heading of a table tells of its rows: `The following light-buoys are laid:`.

Rows that name no kind of their own are of that class.  Where it cannot be told which class the
heading means they are held back: `P2 | Fl.R.5s` is no light of its own under `These beacons`.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, NoticeDraft, Piece
from noticeparse.layout.handed_on import RowClass
from noticeparse.layout.item.class_headings import class_heading
from noticeparse.layout.item.classes_told import give_class, names_kind
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.row.row_lines import lone_verb
from noticeparse.readers.features import has_kind


def row_class(text: str, elements: Sequence[Element]) -> RowClass | None:
    """The class that a heading of rows names; None where it names nothing but its verb."""
    told = [one for one in elements if one.kind != "bar"]
    heading = (told[0].start, told[-1].end)
    found = class_heading(text, Line(0, *heading, tuple(told)))
    if found is not None:
        return RowClass(heading, found.things)
    return RowClass(heading, None) if has_kind(text[slice(*heading)]) else None


def take_class(
    text: str, elements: Sequence[Element], notice: NoticeDraft | None
) -> RowClass | None:
    """The class that a heading names; its line is then one of its notice."""
    found = row_class(text, elements)
    if found is not None and found.heading and found.things and notice is not None:
        notice.class_headings.append(found.heading)
    return found


def heading_over_rows(text: str, line: Line) -> Element | None:
    """The verb of a line over rows: `DELETE`, or a sentence that tells their class too."""
    told = class_heading(text, line)
    return lone_verb(text, line) if told is None else told.verb


class RowClasses:
    """Gives its class to each row, up to the next heading."""

    def __init__(self, text: str, above: RowClass | None) -> None:
        self.text = text
        self.above = above
        self._styles: dict[Piece, str] = {}

    def opens(self, elements: Sequence[Element]) -> None:
        """Take what stands over the rows below in the place of a verb, which ends the class."""
        self.above = row_class(self.text, elements)

    def give(self, item: Item) -> None:
        """Tell an item the class above it."""
        if item.verb_piece is not None:
            # A verb of its own ends what the heading says.
            self.above = None
        above = self.above
        if above is None or not item.words:
            return
        if above.things is not None:
            give_class(self.text, item, above.things, self._styles)
            return
        words = " ".join(self.text[slice(*piece)] for piece in item.words)
        if not names_kind(words):
            start, end = item.words[0][0], item.words[-1][1]
            written = {"written": " ".join(words.split())}
            item.faults.append(Fault("feature-kinds-several", start, end, written))
