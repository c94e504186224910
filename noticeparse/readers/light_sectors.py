"""Sectors of a light: bearings true, from seaward, clockwise.

In comes a list of sectors as the terminal SECTORS cuts it out; out come the records, with faults
for limits that are impossible, overlap or leave gaps.  A seaward bearing is never turned round.
Sources: IHO S-57 attributes SECTR1 and SECTR2; INT 1 section P 40.
"""

from __future__ import annotations

from decimal import Decimal
from functools import cache, lru_cache
from typing import Any, NamedTuple

from lark import Lark, Token, Transformer, UnexpectedInput, v_args

from noticeparse.faults import Fault
from noticeparse.grammar import build
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


@v_args(inline=True)
class _Callbacks(Transformer[Any, Any]):
    """Keeps the tokens in order; no state."""

    def sectors(self, *parts: Token | _Arc) -> tuple[Token | _Arc, ...]:
        return parts

    def arc(self, *tokens: Token) -> _Arc:
        return _Arc("arc", tokens)

    def shore(self, *tokens: Token) -> _Arc:
        return _Arc("shore", tokens)


@cache
def _parser() -> Lark:
    return build("sector", "sectors", callbacks=_Callbacks())


@lru_cache(maxsize=4096)
def read_sectors(text: str, colours: tuple[str, ...] = ()) -> SectorReading:
    """The sectors of a list; never raises.

    `colours` are the light's, given where it is at hand and they are certain.
    """
    try:
        parts: tuple[Token | _Arc, ...] = _parser().parse(text)  # type: ignore[assignment]
    except UnexpectedInput:
        return SectorReading((), (fault("sector-unreadable", text, 0, len(text)),))
    faults: list[Fault] = []
    read = _sectors(parts, text, faults)
    _check_colours(read, colours, text, faults)
    _check_circle(read, text, faults)
    return SectorReading(tuple(one.sector for one in read), tuple(faults))


def _sectors(parts: tuple[Token | _Arc, ...], text: str, faults: list[Fault]) -> list[_Read]:
    read: list[_Read] = []
    colour: Token | None = None
    visibility: str | None = None
    depth = 0
    for part in parts:
        if isinstance(part, _Arc):
            one = _sector(part, colour, visibility, text, faults)
            if one is not None:
                read.append(one)
            continue
        if part.type == "VISIBILITY":
            colour, visibility = None, _HIDDEN.get(part[:4].casefold())
        elif part.type in ("COLOUR", "COLOUR_WORD"):
            colour = part
            # A colour inside `(vis …)` belongs to the arc; outside it starts a plain sector.
            visibility = visibility if depth else None
            if colour_of(part) is None:
                faults.append(fault("light-colour-ambiguous", text, _at(part), _after(part)))
        else:
            depth += 1 if part.type == "OPEN" else -1
            visibility = visibility if depth > 0 else None
            if depth < 0:
                faults.append(fault("light-bracket-open", text, _at(part), _after(part)))
                depth = 0
    if depth > 0:
        opening = next(part for part in parts if part.type == "OPEN" and isinstance(part, Token))
        faults.append(fault("light-bracket-open", text, _at(opening), len(text)))
    return read


def _at(token: Token) -> int:
    return token.start_pos or 0


def _after(token: Token) -> int:
    return token.end_pos or 0


def _sector(
    arc: _Arc, colour: Token | None, visibility: str | None, text: str, faults: list[Fault]
) -> _Read | None:
    first, second = arc.tokens[0], arc.tokens[1]
    start, end = _at(first), _after(second)
    if arc.type == "shore":
        faults.append(fault("sector-limit-open", text, start, end))
        return None
    limits = [_degrees(first), _degrees(second)]
    for token, limit in zip((first, second), limits, strict=True):
        if limit > 360:
            faults.append(fault("sector-bearing-too-great", text, _at(token), _after(token)))
    if max(limits) > 360:
        return None
    if limits[0] == limits[1]:
        faults.append(fault("sector-empty", text, start, end))
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


def _clockwise(first: Decimal, second: Decimal) -> Decimal:
    """Degrees clockwise from one bearing to another, from 0 to under 360."""
    # The remainder of a negative Decimal is negative.
    return (second - first + 360) % 360


def _leading_figure(words: str) -> Decimal:
    return Decimal("".join(one for one in words if one in "0123456789."))


def _degrees(token: Token) -> Decimal:
    """Degrees of `171°`, `171°30'T`, `(35°)`, `090 deg`."""
    whole, _, minutes = token.strip("( )").partition("°")
    degrees = _leading_figure(whole)
    arc_minutes, mark, _ = minutes.partition("'")
    return degrees + Decimal(arc_minutes) / 60 if mark else degrees


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


def _check_circle(read: list[_Read], text: str, faults: list[Fault]) -> None:
    """Overlaps and gaps of the coloured sectors, obscured arcs counting as accounted for."""
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
        stretch = _between(one, following)
        if gap < 0:
            overlaps.append(fault("sector-overlap", text, *stretch, **values))
        elif gap > 0:
            code = "sector-gap-narrow" if gap <= _NARROW_GAP_DEG else "sector-gap"
            gaps.append(fault(code, text, *stretch, **values))
    # Where arcs overlap, what lies between their neighbours says nothing.
    faults += overlaps or gaps


def _between(one: _Read, following: _Read) -> tuple[int, int]:
    """From the limit where one arc ends to the limit where the next begins."""
    if _after(one.second) <= _at(following.first):
        return _at(one.second), _after(following.first)
    return _at(following.first), _after(one.second)
