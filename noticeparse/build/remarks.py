"""What a remark says beside its words."""

from __future__ import annotations

from noticeparse.context import Context
from noticeparse.layout.drafts import Prose


def tells_of_change(context: Context, prose: Prose) -> bool:
    """Whether a remark says that something at a position was changed: an action may be lost."""
    start, end = prose.pieces[0][0], prose.pieces[-1][1]
    words = " ".join(context.text[start:end].lower().split())
    placed = any(element.kind in ("point", "reference", "same") for element in prose.elements)
    told = any(element.kind == "passive" for element in prose.elements)
    return placed and (told or " has been " in words or " have been " in words)
