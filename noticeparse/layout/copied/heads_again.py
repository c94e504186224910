"""Heads said again where a notice goes on over a page: `17/26 Quill Sound (continued)`.

Such a line names the notice or the chart that is open above it, and says nothing more.  What
stands on both sides of it belongs together.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.drafts import ChartDraft, NoticeDraft
from noticeparse.layout.line.elements import Line
from noticeparse.readers.heads import read_parts

_CONTINUED = re.compile(
    r"[ \t]{1,12}(?:- ?)?[(\[]?(?:continued|cont\.?'?d?|ctd)\.?(?: from [^)\]\n]{1,30})?"
    r"[)\]]?[.: ]{0,8}$",
    re.IGNORECASE,
)
_NOUN = re.compile(r"[ \t]{0,12}[(\[]?(?:notice|nm|ntm|no\.?)?[ ]?", re.IGNORECASE)
_LONGEST = 160


def says_head_again(
    text: str, line: Line, notice: NoticeDraft | None, charts: Sequence[ChartDraft]
) -> bool:
    """Whether a line is the head of the open notice or chart, said again on another page."""
    if notice is None or notice.is_radio or line.end - line.start > _LONGEST:
        return False
    if line.has("verb", "point", "half", "label"):
        return False
    found = _CONTINUED.search(text, line.start, line.end)
    if found is None:
        return False
    if line.elements[0].kind == "chart":
        own = [text[slice(*piece)] for one in charts[-1:] for piece in one.head]
        return bool(own) and _charts(text[line.start : found.start()]) == _charts(" ".join(own))
    noun = _NOUN.match(text, line.start)
    start = noun.end() if noun is not None else line.start
    number = (notice.number_words or "").strip()
    return bool(number) and (text.startswith(number, line.start) or text.startswith(number, start))


def _charts(words: str) -> list[str]:
    """The numbers of the charts that words name."""
    return [part.text for part in read_parts(words) if part.kind == "CHART_NUMBER"]
