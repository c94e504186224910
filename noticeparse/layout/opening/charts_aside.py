"""Charts that a line names and does not correct: `Chart 813 had no corrections.`, `See chart 801`.

The items below are not for them.
"""

from __future__ import annotations

import re

from noticeparse.layout.line.elements import Line

_UNCHANGED = re.compile(
    r"chart(?:\(s\)|s?\b)[ A-Z0-9,&/-]{1,80}?"
    r"(?: ?:| -| had| have| has| is| are| was| were| remains?)?"
    r" (?:no (?:corrections?|changes?|alterations?|amendments?|notices?|actions?)|nothing|nil|none"
    r"|unchanged|unaffected|not (?:corrected|affected|changed|touched))\b[^0-9\n]{0,60}$"
    r"|chart(?:\(s\)|s?\b)[ A-Z0-9,&/-]{1,80}? ?[:(-] ?for (?:information|reference)"
    r"(?: only)?\)?\.?$",
    re.IGNORECASE,
)
_NOT_FOR = re.compile(
    r"(?:not|nothing) (?:for|on|to be (?:made|applied|entered) on)(?: the)?(?: following)?"
    r" charts?\b"
    r"|charts?(?: which are| that are)? not (?:affected|concerned|to be corrected) ?:",
    re.IGNORECASE,
)
_ASIDE = re.compile(
    r"(?:source|reference|ref\.?|basis)\b ?[:-][^\n]{0,60}? ?charts?\b"
    r"|(?:see|see also|cf\.?|compare|refer to|consult|based on)\b[^\n]{0,30}? charts?\b"
    r"|(?:related|adjoining|adjacent|neighbou?ring|overlapping|former|old|superseded) charts? ?:"
    r"|(?:largest|larger|smaller)[ -]scale ?(?:: ?charts?\b|charts? ?:)"
    r"|(?:positions?|soundings|depths|data|details|information) (?:are |is |were |was )?(?:taken"
    r"|copied|read|scaled|derived|obtained|measured)(?: off)? (?:from|on)\b[^\n]{0,30}? charts?\b"
    r"|(?:previously|already) (?:announced|published|notified|issued|corrected|made) (?:for|on|in)"
    r"(?: the)? charts?\b",
    re.IGNORECASE,
)


def says_unchanged(text: str, line: Line) -> bool:
    """Whether a line says of charts that nothing is corrected on them."""
    if line.has("point", "half", "number", "reference"):
        return False
    words = text[line.start : line.end].strip()
    if _NOT_FOR.match(words) is not None:
        return True
    return line.elements[0].kind == "chart" and _UNCHANGED.match(words) is not None


def names_chart_aside(text: str, line: Line) -> bool:
    """Whether a line names a chart for another reason than to head what is to be done on it."""
    if line.has("point", "half", "verb", "reference", "number"):
        return False
    return _ASIDE.match(text[line.start : line.end].strip()) is not None
