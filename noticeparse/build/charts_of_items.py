"""Charts that only the items of a notice name, each for its own place.

41/26 Quill Sound - Wreck
1. Insert wreck
Chart 802 [30/26]: P
Chart 803 [31/26]: Q
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.layout.drafts import Item
from noticeparse.readers.head_values import ChartHead
from noticeparse.readers.heads import read_head

_LEAD = re.compile(r"[\[( ]*(?:(?:on|for) )?", re.IGNORECASE)
"""What stands before the numbers in a margin: `On 802:`, `For 802:`, `[802, 803]`."""


def by_named_charts(context: Context, sections: Sequence[Section]) -> Sequence[Section]:
    """The sections; for items of no chart that all name their charts, one for each of these."""
    if len(sections) != 1 or sections[0].head.chart is not None:
        return sections
    (section,) = sections
    heads: dict[str, ChartHead] = {}
    items: dict[str, list[Item]] = {}
    for item in section.items:
        words = context.text[slice(*item.charts)] if item.charts is not None else ""
        # `Chart 802 only` is one of others, which nobody names.
        # `802, 803:` in the margin has no word for a chart.
        said = words if "ch" in words.lower() else f"charts {_LEAD.sub('', words, count=1)}"
        head = read_head(said, context.year) if words and "only" not in words.lower() else None
        if head is None or head.faults or not head.charts:
            return sections
        for one in head.charts:
            if one.chart is None:
                return sections
            first = heads.setdefault(one.chart, one)
            items.setdefault(one.chart, []).append(item)
            if first.previous is None:
                first.previous, first.previous_written = one.previous, one.previous_written
    if section.head.previous is not None and len(heads) > 1:
        return sections
    for one in heads.values():
        one.previous = one.previous or section.head.previous
        one.previous_written = one.previous_written or section.head.previous_written
    return [Section(one, items[chart], section.extent) for chart, one in heads.items()]
