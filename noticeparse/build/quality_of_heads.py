"""Positions that a head or a remark calls approximate or doubtful, all of them at once.

`Chart 802 (Positions Approximate)` says of each position below what `PA` behind it would say.  A
statement of some of the positions only is none of these.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.extents import first_offset
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.layout.drafts import NoticeDraft
from noticeparse.records.action import Action
from noticeparse.records.geometry import Geometry
from noticeparse.records.position import PositionQuality
from noticeparse.stretch import unquoted

_SAID = (
    r"(?:(?:all|the|these|its) ){0,2}(?:positions?|posns?\.?)(?: (?:given|listed|stated|here|below"
    r"|in this notice)){0,2}(?: (?:is|are))?(?: only)? (approx(?:imate|\.)?|doubtful)"
    r"|(?:all )?(approx(?:imate|\.)?|doubtful) positions?|(?-i:P\.?([AD])\.?)"
)
_WHOLE = re.compile(rf"[(\[]?(?:{_SAID})[)\]]?\.?", re.IGNORECASE)
_IN_HEAD = re.compile(
    rf"[(\[](?:{_SAID})[)\]]|(?<=[-–;:] )(?:{_SAID})(?=[.;\n(\[]| [(\[])", re.IGNORECASE
)


def states_quality(words: str) -> PositionQuality | None:
    """What a sentence or bracket says of all positions, None where it says anything else."""
    return _quality(_WHOLE.fullmatch(" ".join(words.split())))


def with_quality_told(
    context: Context, draft: NoticeDraft, section: Section, actions: Sequence[Action]
) -> list[Action]:
    """The actions of a chart, their positions with the quality that is told of all of them."""
    quality = next(_told(context, draft, section), None)
    if quality is None:
        return list(actions)
    return [_with_quality(action, quality) for action in actions]


def _told(context: Context, draft: NoticeDraft, section: Section) -> Iterator[PositionQuality]:
    start = section.extent[0]
    first = first_offset(section.items) if section.items else section.extent[1]
    found = _IN_HEAD.search(unquoted(context.text[start : max(start, first)]))
    if (quality := _quality(found)) is not None:
        yield quality
    heads = [piece[0] for chart in draft.charts for piece in chart.head[:1]]
    opening = min(heads, default=start)
    for prose in draft.prose:
        at, end = prose.pieces[0][0], prose.pieces[-1][1]
        is_of_this = at < opening or start <= at < first or len(heads) < 2
        if is_of_this and (quality := states_quality(context.text[at:end])) is not None:
            yield quality


def _quality(found: re.Match[str] | None) -> PositionQuality | None:
    if found is None:
        return None
    groups = [one for one in found.groups() if one]
    return "doubtful" if groups and groups[0].upper().startswith("D") else "approximate"


def _with_quality(action: Action, quality: PositionQuality) -> Action:
    update = {"geometry": _geometry(action.geometry, quality)}
    if action.verb == "move":
        update["destination"] = _geometry(action.destination, quality)
    return action.model_copy(update=update)


def _geometry(geometry: Geometry, quality: PositionQuality) -> Geometry:
    positions = [
        one if one.quality else one.model_copy(update={"quality": quality})
        for one in geometry.positions
    ]
    return geometry.model_copy(update={"positions": positions})
