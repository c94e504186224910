"""What must come back of a notice that is written in the canonical layout and read again.

It is held here by the words of the output contract and not by the program's own comparison: all
but spans, findings, `text`, `heading`, `via` and the keys for words as written.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any

from noticeparse import parse, render
from noticeparse.records import Notice

_ASIDE = {"span", "findings", "text", "heading", "via", "written", "sheet"}


def said(value: Any) -> Any:
    """What must come back, without what the contract leaves aside."""
    if isinstance(value, dict):
        return {
            key: said(one)
            for key, one in value.items()
            if key not in _ASIDE
            and not key.startswith("written_")
            and not key.endswith("_written")
        }
    return [said(one) for one in value] if isinstance(value, list) else value


def values(notice: Notice) -> Any:
    """The values of a notice as its JSON has them."""
    return said(json.loads(notice.model_dump_json()))


def usable(notice: Notice) -> Notice:
    """The notice without its unusable actions."""
    charts = [
        chart.model_copy(update={"actions": [one for one in chart.actions if one.usable]})
        for chart in notice.charts
    ]
    return notice.model_copy(update={"charts": charts})


def assert_comes_back(notice: Notice, *, stays: bool = True) -> str:
    """The text of a notice, after it has been read back and perhaps written once more."""
    text = render(notice)
    again = parse(text).notices
    assert len(again) == 1, text
    assert values(again[0]) == values(notice), text
    assert not stays or render(again[0]) == text
    return text


def all_actions(notice: Notice) -> Iterator[Any]:
    return (action for chart in notice.charts for action in chart.actions)
