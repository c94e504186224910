"""From an item to an action: verb, feature, geometry, with the faults of each."""

from __future__ import annotations

from typing import Any, NamedTuple

from noticeparse.build.against import against
from noticeparse.build.announced import (
    announced_letters,
    define_label,
    names_by_reference,
    note_labels,
)
from noticeparse.build.carried import read_carried
from noticeparse.build.doubts import (
    change_within,
    command_within,
    is_garbled,
    lost_brackets,
    marks_of_doubt,
    parted_figures,
)
from noticeparse.build.errata import settled
from noticeparse.build.extents import item_extent, over, quoting, with_item
from noticeparse.build.geometry import GeometryReading, read_geometry
from noticeparse.build.line_ends import with_bearing_told, with_feature_of_limit
from noticeparse.build.missing import missing_places
from noticeparse.build.parted_lights import parted_lights
from noticeparse.build.phrases import joint_between, opening_length, words_of_item
from noticeparse.build.positions import Labels, with_quality
from noticeparse.build.replaced_behind import with_thing_in_place
from noticeparse.build.wording import changes_with_original_words, with_original_words
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.evidence import OPEN_END
from noticeparse.readers.amounts import shown
from noticeparse.readers.changes import read_change, read_swap
from noticeparse.readers.places import Split, names_nothing, split_phrase
from noticeparse.readers.positions import quality_mark
from noticeparse.readers.verbs import Verb
from noticeparse.records.action import Action, Amend, Change, Delete, Insert, Move, Replace
from noticeparse.records.depth import DepthUnit
from noticeparse.records.feature import Feature
from noticeparse.records.geometry import Geometry
from noticeparse.stretch import EMPTY, Stretch, concatenated, gather

# Words, notes and pasted blocks may stand anywhere on the sheet.
_LIMIT_WORDS = frozenset({"limit", "limits", "area", "areas"})
_OF_WORDS = frozenset({"feature-unknown", "swap-not-divided", "change-unread"})
# `Exchange A for B`: some give A away, and some put it in.
_EITHER_WAY = frozenset({"exchange", "exchanged", "swap", "swapped"})


class ActionReading(NamedTuple):
    """An action, or None where the item is none; faults count in the repaired text."""

    action: Action | None
    faults: list[Fault]
    announced: tuple[str, ...] = ()
    """The letters of an item that is no action and only names positions for those below it."""


class _Described(NamedTuple):
    feature: Feature
    faults: list[Fault]
    changes: tuple[Change, ...] = ()
    replacement: Feature | None = None


def read_action(
    context: Context, item: Item, labels: Labels, unit: DepthUnit | None
) -> ActionReading:
    """The action of an item; an item without a readable verb is none and leaves an error."""
    faults = list(item.faults)
    labels.under(item.verb)
    verb, words = settled(context, item, words_of_item(context, item))
    if verb is None:
        return _without_verb(context, item, labels)
    item, link = with_thing_in_place(context, item, verb)
    if is_garbled(words.text):
        faults.append(over(context, item, "text-garbled"))
        note_labels(context, item, labels)
        return ActionReading(None, faults)
    faults += lost_brackets(context, item, words) + parted_figures(context, item)
    faults += marks_of_doubt(context, item)
    faults += command_within(context, words, verb) + change_within(context, item, words, verb)
    split, description, kind = _divided(context, item, words, verb, unit)
    place_faults: list[Fault] = []
    reading = read_geometry(
        context,
        item,
        split.parts,
        words,
        labels,
        kind=kind,
        is_move=verb == "move",
        says_limit=_says_limit(words.text),
        faults=place_faults,
    )
    reading = _with_quality(reading)
    geometry, rest = reading.geometry, reading.rest
    # Behind `… to 41m and` another command of the same sentence follows.
    rest = rest.part(0, len(rest.text.rstrip(" .").removesuffix(" and").rstrip(" ,")))
    garbled = _garbled(context, rest)
    joint = joint_between(verb, item.verb or "", description.text, rest.text)
    joint = link or (" " if _is_open(description.text) else joint)
    phrase = concatenated(description, rest, joint)
    described = _describe(verb, item, phrase, context, unit)
    for fault in described.faults:
        is_wordless = fault.code in _OF_WORDS and names_nothing(phrase.text)
        is_nameless = is_wordless and fault.code == "feature-unknown"
        if is_nameless and not names_by_reference(context, item, labels):
            fault = fault._replace(code="item-without-feature")
        # Where the new state stands elsewhere there is no change to be read.
        if fault.code.startswith("change-") and _is_at_two_places(item):
            continue
        # Of words that nobody can read it is not told which figure is not understood.
        if not any(one.start <= fault.start and fault.end <= one.end for one in garbled):
            faults.append(over(context, item, fault.code) if is_wordless else fault)
    feature, replacement = described.feature, described.replacement
    own = (context, item, phrase, verb, feature, geometry)
    faults += against(*own, replacement=replacement, read=faults)
    features = filter(None, (feature, replacement))
    lights = parted_lights(context, phrase, features, described.changes)
    faults += [*lights, *garbled, *place_faults]
    faults += missing_places(context, item, verb, feature, reading)
    define_label(item, labels, geometry, faults)
    return ActionReading(_record(context, item, verb, described, geometry, reading), faults)


