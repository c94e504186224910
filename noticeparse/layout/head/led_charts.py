"""A chart named alone among the items, without a word for one: `Also on 803`.

`On the adjoining sheet, 803:` names it with other words between.  With the notice before, it leads
the command on its own line: `803 [2288/26]: Delete …`.
"""

from __future__ import annotations

import re
from typing import Literal

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.drafts import ChartDraft
from noticeparse.layout.evidence import lead_index
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Line
from noticeparse.layout.opening.goes_on import leads_to_chart
from noticeparse.layout.opening.titled_charts import opens_titled_chart

_LED = re.compile(
    r"(?:(?:And|Also|Similarly|Likewise|Further|Then),? )?(?:[Oo]n|[Ff]or)"
    r"(?: the (?:[a-z-]{2,20} ){0,3}(?:charts?|sheets?|plans?)(?: no\.?)?,?)?"
    r" (?P<number>(?!(?:19|20)[0-9]{2}\b)[A-Z]{0,3} ?[0-9]{2,5}[A-Z]?)"
    r"(?: (?:only|as well|too|also))?"
    r"(?: [\[(][^\])]{3,40}[\])])?[ .:]*"
)

_SHORTEST = 2
"""Figures of a chart that leads a command; one alone counts the items."""


def takes_its_chart(assembly: Assembly, line: Line) -> bool:
    """Take the chart of a notice before that the head above leads to: `Last notice on`."""
    head = assembly.charts[-1].head if assembly.charts else []
    if not head or not leads_to_chart(assembly.text[slice(*head[-1])]):
        return False
    if not line.has_only("chart", "words", "number"):
        return False
    head.append((line.elements[0].start, line.elements[-1].end))
    return True


def takes_led(assembly: Assembly, line: Line) -> Literal["head", "command"] | None:
    """What a line that opens with a chart is: its head, or a command with the chart in front."""
    if takes_led_chart(assembly, line):
        return "head"
    return "command" if takes_chart_of_command(assembly, line) else None


def takes_led_chart(assembly: Assembly, line: Line) -> bool:
    """Open the section of a chart that a line below an item names, and nothing else."""
    words = assembly.text[line.start : line.end].strip()
    found = _LED.fullmatch(words) if words[:1].isupper() else None
    if found is None or not assembly.has_charts or not _ends_item(assembly):
        return False
    piece = (line.elements[0].start, line.elements[-1].end)
    assembly.open_row_chart(ChartDraft([piece], found["number"]))
    return True


def takes_chart_of_command(assembly: Assembly, line: Line) -> bool:
    """Open the section of a chart that stands, with its notice before, in front of a command."""
    first = lead_index(line)
    verb = next((i for i, e in enumerate(line.elements) if e.kind == "verb"), first)
    led = line.elements[first:verb]
    if assembly.notice is None or not led or any(e.kind not in ("words", "number") for e in led):
        return False
    piece = (led[0].start, led[-1].end)
    length = opens_titled_chart(assembly.text[slice(*piece)].rstrip(" :-"))
    if length < _SHORTEST:
        return False
    assembly.open_row_chart(ChartDraft([piece], assembly.text[piece[0] : piece[0] + length]))
    assembly.body.append(line._replace(elements=line.elements[verb:]))
    return True


def _ends_item(assembly: Assembly) -> bool:
    """Whether the line above ends with the place of an item, or with a stop."""
    above = next((line for line in reversed(assembly.body) if not line.is_blank), None)
    if above is None:
        return False
    is_placed = above.elements[-1].kind in PLACES
    return is_placed or assembly.text[above.start : above.end].rstrip().endswith(".")
