"""Lines put where what they say holds, before notices, charts and items are told apart."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.head.charts_of_verbs import with_charts_of_verb
from noticeparse.layout.head.schedules import with_schedules_shared
from noticeparse.layout.head.verbs_above import with_verbs_below_charts
from noticeparse.layout.line.elements import Line


def rearranged(text: str, lines: Sequence[Line]) -> list[Line]:
    """The lines; verbs stand below the charts that they head, a schedule with all its notices."""
    ordered = with_schedules_shared(text, with_verbs_below_charts(text, lines))
    return [with_charts_of_verb(text, line) for line in ordered]
