"""A notice named by its number: `2417(T)/26`, `T 1234/25`, `No. 41 of 2026`."""

from __future__ import annotations

import re
from functools import cache, lru_cache
from typing import Any, NamedTuple

from lark import Token
from lark.exceptions import LarkError

from noticeparse import grammar
from noticeparse.readers.dates import full_year
from noticeparse.records.reference import NoticeRef, NoticeStatus

_MARKS: dict[NoticeStatus, str] = {"temporary": "(T)", "preliminary": "(P)"}


class _Callbacks:
    def mark(self, token: Token) -> NoticeStatus:
        return "temporary" if token.type == "TEMPORARY" else "preliminary"

    def number(self, *parts: Any) -> tuple[str, str, NoticeStatus]:
        figures = year = ""
        status: NoticeStatus = "permanent"
        for part in parts:
            if not isinstance(part, Token):
                status = part
            elif part.type == "FIGURES":
                figures = str(part)
            else:
                year = str(part)
        return figures, year, status


@cache
def _parser() -> grammar.PhraseParser:
    return grammar.build("number", "number", callbacks=_Callbacks())


class HeadNumber(NamedTuple):
    """The number at the head of a notice, and whether its year is written there."""

    notice: NoticeRef
    is_dated: bool


class _Written(NamedTuple):
    number: int
    year: int | None
    status: NoticeStatus
    figures_of_year: str

    @property
    def is_dated(self) -> bool:
        return bool(self.figures_of_year)

    def ref(self) -> NoticeRef:
        return NoticeRef(number=self.number, year=self.year, status=self.status)

    def turned(self) -> _Written:
        """The number behind its year: `2026/41`."""
        return self._replace(number=int(self.figures_of_year), year=self.number)


@lru_cache(maxsize=4096)
def read_number(text: str, near: int | None) -> NoticeRef | None:
    """The notice named by `text`, or None; `near` is the edition's year, for two-figure years."""
    written = _read(text, near)
    if written is None or not written.is_dated:
        return None
    if near is not None and _is_near(written.number, near):
        # Nobody names a notice of a year to come, or of so long ago.
        year = written.year or near
        if year > near + 1 or year < near - _OLDEST:
            return written.turned().ref()
    return written.ref()


@lru_cache(maxsize=4096)
def read_head_number(text: str, edition_year: int | None) -> HeadNumber | None:
    """The number of a notice; its year may be left out, and is then that of the edition."""
    written = _read(text, edition_year)
    if written is None:
        return None
    if not written.is_dated:
        return HeadNumber(written._replace(year=edition_year).ref(), False)
    if edition_year is not None and _is_near(written.number, edition_year):
        # The notices of an edition are of its year.
        is_near = written.year is not None and _is_near(written.year, edition_year)
        written = written if is_near else written.turned()
    return HeadNumber(written.ref(), True)


_YEARS_LATER = 15
_OLDEST = 20
"""Years for which notices are still named."""
_YEAR_BEFORE = re.compile(r"(?<![0-9])(?:19|20)[0-9]{2}[/-][0-9]{1,2}(?![0-9])")


def is_year_doubtful(text: str, ref: NoticeRef, near: int | None) -> bool:
    """Whether number and year may stand the other way round: `2026/25`, or a year to come."""
    if ref.year is None:
        return False
    if near is None:
        # `2026/17`: nobody says whether it is the year that stands first.
        is_later = 0 <= ref.number - ref.year <= _YEARS_LATER
        return is_later and _YEAR_BEFORE.search(text) is not None
    return ref.year > near + 1 or (
        _is_near(ref.number, near) and _YEAR_BEFORE.search(text) is not None
    )


def mark_of_number(number: str | None) -> NoticeStatus | None:
    """What a number says of its notice, temporary or preliminary, by its mark: `40(T)/26`."""
    head = read_head_number(number, None) if number else None
    return None if head is None or head.notice.status == "permanent" else head.notice.status


def is_marked(number: str | None) -> bool:
    """Whether a number says that its notice is temporary or preliminary."""
    return mark_of_number(number) is not None


def _is_near(number: int, year: int) -> bool:
    return abs(number - year) <= 1


def _read(text: str, near: int | None) -> _Written | None:
    plain = text.strip()
    if plain[:1] + plain[-1:] in ("()", "[]"):
        plain = plain[1:-1].strip()
    told = _YEAR_TOLD.search(plain)
    parts = _parts(plain[: told.start()] if told else plain)
    if parts is None:
        return None
    figures, year, status = parts
    if told and near is not None and not year:
        year = str(near - (told[1].lower() in ("last", "the previous")))
    full = full_year(year, near) if year else None
    return _Written(int(figures), full, status, year)


@lru_cache(maxsize=4096)
def _parts(plain: str) -> tuple[str, str, NoticeStatus] | None:
    """Number, year and mark as written; the same number is read with and without a year beside."""
    try:
        parts: tuple[str, str, NoticeStatus] = _parser().parse(plain)
    except LarkError:
        return None
    return parts


