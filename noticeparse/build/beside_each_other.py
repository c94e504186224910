"""What the items of a chart section, in text order, tell against one another.

Each net gives its items an error or a warning; none changes what is read of them.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.build.run_ons import hold_back_run_on
from noticeparse.build.slides import hold_back_slid
from noticeparse.build.things_above_verbs import hold_back_below_things
from noticeparse.build.unread_places import hold_back_unread
from noticeparse.build.verbs_left_out import tell_verbs_left_out
from noticeparse.context import Context
from noticeparse.layout.drafts import Item


def tell_beside_each_other(context: Context, items: Sequence[Item]) -> None:
    """Give the items of a section the faults that show beside their neighbours."""
    hold_back_slid(context, items)
    tell_verbs_left_out(context, items)
    hold_back_unread(context, items)
    hold_back_run_on(context, items)
    hold_back_below_things(context, items)
