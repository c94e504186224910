"""Sectors of a light: bearings true, from seaward, clockwise.

In comes a list of sectors as the terminal SECTORS cuts it out; out come the records, with faults
for limits that are impossible, overlap or leave gaps.  A seaward bearing is never turned round.
Sources: IHO S-57 attributes SECTR1 and SECTR2; INT 1 section P 40.
"""

from __future__ import annotations

from decimal import Decimal
from functools import cache, lru_cache
from typing import NamedTuple

from lark import Token, UnexpectedInput

from noticeparse.faults import Fault
from noticeparse.grammar import PhraseParser, build
from noticeparse.readers.light_parts import fault
from noticeparse.readers.light_values import colour_of
from noticeparse.records.light import LightColour, Sector

_NARROW_GAP_DEG = 2
_HIDDEN = {"obsc": "obscured", "inte": "intensified", "unin": "unintensified", "fain": "faint"}
"""First letters of the words for a sector's visibility, S-57 LITVIS; `vis` says only: seen."""


class SectorReading(NamedTuple):
    """Sectors in the order written, and what is wrong with them."""

    sectors: tuple[Sector, ...]
    faults: tuple[Fault, ...]


class _Arc(NamedTuple):
    type: str
    tokens: tuple[Token, ...]


class _Read(NamedTuple):
    """A sector record with the stretches of its colour and its limits."""

    sector: Sector
    colour: Token | None
    first: Token
    second: Token

    @property
    def width(self) -> Decimal:
        """Degrees from the first limit clockwise to the second; a full circle is 360."""
        return _clockwise(self.sector.from_deg, self.sector.to_deg) or Decimal(360)


class _Callbacks:
    """Keeps the tokens in order; no state."""

    def sectors(self, *parts: Token | _Arc) -> tuple[Token | _Arc, ...]:
        return parts

    def arc(self, *tokens: Token) -> _Arc:
        return _Arc("arc", tokens)

    def shore(self, *tokens: Token) -> _Arc:
        return _Arc("shore", tokens)


@cache
def _parser() -> PhraseParser:
    return build("sector", "sectors", callbacks=_Callbacks())


@lru_cache(maxsize=4096)
def read_sectors(text: str, colours: tuple[str, ...] = ()) -> SectorReading:
    """The sectors of a list; never raises.

    `colours` are the light's, given where it is at hand and they are certain.
    """
    try:
        parts: tuple[Token | _Arc, ...] = _parser().parse(text)
    except UnexpectedInput:
        return SectorReading((), (fault("sector-unreadable", text, 0, len(text)),))
    if not any(isinstance(part, _Arc) for part in parts):
        return SectorReading((), (fault("sector-unreadable", text, 0, len(text)),))
    reading = _List(text)
    for part in parts:
        reading.take(part)
    reading.close()
    faults = reading.faults
    # A sector that was left out may be the one of any colour.
    is_whole = len(reading.read) == sum(isinstance(part, _Arc) for part in parts)
    _check_colours(reading.read, colours if is_whole else (), text, faults)
    _check_circle(reading.read, text, faults, is_told=reading.is_dark_elsewhere)
    return SectorReading(tuple(one.sector for one in reading.read), tuple(faults))


