"""The chart section that the rows of a table go back to."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.drafts import ChartDraft, NoticeDraft, Piece


def row_chart(text: str, charts: Sequence[ChartDraft], row: ChartDraft) -> ChartDraft | None:
    """The section whose row gave the same chart and panel in the same words, or None."""
    told = _said(text, row)
    return next(
        (one for one in charts if one.number == row.number and _said(text, one) == told), None
    )


def _said(text: str, chart: ChartDraft) -> list[str]:
    return [text[slice(*piece)] for piece in (*chart.head, chart.panel or (0, 0))]


def repeated_chart(text: str, notice: NoticeDraft | None, head: Piece) -> ChartDraft | None:
    """The section with the same head, where each record names notice and chart anew."""
    if notice is None or not notice.repeats:
        return None
    words = text[slice(*head)].split()
    found = next(
        (one for one in notice.charts if one.head and text[slice(*one.head[0])].split() == words),
        None,
    )
    if found is not None:
        notice.clauses.append(head)
    return found
