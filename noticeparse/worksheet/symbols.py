"""The symbols of a plot: a cross-hair on the exact place, a ring that tells the verb, a sign.

The set is the program's own and says everything by form; its one colour only sets it off from the
graticule.  Nothing but hairlines goes through the place itself.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import cos, pi, sin

from noticeparse.records.feature import Feature
from noticeparse.records.geometry import Shape
from noticeparse.vocabulary import DANGERS
from noticeparse.worksheet.drawing import Item, Path, Pen, Point, Ring, Words

COLOUR = "#0b4f3a"
HAIR = Pen(0.1, colour=COLOUR)
THIN = Pen(0.25, colour=COLOUR)
DASHED = Pen(0.25, (0.9, 0.7), COLOUR)
HAIR_MM = 5.0
"""Half the length of a cross-hair."""
RING_MM = 3.0
SIGN_MM = 3.0

LINES = {
    "insert": Pen(0.35, colour=COLOUR),
    "delete": Pen(0.35, (2.0, 1.5), COLOUR),
    "from": Pen(0.35, (2.0, 1.5), COLOUR),
    "to": Pen(0.35, colour=COLOUR),
    "amend": Pen(0.35, (4.0, 1.0, 0.6, 1.0), COLOUR),
    "replace": Pen(0.35, (4.0, 1.0, 0.6, 1.0, 0.6, 1.0), COLOUR),
}
"""How lines and limits are drawn, by what is done to them."""

VERBS = {
    "insert": "insert",
    "delete": "delete",
    "amend": "amend",
    "replace": "replace",
    "from": "move: old place",
    "to": "move: new place",
}
SIGNS = {
    "mark": "buoy, beacon, float",
    "light": "light",
    "danger": "wreck, rock, danger",
    "depth": "depth",
    "cable": "cable, pipe",
    "area": "area, limit, route",
    "words": "legend, note",
    "structure": "structure, landmark",
    "other": "other",
}

_DEPTHS = frozenset({"SOUNDG", "DEPCNT", "DEPARE", "DRGARE", "SWPARE", "UNSARE"})
_CABLES = frozenset({"CBLSUB", "CBLOHD", "CBLARE", "PIPSOL", "PIPOHD", "PIPARE"})
_MARKS = frozenset({"LITFLT", "LITVES", "DAYMAR", "TOPMAR", "MORFAC"})


def sign_of(feature: Feature, shape: Shape) -> str:
    """The name of the sign for a feature: by its S-57 class, else by its words and its shape."""
    main = feature.s57[0] if feature.s57 else ""
    if main in _MARKS or main.startswith(("BOY", "BCN")):
        return "mark"
    if main == "LIGHTS":
        return "light"
    for name, classes in (("danger", DANGERS), ("depth", _DEPTHS), ("cable", _CABLES)):
        if main in classes:
            return name
    if feature.legend is not None or feature.kind in ("legend", "note"):
        return "words"
    if shape in ("area", "circle", "line", "arc"):
        return "area"
    return "structure" if main else "other"


def cross_hair(at: Point) -> Iterator[Item]:
    """Two hairlines that cross at the exact place."""
    x, y = at
    yield Path([(x - HAIR_MM, y), (x + HAIR_MM, y)], HAIR)
    yield Path([(x, y - HAIR_MM), (x, y + HAIR_MM)], HAIR)


def ring_of(verb: str, at: Point, *, is_in_pencil: bool = False) -> Iterator[Item]:
    """The ring round a place, which tells what is done there."""
    pen = DASHED if is_in_pencil else THIN
    x, y = at
    if verb == "amend":
        side = RING_MM * 1.2
        yield Path(
            [(x, y + side), (x + side, y), (x, y - side), (x - side, y)], pen, is_closed=True
        )
        return
    if verb != "from":
        yield Ring(at, RING_MM, pen)
    if verb == "replace":
        yield Ring(at, RING_MM * 0.72, pen)
    if verb in ("delete", "from"):
        for number in range(4):
            turn = pi / 4 + number * pi / 2
            ends = [(x + r * cos(turn), y + r * sin(turn)) for r in (1.1, RING_MM * 1.45)]
            yield Path(ends, pen)
    if verb == "to":
        yield Path([(x + 1.7, y + 3.6), (x + 3.9, y + 3.9), (x + 3.6, y + 1.7)], pen)
        yield Path([(x + 2.2, y + 2.2), (x + 3.9, y + 3.9)], pen)


def sign(name: str, left: float, bottom: float) -> Iterator[Item]:
    """The sign of a kind of feature, in a square of 3 mm."""

    def at(x: float, y: float) -> Point:
        return left + x, bottom + y

    if name == "mark":
        yield Path([at(0.4, 0.6), at(2.6, 0.6)], THIN)
        yield Path([at(0.9, 0.6), at(1.5, 2.8), at(2.1, 0.6)], THIN, is_closed=True)
    elif name == "light":
        for number in range(3):
            turn = number * pi / 3 + pi / 6
            dx, dy = 1.4 * cos(turn), 1.4 * sin(turn)
            yield Path([at(1.5 - dx, 1.5 - dy), at(1.5 + dx, 1.5 + dy)], THIN)
    elif name == "danger":
        yield Path([at(0.5, 1.5), at(2.5, 1.5)], THIN)
        yield Path([at(1.5, 0.5), at(1.5, 2.5)], THIN)
        for x, y in ((0.5, 0.5), (2.5, 0.5), (0.5, 2.5), (2.5, 2.5)):
            yield Ring(at(x, y), 0.18, THIN, COLOUR)
    elif name == "depth":
        yield Path([at(0.3, 2.5), at(1.5, 0.4), at(2.7, 2.5)], THIN)
    elif name == "cable":
        yield Path([at(0.1 + 0.7 * n, 0.9 + 1.2 * (n % 2)) for n in range(5)], THIN)
    elif name == "area":
        corners = [at(0.4, 0.4), at(2.6, 0.4), at(2.6, 2.6), at(0.4, 2.6)]
        yield Path(corners, DASHED, is_closed=True)
    elif name == "words":
        yield Words(at(1.5, 0.4), "T", 3.4, "middle", True, COLOUR)
    elif name == "structure":
        corners = [at(0.5, 0.5), at(2.5, 0.5), at(2.5, 2.5), at(0.5, 2.5)]
        yield Path(corners, THIN, is_closed=True)
        yield Ring(at(1.5, 1.5), 0.25, THIN, COLOUR)
    else:
        yield Ring(at(1.5, 1.5), 0.9, THIN)
