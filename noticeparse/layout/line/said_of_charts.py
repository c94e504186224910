"""Words of a sentence that names the charts of what follows: `The following is for chart 60`."""

from __future__ import annotations

import re

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
