"""Recognises the lines of chart sections and headings, and the lists of the edition."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from noticeparse.layout.drafts import ChartDraft, NoticeDraft
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.line.joints import opens_note
from noticeparse.readers.editions import opens_with_source
from noticeparse.readers.features import has_kind
from noticeparse.readers.head_values import ALL_ITEMS
from noticeparse.readers.heads import head_kinds, opening_kind, read_parts
from noticeparse.readers.places import only_relates
from noticeparse.readers.verbs import canonical_verb

_WORDS_OF_PANEL = 4

DETAILS = frozenset(
    {"PREVIOUS", "PREVIOUS_IN_BRACKETS", "DATUM", "DEPTH_UNIT", "INTERNATIONAL", "NEW_EDITION",
     "EDITION", "PANEL", "PREVIOUS_LIST"}
)  # fmt: skip


_FOR_CHARTS = re.compile(
    r"(?<=[0-9)]) \((?:for |on )?(?:both|all|each)(?: (?:of )?(?:the )?charts?)?\)", re.IGNORECASE
)
"""Behind the notice before: that it is that of all the charts of the head."""


_ALL_ITEMS = re.compile(
    rf"(?<=[\])])(?: ?[:–-])? {{0,12}}\(?{ALL_ITEMS}\)?(?= ?[;,.]|\s{{0,80}}\Z)", re.IGNORECASE
)
"""Behind the notice before: that the chart takes every item, `611 [12/26] - all items`."""


_LED = re.compile(r"(?:and )?nos?\. ?(?=[A-Z]{0,3}[0-9])", re.IGNORECASE)
"""Before another chart of a list: `Charts affected: No. 802 [3/26];` above `No. 803 [4/26]`."""


def is_chart_details(words: str, *, breaks_off: bool) -> bool:
    """Whether words go on with a chart head: previous notice, datum, unit, and little else.

    Where the head above breaks off, another chart may follow too.
    """
    if breaks_off and (led := _LED.match(words)) is not None:
        words = words[led.end() :]
    kinds = head_kinds(_ALL_ITEMS.sub("", _FOR_CHARTS.sub("", words)))
    if breaks_off and kinds == {"CHART_NUMBER", "NOTICE_NUMBER"}:
        # `Charts affected:` above `802   30/26`
        return True
    if not kinds & DETAILS:
        return False
    strange = {"OTHER_WORDS", "OTHER", "CHART_WORD"}
    if "PREVIOUS_LIST" in kinds:
        # `Previous notices: 30/26 (chart 802), 31/26 (chart 803)`
        strange.remove("CHART_WORD")
    if not breaks_off and "PREVIOUS_LIST" not in kinds:
        strange.add("CHART_NUMBER")
    elif "DATUM" in kinds or "PREVIOUS" in kinds:
        strange -= {"OTHER_WORDS"}
    return not kinds & strange


_OPENS_A_NUMBER = re.compile(r"(?:[A-Z]{1,3}[ -]?)?[0-9]")


def is_chart_number(words: str) -> bool:
    """Whether words are a chart number and nothing else."""
    if _OPENS_A_NUMBER.match(words) is None:
        # Most words are soon told to be none.
        return False
    parts = read_parts(words)
    return len(parts) == 1 and parts[0].kind == "CHART_NUMBER" and parts[0].text == words


def is_row_of_chart(text: str, line: Line) -> bool:
    """Whether a line is a chart's number with the notice before and the one that corrects it.

    `82104   7Ed. 14 FEB 2015   LAST NM 318/26   NM 344/26`
    """
    if line.has("verb", "point", "half", "reference", "passive", "key", "chart", "label"):
        return False
    words = text[line.start : line.end]
    return opening_kind(words) == "CHART_NUMBER" and {"PREVIOUS", "THIS_NOTICE"} <= head_kinds(
        words
    )


_FEWEST_OF_ROW = 4


def is_row_of_charts(text: str, line: Line, charts: Sequence[ChartDraft]) -> bool:
    """Whether a line is an item of one of the charts above it: `Chart 9  Depth 14 m  P`."""
    if line.elements[0].kind != "chart" or not charts:
        return False
    if len(line.elements) < _FEWEST_OF_ROW or line.has("verb", "passive"):
        return False
    number, words = line.elements[1:3]
    is_row = words.gap and words.kind == "words" and line.has("point", "half")
    written = text[number.start : number.end]
    if not is_row or number.kind != "words" or not is_chart_number(written):
        return False
    return any(
        part.kind == "CHART_NUMBER" and part.text == written
        for chart in charts
        for piece in chart.head
        for part in read_parts(text[slice(*piece)])
    )


def is_details_line(text: str, line: Line) -> bool:
    """Whether a whole line is details of a chart."""
    if line.has("point", "half", "verb", "reference", "passive"):
        return False
    return is_chart_details(text[line.start : line.end], breaks_off=False)


_PANELS = frozenset({"PANEL", "MAIN_PANEL"})
_OF_PANEL = _PANELS | {"SCALE"}


def names_panel(words: str) -> bool:
    """Whether words of a head name a panel, plan or inset."""
    return not head_kinds(words).isdisjoint(_PANELS)


def is_panel_line(text: str, line: Line) -> bool:
    """Whether a whole line names a panel or the main chart: `PLAN B, QUILL BASIN`."""
    if not line.has_only("words", "label", "chart"):
        return False
    parts = read_parts(text[line.start : line.end].rstrip(" -"))
    solid = [part for part in parts if part.kind not in ("STOP", "COMMA")]
    if not solid or solid[0].kind not in _PANELS:
        return False
    # `Main chart and plan A`
    others = [part for part in solid[1:] if part.kind not in _OF_PANEL]
    return len(others) <= _WORDS_OF_PANEL and all(
        part.kind == "OTHER_WORDS" and part.text[0].isupper() for part in others
    )


def names_charts(text: str, line: Line) -> bool:
    """Whether a sentence of the head names charts: `This notice applies to chart No 52`.

    `Chart 52 is to be corrected as follows` names one too.
    """
    if line.has("point", "half", "verb", "reference"):
        return False
    if opens_note(text[line.start : line.end].strip()):
        # `No chart is affected; copies of chart 52 go back to the depot.`
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
    if line.has("point", "verb"):
        return False
    written = text[line.start : line.end]
    if written[:1].isspace() and written.lstrip().lower().startswith("from"):
        # `From the North Mole` may go on with an item.
        return False
    return opens_with_source(written.strip())


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


_BEHIND_CHARTS = re.compile(r"(?<=[0-9A-Za-z)\]])(?P<sign>[.:;]|\s-)\s{1,4}(?=[A-Za-z])")
_OF_A_HEAD = DETAILS | {"CHART_WORD", "NOTICE_NUMBER", "MAIN_PANEL", "CANCELS"}
_PARTICIPLE = re.compile(r"\b[A-Za-z-]{2,16}(?:ed|wn|laid)\b", re.IGNORECASE)
_PLAIN_WORD = re.compile(r"\b(?!and\b|the\b|with\b|from\b)[a-z]{3,}")


def statement_behind(words: str, *, goes_on: bool) -> int | None:
    """Where a statement begins behind the charts of a head: `Chart 802. Light-buoy withdrawn.`.

    A title tells nothing of the kind: it names no figure and no change, or stands before details.
    `goes_on` where a passive follows: what stands behind the last stop is its subject.
    """
    matches = list(_BEHIND_CHARTS.finditer(words))
    for found in matches[-1:] if goes_on else matches:
        rest = words[found.end() :]
        charts = head_kinds(words[: found.end()]) & {"CHART_NUMBER", "INTERNATIONAL"}
        if charts and found["sign"] == ":" and only_relates(rest):
            # `Chart 812 [2044/26]: in the area bounded by P, Q and R insert …`
            return found.end()
        if opening_kind(rest) in _OF_A_HEAD:
            continue
        if not charts or head_kinds(rest) & _OF_A_HEAD:
            continue
        told = any(canonical_verb(word) for word in _PARTICIPLE.findall(rest))
        says = any(char.isdigit() for char in rest) or has_kind(rest)
        is_plain = found["sign"] == "." and _PLAIN_WORD.search(rest) is not None
        if goes_on or told or (is_plain and says):
            return found.end()
    return None


def without_statement(
    text: str, elements: tuple[Element, ...], end: int
) -> tuple[tuple[Element, ...], int]:
    """Elements cut where a statement begins behind their charts, and the number that are head."""
    start, stop = elements[0].start, elements[end - 1].end
    goes_on = end < len(elements) and elements[end].kind == "passive"
    behind = statement_behind(text[start:stop], goes_on=goes_on)
    if behind is None:
        return elements, end
    cut = start + behind
    parted: list[Element] = []
    for element in elements:
        if element.start < cut < element.end:
            parted += [element._replace(end=cut), element._replace(start=cut)]
        else:
            parted.append(element)
    return tuple(parted), sum(element.start < cut for element in parted)


def is_previous(words: str) -> bool:
    """Whether words of a head name the notice before."""
    return not head_kinds(words).isdisjoint({"PREVIOUS", "PREVIOUS_IN_BRACKETS"})


def is_no_heading(text: str, line: Line) -> bool:
    """Whether a line names a panel, or is a statement: it holds a figure and says a change."""
    words = text[line.start : line.end]
    if is_panel_line(text, line):
        return True
    said = words.replace(".", " ").replace(",", " ").split()
    changes = any(one.islower() and canonical_verb(one) is not None for one in said)
    return changes and any(character.isdigit() for character in words)
