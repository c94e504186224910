"""A property or part named of the thing that has it: `Delete height of tower`, `bell of buoy`.

The tower stays, and so does the buoy; the noun that is read names only what the property is of.
`Insert PA against wreck` writes two letters beside a wreck that is there.
"""

from __future__ import annotations

import re

from noticeparse.readers.features import has_kind, read_feature
from noticeparse.records.feature import Feature

_PROPERTY = (
    r"(?:names?|heights?|elevations?|colou?rs?|(?P<number>numbers?)|depths?|characters?|periods?"
    r"|bells?|whistles?|gongs?|horns?|sirens?|top-?marks?|daymarks?"
    r"|(?:radar |retro-?)?reflectors?|(?:danger|dotted|dashed|pecked) (?:circles?|lines?|limits?)"
    r"|position (?:approximate|doubtful)|reported|conspicuous|abbreviations?"
    r"|(?-i:P\.?A\.?|P\.?D\.?|E\.?D\.?|[Rr]ep(?:d|td)?\.?|[Cc]onspic\.?))"
)
_VALUE = r"(?:(?:of )?(?:[0-9][^ ,;:]*(?: ?(?:m|metres|meters|ft|feet))?|[a-z]+))"
_OWNER = re.compile(
    rf"(?:the |an? (?!number)|their |its )?{_PROPERTY}"
    rf"(?: {_VALUE}|,? {{2,200}}| ?\([^()]*\)|, (?:[A-Z][\w'-]*[ ,]*){{1,4}})??,?"
    r" (?:of|for|from|on|against|to|beside|with|at) ?:? ?(?:the |an? )?(?P<other>[^,;:]+)",
    re.IGNORECASE,
)
_MANY = re.compile(r"[A-Za-z-]*s\b")


def owner(text: str, feature: Feature) -> tuple[int, int] | None:
    """Where words that begin with a property name the thing that has it, and that was read.

    Quotations are blanked in them.
    """
    found = _OWNER.match(text.lstrip(" ,:"))
    if found is None or not has_kind(found["other"]):
        return None
    if read_feature(found["other"]).feature.kind != feature.kind:
        return None
    if found["number"] is not None and _MANY.search(found["other"]) is not None:
        # `number of piles` is a count.
        return None
    at = len(text) - len(text.lstrip(" ,:"))
    return at + found.start("other"), at + found.end("other")
