"""Orders, decrees and the like that open with their number: `ORDER 14/26.  OSTREL ROADS.`.

These words may stand before the number of anything; what tells the head of a notice is that it
stands behind a blank line or a rule, and has nothing or its heading behind it.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.line.elements import Element, Line, words_of

_NOUNS = frozenset(
    "order card decree directive ruling communication change alteration job task".split()
)
_MARKS = " *+#>•([<:.-=~"
_SIGNS = ("number", "no.", "no", "nr.", "nr", "n°", "nº", "#")


def heads_order(text: str, line: Line, elements: Sequence[Element], index: int) -> bool:
    """Whether a line opens an order, whose number is the element at `index`."""
    words = words_of(text, elements[:index]).strip(_MARKS)
    plain = words.lower()
    for sign in _SIGNS:
        plain = plain.removesuffix(f" {sign}")
    if plain not in _NOUNS or not words[:1].isupper():
        return False
    end = max(line.start - 1, 0)
    above = text[text.rfind("\n", 0, end) + 1 : end].strip(" \t-=_*~")
    rest = text[elements[index].end : line.end].lstrip(" .:-*")
    return not above and (not rest or rest[:1].isupper())
