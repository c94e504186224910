"""What the laws draw from: pools of real pieces, then texts, positions and notices made of them.

All names lie on the invented Tavrenne Islands.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from typing import NamedTuple

from hypothesis import strategies as st

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

# Positions: an exact value, and every way to write it


class Written(NamedTuple):
    """A position as written, and its exact value in degrees."""

    text: str
    exact: tuple[Fraction, Fraction]


class Half(NamedTuple):
    """One coordinate: degrees, minutes and decimals of a minute as figures."""

    degrees: int
    minutes: int
    decimals: str
    letter: str

    @property
    def exact(self) -> Fraction:
        size = self.degrees + (Fraction(self.minutes) + Fraction(f"0.{self.decimals or 0}")) / 60
        return -size if self.letter in "SW" else size

    @property
    def width(self) -> int:
        return 2 if self.letter in "NS" else 3

    @property
    def deg(self) -> str:
        return f"{self.degrees:0{self.width}d}"

    @property
    def word(self) -> str:
        return {"N": "North", "S": "South", "E": "East", "W": "West"}[self.letter]

    def figures(self, point: str = ".") -> str:
        """The minutes with their decimals."""
        return f"{self.minutes:02d}" + (f"{point}{self.decimals}" if self.decimals else "")

    def marked(self, mark: str, dot: str) -> str:
        """The minutes with the mark before the decimals: `12´·34`."""
        return f"{self.minutes:02d}{mark}" + (f"{dot}{self.decimals}" if self.decimals else "")

    def seconds(self) -> tuple[str, str]:
        """Minutes and seconds; a hundredth of a minute is six tenths of a second."""
        tenths = int((self.decimals or "").ljust(2, "0")) * 6
        return f"{self.minutes:02d}", f"{tenths // 10:02d}.{tenths % 10}"


@st.composite
def halves(draw: st.DrawFn, letters: str, decimals: int, last: int) -> Half:
    degrees = draw(st.integers(0, last - 1))
    minutes = draw(st.integers(0, 59))
    digits = draw(st.text("0123456789", min_size=decimals, max_size=decimals))
    return Half(degrees, minutes, digits, draw(st.sampled_from(letters)))


def _with_seconds(write: Callable[[Half, str, str], str]) -> Callable[[Half], str]:
    return lambda half: write(half, *half.seconds())


FORMS: dict[str, Callable[[Half], str]] = {
    "symbols": lambda h: f"{h.degrees}°{h.figures()}'{h.letter}",
    "primes": lambda h: f"{h.deg}° {h.figures()}′ {h.letter}",
    "acute": lambda h: f"{h.deg}° {h.marked('´', '·')}{h.letter}.",
    "mark first": lambda h: f"{h.deg}° {h.marked(chr(39), '.')} {h.letter}",
    "middle dot": lambda h: f"{h.deg}°{h.figures('·')}'{h.letter}",
    "hyphens": lambda h: f"{h.deg}-{h.figures()}{h.letter}",
    "en dash": lambda h: f"{h.deg}–{h.figures()} {h.letter}",
    "blanks": lambda h: f"{h.deg} {h.figures()} {h.letter}",
    "compact": lambda h: f"{h.deg}{h.figures()}{h.letter}",
    "letter first": lambda h: f"{h.letter}{h.deg} {h.figures()}",
    "letter first, symbols": lambda h: f"{h.letter} {h.deg}°{h.figures()}'",
    "words": lambda h: f"{h.deg}°{h.figures()}' {h.word}",
    "decimal comma": lambda h: f"{h.deg}°{h.figures(',')}'{h.letter}",
    "deg": lambda h: f"{h.deg} deg {h.figures()} min {h.letter}",
    "ordinal": lambda h: f"{h.deg}º{h.figures()}’{h.letter}",
    "thin spaces": lambda h: f"{h.deg}°\u2009{h.figures()}'\u00a0{h.letter}",
    "seconds": _with_seconds(lambda h, m, s: f"{h.deg}°{m}'{s}\"{h.letter}"),
    "seconds, hyphens": _with_seconds(lambda h, m, s: f"{h.deg}-{m}-{s}{h.letter}"),
    "seconds, words": _with_seconds(lambda h, m, s: f"{h.deg} deg {m} min {s} sec {h.letter}"),
    "seconds, compact": _with_seconds(lambda h, m, s: f"{h.deg}{m}{s}{h.letter}"),
}
"""Every form with a letter; both coordinates of a position take the same one."""

SEPARATORS = (" ", ", ", "; ", " / ", "\n")
NEEDS_TWO_DECIMALS = tuple(name for name in FORMS if name.startswith("seconds"))


def iso(lat: Half, lon: Half) -> str:
    """The ISO 6709 form in degrees and minutes."""
    signs = ["-" if half.letter in "SW" else "+" for half in (lat, lon)]
    return f"{signs[0]}{lat.deg}{lat.figures()}{signs[1]}{lon.deg}{lon.figures()}/"


@st.composite
def spellings(draw: st.DrawFn, most: int = 4) -> list[Written]:
    """One position, written in several ways."""
    decimals = draw(st.sampled_from((0, 1, 2, 2, 3)))
    lat = draw(halves("NS", decimals, 90))
    lon = draw(halves("EW", decimals, 180))
    exact = (lat.exact, lon.exact)
    forms = [name for name in FORMS if decimals == 2 or name not in NEEDS_TWO_DECIMALS]
    written = [Written(iso(lat, lon), exact)]
    for name in draw(st.lists(st.sampled_from(forms), min_size=1, max_size=most)):
        between = draw(st.sampled_from(SEPARATORS))
        written.append(Written(FORMS[name](lat) + between + FORMS[name](lon), exact))
    return written


@st.composite
def island_positions(draw: st.DrawFn) -> str:
    """A position among the islands, as radio warnings write it."""
    lat = draw(halves("S", 2, 2))._replace(degrees=draw(st.integers(46, 48)))
    lon = draw(halves("W", 2, 2))._replace(degrees=draw(st.integers(122, 127)))
    return f"{FORMS['hyphens'](lat)} {FORMS['hyphens'](lon)}"


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
