"""What shows that an item is not, or not only, of the notice and charts it stands under."""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.build.done_elsewhere import done_by_another
from noticeparse.build.extents import item_extent, quoting
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.layout.line.lines import read_lines
from noticeparse.rare import Rare
from noticeparse.readers.references import read_number
from noticeparse.readers.verbs import canonical_verb
from noticeparse.records.reference import NoticeRef

_ONE_CHART = Rare(
    r"\((?:not )?(?:(?:on|for) )?charts? [0-9A-Z]|\bcharts? [0-9]{1,6} only\b"
    r"|(?<!as )(?<!shown )\bon chart [0-9]{1,6}\b"
    r"|\((?:on |for )?(?:the )?(?:former|latter|first|second|third|last|other)"
    r"(?: (?:chart|sheet))?(?: only| alone)?\)",
    "chart first for last latter on only other second third",
    re.I,
)
_APART = re.compile(r" {3,80}(?=[^ |])| {0,80}\| {0,80}(?=[^ |])")
_COLUMN_BEFORE = re.compile(r"(?<=[^ |])(?: {3,80}| {0,80}\| {0,80})$")
_FIRST_WORDS = 3
_WIDEST = 400
"""Characters beside an item within which a column of its page stands; a longer line is no row."""


def strays(
    context: Context, item: Item, own: NoticeRef | None, *, is_shared: bool
) -> Iterator[Fault]:
    """What an item under several charts says of one alone, and another notice that it names."""
    if is_shared:
        extent = item_extent(item)
        if words := _words_of_one_chart(context, item):
            yield Fault("item-of-one-chart", *extent, {"written": words})
        if _is_beside_another(context.text, *extent):
            yield quoting(context, "item-of-one-chart", extent)
    if item.verb_piece is not None and done_by_another(context, item.verb_piece, own):
        yield quoting(context, "sentence-under-verb", item_extent(item))
    if item.number is not None and own is not None:
        start, end = item.number.start, item.number.end
        written = context.written(start, end)
        if read_number(written, context.year) not in (own, None):
            yield Fault("item-of-other-notice", start, end, {"written": written})


def _is_beside_another(text: str, start: int, end: int) -> bool:
    """Whether another command stands on the line of an item, apart from it: two columns."""
    first, last = max(0, start - _WIDEST), min(len(text), end + _WIDEST)
    above, below = text.rfind("\n", first, start), text.find("\n", end, last)
    behind = text[end : below if below >= 0 else last].lstrip(".")
    # Behind an indented command, and a semicolon, stands one more of its items.
    before = text[above + 1 if above >= 0 else first : start].lstrip()
    is_listed = before.rstrip().endswith(";")
    is_apart = _APART.search(before) or _COLUMN_BEFORE.search(before)
    beside = behind if _APART.match(behind) else before if is_apart and not is_listed else ""
    is_command = any(map(canonical_verb, filter(str.isalpha, beside.split()[:_FIRST_WORDS])))
    return is_command and any(line.has("point", "half") for line in read_lines(beside))


def _words_of_one_chart(context: Context, item: Item) -> str | None:
    """The words of an item that says it is of one chart, or not of one: `(not on chart 56)`."""
    pieces = [piece for piece in item.pieces if piece not in (item.charts, item.behind)]
    if not any(_may_tell(context.text[start:end]) for start, end in pieces):
        return None
    words = context.joined(pieces)
    return words if _ONE_CHART.search(words) else None


def _may_tell(words: str) -> bool:
    return "(" in words or "chart" in words.lower()
