"""Reads one feature phrase into a Feature with its S-57 classes and attributes.

In comes a phrase without verb, label and position (`port-hand light-buoy, Fl.R.2.5s No 4`); out
comes the record with the faults found.  Words that the vocabulary does not know stay in `text`; a
phrase that names no kind gives the kind `unknown` and a warning.  Whether the light suits the mark
is not judged here.
"""

from __future__ import annotations

from functools import lru_cache
from typing import Literal, NamedTuple

from noticeparse.faults import Fault
from noticeparse.readers.amounts import ChartUnit, shown
from noticeparse.readers.feature_aids import Aids, read_structure
from noticeparse.readers.feature_clashes import clashes
from noticeparse.readers.feature_elevations import with_elevation
from noticeparse.readers.feature_kinds import narrow_kind, settle_kind
from noticeparse.readers.feature_leftovers import leftovers
from noticeparse.readers.feature_values import (
    Amounts,
    counts,
    read_amounts,
    read_name,
    read_status,
    unread_figures,
)
from noticeparse.readers.legends import collapsed, read_legend
from noticeparse.readers.light_context import in_context
from noticeparse.readers.mark_words import unread_mark_words
from noticeparse.readers.marks import Body, Shape, category_items, read_body, read_shape
from noticeparse.readers.phrases import divide
from noticeparse.readers.restrictions import restrictions_of
from noticeparse.readers.second_units import without_second_units
from noticeparse.readers.things_in_front import things_in_front
from noticeparse.readers.told import Companion, Told, depth_kind, told_by
from noticeparse.readers.words import Item
from noticeparse.readers.written_otherwise import BEFORE_SECTORS, in_known_forms
from noticeparse.records import feature as records
from noticeparse.records.feature import Ais, Feature
from noticeparse.records.light import Light
from noticeparse.vocabulary import kinds
from noticeparse.vocabulary.codes import QUALITIES, Attributes, add

# No notice goes further: a feature, its companion, and what goes with that.
_DEEPEST = 4
_STRIPED = frozenset(("buoy_safe_water", "beacon_safe_water", "buoy_emergency_wreck"))
_TELLING = frozenset(("status", "quality", "condition", "water"))
_LEADING = frozenset(
    (
        "kind", "category", "colour", "shape", "counted", "lit", "proper", "part", "virtual",
        "negation", "wreck", "status", "water", "condition", "number", "measure", "numbered",
        "quoted",
    )
)  # fmt: skip
_TRAILING = frozenset(("topmark", "retroreflector", "radar_reflector"))


class FeatureReading(NamedTuple):
    """One feature; faults count their offsets from the start of the phrase."""

    feature: Feature
    faults: tuple[Fault, ...]


def read_feature(text: str, chart_unit: ChartUnit | None = None) -> FeatureReading:
    """The feature that a phrase describes; never raises."""
    return _read(text, chart_unit, 0)


@lru_cache(maxsize=4096)
def _read(text: str, chart_unit: ChartUnit | None, level: int) -> FeatureReading:
    text = BEFORE_SECTORS.sub(",", text)
    phrase = divide(text)
    if phrase.legend is not None:
        return FeatureReading(*read_legend(text, phrase.legend))
    known = in_known_forms(text)
    reading = _Reading(known.text, told_by(known.text), chart_unit, level).feature()
    if known.text == text:
        return reading
    feature = reading.feature.model_copy(update={"text": collapsed(text)})
    faults = sorted((*reading.faults, *known.faults), key=lambda fault: (fault.start, fault.end))
    return FeatureReading(feature, tuple(faults))


@lru_cache(maxsize=4096)
def has_kind(text: str) -> bool:
    """Whether the phrase names a kind: `light, Fl.R.3s` does, `conspicuous` does not."""
    phrase = divide(text)
    if phrase.legend is not None:
        return True
    told = told_by(text)
    return told.head is not None or any(item.role in ("racon", "ais") for item in told.items)