class _List:
    """A list of sectors while it is read: the colour and visibility in force, open brackets."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.faults: list[Fault] = []
        self.read: list[_Read] = []
        self._colour: Token | None = None
        self._unused: Token | None = None
        self._visibility: str | None = None
        self._brackets: list[Token] = []
        self.is_dark_elsewhere = False
        """Whether the list says that no other bearing has light: `obscured elsewhere`."""

    def take(self, part: Token | _Arc) -> None:
        """Reads the next arc or word."""
        if isinstance(part, _Arc):
            one = _sector(part, self._colour, self._visibility, self.text, self.faults)
            self.read += [one] if one is not None else []
            self._unused = None
        elif part.type == "ELSEWHERE":
            self.is_dark_elsewhere = True
        elif part.type == "VISIBILITY":
            self._colour, self._visibility = None, _HIDDEN.get(part[:4].casefold())
        elif part.type in ("COLOUR", "COLOUR_WORD"):
            self._take_colour(part)
        elif part.type == "OPEN":
            self._brackets.append(part)
        else:
            self._shut(part)

    def _take_colour(self, part: Token) -> None:
        self._drop_unused()
        self._colour = self._unused = part
        # A colour inside `(vis …)` belongs to the arc; outside it starts a plain sector.
        self._visibility = self._visibility if self._brackets else None
        if colour_of(part) is None:
            self._fault("light-colour-ambiguous", part)

    def _shut(self, part: Token) -> None:
        if self._brackets:
            self._brackets.pop()
        else:
            self._fault("light-bracket-open", part)
        self._visibility = self._visibility if self._brackets else None

    def close(self) -> None:
        """Nothing more comes: what was begun and not ended is a fault."""
        self._drop_unused()
        for bracket in self._brackets:
            self._fault("light-bracket-open", bracket)

    def _drop_unused(self) -> None:
        if self._unused is not None:
            self._fault("sector-unreadable", self._unused)

    def _fault(self, code: str, token: Token) -> None:
        self.faults.append(fault(code, self.text, _at(token), _after(token)))


def _at(token: Token) -> int:
    return token.start_pos or 0


def _after(token: Token) -> int:
    return token.end_pos or 0


def _sector(
    arc: _Arc, colour: Token | None, visibility: str | None, text: str, faults: list[Fault]
) -> _Read | None:
    first, second = arc.tokens[0], arc.tokens[1]
    if arc.type == "shore":
        faults.append(fault("sector-limit-open", text, _at(first), _after(second)))
        return None
    limits = _limits(first, second, text, faults)
    if limits is None:
        return None
    letter: LightColour | None = colour_of(colour) if colour is not None else None
    behind = {token.type: token for token in arc.tokens[2:]}
    sector = Sector(
        colour=letter,
        from_deg=limits[0],
        to_deg=limits[1],
        range_nm=_leading_figure(behind["RANGE"]) if "RANGE" in behind else None,
        visibility=visibility,
    )
    one = _Read(sector, colour, first, second)
    width = behind.get("WIDTH")
    if width is not None and _degrees(width) != one.width:
        values = {"width": f"{one.width.normalize():f}"}
        faults.append(fault("sector-width-differs", text, _at(width), _after(width), **values))
    return one


def _limits(
    first: Token, second: Token, text: str, faults: list[Fault]
) -> tuple[Decimal, Decimal] | None:
    """The two bearings, None where one is impossible or both are the same."""
    limits = _degrees(first), _degrees(second)
    for token, limit in zip((first, second), limits, strict=True):
        if limit > 360:
            faults.append(fault("sector-bearing-too-great", text, _at(token), _after(token)))
        elif _minutes(token) >= 60:
            faults.append(fault("sector-unreadable", text, _at(token), _after(token)))
    if max(limits) > 360 or max(_minutes(first), _minutes(second)) >= 60:
        return None
    if limits[0] == limits[1]:
        faults.append(fault("sector-empty", text, _at(first), _after(second)))
        return None
    return limits


def _clockwise(first: Decimal, second: Decimal) -> Decimal:
    """Degrees clockwise from one bearing to another, from 0 to under 360."""
    # The remainder of a negative Decimal is negative.
    return (second - first + 360) % 360


def _leading_figure(words: str) -> Decimal:
    return Decimal("".join(one for one in words if one in "0123456789."))


def _degrees(token: Token) -> Decimal:
    """Degrees of `171°`, `171°30'T`, `(35°)`, `090 deg`."""
    whole = token.strip("( )").partition("°")[0]
    return _leading_figure(whole) + _minutes(token) / 60


def _minutes(token: Token) -> Decimal:
    """The minutes of arc, nought where none are written."""
    figures, mark, _ = token.partition("°")[2].partition("'")
    return Decimal(figures) if mark else Decimal(0)


def _check_colours(
    read: list[_Read], colours: tuple[str, ...], text: str, faults: list[Fault]
) -> None:
    if not colours:
        return
    for one in read:
        if one.colour is not None and one.sector.colour and one.sector.colour not in colours:
            start, end = _at(one.colour), _after(one.colour)
            values = {"colours": "".join(colours)}
            faults.append(fault("sector-colour-not-of-light", text, start, end, **values))
    coloured = {one.sector.colour for one in read if one.sector.colour}
    for colour in colours:
        if coloured and colour not in coloured:
            code = "light-colour-without-sector"
            faults.append(fault(code, text, 0, len(text), colour=colour))


def _check_circle(
    read: list[_Read], text: str, faults: list[Fault], *, is_told: bool = False
) -> None:
    """Overlaps and gaps of the coloured sectors, obscured arcs counting as accounted for.

    Wide gaps count too where it `is_told` that the light is dark elsewhere.
    """
    arcs = [
        one
        for one in read
        if (one.sector.colour and not one.sector.visibility) or one.sector.visibility == "obscured"
    ]
    arcs.sort(key=lambda one: one.sector.from_deg % 360)
    coloured = sum(1 for one in arcs if one.sector.colour)
    if coloured < 2:
        return
    gaps: list[Fault] = []
    overlaps: list[Fault] = []
    for one, following in zip(arcs, arcs[1:] + arcs[:1], strict=True):
        gap = _clockwise(one.sector.from_deg, following.sector.from_deg) - one.width
        values = {"degrees": f"{abs(gap).normalize():f}"}
        start, end = _between(one, following)
        if gap < 0:
            overlaps.append(fault("sector-overlap", text, start, end, **values))
        elif gap > 0 and not (is_told and gap > _NARROW_GAP_DEG):
            code = "sector-gap-narrow" if gap <= _NARROW_GAP_DEG else "sector-gap"
            gaps.append(fault(code, text, start, end, **values))
    # Where arcs overlap, what lies between their neighbours says nothing.
    faults += overlaps or gaps


def _between(one: _Read, following: _Read) -> tuple[int, int]:
    """From the limit where one arc ends to the limit where the next begins."""
    if _after(one.second) <= _at(following.first):
        return _at(one.second), _after(following.first)
    return _at(following.first), _after(one.second)
