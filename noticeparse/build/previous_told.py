"""The notice before, told in the sentence that orders the correction.

`The Harbour Master gives notice that chart 802, last amended by Notice 31/26, is corrected as
follows:` stands below a heading which names the chart already, and opens no section of its own.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.layout.drafts import NoticeDraft
from noticeparse.readers.heads import read_head
from noticeparse.stretch import gather

_ORDERS = re.compile(
    r"\b(?:is|are|be|stands?)\s{1,20}(?:(?:hereby|now|therefore|thus|accordingly)\s{1,20})?"
    r"(?:corrected|amended|altered|changed|updated|modified)\b",
    re.IGNORECASE,
)
_NOT = re.compile(r"\b(?:not|no longer|was|were|had been)\b", re.IGNORECASE)


def take_told_previous(context: Context, draft: NoticeDraft, sections: Sequence[Section]) -> None:
    """Give charts without a notice before the one that such a sentence tells of them."""
    without = [one.head for one in sections if one.head.chart and not one.head.previous_written]
    if not without:
        return
    for prose in draft.prose:
        words = gather(context.text, prose.pieces).text
        if _ORDERS.search(words) is None or _NOT.search(words) is not None:
            continue
        for told in read_head(words, context.year).charts:
            for head in without:
                if head.chart == told.chart and not head.previous_written:
                    head.previous = told.previous
                    head.previous_written = told.previous_written