@lru_cache(maxsize=4096)
def leads_feature(text: str) -> bool:
    """Whether the text begins as a new item would: with a kind, its colour or shape, or a number.

    `with sectors …`, `least depth 7₇`, `conspicuous`, `topmark` continue an item instead.
    """
    phrase = divide(text)
    if phrase.legend is not None:
        return True
    told = told_by(text)
    words = told.first_words
    if not words:
        return False
    first = words[0]
    if first.role == "racon" or (first.role == "ais" and len(told.items) > 1):
        return True
    if first.role == "depth":
        return depth_kind(first.text, alone=False) is not None
    if first.role == "drawing" and told.head is not None:
        return True
    named = any(item.role == "kind" and not item.bracketed for item in words)
    return named and first.value not in _TRAILING and _opens(first)


def _opens(first: Item) -> bool:
    """Whether a word can open a new item when a kind follows in its run."""
    return first.role in _LEADING or first.value == "adjective"


@lru_cache(maxsize=4096)
def value_property(words: str) -> frozenset[str]:
    """The roles of the items in some words, empty for a companion or nothing."""
    phrase = divide(words)
    told = told_by(words)
    if told.companions or any(segment.companions for segment in phrase.segments):
        return frozenset(("companion",))
    return frozenset(item.role for item in told.items)


