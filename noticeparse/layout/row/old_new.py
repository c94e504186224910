"""The columns of the old and the new state: what a row of both does to its feature.

Where the column of the feature itself says what changes, the others tell of it as it was.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.layout.column.titles import Cells
from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import OPEN_END
from noticeparse.layout.item.states import set_replacement, set_states
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, words_of
from noticeparse.layout.row.cells import is_nothing, span_of
from noticeparse.layout.row.names_of_lights import set_name_of_light
from noticeparse.readers.change_parts import divide_change
from noticeparse.readers.features import has_kind, leads_feature, value_property
from noticeparse.readers.phrases import place
from noticeparse.readers.verbs import canonical_verb


def set_old_and_new(text: str, item: Item, cells: Cells) -> None:
    """Give an item what the columns OLD and NEW say, and the verb that they amount to."""
    set_name_of_light(text, item, cells)
    old, new = cells.get("old", []), cells.get("new", [])
    if old and new and not cells.get("feature") and set_states(text, item, old, new):
        return
    if item.words and item.verb is None and _set_end(text, item, old, new):
        return
    if not (old or new) or any(e.kind in PLACES for e in old + new):
        places = old + new + (cells.get("to", []) if cells.get("from") else [])
        if any(e.kind in PLACES for e in places) and item.verb is None:
            item.verb = "move"
        return
    if item.verb is not None and canonical_verb(item.verb) == "replace" and new:
        set_replacement(text, item, old, new)
        return
    written, before = (
        "" if is_nothing(words) else words.strip(" .-")
        for words in (words_of(text, new), words_of(text, old))
    )
    if before and not new and canonical_verb(item.verb or "") == "move":
        # `Move | light-buoy, from |`: it stays the same, its places alone are old and new.
        item.words += [(e.start, e.end) for e in old]
        return
    if not new and before and canonical_verb(item.verb or "") != "delete":
        start, end = old[0].start, old[-1].end
        values = {"written": words_of(text, old)}
        item.faults.append(Fault("new-value-empty", start, end, values))
    if not item.words:
        # What was there before an insertion, or is there after a deletion.
        contrary = {"insert": (before, old), "delete": (written, new)}
        words, cell = contrary.get(canonical_verb(item.verb or "") or "", ("", []))
        if has_kind(words) and (piece := span_of(cell)):
            item.faults.append(Fault("cell-misplaced", *piece, {"written": words}))
    # `pilot boarding place` ends with a word that is a verb elsewhere.
    said = None if has_kind(written) else canonical_verb(written)
    verb = said if written else "delete"
    if item.verb is None and (not before or not written) and _is_of_part(text, item, old + new):
        # The thing may stay, and the racon or the range of its light be new or gone.
        start, end = (old if before else new)[0].start, (old if before else new)[-1].end
        item.faults.append(Fault("state-of-part", start, end, {"written": before or written}))
    if verb in ("insert", "delete"):
        item.verb = item.verb or written or "delete"
        item.verb_piece = item.verb_piece or span_of(new)
        if before and not (item.words and before.replace(" ", "").isalpha()):
            # `charted` or `existing` beside the feature says nothing more of it.
            item.words += [(e.start, e.end) for e in old]
        return
    if not before and canonical_verb(item.verb or "insert") == "insert":
        item.verb = item.verb or "insert"
        item.words += [(e.start, e.end) for e in new]
        return
    if item.verb is None and not item.words and has_kind(before) and has_kind(written):
        item.verb = "replace"
    item.verb = item.verb or "amend"
    item.old = [(e.start, e.end) for e in old]
    item.change = [(e.start, e.end) for e in new]


def _set_end(text: str, item: Item, old: Sequence[Element], new: Sequence[Element]) -> bool:
    """Make an item of a feature with its place under one of the states and nothing in the other.

    `wreck | P | -` is a deletion, `wreck | - | P` an insertion.
    """
    placed = [any(e.kind in PLACES for e in state) for state in (old, new)]
    if placed.count(True) != 1:
        return False
    other = new if placed[0] else old
    if not other or not is_nothing(words_of(text, other)):
        return False
    item.verb = "delete" if placed[0] else "insert"
    for group in item.groups:
        group.role = None if group.role == "to" else group.role
    return True


_PARTS = frozenset({"topmark", "racon", "ais", "sound", "sectors", "companion"})
_PROPERTIES = frozenset({"RANGE", "PERIOD", "ELEVATION", "SECTOR_WORD", "TOPMARK"})


def _is_of_part(text: str, item: Item, states: Sequence[Element]) -> bool:
    """Whether states tell of a part or property of the feature that is named beside them."""
    if not has_kind(" ".join(text[slice(*piece)] for piece in item.words)):
        return False
    said = " ".join(words for e in states if not is_nothing(words := text[e.start : e.end]))
    parts = divide_change(said)
    told = {part.property.type for part in parts if part.property is not None}
    return bool(told & _PROPERTIES) or bool(value_property(said) & _PARTS)


def with_new_below(text: str, cells: Cells) -> Cells:
    """The cells of a row whose verb is `Replace by`, what comes being below what goes.

    `North cardinal beacon` beside the verb, and below it `north cardinal light-beacon, VQ`.
    """
    verb, feature = cells.get("verb", []), cells.get("feature", [])
    if len(feature) < 2 or {"new", "change"} & cells.keys():
        return cells
    words = words_of(text, verb).strip(" .:").lower()
    if words.rpartition(" ")[2] not in ("by", "with"):
        return cells
    if canonical_verb(words.rpartition(" ")[0]) != "replace":
        return cells
    at = next((i for i, e in enumerate(feature) if "\n" in text[feature[0].end : e.start]), None)
    goes, comes = feature[:at], feature[at:] if at else []
    said = [words_of(text, goes), words_of(text, comes)]
    # `Light-buoy near the` goes on with the words below it.
    is_open = said[0].rpartition(" ")[2].lower() in OPEN_END
    if is_open or not all(leads_feature(one) and has_kind(one) for one in said):
        return cells
    return {**cells, "verb": verb[:1], "link": verb[1:], "feature": goes, "change": comes}


def with_change_apart(text: str, cells: Cells, verb: str | None) -> Cells:
    """The cells of a row whose feature says itself what becomes of it, beside its old character.

    In `Amend | light: period to 6s | Fl.4s12m8M` the character goes with the light, and what
    changes is read behind it.
    """
    told = words_of(text, cells.get("verb", [])) or verb or ""
    feature = cells.get("feature", [])
    if canonical_verb(told) != "amend" or "light" not in cells or len(feature) != 1:
        return cells
    if {"old", "new", "change"} & cells.keys() or feature[0].kind != "words":
        return cells
    start, end = feature[0].start, feature[0].end
    parts = divide_change(text[start:end])
    changes = [part for part in parts if part.is_change]
    if not changes or any(part.new is None for part in changes):
        return cells
    named = [part.subject for part in parts[: parts.index(changes[0]) + 1] if part.subject]
    if not named or not has_kind(text[start + named[0][0] : start + named[-1][1]]):
        return cells
    first = changes[0].property
    cut = place(first)[0] if first is not None else named[-1][1]
    if cut < named[-1][1]:
        # `range of light to 11M`: what changes stands in front.
        return cells
    behind = text[start + cut : end]
    at = end - len(behind.lstrip(" ,:"))
    return {
        **cells,
        "feature": [feature[0]._replace(end=start + named[-1][1])],
        "change": [feature[0]._replace(start=at, gap=False)],
    }


_RELATES = re.compile(r"\b(?:close|near|off|of|in|on|at|from|to|between|along)\b", re.IGNORECASE)


def with_feature_in_place(text: str, cells: Cells) -> Cells:
    """The cells of a row of both states whose feature stands where others have their place.

    `light, Fl.R.4s5M | range 5M | range 8M`, its place below it or under OLD and NEW.
    """
    cell = cells.get("position", [])
    if not cell or "feature" in cells or not {"old", "new"} & cells.keys():
        return cells
    words = words_of(text, cell)
    if any(e.kind != "words" for e in cell) or not has_kind(words):
        return cells
    if not leads_feature(words) and (words[:1].islower() or _RELATES.search(words)):
        return cells
    rest = {role: told for role, told in cells.items() if role != "position"}
    return {**rest, "feature": cell}
