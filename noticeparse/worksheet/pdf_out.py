"""Work sheets as one PDF file on A4; needs the extra `sheet` (reportlab).

What stands on it is what `html_out` writes.  Every page has the chart, the caution and its number;
an action that fits on a page is never cut.  The same sheets give the same bytes.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial
from html import escape
from io import BytesIO
from typing import Any

from reportlab.lib.pagesizes import A4
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import (
    BaseDocTemplate,
    CondPageBreak,
    Flowable,
    Frame,
    KeepTogether,
    NextPageTemplate,
    PageBreak,
    PageTemplate,
    Paragraph,
    Spacer,
    Table,
)

from noticeparse.caution import CAUTION
from noticeparse.worksheet.fonts import BOLD, REGULAR, register, showable
from noticeparse.worksheet.html_out import PLACES, UNLISTED
from noticeparse.worksheet.model import ChartSheet, NoticeBlock, PanelSheet
from noticeparse.worksheet.pdf_parts import (
    STYLES,
    Box,
    Rule,
    action_rows,
    boxed,
    told_parts,
)

_LEFT, _RIGHT, _TOP, _BOTTOM = 14 * mm, 12 * mm, 20 * mm, 14 * mm
WIDTH = A4[0] - _LEFT - _RIGHT


def write_pdf(sheets: Sequence[ChartSheet]) -> bytes:
    """The document."""
    register()
    stream = BytesIO()
    names = ", ".join(sheet.name for sheet in sheets)
    document = BaseDocTemplate(
        stream, pagesize=A4, title=f"Work sheet: {names}", author="noticeparse", subject=CAUTION,
        lang="en", invariant=1,
    )  # fmt: skip
    document.addPageTemplates([_template(number, one) for number, one in enumerate(sheets)])
    story: list[Flowable] = []
    for number, sheet in enumerate(sheets):
        if number:
            story += [NextPageTemplate(str(number)), PageBreak()]
        story += _chart(sheet)
    document.build(story, canvasmaker=_NumberedCanvas)
    return stream.getvalue()


def _template(number: int, sheet: ChartSheet) -> PageTemplate:
    frame = Frame(
        _LEFT, _BOTTOM, WIDTH, A4[1] - _TOP - _BOTTOM,
        leftPadding=0, rightPadding=0, topPadding=0, bottomPadding=0,
    )  # fmt: skip
    return PageTemplate(str(number), [frame], onPage=partial(_page_head, sheet.name))


def _page_head(name: str, canvas: Canvas, document: Any) -> None:
    del document
    text = f"<font name='{BOLD}' size='11'>{_text(name)}</font>   {_text(CAUTION)}"
    head = Paragraph(text, STYLES["small"])
    height = head.wrap(WIDTH, _TOP)[1]
    head.drawOn(canvas, _LEFT, A4[1] - 8 * mm - height)


class _NumberedCanvas(Canvas):
    """Writes `2 / 5` at the foot of every page, once it is known how many there are."""

    def __init__(self, *arguments: Any, **settings: Any) -> None:
        super().__init__(*arguments, **settings)
        self._kept: list[dict[str, Any]] = []

    def showPage(self) -> None:
        """Keep the page until the last one is there."""
        self._kept.append(dict(self.__dict__))
        self._startPage()

    def save(self) -> None:
        """Write all pages."""
        for number, page in enumerate(self._kept, 1):
            self.__dict__.update(page)
            self.setFont(REGULAR, 9)
            self.drawRightString(A4[0] - _RIGHT, 8 * mm, f"{number} / {len(self._kept)}")
            super().showPage()
        super().save()


def _text(words: str) -> str:
    return escape(showable(words), quote=False)


def _paragraph(words: str, style: str) -> Paragraph:
    return Paragraph(_text(words), STYLES[style])


def _chart(sheet: ChartSheet) -> Iterator[Flowable]:
    yield _paragraph(f"Work sheet, {sheet.name}", "title")
    if sheet.title:
        yield _paragraph(sheet.title, "subtitle")
    if sheet.is_listed is False:
        yield _paragraph(UNLISTED, "plain")
    yield _paragraph(sheet.account(), "strong")
    if sheet.is_listed:
        yield _paragraph(PLACES, "small")
    for alarm in sheet.alarms:
        yield boxed([_paragraph(alarm, "strong")], WIDTH, rule_mm=1.1)
    for words in sheet.before:
        yield boxed([Box(words)], WIDTH, rule_mm=0.35)
    yield from (_paragraph(note, "plain") for note in sheet.notes)
    for panel in sheet.panels:
        yield from _panel(sheet, panel)
    if sheet.told:
        yield Spacer(1, 5 * mm)
        words = "Outside any notice: it may hold something for this chart"
        yield _paragraph(words, "heading")
        yield from told_parts(sheet.told)
    yield from _foot(sheet)


def _panel(sheet: ChartSheet, panel: PanelSheet) -> Iterator[Flowable]:
    if panel.name or len(sheet.panels) > 1:
        title = f": {panel.title}" if panel.title and panel.name else ""
        yield Spacer(1, 4 * mm)
        yield CondPageBreak(75 * mm)
        yield _paragraph(f"{panel.name or 'The chart itself'}{title}", "heading")
    for block in panel.blocks:
        yield from _block(block)


def _block(block: NoticeBlock) -> Iterator[Flowable]:
    rows = [row for line in block.lines for row in action_rows(line, WIDTH)]
    yield Spacer(1, 5 * mm)
    # Not a head at the foot of a page, nor parted from its first action.
    yield CondPageBreak(55 * mm)
    yield KeepTogether([*_block_head(block), *rows[:1]])
    yield from rows[1:]
    if not block.lines:
        yield _paragraph("No action for this chart.", "plain")
    yield from (_paragraph(remark, "plain") for remark in block.remarks)
    yield from told_parts(block.told)


def _block_head(block: NoticeBlock) -> Iterator[Flowable]:
    yield Rule(WIDTH, 0.5)
    heading = f"   {_text(block.heading)}" if block.heading else ""
    words = f"<font size='15'>{_text(block.name)}</font>{heading}"
    yield Paragraph(words, STYLES["heading"])
    for alarm in block.alarms:
        yield boxed([_paragraph(alarm, "strong")], WIDTH, rule_mm=0.35, is_dashed=True)
    facts = "&nbsp;&nbsp;&nbsp; ".join(
        f"{fact.label}: {_text(fact.words)}" for fact in block.facts
    )
    yield Paragraph(facts, STYLES["small"])
    yield Spacer(1, 1.5 * mm)


def _foot(sheet: ChartSheet) -> Iterator[Flowable]:
    yield Spacer(1, 5 * mm)
    yield CondPageBreak(45 * mm)
    yield Rule(WIDTH, 0.5)
    words = f"{sheet.account()}. The records hold as many for {sheet.name}: none is left out."
    yield _paragraph(words, "strong")
    yield _paragraph(CAUTION, "plain")
    yield Spacer(1, 9 * mm)
    cells = [
        [_paragraph("applied by, date", "small"), "", _paragraph("checked by, date", "small")]
    ]
    signed = Table(cells, [WIDTH * 0.45, WIDTH * 0.1, WIDTH * 0.45])
    signed.setStyle([("LINEABOVE", (0, 0), (0, 0), 0.5, "black"),
                     ("LINEABOVE", (2, 0), (2, 0), 0.5, "black")])  # fmt: skip
    yield signed
