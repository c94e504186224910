"""The parts of a PDF work sheet: an action as a row, boxes to tick, frames, findings."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from html import escape

from reportlab.lib.colors import HexColor, black, white
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm
from reportlab.platypus import Flowable, KeepTogether, Paragraph, Spacer, Table

from noticeparse.worksheet.feature_words import Fact
from noticeparse.worksheet.fonts import BOLD, REGULAR, showable
from noticeparse.worksheet.html_out import CANCELLED, STOP, TICKS
from noticeparse.worksheet.model import Line, Told
from noticeparse.worksheet.places import Place, Where

_DARK = HexColor("#333333")


def _style(
    size: float, *, is_bold: bool = False, lead: float = 1.3, **more: object
) -> ParagraphStyle:
    name = BOLD if is_bold else REGULAR
    # `_` keeps each name apart: styles of one name would share what is derived from them.
    settings = {"fontName": name, "fontSize": size, "leading": size * lead, **more}
    return ParagraphStyle(f"{name}{size}", **settings)


STYLES = {
    "title": _style(22, is_bold=True, lead=1.2),
    "subtitle": _style(13),
    "heading": _style(12.5, is_bold=True, lead=1.45),
    "strong": _style(11, is_bold=True, spaceBefore=1 * mm),
    "plain": _style(11, spaceBefore=1.2 * mm),
    "small": _style(9.5),
    "what": _style(13),
    "number": _style(16, is_bold=True, lead=1.1),
    "exact": _style(14.5, is_bold=True, lead=1.25),
    "reference": _style(11.5),
    "place": _style(9.5, lead=1.25),
    "detail": _style(10.5),
    "source": _style(9.5, textColor=_DARK, spaceBefore=1 * mm),
    "written": _style(11.5, spaceBefore=1 * mm),
    "stop": _style(13, is_bold=True, textColor=white),
    "last": _style(12.5, is_bold=True),
}

_NUMBER, _DONE = 11 * mm, 37 * mm
_EXACT, _LABEL = 60 * mm, 27 * mm
_TIGHT = [
    ("LEFTPADDING", (0, 0), (-1, -1), 0),
    ("RIGHTPADDING", (0, 0), (-1, -1), 0),
    ("TOPPADDING", (0, 0), (-1, -1), 0.6 * mm),
    ("BOTTOMPADDING", (0, 0), (-1, -1), 0),
    ("VALIGN", (0, 0), (-1, -1), "TOP"),
]


def _text(words: str) -> str:
    return escape(showable(words), quote=False)


def _paragraph(words: str, style: str) -> Paragraph:
    return Paragraph(_text(words), STYLES[style])


class Rule(Flowable):
    """A line over the whole width."""

    def __init__(self, width: float, rule_mm: float, *, is_dashed: bool = False) -> None:
        super().__init__()
        self.width, self.height = width, 1.2 * mm
        self._rule, self._is_dashed = rule_mm * mm, is_dashed

    def draw(self) -> None:
        """Draw it."""
        self.canv.setLineWidth(self._rule)
        if self._is_dashed:
            self.canv.setDash(1.5 * mm, 1 * mm)
        self.canv.line(0, 0.6 * mm, self.width, 0.6 * mm)


class Anchor(Flowable):
    """What links to an action lead to, and its place in the outline."""

    def __init__(self, line: Line) -> None:
        super().__init__()
        self.width = self.height = 0
        self._line = line

    def draw(self) -> None:
        """Set the mark."""
        self.canv.bookmarkHorizontal(self._line.key, 0, 8 * mm)


class Box(Flowable):
    """A box to tick, with words behind it."""

    _SIDE = 4.6 * mm

    def __init__(self, words: str, style: str = "detail") -> None:
        super().__init__()
        self._paragraph = _paragraph(words, style)

    def wrap(self, width: float, height: float) -> tuple[float, float]:
        """Its size."""
        taken = self._paragraph.wrap(width - self._SIDE - 2 * mm, height)[1]
        self.width, self.height = width, max(taken, self._SIDE) + 1.6 * mm
        return self.width, self.height

    def draw(self) -> None:
        """Draw it."""
        top = self.height
        self.canv.setLineWidth(0.4 * mm)
        self.canv.rect(0.2 * mm, top - self._SIDE, self._SIDE, self._SIDE)
        self._paragraph.drawOn(self.canv, self._SIDE + 2 * mm, top - self._paragraph.height)


def boxed(
    parts: Sequence[Flowable], width: float, *, rule_mm: float, is_dashed: bool = False
) -> Table:
    """Parts within a frame."""
    table = Table([[list(parts)]], [width], spaceBefore=2.5 * mm, spaceAfter=1 * mm)
    dash = (1.5 * mm, 1 * mm) if is_dashed else None
    table.setStyle(
        [
            ("BOX", (0, 0), (-1, -1), rule_mm * mm, black, None, dash),
            ("TOPPADDING", (0, 0), (-1, -1), 2 * mm),
            ("BOTTOMPADDING", (0, 0), (-1, -1), 2.4 * mm),
        ]
    )
    return table


def told_parts(told: Iterable[Told]) -> Iterator[Flowable]:
    """Findings, the grave ones with a heavier bar."""
    for one in told:
        hint = f"; {_text(one.hint)}" if one.hint else ""
        words = f"<b>{one.severity.upper()}</b> {_text(one.words)}{hint}"
        bar = 1.3 if one.severity != "info" else 0.7
        table = Table([[Paragraph(words, STYLES["detail"])]], spaceBefore=1 * mm)
        table.setStyle([*_TIGHT, ("LEFTPADDING", (0, 0), (0, 0), 3 * mm),
                        ("LINEBEFORE", (0, 0), (0, 0), bar * mm, black)])  # fmt: skip
        yield table


_MOST_ROWS = 20
"""Of places, facts or findings in one piece of an action, well below what a page holds."""


def _pieces(parts: Iterable[Flowable]) -> list[list[Flowable]]:
    """The parts of an action in pieces that are laid out one by one, since long ones take long."""
    pieces: list[list[Flowable]] = [[]]
    rows = 0
    for part in parts:
        own = len(part._cellvalues) if isinstance(part, Table) else 1
        if pieces[-1] and rows + own > _MOST_ROWS:
            pieces.append([])
            rows = 0
        pieces[-1].append(part)
        rows += own
    return pieces


def action_rows(line: Line, width: float) -> Iterator[Flowable]:
    """An action, kept together unless it is long."""
    inner = width - _NUMBER - _DONE - 4 * mm
    parts = list(_usable(line, inner) if line.is_usable else _refused(line))
    parts += told_parts(line.told)
    first, *others = _pieces(parts)
    number = [Anchor(line), _paragraph(str(line.number), "number")]
    yield _action_row(line, [number, first, list(_done(line))], width, is_first=True)
    for piece in others:
        yield _action_row(line, ["", piece, ""], width, is_first=False)


def _action_row(line: Line, cells: list[object], width: float, *, is_first: bool) -> Flowable:
    table = Table([cells], [_NUMBER, width - _NUMBER - _DONE, _DONE], splitInRow=1)
    dash = (1.5 * mm, 1 * mm) if line.is_in_pencil else None
    style: list[tuple[object, ...]] = [
        ("VALIGN", (0, 0), (-1, -1), "TOP"),
        ("LEFTPADDING", (0, 0), (-1, -1), 1 * mm),
        ("RIGHTPADDING", (0, 0), (-1, -1), 3 * mm),
        ("RIGHTPADDING", (2, 0), (2, 0), 0),
        ("TOPPADDING", (0, 0), (-1, -1), 2 * mm),
        ("BOTTOMPADDING", (0, 0), (-1, -1), 3 * mm),
    ]
    if is_first:
        style.append(("LINEABOVE", (0, 0), (-1, 0), 0.25 * mm, black, None, dash))
    if not line.is_usable:
        style.append(("BACKGROUND", (0, 0), (-1, -1), HexColor("#e2e2e2")))
    table.setStyle(style)
    return KeepTogether([table])


def _usable(line: Line, width: float) -> Iterator[Flowable]:
    label = f"({line.label}) " if line.label else ""
    words = f"<b>{line.verb.upper()}</b>&nbsp; {_text(label + line.title)}"
    yield Paragraph(words, STYLES["what"])
    for where in line.where:
        yield from _where(where, width)
    if line.facts:
        yield Spacer(1, 1 * mm)
        yield _facts(line.facts, width)
    yield _paragraph(f"As written, {line.source}: {line.written}", "source")


def _refused(line: Line) -> Iterator[Flowable]:
    words, width = (CANCELLED, 84) if line.is_cancelled else (STOP, 58)
    stop = Table([[_paragraph(words, "stop")]], [width * mm], hAlign="LEFT")
    stop.setStyle([("BACKGROUND", (0, 0), (-1, -1), black),
                   ("BOTTOMPADDING", (0, 0), (-1, -1), 1.6 * mm)])  # fmt: skip
    yield stop
    yield _paragraph(f"The notice says, {line.source}: {line.written}", "written")


def _done(line: Line) -> Iterator[Flowable]:
    if line.is_usable:
        if line.is_in_pencil:
            yield _paragraph("in pencil", "detail")
            yield Spacer(1, 1.2 * mm)
        yield from map(Box, TICKS)
    else:
        yield _paragraph("No box: read the notice.", "detail")
    yield _paragraph("notice", "small")
    yield _paragraph(line.notice, "last")


def _where(where: Where, width: float) -> Iterator[Flowable]:
    lead = " ".join(part for part in (where.lead, where.how) if part)
    if lead:
        yield _paragraph(lead, "detail")
    if where.places:
        style = "reference" if where.is_reference else "exact"
        rows = [[_exact(place, style), _place_words(place)] for place in where.places]
        for start in range(0, len(rows), _MOST_ROWS):
            table = Table(rows[start : start + _MOST_ROWS], [_EXACT, width - _EXACT])
            table.setStyle(_TIGHT)
            yield table
    yield from (_paragraph(note, "place") for note in where.notes)


def _exact(place: Place, style: str) -> list[Flowable]:
    words = f"({place.exact})" if style == "reference" else place.exact
    parts: list[Flowable] = [_paragraph(words, style)]
    if place.notes:
        parts.append(_paragraph(", ".join(place.notes), "place"))
    return parts


def _place_words(place: Place) -> list[Flowable]:
    sheet = (
        [Paragraph(f"<b>{_text(place.on_sheet)}</b>", STYLES["place"])] if place.on_sheet else []
    )
    return [*sheet, _paragraph(f"written {place.written}", "place")]


def _facts(facts: Iterable[Fact], width: float) -> Table:
    rows = [[_paragraph(f.label, "detail"), _paragraph(f.words, "detail")] for f in facts]
    table = Table(rows, [_LABEL, width - _LABEL])
    table.setStyle(_TIGHT)
    return table
