"""Sentences that say where more is told, and nothing of the chart: `Ask the pilot station`."""

from __future__ import annotations

import re

_FOR_MORE = re.compile(
    r"(?:for )?(?:further|more|full(?:er)?|other) (?:details?|information|particulars)\b"
    r"|for (?:details|information|particulars|enquiries|questions)\b"
    r"|(?:details|enquiries|questions)[, ](?:are|can|may|to|from|should|with)\b"
    r"|(?:please )?(?:see|refer to|consult)(?: also)? (?:the )?"
    r"(?:lists? of (?:lights|radio signals)|light lists?|sailing directions|tide tables?"
    r"|port (?:guide|regulations|by-?laws))\b"
    r"|(?:please )?(?:contact|ask|call|phone|telephone|write to|e-?mail) (?:the |our |us\b|vhf\b)",
    re.IGNORECASE,
)


def tells_where_more_is(words: str) -> bool:
    """Whether words begin such a sentence."""
    return _FOR_MORE.match(words) is not None
