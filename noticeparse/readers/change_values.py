"""Reads the new or old value of one property in an amendment.

In come the words of the value and the property word, or none where the value itself must tell what
it is (`light to Fl.R.5s`, `buoy to yellow`); out comes the value with the path of its property.
"""

from __future__ import annotations

import re
from decimal import Decimal
from typing import Any

from lark import Token

from noticeparse.faults import Fault
from noticeparse.readers.amounts import ChartUnit, shown
from noticeparse.readers.change_lights import (
    is_light,
    read_aid,
    read_character,
    read_elevation,
    read_light_colours,
    read_new_sectors,
    read_period,
    read_ranges,
)
from noticeparse.readers.change_parts import Value
from noticeparse.readers.depths import GROUND_CLASSES, read_depth, read_height
from noticeparse.readers.features import has_kind, read_feature, value_property
from noticeparse.readers.legend_wordings import end_of_wording, leads_to_thing
from noticeparse.readers.marks import read_body, read_shape
from noticeparse.readers.second_units import without_second_unit
from noticeparse.readers.told import told_by
from noticeparse.readers.words import Item
from noticeparse.records.feature import Feature
from noticeparse.vocabulary import kinds, primitives

_AIDS = {"fog_signal": "SOUND", "racon": "RACON"}
_ON_GROUND = tuple([name] for name in GROUND_CLASSES)


def read_value(
    text: str, property_word: Token | None, feature: Feature, chart_unit: ChartUnit | None
) -> Value:
    """The value written; its `value` is None where it cannot be read."""
    if property_word is None and (name := _name_alone(text, feature)) is not None:
        return Value("name", name)
    again = _LIGHT_AGAIN.match(text) if property_word is None and is_light(feature) else None
    if again is not None:
        of_light = read_value(text[again.end() :], None, feature, chart_unit)
        faults = tuple(fault.shifted(again.end()) for fault in of_light.faults)
        return of_light._replace(faults=faults)
    kind = property_word.type if property_word is not None else _implied(text, feature)
    if kind == "HEIGHT" and "LIGHTS" in feature.s57[:1]:
        # The height of a light is that of its focal plane.
        kind = "ELEVATION"
    words = str(property_word) if property_word is not None else ""
    match kind:
        case "PERIOD":
            return read_period(text, feature)
        case "RANGE":
            return read_ranges(text, feature)
        case "ELEVATION":
            return read_elevation(text, feature, chart_unit)
        case "HEIGHT":
            height = read_height(text, chart_unit)
            return Value("height_m", height.height_m, height.faults)
        case "CHARACTER":
            return read_character(text.replace('"', " "))
        case "SOUND" | "RACON":
            return read_aid(text, kind.lower())
        case "SECTOR_WORD":
            return read_new_sectors(text, feature, words)
        case "NAME" | "LEGEND":
            wording = _wording(_NOUN_AGAIN[kind].sub("", text))
            if wording is not None and kind == "LEGEND" and '"' not in text:
                return _bare_legend(text, wording)
            return Value(kind.lower(), wording)
        case "DEPTH_WORD" | "CLEARANCE_WORD":
            return _depth(text, words, kind, feature, chart_unit)
        case "COLOUR":
            return read_light_colours(text) if is_light(feature) else _colours(text)
        case "STATUS":
            return Value("status", [item.value for item in _items(text)])
        case "TOPMARK" | "SHAPE":
            return _shape(text, kind, feature)
    return Value("", None)


_LIGHT_AGAIN = re.compile(
    r"\s*(?:the |an? )?light,? (?=(?-i:[A-Z])[A-Za-z]{0,5}[.( ])", re.IGNORECASE
)
"""`light Fl.5s` becomes `light Fl.10s`: the noun is no part of the character."""
_QUOTED_LIGHT = re.compile(r'"[^"]{0,60}[0-9] ?s[^"]{0,60}"[ .]*')
"""A character with its period, of which the quotes are none: `light to read "Fl.10s18m15M"`."""
_NUMBER_FIRST = re.compile(r"(?:nos?\b\.?|number) ?[0-9]", re.IGNORECASE)

_NOUN_AGAIN = {
    kind: re.compile(rf'\s*(?:the )?{kind},?:? (?=")', re.IGNORECASE)
    for kind in ("LEGEND", "NAME")
}
"""`legend "Timber Basin"` becomes `legend "Ferry Basin"`: the noun is no part of the wording."""


def _name_alone(text: str, feature: Feature) -> str | None:
    """The name of the same thing again, all else of which is as before: `berth "A4"` of `"A2"`."""
    if feature.name is None or not has_kind(text):
        return None
    other = read_feature(text)
    same = other.feature.model_copy(update={"name": feature.name, "text": feature.text})
    is_renamed = other.feature.name not in (None, feature.name) and not other.faults
    return other.feature.name if is_renamed and same == feature else None


def _wording(text: str) -> str | None:
    """The words of one quotation; None where others stand behind it."""
    words = " ".join(text.strip('" ').split())
    return None if not words or '"' in words else words


def _bare_legend(text: str, words: str) -> Value:
    """A legend without quotes, and a fault of words behind it that say at what it stands."""
    end = end_of_wording(words)
    if not leads_to_thing(words[end:]):
        return Value("legend", words[:end])
    written = {"written": shown(words[end:].strip(" ,;()"))}
    return Value("legend", words[:end], (Fault("feature-words-unread", 0, len(text), written),))


