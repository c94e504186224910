"""Hand-written reading of feature phrases for the bench: a table of heads and a few patterns."""

from __future__ import annotations

import re
from decimal import Decimal
from functools import lru_cache
from typing import Any, NamedTuple

from noticeparse.records import Companion, Depth, Feature, Light, Sector
from noticeparse.testing.generator.features import LIT_WORDS
from noticeparse.testing.generator.phrases import AREAS, LINES, LIT, POINTS
from noticeparse.vocabulary import kinds

_LITCHR = {
    "F": 1, "Fl": 2, "LFl": 3, "Q": 4, "VQ": 5, "Iso": 7, "Oc": 8, "Mo": 12, "Q+LFl": 25,
    "VQ+LFl": 26,
}  # fmt: skip
_MORE: dict[str, dict[str, Any]] = {
    "underwater rock": {"WATLEV": 3}, "submerged rock": {"WATLEV": 3},
    "fish haven": {"CATOBS": 5}, "kelp": {"CATWED": 1}, "production platform": {"CATOFP": [2]},
    "radio mast": {"FUNCTN": [31]}, "monument": {"CATLMK": [9]},
    "gas pipeline": {"PRODCT": [2]}, "outfall": {"CATPIP": [2]},
    "overhead power cable": {"CATCBL": 1}, "breakwater": {"CATSLC": 1},
    "the breakwater": {"CATSLC": 1}, "fish farm": {"CATMFA": 3},
}  # fmt: skip
_SYMBOLS = str.maketrans("º˚′’´‑″“”", "°°'''-\"\"\"")
_DECIMAL_DOT = re.compile(r"(?<=[0-9'])·(?=[0-9])")
_SMALL = str.maketrans("₀₁₂₃₄₅₆₇₈₉", "0123456789")
_LIGHT = re.compile(
    r",? (([2-9]?)(Fl|VQ|Q|Iso|Oc|LFl|Mo|F)(?:\(([0-9+]+)\)|\(([A-Z])\))?(\+LFl)?"
    r"(?:[. ]?([WRG]{1,3}|Y))?(\(vert\))?(?:[. ]?([0-9.]+)s)?(?: ?([0-9]+)m)?(?: ?([0-9/-]+)M)?)"
    r"(?=,|:| No | \"|$)"
)
BARE_LIGHT = re.compile(_LIGHT.pattern[3:])
_NAME = re.compile(r" (?:(No [0-9]+)|\"([^\"]*)\")$")
_LEGEND = re.compile(r'legend,? "([^"]*)"')
_SECTOR = re.compile(r"([WRG]) ([0-9]{3})°-([0-9]{3})°")
DEPTH_AMOUNT = re.compile(
    r"(?:(wreck|obstruction|rock), )?(depth|drying height|least depth) "
    r"((\d+)(?:\.(\d)|([₀-₉])|([¼½¾]))?(?: ?(m|metres|fathoms|feet|fm|ft)(?: (\d) ft)?)?)"
    r"(, enclosed by [0-9]+m contour| and associated contour)?$"
)
_KINDS = {"wreck": "wreck_least_depth", "obstruction": "obstruction", "rock": "rock"}
_FEET = Decimal("0.3048")
_FATHOM = Decimal("1.8288")


class Read(NamedTuple):
    """A feature, and where in its phrase a depth stands whose unit is not stated."""

    feature: Feature
    unstated: tuple[tuple[int, str], ...] = ()


def _heads() -> dict[str, tuple[str, list[str], dict[str, Any]]]:
    found: dict[str, tuple[str, list[str], dict[str, Any]]] = {}
    for sort in (*POINTS, *LIT, *LINES, *AREAS):
        for phrase in sort.phrases:
            for buoy, beacon in LIT_WORDS:
                words = phrase.format(buoy=buoy, beacon=beacon)
                more = {**kinds()[sort.kind].attributes, **_MORE.get(words, {})}
                lit = sort.light is not None and sort.s57 != "LIGHTS"
                found[words] = (sort.kind, [sort.s57, "LIGHTS"] if lit else [sort.s57], more)
    found["the breakwater"] = ("breakwater", ["SLCONS"], {"CATSLC": 1})
    return found