def _divided(
    context: Context, item: Item, words: Stretch, verb: Verb, unit: DepthUnit | None
) -> tuple[Split, Stretch, str]:
    """Where the description ends and its place begins, the description, and what kind it is of."""
    split = split_phrase(words.text) if item.groups else Split(len(words.text), ())
    split = with_feature_of_limit(words.text, split)
    is_told = verb == "amend" or bool(item.old or item.change)
    if item.words and item.groups and not split.description_end and not is_told:
        split = Split(len(words.text), ())
    opening = opening_length(words.text)
    kind = _kind_of(words.part(opening, split.description_end).text, unit, verb)
    split = with_bearing_told(context, item, words.text, split, kind)
    return split, words.part(opening, split.description_end), kind


def _without_verb(context: Context, item: Item, labels: Labels) -> ActionReading:
    """An item that says not what is to be done; it may name positions for others."""
    note_labels(context, item, labels)
    if letters := announced_letters(context, item):
        return ActionReading(None, list(item.faults), letters)
    faults = [with_item(context, item, fault) for fault in item.faults]
    if not any(fault.code == "verb-unknown" for fault in faults):
        faults.append(over(context, item, "item-without-verb"))
    return ActionReading(None, faults)


def _is_open(words: str) -> bool:
    """Whether a description ends in a word that leads on to what stands behind the place."""
    told, _, last = words.rpartition(" ")
    return bool(told) and last.lower() in OPEN_END


def _is_at_two_places(item: Item) -> bool:
    return any(fault.code == "states-at-two-places" for fault in item.faults)


def _garbled(context: Context, rest: Stretch) -> list[Fault]:
    """Words behind the position that nobody can read."""
    if not is_garbled(rest.text):
        return []
    start, end = rest.extent((0, len(rest.text)))
    return [quoting(context, "text-garbled", (start, end))]


def _kind_of(words: str, unit: DepthUnit | None, verb: Verb) -> str:
    if verb == "amend":
        return read_change(words, unit).feature.kind
    if verb == "replace":
        return read_swap(words, unit).feature.kind
    return read_carried(verb, words, unit).feature.kind


def _says_limit(words: str) -> bool:
    cleaned = words.lower().replace(",", " ").replace(":", " ").split()
    return not _LIMIT_WORDS.isdisjoint(cleaned)


def _with_quality(reading: GeometryReading) -> GeometryReading:
    """A quality mark behind the last coordinate belongs to that position, old or new."""
    geometry, destination = reading.geometry, reading.destination
    quality = quality_mark(reading.rest.text)
    marked = destination if destination is not None and destination.positions else geometry
    if quality is None or not marked.positions:
        return reading
    positions = with_quality(marked.positions, quality)
    marked_now = marked.model_copy(update={"positions": positions})
    if marked is destination:
        return GeometryReading(geometry, marked_now, EMPTY)
    return GeometryReading(marked_now, destination, EMPTY)


