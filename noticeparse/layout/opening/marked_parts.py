"""What stands above notices and says that they are temporary or preliminary.

`TEMPORARY NOTICES` is said of all notices of its part.  `TEMPORARY` alone right above the head of
one is said of that one, and perhaps of those below it; `TEMPORARY AND PRELIMINARY NOTICES` tells
not which are which, where their numbers do not.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.drafts import Piece
from noticeparse.layout.line.elements import Line
from noticeparse.layout.opening.notice_openings import notice_opening
from noticeparse.readers.references import status_in_words, status_of_part
from noticeparse.records.reference import NoticeStatus

_ALONE = re.compile(
    r"(?:[(\[](?:T|P)[)\]]|[(\[]?(?:temporary|preliminary)(?: notices?| corrections?)?[)\]]?"
    r"|TEMP\.?|PRELIM\.?)[.:]?",
    re.IGNORECASE,
)
_BOTH = re.compile(
    r"(?:(?:part|section)[ ])?(?:(?:[IVX]{1,4}|[0-9]{1,2}|[A-Z])[. :)-]{1,4})?"
    r"(?:temporary|\(?T\)?) ?(?:and|&|/|,) ?(?:preliminary|\(?P\)?)"
    r"(?: notices?| corrections?)(?: to mariners)?[.:]?",
    re.IGNORECASE,
)
_LONGEST = 80


class PartMark:
    """The mark that the title of the open part gives to the notices below it."""

    def __init__(self) -> None:
        self._status: NoticeStatus | None = None
        self._title: Piece | None = None
        self._is_of_all = True

    def end_part(self, text: str, title: Piece) -> None:
        """Another part begins with this title."""
        words = text[slice(*title)].strip()
        status = status_of_part(words)
        self._is_of_all = status is not None
        self._status = status or _alone(words)
        is_told = self._status is not None or _BOTH.fullmatch(words) is not None
        self._title = title if is_told and not self._is_of_all else None

    def of_next(self) -> tuple[NoticeStatus | None, Piece | None]:
        """The status of the notice that is opened now, and the title that gives it, or may."""
        if self._is_of_all or self._status is None:
            return self._status, self._title
        status, self._status = self._status, None
        return status, self._title


def _alone(words: str) -> NoticeStatus | None:
    if _ALONE.fullmatch(words) is None:
        return None
    said = words.strip(".:").removesuffix("corrections").removesuffix("CORRECTIONS").strip()
    return status_in_words(said.lower().removesuffix(" correction").removesuffix(" notices"))


def is_title_of_marked(text: str, line: Line, below: Sequence[Line]) -> bool:
    """Whether a line alone gives the notice that opens right below it its mark, or may give it."""
    if line.end - line.start > _LONGEST or line.has("number", "chart", "point", "verb"):
        return False
    words = text[line.start : line.end].strip()
    if _ALONE.fullmatch(words) is None and _BOTH.fullmatch(words) is None:
        return False
    following = next((one for one in below if one.elements and not one.is_blank), None)
    return following is not None and notice_opening(text, following) is not None
