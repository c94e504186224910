"""Whether a temporary or preliminary notice is told in prose alone, or commands as others do."""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.item.done_behind import stands_in_rows
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.line.joints import tells_only
from noticeparse.readers.features import leads_feature
from noticeparse.readers.places import is_connector
from noticeparse.readers.verbs import is_told_by_agent

_IMPERATIVES = frozenset("insert delete amend replace substitute relocate expunge".split())
# `Insert the following:`, `Delete on chart:`
_LEADS_ITEMS = re.compile(
    r"\s*(?:(?:on|from) (?:the )?charts?|the (?:following|undermentioned)(?: \w+)?)\s*[:-]?\s*",
    re.IGNORECASE,
)


def is_prose_body(text: str, lines: Sequence[Line]) -> bool:
    """Whether the body of a temporary or preliminary notice is prose: no command stands in it."""
    if stands_in_rows(text, lines):
        return False
    return not any(_is_command(text, line, row == 0) for row, line in enumerate(lines))


def _is_command(text: str, line: Line, is_first: bool) -> bool:
    for index, element in enumerate(line.elements):
        before = line.elements[index - 1] if index else None
        opens = (is_first and index == 0) or _asks(text, before, element)
        if element.kind != "verb" or not (opens or text[element.start].isupper()):
            continue
        told = text[element.start : element.end]
        if tells_only(told) or is_told_by_agent(told):
            continue
        following = line.elements[index + 1] if index + 1 < len(line.elements) else None
        words = "" if following is None else text[following.start : following.end]
        if following is None or not any(map(str.isalnum, words)):
            # `Insert:`, `1. Insert` above what it holds for
            return all(before.kind == "label" for before in line.elements[:index])
        if told.lower() in _IMPERATIVES and index == 0 and _LEADS_ITEMS.fullmatch(words):
            return True
        if following.kind == "words" and (following.gap or leads_feature(words)):
            return True
        places = [e for e in line.elements[index + 2 :] if e.kind in PLACES]
        if index == 0 and following.kind == "words" and told.lower() in _IMPERATIVES and places:
            # `Insert frobnicator in P`: whatever that is, it is to be inserted.
            return True
        if following.kind in ("label", "point"):
            return True
        behind = line.elements[index + 2 : index + 3]
        if index == 0 and behind and behind[0].kind == "reference" and is_connector(words):
            # `To insert at A: …`
            return True
    return False


def _asks(text: str, before: Element | None, verb: Element) -> bool:
    """Whether a verb behind a place or `please` commands: `P  insert depth`, `Please insert`."""
    if before is None or text[verb.start : verb.end].lower() not in _IMPERATIVES:
        return False
    return before.kind == "point" or text[before.start : before.end].strip().lower() == "please"