HEADS = _heads()


def feature(text: str, kind: str, s57: list[str], **given: Any) -> Feature:
    """A feature of which most keys are empty."""
    return Feature(
        kind=kind, s57=s57, text=text, name=given.get("name"), legend=given.get("legend"),
        light=given.get("light"), more_lights=[], depth=given.get("depth"),
        clearance=given.get("clearance"), height_m=None, colours=given.get("colours", []),
        colour_pattern=None, shape=None, topmark=None, sound=None, racon=None, ais=None,
        status=["disused"] if kind.endswith("_disused") else [], reported_year=None,
        companions=given.get("companions", []), attributes=given.get("attributes", {}),
    )  # fmt: skip


def plain(words: str) -> str:
    """Words with the symbols that stand for others replaced, one for one."""
    if words.isascii():
        return words
    return _DECIMAL_DOT.sub(".", words.translate(_SYMBOLS))


@lru_cache(maxsize=4096)
def read_feature(given: str, unit: str | None) -> Read | None:
    """The feature of a phrase, or None where this scanner does not know it."""
    known = HEADS.get(given)
    if known is not None:
        return Read(feature(given, known[0], known[1], attributes=known[2]))
    text = plain(given)
    depth = DEPTH_AMOUNT.fullmatch(text)
    if depth is not None:
        return _with_depth(given, depth, unit)
    legend = _LEGEND.fullmatch(text)
    if legend is not None:
        return Read(feature(given, "legend", [], legend=legend[1]))
    return _with_light(given, text) or _with_rest(given, text)


def _with_rest(given: str, text: str) -> Read | None:
    if text.startswith("bridge, "):
        words = text[8:]
        clearance = {"written": words, "value_m": Decimal(words.split()[2]), "kind": "vertical"}
        return Read(feature(text, "bridge", ["BRIDGE"], clearance=clearance))
    if text.startswith("anchor berth "):
        return Read(feature(text, "anchor_berth", ["ACHBRT"], name=text[13:]))
    head, name = _without_name(text)
    colours, more = [], {}
    if head.endswith(", yellow"):
        head, colours, more = head[:-8], ["yellow"], {"COLOUR": [6]}
    known = HEADS.get(head)
    if known is None:
        return None
    attributes = {**known[2], **more}
    made = feature(given, known[0], known[1], name=name, colours=colours, attributes=attributes)
    return Read(made)


def _without_name(text: str) -> tuple[str, str | None]:
    match = _NAME.search(text)
    if match is None:
        return text, None
    return text[: match.start()], match[1] or match[2]


def _with_light(given: str, text: str) -> Read | None:
    match = _LIGHT.search(text)
    if match is None:
        return None
    known = HEADS.get(text[: match.start()])
    if known is None:
        return None
    rest = text[match.end() :]
    companions = []
    if rest == ", on the breakwater":
        pier = HEADS["the breakwater"]
        on = feature("the breakwater", pier[0], pier[1], attributes=pier[2])
        companions.append(Companion(role="on", feature=on))
    name = _without_name(rest)[1] if rest else None
    light = make_light(match, given[match.start(1) : match.end(1)], rest)
    return Read(feature(given, known[0], known[1], name=name, light=light, companions=companions,
                        attributes=known[2]))  # fmt: skip


