"""Page furniture: heads and feet of pages, rules, quote marks of mail, message marks.

A line is furniture where it says so itself (`page 4`, `- 2 -`, a rule), or where it says again,
but for its figures, what a line beside a page mark or at the top of the text said.  It is counted
as ignored; what stands on both sides of it belongs together.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.layout.column.title_rows import read_titles
from noticeparse.layout.copied.continued_heads import continued_heads
from noticeparse.layout.copied.mail import rows_of_mail
from noticeparse.layout.copied.page_numbers import (
    PageNumbers,
    goes_on_with_cell,
    is_number_with_page,
)
from noticeparse.layout.copied.paper_numbers import paper_numbers
from noticeparse.layout.copied.titles_again import counted_pages, said_at_top, titles_again
from noticeparse.layout.copied.web_links import lines_of_links
from noticeparse.layout.evidence import lead_index
from noticeparse.layout.line.element_kinds import ElementKind
from noticeparse.layout.line.elements import Line
from noticeparse.layout.opening.notice_openings import notice_opening
from noticeparse.layout.opening.recognise import is_details_line, is_row_of_chart
from noticeparse.readers.editions import read_line_words
from noticeparse.readers.features import has_kind, value_property
from noticeparse.readers.heads import head_kinds

_SOMETHING: tuple[ElementKind, ...] = (
    "point", "half", "reference", "label", "verb", "passive", "chart", "semicolon", "key",
)  # fmt: skip
LEFT_OUT = "#|"
"""Opens a line of the canonical layout that tells what it leaves out: no action is read there."""
_LEFT_OUT = re.compile(rf"[> \t]{{0,40}}{re.escape(LEFT_OUT)}")
_FEET = frozenset(
    ("end", "eof", "not", "no ", "cou", "row", "rec", "ent", "tot", "pri", "exp", "gen", "ext",
     "que", "mes", "sig", "tel", "tex")
)  # fmt: skip
"""How the feet of exports begin."""
_COUNT_OF_ROWS = re.compile(r"[0-9]{1,6} [re]", re.IGNORECASE)
"""`24 rows`, `12 entries`: so do others."""
_WITH_YEAR = re.compile(r"/|(?:of(?: the year)?|,) ?(?:19|20)[0-9]{2}$", re.IGNORECASE)
"""In the number of an edition: `Week 19, 2026`, `No 6 of 2026`."""
_LONGEST_TABLE = 60
"""Rows below titles among which a line is looked for."""
_SHORTEST = 10
"""Characters of a line that may be said again at each page."""
_MOST_KNOWN = 1000
_LINES_OF_PLACE = 5
"""Lines below a place that may tell of several things at it."""
_STATUS = re.compile(r"\([tp]\)")
"""Of a notice number, `2447(T)/26`: figures like the others of a list."""
_FIGURES = str.maketrans("0123456789", "##########")


def is_left_out(text: str, line: Line) -> bool:
    """Whether a line tells what the canonical layout leaves out, quoted in mail or not."""
    return _LEFT_OUT.match(text, line.start, line.end) is not None


def stays_left_out(text: str, line: Line, goes_on: bool) -> bool:
    """Whether a line is left out; one that mail has wrapped goes on without the mark."""
    if line.is_blank or is_left_out(text, line):
        return not line.is_blank
    return goes_on and line.elements[lead_index(line)].kind != "verb"


class Furniture(NamedTuple):
    """The indexes of lines that are page furniture, and the shapes that are so again."""

    lines: set[int]
    shapes: frozenset[str]


def find_furniture(
    text: str,
    lines: Sequence[Line],
    known: frozenset[str] | None = None,
    rows: frozenset[int] = frozenset(),
) -> Furniture:
    """The page furniture of a text.

    Of a part that follows others `known` holds the shapes from these; it has no head of its own.
    `rows` are those that a file shows at the head or foot of a page, figures or not.
    """
    candidates = {
        index: _shape(text, line) for index, line in enumerate(lines) if _may_be(text, line)
    }
    counts = Counter(candidates.values())
    heads = {
        index
        for index, shape in candidates.items()
        if counts[shape] > 1 and len(shape) >= _SHORTEST and not has_kind(shape)
    }
    pages = PageNumbers(text, lines, heads, known or frozenset())
    marks = {index for index in candidates if _is_mark(text, lines[index], pages.holds(index))}
    marks |= {index for index, line in enumerate(lines) if is_number_with_page(text, line)}
    marks |= counted_pages(text, lines, candidates)
    head = _first_head(text, lines) if known is None else 0
    top = {candidates[index] for index in candidates if index < head}
    shapes = top | (known or set()) | pages.forms
    shown = {index for index in candidates if lines[index].row in rows}
    found = marks | shown | rows_of_mail(text, lines, head)
    found |= titles_again(text, lines) if known is None else set()
    found |= said_at_top(text, lines, head, marks)
    found |= set(lines_of_links(text, lines)) | continued_heads(text, lines)
    paper = paper_numbers(text, lines, known)
    found |= paper.lines
    shapes |= paper.told
    for index, shape in candidates.items():
        beside = any(near in marks for near in range(index - 3, index + 4))
        is_front = index < head and not (beside and counts[shape] > 1)
        if index in marks or is_front or len(shape) < _SHORTEST:
            continue
        is_known = known is not None and shape in known
        # Rows of bare figures differ in what they say, however alike they look.
        has_letters = any(char.isalpha() for char in _STATUS.sub("", shape))
        is_told = is_known or (counts[shape] > 1 and (beside or shape in top))
        is_of_item = _is_below_place(text, lines, index) or _goes_on_with_thing(text, lines[index])
        again = has_letters and is_told and not is_of_item
        named = beside and _names_edition(text, lines[index])
        if named and index and notice_opening(text, lines[index - 1]) is not None:
            # Right below its number stands the heading of a notice.
            continue
        if (again or named) and not _is_row(text, lines, index):
            found.add(index)
            if len(shapes) < _MOST_KNOWN:
                shapes.add(shape)
    return Furniture(found, frozenset(shapes))


def _goes_on_with_thing(text: str, line: Line) -> bool:
    """Whether a line begins small and names a thing: the rest of an item, told twice."""
    words = text[line.start : line.end].strip()
    return words[:1].islower() and has_kind(words)


def _is_below_place(text: str, lines: Sequence[Line], index: int) -> bool:
    """Whether a line is a feature at the place above or right below it, however often named."""
    if goes_on_with_cell(lines, index):
        return True
    if not has_kind(text[lines[index].start : lines[index].end]):
        return False
    below = lines[index + 1] if index + 1 < len(lines) else None
    if below is not None and below.elements and below.elements[0].kind in ("point", "half"):
        return True
    for above in reversed(lines[max(0, index - _LINES_OF_PLACE) : index]):
        if above.is_blank or above.has("rule"):
            return False
        if above.has("point", "half"):
            return not has_kind(text[above.start : above.end])
    return False


def _is_row(text: str, lines: Sequence[Line], index: int) -> bool:
    """Whether a line stands right below titles of columns: `5410   1 to 5   77/2026   WGS 84`."""
    is_below_rule = False
    for above in reversed(lines[max(index - _LONGEST_TABLE, 0) : index]):
        if read_titles(text, above) is not None:
            return True
        if above.is_blank or is_below_rule:
            return False
        # A rule may stand between the titles and their rows.
        is_below_rule = above.has("rule")
    return False


def _names_edition(text: str, line: Line) -> bool:
    """Whether a line says which edition it stands in, as the head of a page does."""
    words = read_line_words(text[line.start : line.end])
    number = words.first("EDITION_NUMBER", "YEAR_AND_NUMBER")
    is_dated = number is not None and _WITH_YEAR.search(number) is not None
    return is_dated and words.plain_words <= 8


def _may_be(text: str, line: Line) -> bool:
    """Whether nothing on the line says that it is more than furniture."""
    if not line.elements or line.end - line.start > 160:
        return False
    if _is_foot(text, line):
        return True
    return not (
        line.has(*_SOMETHING)
        or notice_opening(text, line) is not None
        or is_details_line(text, line)
        or is_row_of_chart(text, line)
        or (line.has("number") and "CANCELS" in head_kinds(text[line.start : line.end]))
        or read_titles(text, line) is not None
        or _tells_values(text, line)
    )


def _is_foot(text: str, line: Line) -> bool:
    """Whether a line ends an export or counts its rows: `END OF EXPORT   4 CHARTS QUERIED`."""
    if line.has("point", "half", "reference"):
        return False
    words = text[line.start : line.end].strip()
    if line.elements[0].kind == "rule":
        return _UNDER_RULE.fullmatch(words) is not None and not line.has("verb", "chart")
    bare = words.lstrip("*=<-( ")
    # Most lines open with nothing of the kind, and are not read for it.
    may_be = bare[:3].lower() in _FEET or _COUNT_OF_ROWS.match(bare) is not None
    return may_be and read_line_words(words).first("FOOT") is not None


_PAGE_OF = re.compile(r"(?:page|pg\.?|p\.) ?[0-9]{1,3} ?(?:of|/) ?[0-9]{1,3}", re.IGNORECASE)


def _tells_values(text: str, line: Line) -> bool:
    """Whether a line is nothing but values of a feature: `sectors R 250°-303°,`."""
    words = text[line.start : line.end].strip()
    if not any(char.isdigit() for char in words) or not any(char.isalpha() for char in words):
        return False
    if _PAGE_OF.fullmatch(words) is not None:
        # With its capital the word looks like a name.
        return False
    roles = value_property(words)
    return bool(roles) and not roles & {"kind", "unknown", "name"}


_UNDER_RULE = re.compile(
    r"[-=_]{8,200} {1,20}[A-Z][A-Za-z. ,-]{1,50}[0-9]{1,4}/[0-9]{2,4}"
    r"(?: {1,20}- ?|, ?| {1,20})(?:page |p\.? ?)?[0-9]{1,4}(?: ?-)?",
    re.IGNORECASE,
)
"""A rule that ends in the edition and its page: `------ Weekly Edition 26/26 - 2`."""


def _first_head(text: str, lines: Sequence[Line]) -> int:
    for index, line in enumerate(lines[:40]):
        if line.has("chart", "verb") or notice_opening(text, line) is not None:
            return index
    return min(len(lines), 12)


def _shape(text: str, line: Line) -> str:
    return " ".join(text[line.start : line.end].translate(_FIGURES).lower().split())


_DASHED_BESIDE = re.compile(
    r"- [0-9]{1,3} - {5,160}(?P<behind>[A-Z][^0-9\n]{2,60})$"
    r"|(?P<before>[A-Z][^0-9\n]{2,60}\S) {5,160}- [0-9]{1,3} -$"
)
"""The number of a page, and the title of the paper far from it: `- 3 -     Southern Sector`."""


_RULED = re.compile(r"^[-=_*~]{3,160} | [-=_*~]{2,160}$")
"""A rule on the line of the page number: `------------- page 2 --`."""
_TOP = 400
"""Characters in which the title of a paper stands."""


def _is_mark(text: str, line: Line, is_page: bool | None) -> bool:
    """Whether a line is a rule, a page number or the mark of a message.

    Of a lone figure its neighbours have told whether it `is_page`.
    """
    if line.has_only("rule", "bar"):
        return True
    if is_page is not None:
        return is_page
    written = text[line.start : line.end].strip()
    beside = _DASHED_BESIDE.match(written) if "- " in written or " -" in written else None
    title = beside and (beside["behind"] or beside["before"])
    if title and (title.lower() in text[: min(line.start, _TOP)].lower() or not has_kind(title)):
        return True
    words = read_line_words(_RULED.sub("", written).strip(" |"))
    kinds = {kind for kind, _ in words.parts}
    if "PAGE_FIGURE" in kinds:
        # At the left edge a lone figure is more than a page number.
        return not words.parts[0][1].strip().isdigit()
    is_foot = bool(kinds & {"MESSAGE_MARK", "MAIL_HEAD", "FOOT"}) or "PAGE" in kinds
    return is_foot or (line.elements[0].kind == "rule" and _is_foot(text, line))


_RUNNING_HEAD = re.compile(
    r"notices? to mariners(?! (?:are|should|must|is|will)\b).{0,60}", re.IGNORECASE
)


def is_running_head(text: str, line: Line) -> bool:
    """Whether a line is the head of a page that stands once: `Notices to Mariners - No 12`."""
    if not line.has_only("words"):
        return False
    words = text[line.start : line.end].strip()
    return _RUNNING_HEAD.fullmatch(words) is not None and not words.endswith(".")
