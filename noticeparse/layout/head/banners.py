"""Lines that command what stands below them on one chart: `INSERT ON CHART 211, last 18/26`.

The verb holds for the items below; the rest is the head of the chart, which may come again under
the next verb: `REMOVE FROM CHART 211`.
"""

from __future__ import annotations

from typing import NamedTuple

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.drafts import Piece
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.table.keys import KeyReader
from noticeparse.readers.heads import read_parts

_LEADS = frozenset("on from to in off for the of onto".split())
_MARKS = " \t=-*~#:.|"
_DETAILS = frozenset(
    {"CHART_NUMBER", "INTERNATIONAL", "PREVIOUS", "PREVIOUS_IN_BRACKETS", "DATUM", "DEPTH_UNIT",
     "EDITION", "NEW_EDITION", "DATE", "COMMA", "STOP", "PANEL", "MAIN_PANEL"}
)  # fmt: skip


def takes_banner(assembly: Assembly, keys: KeyReader, line: Line) -> bool:
    """Take a line that commands what stands below it on a chart: `INSERT ON CHART 211`."""
    found = _banner(assembly.text, line)
    if found is None or (assembly.notice is not None and assembly.notice.is_radio):
        return False
    if assembly.is_between_charts() and assembly.cut.falls_before(line):
        return True
    keys.end_block()
    assembly.end_body()
    assembly.open_chart(found.head)
    assembly.body.append(line._replace(elements=(found.verb,)))
    return True


class _Banner(NamedTuple):
    """The verb of such a line, and the stretch that is the head of its chart."""

    verb: Element
    head: Piece


def _banner(text: str, line: Line) -> _Banner | None:
    """The line as one that commands what stands below it on a chart, or None."""
    if line.has("point", "half", "reference"):
        return None
    elements = [one for one in line.elements if one.kind not in ("bar", "rule", "label")]
    if not elements or elements[0].kind != "verb":
        return None
    verb = elements[0]
    rest = text[verb.end : line.end]
    stop = verb.end + len(rest.rstrip(_MARKS))
    parts = read_parts(text[verb.end : stop])
    lead = 0
    while lead < len(parts) and parts[lead].text.lower() in _LEADS:
        lead += 1
    word, *behind = parts[lead:] or (None,)
    if lead == 0 or word is None or word.kind != "CHART_WORD" or not behind:
        return None
    if behind[0].kind != "CHART_NUMBER" or any(p.kind not in _DETAILS for p in behind[1:]):
        return None
    return _Banner(verb, (verb.end + parts[0].start, stop))
