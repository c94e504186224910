"""Orders, decrees and the like that open with their number: `ORDER 14/26.  OSTREL ROADS.`.

These words may stand before the number of anything; what tells the head of a notice is that it
stands behind a blank line or a rule, and has nothing or its heading behind it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.readers.features import has_kind

_NOUNS = frozenset(
    "order card decree directive ruling communication change alteration job task".split()
)
_MARKS = " *+#>•([<:.-=~"
_SIGNS = ("number", "no.", "no", "nr.", "nr", "n°", "nº", "#")
_NO_NOTICES = re.compile(
    r"(?:edition|week|bulletin|issue|list|sheet|volume|vol|part|page|chart|charts|number|series"
    r"|booklet|folio|section|supplement|index|contents|year|print|copy|region|area|zone|annex"
    r"|appendix|table|column|previous|last|former|preceding|earlier|latest|after|before|see|from"
    r"|cancels?|cancelled|cancelling|amends?|replaces?|supersedes?|supersed(?:ed|ing)|extends?"
    r"|repeats?|delete|insert|amend|move|replace|light|buoy|pier|berth|dock|racon|depth|note"
    r"|warning|navarea|navtex|navwarn|temporary|preliminary|permanent|withdrawn|postponed"
    r"|suspended|expired|corrected|reissued)",
    re.IGNORECASE,
)
_SHORTEST = 4
_CAPITALS = re.compile(r"[A-Z][A-Z'&-]+(?:[ ,-]{1,3}[A-Z][A-Z'&-]*)*")
"""The name of waters in capitals, which no sentence begins with."""


def heads_order(text: str, line: Line, elements: Sequence[Element], index: int) -> bool:
    """Whether a line opens an order, whose number is the element at `index`.

    Any other word stands so before waters in capitals: `DIRECTION 14/26.  OSTREL ROADS.`
    """
    words = words_of(text, elements[:index]).strip(_MARKS)
    plain = words.lower()
    for sign in _SIGNS:
        plain = plain.removesuffix(f" {sign}")
    end = max(line.start - 1, 0)
    above = text[text.rfind("\n", 0, end) + 1 : end].strip(" \t-=_*~")
    if above or not words[:1].isupper() or line.has("point", "half", "chart", "verb", "passive"):
        return False
    rest = text[elements[index].end : line.end].lstrip(" .:-*")
    if plain in _NOUNS:
        return not rest or rest[:1].isupper()
    if text[line.start : line.end].isupper():
        # A radio warning may be sent so: `HYDROTAV 1234/26. TAVRENNE ISLANDS.`
        return False
    # Letters that mark a series are told elsewhere, and so are words for a notice.
    is_noun = plain.isalpha() and len(plain) >= _SHORTEST and _NO_NOTICES.fullmatch(plain) is None
    name = _CAPITALS.match(rest)
    return is_noun and name is not None and len(name[0]) >= _SHORTEST and not has_kind(plain)
