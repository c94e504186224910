"""Settles kind, main S-57 class and state of a feature from what its phrase tells.

In come the items told and the aids read; out come the id of the vocabulary, the class, whether
a mark is a lit one, and the faults found.  A generic buoy or beacon becomes the mark of its
category; colour and shape alone make it none, for their meaning depends on the region.
"""

from __future__ import annotations

import re
from typing import NamedTuple

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.depths import SAFE_CLEARANCE_QUALITY
from noticeparse.readers.feature_aids import Aids
from noticeparse.readers.marks import (
    CARRIED_LIGHTS,
    category_of,
    class_of_category,
    kind_of_category,
)
from noticeparse.readers.restrictions import restrictions
from noticeparse.readers.told import Told, depth_kind
from noticeparse.readers.words import Item, is_lone_figure
from noticeparse.records.depth import Depth
from noticeparse.vocabulary import kinds, refined

# Marks whose class a category word in the same phrase could contradict.
_CATEGORISED = ("BOYLAT", "BOYCAR", "BOYISD", "BOYSAW", "BCNLAT", "BCNCAR", "BCNISD", "BCNSAW")
_CARRIES = frozenset(
    "LNDMRK PILPNT MORFAC OFSPLF BUISGL SLCONS BRIDGE PYLONS CRANES DAYMAR SILTNK CAUSWY".split()
)
"""Classes of structures that a light is a part of."""


class Settled(NamedTuple):
    """The kind as far as words tell it, its class, and whether a mark is lit."""

    kind: str
    s57: str
    is_lit: bool


def settle_kind(text: str, told: Told, aids: Aids, faults: list[Fault]) -> Settled:
    """Kind, main class and light of the feature."""
    return _Settling(text, told, aids, faults).settled()


def narrow_kind(kind: str, told: Told, depth: Depth | None, *, is_lit: bool) -> str:
    """The narrower kind that depth, danger, water level and status make of it."""
    words = {item.value for item in told.items if item.role in ("wreck", "water", "status")}
    if any(i.value == "light_sector_change" and not i.bracketed for i in told.roles("kind")):
        words.add("sectors")
    if any(i.value == "radio_mast" and i.bracketed for i in told.roles("kind")):
        words.add("masts")  # `wreck (masts)`
    if depth is not None and depth.value_m is not None and depth.quality != SAFE_CLEARANCE_QUALITY:
        words.add(depth.kind)
    return refined(kind, words | ({"lit"} if is_lit else set()))


class _Settling:
    """One settling; lives for one call."""

    def __init__(self, text: str, told: Told, aids: Aids, faults: list[Fault]) -> None:
        self.text = text
        self.told = told
        self.aids = aids
        self.faults = faults

    def blame(self, code: str, start: int, end: int, **values: str) -> None:
        values.setdefault("written", shown(self.text[start:end]))
        self.faults.append(Fault(code, start, end, values))

    def settled(self) -> Settled:
        head = self.told.head
        if head is None or head.sense is None:
            kind = self.of_values()
            known = kinds().get(kind)
            return Settled(kind, known.s57 if known else "", False)
        known = kinds()[head.value]
        if self.is_virtual(head):
            return Settled("ais_virtual", kinds()["ais_virtual"].s57, False)
        lit = self.is_lit(head)
        if known.form in ("buoy", "beacon"):
            return self.mark(head, known.form, known.s57, lit)
        is_joint = known.s57 == "RESARE" and bool(restrictions(self.text))
        return Settled("restricted_area" if is_joint else head.value, known.s57, lit)

    def is_lit(self, head: Item) -> bool:
        said = {item.value for item in self.told.roles("lit")}
        lit = bool(head.sense and head.sense.lit) or bool(self.aids.lights) or "lit" in said
        return (lit or self.carries_light(head)) and "unlit" not in said

    def carries_light(self, head: Item) -> bool:
        """Whether a light is named as a part of a mark or structure: `mast (R Lt)`."""
        known, items = kinds()[head.value], self.told.items
        if not known.form and known.s57 not in _CARRIES:
            return False
        for at, item in enumerate(items):
            is_light = item.role == "kind" and item.value in CARRIED_LIGHTS and item != head
            beside = {one.role for one in items[max(at - 1, 0) : at + 2]}
            if is_light and "negation" not in beside and items[at - 1].text.lower() != "no":
                return True
        return False

    def mark(self, head: Item, form: str, s57: str, lit: bool) -> Settled:
        """A buoy or beacon, made the mark of its category."""
        kind = head.value
        category, contrary = category_of(self.told.items)
        if contrary is not None:
            other = str(category).replace("_", " ")
            self.blame("feature-category-conflict", contrary.start, contrary.end, other=other)
        elif category is None:
            if not s57:
                self.blame("feature-class-unknown", head.start, head.end)
        elif not s57:
            made = kind_of_category(category, form, lit=lit)
            return Settled(made, class_of_category(category, form), lit)
        elif s57 in _CATEGORISED and _contradicts(kind, s57, category, form):
            item = next(self.told.roles("category"))
            other = kind.replace("_", " ")
            self.blame("feature-category-conflict", item.start, item.end, other=other)
        return Settled(kind, s57, lit)

    def is_virtual(self, head: Item) -> bool:
        """A virtual aid is no buoy; said of a mark behind a comma, it goes with a real one."""
        said = next(self.told.roles("virtual"), None) or next(self.told.roles("ais"), None)
        virtual = self.aids.ais is not None and self.aids.ais.virtual
        virtual = virtual or any(True for _ in self.told.roles("virtual"))
        if said is None or not virtual or not kinds()[head.value].form:
            return False
        if _JOINED.search(self.text, head.end, max(said.start, head.end)) is not None:
            self.blame("feature-virtual-with-mark", said.start, said.end)
            return False
        return True

    def of_values(self) -> str:
        """The kind where no word names one: what the values by themselves are."""
        aids = self.aids
        if aids.lights or any(True for _ in self.told.roles("light")):
            self.blame("feature-support-not-stated", 0, len(self.text))
            return "light"
        if aids.racon is not None:
            return "racon"
        if aids.sound is not None:
            return "fog_signal"
        if aids.ais is not None:
            return "ais_virtual" if aids.ais.virtual else "ais_physical"
        for item in self.told.items:
            if item.role == "depth":
                return depth_kind(item.text, alone=True) or "sounding"
            if item.sense is not None and item.sense.alone:
                return item.sense.alone
            if item.role == "measure" and any(c in "₀₁₂₃₄₅₆₇₈₉" for c in item.text):
                return "sounding"
        if is_lone_figure(self.told.items):
            self.blame("depth-word-missing", 0, len(self.text))
            return "sounding"
        self.blame("feature-unknown", 0, len(self.text))
        return "unknown"


_JOINED = re.compile(r"[,;(+&]|\b(?:with|and|plus|fitted|carrying|showing)\b", re.IGNORECASE)
"""What joins a virtual aid to a mark that is there."""


def _contradicts(kind: str, s57: str, category: str, form: str) -> bool:
    """Whether a category word makes another mark of it than the phrase that names it."""
    if s57 != class_of_category(category, form):
        return True
    own = kinds()[kind].attributes
    made = kinds()[kind_of_category(category, form, lit=False)].attributes
    return any(own.get(name) != code for name, code in made.items() if name in own)
