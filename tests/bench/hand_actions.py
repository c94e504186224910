"""Hand-written reading of items for the bench: verb, relation words, changes and replacements."""

from __future__ import annotations

import re
from decimal import Decimal
from functools import lru_cache
from typing import Any, NamedTuple

from noticeparse.records import Change, Depth, Feature
from tests.bench.hand_phrases import (
    BARE_LIGHT,
    DEPTH_AMOUNT,
    Read,
    amount_m,
    feature,
    make_light,
    plain,
    read_feature,
)

_VERBS = {
    "Insert": "insert", "Add": "insert", "Establish": "insert", "Place": "insert",
    "Amend": "amend", "Change": "amend", "Modify": "amend", "Alter": "amend",
    "Correct": "amend", "Replace": "replace", "Substitute": "replace", "Move": "move",
    "Relocate": "move", "Reposition": "move", "Shift": "move", "Transfer": "move",
    "Delete": "delete", "Discontinue": "delete", "Expunge": "delete", "Remove": "delete",
    "Erase": "delete",
}  # fmt: skip
_LINKS = (
    (", joining:", "joining"), (", bounded by:", "within"), (", centred on", "centred_on"),
    (", from", "at"),
)  # fmt: skip
_RADIUS = re.compile(r", radius ([0-9.]+) miles?$")


class Made(NamedTuple):
    """An action as plain values, and where depths without a unit stand in its words."""

    action: dict[str, Any]
    unstated: tuple[tuple[int, str], ...]


class Described(NamedTuple):
    """What the words of an item say, apart from its places."""

    feature: Feature
    replacement: Feature | None = None
    changes: tuple[Change, ...] = ()
    relation: str = "at"
    radius_nm: Decimal | None = None
    unstated: tuple[tuple[int, str], ...] = ()


def make_action(
    written_verb: str,
    words: str,
    unit: str | None,
    positions: list[dict[str, Any]],
    destination: list[dict[str, Any]],
) -> Made:
    """The action of an item; its text and span are set by the caller."""
    verb = _VERBS[written_verb]
    said = describe(verb, words, unit)
    action: dict[str, Any] = {
        "verb": verb, "written_verb": written_verb, "label": None, "feature": said.feature,
        "geometry": _geometry(said, positions),
    }  # fmt: skip
    if verb == "move":
        action["destination"] = {
            "shape": "point", "relation": "at", "direction": None, "radius_nm": None,
            "arc": None, "offset": None, "positions": destination,
        }  # fmt: skip
    elif verb == "replace":
        action["replacement"] = said.replacement
    elif verb == "amend":
        action["changes"] = list(said.changes)
    return Made(action, said.unstated)


def _geometry(said: Described, positions: list[dict[str, Any]]) -> dict[str, Any]:
    if said.radius_nm is not None:
        shape = "circle"
    elif said.relation == "joining":
        shape = "line"
    elif said.relation == "within":
        shape = "area"
    else:
        shape = "point" if len(positions) == 1 else "points"
    return {
        "shape": shape, "relation": said.relation, "direction": None,
        "radius_nm": said.radius_nm, "arc": None, "offset": None, "positions": positions,
    }  # fmt: skip


@lru_cache(maxsize=4096)
def describe(verb: str, words: str, unit: str | None) -> Described:
    """The words of an item."""
    relation = "at"
    if words.endswith((":", "on", "from")):
        for ending, name in _LINKS:
            if words.endswith(ending):
                words, relation = words[: -len(ending)], name
                break
    radius = None
    match = _RADIUS.search(words)
    if match is not None:
        words, radius = words[: match.start()], Decimal(match[1])
    if verb == "replace":
        return _replaced(words, unit)
    if verb == "amend":
        return _amended(words, unit)
    read = read_feature(words, unit)
    assert read is not None, words
    return Described(read.feature, None, (), relation, radius, read.unstated)


def _replaced(words: str, unit: str | None) -> Described:
    for joint in (" by ", " with ", " for "):
        at = words.find(joint)
        while at >= 0:
            first = read_feature(words[:at], unit)
            second = read_feature(words[at + len(joint) :], unit)
            if first is not None and second is not None:
                shift = at + len(joint)
                behind = tuple((shift + start, figure) for start, figure in second.unstated)
                old, new = (second, first) if joint == " for " else (first, second)
                return Described(old.feature, new.feature, unstated=(*first.unstated, *behind))
            at = words.find(joint, at + 1)
    raise AssertionError(words)


def _amended(words: str, unit: str | None) -> Described:
    if words.startswith("light to "):
        match = BARE_LIGHT.match(plain(words[9:]))
        assert match is not None, words
        change = Change(property="light", old=None, new=make_light(match, words[9:]))
        return Described(feature("light", "light", ["LIGHTS"]), changes=(change,))
    if words.startswith("light"):
        return _one_of_light(words, unit)
    if words.startswith("elevation of light to "):
        height = Decimal(words[22:-1])
        change = Change(property="light.elevation_m", old=None, new=height)
        return Described(feature("light", "light", ["LIGHTS"]), changes=(change,))
    before, _, after = words.partition(" to ")
    old = read_feature(before, unit)
    assert old is not None, words
    if words.startswith("depth "):
        return _other_depth(old, before, after, unit)
    if words.startswith("legend "):
        change = Change(property="legend", old=old.feature.legend, new=plain(after).strip('"'))
    else:
        change = Change(property="name", old=old.feature.name, new=after)
    return Described(old.feature, changes=(change,))


def _one_of_light(words: str, unit: str | None) -> Described:
    before, _, after = words.partition(": ")
    name, _, value = after.partition(" to ")
    read = read_feature(before, unit)
    assert read is not None, words
    light = read.feature.light
    assert light is not None, words
    figure = Decimal(plain(value)[:-1])
    if name == "range":
        change = Change(property="light.ranges_nm", old=light.ranges_nm, new=[figure])
    else:
        change = Change(property="light.period_s", old=light.period_s, new=figure)
    return Described(read.feature, changes=(change,))


def _other_depth(old: Read, before: str, after: str, unit: str | None) -> Described:
    match = DEPTH_AMOUNT.fullmatch(plain("depth " + after))
    assert match is not None, after
    value, stated = amount_m(match, unit)
    amount: dict[str, Any] = {"written": after, "value_m": value, "unit": stated}
    new = Depth(**amount, quality=None, kind="sounding")
    was = old.feature.depth
    assert was is not None
    bare = was.model_copy(update={"written": was.written.removeprefix("depth ")})
    change = Change(property="depth", old=bare, new=new)
    behind = ((len(before) + 4, after),) if stated is None else ()
    return Described(old.feature, changes=(change,), unstated=(*old.unstated, *behind))
