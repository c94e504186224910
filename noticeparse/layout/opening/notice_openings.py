"""Recognises the lines that open a notice, and numbers that only speak of one."""

from __future__ import annotations

import re
from typing import NamedTuple

from noticeparse.layout.line.elements import Element, Line, words_of
from noticeparse.layout.opening.before_numbers import (
    behind_count,
    behind_day,
    behind_no_chart,
    first_number,
    words_of_number,
)
from noticeparse.layout.opening.goes_on import leads_to_notice
from noticeparse.layout.opening.number_lists import is_list_of_numbers
from noticeparse.layout.opening.orders import heads_order
from noticeparse.layout.opening.pointers import goes_on_below_head, is_reference, names_another
from noticeparse.layout.opening.radio_heads import number_without_year, opens_message
from noticeparse.layout.opening.recognise import is_source
from noticeparse.readers.heads import head_kinds, opening_kind, read_parts
from noticeparse.readers.references import status_in_words
from noticeparse.records.reference import NoticeStatus

# Words that may stand before the number of a notice at the head of it; what else stands there
# names an edition, a list or another notice.
_NOTICE_NOUNS = frozenset(
    {
        "",
        "notice",
        "note",
        "item",
        "nm",
        "n.m.",
        "ntm",
        "correction",
        "memorandum",
        "advice",
        "circular",
        "gazette",
        "slip",
        "amendment",
        "update",
        "announcement",
        "instruction",
        "advisory",
        "entry",
        "record",
    }
)
_ADDRESSED = tuple(
    f"{noun} {link} "
    for noun in ("notice", "advice", "advisory", "announcement", "circular", "information")
    for link in ("to", "for")
)
_NUMBERED_NOUNS = ("order", "card")
"""Words for a notice where a sign for its number follows: `Order No. 41 of 2026`."""
_OF_CHARTS = frozenset("chart charts hydrographic nautical navigational".split())
_NUMBER_SIGNS = ("number", "no.", "nos.", "no", "nr.", "nr", "n°", "nº", "#", "id")
_MARKS = " *+#>•([<:.-=~"
_NO_MARKS = frozenset(
    {"SEE", "AND", "FOR", "OF", "TO", "ED", "EDN", "WEEK", "VOL", "PAGE", "LIST"}
)
_LETTER = 4000
"""Characters within which a letter names again the notice of its subject."""
_SUBJECT = re.compile(r"[ \t>]{0,8}(?:subject|re|fwd?) ?: ", re.IGNORECASE)
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
    status: NoticeStatus | None = None


def notice_opening(text: str, line: Line) -> NoticeOpening | None:
    """The opening of a notice on this line, or None."""
    elements = line.elements
    index = first_number(elements)
    if index is None:
        return _warning_without_year(text, line)
    if _goes_on(text, line, elements[index]) or is_source(text, line):
        return None
    number = text[elements[index].start : elements[index].end]
    is_subject = _SUBJECT.match(text, line.start, line.end) is not None
    if is_subject and number in text[line.end : line.end + _LETTER]:
        # The subject of a letter names the notice that the letter then holds.
        return None
    before = words_of_number(text, elements, index)
    if len(before) > 1 and before[0].kind == "label" and _is_parted(text, elements[index:]):
        # `1. NOTICE 44/26 / QUILL SOUND`: the paragraph of a message.
        before = before[1:]
    if any(e.kind not in ("words", "key") for e in before):
        return None
    if _is_spoken_of(text, elements[index + 1 :]):
        return None
    if is_list_of_numbers(text, elements[index + 1 :]) or is_named(text, line, elements[index]):
        return None
    words = behind_count(behind_no_chart(behind_day(words_of(text, before).strip())))
    plain = words.lower().strip(" |")
    status = _status_before(plain)
    if status is not None:
        return NoticeOpening(elements[index], index, False, None, status=status)
    is_named_so = _names_a_notice(plain, number) or heads_order(text, line, elements, index)
    if is_named_so or _is_series_mark(words, elements[:index]):
        starred = plain.startswith("*") or "*" in text[elements[index].start : elements[index].end]
        return NoticeOpening(elements[index], index, starred, None)
    if is_reference(text, line, words):
        return None
    if _names_local_series(words) and not goes_on_below_head(text, line, _series(words)):
        return NoticeOpening(elements[index], index, False, _series(words))
    is_alone = index == len(elements) - 1 or _only_stops(text, elements[index + 1 :])
    if not is_alone and not opens_message(text, words, line, elements[index]):
        return None
    if any(word in plain for word in _SERIES_WORDS) and "in force" not in plain:
        if plain.startswith(("cancel", "this ")):
            return None
        return NoticeOpening(elements[index], index, False, _series(words), True)
    return None


