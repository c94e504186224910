"""What the laws draw from: pools of real pieces, then texts, positions and notices made of them.

All names lie on the invented Tavrenne Islands.
"""

from __future__ import annotations

from typing import NamedTuple

from hypothesis import strategies as st

from noticeparse.testing import WrittenPosition, positions
from noticeparse.testing.generator.coordinates import FORMS
from noticeparse.testing.generator.truth import Coordinate, Point
from noticeparse.testing.strategies import ALL_FORMS

# Pools

PLACES = ("Port Ellory", "Quill Sound", "Dunmarrow Point", "Sable Tooth Rocks", "Brannoch Rock")
SYMBOLS = "°º˚'’′´`ʹ\"″”·•∙⋅.,-‐–—−/|()[]₀₆½¼²ﬂﬁ\u00ad\u200b\u00a0\u2009\ufeff\ufffd"
ODD = "\x00\x07\x1b\x7f\x85\x9f\ud800\udfff\u2028\u202e\U0001f6a2٤४é\r\n\t "
PIECES = (
    "47-12.34S 123-45.67W", "47° 12´·34S., 123° 45´·67W.", "-4712.34-12345.67/", "12'.90S 46'.20W",
    "47°12.34'S", "123°45.67'W", "47-12.34", "Fl(3)WRG.15s21m15-11M", "Q(6)+LFl.15s", "VQ(3)5s",
    "2F.R(vert)", "W 171°-195°, R 195°-268°", "Racon(K)", "Horn(2)30s", "8₆", "depth 8.6m",
    "6¼ fm", "3fm 2ft", "dries 1.2m", "least depth 4.2m", "(a)", "(b) above", "(a)-(d) above",
    "Insert", "Delete", "Amend", "Replace", "Move", "Substitute", "to", "by", "with", "from",
    "joining", "bounded by", "centred on", "close W of", "137°T, 2.4M from", "radius 2 miles",
    "Chart 802 [12/26] WGS84", "Charts affected: 802, 803", "2417(T)/26", "417/26", "1407/2026",
    "Notice 288(T)/26 is cancelled.", "until 1 October 2026", "Page 4 of 12",
    "Weekly list 26/2026", "port-hand light-buoy", "dangerous wreck", "obstruction",
    "legend, \"Foul\"", "submarine cable",
    "NAVAREA WARNING 123/26", "Position:", "Feature:", "Verb | Feature | Position", "----------",
    "> ", "* ", "\n", "\n\n", "\r\n", "  ", "\t", " | ", "; ", ". ", "- ", *PLACES,
)  # fmt: skip

# Texts

characters = st.text(
    st.one_of(
        st.sampled_from(SYMBOLS + ODD),
        st.characters(codec=None),
        st.sampled_from("0123456789NSEW"),
    )
)
"""Any code points, lone surrogates and controls among them."""

pieces = st.lists(
    st.one_of(st.sampled_from(PIECES), st.text(st.sampled_from(SYMBOLS + ODD), max_size=3))
)
texts = st.one_of(characters, pieces.map("".join), pieces.map(" ".join), pieces.map("\n".join))
"""Texts that look like notices here and there, and texts that look like nothing."""

# Positions


@st.composite
def spellings(draw: st.DrawFn, most: int = 4) -> list[WrittenPosition]:
    """One position, written in several ways: in minutes, and where it can be in seconds."""
    decimals = draw(st.sampled_from((0, 1, 2, 2, 3)))
    scale = 60 * 10**decimals
    lat, lon = (Coordinate(draw(st.integers(0, last * scale)), 1, decimals) for last in (90, 180))
    letters = draw(st.sampled_from(("SW", "NE", "NW", "SE")))
    values = {(1, decimals): Point(lat, lon)}
    if decimals == 2:
        # A hundredth of a minute is six tenths of a second.
        values[2, 1] = Point(*(half._replace(steps=half.steps * 6, unit=2, decimals=1)
                               for half in (lat, lon)))  # fmt: skip
    pairs = [
        (form, point)
        for form in ALL_FORMS
        for (unit, digits), point in values.items()
        if form.unit == unit
        and digits in form.decimals
        # Without noughts in front, a short longitude may have lost its first figure.
        and not ("{n}" in form.half and lon.steps < 100 * scale)
    ]
    chosen = draw(st.lists(st.sampled_from(pairs), min_size=1, max_size=most))
    return [WrittenPosition.of(form, point, letters) for form, point in chosen]


_HYPHENS = [form for form in FORMS if form.name == "hyphen"]


def island_positions() -> st.SearchStrategy[str]:
    """A position among the islands, as radio warnings write it."""
    return positions(forms=_HYPHENS, is_at_islands=True).map(lambda one: one.text)


# Notices

LIGHTS = (
    "Fl(3)WRG.15s21m15-11M",
    "Fl.R.5s",
    "Q(6)+LFl.15s",
    "Oc.3s12m10M",
    "Iso.G.4s8m5M",
    "Fl(2+1)G.10s",
)
DEPTHS = (
    "depth 8.6m",
    "depth 12m",
    "sounding 21₅",
    "depth 3fm 2ft",
    "obstruction, least depth 4.2m",
)
FEATURES = (
    "port-hand light-buoy, {light}", "light, {light}", "{depth}", "dangerous wreck", "obstruction",
    "north cardinal light-buoy, Q", "special buoy", "submarine pipeline",
)  # fmt: skip


class Item(NamedTuple):
    """A line of a notice."""

    verb: str
    phrase: str
    position: str

    @property
    def line(self) -> str:
        return f"{self.verb} {self.phrase}   {self.position}"


@st.composite
def items(draw: st.DrawFn) -> Item:
    phrase = draw(st.sampled_from(FEATURES)).format(
        light=draw(st.sampled_from(LIGHTS)), depth=draw(st.sampled_from(DEPTHS))
    )
    return Item(draw(st.sampled_from(("Insert", "Delete"))), phrase, draw(island_positions()))


@st.composite
def notices(draw: st.DrawFn) -> str:
    """A small notice: head, heading, one or two charts with a few items each."""
    number = draw(st.integers(1, 5000))
    mark = draw(st.sampled_from(("", "", "(T)", "(P)")))
    lines = [f"{number}{mark}/26", f"TAVRENNE ISLANDS - {draw(st.sampled_from(PLACES))} - Buoy."]
    for chart in draw(st.lists(st.integers(800, 999), min_size=1, max_size=2, unique=True)):
        lines.append(f"Chart {chart} [{draw(st.integers(1, 500))}/26] WGS84")
        lines += [item.line for item in draw(st.lists(items(), min_size=1, max_size=3))]
    return "\n".join(lines) + "\n"


bulletins = st.lists(notices(), min_size=1, max_size=3).map("\n".join)


@st.composite
def damaged(draw: st.DrawFn) -> str:
    """A bulletin with a few characters exchanged, lost, or pushed in."""
    text = draw(bulletins)
    for _ in range(draw(st.integers(1, 4))):
        at = draw(st.integers(0, len(text)))
        lost = draw(st.sampled_from((0, 1, 1, 2, 12)))
        text = text[:at] + draw(st.sampled_from((*SYMBOLS, *ODD, *PIECES, ""))) + text[at + lost :]
    return text


anything = st.one_of(texts, bulletins, damaged(), st.tuples(bulletins, texts).map("".join))
