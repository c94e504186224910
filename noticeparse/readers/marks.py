"""Colours, shapes and topmarks of buoys, beacons and other structures, and the category of a mark.

In come the items that a phrase tells; out come the words of the record with their S-57 codes.
Body colours are read from the top down (`BYB`); what a category implies but the text does not
write is left out.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import groupby, pairwise
from typing import NamedTuple, cast

from noticeparse.readers.words import Item
from noticeparse.records.feature import Colour, ColourPattern
from noticeparse.vocabulary import Category, categories
from noticeparse.vocabulary.codes import (
    BEACON_SHAPES,
    BUOY_SHAPES,
    COLOUR_WORDS,
    COLOURS,
    PATTERNS,
    Attributes,
    add,
)

# Letters for the body of a mark; on a body B is black, which it never is on a light.
_LETTERS: tuple[tuple[str, Colour], ...] = (
    ("Or", "orange"), ("Bu", "blue"), ("Gy", "grey"), ("Br", "brown"), ("Mag", "magenta"),
    ("Pi", "pink"), ("Am", "amber"), ("Vi", "violet"),
    ("R", "red"), ("G", "green"), ("B", "black"), ("Y", "yellow"), ("W", "white"),
)  # fmt: skip
_SUFFIXES: dict[str, ColourPattern] = {
    "HS": "horizontal_stripes",
    "VS": "vertical_stripes",
    "DS": "diagonal_stripes",
    "CH": "squared",
}
# The letters of safe water and emergency wreck marks, which have vertical stripes.
_STRIPED: dict[tuple[Colour, ...], str] = {("red", "white"): "RW", ("blue", "yellow"): "BuY"}
_CALLED = frozenset(("named", "called", "known as", "lettered", "designated"))
_POLE_WORDS = frozenset(("perch", "stake", "pole", "post"))


class Body(NamedTuple):
    """The body of a mark."""

    colours: list[Colour]
    pattern: ColourPattern | None
    attributes: Attributes


class Shape(NamedTuple):
    """Shape and topmark of a mark."""

    shape: str | None
    topmark: str | None
    attributes: Attributes


def read_colour_letters(letters: str) -> tuple[list[Colour], ColourPattern | None] | None:
    """Colours and pattern of `BYB` or `RWVS`, None where it is no such string."""
    body, suffix = letters, letters[-2:]
    pattern = _SUFFIXES.get(suffix) if len(letters) > 2 else None
    if pattern is not None:
        body = letters[:-2]
    colours: list[Colour] = []
    at = 0
    while at < len(body):
        for written, colour in _LETTERS:
            if body.startswith(written, at):
                colours.append(colour)
                at += len(written)
                break
        else:
            return None
    if not 0 < len(colours) <= 6 or any(a == b for a, b in pairwise(colours)):
        return None
    if pattern is None and len(colours) > 1 and tuple(colours) not in _STRIPED:
        pattern = "horizontal_stripes"
    return colours, pattern


def read_body(items: Sequence[Item], *, is_mark: bool, is_striped: bool) -> Body:
    """The colours told; letters count only for marks, words for every structure."""
    colours: list[Colour] = []
    pattern: ColourPattern | None = None
    attributes: Attributes = {}
    for at, item in enumerate(items):
        behind = items[at + 1] if at + 1 < len(items) else None
        is_board = any(one.value == "daymark" for one in items[at + 2 : at + 3])
        is_board = is_board and all(one.role != "kind" for one in items[:at])
        if item.role == "colour" and (is_board or not _is_of_part(item, behind)):
            colours.append(cast(Colour, item.value))
        elif item.role == "pattern":
            pattern = cast(ColourPattern, item.value) if item.value else pattern
            add(attributes, item.sense.attributes if item.sense else {})
        elif item.role == "kind" and item.sense is not None:
            codes = cast("list[int]", item.sense.attributes.get("COLOUR", []))
            colours += [cast(Colour, COLOUR_WORDS[code]) for code in codes]
        elif item.role == "unknown" and is_mark and not _is_called(items[at - 1] if at else None):
            letters = read_colour_letters(item.text)
            if letters is not None:
                colours += letters[0]
                pattern = pattern or letters[1]
    colours = _said_once(colours)
    letters_of = _STRIPED.get(tuple(colours))
    if pattern is None and letters_of and is_striped:
        # The letters RW of a safe water mark are its vertical stripes.
        pattern = "vertical_stripes" if any(one.text == letters_of for one in items) else None
    if colours:
        attributes["COLOUR"] = [COLOURS[colour] for colour in colours]
    if pattern is not None:
        attributes["COLPAT"] = [PATTERNS[pattern]]
    return Body(colours, pattern, attributes)


def _said_once(colours: list[Colour]) -> list[Colour]:
    """Without what is merely said again: no band has its neighbour's colour."""
    half = len(colours) // 2
    if colours[:half] == colours[half:] and colours:
        return colours[:half]
    return [colour for colour, _ in groupby(colours)]


