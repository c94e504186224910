"""What to say of items of which no chart is named, or none that can be read."""

from __future__ import annotations

import re

from noticeparse.build.extents import quoting
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft

_MAY_NAME_CHART = re.compile(
    r"charts?\b|[ |]*[0-9]{1,6}[A-Z]?(?:[ |,]+[0-9]{1,6}(?:/[0-9]{2,4})?[A-Z]?){0,12}[ |]*$",
    re.IGNORECASE,
)
"""Words for a chart, or figures alone: `451 452 453`, `451 290/26`."""


def without_chart(context: Context, draft: NoticeDraft, section: Section, is_below: bool) -> Fault:
    """No chart is named, or the head speaks of one whose number could not be read.

    With `is_below` charts are named above, and its items may be of one of them.
    """
    if is_below:
        return quoting(context, "chart-unread", section.extent)
    prose = [piece for one in draft.prose for piece in one.pieces[:1]]
    for start, end in (*draft.heading, *prose):
        words = context.text[start:end]
        if _MAY_NAME_CHART.match(words):
            return quoting(context, "chart-unread", (start, end))
    return Fault("chart-not-named", *section.extent)
