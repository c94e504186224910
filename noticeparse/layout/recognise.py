"""Recognises the lines that open something: a notice, a chart section, a list of the edition."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from noticeparse.layout.drafts import NoticeDraft
from noticeparse.layout.lines import Element, Line
from noticeparse.readers.editions import read_line_words
from noticeparse.readers.heads import head_kinds, read_parts

# Words that may stand before the number of a notice at the head of it; what else stands there
# names an edition, a list or another notice.
_NOTICE_NOUNS = frozenset(
    {
        "",
        "notice",
        "nm",
        "n.m.",
        "ntm",
        "correction",
        "memorandum",
        "advice",
        "circular",
        "slip",
        "amendment",
        "update",
        "announcement",
        "instruction",
        "advisory",
        "entry",
    }
)
_NUMBER_SIGNS = ("number", "no.", "nos.", "no", "nr.", "nr", "n°", "nº", "#", "id")
_MARKS = " *+#>•[<:.-=~"
_NO_MARKS = frozenset(
    {"SEE", "AND", "FOR", "OF", "TO", "ED", "EDN", "WEEK", "VOL", "PAGE", "LIST"}
)
_SHORT_CELL = 14
_WORDS_OF_ADDRESS = 4
_SERIES_WORDS = ("warning", "navarea", "navtex", "navwarn")


class NoticeOpening(NamedTuple):
    """The number that opens a notice, and what stands before it."""

    number: Element
    at: int
    """The index of the number among the elements of the line."""
    is_original: bool
    series: str | None
    is_radio: bool = False


def notice_opening(text: str, line: Line) -> NoticeOpening | None:
    """The opening of a notice on this line, or None."""
    elements = line.elements
    index = next((i for i, e in enumerate(elements[:4]) if e.kind == "number"), None)
    if index is None:
        return None
    before = [e for e in elements[:index] if e.kind not in ("bar", "rule")]
    if len(before) > 1 and before[-1].gap and before[-2].end - before[0].start <= _SHORT_CELL:
        # The word `NM` or `Notice` opens a cell of its own, behind the letter of a schedule.
        before = before[-1:]
    if any(e.kind not in ("words", "key") for e in before):
        return None
    if _is_list_of_numbers(text, elements[index + 1 :]) or is_named(text, line, elements[index]):
        return None
    words = " ".join(text[e.start : e.end] for e in before).strip()
    plain = words.lower().strip(" |")
    if _names_a_notice(plain) or _is_series_mark(words, elements[:index]):
        starred = plain.startswith("*") or "*" in text[elements[index].start : elements[index].end]
        return NoticeOpening(elements[index], index, starred, None)
    if _names_local_series(words):
        return NoticeOpening(elements[index], index, False, _series(words))
    if index != len(elements) - 1 and not _only_stops(text, elements[index + 1 :]):
        return None
    if any(word in plain for word in _SERIES_WORDS) and "in force" not in plain:
        if plain.startswith(("cancel", "this ")):
            return None
        return NoticeOpening(elements[index], index, False, _series(words), True)
    return None


# A line may break within `last correction 480/26` and `cancels notice 480/26`.
_BREAKS_OFF = frozenset(
    "last previous preceding former notice correction update nm after to by cancels cancelled "
    "previous: notice: last: correction: update:".split()
)


def _names_a_notice(plain: str) -> bool:
    """Whether small letters are a word for a notice, with marks and a sign for its number."""
    # `Notice / Kunngjerd`: the second word says the same in another tongue.
    words = plain.partition(" / ")[0].strip(_MARKS)
    for sign in _NUMBER_SIGNS:
        words = words.removesuffix(sign).strip(_MARKS)
    if words.startswith(("notice to ", "notice for ")):
        # `Notice to mariners`, `Notice to shipping`
        return len(words.split()) <= _WORDS_OF_ADDRESS
    return words in _NOTICE_NOUNS


def _is_series_mark(words: str, before: tuple[Element, ...]) -> bool:
    """Whether the letters by which an office marks its notices open the line: `NTM 190/26`."""
    opens = bool(before) and before[0].gap
    return (
        opens and words.isalpha() and words.isupper() and words not in _NO_MARKS and len(words) < 5
    )


_OF_EDITIONS = frozenset(
    "weekly monthly fortnightly quarterly annual previous last see cancels".split()
)
_SERIES_NOUNS = (_NOTICE_NOUNS | {"item"}) - {
    "", "correction", "update", "amendment", "entry", "slip",
}  # fmt: skip


def _names_local_series(words: str) -> bool:
    """Whether words name the series of a local notice: `Port Notice`, `Local Circular No`."""
    series = _series(words)
    parts = series.lower().removesuffix(" to mariners").split()
    if not 2 <= len(parts) <= 4 or parts[0] in _OF_EDITIONS or not series[0].isupper():
        return False
    return parts[-1] in _SERIES_NOUNS


def _is_list_of_numbers(text: str, rest: tuple[Element, ...]) -> bool:
    """Whether the number is the first of several: `211/26, 213/26 and 216/26`."""
    if not any(e.kind == "number" for e in rest):
        return False
    words = [text[e.start : e.end] for e in rest if e.kind != "number"]
    return all(not word.replace("and", "").strip(" ,.;&") for word in words)


def is_named(text: str, line: Line, number: Element) -> bool:
    """Whether the number is only named: as cancelled, or as the notice before."""
    above = text[text.rfind("\n", 0, max(line.start - 1, 0)) + 1 : line.start].rstrip()
    breaks_off = above.rpartition(" ")[2].lower().lstrip("[(") in _BREAKS_OFF
    opens = number is line.elements[0] and text[number.start - 1 : number.start] not in ("[", "(")
    if opens and not breaks_off:
        # Words or a bracket before the number would name it, `cancelled` behind it does.
        parts = read_parts(text[line.start : line.end])
        return bool(parts) and parts[0].kind == "CANCELS"
    start = line.start - len(above) - 1 if breaks_off else line.start
    words = f"{above} {text[line.start : line.end]}" if breaks_off else text[line.start : line.end]
    at = number.start - start
    return any(
        part.kind in ("CANCELS", "PREVIOUS", "PREVIOUS_IN_BRACKETS")
        and part.start <= at < part.end
        for part in read_parts(words)
    )


def _series(words: str) -> str:
    kept = words.strip()
    for ending in ("No.", "No", "NO.", "NO", "NR", "NR.", "Nr"):
        kept = kept.removesuffix(" " + ending)
    return kept


def _only_stops(text: str, elements: tuple[Element, ...]) -> bool:
    return all(not text[e.start : e.end].strip(" .:") for e in elements)


_DETAILS = frozenset(
    {"PREVIOUS", "PREVIOUS_IN_BRACKETS", "DATUM", "DEPTH_UNIT", "INTERNATIONAL", "NEW_EDITION",
     "EDITION", "PANEL"}
)  # fmt: skip


def is_chart_details(words: str, *, breaks_off: bool) -> bool:
    """Whether words go on with a chart head: previous notice, datum, unit, and little else.

    Where the head above breaks off, another chart may follow too.
    """
    kinds = head_kinds(words)
    if not kinds & _DETAILS:
        return False
    strange = {"OTHER_WORDS", "OTHER", "CHART_WORD"}
    if not breaks_off:
        strange.add("CHART_NUMBER")
    elif "DATUM" in kinds or "PREVIOUS" in kinds:
        strange -= {"OTHER_WORDS"}
    return not kinds & strange


def is_chart_number(words: str) -> bool:
    """Whether words are a chart number and nothing else."""
    parts = read_parts(words)
    return len(parts) == 1 and parts[0].kind == "CHART_NUMBER" and parts[0].text == words


def opens_titled_chart(words: str) -> int:
    """The length of the chart number that opens a chart's title and edition, or 0.

    `802 - Quill Sound - Edition 4 - 12 June 2020`, `805 (INT 9805) - Approaches - WGS84`.
    """
    number, _, rest = words.partition(" ")
    if not is_chart_number(number) or not rest.lstrip().startswith(("-", "(INT", "INT ")):
        return 0
    kinds = head_kinds(rest)
    told = kinds & {"EDITION", "DATUM", "INTERNATIONAL", "PREVIOUS"}
    return len(number) if len(told) > 1 or "EDITION" in kinds else 0


def is_details_line(text: str, line: Line) -> bool:
    """Whether a whole line is details of a chart."""
    if line.has("point", "half", "verb", "reference", "passive"):
        return False
    return is_chart_details(text[line.start : line.end], breaks_off=False)


_PANELS = frozenset({"PANEL", "MAIN_PANEL"})


def names_panel(words: str) -> bool:
    """Whether words of a head name a panel, plan or inset."""
    return not head_kinds(words).isdisjoint(_PANELS)


def is_panel_line(text: str, line: Line) -> bool:
    """Whether a whole line names a panel or the main chart: `PLAN B, QUILL BASIN`."""
    if any(element.kind not in ("words", "label", "chart") for element in line.elements):
        return False
    parts = read_parts(text[line.start : line.end])
    solid = [part for part in parts if part.kind not in ("STOP", "COMMA")]
    if not solid or solid[0].kind not in _PANELS:
        return False
    words = [part for part in solid[1:] if part.kind == "OTHER_WORDS"]
    return len(words) == len(solid) - 1 <= _WORDS_OF_ADDRESS and all(
        w.text[0].isupper() for w in words
    )


def names_charts(text: str, line: Line) -> bool:
    """Whether a sentence of the head names charts: `This notice applies to chart No 52`.

    `Chart 52 is to be corrected as follows` names one too.
    """
    if line.has("point", "half", "verb", "reference"):
        return False
    told = [text[e.start : e.end] for e in line.elements if e.kind == "passive"]
    if not all(tells_of_charts(words) for words in told):
        return False
    parts = read_parts(text[line.start : line.end])
    return any(
        part.kind == "CHART_WORD" and following.kind == "CHART_NUMBER"
        for part, following in pairwise(parts)
    )


def tells_of_charts(passive: str) -> bool:
    """Whether a passive is what is done with charts, not with what they show."""
    return passive.rstrip().lower().endswith("corrected")


def is_source(text: str, line: Line) -> bool:
    """Whether this line names the source of the information."""
    words = read_line_words(text[line.start : line.end])
    return bool(words.parts) and words.parts[0][0] == "SOURCE" and not line.has("point", "verb")


def has_star(text: str, rest: Sequence[Element]) -> bool:
    """Whether the trade's star for information first published here follows the number."""
    return bool(rest) and text[rest[0].start : rest[0].end].lstrip(" .").startswith("*")


def goes_on_heading(text: str, notice: NoticeDraft, words: str, *, behind_blank: bool) -> bool:
    """Whether words below the number of a notice are, or go on with, its heading."""
    if notice.is_radio:
        return False
    if not notice.heading:
        return True
    if behind_blank:
        return False
    start, end = notice.heading[-1]
    last = text[start:end].rstrip()
    return last.endswith(("-", ",", " and")) or (words.isupper() and not last.endswith("."))


def is_head_of_card(text: str, rest: Sequence[Element]) -> bool:
    """Under a chart head: whether the words behind a number are details of the chart."""
    if not rest:
        return False
    return is_chart_details(text[rest[0].start : rest[-1].end], breaks_off=False)


def closes_bracket(above: str, words: str) -> bool:
    """Whether words close a bracket that the line above has left open."""
    return any(above.count(a) > above.count(b) and b in words for a, b in ("()", "[]"))
