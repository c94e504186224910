"""Numbers of several notices on one line, which open none of them: lists and rows of an index."""

from __future__ import annotations

import re

from noticeparse.layout.line.elements import Element

_PAIR = 3
"""Behind the first number: its charts, another number, and the charts of that."""
_A_CHART = "[A-Z]{0,2}[0-9]{1,4}[A-Z]?"
_CHARTS = re.compile(f"{_A_CHART}(?:(?:, ?| and | & | ){_A_CHART})*")


def is_list_of_numbers(text: str, rest: tuple[Element, ...]) -> bool:
    """Whether the number is the first of several: `211/26, 213/26 and 216/26`.

    In an index each may have the figures of its charts behind it: `1/26  610, 611    2/26  614`.
    """
    if not any(e.kind == "number" for e in rest):
        return False
    kinds = [e.kind for e in rest]
    words = [text[e.start : e.end] for e in rest if e.kind != "number"]
    is_index = len(rest) > _PAIR and kinds == ["words", "number"] * (len(rest) // 2) + ["words"]
    if is_index and all(map(_CHARTS.fullmatch, words)):
        return True
    return all(not word.replace("and", "").strip(" ,.;&") for word in words)