class _Reading:
    """One reading of a phrase that is no legend; lives for one call."""

    def __init__(self, text: str, told: Told, chart_unit: ChartUnit | None, level: int) -> None:
        self.text = text
        self.level = level
        self.told = told
        self.chart_unit = chart_unit
        self.faults: list[Fault] = []

    def blame(self, code: str, start: int, end: int, **values: str) -> None:
        values.setdefault("written", shown(self.text[start:end]))
        self.faults.append(Fault(code, start, end, values))

    def feature(self) -> FeatureReading:
        text = self.text
        items, at_odds = without_second_units(text, self.told.items)
        self.faults += at_odds
        head_end = self.told.head.end if self.told.head else 0
        aids = read_structure(text, items, self.faults, head_end=head_end)
        kind, s57, lit = settle_kind(text, self.told, aids, self.faults)
        amounts = read_amounts(
            text, items, kind=kind, s57=s57, chart_unit=self.chart_unit, faults=self.faults
        )
        name, used = read_name(text, items, kind=kind, s57=s57, head_end=head_end)
        self.faults += unread_figures(items, used | counts(items, self.told.head), s57)
        kind = narrow_kind(kind, self.told, amounts.depth, is_lit=lit)
        form = _form(kind)
        body = Body([], None, {})
        if s57 != "LIGHTS":
            body = read_body(items, is_mark=bool(form), is_striped=kind in _STRIPED)
        shape = Shape(None, None, {})
        if form or kind in ("topmark", "daymark"):
            shape = read_shape(items, form=form)
        self.faults += unread_mark_words(text, shape, body) if form else ()
        self.faults += leftovers(text, self.told, kind, has_depth=self.has_depth(amounts))
        self.faults += clashes(text, self.told, kind)
        self.faults += things_in_front(text, self.told)
        companions = self.companions(described=shape.topmark is not None)
        attributes = self.attributes(kind, s57, body, shape, amounts)
        status, year = read_status(items, amounts, aids, attributes, head=self.told.head)
        told = in_context(text, items, aids.lights, kind, s57)
        self.faults += told.faults
        lights = [_with_function(light, kind) for light in told.lights]
        if s57 == "LIGHTS":
            lights, amounts = with_elevation(lights, amounts, self.told, self.faults)
        is_wording = kind in ("legend", "note") and f'"{name}"' in text
        feature = Feature(
            kind=kind,
            s57=self.classes(s57, lit=lit, topmark=shape.topmark is not None, aids=aids),
            text=collapsed(text),
            name=None if is_wording else name,
            legend=name if is_wording else None,
            light=lights[0] if lights else None,
            more_lights=lights[1:],
            depth=amounts.depth,
            clearance=amounts.clearance,
            height_m=amounts.height_m,
            colours=body.colours,
            colour_pattern=body.pattern,
            shape=shape.shape,
            topmark=shape.topmark,
            sound=aids.sound,
            racon=aids.racon,
            ais=aids.ais or (Ais(virtual=True) if kind == "ais_virtual" else None),
            status=status,
            reported_year=year,
            companions=companions,
            attributes=attributes,
        )
        self.faults.sort(key=lambda fault: (fault.start, fault.end))
        return FeatureReading(feature, tuple(self.faults))

    def has_depth(self, amounts: Amounts) -> bool:
        """Whether a depth came out, or a fault tells why none did."""
        refused = any(fault.code.startswith("depth-") for fault in self.faults)
        return refused or amounts.depth is not None

    def classes(self, s57: str, *, lit: bool, topmark: bool, aids: Aids) -> list[str]:
        """The class of the kind, then those of what stands on it, in the order of the contract."""
        named = any(item.value == "topmark" for item in self.told.roles("kind"))
        more = [
            ("LIGHTS", lit or bool(aids.lights)),
            ("TOPMAR", topmark or named),
            ("FOGSIG", aids.has_signal),
            ("RTPBCN", aids.racon is not None),
        ]
        found = [s57] if s57 else []
        return found + [name for name, told in more if told and name != s57]

    def attributes(
        self, kind: str, s57: str, body: Body, shape: Shape, amounts: Amounts
    ) -> Attributes:
        head = self.told.head
        found: Attributes = {}
        add(found, kinds()[kind].attributes if kind in kinds() else {})
        is_head = head is not None and head.sense is not None and kind != "ais_virtual"
        if is_head and head is not None and head.sense is not None:
            add(found, {k: v for k, v in head.sense.attributes.items() if k not in _OF_SHAPE})
        for item in self.told.items:
            if item.sense is None:
                continue
            is_part = item.role == "part" and s57 == "LIGHTS"
            if item.role in _TELLING or is_part:
                add(found, item.sense.attributes)
        if _form(kind) in ("buoy", "beacon"):
            for item in category_items(self.told.items):
                add(found, item.sense.attributes if item.sense else {})
        if s57 == "RESARE":
            add(found, restrictions_of(self.text, self.told.items))
        quality = amounts.depth.quality if amounts.depth else None
        if quality in QUALITIES:
            add(found, {"QUASOU": [QUALITIES[quality]]})
        if amounts.depth is not None and amounts.depth.kind == "drying" and s57 == "UWTROC":
            add(found, {"WATLEV": 4})
        add(found, body.attributes)
        add(found, shape.attributes)
        return found

    def companions(self, *, described: bool) -> list[records.Companion]:
        """Companions; a topmark that the phrase describes is the feature's own."""
        made = []
        for companion in self.told.companions:
            if self.level == _DEEPEST:
                self.blame("feature-companions-deep", companion.start, companion.end)
                break
            words = self.text[companion.start : companion.end]
            reading = _read(words, self.chart_unit, self.level + 1)
            self.faults += [
                one.shifted(companion.start)
                for one in reading.faults
                if one.code not in ("feature-class-unknown", "feature-support-not-stated")
            ]
            if described and reading.feature.kind == "topmark":
                continue
            made.append(records.Companion(role=_role(companion), feature=reading.feature))
        return made


def _form(kind: str) -> str:
    known = kinds().get(kind)
    return known.form if known else ""


_OF_SHAPE = frozenset(("COLOUR", "BOYSHP", "BCNSHP"))


def _role(companion: Companion) -> Literal["with", "on", "enclosed_by"]:
    return "with" if companion.role == "beside" else companion.role


_FUNCTIONS = {
    "leading_lights": "leading",
    "directional_light": "directional",
    "aero_light": "aero",
}


def _with_function(light: Light, kind: str) -> Light:
    field = _FUNCTIONS.get(kind)
    if field is None or getattr(light, field):
        return light
    return light.model_copy(update={field: True})