def _implied(text: str, feature: Feature) -> str | None:
    """The property that a value without its word is of; None where it could be more than one."""
    if _QUOTED_LIGHT.fullmatch(text) and value_property(text.strip('" ')) == {"light"}:
        return "CHARACTER"
    if text.startswith('"'):
        return "LEGEND" if feature.kind in ("legend", "note") else "NAME"
    if feature.kind in ("legend", "note"):
        return "LEGEND"
    if feature.kind in _AIDS:
        return _AIDS[feature.kind]
    roles = value_property(text)
    if roles & {"light", "light_words"} and "kind" not in roles:
        # `to No 6 Q.R`: a new name and a new light are two changes, and the figure no count.
        return None if _NUMBER_FIRST.match(text) else "CHARACTER"
    if has_kind(text) and not text.lower().startswith(("depth", "sounding")):
        return None
    if roles & {"light", "light_words"}:
        return "CHARACTER"
    for role, kind in (
        ("sectors", "SECTOR_WORD"),
        ("depth", "DEPTH_WORD"),
        ("clearance", "CLEARANCE_WORD"),
    ):
        if role in roles:
            return kind
    if roles and roles <= {"numbered", "code"}:
        return "NAME"
    has_depth = feature.depth is not None or feature.kind in _OF_DEPTH
    if has_depth and roles and roles <= {"measure", "number"}:
        return "DEPTH_WORD"
    if feature.clearance is not None and roles and roles <= {"measure"}:
        return "CLEARANCE_WORD"
    if feature.height_m is not None and not has_depth and roles and roles <= {"measure"}:
        # `mast, 30m, to 45m`
        return "HEIGHT"
    if roles and roles <= {"status"}:
        return "STATUS"
    if roles & {"topmark", "shape"} and _is_area(feature):
        # `restricted area to circle …`: what has a limit has no topmark.
        return None
    if "topmark" in roles:
        return "TOPMARK"
    if "shape" in roles and "colour" not in roles:
        return "SHAPE"
    return "COLOUR" if roles & {"colour", "unknown"} else None


def _is_area(feature: Feature) -> bool:
    drawn = primitives(feature.kind)
    return bool(drawn) and "P" not in drawn


_OF_DEPTH = ("dredged_area", "swept_area", "fairway")
"""Kinds whose only length is a depth: `dredged area`, from 7.5 m to 8.1 m."""


def _depth(
    text: str, words: str, kind: str, feature: Feature, chart_unit: ChartUnit | None
) -> Value:
    clearance = kind == "CLEARANCE_WORD"
    text, at_odds = without_second_unit(text)
    if at_odds:
        return Value("clearance" if clearance else "depth", None, at_odds)
    lead = words or ("clearance" if clearance and "clear" not in text.lower() else "")
    ahead = f"{lead} " if lead else ""
    over_ground = feature.kind == "unknown" or feature.s57[:1] in _ON_GROUND
    reading = read_depth(ahead + text, chart_unit, over_ground=over_ground)
    faults = tuple(
        fault._replace(start=max(0, fault.start - len(ahead)), end=max(1, fault.end - len(ahead)))
        for fault in reading.faults
    )
    written = " ".join(text.split())
    if clearance:
        found = reading.clearance
        if (
            feature.s57[:1] in _ON_GROUND
            and found is not None
            and "v" not in (ahead + text).lower()
        ):
            # `wreck, clearance to 14m`: which one, no word says.
            found = None if found.kind == "vertical" else found
        value: Any = found.model_copy(update={"written": written}) if found else None
        return Value("clearance", value, faults)
    depth = reading.depth
    if depth is None:
        return Value("depth", None, faults)
    update: dict[str, Any] = {"written": written}
    if feature.kind == "dredged_area" and depth.kind == "sounding":
        update["kind"] = "dredged"
    elif not words and feature.depth is not None and depth.kind == "sounding":
        update |= _same_sense(feature, depth.value_m)
    return Value("depth", depth.model_copy(update=update), faults)


def _same_sense(feature: Feature, value: Decimal | None) -> dict[str, Any]:
    """A bare new figure is a depth of the same sense as the old one: drying stays drying."""
    old = feature.depth
    assert old is not None
    sense: dict[str, Any] = {"kind": old.kind, "quality": old.quality}
    if old.kind == "drying" and value is not None:
        sense["value_m"] = -value
    if old.value_m is None:
        sense = {}
    return sense


def _items(text: str) -> tuple[Item, ...]:
    return told_by(text).items


def _colours(text: str) -> Value:
    items = _items(text)
    body = read_body(items, is_mark=True, is_striped=False)
    strange = any(
        item.role not in ("colour", "pattern", "plain", "unknown", "counted") for item in items
    )
    letters = sum(item.role == "unknown" for item in items)
    read = sum(item.role == "colour" for item in items)
    if strange or not body.colours or (letters and len(body.colours) <= read):
        return Value("colours", None)
    more = (("colour_pattern", body.pattern),) if body.pattern is not None else ()
    stripes = _STRIPES.search(text) if body.pattern is None else None
    if stripes is not None:
        # `red and white stripes`: which way they run is not said.
        fault = Fault("feature-words-unread", *stripes.span(), {"written": stripes[0]})
        return Value("colours", list(body.colours), (fault,))
    return Value("colours", list(body.colours), more=more)


_STRIPES = re.compile(r"\b(?:stripe[sd]?|bands?|banded)\b", re.IGNORECASE)


def _shape(text: str, kind: str, feature: Feature) -> Value:
    known = kinds().get(feature.kind)
    form = known.form if known is not None and known.form else "buoy"
    shape = read_shape(_items(text), form=form)
    if kind == "TOPMARK":
        # `topmark to can`: the same word is the shape of a buoy elsewhere.
        named = shape if shape.topmark else read_shape(_items(f"{text} topmark"), form=form)
        return Value("topmark", named.topmark)
    return Value("shape", shape.shape)
