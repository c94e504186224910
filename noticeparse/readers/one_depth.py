"""The one depth of a feature, out of those that its phrase states.

In come the depths with the items they were read from; out comes the one of the record, or none
where nobody can say which is meant.  Beside a least depth may stand the general depth around.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.words import Item
from noticeparse.records.depth import Depth, DepthKind

Stated = tuple[Item, Depth]

_KINDS_OF_DEPTH: dict[str, DepthKind] = {
    "dredged_area": "dredged", "depth_contour": "contour", "swept_area": "swept",
}  # fmt: skip


def one_depth(
    text: str, items: Sequence[Item], stated: Sequence[Stated], kind: str, faults: list[Fault]
) -> Depth | None:
    """The depth of the feature; two that say different things are told."""
    if not stated:
        return None
    depths = [depth for _, depth in stated]
    if len({depth.value_m for depth in depths}) > 1:
        least = _least_of_two(stated, faults)
        if least is None:
            start, end = 0, len(text)
            faults.append(Fault("depth-several", start, end, {"written": shown(text)}))
        return least
    first = next((depth for depth in depths if depth.kind != "sounding"), depths[0])
    settled = _settled(first, items, kind, text, faults)
    if settled.quality is None and (_says_doubtful(items) or _is_doubtful(items, kind)):
        return settled.model_copy(update={"quality": "doubtful sounding"})
    return settled


def _says_doubtful(items: Sequence[Item]) -> bool:
    """`depth 8.6m, SD` and `doubtful depth 12m` (INT 1, I 2): doubt beside the figure."""
    for item, behind in zip(items, [*items[1:], None], strict=True):
        is_before = behind is not None and (behind.role == "depth" or behind.value == "sounding")
        if item.text == "SD" or (item.text.lower() == "doubtful" and is_before):
            return True
    return False


def _is_doubtful(items: Sequence[Item], kind: str) -> bool:
    """`depth 8.6m, doubtful`, `…, quality doubtful`: of nothing but a depth."""
    told = [item for item in items if item.role in ("unknown", "quality")]
    return kind == "sounding" and any(
        item.text.lower() in ("doubtful", "sounding doubtful", "depth doubtful") for item in told
    )


def _least_of_two(stated: Sequence[Stated], faults: list[Fault]) -> Depth | None:
    """The least depth of `least depth 9.5m, depth 12m`; None for any other two."""
    found = {depth.kind: (item, depth) for item, depth in stated}
    if len(stated) != 2 or found.keys() != {"least", "sounding"}:
        return None
    (own, least), (beside, general) = found["least"], found["sounding"]
    if least.value_m is None or general.value_m is None or beside.start < own.start:
        return None
    if least.value_m > general.value_m:
        values = {"written": shown(own.text), "other": shown(beside.text)}
        faults.append(Fault("depth-least-deeper", own.start, own.end, values))
    else:
        values = {"written": shown(beside.text)}
        faults.append(Fault("depth-general-not-kept", beside.start, beside.end, values))
    return least


def _settled(
    depth: Depth, items: Sequence[Item], kind: str, text: str, faults: list[Fault]
) -> Depth:
    """The depth as the words beside it mean it: `rock which dries, 1₂` is above datum."""
    dries = kind in ("drying_height", "rock_covers") or any(
        item.role == "water" and item.value == "covers" for item in items
    )
    if depth.kind != "sounding":
        if dries and depth.kind in ("least", "swept") and depth.value_m is not None:
            faults.append(_both(text))
        return depth
    if any(item.role == "wreck" and item.value == "swept" for item in items):
        return depth.model_copy(update={"kind": "swept"})
    if kind in _KINDS_OF_DEPTH:
        return depth.model_copy(update={"kind": _KINDS_OF_DEPTH[kind]})
    if dries and depth.value_m is not None:
        if depth.written.lower().lstrip("a ").startswith(("depth", "sounding")):
            faults.append(_both(text))
            return depth
        return depth.model_copy(update={"kind": "drying", "value_m": -depth.value_m})
    return depth


def _both(text: str) -> Fault:
    return Fault("feature-dries-with-depth", 0, len(text), {"written": shown(text)})
