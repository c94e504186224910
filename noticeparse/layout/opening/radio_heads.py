"""The heads of radio warnings: what may stand behind the number on its line."""

from __future__ import annotations

import re

from noticeparse.layout.line.elements import Element, Line

_NO_SERIES = frozenset("cancel cancels ref refer reference see in from of and to further".split())


# `(issued 021510 UTC FEB 26) Chart 210`, `of 2 February 2026, 1510 UTC`: when, and what charts.
_DATES = (
    r"(?:[0-9]{6} ?(?:UTC|Z|GMT|LT)? [A-Za-z]{3,9}\.? [0-9]{2,4}|(?:[0-9]{4} ?(?:UTC|Z|GMT|LT)?,? "
    r"(?:on )?)?[0-9]{1,2} [A-Za-z]{3,9}\.? [0-9]{4}(?:,? (?:at )?[0-9]{4} ?(?:UTC|Z|GMT|LT)?)?)"
)
_ISSUED = re.compile(
    rf"[ .,:;-]{{0,4}}(?:\([^()\n]{{3,60}}\)|(?:(?:issued|dated|of|at|on|from) ){{0,2}}{_DATES})?"
    r"[ .,:;-]{0,4}(?:\(?charts? (?:nos?\.? )?[A-Z]{0,3}[0-9]{1,6}[0-9A-Z ,&]{0,40}"
    r"(?: and [A-Z]{0,3}[0-9]{1,6})?\)?)?[ .]{0,2}",
    re.IGNORECASE,
)


def opens_message(text: str, words: str, line: Line, number: Element) -> bool:
    """Whether the message itself stands behind the number: `COASTAL WARNING 41/26 QUILL SOUND`.

    In small letters its date and its charts alone, or the message behind a sign: `…: Quill Sound`.
    """
    if not words or words.split()[0].lower() in _NO_SERIES:
        return False
    behind = text[number.end : line.end]
    told = behind.lstrip(" .:-")
    if words.isupper() and told[:1].isupper() and told.split()[0].isupper():
        return True
    named = [
        word for word in words.split() if word.lower() not in ("of", "the", "no.", "no", "nr")
    ]
    if not all(word[0].isupper() for word in named):
        return False
    issued = _ISSUED.match(behind)
    rest = behind[issued.end() :].strip() if issued else behind
    if not rest:
        return True
    above = text[text.rfind("\n", 0, max(line.start - 1, 0)) + 1 : line.start].strip()
    is_sign = issued is not None and issued.group().rstrip()[-1:] in (".", ":", "-")
    return is_sign and rest[:1].isupper() and above[-1:] in ("", ".")


_WITHOUT_YEAR = re.compile(
    r"(?P<series>[A-Z][A-Za-z .-]{0,50}?)(?: (?:no\.?|nr\.?|number))? (?P<number>[0-9]{1,5})[.:]?",
    re.IGNORECASE,
)
_ENDS_SERIES = re.compile(r"(?:warning|navwarn|navtex|navarea(?: [ivx]{1,5})?)\Z", re.IGNORECASE)


def number_without_year(words: str) -> tuple[int, int] | None:
    """Where the number stands in the bare head of a radio warning: `COASTAL WARNING 31`.

    `CANCEL COASTAL WARNING 31` and `See coastal warning 31` only speak of one.
    """
    found = _WITHOUT_YEAR.fullmatch(words.rstrip())
    if found is None or not words[0].isupper() or not _ENDS_SERIES.search(found["series"]):
        return None
    is_spoken_of = any(word.lower() in _NO_SERIES for word in found["series"].split())
    return None if is_spoken_of else found.span("number")
