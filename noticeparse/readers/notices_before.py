"""The notices that must be on the charts of a head already, beside each chart or in a list."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from noticeparse.faults import Fault
from noticeparse.readers.cancelled import number_text
from noticeparse.readers.head_values import ChartHead, Head, HeadPart
from noticeparse.readers.references import is_year_doubtful, read_number
from noticeparse.records.reference import NoticeRef

Parts = tuple[HeadPart, ...]

# `05/2024`, `2024-05`: of an edition.
_MONTH = re.compile(r"\(?(?:(?:19|20)[0-9]{2}[/-](?:0[1-9]|1[0-2])|0[1-9]/(?:19|20)[0-9]{2})\)?")
# `NM 30 of 14 March 2026`
_OF_A_DAY = re.compile(r"([0-9]{1,5}) (?:of|dated) [0-9A-Za-z][^\n]{3,20}?((?:19|20)[0-9]{2})\b")
# `2026-98` beside `2026-318`: the year stands first.
_YEAR_AHEAD = re.compile(r"((?:19|20)[0-9]{2})-([0-9]{1,5})")
_NUMBERS = frozenset({"PREVIOUS", "PREVIOUS_IN_BRACKETS", "NOTICE_NUMBER"})


def blame(head: Head, code: str, written: str, part: HeadPart) -> None:
    """Tell that a part of a head was not read."""
    head.faults.append(Fault(code, part.start, part.end, {"written": " ".join(written.split())}))


def set_previous(chart: ChartHead, part: HeadPart, near: int | None, head: Head) -> None:
    """Give a chart the notice before; a second one is told, and what may be a month and year."""
    if _MONTH.fullmatch(part.text):
        blame(head, "chart-head-unread", part.text, part)
        return
    ref = _with_year_ahead(part) or read_number(number_text(part.text), near)
    ref = ref or _of_no_year(part.text)
    if ref is not None and is_year_doubtful(part.text, ref, near):
        values = {"written": " ".join(part.text.strip("[]() ,;").split())}
        head.faults.append(Fault("notice-year-doubtful", part.start, part.end, values))
    written = " ".join(part.text.strip("[]() ,;").split())
    if chart.previous is None:
        chart.previous, chart.previous_written = ref, written
    elif ref is not None and ref != chart.previous and not _is_beside(part, ref):
        blame(head, "chart-head-unread", written, part)


def _is_beside(part: HeadPart, ref: NoticeRef) -> bool:
    """Whether a temporary notice stands in a bracket of its own: `[30/26] [31(T)/26]`."""
    return ref.status != "permanent" and part.kind != "NOTICE_NUMBER"


def with_list_apart(parts: Parts) -> tuple[Parts, Parts]:
    """The parts of a head, and those of the list of the notices before that stands behind it."""
    at = next((i for i, part in enumerate(parts) if part.kind == "PREVIOUS_LIST"), len(parts))
    return parts[:at], parts[at + 1 :]


def with_bare_numbers(parts: Parts) -> Parts:
    """Numbers of no year behind the first are notices too: `Charts 12 and 14. Prev. 188 and 190`.

    In brackets behind the charts they need no word for them: `Charts 12, 14 [188, 190]`.
    """
    made = list(parts)
    charts = 0
    for at, part in enumerate(parts):
        charts += made[at].kind == "CHART_NUMBER"
        if part.text == "[" and charts:
            _set_apart_unread(parts, at, made)
        in_brackets = part.text == "["
        if charts < _SEVERAL or not (in_brackets or _ends_without_year(part)):
            continue
        run = list(_listed_numbers(parts, at + 1, opens=in_brackets))
        end = parts[run[-1] + 1 : run[-1] + 2] if run else ()
        closes = bool(end) and end[0].text == "]"
        if len(run) > in_brackets and (closes or not (in_brackets or _has_own(parts, run[-1]))):
            for index in run:
                made[index] = parts[index]._replace(kind="NOTICE_NUMBER")
    return tuple(made)


def _set_apart_unread(parts: Parts, at: int, made: list[HeadPart]) -> None:
    """Numbers among other words in brackets behind charts are no charts: `[new, 188, 190]`."""
    end = next((i for i in range(at + 1, len(parts)) if parts[i].text == "]"), at)
    inner = range(at + 1, end)
    kinds = {parts[i].kind for i in inner}
    if "OTHER_WORDS" in kinds and kinds <= {"OTHER_WORDS", "CHART_NUMBER", "COMMA"}:
        for index in inner:
            if _is_bare(parts[index]):
                made[index] = parts[index]._replace(kind="OTHER")


_SEVERAL = 2


def _ends_without_year(part: HeadPart) -> bool:
    return part.kind == "PREVIOUS" and _BARE_END.search(part.text) is not None


_BARE_END = re.compile(r"(?<![0-9/-])[0-9]{1,5}$")


def _listed_numbers(parts: Parts, at: int, *, opens: bool) -> Iterator[int]:
    """The places of bare numbers from a place on, each but a first one behind a joint."""
    if opens and at < len(parts) and _is_bare(parts[at]):
        yield at
        at += 1
    while at + 1 < len(parts) and parts[at].kind == "COMMA" and _is_bare(parts[at + 1]):
        yield at + 1
        at += 2


def _is_bare(part: HeadPart) -> bool:
    return part.kind == "CHART_NUMBER" and part.text.isdecimal()


def _has_own(parts: Parts, at: int) -> bool:
    """Whether a number is that of a chart, with its notice before behind it."""
    behind = next((p for p in parts[at + 1 : at + 3] if p.kind not in _BETWEEN), None)
    return behind is not None and behind.kind in (*_NUMBERS, "NEW_EDITION")


def set_shared(head: Head, parts: Sequence[HeadPart], near: int | None) -> None:
    """The notices before of several charts that stand behind the last of these."""
    set_in_order(head, parts, near)
    set_beside(head, parts, near)
    set_for_all(head, parts, near)


def set_in_order(head: Head, parts: Sequence[HeadPart], near: int | None) -> None:
    """Numbers behind the last of several charts: `Charts 12 and 14 (last 188/26 and 190/26)`."""
    at = [index for index, part in enumerate(parts) if part.kind in _NUMBERS]
    if len(head.charts) < 2 or len(at) < 2:
        return
    numbers = [parts[index] for index in at]
    between = {part.kind for part in parts[at[0] : at[-1]]} - {"COMMA", "STOP"}
    charts = [part.start for part in parts if part.kind in ("CHART_NUMBER", "INTERNATIONAL")]
    if between <= {"PREVIOUS", "NOTICE_NUMBER"} and max(charts, default=0) < numbers[0].start:
        _in_order(head, numbers, near)


def set_beside(head: Head, parts: Sequence[HeadPart], near: int | None) -> None:
    """Each number before its chart in brackets: `last notice 30/26 (802), 31/26 (803)`."""
    first = next((index for index, part in enumerate(parts) if part.kind in _NUMBERS), None)
    if first is None or len(head.charts) < 2:
        return
    pairs = [p for p in parts[first:] if p.kind in (*_NUMBERS, "CHART_NUMBER")]
    charts = pairs[1::2]
    # `802 (previous 30/26), 803 (31/26)`: there each stands behind its own chart.
    named = {part.text for part in parts[:first] if part.kind == "CHART_NUMBER"}
    if any(_opens_head(parts, parts.index(one), named) for one in charts):
        return
    in_turn = all((part.kind in _NUMBERS) == (at % 2 == 0) for at, part in enumerate(pairs))
    between = {
        p.kind for p in parts[first:] if p.start < pairs[-1].start and p.text.lower() not in _LINKS
    } - {*_BETWEEN, *_NUMBERS, "CHART_WORD"}
    known = {one.chart for one in head.charts}
    if not in_turn or len(pairs) % 2 or between - {"CHART_NUMBER"} or len(charts) < 2:
        return
    if not {part.text for part in charts} <= known:
        return
    head.faults = [one for one in head.faults if not pairs[0].start <= one.start <= pairs[-1].end]
    for chart in head.charts:
        chart.previous = chart.previous_written = None
    _set_pairs(head, pairs[::-1], near)


def _opens_head(parts: Sequence[HeadPart], at: int, named: set[str]) -> bool:
    """Whether a chart behind a number begins a head of its own: `[30/26]. Chart 803`."""
    if parts[at - 1].kind == "COMMA":
        return True
    told = [part.kind for part in parts[max(at - 3, 0) : at - 1] if part.text != "."]
    is_new = parts[at].text not in named and parts[at - 1].kind == "CHART_WORD"
    return is_new and told[-1:] != [] and told[-1] in _NUMBERS


def set_for_all(head: Head, parts: Sequence[HeadPart], near: int | None) -> None:
    """One number that is said to hold for all the charts: `last notice 30/26 (both charts)`."""
    at = [index for index, part in enumerate(parts) if part.kind in _NUMBERS]
    if len(head.charts) < 2 or len(at) != 1:
        return
    words = [p.text.lower() for p in parts[at[0] + 1 : at[0] + 6] if p.kind not in _BETWEEN]
    said = " ".join(words[:3])
    if _FOR_ALL.match(said) and not (said.startswith("both") and len(head.charts) > _BOTH):
        for chart in head.charts:
            if chart.previous is None:
                set_previous(chart, parts[at[0]], near, head)


_BETWEEN = ("COMMA", "STOP")
_LINKS = ("for", "on", "of")
"""Between a notice and its chart: `30/26 for 802`."""
_BOTH = 2
_FOR_ALL = re.compile(
    r"(?:(?:for|on|of) )?(?:both|all|each)(?: (?:of )?(?:the )?charts?)?(?![a-z])"
)


def set_listed(head: Head, listed: Parts, near: int | None) -> list[HeadPart]:
    """Give each chart the notice beside it, `12: 188/26 - 14: 190/26`; the parts of another kind.

    A list that names no charts goes with them in their order.
    """
    if any(_YEAR_AHEAD.match(part.text) for part in listed if part.kind in _NUMBERS):
        listed = tuple(
            p._replace(kind="NOTICE_NUMBER") if _YEAR_AHEAD.fullmatch(p.text) else p
            for p in listed
        )
    numbers = [part for part in listed if part.kind in _NUMBERS]
    own = (*_NUMBERS, "CHART_NUMBER", "CHART_WORD", "STOP", "COMMA")
    others = [p for p in listed if p.kind not in own and p.text.lower() not in _LINKS]
    if not any(part.kind == "CHART_NUMBER" for part in listed):
        if numbers:
            _in_order(head, numbers, near)
        return others
    pairs = [part for part in listed if part.kind in (*_NUMBERS, "CHART_NUMBER")]
    if pairs[0].kind != "CHART_NUMBER":
        # `30/26 (802), 31/26 (803)`: read from the end, each chart stands before its notice.
        pairs.reverse()
    _set_pairs(head, pairs, near)
    return others


def _set_pairs(head: Head, pairs: Sequence[HeadPart], near: int | None) -> None:
    """Charts, each before its notice; what stands alone is told."""
    charts: list[HeadPart] = []
    for before, part in zip([None, *pairs], [*pairs, None], strict=True):
        if part is not None and part.kind == "CHART_NUMBER":
            charts = [*charts, part] if before and before.kind == part.kind else [part]
            continue
        if before is not None and before.kind != "CHART_NUMBER" and part is not None:
            blame(head, "chart-head-unread", part.text, part)
            continue
        if part is None:
            left = charts if before is not None and before.kind == "CHART_NUMBER" else []
        else:
            left = [chart for chart in charts if not _give(head, chart, part, near)]
        for chart in left:
            blame(head, "chart-head-unread", chart.text, chart)


def _give(head: Head, chart: HeadPart, notice: HeadPart, near: int | None) -> bool:
    own = [one for one in head.charts if one.chart == chart.text]
    for one in own:
        set_previous(one, notice, near, head)
    return bool(own)


def _in_order(head: Head, numbers: Sequence[HeadPart], near: int | None) -> None:
    """As many notices as charts, each for the chart of its place; else none is given to any."""
    places = {part.start for part in numbers}
    head.faults = [fault for fault in head.faults if fault.start not in places]
    for chart in head.charts:
        chart.previous = chart.previous_written = None
    if len(numbers) != len(head.charts):
        for part in numbers:
            blame(head, "chart-head-unread", part.text.strip("[]() ,;"), part)
        return
    for chart, part in zip(head.charts, numbers, strict=True):
        set_previous(chart, part, near, head)


def _with_year_ahead(part: HeadPart) -> NoticeRef | None:
    """The notice before in a list in which years stand ahead: `2026-98`."""
    ahead = _YEAR_AHEAD.fullmatch(part.text) if part.kind == "NOTICE_NUMBER" else None
    if ahead is None:
        return None
    return NoticeRef(number=int(ahead[2]), year=int(ahead[1]), status="permanent")


def _of_no_year(text: str) -> NoticeRef | None:
    """The notice before where its year is left out: `[previous notice 577]`."""
    if dated := _OF_A_DAY.search(text):
        return NoticeRef(number=int(dated[1]), year=int(dated[2]), status="permanent")
    number = text.strip("[]() ").rpartition(" ")[2]
    if not number.isdecimal() or "week" in text.lower():
        # A number within its week names no notice of the year.
        return None
    return NoticeRef(number=int(number), year=None, status="permanent")