def _warning_without_year(text: str, line: Line) -> NoticeOpening | None:
    """The bare head of a radio warning behind a blank line: `COASTAL WARNING 31`."""
    above = text[max(line.start - 2, 0) : line.start]
    found = None if above.strip("\n") else number_without_year(text[line.start : line.end])
    if found is None or not line.elements:
        return None
    number = Element("number", line.start + found[0], line.start + found[1], gap=False)
    series = _series(text[line.start : number.start])
    return NoticeOpening(number, len(line.elements) - 1, False, series, True)


_OPEN_WORDS = frozenset(
    "in of see by with and or the to from for at on under per a an as is was are were that this"
    " which than".split()
)


def _goes_on(text: str, line: Line, number: Element) -> bool:
    """Whether a line goes on with a sentence: `… was given in / Notice 40 / and is now …`."""
    if number is not line.elements[0] and line.elements[0].kind != "words":
        return False
    above = text[text.rfind("\n", 0, max(line.start - 1, 0)) + 1 : line.start].rstrip()
    last = above.rpartition(" ")[2]
    # In capitals throughout a title may end so.
    # `Cancels 12(T)/25;` above `13(T)/25`
    in_list = above.endswith(";") and "CANCELS" in head_kinds(above)
    breaks_off = above.endswith(",") or in_list or (last in _OPEN_WORDS and not above.isupper())
    below = text[line.end : line.end + 80].lstrip("\n").lstrip(" ")
    alone = not text[number.end : line.end].strip(" .")
    return breaks_off or (alone and text[line.end : line.end + 2] != "\n\n" and _is_rest(below))


def _is_rest(below: str) -> bool:
    """Whether the line below begins like the rest of a sentence."""
    first = below.partition(" ")[0]
    return first in ("and", "or", "which", "is", "are", "was", "were", "has", "have", "refers")


def _status_before(plain: str) -> NoticeStatus | None:
    """What small letters before a number say of its notice: `temporary notice to mariners no`."""
    for sign in _NUMBER_SIGNS:
        plain = plain.removesuffix(" " + sign)
    return status_in_words(plain) if "notice" in plain else None


# A line may break within `last correction 480/26` and `cancels notice 480/26`.
_BREAKS_OFF = frozenset(
    "last previous preceding former earlier foregoing prior latest antecedent notice correction "
    "update nm after to by cancels cancelled previous: notice: last: correction: update:".split()
)


def _names_a_notice(plain: str, number: str) -> bool:
    """Whether small letters are a word for a notice, with marks and a sign for its number."""
    # `Notice / Kunngjerd`: the second word says the same in another tongue.
    words = plain.partition(" / ")[0].strip(_MARKS)
    for sign in _NUMBER_SIGNS:
        words = words.removesuffix(sign).strip(_MARKS)
    if words in _NUMBERED_NOUNS:
        return not number[:1].isdigit() or plain.strip(_MARKS).endswith(_NUMBER_SIGNS)
    if words.startswith(_ADDRESSED):
        # `Notice to mariners`, `Advice to shipping`
        return len(words.split()) <= _WORDS_OF_ADDRESS
    of_what, _, noun = words.partition(" ")
    # `Chart correction No 88/26`
    return words in _NOTICE_NOUNS or (of_what in _OF_CHARTS and noun in _NOTICE_NOUNS - {""})


