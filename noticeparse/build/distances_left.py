"""A distance and a direction that lead from nothing: `replaced by a light Fl.5s, 50 metres S.`.

The thing lies that far from some other, and not where the place of the item is.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.build.extents import within
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.rare import Rare
from noticeparse.stretch import Stretch, unquoted

_LEFT = Rare(
    r"(?<![0-9.,])(?<!depth )[0-9]{1,4}(?:[.,][0-9]{1,3})? ?"
    r"(?:m|met(?:re|er)s?|yards?|ft|feet|cables?|(?:nautical )?miles?|n\.?m\.?|(?-i:M)) "
    r"(?:to the )?(?:(?-i:[NS]{1,2}[EW]|[EW][NS][EW]|[NESW])"
    r"|(?:north|south)(?:-?(?:east|west))?(?:wards?)?|(?:east|west)(?:wards?)?|away|off)[ .,]*$",
    "cables feet ft m met miles n nautical nm yards",
    re.IGNORECASE,
)


def distances_left(context: Context, words: Stretch) -> Iterator[Fault]:
    """A fault where the words of an item end with such a distance."""
    found = _LEFT.search(unquoted(words.text))
    if found is not None:
        yield within(context, "offset-not-worked-out", words, found.span())
