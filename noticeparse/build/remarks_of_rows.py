"""What the column or key of remarks says of the thing of its row: `drying`, `red`, `unlit`.

A depth that dries, a colour or a chart that stands there alone is no part of the thing as read,
and makes another one of it: the row is held back.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.extents import quoting
from noticeparse.build.pointers import Pointed, pointed
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft
from noticeparse.readers.positions import quality_mark
from noticeparse.records.chart import ChartSection

_COLOUR = r"(?:white|red|green|yellow|black|blue|orange|amber|violet|grey|brown)"
_TELLS = re.compile(
    r"(?:it )?(?:"
    r"(?:dries|drying)(?: height)?(?: [0-9.]{1,5} ?(?:m|ft)?)?|awash(?: at .{1,30})?"
    r"|covers(?: and uncovers)?|uncovers|always (?:dry|under water)|above water|submerged"
    r"|(?:depth|position|existence) (?:unknown|doubtful|approximate)"
    rf"|{_COLOUR}(?:(?:,| and|/| &|-) ?{_COLOUR}){{0,4}}(?: (?:light|bands?|stripes?))?"
    r"|unlit|unlighted|extinguished|destroyed|disused|dangerous|not dangerous|swept|dredged"
    r"|in (?:feet|fathoms|ft|fms)|(?:feet|fathoms)|radar reflector|private|[ESPR]\.?[DA]\.?"
    r"|(?:(?:only )?(?:for |on )?)?charts? [A-Z]{0,3}[0-9]{1,6}[A-Z]?(?: only)?"
    r"|not (?:on |for )?charts? [A-Z]{0,3}[0-9]{1,6}[A-Z]?"
    r"|(?:only|not) (?:on|for) [0-9]{2,6}|(?:(?:on|for) )?[0-9]{2,6} only|not [0-9]{2,6}"
    r"|[0-9]{1,3}(?:[.,][0-9]{1,2})? ?(?:m|ft|fm)|least depth|unwatched"
    r"|insert|delete|remove|replace|amend|move"
    r")[ .]*",
    re.IGNORECASE,
)


def remarks_of_rows(
    context: Context, draft: NoticeDraft, path: str, charts: Sequence[ChartSection]
) -> Iterator[tuple[Fault, list[str]]]:
    """A fault for each such remark, with the actions of its row."""
    if draft.is_radio:
        return
    actions: list[Pointed] | None = None
    for prose in draft.prose:
        if len(prose.pieces) != 1:
            continue
        piece = prose.pieces[0]
        if _TELLS.fullmatch(context.text[slice(*piece)]) is None:
            continue
        actions = list(pointed(path, charts)) if actions is None else actions
        row = _of_row(context, piece[0], actions)
        is_read = quality_mark(context.text[slice(*piece)]) and any(map(_has_quality, row))
        if row and not is_read:
            yield quoting(context, "cell-tells-more", piece), [one.pointer for one in row]


def _has_quality(one: Pointed) -> bool:
    geometry = one.action.geometry
    return geometry is not None and any(position.quality for position in geometry.positions)


def _of_row(context: Context, start: int, actions: Sequence[Pointed]) -> list[Pointed]:
    """The actions around a place of the text, on its line, or the last ones before it."""
    at = context.repaired.original(start)
    line = context.repaired.original(context.text.rfind("\n", 0, start) + 1)
    below = context.text.find("\n", start)
    end = context.repaired.original(below if below >= 0 else len(context.text))
    around = [one for one in actions if one.action.span.start <= at < one.action.span.end]
    beside = [one for one in actions if line <= one.action.span.start < end]
    before = [one for one in actions if one.action.span.start <= at]
    last = max((one.action.span.start for one in before), default=None)
    return around or beside or [one for one in before if one.action.span.start == last]
