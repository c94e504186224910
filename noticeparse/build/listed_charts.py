"""Charts that stand in a list above the sections of a notice: `Charts 802 and 803`.

Below it each of them has a head of its own, with its items.  The list names no further section;
what it alone says of a chart goes to the sections of that chart.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.build.sections import Section

_SAID = (
    "previous", "previous_written", "international", "edition", "edition_date", "datum",
    "depth_unit",
)  # fmt: skip


def without_listed(sections: Sequence[Section]) -> list[Section]:
    """The sections without those that only list a chart which has its own head below."""
    kept: list[Section] = []
    for at, section in enumerate(sections):
        own = [one for one in sections[at + 1 :] if _is_of(section, one)]
        if not own or not _only_lists(section) or any(_contradicts(section, one) for one in own):
            kept.append(section)
            continue
        for one in own:
            for name in _SAID:
                setattr(one.head, name, getattr(one.head, name) or getattr(section.head, name))
    return kept


def _is_of(section: Section, other: Section) -> bool:
    """Whether another section, which has items, is of the same chart."""
    return section.head.chart == other.head.chart and bool(other.items)


def _only_lists(section: Section) -> bool:
    """Whether a section has a chart and nothing that is of a part of it."""
    head = section.head
    is_of_part = head.panel is not None or head.is_main or head.letters is not None
    return head.chart is not None and not section.items and not (is_of_part or head.further)


def _contradicts(section: Section, other: Section) -> bool:
    """Whether two sections do not say the same of their chart, or the other is of a plan."""
    if other.head.panel is not None or other.head.is_main:
        return True
    said = [(getattr(section.head, name), getattr(other.head, name)) for name in _SAID]
    return any(None not in pair and pair[0] != pair[1] for pair in said)
