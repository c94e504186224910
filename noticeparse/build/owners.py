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
_LEFT = re.compile(
    r"(?:the |its )?(?:[a-z-]+ ){0,2}(?:remains|remnants?|ruins?|bases?|foundations?|footings?"
    r"|plinth|debris|wreckage|fragments?|site|location|rest|stumps?|leftovers) (?:of|from) "
    r"(?:the |an? |old |former |demolished |collapsed |destroyed ){0,3}(?P<other>[^,;:]+)"
    r"|(?P<behind>[^,;:()]{1,60}) \((?:remains|remnants|base|foundations?|footings?|plinth)"
    r"(?: only)?\)",
    re.IGNORECASE,
)
"""What is left of a thing that stands no longer, or the ground on which it stood."""
_LIES = frozenset(("WRECKS", "OBSTRN", "UWTROC"))
"""Classes of what is left itself: the remains of a wreck are a wreck."""
_MANY = re.compile(r"[A-Za-z-]*s\b")


def owner(text: str, feature: Feature) -> tuple[int, int] | None:
    """Where words that begin with a property name the thing that has it, and that was read.

    Quotations are blanked in them.
    """
    own = text.lstrip(" ,:")
    found = _OWNER.match(own) or _value_of(own) or _LEFT.match(own)
    name = "behind" if found is not None and found["other"] is None else "other"
    if found is None or not has_kind(found[name]):
        return None
    known = kinds().get(feature.kind)
    is_mark = found.re is _OF and known is not None and bool(known.form)
    if not is_mark and read_feature(found[name]).feature.kind != feature.kind:
        return None
    if (
        found.re is _OWNER
        and found["number"] is not None
        and _MANY.search(found["other"]) is not None
    ):
        # `number of piles` is a count.
        return None
    at = len(text) - len(own)
    return at + found.start(name), at + found.end(name)


def _value_of(text: str) -> re.Match[str] | None:
    """Words that begin with nothing but what is carried by the thing behind `of`."""
    found = _OF.match(text)
    roles = value_property(found["value"]) if found is not None else frozenset()
    return found if roles and roles - {"counted"} <= _CARRIED else None
