"""Whether words go on with the head of a chart or a heading that the line above broke off."""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.drafts import NoticeDraft, Piece
from noticeparse.layout.line.elements import Element, Line
from noticeparse.readers.heads import read_parts

_NUMBER = re.compile(r"[0-9]{1,5}(?:\([TP]\))?/[0-9]{2}")
_FAR = 60
"""Characters of a line within which the rest of the notice before stands."""
_PREVIOUS = ("PREVIOUS", "PREVIOUS_IN_BRACKETS")


def closes_bracket(above: str, words: str) -> bool:
    """Whether words close a bracket that the line above has left open."""
    return any(above.count(a) > above.count(b) and b in words for a, b in ("()", "[]"))


def ends_bracket(text: str, head: Sequence[Piece], elements: Sequence[Element]) -> bool:
    """Whether the bracket that a head left open ends in a line: `3610/26) and chart 12`."""
    above = text[slice(*head[-1])] if head else ""
    return closes_bracket(above, text[elements[0].start : elements[-1].end])


def is_in_heading(text: str, line: Line, words: Sequence[Element]) -> bool:
    """Whether a verb behind a dash is part of a name: `Dunnock Passage - Amend Shoal`."""
    if not words or line.has("point", "half", "reference", "label", "passive"):
        return False
    return text[words[0].start : words[-1].end].rstrip().endswith(" -")


_CHART = r"(?!(?:19|20)[0-9]{2}\b)[0-9]{2,6}[A-Z]?"
_MORE_CHARTS = re.compile(
    rf"(?:and |also )?(?:nos?\.? ?)?{_CHART}(?:(?:, ?and |, | and | & ){_CHART}){{0,40}}"
    r"[.,;]?(?: and)?",
    re.IGNORECASE,
)
_CHARTS = re.compile(r"(?:\d{1,6}[A-Z]?(?:, ?and |, ?| and | & )){0,40}\d{1,6}[A-Z]?,?(?: and)?")


def goes_on_with_charts(above: str, words: str) -> bool:
    """Whether numbers go on with the list of charts above: `Charts 802, 803,` above `804`."""
    if _MORE_CHARTS.fullmatch(words) is not None and breaks_off_list(above):
        return True
    if not words[:1].isdigit() or _CHARTS.fullmatch(words) is None:
        return False
    parts = read_parts(above)
    if not parts or parts[0].kind != "CHART_WORD":
        return False
    last = next((part for part in reversed(parts) if part.kind != "COMMA"), parts[0])
    is_list = last.kind == "CHART_NUMBER" and parts[0].text.lower().startswith("charts")
    return is_list and (parts[-1].kind == "COMMA" or words.rstrip(",").isalnum())


def breaks_off_list(above: str) -> bool:
    """Whether a list of charts breaks off behind one of them: `Charts 802 [290/26] and`."""
    parts = read_parts(above) if above.rstrip().endswith((",", ";", "&", "and")) else []
    kinds = [part.kind for part in parts[-2:]]
    is_open = kinds[-1:] == ["COMMA"] and kinds[0] in ("CHART_NUMBER", *_PREVIOUS)
    return is_open and parts[0].kind == "CHART_WORD"


_NOTICE_BEFORE = (
    r"\b(?:last|previous|former|preceding|earlier) (?:[a-z]{2,12} )?(?:notice|correction|update)s?"
)
_LEADS_TO_CHART = re.compile(
    rf"{_NOTICE_BEFORE}(?: (?:on|for|to|of)(?: (?:the )?chart)?)?\s*\Z", re.IGNORECASE
)
_LEADS_TO_NOTICE = re.compile(
    rf"{_NOTICE_BEFORE} (?:on|for|to|of) (?:(?:the|this) )?chart(?: {_CHART})?:\s*\Z",
    re.IGNORECASE,
)
_NOTICE_OF_CHART = re.compile(rf"{_CHART} ?: ?{_NUMBER.pattern}\.?", re.IGNORECASE)


def leads_to_chart(above: str) -> bool:
    """Whether words end where the chart of a notice before is to be named: `Last notice on`."""
    return _LEADS_TO_CHART.search(above) is not None


def leads_to_notice(above: str) -> bool:
    """Whether words end where the notice before of a chart is to be told, by its colon."""
    return _LEADS_TO_NOTICE.search(above) is not None


def tells_its_notice(above: str, words: str) -> bool:
    """Whether words name a chart and its notice before: `Last notice on chart / 802: 290/26`."""
    if leads_to_notice(above):
        return _NUMBER.match(words) is not None
    if not leads_to_chart(above) or _NOTICE_OF_CHART.fullmatch(words) is None:
        return False
    return f" {words.partition(':')[0].strip()}" in above


def completes_previous(above: str, words: str) -> bool:
    """Whether words end the notice before, broken by a line end: `last correction / 239/26`."""
    before = read_parts(above)
    words_before = sum(part.kind == "OTHER_WORDS" for part in before)
    if not words_before:
        # Nothing stands above that could be the beginning of it.
        return False
    whole = read_parts(f"{' '.join(above.split())} {words}")
    told = [part for part in whole if part.kind in _PREVIOUS]
    plain = sum(part.kind in ("OTHER_WORDS", "OTHER") for part in whole)
    is_new = len(told) > sum(part.kind in _PREVIOUS for part in before)
    broken = bool(told) and told[-1].start < len(" ".join(above.split()))
    return is_new and broken and plain < words_before


_LEADS_TO_PREVIOUS = re.compile(
    r"\b(?:last|latest|previous|preceding|former|prior) (?:notice|correction|update|amendment|nm)"
    r"(?: (?:on|to|for|of) (?:which|it|this chart))?(?: (?:is|was|being|has been))?:?$",
    re.IGNORECASE,
)


def parts_previous(above: str, words: str) -> bool:
    """Whether a line end parts the notice before: `chart 641, last corrected by / NM 44/26`."""
    if _NUMBER.search(words, 0, _FAR) is None:
        return False
    before = " ".join(above.split())
    if _LEADS_TO_PREVIOUS.search(before) is not None and _NUMBER.match(words) is not None:
        return True
    parts = read_parts(f"{before} {words}")
    return any(p.kind in _PREVIOUS and p.start < len(before) < p.end for p in parts)


def heading_breaks_off(text: str, notice: NoticeDraft, line: Line) -> bool:
    """Whether a heading goes on over its line end with a verb in it: `… - / Shift Rock`."""
    if not notice.heading or line.has("point", "half", "label", "reference", "passive"):
        return False
    return text[slice(*notice.heading[-1])].rstrip().endswith(("-", ",", " and"))