def _is_series_mark(words: str, before: tuple[Element, ...]) -> bool:
    """Whether the letters by which an office marks its notices open the line: `NTM 190/26`."""
    opens = bool(before) and before[0].gap
    return (
        opens and words.isalpha() and words.isupper() and words not in _NO_MARKS and len(words) < 5
    )


_SERIES_NOUNS = (_NOTICE_NOUNS | {"item"}) - {
    "", "correction", "update", "amendment", "entry", "slip",
}  # fmt: skip


def _names_local_series(words: str) -> bool:
    """Whether words name the series of a local notice: `Port Notice`, `Local Circular No`."""
    series = _series(words)
    parts = series.lower().removesuffix(" to mariners").split()
    if not 2 <= len(parts) <= 4 or names_another(series) or not series[0].isupper():
        return False
    # `Refer to Notice 12/26` speaks of another one.
    return parts[-1] in _SERIES_NOUNS and parts[-2] not in _OPEN_WORDS


def _is_parted(text: str, elements: tuple[Element, ...]) -> bool:
    """Whether a sign, and no sentence, stands behind the number."""
    return len(elements) == 1 or text[elements[1].start] in "/-:."


# `Notice 40/26 refers.`, `Notice 40/26 remains in force.`: a sentence, and no head.
_SPEAKING = frozenset(
    "and or to amends replaces supersedes extends repeats contains corrects concerns "
    "refers refer remains remain was were applies which concerned is are has have will shall must"
    " should may stands stand lapse lapses lapsed expires expired supersedes superseded ends"
    " ended".split()
)
_OF_DAY = re.compile(
    r"(?:(?:of|dated) [0-9]{1,2}(?:st|nd|rd|th)? [A-Za-z]{3,9}\.?,? [0-9]{4}|\([^()]{1,40}\)"
    r"|,? ?(?:(?:sub-?)?para(?:graph)?|item|part|section|clause)s?\.? ?\(?[0-9a-z]{1,3}\)?),? "
)
_MOST_WORDS = 24


def _is_spoken_of(text: str, rest: tuple[Element, ...]) -> bool:
    """Whether a sentence about the notice goes on behind its number."""
    if not rest:
        return False
    # The row of a table goes on for long; the first words tell, behind a day or a bracket.
    said = " ".join(text[rest[0].start : rest[-1].end].split(None, _MOST_WORDS)[:_MOST_WORDS])
    words = _OF_DAY.sub("", said, count=1).split(None, 1) if said else []
    first = words[0].strip(".,;:") if words else ""
    # `Notice 40/26 placed the buoy on the wrong side.`
    is_told = first.islower() and first.endswith("ed") and ". " in f"{said} "
    return first.lower() in _SPEAKING or is_told


def speaks_of_notice(text: str, line: Line) -> bool:
    """Whether a whole line is a sentence about another notice: `Notice 40/26 has expired`."""
    number = next((i for i, e in enumerate(line.elements[:4]) if e.kind == "number"), None)
    if number is None or not text[line.start : line.end].rstrip().endswith("."):
        return False
    before, behind = line.elements[:number], line.elements[number + 1 :]
    words = words_of(text, before).strip()
    written = text[line.elements[number].start : line.elements[number].end]
    if not words or not words[0].isupper() or not _names_a_notice(words.lower(), written):
        return False
    if any(e.kind not in ("words", "passive", "number") for e in (*before, *behind)):
        return False
    # What cancels it is told by the grammar of cancellations.
    return _is_spoken_of(text, behind) and "CANCELS" not in head_kinds(text[line.start : line.end])


def is_named(text: str, line: Line, number: Element) -> bool:
    """Whether the number is only named: as cancelled, or as the notice before."""
    above = text[text.rfind("\n", 0, max(line.start - 1, 0)) + 1 : line.start].rstrip()
    breaks_off = above.rpartition(" ")[2].lower().lstrip("[(") in _BREAKS_OFF
    opens = number is line.elements[0] and text[number.start - 1 : number.start] not in ("[", "(")
    if opens and leads_to_notice(above):
        return True
    if opens and not breaks_off:
        # Words or a bracket before the number would name it, `cancelled` behind it does.
        return opening_kind(text[line.start : line.end]) == "CANCELS"
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
