"""Commands that say that they are for all charts of their notice: `On both charts delete …`.

The chart under whose head such an item stands is one of several.  It is given to the others, and
held back where their number is not the one that is told, or which they are cannot be told.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.extents import quoting
from noticeparse.build.heads_of_all import is_count_of
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.layout.drafts import Item, Piece
from noticeparse.numbers import COUNT_WORDS
from noticeparse.stretch import gather, unquoted

_COUNTS = "|".join(COUNT_WORDS)
_SAID = re.compile(
    r"\b(?:on|in|into|to|from|for) (?:the )?"
    rf"(?:(?P<count>both|(?:all (?:of )?(?:the |these )?)?(?:{_COUNTS}))(?: of)?(?: the| these)?"
    r"|all(?: of)?(?: the| these)?|each(?: of the| of these)?|every|these) charts?\b",
    re.IGNORECASE,
)
_PLURAL = re.compile(r"\b(?:on|in|into|to|from) the charts\b", re.IGNORECASE)


def told_of_charts(words: str) -> re.Match[str] | None:
    """Where words speak of all charts, or of a number of them, as `count` in the match."""
    return _SAID.search(words)


def give_to_all(
    context: Context, sections: Sequence[Section], known: set[str]
) -> Sequence[Section]:
    """The sections, each with the items of the others that are for all charts."""
    for item, holders in _holders(sections):
        command = " ".join((item.verb or "").split())
        said = told_of_charts(command)
        if said is None and (len(known) < 2 or _PLURAL.search(command) is None):
            _hold_counted(context, item, holders, known)
            continue
        is_whole = said is None or is_count_of(said, len(known))
        others = known - holders
        # A letter may be that of another item on the other chart.
        if not is_whole or (others and (len(holders) > 1 or item.refers)):
            item.faults.append(quoting(context, "item-of-one-chart", _place(item)))
            continue
        sections = given(sections, item, others)
    return sections


def given(sections: Sequence[Section], item: Item, charts: set[str]) -> Sequence[Section]:
    """The sections, the first of each of the charts with the item behind its own."""
    left = set(charts)
    found: list[Section] = []
    for section in sections:
        if section.head.chart in left:
            left.discard(section.head.chart)
            section = section._replace(items=[*section.items, item])
        found.append(section)
    return found


def _holders(sections: Sequence[Section]) -> Iterator[tuple[Item, set[str | None]]]:
    """The items, each once, with the charts that they stand under."""
    found: dict[int, tuple[Item, set[str | None]]] = {}
    for section in sections:
        for item in section.items:
            found.setdefault(id(item), (item, set()))[1].add(section.head.chart)
    yield from found.values()


def _hold_counted(context: Context, item: Item, holders: set[str | None], known: set[str]) -> None:
    """Hold an item back of which other words than its command tell of more charts."""
    for pieces in (item.words, item.tail):
        words = gather(context.text, pieces)
        said = told_of_charts(unquoted(words.text)) if "chart" in words.text.lower() else None
        if said is not None and (holders != known or not is_count_of(said, len(known))):
            item.faults.append(quoting(context, "item-of-one-chart", words.extent(said.span())))
            return


def _place(item: Item) -> Piece:
    return item.verb_piece or item.pieces[0]
