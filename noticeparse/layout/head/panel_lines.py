"""Lines that name a panel of the open chart, with its name in front or without a word for one.

`PORT CORVANE PLAN` or `Port Corvane (plan on chart)` heads what stands below it, as `Plan B` does;
so does `Sheet 3` where the chart was named with its sheet 2, and else it numbers a page.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.drafts import ChartDraft, NoticeDraft, Piece
from noticeparse.layout.head.late_details import without_panel
from noticeparse.layout.line.element_kinds import PLACES
from noticeparse.layout.line.elements import Line
from noticeparse.layout.opening.recognise import is_panel_line, names_panel
from noticeparse.layout.table.keys import KeyReader
from noticeparse.readers.features import has_kind
from noticeparse.readers.heads import head_kinds, read_head, read_parts
from noticeparse.stretch import gather

_NO_NAME = r"(?!(?:See|As|On|In|For|The|This|New|No|Note|From|Outside|Clear|Main|Whole)\b)"
_NAMED = re.compile(
    rf"{_NO_NAME}(?:[A-Z][A-Za-z'-]*,?(?: (?:of|the|and|de|da|do|du|la))* ){{1,6}}"
    r"(?:(?:plan|panel|inset|PLAN|PANEL|INSET|Plan|Panel|Inset)"
    r"|\((?:plan|panel|inset|PLAN|PANEL|INSET)(?: on (?:the |this )?(?:chart|sheet))?\))[.:]?"
)
_WORD = re.compile(r" (?:\([^()]*\)|[A-Za-z]+)[.:]?$")
_SHEET = re.compile(r"[Ss]heet [0-9]{1,2}[.:]?|SHEET [0-9]{1,2}[.:]?")
_NAMELESS = re.compile(r"(?:(?:on|in) (?:the |its )?)?(?:plan|panel|inset) ?[:-]", re.IGNORECASE)
"""In front of a command; on a line of its own it may as well be said of what stands above."""
_ALONE = re.compile(r"(?:(?:on|in) (?:the |its )?)?(?:plan|panel|inset) ?[:.-]?", re.IGNORECASE)
"""Below what stands under `Main chart`."""


def takes_panel(assembly: Assembly, keys: KeyReader, line: Line) -> bool:
    """Open the section of a panel that a line names, for what follows."""
    text, charts = assembly.text, assembly.charts
    title = _titled(assembly, line)
    if not charts or (title is None and not is_panel_line(text, line)):
        return False
    piece = (line.elements[0].start, line.elements[-1].end)
    is_first = not any(names_panel(text[slice(*one)]) for one in charts[-1].head)
    is_first = is_first and charts[-1].panel is None
    kept = [one for told in charts[-1].head for one in without_panel(text, told)]
    own = [piece] if title is None else []
    if is_first and not assembly.body and assembly.rows is None and not charts[-1].items:
        charts[-1].head += own
    else:
        keys.end_block()
        assembly.end_body()
        assembly.open_panel([*kept, *own], charts[-1].number)
    if title is not None:
        assembly.charts[-1].panel = title
        if assembly.notice is not None:
            assembly.notice.clauses.append(title)
    return True


def drop_bare_panels(text: str, notices: Sequence[NoticeDraft]) -> None:
    """Take a panel from the notice above its line, where its rows are of other notices alone.

    In a list by chart the line stands below the rows of one notice and above those of the next.
    """
    held = {tuple(chart.head) for notice in notices for chart in notice.charts if chart.items}
    for notice in notices:
        kept = [
            chart
            for chart in notice.charts
            if chart.items or tuple(chart.head) not in held or not _is_bare(text, notice, chart)
        ]
        if kept:
            notice.charts[:] = kept


def _is_bare(text: str, notice: NoticeDraft, chart: ChartDraft) -> bool:
    """Whether a panel is named behind the number of a notice that says nothing below it."""
    named = [one for one in chart.head if names_panel(text[slice(*one)])]
    at = (chart.panel or (named or [(-1, -1)])[-1])[0]
    said = [piece for prose in notice.prose for piece in prose.pieces]
    return notice.start < at and not any(start > at for start, _ in said)


def ends_notice(assembly: Assembly, head: Piece, *, behind_blank: bool) -> bool:
    """Whether the head of a chart, in a list by chart, ends the notice that was told above it.

    A panel of the chart above, which names no notice of its own, goes on with that notice.
    """
    if not assembly.is_told() or not (behind_blank or assembly.has_charts):
        return False
    words = assembly.text[slice(*head)]
    above = assembly.charts[-1].head if assembly.charts else []
    if not above or not names_panel(words):
        return True
    numbers = {one.chart for one in read_head(assembly.text[slice(*above[0])], None).charts}
    return not {one.chart for one in read_head(words, None).charts} <= numbers - {None}


def _titled(assembly: Assembly, line: Line) -> Piece | None:
    """The stretch of a line that names a panel of the open chart in one of these ways."""
    if not line.has_only("words") or not assembly.charts or not _is_free(assembly):
        return None
    piece = line.elements[0].start, line.elements[-1].end
    words = assembly.text[slice(*piece)]
    if _SHEET.fullmatch(words):
        return piece if _has_sheet(assembly.text, assembly.charts[-1]) else None
    if _ALONE.fullmatch(words) and _is_parted(assembly):
        return piece
    if _NAMELESS.fullmatch(words):
        return piece if _is_cut_off(assembly.text, line) else None
    if _NAMED.fullmatch(words) is None or has_kind(_WORD.sub("", words)):
        return None
    return piece


def _is_free(assembly: Assembly) -> bool:
    """Whether nothing is open that words of a line of their own may belong to."""
    above = next((line for line in reversed(assembly.body) if not line.is_blank), None)
    return above is None or above.elements[-1].kind in PLACES


def leads_to_panel(text: str, line: Line) -> bool:
    """Whether the words before a command name the panel that it is for: `Inset A:`, `Plan -`."""
    words = text[line.start : line.end].rstrip()
    if words[-1:] not in (":", "-"):
        return False
    return is_panel_line(text, line) or _NAMELESS.fullmatch(words) is not None


def _is_parted(assembly: Assembly) -> bool:
    """Whether the main part of the open chart, and no panel of it, is named above."""
    heads = [assembly.text[slice(*one)] for one in assembly.charts[-1].head]
    return any("MAIN_PANEL" in head_kinds(words) for words in heads)


def _is_cut_off(text: str, line: Line) -> bool:
    """Whether a line goes on behind these words: a command stands there."""
    return bool(text[line.end : line.end + 200].partition("\n")[0].strip())


def _has_sheet(text: str, chart: ChartDraft) -> bool:
    """Whether the head of a chart names a sheet of it: `Chart 904 [588/26] sheet 2`."""
    if chart.panel is not None:
        return _SHEET.fullmatch(text[slice(*chart.panel)]) is not None
    parts = read_parts(gather(text, chart.head).text)
    return any(part.kind == "PANEL" and "sheet" in part.text.lower() for part in parts)
