"""A property or part named of the thing that has it: `Delete height of tower`, `bell of buoy`.

The tower stays, and so does the buoy; the noun that is read names only what the property is of.
`Insert PA against wreck` writes two letters beside a wreck that is there.
"""

from __future__ import annotations

import re

from noticeparse.readers.features import has_kind, read_feature, value_property
from noticeparse.records.feature import Feature
from noticeparse.vocabulary import kinds

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
_OF = re.compile(
    r"(?P<value>[^,;:]{1,60}?) (?:of|for|from|off) (?:the |an? |its )?(?P<other>[^,;:]+)",
    re.IGNORECASE,
)
_CARRIED = frozenset(("light", "light_words", "sectors", "racon", "sound", "ais", "numbered"))
"""Roles of what a mark carries: `Fl.R.3s of light-buoy No 3` is its light alone."""
_MANY = re.compile(r"[A-Za-z-]*s\b")


def owner(text: str, feature: Feature) -> tuple[int, int] | None:
    """Where words that begin with a property name the thing that has it, and that was read.

    Quotations are blanked in them.
    """
    found = _OWNER.match(text.lstrip(" ,:")) or _value_of(text.lstrip(" ,:"))
    if found is None or not has_kind(found["other"]):
        return None
    known = kinds().get(feature.kind)
    is_mark = found.re is _OF and known is not None and bool(known.form)
    if not is_mark and read_feature(found["other"]).feature.kind != feature.kind:
        return None
    if (
        found.re is _OWNER
        and found["number"] is not None
        and _MANY.search(found["other"]) is not None
    ):
        # `number of piles` is a count.
        return None
    at = len(text) - len(text.lstrip(" ,:"))
    return at + found.start("other"), at + found.end("other")


def _value_of(text: str) -> re.Match[str] | None:
    """Words that begin with nothing but what is carried by the thing behind `of`."""
    found = _OF.match(text)
    roles = value_property(found["value"]) if found is not None else frozenset()
    return found if roles and roles - {"counted"} <= _CARRIED else None
