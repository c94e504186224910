"""Details of a chart that stand apart from its head, below lines that nobody knows."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.assembly import Assembly
from noticeparse.layout.drafts import ChartDraft, NoticeDraft, Piece
from noticeparse.layout.line.element_kinds import ElementKind
from noticeparse.layout.line.elements import Element, Line
from noticeparse.layout.opening.recognise import names_panel
from noticeparse.readers.heads import head_kinds, opened_notice, read_parts

_OF_PANEL = frozenset({"PANEL", "MAIN_PANEL", "OTHER", "OTHER_WORDS", "STOP", "COMMA"})
OF_ITEMS: tuple[ElementKind, ...] = ("verb", "point", "half", "reference", "label")
"""What shows at once that a line is one of the items."""


def add_source(text: str, notice: NoticeDraft, piece: Piece) -> None:
    """Give a notice the line of its source, which may say what is cancelled as well."""
    notice.sources.append(piece)
    if "CANCELS" in head_kinds(text[slice(*piece)]):
        notice.clauses.append(piece)


def is_late_detail(text: str, chart: ChartDraft, body: Sequence[Line], piece: Piece) -> bool:
    """Whether a line is the datum, or what else is told of a chart above its items.

    A line that nobody knows may stand between: `Sheet title: …` above `Previous notice: 30/26`.
    """
    kinds = head_kinds(text[slice(*piece)]) - {"STOP"}
    if kinds == {"DATUM"}:
        return True
    if kinds not in ({"PREVIOUS"}, {"INTERNATIONAL"}) or chart.items:
        return False
    above = head_kinds(" ".join(text[slice(*one)] for one in chart.head))
    is_told = kinds & above or {"PREVIOUS_IN_BRACKETS", "NOTICE_NUMBER"} & above
    return not is_told and not any(line.has(*OF_ITEMS) for line in body)


def take_number(assembly: Assembly, start: int, words: str) -> None:
    """Go on under the notice that words of a chart name: `Edition 6   Notice No. 619/2026`."""
    number = opened_notice(words) if assembly.is_by_chart else None
    if number is not None:
        at = start + words.index(number)
        assembly.row_notice(Element("number", at, at + len(number), gap=False))


def takes_end_of_cancellation(text: str, notice: NoticeDraft | None, line: Line) -> bool:
    """Take a line that ends what a heading says of a notice: `is cancelled` below its number."""
    if notice is None or not notice.heading:
        return False
    if not line.has_only("passive", "words", "verb", "number"):
        return False
    start, end = notice.heading[-1]
    if text[end : line.start].strip(" .") != "\n" or "CANCELS" in head_kinds(text[start:end]):
        return False
    told = [part for part in read_parts(text[start : line.end]) if part.kind == "CANCELS"]
    if not told or start + told[0].start >= end:
        return False
    notice.clauses.append((start, line.end))
    # `Buoyage. This notice` above `replaces Notice 31/26.`
    notice.heading[-1] = (start, start + told[0].start)
    return True


def without_panel(text: str, piece: Piece) -> list[Piece]:
    """What a piece of the head of a chart says of the whole chart, where it names a panel too."""
    words = text[slice(*piece)]
    if not names_panel(words):
        return [piece]
    parts = [part for part in read_parts(words) if part.kind not in _OF_PANEL]
    if not any(part.kind == "CHART_NUMBER" for part in parts):
        return []
    return [(piece[0] + part.start, piece[0] + part.end) for part in parts]