def _is_called(before: Item | None) -> bool:
    """Whether a letter is a name and no paint: `buoy lettered B`."""
    return before is not None and before.role == "plain" and before.text.lower() in _CALLED


def _is_of_part(colour: Item, behind: Item | None) -> bool:
    """Whether a colour is that of the topmark or the light named directly behind it."""
    if behind is None or behind.start - colour.end > 1:
        return False
    if behind.role == "topmark" or behind.value == "topmark":
        return True
    return behind.role == "kind" and behind.value in CARRIED_LIGHTS


CARRIED_LIGHTS = frozenset(
    ("light", "aero_light", "air_obstruction_light", "sector_light", "directional_light")
)
"""Kinds of lights that stand on something, and have colours of their own."""


def read_shape(items: Iterable[Item], *, form: str) -> Shape:
    """Shape and topmark told; a shape counts only for the form it is one of."""
    shape: str | None = None
    topmark: str | None = None
    attributes: Attributes = {}
    acronym, words = ("BOYSHP", BUOY_SHAPES) if form == "buoy" else ("BCNSHP", BEACON_SHAPES)
    for item in items:
        sense = item.sense
        if sense is None:
            continue
        code = sense.attributes.get(acronym)
        if isinstance(code, int) and item.role in ("kind", "shape") and form:
            shape = shape or _shape_word(item, words[code])
            add(attributes, {acronym: code})
        elif item.role == "topmark":
            topmark = topmark or sense.value
            add(attributes, sense.attributes)
    return Shape(shape, topmark, attributes)


def _shape_word(item: Item, word: str) -> str:
    # S-57 has one code for stake, pole, perch and post; the record keeps the word written.
    last = item.text.lower().split()[-1].rstrip("s")
    return last if last in _POLE_WORDS else word


_SIDES = frozenset(("port", "starboard"))


def category_items(items: Sequence[Item]) -> list[Item]:
    """The items that tell a category; `Port` before an unknown word begins a name."""
    found: list[Item] = []
    for at, item in enumerate(items):
        if item.role != "category":
            continue
        behind = items[at + 1] if at + 1 < len(items) else None
        named = behind is not None and behind.role in ("unknown", "proper", "place")
        is_next = behind is not None and behind.start - item.end <= 1
        if not (item.text.lower() in _SIDES and named and is_next):
            found.append(item)
    return found


def category_of(items: Sequence[Item]) -> tuple[str | None, Item | None]:
    """The category told, and the item that contradicts it where two do not go together."""
    found: Item | None = None
    for item in category_items(items):
        if found is None or item.value.startswith(found.value):
            found = item
        elif not found.value.startswith(item.value):
            return found.value, item
    return (found.value if found else None), None


def kind_of_category(category: str, form: str, *, lit: bool) -> str:
    """The kind that a category makes of a buoy or beacon."""
    row: Category = categories()[category]
    if form == "buoy":
        return row.light_buoy if lit else row.buoy
    return row.beacon


def class_of_category(category: str, form: str) -> str:
    """The S-57 class that a category gives a buoy or beacon."""
    row = categories()[category]
    return row.buoy_s57 if form == "buoy" else row.beacon_s57
