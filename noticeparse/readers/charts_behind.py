"""The charts that stand in brackets behind an item: `[204 (last correction 66-26), 210]`.

In comes what the brackets hold, with them; out comes a head, or nothing where a word of it cannot
be read for certain: who is sent to the wrong sheet has no means to see it.
"""

from __future__ import annotations

import re

from noticeparse.readers.head_values import Head
from noticeparse.readers.heads import read_head, read_parts

_KNOWN = frozenset(
    "CHART_WORD CHART_NUMBER INTERNATIONAL PANEL COMMA STOP PREVIOUS PREVIOUS_IN_BRACKETS "
    "NOTICE_NUMBER NEW_EDITION".split()
)
_JOINTS = {
    "[": re.compile(r"\]\s{0,3}(?:,|;|and|&)?\s{0,3}\[", re.IGNORECASE),
    "(": re.compile(r"\)\s{0,3}(?:,|;|and|&)?\s{0,3}\((?!INT)", re.IGNORECASE),
}
_LEAD = re.compile(
    r"\A(?:(?:(?:to be )?(?:charted|shown|made) )?(?:for|on)|affects?|affecting):? (?:the )?",
    re.IGNORECASE,
)


def read_charts_behind(words: str, near: int | None) -> Head | None:
    """The charts that brackets name; None where they hold anything else, or what is in doubt."""
    text = _inner(words)
    parts = read_parts(text)
    if any(part.kind not in _KNOWN for part in parts):
        return None
    head = read_head(text, near)
    numbers = [part for part in parts if part.kind == "CHART_NUMBER"]
    charts = [chart.chart for chart in head.charts]
    is_whole = len(numbers) == len(charts) == len({*charts, None}) - 1
    without = [chart for chart in head.charts if chart.previous_written is None]
    is_told_of_all = len(without) in (0, len(head.charts))
    return head if is_whole and is_told_of_all and not head.faults else None


def _inner(words: str) -> str:
    """What the brackets hold, that of several in a row as one list."""
    plain = " ".join(words.split()).strip(" .,;:")
    if joint := _JOINTS.get(plain[:1]):
        plain = joint.sub("; ", plain[1:-1])
    plain = _LEAD.sub("", plain.strip(), count=1)
    return plain if plain[:2].lower() == "ch" else f"Charts {plain}"
