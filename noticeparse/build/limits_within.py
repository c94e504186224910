"""Words of an item that limit its command: `rock, if charted`, `(edition 5 only)`, `(void)`.

The wording of a legend is no limit of the command that puts it on the chart.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.build.conditions import is_of_sentence
from noticeparse.build.extents import within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.rare import Rare
from noticeparse.readers.limiting_words import limits_in
from noticeparse.records.feature import Feature
from noticeparse.stretch import Stretch, unquoted

_WORDED = Rare(
    r"\b(?:legends?|notes?|titles?|caution|wording|text)\b(?! only)",
    "caution legends notes text titles wording",
    re.IGNORECASE,
)


def limits_within(
    context: Context, item: Item, words: Stretch, feature: Feature, told: Sequence[Fault]
) -> Iterator[Fault]:
    """A fault for each limit that none of the faults `told` quotes already.

    The day of a sentence (`on 20 May a wreck was found`) is that of what has happened.
    """
    text = unquoted(words.text)
    is_worded = feature.legend is not None or _WORDED.search(text) is not None
    if is_worded and text == words.text:
        # Without quotes the words of the chart are not told from those of the command.
        return
    quoted = [(fault.start, fault.end) for fault in told]
    for limit in limits_in(text):
        start, end = words.extent(limit.span)
        if limit.code == "verb-dated" and is_of_sentence(item.verb or ""):
            continue
        if _is_of_thing(text[slice(*limit.span)].lower(), feature):
            continue
        if not any(a < end and start < b for a, b in quoted):
            quoted.append((start, end))
            yield within(context, limit.code, words, limit.span)


def _is_of_thing(said: str, feature: Feature) -> bool:
    """Whether a word is one of the thing: a well is suspended, and a depth not confirmed."""
    if said == "suspended":
        return feature.kind == "wellhead"
    return said == "unconfirmed" and feature.depth is not None and "reported" in feature.status


def told_once(faults: Sequence[Fault]) -> list[Fault]:
    """The faults of an item; that it is of one chart alone says all of what limits it to that."""
    is_told = any(fault.code == "item-of-one-chart" for fault in faults)
    return [one for one in faults if not (is_told and one.code == "item-limited")]