_YEAR_TOLD = re.compile(
    r" of (this|last|the (?:same|current|present|previous)) year$", re.IGNORECASE
)
"""`402(T) of this year`: of the year of the edition, or the one before it."""


def status_in_words(words: str) -> NoticeStatus | None:
    """What words beside a number say of its notice: `(TEMPORARY)`, `Preliminary Notice`."""
    plain = words.lower().strip(" ()[].,:*-")
    for noun in (" notice to mariners", " notices to mariners", " notice"):
        plain = plain.removesuffix(noun)
    return _IN_WORDS.get(plain)


class HeadingMark(NamedTuple):
    """What a heading says of its notice, and how long it is without the words that say so."""

    status: NoticeStatus | None
    length: int


@lru_cache(maxsize=4096)
def mark_of_heading(words: str) -> HeadingMark:
    """The mark that is a heading, or ends it: `(TEMPORARY)`, `Quill Sound - Works (T)`."""
    if (status := status_in_words(words)) is not None:
        return HeadingMark(status, 0)
    found = _AT_THE_END.search(words)
    if found is not None and not _OF_ANOTHER.search(words, 0, found.start()):
        return HeadingMark(_first_word(found.group()), found.start())
    within = _WITHIN.search(words)
    return HeadingMark(_first_word(within[0]) if within else None, len(words))


def _first_word(mark: str) -> NoticeStatus | None:
    word = _LETTERS.search(mark)
    return status_in_words(word[0]) if word else None


_LETTERS = re.compile("[A-Za-z]+")


def without_mark(text: str, piece: tuple[int, int]) -> tuple[int, int]:
    """The stretch of a heading without the mark that opens or ends it: `(T)  QUILL SOUND`."""
    start, end = piece
    length = mark_of_heading(text[start:end]).length
    opening = _AT_THE_START.match(text, start, start + length)
    return opening.end() if opening else start, start + length


_AT_THE_START = re.compile(
    r" ?[(\[](?:T|P|(?i:temp(?:orary)?\.?|prelim(?:inary)?\.?))[)\]][ .:–-]{0,8}(?! ?[0-9])"
    r"|[ :|*-]{0,3}(?:TEMP|PRELIM) (?=[A-Z][a-z])"
)
_AT_THE_END = re.compile(
    r"(?:[(\[](?:T|P|(?i:temp(?:orary)?\.?|prelim(?:inary)?\.?)(?i: notice)?)[)\]]"
    r"|(?<=[.,-] )[TP]|[-.,:;\u2013] (?i:temporary|preliminary)(?i: notice)?"
    r"|[-.,:;\u2013] (?i:temporary)(?i: notice)? (?i:until|till|from) [^.;]{1,60})[ .]*$"
)
_OF_ANOTHER = re.compile(
    r"(?:[0-9]|\b(?:cancel|supersed|replac|revok|annul|withdraw)[a-z]{0,6}\b[^.;]{0,120}[0-9] )$",
    re.IGNORECASE,
)
"""What makes a mark that of another notice: `Quill Sound. Cancels 402(T)/24 and 17(P)`."""
_WITHIN = re.compile(
    r"(?<![0-9])(?<![0-9] )[(\[](?:T|P|(?i:temporary|preliminary))[)\]](?! ?[/-] ?[0-9])"
    r"|^ ?[(\[](?i:t|p)[)\]]|^ ?(?:-[TP](?= )|[TP]\.(?= [A-Z][a-z]))"
    r"|^[ :|*-]{0,3}(?i:temporary|preliminary)(?i: notice)?(?=[.:]| [-\u2013|] )"
    r"|^[ :|*-]{0,3}(?i:temporary|preliminary)(?i: notice)(?= [A-Z])"
    r"|^[ :|*-]{0,3}(?i:temp|prelim)\.(?= (?:[A-Z]{2}|- ))"
    r"|^[ :|*-]{0,3}(?:TEMP|PRELIM)(?= [A-Z][a-z])"
)


def status_of_part(title: str) -> NoticeStatus | None:
    """What the title of a part says of the notices below it: `II. TEMPORARY NOTICES`."""
    found = _OF_PART.search(title)
    return _IN_WORDS[found[1].lower()] if found else None


_OF_PART = re.compile(
    r"^[^A-Za-z]{0,6}(?:(?:part|section) )?(?:[IVX]{1,4}[. :-]{1,4}|[0-9A-Z][. :-]{1,4})?"
    r"(temporary|preliminary)(?: \([TP]\))? (?:notices?|corrections)(?: to mariners)?[ .:-]*$",
    re.IGNORECASE,
)
_IN_WORDS: dict[str, NoticeStatus] = {
    "temporary": "temporary", "t": "temporary", "temp": "temporary", "tmp": "temporary",
    "preliminary": "preliminary", "p": "preliminary", "prelim": "preliminary",
    "prel": "preliminary",
}  # fmt: skip


def notice_id(ref: NoticeRef) -> str:
    """The id of a notice: number, mark, and the last two figures of its year."""
    mark = _MARKS.get(ref.status, "")
    year = "" if ref.year is None else f"/{ref.year % 100:02d}"
    return f"{ref.number}{mark}{year}"
