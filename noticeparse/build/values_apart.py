"""Values that a remark tells of a thing above it: `Least depth 5.1 m.` behind a blank line.

The action above holds nothing of them, and what it inserts is charted without (common practice, no
published source).
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence

from noticeparse.build.pointers import Pointed, pointed
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft
from noticeparse.readers.features import has_kind, read_feature, value_property
from noticeparse.readers.places import read_phrase
from noticeparse.records.action import Action
from noticeparse.records.chart import ChartSection

_PUTS = frozenset({"insert", "amend", "replace"})
_LONGEST = 160
"""Characters of such a remark."""

_LACKS: dict[str, Callable[[Action], bool]] = {
    "depth": lambda action: action.feature.depth is None,
    "clearance": lambda action: action.feature.clearance is None,
    "light": lambda action: action.feature.light is None,
    "sectors": lambda action: action.feature.light is not None and not _has_sectors(action),
    "racon": lambda action: action.feature.racon is None,
    "sound": lambda action: action.feature.sound is None,
    "ais": lambda action: action.feature.ais is None,
    "radius": lambda action: action.geometry.shape in ("point", "unlocated"),
}
"""For each value that may be told, whether an action lacks it."""

_SAYS = re.compile(
    r"(?:the|this|its) (?P<thing>[a-z][a-z -]{2,40}?) (?:now )?"
    r"(?:has|have|shows?|is|are|carr(?:y|ies)|exhibits?|bears?)\b(?P<said>.{3,120})",
    re.IGNORECASE | re.DOTALL,
)


def values_apart(
    context: Context, draft: NoticeDraft, path: str, charts: Sequence[ChartSection]
) -> Iterator[tuple[Fault, list[str]]]:
    """The fault of each such remark, with the actions that it may be said of."""
    actions = [one for one in pointed(path, charts) if one.action.verb in _PUTS]
    for prose in draft.prose if actions else ():
        start, end = prose.pieces[0][0], max(piece[1] for piece in prose.pieces)
        if end - start > _LONGEST or any(one.kind in ("point", "half") for one in prose.elements):
            continue
        words = " ".join(context.text[start:end].split())
        if _told(words) is None and _SAYS.match(words) is None:
            continue
        above = [one for one in actions if one.action.span.end <= start]
        hit = _hit(words, above)
        if hit:
            values = {"written": context.written(start, end)}
            yield Fault("value-told-apart", start, end, values), [one.pointer for one in hit]


def _hit(words: str, above: Sequence[Pointed]) -> list[Pointed]:
    """The actions of which a remark tells what they lack."""
    last = max((one.action.span.start for one in above), default=None)
    told = _told(words)
    if told is not None:
        return [one for one in above if one.action.span.start == last and _lack(one, told)]
    said = _SAYS.match(words)
    if said is None or not has_kind(said["thing"]):
        return []
    classes = set(read_feature(said["thing"], None).feature.s57)
    values = _values(said["said"])
    return [one for one in above if classes & set(one.action.feature.s57) and _lack(one, values)]


def _lack(one: Pointed, values: frozenset[str]) -> bool:
    return any(_LACKS[value](one.action) for value in values)


def _told(words: str) -> frozenset[str] | None:
    """The values of a remark that holds nothing else."""
    kinds = {part.kind for part in read_phrase(words.rstrip(" ."))}
    if kinds == {"radius"}:
        return frozenset({"radius"})
    roles = value_property(words)
    return roles if roles and roles <= _LACKS.keys() else None


def _values(words: str) -> frozenset[str]:
    radius = any(part.kind == "radius" for part in read_phrase(words))
    found = value_property(words) & _LACKS.keys()
    return frozenset({*found, "radius"} if radius else found)


def _has_sectors(action: Action) -> bool:
    return action.feature.light is not None and bool(action.feature.light.sectors)
