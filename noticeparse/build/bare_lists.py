"""Lists of items beside a chart that nothing marks as one: `45 [12/26] a & b, 46 all but c`.

They are told, and not read: which of the items are meant is for a person to say.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.layout.drafts import Item
from noticeparse.numbers import ROMAN
from noticeparse.readers.head_values import LETTERS, HeadPart

_WORDS = frozenset({"OTHER_WORDS", "OTHER"})
_DETAILS = frozenset(
    {"PREVIOUS", "PREVIOUS_IN_BRACKETS", "NOTICE_NUMBER", "NEW_EDITION", "INTERNATIONAL"}
)
_OPENS = _DETAILS | {"EDITION", "DATE", "DATUM", "PANEL", "MAIN_PANEL", "ITEM_LETTERS"}
_EXCEPT = frozenset(
    "but except excepting excluding excl without bar save minus omit omitting omits not".split()
)
_ORDER = frozenset("first second third fourth fifth latter former".split())
_WORD = re.compile(r"\w+")
_SAID = frozenset({"OTHER_WORDS", "PANEL", "MAIN_PANEL", "NEW_EDITION", "EDITION"})
_ALL = frozenset("all every everything each any".split())
_COUNTS = (
    frozenset("to for no nos nr only also as and or the number numbers from".split()) | _EXCEPT
)


def labels_of(items: Sequence[Item]) -> frozenset[str]:
    """What a list beside a chart may call the items of its notice: labels and counts."""
    own = {mark.lower() for item in items for mark in (item.label, item.scope) if mark}
    count = len({id(item) for item in items})
    return frozenset((*own, *map(str, range(1, count + 1)), *ROMAN[:count], *LETTERS[:count]))


def bare_lists(parts: Sequence[HeadPart], labels: frozenset[str]) -> Iterator[HeadPart]:
    """The first word of each list of items behind a chart that nothing marks as a list."""
    chart: HeadPart | None = None
    told: HeadPart | None = None
    for at, part in enumerate(parts):
        is_number = part.kind == "CHART_NUMBER"
        if is_number and not (
            chart and _is_label(part, labels) and _is_listed(parts, at, chart, told)
        ):
            chart, told = part, None
        elif chart is None or not (is_number or part.kind in _WORDS) or _is_article(parts, at):
            continue
        elif is_number or _is_label(part, labels) or _is_exception(parts, at, labels):
            if told is None:
                yield part
            told = part


def is_bare_list(words: str, labels: frozenset[str]) -> bool:
    """Whether words are a list of items and nothing else, as on the line below a chart: `a, b`."""
    marks = _WORD.findall(words.lower())
    named = labels.intersection(marks)
    return bool(named) and all(mark in named or mark in _COUNTS or mark in _ALL for mark in marks)


def _is_label(part: HeadPart, labels: frozenset[str]) -> bool:
    marks = _WORD.findall(part.text.lower())
    return bool(marks) and (labels.issuperset(marks) or _is_run(marks[0], labels))


def _is_run(word: str, labels: frozenset[str]) -> bool:
    """Whether a word is made of letters of items one behind the other: `ab`, `bcd`."""
    return word in LETTERS and word != "no" and labels.issuperset(word)


def _is_article(parts: Sequence[HeadPart], at: int) -> bool:
    """`Chart 45, a plan of the harbour`."""
    behind = parts[at + 1] if at + 1 < len(parts) else None
    if parts[at].text not in ("a", "A") or behind is None or behind.kind not in _SAID:
        return False
    return len(behind.text) > 2 and behind.text.lower() not in _COUNTS


def _is_listed(parts: Sequence[HeadPart], at: int, chart: HeadPart, told: HeadPart | None) -> bool:
    """Whether a figure behind a chart is no chart: `45 [12/26] 1`, `45: 1, 2`, `45 (not 1)`."""
    behind = parts[at + 1] if at + 1 < len(parts) else None
    if behind is not None and (behind.kind in _DETAILS or behind.text == ":"):
        return False
    before = parts[at - 1]
    if before.kind == "COMMA" or before.text == "-":
        # Of the list that was begun, or the next chart.
        first = parts[max(at - 2, 0)]
        # `45 [12/26], 1, 2`
        is_short = first.kind in _DETAILS and len(parts[at].text) < len(chart.text)
        return first == told or is_short
    if before.kind == "OTHER_WORDS":
        return before.text.lower() in _COUNTS
    return before.kind in _OPENS or before.kind == "OTHER" or before.text in (":", "(", ".")


def _is_exception(parts: Sequence[HeadPart], at: int, labels: frozenset[str]) -> bool:
    """Whether a word leaves out some of the items: `all but the last`, `not c`, `except (c)`."""
    before = parts[at - 1].text.lower()
    if parts[at].text.lower() == "only":
        # `45 [12/26] wreck only`
        return parts[at - 1].kind == "OTHER_WORDS"
    if parts[at].text.lower() in _ORDER:
        return before in ("the", "only", "all")
    if parts[at].text.lower() not in _EXCEPT:
        return False
    if before in _ALL:
        return True
    behind = next(
        (p for p in parts[at + 1 : at + 4] if p.text.lower() not in (*_COUNTS, "(")), None
    )
    return behind is not None and (behind.kind == "ITEM_LETTERS" or _is_label(behind, labels))
