"""What to say of items of which no chart is named, or none that can be read."""

from __future__ import annotations

import re
from functools import lru_cache

from noticeparse.build.extents import quoting
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft, Piece
from noticeparse.readers.heads import head_kinds
from noticeparse.readers.slips import one_slip_from

_MAY_NAME_CHART = re.compile(
    r"charts?\b|(?:for |on )?(?:the )?same charts?\b"
    r"|[ |]*[0-9]{1,6}[A-Z]?(?:[ |,]+[0-9]{1,6}(?:/[0-9]{2,4})?[A-Z]?){0,12}[ |]*$",
    re.IGNORECASE,
)
"""Words for a chart, or figures alone: `451 452 453`, `451 290/26`."""


_LIKE_HEAD = re.compile(r"(?:[A-Za-z]{1,3} ?)?[0-9]{2,6}[A-Z]?(?![0-9./])")
_OF_HEAD = frozenset({"PREVIOUS", "PREVIOUS_IN_BRACKETS", "EDITION", "DATUM", "INTERNATIONAL"})
_LETTERED = re.compile(r"(?!(?:VHF|UHF|CH|TEL|FAX)\b)[A-Z]{2,3} ?[0-9]{2,6}[A-Z]?(?:,|$)")


def _is_like_head(words: str, *, is_first: bool) -> bool:
    """Whether a line opens with a number and tells what heads of charts tell: `Tv802 (30/26)`.

    On a line of its own the letters of an office before the number are enough: `TV 802, TV 803`.
    """
    if _LIKE_HEAD.match(words) is None:
        return False
    is_named = not is_first and _LETTERED.match(words) is not None
    return is_named or bool(head_kinds(words) & _OF_HEAD)


def without_chart(context: Context, draft: NoticeDraft, section: Section, is_below: bool) -> Fault:
    """No chart is named, or the head speaks of one whose number could not be read.

    With `is_below` charts are named above, and its items may be of one of them.
    """
    if is_below:
        return quoting(context, "chart-unread", section.extent)
    prose = [piece for one in draft.prose for piece in one.pieces[:1]]
    for at, (start, end) in enumerate((*draft.heading, *prose)):
        words = context.text[start:end]
        if _MAY_NAME_CHART.match(words) or _is_like_head(words, is_first=at == 0):
            return quoting(context, "chart-unread", (start, end))
    title = _garbled_title(context.text)
    if title is None:
        return Fault("chart-not-named", *section.extent)
    return Fault("chart-unread", *title, {"written": context.text[slice(*title)]})


_TITLE = re.compile(
    r"(?:^|[|\t]|  )[ ]{0,40}(?P<word>[A-Za-z0-9]{4,6})(?:\.? nos?\.?)?[ ]{0,40}(?=[|\t]|  |$)",
    re.MULTILINE,
)
"""A word alone in its cell, as the titles of columns are."""


@lru_cache(maxsize=1)  # holds the whole text
def _garbled_title(text: str) -> Piece | None:
    """The title of a column of charts that has a letter wrong: `Notice | Chait | Action`."""
    found = (one for one in _TITLE.finditer(text) if _is_near_chart(one["word"].lower()))
    title = next(found, None)
    return None if title is None else title.span("word")


@lru_cache(maxsize=1024)
def _is_near_chart(word: str) -> bool:
    return word not in _NO_CHARTS and not {"chart", "charts"}.isdisjoint(one_slip_from(word))


_NO_CHARTS = frozenset(("chart", "charts", "cart", "carts", "hart", "harts", "charm", "charms"))
