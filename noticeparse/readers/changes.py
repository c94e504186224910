"""Reads the phrase of an amendment: the feature as it was, and what changes on it.

In comes `light Fl W 6s 22m 14M: range to 11M`; out come the feature, the changes with old and new
values, and the faults.  A single characteristic of a light is a dotted path, a whole new character
one change of `light`.  What cannot be read as a change is an error, never a guess.
"""

from __future__ import annotations

from functools import lru_cache
from typing import Any, NamedTuple

from noticeparse.catalogue import ENTRIES
from noticeparse.faults import Fault
from noticeparse.readers.amounts import ChartUnit, shown
from noticeparse.readers.change_lights import is_range_of_colour, light_value
from noticeparse.readers.change_parts import (
    Part,
    Value,
    carried,
    divide_change,
    is_end_of,
    is_of_other_kind,
    named_within,
    present,
    with_old_state,
)
from noticeparse.readers.change_units import (
    as_it_stands,
    is_bare_change,
    shared_unit,
    takes_unit,
    written_value,
)
from noticeparse.readers.change_values import read_value
from noticeparse.readers.features import has_kind, read_feature, value_property
from noticeparse.readers.phrases import place
from noticeparse.readers.swaps import SwapReading, read_swap
from noticeparse.readers.written_otherwise import change_in_known_form
from noticeparse.records.action import Change
from noticeparse.records.feature import Feature
from noticeparse.stretch import Stretch, gather
from noticeparse.vocabulary import kinds

__all__ = ["ChangeReading", "SwapReading", "is_bare_change", "read_change", "read_swap"]

_CONTINUES = frozenset(
    (
        "light light_words sectors measure number colour pattern topmark pointed shape "
        "sound racon ais"
    ).split()
)


class ChangeReading(NamedTuple):
    """The feature before the change and what changes; faults count from the phrase's start."""

    feature: Feature
    changes: tuple[Change, ...]
    faults: tuple[Fault, ...]


@lru_cache(maxsize=4096)
def read_change(text: str, chart_unit: ChartUnit | None = None) -> ChangeReading:
    """The feature and its changes; no readable change is an error fault."""
    return _Reading(change_in_known_form(text.rstrip(" .")), chart_unit).change()