def _describe(
    verb: Verb, item: Item, words: Stretch, context: Context, unit: DepthUnit | None
) -> _Described:
    for added in item.added:
        words = concatenated(words, gather(context.text, added.pieces), added.joint, added.ending)
    phrase = _with_columns(verb, item, words, context)
    written = _written_verb(item.verb or "").lower()
    if verb == "amend":
        if written == "read":
            # `READ range of light as 14M`: the same length, so that offsets stay.
            phrase = phrase._replace(text=phrase.text.replace(", as ", ", to "))
        elif written.startswith(("rename", "renumber")):
            phrase = phrase._replace(text=phrase.text.replace(" as ", " to "))
        change = read_change(phrase.text, unit)
        return _Described(
            with_original_words(context, phrase, change.feature),
            _outer(phrase, change.faults),
            changes_with_original_words(context, phrase, change.changes),
        )
    if verb == "replace":
        swap = read_swap(phrase.text, unit)
        faults = swap.faults
        if swap.is_by_for and written in _EITHER_WAY:
            faults += (
                Fault("swap-not-divided", 0, len(phrase.text), {"written": shown(phrase.text)}),
            )
        return _Described(
            with_original_words(context, phrase, swap.feature),
            _outer(phrase, faults),
            replacement=with_original_words(context, phrase, swap.replacement),
        )
    reading = read_carried(verb, phrase.text, unit)
    feature = with_original_words(context, phrase, reading.feature)
    return _Described(feature, _outer(phrase, reading.faults))


def _with_columns(verb: Verb, item: Item, words: Stretch, context: Context) -> Stretch:
    """The phrase with what its OLD and NEW columns, or its key of change, say."""
    new = gather(context.text, item.change)
    old = gather(context.text, item.old)
    if verb not in ("amend", "replace") or not new.text:
        return concatenated(concatenated(words, old), new)
    if verb == "replace":
        # `Replace the beacon`, and `Old: starboard-hand beacon`: of these the longer says both.
        goes = old if old.text.endswith(f" {words.text}") else concatenated(words, old)
        return concatenated(goes, new, " by ")
    if not old.text:
        joint = ": " if " to " in f" {new.text.lower()} " else " to "
        return concatenated(words, new, joint)
    named = words.text.lower().startswith(("name", "legend"))
    quote = '"' if named and not old.text.startswith('"') else ""
    both = concatenated(words, old, f" from {quote}")
    return concatenated(both, new, f"{quote} to {quote}", quote)


def _outer(words: Stretch, faults: Any) -> list[Fault]:
    return [
        fault._replace(
            start=words.outer(fault.start), end=words.outer(max(fault.end - 1, fault.start)) + 1
        )
        for fault in faults
    ]


def _record(
    context: Context,
    item: Item,
    verb: Verb,
    described: _Described,
    geometry: Geometry,
    reading: GeometryReading,
) -> Action:
    start, end = item_extent(item)
    shared: dict[str, Any] = {
        "written_verb": _written_verb(item.verb or ""),
        "label": item.label,
        "feature": described.feature,
        "geometry": geometry,
        "text": context.written(start, end),
        "span": context.span(start, end),
    }
    if verb == "amend":
        return Amend(**shared, changes=list(described.changes))
    if verb == "replace":
        assert described.replacement is not None
        return Replace(**shared, replacement=described.replacement)
    if verb == "move":
        assert reading.destination is not None
        return Move(**shared, destination=reading.destination)
    return Insert(**shared) if verb == "insert" else Delete(**shared)


def _written_verb(words: str) -> str:
    verb = " ".join(words.strip(" .:").split())
    for auxiliary in (" been ", " be ", "is ", "are ", "was ", "were "):
        if auxiliary in verb:
            verb = verb.rpartition(auxiliary)[2]
    return verb
