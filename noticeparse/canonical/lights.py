"""The character of a light, its sectors, and the other aids of its structure, as on charts.

Form: INT 1 sections P, R and S; `Fl(3)WRG.15s21m15-11M`.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from noticeparse.canonical.figures import metres, plain
from noticeparse.records.feature import Ais, Racon, Sound
from noticeparse.records.light import Light, Sector

_CLASSES = {
    "FFl": ("F", "Fl"),
    "FLFl": ("F", "LFl"),
    "OcFl": ("Oc", "Fl"),
    "Fl+LFl": ("Fl", "LFl"),
    "Q+LFl": ("Q", "LFl"),
    "VQ+LFl": ("VQ", "LFl"),
    "UQ+LFl": ("UQ", "LFl"),
}
_GROUP_ALTERNATING = 20
_VISIBILITY = {"obscured": "obscd", "intensified": "intens", "unintensified": "unintens"}


def light(one: Light, *, with_sectors: bool = True) -> str:
    """A light in one run of characters; its sectors follow behind a comma."""
    lead = "".join(
        word
        for word, is_so in (("Aero ", one.aero), ("Dir ", one.directional), ("Ldg ", one.leading))
        if is_so
    )
    count = str(one.count) if one.count > 1 else ""
    words = f"{lead}{count}{_character(one)}{_figures(one)}"
    words += "".join(f"({remark.strip('()')})" for remark in one.remarks)
    if with_sectors and one.sectors:
        words += ", " + sectors(one.sectors)
    return words


def _character(one: Light) -> str:
    alternating = "Al." if one.alternating and one.rhythm != "Al" else ""
    first, *others = _CLASSES.get(one.rhythm, (one.rhythm,))
    words = f"{alternating}{first}{_group(one)}"
    if others:
        joint = "+" if "+" in one.rhythm else "."
        words += joint + others[0]
    colours = "".join(one.colours) if one.colour_stated and not _group_has_colours(one) else ""
    if not colours:
        return words
    return words + colours if words.endswith(")") else f"{words}.{colours}"


def _group(one: Light) -> str:
    if one.morse is not None:
        return f"({one.morse})"
    if not one.groups:
        return ""
    if _group_has_colours(one):
        terms = [f"{n}{c}" for n, c in zip(one.groups, one.colours, strict=True)]
    else:
        terms = [str(n) for n in one.groups]
    return f"({'+'.join(terms)})"


def _group_has_colours(one: Light) -> bool:
    """`Al.Fl(2W+1R)`: S-57 codes it as alternating flashing, not as a group."""
    return (
        one.alternating
        and one.litchr != _GROUP_ALTERNATING
        and len(one.groups) == len(one.colours) > 1
    )


def _figures(one: Light) -> str:
    disposition = "(vert)" if one.vertical else "(hor)" if one.horizontal else ""
    period = f"{plain(one.period_s)}s" if one.period_s is not None else ""
    elevation = metres(one.elevation_m) if one.elevation_m is not None else ""
    figures = f"{disposition}{period}{elevation}{_ranges(one)}"
    is_apart = not figures[:1].isdigit() or _character(one).endswith(")")
    return figures if is_apart else f".{figures}"


def _ranges(one: Light) -> str:
    if not one.ranges_nm:
        return ""
    spans = len(one.ranges_nm) == 2 and None in one.range_by_colour.values()
    return ("-" if spans else "/").join(plain(range_nm) for range_nm in one.ranges_nm) + "M"


def sectors(several: Sequence[Sector]) -> str:
    """`W 171°-195°, R 195°-268° 8M`."""
    return ", ".join(_sector(one) for one in several)


def _sector(one: Sector) -> str:
    seen = _VISIBILITY.get(one.visibility or "", one.visibility or "")
    range_nm = f"{plain(one.range_nm)}M" if one.range_nm is not None else ""
    limits = f"{bearing(one.from_deg)}-{bearing(one.to_deg)}"
    return " ".join(word for word in (seen, one.colour or "", limits, range_nm) if word)


def bearing(degrees: Decimal) -> str:
    """`045°`, `171.5°`."""
    whole, _, decimals = plain(degrees).partition(".")
    return f"{whole.zfill(3)}{'.' + decimals if decimals else ''}°"


def aid(one: Sound | Racon | Ais) -> str:
    """A fog signal, a racon or an AIS aid."""
    if isinstance(one, Sound):
        return sound(one)
    return racon(one) if isinstance(one, Racon) else ais(one)


def sound(one: Sound) -> str:
    """`Horn(2)30s`."""
    group = f"({'+'.join(map(str, one.group))})" if one.group else ""
    period = f"{plain(one.period_s)}s" if one.period_s is not None else ""
    gap = " " if period and not group else ""
    return f"{one.kind.capitalize()}{group}{gap}{period}"


def racon(one: Racon) -> str:
    """`Racon(K)`."""
    return f"Racon({one.morse})" if one.morse else "Racon"


def ais(one: Ais) -> str:
    """`V-AIS` for a virtual aid."""
    return "V-AIS" if one.virtual else "AIS"
