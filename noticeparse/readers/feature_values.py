"""The values stated with a feature: depth, clearance, height, name, status.

In come the items that a phrase tells; out come the fields of the record with their faults, offsets
counted from the start of the phrase.  Which kind the feature has is already settled.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from decimal import Decimal
from typing import NamedTuple, cast

from noticeparse.faults import Fault
from noticeparse.readers.amounts import ChartUnit, shown
from noticeparse.readers.depths import read_depth, read_height
from noticeparse.readers.feature_aids import Aids
from noticeparse.readers.feature_clashes import stated_twice
from noticeparse.readers.measures import OBJECTS, is_no_height, meaning_of
from noticeparse.readers.names_of_others import is_no_name
from noticeparse.readers.one_depth import Stated, one_depth
from noticeparse.readers.words import Item, is_lone_figure, is_only_figure
from noticeparse.records.depth import Clearance, Depth
from noticeparse.records.feature import Status
from noticeparse.vocabulary import find, kinds, word_key
from noticeparse.vocabulary.codes import Attributes

_DEPTH_CLASSES = frozenset(
    (
        "SOUNDG", "DEPCNT", "DEPARE", "DRGARE", "SWPARE", "WRECKS", "UWTROC", "OBSTRN", "FAIRWY",
        "DMPGRD", "DWRTPT", "DWRTCL", "RECTRC", "BERTHS", "UNSARE",
    )
)  # fmt: skip
_DEPTH_AREAS = frozenset(("SOUNDG", "DEPCNT", "DEPARE", "DRGARE", "SWPARE"))
_HEIGHT_CLASSES = frozenset(
    (
        "LNDMRK", "LNDELV", "LNDARE", "SILTNK", "CRANES", "PYLONS", "OFSPLF", "FORSTC", "BUISGL",
        "DAYMAR", "PILPNT",
    )
)  # fmt: skip
_UNDER_WATER = frozenset(("WRECKS", "UWTROC", "OBSTRN", "CBLSUB", "PIPSOL", "FSHFAC"))
_NAMED_CLASSES = frozenset(
    (
        "ACHBRT",
        "BERTHS",
        "RDOCAL",
        "MORFAC",
        "PILPNT",
        "ACHARE",
        "DISMAR",
        "OFSPLF",
        "CRANES",
        "PILBOP",
        "TS_FEB",
    )
)
_YEAR_ALONE = re.compile(r"\([0-9]")
_ROMAN = re.compile(r"I{1,3}|IV|VI{0,3}|IX|X")
_CALLED = (
    " named", " called", " known as", " numbered", " lettered", " designated", " by the name of",
    " with the name", " bearing the name", " with the number", " bearing the number",
)  # fmt: skip
# The status that a phrase such as `disused cable` tells by its kind.
_STATUS: dict[int, Status] = {4: "disused", 8: "private", 11: "extinguished"}

_NO_DEPTH = {
    "around": "depth-of-surroundings",
    "above": "depth-above-water",
    "other": "feature-figure-unread",
}


class Amounts(NamedTuple):
    """Depth, clearance and height stated."""

    depth: Depth | None = None
    clearance: Clearance | None = None
    height_m: Decimal | None = None
    reported_year: int | None = None


def read_amounts(
    text: str,
    items: Sequence[Item],
    *,
    kind: str,
    s57: str,
    chart_unit: ChartUnit | None,
    faults: list[Fault],
) -> Amounts:
    """Depth, clearance and height; two unlike depths are told, and none is taken."""
    amounts = Amounts()
    depths: list[Stated] = []
    heights: dict[Item, Decimal | None] = {}
    # A figure like `8 6` that was refused stands for no other depth of the phrase.
    for item in items:
        is_depth = item.role == "measure" or is_lone_figure(items) or is_only_figure(items, item)
        if item.role == "depth" or (is_depth and _is_depth(item, s57)):
            meaning = meaning_of(text, items, item, s57)
            if meaning in _NO_DEPTH:
                faults.append(_fault(_NO_DEPTH[meaning], item))
                continue
            if meaning == "about":
                faults.append(_fault("depth-approximate", item))
            reading = read_depth(item.text, chart_unit)
            amounts = amounts._replace(
                reported_year=amounts.reported_year or reading.reported_year,
                clearance=amounts.clearance or reading.clearance,
            )
            depths += [(item, reading.depth)] if reading.depth is not None else []
            faults += [one.shifted(item.start) for one in reading.faults]
        elif item.role == "clearance":
            over_ground = s57 in _DEPTH_CLASSES
            reading = read_depth(item.text, chart_unit, over_ground=over_ground)
            depths += [(item, reading.depth)] if reading.depth else []
            faults += [one.shifted(item.start) for one in reading.faults]
            if s57 in _UNDER_WATER and _is_plain(reading.clearance, item):
                # `wreck, clearance 14m`: below the keel or below what is not said.
                faults.append(_fault("feature-figure-unread", item))
                continue
            if amounts.clearance is not None and reading.clearance is not None:
                faults.append(_fault("feature-clearances-several", item))
            amounts = amounts._replace(clearance=amounts.clearance or reading.clearance)
        elif item.role == "measure" and s57 in _HEIGHT_CLASSES and is_no_height(text, item):
            faults.append(_fault("feature-figure-unread", item))
        elif item.role == "height" or (item.role == "measure" and s57 in _HEIGHT_CLASSES):
            height = read_height(item.text, chart_unit)
            faults += [one.shifted(item.start) for one in height.faults]
            heights[item] = height.height_m
    if len(set(heights.values())) > 1:
        # Which of the two heights holds, nobody can say.
        faults.append(stated_twice(list(heights)[-1]))
    elif heights:
        amounts = amounts._replace(height_m=next(iter(heights.values())))
    return amounts._replace(depth=one_depth(text, items, depths, kind, faults))


def _is_plain(clearance: Clearance | None, item: Item) -> bool:
    """Whether a clearance is vertical only because no word says which one it is."""
    is_vertical = clearance is not None and clearance.kind == "vertical"
    return is_vertical and item.text.lower().startswith("cl")


def _is_depth(item: Item, s57: str) -> bool:
    if any(character in "₀₁₂₃₄₅₆₇₈₉" for character in item.text):
        return s57 not in _HEIGHT_CLASSES
    # `wreck, mast (2 m) showing`: a bracket behind an object seldom holds its depth.
    return s57 in (_DEPTH_AREAS if item.bracketed else _DEPTH_CLASSES)


def counts(items: Sequence[Item], head: Item | None) -> frozenset[int]:
    """Where the numbers stand that count the feature: `3 yellow buoys`."""
    if head is None or not head.text.lower().endswith("s"):
        return frozenset()
    numbers = (one for one in items if one.role == "number" and one.start < head.start)
    return frozenset(one.start for one in numbers if one.text.isdigit() and len(one.text) < 3)


def unread_figures(items: Sequence[Item], used: frozenset[int], s57: str) -> list[Fault]:
    """A fault for each figure that went into no value and no name."""
    faults = []
    for item in items:
        if item.role == "reported" and s57 in OBJECTS and _YEAR_ALONE.match(item.text):
            # `wreck (1945)`: of the survey, or of the loss.
            faults.append(_fault("feature-figure-in-brackets", item))
        if item.role not in ("measure", "length", "number", "code") or item.start in used:
            continue
        if item.role == "measure" and (_is_depth(item, s57) or s57 in _HEIGHT_CLASSES):
            continue
        if s57 == "SOUNDG" and (is_lone_figure(items) or is_only_figure(items, item)):
            continue
        code = "feature-figure-unread"
        if item.bracketed and not (item.role == "measure" and s57 in OBJECTS):
            # On charts a figure in brackets may be a height, a number of things or a year.
            code = "feature-figure-in-brackets"
        elif item.role == "number" and s57 in _DEPTH_CLASSES:
            code = "feature-figure-unclear"
        faults.append(_fault(code, item))
    return faults


def _fault(code: str, item: Item) -> Fault:
    return Fault(code, item.start, item.end, {"written": shown(item.text)})


def takes_number(kind: str, s57: str) -> bool:
    """Whether a bare number or letter behind the kind is its name (`berth 4`, `buoy A3`)."""
    known = kinds().get(kind)
    return s57 in _NAMED_CLASSES or (known is not None and known.form in ("buoy", "beacon"))


def read_name(
    text: str, items: Sequence[Item], *, kind: str, s57: str, head_end: int
) -> tuple[str | None, frozenset[int]]:
    """The name or number, its parts in text order, and where the parts start."""
    parts: list[str] = []
    used: list[int] = []
    last_end, passed = head_end, 0
    for item in items:
        goes_on = item.role == "proper" and text[passed : item.start] == " "
        if goes_on or is_no_name(text, item):
            passed = item.end
            continue
        if item.role == "quoted":
            parts.append(" ".join(item.text.strip('"').split()))
        elif item.role == "proper" and parts and text[last_end : item.start] == " ":
            parts[-1] += " " + item.text
        elif item.role in ("numbered", "proper"):
            parts.append(" ".join(item.text.split()))
        elif not (_is_called(text, item) or _is_bare_name(text, item, last_end, kind, s57)):
            continue
        else:
            parts.append(item.text)
        used.append(item.start)
        last_end = item.end
    return " ".join(parts) or None, frozenset(used)


def _is_called(text: str, item: Item) -> bool:
    """Whether a word before it says that this is a name: `light-buoy, Fl.R.4s, named S6`."""
    if item.role not in ("number", "code", "unknown") or item.bracketed:
        return False
    is_word = item.role == "unknown" and not item.text[:1].isupper()
    return not is_word and text[: item.start].rstrip(" .:").lower().endswith(_CALLED)


def _is_bare_name(text: str, item: Item, last_end: int, kind: str, s57: str) -> bool:
    # Directly behind the kind or name only: what comes later may be a figure of something else.
    if item.role not in ("number", "code", "unknown") or item.bracketed or not last_end:
        return False
    if item.start < last_end:
        return False
    if s57 == "SLCONS" and text[last_end : item.start] == " " and _ROMAN.fullmatch(item.text):
        return True  # `Pier II`
    if not takes_number(kind, s57) or text[last_end : item.start].strip(" ."):
        return False
    if item.role != "unknown":
        return True
    known = kinds().get(kind)
    is_mark = known is not None and bool(known.form)
    if item.text.strip("IVX") == "":
        return True  # `light-buoy IV`
    return len(item.text) == 1 and item.text.isupper() and not (is_mark and item.text in "RGYBW")


def read_status(
    items: Iterable[Item], amounts: Amounts, aids: Aids, codes: Attributes, *, head: Item | None
) -> tuple[list[Status], int | None]:
    """Status words in text order, those of a light's remarks and of the kind, year of a report."""
    status: list[Status] = []
    year = amounts.reported_year
    for item in items:
        word = item.value if item.role == "status" else None
        if item.value == "extinguished_light" and item is not head:
            word = "extinguished"  # `light-buoy, light extinguished`
        if item.role == "reported":
            digits = "".join(character for character in item.text if character.isdigit())
            # A year alone in brackets is that of a survey or a chart.
            if item.text.lower().lstrip("(").startswith("rep"):
                word, year = "reported", int(digits)
        if word and word not in status:
            status.append(cast(Status, word))
    for remark in (remark for light in aids.lights for remark in light.remarks):
        sense = find(word_key(remark))
        if sense is not None and sense.role == "status" and sense.value not in status:
            status.append(cast(Status, sense.value))
    told = cast("list[int]", codes.get("STATUS", []))
    status += [_STATUS[code] for code in told if code in _STATUS and _STATUS[code] not in status]
    quality = amounts.depth.quality if amounts.depth else None
    if quality and quality.startswith("value reported") and "reported" not in status:
        status.append("reported")
    return status, year
