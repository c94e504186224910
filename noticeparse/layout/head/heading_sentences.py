"""A sentence that begins on the line of a heading: `613/26. QUILL SOUND. The buoy in P has been`.

Its subject stands in front of the place or verb that ends the heading, and is no part of this.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.line.elements import Element

_OPENS = re.compile(
    r"(?<=[a-zA-Z)]\.) {1,2}(?=(?:The|An?|One|Two|Three|Four|Both|All|Several|In|At) [a-z])"
)
_NO_SENTENCE = frozenset({"verb", "label", "charts_only"})
"""What a heading ends with where no sentence has begun: a command, the letter of an item."""


def without_sentence(
    text: str, words: Sequence[Element], end: Element
) -> tuple[list[Element], list[Element]]:
    """The words of a heading, and those of a sentence behind it, in front of what ends both."""
    last = words[-1] if words else None
    if last is None or last.kind != "words" or end.kind in _NO_SENTENCE:
        return list(words), []
    opened = [one.end() for one in _OPENS.finditer(text, last.start, last.end)]
    if not opened:
        return list(words), []
    said = last._replace(start=opened[-1])
    return [*words[:-1], last._replace(end=opened[-1])], [said]
