"""Finds the wording of a legend that goes with a thing: `wreck and legend, "Wk"`.

In come a phrase with its segments and the place where the noun `legend` ends; out comes where its
wording ends.  The words behind the comma are neither a name of the thing nor another thing.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.readers.phrases import Segment, place

_NOUN = re.compile(
    r"(?<![A-Za-z])(?:legend|note|wording|label|inscription|caption)s?$", re.IGNORECASE
)


def wording_end(text: str, start: int, end: int, segments: Sequence[Segment]) -> int:
    """The end of a companion with its wording; its own end where it has one, or is no legend."""
    if _NOUN.search(text[start:end]) is None:
        return end
    for segment in segments:
        pieces = segment.pieces
        if not pieces or place(pieces[0])[0] < end:
            continue
        first, last = pieces[0], pieces[-1]
        if text[end : place(first)[0]].strip(" ,:"):
            return end
        if first.type == "QUOTED":
            # `legends, "Foul" and "Works"`: all of them are wordings.
            return max(place(one)[1] for one in pieces if one.type == "QUOTED")
        return end if segment.companions else place(last)[1]
    return end
