"""One position, light or depth for a person: the words read, then what each part means."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from noticeparse.records.depth import Depth
from noticeparse.records.finding import Finding
from noticeparse.records.light import Light, Sector
from noticeparse.records.position import Position
from noticeparse.writers.coordinates import angle_parts, split_iso6709
from noticeparse.writers.findings_out import told
from noticeparse.writers.position_forms import PositionForms
from noticeparse.writers.quoting import visible
from noticeparse.writers.wording import plain

_RHYTHMS = {
    "F": "fixed", "Fl": "flashing", "LFl": "long-flashing", "Q": "quick", "VQ": "very quick",
    "UQ": "ultra quick", "IQ": "interrupted quick", "IVQ": "interrupted very quick",
    "IUQ": "interrupted ultra quick", "Oc": "occulting", "Iso": "isophase", "Mo": "Morse code",
    "FFl": "fixed and flashing", "FLFl": "fixed and long-flashing",
    "OcFl": "occulting and flashing", "Fl+LFl": "flashing and long-flashing",
    "Q+LFl": "quick and one long flash", "VQ+LFl": "very quick and one long flash",
    "UQ+LFl": "ultra quick and one long flash", "Al": "alternating",
}  # fmt: skip

_COLOURS = {
    "W": "white", "R": "red", "G": "green", "Bu": "blue", "Y": "yellow", "Am": "amber",
    "Vi": "violet", "Or": "orange",
}  # fmt: skip

_DEPTHS = {
    "sounding": "depth", "drying": "dries", "swept": "swept depth", "dredged": "dredged depth",
    "contour": "contour", "least": "least depth", "no_bottom": "no bottom at",
}  # fmt: skip

_UNITS = {"m": "metres", "fm": "fathoms", "ft": "feet", "fm_ft": "fathoms and feet"}

_LIGHT_MARKS = ("vertical", "horizontal", "directional", "leading", "aero")


def write_value(value: Position | PositionForms | Light | Depth) -> str:
    """The words read on the first line, below them a line for each part."""
    written = (value.position if isinstance(value, PositionForms) else value).written
    if isinstance(value, Position):
        rows = [*_position(value)]
    elif isinstance(value, PositionForms):
        rows = [*_forms(value)]
    elif isinstance(value, Light):
        rows = [*_light(value)]
    else:
        rows = [*_depth(value)]
    width = max(len(name) for name, _ in rows) + 2
    body = "".join(f"  {name:<{width}}{visible(words)}\n" for name, words in rows)
    return f"{visible(written)}\n{body}"


def write_refusal(finding: Finding, text: str) -> str:
    """Why a text cannot be read as a value for certain."""
    if not text.strip():
        return "the text is empty"
    hint = [f"  hint: {finding.hint}"] if finding.hint else []
    return "\n".join([told(finding, visible(text)), *hint])


def _position(position: Position) -> Iterator[tuple[str, str]]:
    latitude, longitude = split_iso6709(position.iso6709)
    yield "latitude", _angle(latitude, 2, "NS")
    yield "longitude", _angle(longitude, 3, "EW")
    yield "decimal", f"{position.lat:.8f} {position.lon:.8f}"
    yield "ISO 6709", position.iso6709
    yield "resolution", f"{plain(Decimal(str(position.resolution_m)))} m"
    if position.label:
        yield "letter", position.label
    if position.quality:
        yield "quality", position.quality


def _forms(known: PositionForms) -> Iterator[tuple[str, str]]:
    for form in known.forms:
        yield form.name, form.text if form.exact else f"{form.text}  rounded to {form.rounded_to}"
    yield "resolution as written", f"{plain(Decimal(str(known.position.resolution_m)))} m"


def _angle(written: str, width: int, hemispheres: str) -> str:
    """`-4712.34` is `47° 12.34' S`, the digits as they stand."""
    return " ".join(angle_parts(written, width, hemispheres))


def _light(light: Light) -> Iterator[tuple[str, str]]:
    yield "rhythm", _rhythm(light)
    colours = ", ".join(_COLOURS[one] for one in light.colours)
    yield "colour", colours if light.colour_stated else f"{colours} (none is written)"
    if light.count > 1:
        yield "lights", str(light.count)
    if light.period_s is not None:
        yield "period", f"{plain(light.period_s)} s"
    if light.elevation_m is not None:
        yield "elevation", f"{plain(light.elevation_m)} m"
    if light.ranges_nm:
        yield "range", ", ".join(_range(light)) + " nautical miles"
    for sector in light.sectors:
        yield "sector", _sector(sector)
    marks = [name for name in _LIGHT_MARKS if getattr(light, name)]
    if marks or light.remarks:
        yield "further", ", ".join([*marks, *light.remarks])
    if light.litchr is not None:
        yield "LITCHR", str(light.litchr)


def _rhythm(light: Light) -> str:
    words = _RHYTHMS[light.rhythm]
    if light.alternating and light.rhythm != "Al":
        words = f"alternating {words}"
    if light.groups:
        words += f", group ({'+'.join(map(str, light.groups))})"
    if light.morse:
        words += f" {light.morse}"
    return words


def _range(light: Light) -> Iterator[str]:
    if not light.range_by_colour:
        yield from map(plain, light.ranges_nm)
    for colour, figure in light.range_by_colour.items():
        words = plain(figure) if figure is not None else "not stated"
        yield f"{_COLOURS.get(colour, colour)} {words}"


def _sector(sector: Sector) -> str:
    colour = [_COLOURS[sector.colour]] if sector.colour else []
    seen = [sector.visibility] if sector.visibility else []
    words = f"{' '.join([*colour, *seen])} {plain(sector.from_deg)}°-{plain(sector.to_deg)}°"
    words += " true, from seaward"
    if sector.range_nm is not None:
        words += f", {plain(sector.range_nm)} nautical miles"
    return words.strip()


def _depth(depth: Depth) -> Iterator[tuple[str, str]]:
    name = _DEPTHS[depth.kind]
    if depth.value_m is None:
        yield name, "not known"
    else:
        # A drying height is negative in the record and positive in a sailor's mouth.
        figure = -depth.value_m if depth.kind == "drying" else depth.value_m
        yield name, f"{plain(figure)} m"
    if depth.value_m is not None or depth.unit:
        yield "unit", _UNITS[depth.unit] if depth.unit else "not stated, read as metres"
    if depth.quality:
        yield "quality", depth.quality
