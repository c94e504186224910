"""Numbers of notices at the right of their headings: `QUILL SOUND. Wreck.      No. 118/26`."""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.opening.notice_openings import NoticeOpening, is_named
from noticeparse.layout.opening.recognise import is_source
from noticeparse.readers.references import is_marked

_FAR_BEHIND = 30
_FAR_APART = 6
_NOUN = re.compile(
    r"\*?(?:(?:notice|circular|entry|memorandum|advice|order|n\.?t?\.?m\.?)"
    r"(?: (?:no|nr|number)\.?)?|no\.?|nr\.?|n\.?[°º]|number):?",
    re.IGNORECASE,
)
_OF_PAPERS = re.compile(
    r"\b(?:list|edition|bulletin|notices|office|hydrograph[a-z]{1,6}|service|department|weekly"
    r"|monthly|page|sheet|chart|last|previous|cancels?|cancelled)\b",
    re.IGNORECASE,
)
_NUMBERED = re.compile(r"\bNos?\.? [0-9]{1,3}[A-Z]?\b")
"""The number of a mark among the subjects of a heading: `Light-buoy No 4`."""
_FIRST_PART = re.compile(r"\. | --? |: ")
_ENDS_IN_NUMBER = re.compile(r"[0-9]/(?:19|20)?[0-9]{2}\)?\Z")


def number_behind_heading(text: str, line: Line, following: Line | None) -> NoticeOpening | None:
    """The opening of a notice whose number stands at the right of its heading, or None.

    Below it stands a chart, or the source in brackets, or the number says that the notice is
    temporary or preliminary, or a word for a notice stands with it, far right of the heading.
    """
    if len(line.elements) < 2 or following is None:
        return None
    *before, number = _without_mark(text, line.elements)
    # Dots may lead from the heading to its number.
    if (
        number.kind != "number"
        or not before
        or any(e.kind not in ("words", "bar") for e in before)
    ):
        return None
    heading = text[line.start : number.start].rstrip().lower()
    if _stands_apart(text, line, before, number, following):
        is_opening = True
    elif heading.endswith((". notice", "- notice")):
        opens = following.has("chart") or is_source(text, following)
        goes_on = following.has("passive") or text[following.start : following.end].islower()
        is_opening = opens and not goes_on and len(before) == 1
    else:
        # A number that says that the notice is temporary or preliminary has no chart below it.
        marked = is_marked(text[number.start : number.end])
        heads = _opens_with_chart(following) or (
            not _above(text, line) and _is_in_brackets(text, following)
        )
        is_opening = number.gap and number.start - line.start > _FAR_BEHIND and (marked or heads)
    if not is_opening or is_named(text, line, number):
        return None
    return NoticeOpening(number, len(before), False, None)


def _without_mark(text: str, elements: Sequence[Element]) -> Sequence[Element]:
    """The elements of a line without a full stop or the trade's star at its end."""
    last = elements[-1]
    is_mark = last.kind == "words" and text[last.start : last.end].strip() in ("*", ".")
    return elements[:-1] if is_mark else elements


def _stands_apart(
    text: str, line: Line, before: Sequence[Element], number: Element, below: Line
) -> bool:
    """Whether a word for a notice stands in a column of its own behind the name of waters.

    `QUILL SOUND, NORTH ENTRANCE            Notice 407/2026`, behind a blank line or a rule, or
    above its chart or its source in brackets; not so in a list, of which the line below is another
    row.
    """
    names, noun = list(before), number
    if not (number.gap and text[number.start].isalpha()):
        # `No. 407 of 2026` is all a number; `No. 407/2026` is one behind its noun.
        *names, noun = names
        if not noun.gap or not _NOUN.fullmatch(text[noun.start : noun.end].strip()):
            return False
    if not names:
        return False
    heading = text[names[0].start : names[-1].end]
    plain = _NUMBERED.sub("", heading)
    is_name = heading[:1].isupper() and not any(char.isdigit() for char in plain)
    is_row = len(below.elements) > 1 and below.elements[-1].kind == "number"
    is_row = is_row and not below.has("chart")
    if not is_name or is_row or _OF_PAPERS.search(heading) is not None:
        return False
    above = _above(text, line)
    is_wide = noun.start - names[-1].end >= _FAR_APART
    is_set = _FIRST_PART.split(heading, maxsplit=1)[0].isupper()
    if _opens_with_chart(below) or _is_in_brackets(text, below):
        return is_set or is_wide or not above
    is_sure = is_set and is_wide and _ENDS_IN_NUMBER.search(above) is None
    return is_sure or (not above and (is_set or is_wide))


def _above(text: str, line: Line) -> str:
    """What stands on the line above, nothing where it is blank or a rule."""
    end = max(line.start - 1, 0)
    return text[text.rfind("\n", 0, end) + 1 : end].strip(" \t-=_*~")


def _opens_with_chart(line: Line) -> bool:
    return bool(line.elements) and line.elements[0].kind == "chart"


def _is_in_brackets(text: str, line: Line) -> bool:
    """Whether a line opens with a bracket, as that of the source does: `(from the pilots)`."""
    return text[line.start : line.end].lstrip().startswith("(") and not line.has("point", "half")


def heading_before(text: str, elements: Sequence[Element]) -> list[Element]:
    """The words before the number behind a heading, without the word `Notice` at their end."""
    *kept, last = elements
    if kept and last.gap and _NOUN.fullmatch(text[last.start : last.end].strip()):
        return kept
    words = text[last.start : last.end].rstrip()
    if words.lower().endswith("notice"):
        last = last._replace(end=last.start + len(words) - len("notice"))
    return [*kept, last]
