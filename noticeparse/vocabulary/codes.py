"""S-57 attributes as the data files write them: `CATLAM=1 COLOUR=3,1`.

Only coded attributes stand here; values such as a sounding or a height are fields of the records.
"""

from __future__ import annotations

Attributes = dict[str, int | list[int]]

LISTS = frozenset(
    (
        "CATACH", "CATBRG", "CATDPG", "CATHAF", "CATLIT", "CATLMK", "CATMPA", "CATOFP", "CATPIP",
        "CATREA", "CATSIT", "CATSIW", "CATSPM", "COLOUR", "COLPAT", "FUNCTN", "NATSUR", "PRODCT",
        "QUASOU", "RESTRN", "STATUS", "TECSOU",
    )
)  # fmt: skip
"""Attributes of S-57 type L, which hold several codes."""

COLOURS = {
    "white": 1, "black": 2, "red": 3, "green": 4, "blue": 5, "yellow": 6, "grey": 7, "brown": 8,
    "amber": 9, "violet": 10, "orange": 11, "magenta": 12, "pink": 13,
}  # fmt: skip
"""S-57 COLOUR by its word."""

PATTERNS = {"horizontal_stripes": 1, "vertical_stripes": 2, "diagonal_stripes": 3, "squared": 4}
"""S-57 COLPAT by its word."""

QUALITIES = {
    "depth unknown": 2,
    "doubtful sounding": 3,
    "no bottom found at value shown": 5,
    "least depth known": 6,
    "least depth unknown, safe clearance at value shown": 7,
    "value reported (not surveyed)": 8,
    "value reported (not confirmed)": 9,
    "maintained depth": 10,
}
"""S-57 QUASOU by its words."""

COLOUR_WORDS = {code: word for word, code in COLOURS.items()}
"""The COLOUR word of a code."""

BUOY_SHAPES = {
    1: "conical", 2: "can", 3: "spherical", 4: "pillar", 5: "spar", 6: "barrel", 7: "super-buoy",
    8: "ice buoy",
}  # fmt: skip
"""The word of a BOYSHP code."""

BEACON_SHAPES = {
    1: "pole", 2: "withy", 3: "beacon tower", 4: "lattice beacon", 5: "pile beacon", 6: "cairn",
    7: "buoyant beacon",
}  # fmt: skip
"""The word of a BCNSHP code."""


def read_attributes(written: str) -> Attributes:
    """The attributes of one field of a data file."""
    read: Attributes = {}
    for item in written.split():
        acronym, _, codes = item.partition("=")
        listed = [int(code) for code in codes.split(",")]
        read[acronym] = listed if acronym in LISTS else listed[0]
    return read


def add(to: Attributes, more: Attributes) -> None:
    """Adds attributes: lists grow by new codes, a single code already there stays."""
    for acronym, code in more.items():
        known = to.get(acronym)
        if known is None:
            to[acronym] = list(code) if isinstance(code, list) else code
        elif isinstance(known, list) and isinstance(code, list):
            known += [one for one in code if one not in known]
