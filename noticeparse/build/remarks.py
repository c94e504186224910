"""What a remark, or the words of an item, say beside their sense: changes, charts."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.extents import item_extent
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item, NoticeDraft, Prose
from noticeparse.layout.lines import read_lines
from noticeparse.readers.features import has_kind
from noticeparse.readers.heads import read_head
from noticeparse.readers.references import read_number
from noticeparse.readers.verbs import canonical_verb
from noticeparse.records.chart import ChartSection
from noticeparse.records.reference import NoticeRef

_AS_CHART = re.compile(r"^(?:as|same as|see)(?: (?:on|for|in))? charts?\b")
_COMMAND = re.compile(r"\b(?:insert|delete|amend|replace|substitute|expunge|move)\b")
# `Mariners should insert`: what is to be inserted stands behind a chart, or is lost.
_BREAKS_OFF = re.compile(
    r"\b(?:should|must|shall|to|please|requested to|asked to) (?:now |also |then )?(?:insert"
    r"|delete|amend|replace|substitute|expunge|move|add|remove|plot|erase|enter|shift)"
    r"(?: on| from| in)?$"
)
_LONG_FIGURE = re.compile(r"[0-9]{4,7}[0-9.,'-]*[0-9]{2}|[0-9]{2,3}[°-] ?[0-9]{2}")
_ONE_CHART = re.compile(
    r"\((?:not )?(?:(?:on|for) )?charts? [0-9A-Z]|\bcharts? [0-9]{1,6} only\b"
    r"|(?<!as )(?<!shown )\bon chart [0-9]{1,6}\b",
    re.I,
)

_APART = re.compile(r" {3,80}(?=[^ ])")
_FIRST_WORDS = 3
_NO_NOTICE = frozenset({"", "-", "and", "no", "none", "nil", "n/a", "notice", "notices", "nm"})

_CELLS = re.compile(r"[,;|\t]")
_FEWEST = 4
_NOUNS = frozenset(
    {"chart", "charts", "charted", "for", "read", "show", "found", "located", "place"}
)


def strays(
    context: Context, item: Item, own: NoticeRef | None, *, is_shared: bool
) -> Iterator[Fault]:
    """What an item under several charts says of one alone, and another notice that it names."""
    extent = item_extent(item)
    if is_shared and (words := _words_of_one_chart(context, item)):
        yield Fault("item-of-one-chart", *extent, {"written": words})
    if is_shared and _is_beside_another(context.text, *extent):
        yield Fault("item-of-one-chart", *extent, {"written": context.written(*extent)})
    if item.number is not None and own is not None:
        start, end = item.number.start, item.number.end
        written = context.written(start, end)
        if read_number(written, context.year) not in (own, None):
            yield Fault("item-of-other-notice", start, end, {"written": written})


def _is_beside_another(text: str, start: int, end: int) -> bool:
    """Whether another command stands on the line of an item, apart from it: two columns."""
    above, below = text.rfind("\n", 0, start) + 1, text.find("\n", end)
    behind = text[end : below if below >= 0 else len(text)].lstrip(".")
    before = text[above:start]
    beside = behind if _APART.match(behind) else before if _APART.search(before) else ""
    is_command = any(map(canonical_verb, filter(str.isalpha, beside.split()[:_FIRST_WORDS])))
    return is_command and any(line.has("point", "half") for line in read_lines(beside))


def _words_of_one_chart(context: Context, item: Item) -> str | None:
    """The words of an item that says it is of one chart, or not of one: `(not on chart 56)`."""
    pieces = [piece for piece in item.pieces if piece != item.charts]
    if not any("chart" in context.text[start:end].lower() for start, end in pieces):
        return None
    words = context.joined(pieces)
    return words if _ONE_CHART.search(words) else None


_ACTIVE = re.compile(
    r"\b(?:has|have) (?:(?:now|also|today|recently|since) )?"
    r"(laid|(?:establish|install|remov|replac|mov|shift|relocat|plac|delet|erect|lift)ed"
    r"|withdrawn|taken (?:up|away|down|out|off))(?= (?:an?|the|its|two|three|one|all|both)\b)"
)
"""What somebody has done: `The pilots of the firth have laid a buoy`."""


def tells_of_change(context: Context, prose: Prose) -> bool:
    """Whether a remark says that something at a position was changed: an action may be lost."""
    start, end = prose.pieces[0][0], prose.pieces[-1][1]
    words = " ".join(context.text[start:end].lower().split())
    placed = any(element.kind in ("point", "reference", "same") for element in prose.elements)
    passives = [e for e in prose.elements if e.kind == "passive"]
    # What will be done is not yet to be charted.
    told = any(not context.text[e.start : e.end].lower().startswith("will") for e in passives)
    if _AS_CHART.search(words) or _BREAKS_OFF.search(words):
        return True
    if _COMMAND.search(words) and _LONG_FIGURE.search(words) and has_kind(words):
        # A command with a figure as long as a position's, read as prose: a row that broke off.
        return True
    told = told or _ACTIVE.search(words) is not None
    return placed and (told or " has been " in words or " have been " in words)


def charts_in_passing(
    context: Context, draft: NoticeDraft, sections: Sequence[Section]
) -> Iterator[Fault]:
    """Prose between the items that names a chart which is no section of the notice."""
    own = {section.head.chart for section in sections}
    last = max((item_extent(i)[0] for one in sections for i in one.items), default=0)
    for prose in draft.prose:
        start, end = prose.pieces[0][0], prose.pieces[-1][1]
        head = read_head(context.text[start:end], context.year)
        if end <= last and any(chart.chart not in {*own, None} for chart in head.charts):
            written = {"written": context.written(start, end)}
            yield Fault("chart-in-passing", start, end, written)


def cancelled_in_cells(
    context: Context, draft: NoticeDraft
) -> tuple[list[NoticeRef], list[Fault]]:
    """The notices that a column names as cancelled, and what in it names none."""
    found: list[NoticeRef] = []
    faults: list[Fault] = []
    for start, end in draft.cancelled:
        words = context.text[start:end].strip(" ()[].,;&")
        number = read_number(words, context.year)
        if number is not None:
            found.append(number)
        elif words.lower() not in _NO_NOTICE:
            values = {"written": context.written(start, end)}
            faults.append(Fault("cancellation-unread", start, end, values))
    return found, faults


def rows_in_heading(context: Context, draft: NoticeDraft) -> list[Fault]:
    """Rows of an export that stand where a heading would: `16,insert,wreck,46-10.10S,122-00.20W`.

    Their titles are not known, or they have none.
    """
    found: list[Fault] = []
    for start, end in draft.heading:
        cells = [cell.strip(" \"'").lower() for cell in _CELLS.split(context.text[start:end])]
        has_verb = any(_is_verb(cell) for cell in cells)
        figures = sum(any(char.isdecimal() for char in cell) for cell in cells)
        if len(cells) >= _FEWEST and has_verb and figures > 1:
            found.append(
                Fault("text-action-lost", start, end, {"written": context.written(start, end)})
            )
    return found


def _is_verb(cell: str) -> bool:
    is_short = len(cell.split()) < 3 and cell not in _NOUNS
    return is_short and canonical_verb(cell) is not None


def named_charts(context: Context, named: Sequence[tuple[str, int, int]]) -> list[ChartSection]:
    """A section without actions for each chart that prose names, in the order of naming."""
    found: list[ChartSection] = []
    for number, start, end in named:
        if any(number in (chart.chart, chart.international) for chart in found):
            continue
        international = number if number.startswith("INT ") else None
        found.append(
            ChartSection(
                chart=None if international else number, international=international,
                panel=None, edition=None, edition_date=None, previous=None, previous_written=None,
                datum=None, depth_unit=None, actions=[], span=context.span(start, end),
            )
        )  # fmt: skip
    return found
