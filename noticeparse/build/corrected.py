"""What the front of an edition says of its charts: `Charts last corrected: 61 by 140/26, 62 by …`.

It holds for the first notice of the edition that corrects a chart; those behind it follow on that.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.context import Context
from noticeparse.layout.elements import Line
from noticeparse.readers.references import read_number
from noticeparse.records.reference import NoticeRef

_NUMBER = r"[0-9]{1,5}(?:\([TP]\))?/(?:19|20)?[0-9]{2}(?![0-9/])"
_EACH = re.compile(
    r"(?:charts? )?([A-Z]{0,3} ?[0-9]{1,6}[A-Z]?)(?: by | with | - |: ?| ?= ?| \(| )"
    rf"({_NUMBER})\)?",
    re.IGNORECASE,
)
_LEAD = re.compile(
    r"\b(?:charts (?:were |are )?(?:last )?(?:corrected|updated|amended)(?: before)?"
    r"|(?:last|previous) (?:corrections?|notices?|updates?)(?: (?:of|for|on) (?:the )?charts)?)"
    r"(?: are)?(?: ?:| -)? ",
    re.IGNORECASE,
)
_JOINT = re.compile(r"(?:[,;]|,? and) ")
_MOST = 60
"""Charts of one line."""


def corrected_before(context: Context, front: Sequence[Line]) -> dict[str, tuple[NoticeRef, str]]:
    """The notice that the front lines say was last on each chart, and how it is written."""
    found: dict[str, tuple[NoticeRef, str]] = {}
    for line in front:
        words = context.text[line.start : line.end]
        lead = _LEAD.search(words)
        at = lead.end() if lead is not None else len(words)
        for _ in range(_MOST):
            pair = _EACH.match(words, at)
            ref = read_number(pair[2], context.year) if pair else None
            if pair is None or ref is None:
                break
            found.setdefault(pair[1].replace(" ", ""), (ref, pair[2]))
            joint = _JOINT.match(words, pair.end())
            if joint is None:
                break
            at = joint.end()
    return found
