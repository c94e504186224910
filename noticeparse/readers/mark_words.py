"""Words of topmarks and paint that went into no value of a mark: `T topmark`, `RWHB`, `Or`.

The record of a mark without its topmark or paint would look whole; each such word is told.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from noticeparse.faults import Fault
from noticeparse.readers.amounts import shown
from noticeparse.readers.marks import Body, Shape

_FIGURE = r"(?:cones?|balls?|spheres?|cylinders?|cans?|cross(?:es)?|triangles?|squares?)"
_TWO = re.compile(
    rf"\b(?:(?:black|red|green|yellow|white|orange) )?{_FIGURE} (?:over|above|below|under) "
    rf"(?:an? )?(?:(?:black|red|green|yellow|white|orange) )?{_FIGURE}\b",
    re.IGNORECASE,
)
"""`black ball over black cone`: no topmark of one figure."""
_TOPMARK = re.compile(
    r"\b(?:(?:upright |diagonal |st\.? andrew'?s? |saint andrew'?s? )?(?:yellow |red )?cross"
    r"|(?:(?:two|2|green|red|black|yellow|white) )?(?:cones?|triangles?)(?:,? \(?points? "
    r"(?:up|down)(?:wards?)?\)?)?|triangles?|brooms?|besoms?|[A-Z] topmark)(?![a-z-])",
    re.IGNORECASE,
)
_PAINT = re.compile(
    r"(?<![A-Za-z.])(?:Or|Wh|Bl/[RYWG]|(?:[RGBWY] ?){1,3}(?:HB|VS|HS|Ch|Cheq))(?![A-Za-z.(])"
)
"""Abbreviations of paint and its patterns that are not read."""


def unread_mark_words(text: str, shape: Shape, body: Body) -> Iterator[Fault]:
    """A warning for the words of a topmark, where none was read, and of paint."""
    two = _TWO.search(text)
    lone = _TOPMARK.search(text) if shape.topmark is None else None
    if two is not None and not (shape.topmark or "").startswith("2 "):
        yield _fault(text, two)
    elif lone is not None and shape.shape != "conical":
        yield _fault(text, lone)
    if body.pattern is None and (paint := _PAINT.search(text)) is not None:
        yield _fault(text, paint)


def _fault(text: str, told: re.Match[str]) -> Fault:
    values = {"written": shown(told[0])}
    return Fault("feature-words-unread", told.start(), told.end(), values)
