"""Lines in the place of a chart that are for all charts above them: `Both charts`."""

from __future__ import annotations

import re
from collections.abc import Set

from noticeparse.build.extents import extent_of, quoting
from noticeparse.context import Context
from noticeparse.layout.drafts import ChartDraft
from noticeparse.stretch import gather

_HEADS = re.compile(r"(?:on |for )?(both|all)(?: of)?(?: the| these)? charts", re.IGNORECASE)


def heads_all(context: Context, draft: ChartDraft, known: Set[str | None]) -> bool:
    """Whether a draft is headed by such a line; its items are held where the charts are others."""
    said = _HEADS.fullmatch(gather(context.text, draft.head).text.strip(" :.,")) if known else None
    if said is None:
        return False
    if len(known) < 2 or (said[1].lower() == "both" and len(known) > 2):
        for item in draft.items:
            item.faults.append(quoting(context, "item-of-one-chart", extent_of(draft.head)))
    return True
