"""The chart section that the rows of a table go back to."""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.layout.drafts import ChartDraft, NoticeDraft, Piece

_SEVERAL = 2


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


def leave_last_head(notice: NoticeDraft | None, charts: Sequence[ChartDraft]) -> None:
    """Leave the last head of a list by chart to the notice below it, where none above has it.

    `CHART 130, PLAN QUILL BASIN` below the items of a notice on chart 130 heads the next one.
    """
    if notice is None or not charts or len(notice.charts) < _SEVERAL:
        return
    last = notice.charts[-1]
    if last is not charts[-1] or last.items or not last.head:
        return
    told = [piece for one in notice.prose for piece in one.pieces]
    told += [piece for one in notice.charts[:-1] for item in one.items for piece in item.pieces]
    if told and max(told) < last.head[0]:
        notice.charts.pop()