class _Reading:
    """One reading; lives for one call."""

    def __init__(self, text: str, chart_unit: ChartUnit | None) -> None:
        self.text = text
        self.chart_unit = chart_unit
        self.faults: list[Fault] = []
        self.is_loss_told = False
        """Whether an error says why a new value is not there."""

    def blame(self, code: str, start: int, end: int, **values: str) -> None:
        self.faults.append(
            Fault(code, start, end, {"written": shown(self.text[start:end]), **values})
        )

    def change(self) -> ChangeReading:
        parts = carried(self.joined(list(divide_change(self.text))))
        parts = with_old_state([named_within(part, self.text) for part in parts], self.text)
        clauses = [part for part in parts if part.is_change]
        if not clauses:
            parts, clauses = self.sectors_alone(parts)
        if not clauses:
            self.blame("change-unread", 0, len(self.text))
            return self.closed(read_feature(self.text, self.chart_unit).feature, [])
        feature = self.feature(parts, clauses)
        changes: list[Change] = []
        for clause in clauses:
            changes += self.clause(clause, feature)
        changes = self.once(changes)
        is_told = self.is_loss_told or any(one.code.startswith("change-") for one in self.faults)
        if not changes and not is_told:
            self.blame("change-unread", 0, len(self.text))
        feature = self.before(feature, changes)
        return self.closed(feature, changes)

    def once(self, changes: list[Change]) -> list[Change]:
        """The changes without those of one property, or of a path and its parent."""
        paths = [change.property for change in changes]
        twice = {
            path
            for at, path in enumerate(paths)
            for other in (*paths[:at], *paths[at + 1 :])
            if path == other or path.startswith(other + ".") or other.startswith(path + ".")
        }
        if twice:
            self.blame(
                "change-property-twice", 0, len(self.text), property=", ".join(sorted(twice))
            )
        return [change for change in changes if change.property not in twice]

    def sectors_alone(self, parts: list[Part]) -> tuple[list[Part], list[Part]]:
        """A list of sectors without `to`, which can only be the new one."""
        for at, part in enumerate(parts):
            if part.subject and value_property(self.text[slice(*part.subject)]) == {"sectors"}:
                self.blame("change-new-assumed", *part.subject)
                made = Part(None, new=part.subject)
                return [*parts[:at], made, *parts[at + 1 :]], [made]
        return parts, []

    def closed(self, feature: Feature, changes: list[Change]) -> ChangeReading:
        self.faults.sort(key=lambda fault: (fault.start, fault.end))
        return ChangeReading(feature, tuple(changes), tuple(self.faults))

    def joined(self, parts: list[Part]) -> list[Part]:
        """Gives a value that a comma divides (`to red, white and black`) its later parts."""
        made: list[Part] = []
        for part in parts:
            last = made[-1] if made else None
            words = self.text[slice(*part.subject)] if part.subject and not part.is_change else ""
            goes_on = bool(words) and bool(value_property(words) & _CONTINUES)
            goes_on = goes_on or is_range_of_colour(words)
            if last is not None and last.new is not None and part.subject and goes_on:
                made[-1] = last._replace(new=(last.new[0], part.subject[1]))
                continue
            made.append(part)
        return made

    def feature(self, parts: list[Part], clauses: list[Part]) -> Feature:
        stretches = [part.subject for part in parts if part.subject is not None]
        named = [one for one in stretches if not self.is_value(one)]
        if not named:
            return self.unnamed(clauses)
        stretch = self.contiguous(stretches)
        reading = read_feature(stretch.text, self.chart_unit)
        self.faults += [_outer(stretch, fault) for fault in reading.faults]
        return reading.feature

    def contiguous(self, stretches: list[tuple[int, int]]) -> Stretch:
        """The subject's stretches as one text; commas between them divide it still."""
        pieces: list[tuple[int, int]] = []
        for start, end in stretches:
            if pieces and not self.text[pieces[-1][1] : start].strip(" ,;:"):
                pieces[-1] = (pieces[-1][0], end)
            else:
                pieces.append((start, end))
        return gather(self.text, pieces)

    def is_value(self, stretch: tuple[int, int]) -> bool:
        """`depth of 5 m to 4 m`: what follows `of` is the old value, not the feature."""
        words = self.text[slice(*stretch)]
        return not has_kind(words) and value_property(words) <= {"measure", "number", "plain"}

    def unnamed(self, clauses: list[Part]) -> Feature:
        """The feature where only its property is named: the state before, as far as written."""
        clause = clauses[0]
        words = str(clause.property) if clause.property is not None else ""
        old = self.text[slice(*(clause.old or clause.subject or (0, 0)))]
        kind = clause.property.type if clause.property is not None else ""
        if kind in ("DEPTH_WORD", "LEGEND"):
            told = f"{words} {old}".strip()
            lent = shared_unit(old, self.text[slice(*(clause.new or (0, 0)))])
            reading = read_feature(told + lent, self.chart_unit)
            start = place(clause.property)[0] if clause.property is not None else 0
            end = (clause.old or (0, start + len(words)))[1]
            self.faults += [fault._replace(start=start, end=end) for fault in reading.faults]
            if lent and reading.feature.depth is not None:
                depth = reading.feature.depth.model_copy(update={"written": old})
                return reading.feature.model_copy(update={"text": told, "depth": depth})
            return reading.feature
        if is_bare_change(self.text):
            return read_feature(old, self.chart_unit).feature
        path = light_value(kind)
        if path is not None or (not kind and clause.new and self.is_light(clause.new)):
            return read_feature("light", None).feature.model_copy(
                update={"text": words or "light"}
            )
        reading = read_feature(words, self.chart_unit)
        if reading.feature.kind == "unknown":
            self.blame("feature-unknown", 0, len(self.text))
        return reading.feature

    def is_light(self, stretch: tuple[int, int]) -> bool:
        return bool(
            value_property(self.text[slice(*stretch)]) & {"light", "light_words", "sectors"}
        )

    def clause(self, clause: Part, feature: Feature) -> list[Change]:
        stretch = clause.new
        if stretch is None:
            # Only one value stands, and no `to`: an amendment must state the new one.
            stretch = clause.old
            if stretch is None or clause.property is None:
                start = clause.property.start_pos if clause.property is not None else 0
                self.blame("change-unread", start or 0, len(self.text))
                return []
            self.blame("change-new-assumed", *stretch)
            clause = clause._replace(old=None)
        new = self.value(clause, feature, stretch, is_new=True)
        if new is None:
            return []
        if new.property == "colours" and feature.light is not None and not feature.colours:
            # The paint of a lit mark, or its light: the words fit both.
            self.blame("change-colour-unclear", *stretch)
        old = self.old(clause, feature, new)
        is_quoted = self.text[slice(*stretch)].lstrip().startswith('"')
        is_rest = new.property == "legend" and not is_quoted and is_end_of(new.value, old)
        if is_rest or is_of_other_kind(clause, new, old):
            # `Under construction (2024), to (2026)`: whether the words stay is not said.
            self.blame("change-value-unread", *stretch, property=new.property)
            return []
        changes = [Change(property=new.property, old=old, new=new.value)]
        for name, value in new.more:
            changes.append(Change(property=name, old=present(feature, name), new=value))
        return changes

    def value(
        self, clause: Part, feature: Feature, stretch: tuple[int, int], *, is_new: bool
    ) -> Value | None:
        start, end = stretch
        text, rest = self.text[start:end], (clause.property, feature, self.chart_unit)
        value = read_value(text, *rest)
        lent = shared_unit(text, self.beside(clause, feature, is_new=is_new))
        if lent and takes_unit(value):
            value = as_it_stands(read_value(text + lent, *rest), text)
        if is_new:
            self.faults += [fault.shifted(start) for fault in value.faults]
            # An error of the value itself says why there is none.
            is_told = any(ENTRIES[fault.code].severity == "error" for fault in value.faults)
            self.is_loss_told = self.is_loss_told or is_told
            if value.value is None and not is_told:
                name = clause.property.lower().replace("the ", "") if clause.property else "state"
                self.blame("change-value-unread", start, end, property=name)
        return value if value.value is not None else None

    def beside(self, clause: Part, feature: Feature, *, is_new: bool) -> str:
        """The words of the other value of a change, which may state the unit of both."""
        if not is_new:
            return self.text[slice(*(clause.new or (0, 0)))]
        old = clause.old or clause.subject
        is_told = old is not None and (old == clause.old or self.is_value(old))
        return self.text[slice(*old)] if old and is_told else written_value(feature)

    def old(self, clause: Part, feature: Feature, new: Value) -> Any:
        stretch = clause.old
        if stretch is None and clause.subject is not None and self.is_value(clause.subject):
            stretch = clause.subject
        stated = self.value(clause, feature, stretch, is_new=False) if stretch else None
        known = present(feature, new.property)
        # `from "Dredged 7m" to dredged 7.5m`: a wording is no depth.
        if stated is None or stated.property != new.property:
            if stretch is not None:
                self.blame("change-old-unread", *stretch)
            return known
        if known is not None and known != stated.value and new.property != "depth":
            self.blame("change-old-differs", *(stretch or (0, 0)))
        return stated.value

    def before(self, feature: Feature, changes: list[Change]) -> Feature:
        """The state before, with the old values that the phrase states."""
        update: dict[str, Any] = {}
        for change in changes:
            plain = change.property in (
                "name",
                "legend",
                "depth",
                "clearance",
                "height_m",
                "light",
            )
            if plain and getattr(feature, change.property) is None and change.old is not None:
                update[change.property] = change.old
        if "light" in update and "LIGHTS" not in feature.s57:
            main = kinds().get(feature.kind)
            rest = feature.s57[1:] if main and main.s57 and feature.s57 else feature.s57
            first = feature.s57[: len(feature.s57) - len(rest)]
            update["s57"] = [*first, "LIGHTS", *rest]
        return feature.model_copy(update=update) if update else feature


def _outer(stretch: Stretch, fault: Fault) -> Fault:
    end = stretch.outer(max(fault.end - 1, fault.start)) + 1
    return fault._replace(start=stretch.outer(fault.start), end=end)
