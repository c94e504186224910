"""The phrases of an amendment and of a replacement, each of which reads back as the record."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import islice, product
from typing import Any

from noticeparse.canonical import figures, lights
from noticeparse.canonical.composing import composed
from noticeparse.canonical.features import all_wordings, depth_statement, own_wordings
from noticeparse.canonical.sameness import is_alike
from noticeparse.canonical.trying import Faults, those_that_read
from noticeparse.canonical.words import on_one_line, read_as
from noticeparse.readers.amounts import ChartUnit
from noticeparse.readers.changes import read_change, read_swap
from noticeparse.records.action import Amend, Change, Replace
from noticeparse.records.depth import Clearance, Depth
from noticeparse.records.feature import Ais, Racon, Sound
from noticeparse.records.light import Light

_TOLD = 60
_COME_WITH = {"light": ("sound", "racon", "ais"), "colours": ("colour_pattern",)}
_PLAIN = frozenset({"name", "legend", "depth", "clearance", "height_m", "light"})


def replacements(action: Replace, unit: ChartUnit | None) -> Iterator[str]:
    """`obstruction by dangerous wreck`: what goes, then what comes."""
    gone, come = action.feature, action.replacement
    batches = [
        _swaps(own_wordings(gone), own_wordings(come)),
        _swaps(all_wordings(gone), all_wordings(come)),
    ]

    def read(phrase: str) -> Faults | None:
        swap = read_swap(read_as(phrase), unit)
        is_told = is_alike(swap.feature, action.feature)
        return swap.faults if is_told and is_alike(swap.replacement, action.replacement) else None

    return those_that_read(batches, read, gone, come)


_SWAPS = ("{a} by {b}", "{a}, by {b}", "{a} with {b}", "{b} for {a}")


def _swaps(gone: Sequence[str], come: Sequence[str]) -> Iterator[str]:
    for a, b in product(gone, come):
        if a and b:
            yield from (form.format(a=a, b=b) for form in _SWAPS)


def amendments(action: Amend, unit: ChartUnit | None) -> Iterator[str]:
    """`light Fl.5s12m9M, elevation to 13m`: the feature as it was, then what changes."""

    def read(phrase: str) -> Faults | None:
        told = read_change(read_as(phrase), unit)
        if not is_alike(told.feature, action.feature) or len(told.changes) != len(action.changes):
            return None
        pairs = zip(told.changes, action.changes, strict=True)
        return told.faults if all(is_alike(one, other) for one, other in pairs) else None

    clauses = [list(dict.fromkeys(_clauses(*one))) for one in _joined(action.changes)]
    told = [", ".join(one) for one in islice(product(*clauses), _TOLD)] if clauses else []
    own = [
        phrase
        for subject in own_wordings(action.feature)
        for clause in told
        for phrase in _with_subject(subject, clause)
    ]
    names_its_feature = bool(told) and action.changes[0].property in _NAME_THEIR_FEATURE
    first = [*told, *own] if names_its_feature else own
    return those_that_read([first, _pairings(action, told)], read, action.feature)


def _pairings(action: Amend, told: Sequence[str]) -> Iterator[str]:
    """Subjects with clauses, those first that stand far up in both of their lists.

    What a clause tells of the old state may be left out of its subject.
    """
    told_apart = {one.property: None for one in action.changes if one.property in _PLAIN}
    bare = action.feature.model_copy(update=told_apart)
    whole = all_wordings(action.feature)
    without = list(dict.fromkeys(composed(bare)))
    telling = [clause for clause in told if " from " in f" {clause}"]
    ranked = [
        (at + behind, subject, clause)
        for subjects, clauses in ((whole, told), (without, telling))
        for at, subject in enumerate(subjects)
        for behind, clause in enumerate(clauses)
    ]
    ranked.sort(key=lambda one: one[0])
    for _, subject, clause in ranked:
        yield from _with_subject(subject, clause)
    yield from told


def _with_subject(subject: str, clause: str) -> Iterator[str]:
    """`light Fl.5s, range to 9M`; what the subject ends with is not said twice."""
    if not subject:
        return
    word = clause.partition(" to ")[0].partition(" from ")[0]
    if f" {subject}".endswith(f" {word}"):
        yield subject + clause.removeprefix(word)
    for between in (", ", ": ", " "):
        yield subject + between + clause


def _joined(changes: Sequence[Change]) -> Iterator[tuple[Change, str]]:
    """Each change with what is said with it: the pattern of colours, the aids of a light.

    `to red and white vertical stripes`, `to Fl.R.10s, Racon(Q)`.
    """
    at = 0
    while at < len(changes):
        change, more = changes[at], ""
        at += 1
        while at < len(changes) and changes[at].property in _COME_WITH.get(change.property, ()):
            new = changes[at].new
            if isinstance(new, Sound | Racon | Ais):
                more += f", {lights.aid(new)}"
            else:
                more += f" {str(new).replace('_', ' ')}"
            at += 1
        yield change, more


def _clauses(change: Change, more: str) -> Iterator[str]:
    """`range to 11M`, `range from 15M to 11M`: the old value where the feature may not tell it."""
    new = [value + more for value in _known(change.property, change.new)]
    old = _known(change.property, change.old) if change.old is not None else []
    for word in _words(change):
        yield from (f"{word} to {value}".strip() for value in new)
        for at, value in enumerate(new):
            for before in dict.fromkeys([*old[at : at + 1], *old[:1]]):
                yield f"{word} from {before} to {value}".strip()


def _known(path: str, value: Any) -> list[str]:
    """The ways to write a value, each once; the words of a record made by a program are empty."""
    return [words for words in dict.fromkeys(_values(path, value)) if words]


_WORDS = {
    "light": ("light", "character", ""),
    "sound.period_s": ("period",),
    "light.ranges_nm": ("range",),
    "light.colours": ("colour",),
    "colours": ("colour", ""),
    "colour_pattern": ("",),
    "height_m": ("height",),
    "name": ("name", ""),
    "legend": ("legend", ""),
    "status": ("",),
}
_DEPTH_WORDS = {"drying": "drying height", "least": "least depth", "dredged": "dredged depth"}
_NAME_THEIR_FEATURE = frozenset({"light", "depth", "legend"})
"""Properties that need no other name of their feature: `light to Q.R`, `depth from 5m to 4m`."""


def _words(change: Change) -> tuple[str, ...]:
    """The words for a property, the usual one first."""
    if isinstance(change.new, Depth):
        return (_DEPTH_WORDS.get(change.new.kind, "depth"), "depth", "")
    if isinstance(change.new, Clearance):
        return (f"{change.new.kind} clearance", "clearance", "")
    if isinstance(change.new, Sound | Racon | Ais):
        return ("", *(("fog signal", "signal") if change.property == "sound" else ()))
    last = change.property.rpartition(".")[2].removesuffix("_s").removesuffix("_m")
    return _WORDS.get(change.property, (last,))


def _values(path: str, value: Any) -> Iterator[str]:
    """What a value may be written as."""
    if isinstance(value, Light):
        yield lights.light(value)
        yield on_one_line(value.written)
    elif isinstance(value, Depth):
        yield from _depths(value)
    elif isinstance(value, Clearance):
        yield figures.metres(value.value_m)
        yield f"{value.kind} clearance {figures.metres(value.value_m)}"
        yield on_one_line(value.written)
    elif isinstance(value, Sound | Racon | Ais):
        yield lights.aid(value)
    elif path in ("name", "legend", "topmark", "shape"):
        yield f'"{value}"' if path in ("name", "legend") else str(value)
        yield str(value)
    elif path == "light.sectors":
        yield lights.sectors(value)
    elif path == "light.colours":
        yield "".join(value)
    elif path == "light.ranges_nm":
        yield "/".join(map(figures.plain, value)) + "M"
        yield "-".join(map(figures.plain, value)) + "M"
    elif path.endswith("period_s"):
        yield f"{figures.plain(value)}s"
    elif path.endswith("_m"):
        yield figures.metres(value)
    elif isinstance(value, list):
        words = [str(one).replace("_", " ") for one in value]
        yield " and ".join(words)
        yield ", ".join(words)
    elif value is not None:
        yield str(value).replace("_", " ")


def _depths(depth: Depth) -> Iterator[str]:
    if depth.value_m is None:
        yield "unknown"
        return
    figure = figures.depth(depth.value_m, depth.unit)
    if figure is not None:
        yield figure
    yield depth_statement(depth)
    if figure is not None:
        for lead in ("dries ", "drying ", "least depth ", "swept to ", "dredged to "):
            yield lead + figure
