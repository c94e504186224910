"""Signs that the words of an item are not whole: a command within, a lost bracket, odd letters."""

from __future__ import annotations

import re

from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import Item
from noticeparse.readers.places import read_phrase
from noticeparse.stretch import Stretch, gather

# A command among the words of another: its item was not told apart.  Quotations are no commands.
_COMMAND_WITHIN = re.compile(
    r"(?<=[a-z0-9,;] )"
    r"(?:insert|add|delete|remove|expunge|replace|amend|relocate|withdraw|substitute)"
    r'(?= [a-z])(?=[^"]*(?:"[^"]*"[^"]*)*$)',
    re.IGNORECASE,
)
_ODD_SIGNS = frozenset("#%&~^_@{}\\$!?*")


def is_garbled(words: str) -> bool:
    """Whether signs that no notice uses stand among the letters: `wr#ck, l&ast d~pth`."""
    if _ODD_SIGNS.isdisjoint(words):
        return False
    odd = sum(map(words.count, _ODD_SIGNS))
    return odd >= 3 and odd * 20 >= len(words)


def command_within(context: Context, words: Stretch) -> list[Fault]:
    """A command among the words of another."""
    second = _COMMAND_WITHIN.search(words.text)
    if second is None:
        return []
    start, end = words.outer(second.start()), words.outer(second.end() - 1) + 1
    return [Fault("verb-within-words", start, end, {"written": context.written(start, end)})]


_LOST_BRACKET = re.compile(r"\([a-z](?=[\s,-]|$)|(?<![\w(])[a-z]\)(?=\s*$)")


def lost_brackets(context: Context, item: Item, words: Stretch) -> list[Fault]:
    """A bracket missing at a letter before a place: `(a-(c) above`, `bounded by a)`."""
    if not item.groups:
        return []
    leads = [gather(context.text, group.lead) for group in item.groups if group.lead]
    for stretch in (words, *leads):
        found = _LOST_BRACKET.search(stretch.text)
        if found is not None:
            start = stretch.outer(found.start())
            end = stretch.outer(found.end() - 1) + 1
            values = {"written": stretch.text}
            return [Fault("bracket-lost", start, end, values)]
    return []


def leads_to_place(words: str) -> bool:
    """Whether words end with a relation whose place is missing: `legend, "Rep", close E of (b`."""
    return any(part.kind in ("close", "offset", "centred") for part in read_phrase(words))
