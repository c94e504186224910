"""Both states of a value side by side, one in brackets: `depth 5.8 m [6.4 m]`.

Which of both is the old one is told only where the text says so: `the new value is written first,
the old one follows in square brackets`.  Without such words nothing is taken from the brackets.
Source: common practice, no published source.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.layout.drafts import Item, Layout, Piece
from noticeparse.readers.features import has_kind, value_property
from noticeparse.readers.verbs import canonical_verb

_OLD = "old|former|previous|superseded|existing|present|earlier|(?<!to be )charted"
_NEW = "new|amended|corrected|revised|changed"
_STATE = re.compile(rf"\b(?:(?P<old>{_OLD})|(?P<new>{_NEW}))\b", re.IGNORECASE)
_SAYS = re.compile(
    r"[^.;:]{0,160}?\b(?:(?P<sort>square|round) )?(?:brackets?|(?P<round>parenthes[ei]s))\b"
    r"[^.;]{0,80}",
    re.IGNORECASE,
)
_CLAUSE = re.compile(r",? and |,? while |,? but |, |; ")
_OTHER = re.compile(
    r"\b(?:notices?|corrections?|editions?|numbers?|positions?|places?|charts?|dates?|nms?)\b",
    re.IGNORECASE,
)
"""What else may stand in brackets: `the previous notice is in square brackets`."""
_FOLLOWS = re.compile(r"\b(?:follow\w*|behind|after)\b", re.IGNORECASE)
_MEASURE = (
    r"-?[0-9]{1,4}(?:[.,][0-9]{1,3})?[ ]?(?:m|M|metres|miles|ft|fm|s|seconds)?(?![A-Za-z0-9])"
)
_VALUES = tuple(
    re.compile(rf"(?P<new>{form})[ ]{{0,3}}(?P<open>[\[(])(?P<old>{form})[\])][ .]{{0,3}}$")
    for form in (r'"[^"\n]{1,60}"', _MEASURE, r"No\.? ?[0-9]{1,3}[A-Z]?")
)
_LIGHTS = re.compile(
    r"(?P<new>[^,:\[\]\n]{2,60}?)[ ]{0,3}(?P<open>\[)(?P<old>[^\[\]\n]{2,60})\][ .]{0,3}$"
)
_PAIR = re.compile(r"\[| \((?=[\"0-9])")
"""The bracket of a value beside another; `Fl(2)R.6s` has one of its own."""
_PARTS_OF_LIGHT = frozenset({"light"})


def tell_states_in_brackets(text: str, layout: Layout) -> None:
    """Give amendments the old and the new state that stand side by side, if the text says how."""
    if "bracket" not in text and "parenthes" not in text:
        return
    told = _told_of_brackets(" ".join(text.split()))
    if told is None:
        return
    state, sign = told
    for item in _amendments(layout):
        _divide(text, item, state, sign)


def _told_of_brackets(words: str) -> tuple[str, str] | None:
    """Which state stands in brackets, and in which sort of them: empty where in any."""
    found = {_told(one) for one in _SAYS.finditer(words)} - {None}
    return found.pop() if len(found) == 1 else None


def _told(said: re.Match[str]) -> tuple[str, str] | None:
    """What one sentence says of brackets; None where it names no state, or both without order."""
    sort = (said["sort"] or "").lower()
    sign = "[" if sort == "square" else "(" if sort == "round" or said["round"] else ""
    clause = next(
        (one for one in _CLAUSE.split(said[0]) if re.search(r"bracket|parenthes", one, re.I)), ""
    )
    states = [] if _OTHER.search(clause) else list(_STATE.finditer(clause))
    kinds = [one.lastgroup or "" for one in states]
    if len(set(kinds)) == 2:
        between = clause[states[0].end() : states[1].start()]
        if len(states) > 2 or _FOLLOWS.search(between) is None:
            return None
    return (kinds[0], sign) if kinds else None


def _amendments(layout: Layout) -> Iterator[Item]:
    for notice in layout.notices:
        for chart in notice.charts:
            for item in chart.items:
                if canonical_verb(item.verb or "") == "amend" and item.words:
                    yield item


def _divide(text: str, item: Item, state: str, sign: str) -> None:
    if item.old or item.change:
        return
    start, end = item.words[-1]
    words = text[start:end]
    if len(_PAIR.findall(words)) > 1:
        # Of several values in brackets only the last one would be divided.
        return
    found = _values(words)
    if found is None or (sign and words[found[2]] != sign):
        return
    new, old, _ = found
    first = (start + new[0], start + new[1])
    second = (start + old[0], start + old[1])
    subject = text[start : first[0]].rstrip(" ,:")
    kept = [*item.words[:-1], *([(start, start + len(subject))] if subject else [])]
    if not kept:
        return
    item.words[:] = kept
    item.old, item.change = ([second], [first]) if state == "old" else ([first], [second])


def _values(words: str) -> tuple[Piece, Piece, int] | None:
    """Where the value in front stands, that in brackets, and its bracket."""
    for form in _VALUES:
        found = form.search(words)
        if found is not None:
            return found.span("new"), found.span("old"), found.start("open")
    found = _LIGHTS.search(words)
    if found is None or value_property(found["old"]) != _PARTS_OF_LIGHT:
        return None
    for blank in re.finditer(r"^|(?<=[ ])(?=\S)", found["new"]):
        front = found["new"][blank.end() :]
        if value_property(front) == _PARTS_OF_LIGHT and not has_kind(front):
            at = found.start("new") + blank.end()
            return (at, found.end("new")), found.span("old"), found.start("open")
    return None
