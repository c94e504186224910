"""Words of a sentence that names the charts of what follows: `The following is for chart 60`.

`Chart 60 [31/26] is hereby amended as follows:` tells what is done with the paper, with no thing.
"""

from __future__ import annotations

import re

from noticeparse.readers.features import has_kind

_WHO = (
    r"(?:all )?(?:masters|mariners|navigators|shipmasters|pilots|ships|vessels|users|holders"
    r"|owners)(?:,? (?:and|or) (?:all )?[a-z]{3,12}){0,2}"
)
_CHANGES = r"(?:corrections?|changes?|amendments?|items?)"
_FOR = r"(?:for|on|in|to|of)(?: the)?"
_SAYS_WHICH = re.compile(
    rf"(?:(?:the |all )?following(?: {_CHANGES})?|what follows|this|these(?: {_CHANGES})?)"
    rf" (?:(?:is|are)(?: (?:valid|meant))?|appl(?:y|ies)|relates?|refers?|goe?s?) {_FOR}"
    r"|(?:the |all )?(?:following|this|these) (?:concerns?|affects?)(?: the)?"
    rf"|{_WHO} are (?:hereby )?(?:(?:asked|requested|advised|invited|directed|required) )?to"
    r" (?:correct|amend|update|alter)(?: the| their)?"
    rf"|{_WHO} (?:of|with)(?: the)?"
    r"|the charts? (?:affected|concerned|to be corrected) (?:is|are)(?: the)?"
    rf"|below (?:is|are) the {_CHANGES} {_FOR}|apply {_FOR}",
    re.IGNORECASE,
)
_CHART = re.compile(
    r" (?:charts?|chts?|sheets?)\b[^a-z]{0,12}(?:nos?\b[ .:]{0,4})?", re.IGNORECASE
)


def says_which_chart(words: str) -> bool:
    """Whether words, up to the one for a chart at their end, open such a sentence."""
    lead = _SAYS_WHICH.match(plain := " ".join(words.split()))
    return lead is not None and _CHART.fullmatch(plain + " ", lead.end()) is not None


_ALL_CHARTS = re.compile(r"\b(?:charts?|sheets?)\s$", re.IGNORECASE)
_CORRECTED = ("corrected", "amended", "altered", "changed")
_HEAD = re.compile(
    r"(?:^|\n)[^\n.;:]{0,120}?(?:(?<![^\n])|\bthat )(?:the )?charts? [A-Z]{0,3} ?[0-9]{1,6}"
    r"(?P<details>[^\n;:°]{0,120})$",
    re.IGNORECASE,
)
_AS_FOLLOWS = re.compile(
    r"\s(?:as follows|as (?:set out|shown|given|listed|stated|told) (?:below|hereunder)"
    r"|in (?:this|the following) (?:manner|way))\b",
    re.IGNORECASE,
)
_FAR = 300


def tells_of_all_charts(text: str, start: int, end: int) -> bool:
    """Whether a passive announces the corrections: `Charts are to be corrected as follows`."""
    if not text[start:end].lower().endswith(_CORRECTED):
        return False
    if _ALL_CHARTS.search(text[max(start - 10, 0) : start]) is not None:
        return True
    if _AS_FOLLOWS.match(text, end) is None:
        return False
    head = _HEAD.search(text[max(start - _FAR, 0) : start])
    return head is not None and not has_kind(head["details"])
