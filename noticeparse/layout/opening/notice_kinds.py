"""What an open notice says of itself, and what is said behind all of them."""

from __future__ import annotations

import re

from noticeparse.layout.drafts import NoticeDraft
from noticeparse.readers.references import is_marked, mark_of_heading

_NO_CHART = re.compile(
    r"(?:charts?|sheets?)(?: ?nos?\.?)?(?: (?:affected|concerned|touched|(?:to be )?corrected))?"
    r"\s{0,12}[:.=-]\s{0,12}(?:none|nil|no charts?|not applicable|n/a|-{1,3})\.?"
    r"|no charts?"
    r"(?: (?:(?:is|are) )?(?:affected|concerned|touched|corrected))?\.?",
    re.IGNORECASE,
)


def names_no_chart(words: str) -> bool:
    """Whether a line says that a notice is for no chart: `Charts affected: none`."""
    return _NO_CHART.fullmatch(words) is not None


def _is_headed_so(words: str) -> bool:
    """Whether a heading ends so: `Quill Sound: pilots - no charts`."""
    return names_no_chart(words.rpartition(" - ")[2].strip())


_SIGNS = re.compile(
    r"(?:(?:rules?|list|meaning|explanations?|use|key|table) (?:of|to) )?(?:the )?"
    r"(?:signs|symbols|abbreviations|conventions)(?: used(?: (?:in|on) th(?:is|e) [a-z]{3,12})?)?"
    r"[:.]?|how to read this [a-z]{3,12}[:.]?",
    re.IGNORECASE,
)


def explains_signs(words: str) -> bool:
    """Whether a line is the title of what explains the signs of a bulletin."""
    return _SIGNS.fullmatch(words) is not None


def is_temporary(text: str, notice: NoticeDraft | None) -> bool:
    """Whether a notice is temporary or preliminary, by its number or by words."""
    if notice is None:
        return False
    said = [mark_of_heading(text[slice(*one)]).status for one in notice.heading]
    return bool(notice.status) or any(said) or is_marked(notice.number_words)


def is_for_none(text: str, notice: NoticeDraft | None) -> bool:
    """Whether a notice is for no chart, by a line of its own or by its heading."""
    if notice is None:
        return False
    return notice.is_for_none or any(_is_headed_so(text[slice(*one)]) for one in notice.heading)