def make_light(match: re.Match[str], written: str, rest: str = "") -> Light:
    """The light of a match; its sectors stand in the words behind it."""
    _, count, rhythm, group, morse, long, colours, vertical, period, height, ranges = (
        match.groups()
    )
    full = rhythm + (long or "")
    shown = list(colours or "W")
    reach = [Decimal(one) for one in re.split("[/-]", ranges)] if ranges else []
    sectors = [_sector(*one) for one in _SECTOR.findall(rest)] if "°" in rest else []
    made: dict[str, Any] = {
        "written": written, "rhythm": full, "alternating": False,
        "groups": [int(one) for one in group.split("+")] if group else [], "morse": morse,
        "colours": shown, "colour_stated": colours is not None,
        "period_s": Decimal(period) if period else None,
        "elevation_m": Decimal(height) if height else None, "ranges_nm": reach,
        "range_by_colour": _by_colour(shown, reach), "sectors": sectors,
        "vertical": vertical is not None, "horizontal": False, "directional": False,
        "leading": False, "aero": False, "count": int(count) if count else 1, "remarks": [],
        "litchr": _LITCHR[full],
    }  # fmt: skip
    return Light(**made)


def _sector(colour: Any, start: str, end: str) -> Sector:
    return Sector(
        colour=colour, from_deg=Decimal(start), to_deg=Decimal(end), range_nm=None, visibility=None
    )


def _by_colour(colours: list[str], ranges: list[Decimal]) -> dict[str, Decimal | None]:
    if len(ranges) == 2 and len(colours) == 3:
        return {colours[0]: ranges[0], colours[1]: None, colours[2]: ranges[1]}
    return dict(zip(colours, ranges, strict=False))


def _with_depth(given: str, match: re.Match[str], unit: str | None) -> Read:
    over, words, amount, *_, contour = match.groups()
    kind = {"depth": "sounding", "drying height": "drying", "least depth": "least"}[words]
    value, stated = amount_m(match, unit)
    quality = "least depth known" if kind == "least" else None
    start = match.start(2)
    amounts: dict[str, Any] = {
        "written": given[start : match.end(3)], "value_m": -value if kind == "drying" else value,
        "unit": stated, "quality": quality, "kind": kind,
    }  # fmt: skip
    depth = Depth(**amounts)
    name = _KINDS[over] if over else "drying_height" if kind == "drying" else "sounding"
    s57 = {"wreck": "WRECKS", "obstruction": "OBSTRN", "rock": "UWTROC"}.get(over or "", "SOUNDG")
    attributes = {**kinds()[name].attributes, **({"QUASOU": [6]} if quality else {})}
    made = feature(given, name, [s57], depth=depth, attributes=attributes,
                   companions=_contours(contour))  # fmt: skip
    return Read(made, ((match.start(3), amount),) if stated is None else ())


def _contours(words: str | None) -> list[Companion]:
    if words is None:
        return []
    if not words.startswith(","):
        return [Companion(role="with", feature=feature("contour", "depth_contour", ["DEPCNT"]))]
    written = words.removeprefix(", enclosed by ")
    line_m = Decimal(written.partition("m")[0])
    depth = Depth(written=written, value_m=line_m, unit="m", quality=None, kind="contour")
    contour = feature(written, "depth_contour", ["DEPCNT"], depth=depth)
    return [Companion(role="enclosed_by", feature=contour)]


def amount_m(match: re.Match[str], unit: str | None) -> tuple[Decimal, str | None]:
    """Metres, and the unit written or that of the chart."""
    whole, tenth, small, quarter, written, feet = match.group(4, 5, 6, 7, 8, 9)
    if written in ("m", "metres"):
        return Decimal(f"{whole}.{tenth}" if tenth else whole), "m"
    if written in ("feet", "ft"):
        return int(whole) * _FEET, "ft"
    if written == "fathoms":
        return int(whole) * _FATHOM, "fm"
    if written == "fm":
        return int(whole) * _FATHOM + int(feet) * _FEET, "fm_ft"
    if unit == "fm_ft":
        return _on_fathom_chart(int(whole), small, quarter), unit
    figures = f"{whole}.{small.translate(_SMALL)}" if small else whole
    return (Decimal(figures), unit) if unit != "ft" else (Decimal(figures) * _FEET, unit)


def _on_fathom_chart(whole: int, small: str | None, quarter: str | None) -> Decimal:
    if quarter:
        return (whole + Decimal("¼½¾".index(quarter) + 1) / 4) * _FATHOM
    return whole * _FATHOM + (int(small.translate(_SMALL)) * _FEET if small else 0)
