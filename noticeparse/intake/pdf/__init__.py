"""PDF: the characters of each page, put in order by where they stand, never by how it is drawn.

`glyphs.py` says what stands where, `columns.py` cuts a page into parts, `rows.py` makes rows of
each, `furniture.py` marks heads and feet.  Nothing of a notice is read here.
"""

from __future__ import annotations

from typing import NamedTuple

import pypdfium2
import pypdfium2.raw as pdfium

from noticeparse.intake.composing import Composed, Composer
from noticeparse.intake.pdf.columns import Cutter, Part
from noticeparse.intake.pdf.furniture import PageRows, furniture_of
from noticeparse.intake.pdf.glyphs import read_glyphs
from noticeparse.intake.pdf.paint import look
from noticeparse.intake.pdf.rows import Row
from noticeparse.intake.records import NotReadable

MOST_PAGES = 3000
MOST_CHARACTERS = 8_000_000

_MM = 25.4 / 72
_PARAGRAPH = 1.7
_LARGEST = 20_000
_MOST_NOTES = 1000

_WHY = {
    pdfium.FPDF_ERR_PASSWORD: "is encrypted with a password; save it without one first",
    pdfium.FPDF_ERR_SECURITY: "is encrypted in a way that is not known; save it without first",
}


class _Page(NamedTuple):
    parts: list[Part]
    turned: list[Part]
    """What reads in another direction than most of the page."""
    height: float
    is_picture: bool
    """Whether something is drawn on the page, and no text that is shown."""
    is_recognised: bool
    """Whether most of its text is not shown: what a scanner made of a picture."""
    hidden: str
    """What stands off the page, or is hidden by the file."""
    is_annotated: bool
    is_whole: bool
    """False where more is drawn on the page than is looked at."""

    @property
    def rows(self) -> list[Row]:
        return [row for part in (*self.parts, *self.turned) for row in part.rows]


def read_pdf(data: bytes) -> Composed:
    """The text of a PDF file.

    Raises NotReadable.
    """
    pages = _read_pages(data)
    scans = sum(page.is_picture for page in pages)
    if not any(page.rows for page in pages):
        if scans:
            words = f"is a scan: there is no text on its {scans} pages, only pictures"
            raise NotReadable(f"{words}; have its text recognised and checked first")
        raise NotReadable("holds no text")
    return _composed(pages)


def _read_pages(data: bytes) -> list[_Page]:
    try:
        document = pypdfium2.PdfDocument(data)
    except pypdfium2.PdfiumError:
        why = _WHY.get(pdfium.FPDF_GetLastError(), "cannot be read: the PDF file is damaged")
        raise NotReadable(why) from None
    count = len(document)
    if count > MOST_PAGES:
        raise NotReadable(f"has {count} pages; {MOST_PAGES} at most are read: take it apart first")
    if not count:
        raise NotReadable("has no pages that can be read: the PDF file is damaged")
    pages: list[_Page] = []
    cutter = Cutter()
    characters = 0
    for number in range(count):
        page = _read_page(document, number, cutter)
        characters += sum(len(row.text) for row in page.rows)
        if characters > MOST_CHARACTERS:
            words = f"holds more than {MOST_CHARACTERS} characters"
            raise NotReadable(f"{words}; take it apart first")
        pages.append(page)
    return pages


def _read_page(document: pypdfium2.PdfDocument, number: int, cutter: Cutter) -> _Page:
    try:
        page = document[number]
        text_page = page.get_textpage()
    except pypdfium2.PdfiumError:
        words = f"page {number + 1} is damaged"
        raise NotReadable(f"cannot be read: {words}; take it out, or print it anew") from None
    glyphs = read_glyphs(page.raw, text_page.raw)
    if max(glyphs.width, glyphs.height) > _LARGEST:
        raise NotReadable(f"cannot be read: page {number + 1} is of a senseless size")
    glyphs, hidden, is_whole = look(page, text_page.raw, glyphs)
    counts = {
        angle: sum(one.char != " " for one in found) for angle, found in glyphs.by_angle.items()
    }
    main = max(counts, key=lambda angle: (counts[angle], -angle), default=0)
    turned = [
        part
        for angle, found in sorted(glyphs.by_angle.items())
        if angle != main and counts[angle]
        for part in Cutter().parts(found)
    ]
    parts = list(cutter.parts(glyphs.by_angle.get(main, [])))
    total = sum(counts.values())
    read = _Page(
        parts=parts,
        turned=turned,
        height=glyphs.height,
        is_picture=not total and pdfium.FPDFPage_CountObjects(page) > 0,
        is_recognised=glyphs.unseen * 2 > total,
        hidden=" ".join(filter(None, (glyphs.outside, hidden))),
        is_annotated=_is_annotated(page.raw),
        is_whole=is_whole,
    )
    text_page.close()
    page.close()
    return read


def _is_annotated(page: object) -> bool:
    """Whether something lies over a page that a person put there, links apart."""
    count = pdfium.FPDFPage_GetAnnotCount(page)
    if count > _MOST_NOTES:
        return True
    for number in range(count):
        note = pdfium.FPDFPage_GetAnnot(page, number)
        subtype = pdfium.FPDFAnnot_GetSubtype(note)
        pdfium.FPDFPage_CloseAnnot(note)
        if subtype not in (pdfium.FPDF_ANNOT_LINK, pdfium.FPDF_ANNOT_POPUP):
            return True
    return False


def _composed(pages: list[_Page]) -> Composed:
    composer = Composer()
    furniture = furniture_of([PageRows(page.rows, page.height) for page in pages])
    held: list[tuple[int, Row]] = []
    """Heads and feet that wait until a word that they cut in two is whole."""
    for number, page in enumerate(pages):
        begin = composer.length
        index = 0
        for parts, is_turned in ((page.parts, False), (page.turned, True)):
            for part in parts:
                start = composer.length
                above: Row | None = None
                for row in part.rows:
                    if (number, index) in furniture:
                        held.append((number, row))
                    else:
                        if not _is_cut(composer, row):
                            _add_held(composer, held)
                        _add_row(composer, row, above, number)
                        _add_held(composer, held)
                        above = row
                    index += 1
                _doubt_part(composer, part, start, number, is_turned=is_turned)
        _doubt_page(composer, page, begin, number)
    _add_held(composer, held)
    return composer.made()


def _is_cut(composer: Composer, row: Row) -> bool:
    """Whether the word at the end of what is there goes on at the start of this row."""
    return composer.cuts_word and row.text.lstrip()[:1].islower()


def _add_held(composer: Composer, held: list[tuple[int, Row]]) -> None:
    for number, row in held:
        composer.end_line()
        start = composer.length
        _add_words(composer, row, number)
        composer.mark_furniture(start)
        composer.end_line()
    held.clear()


def _add_row(composer: Composer, row: Row, above: Row | None, number: int) -> None:
    if above is not None and row.base - above.base > _PARAGRAPH * max(row.size, above.size) * 1.2:
        composer.end_paragraph()
    _add_words(composer, row, number)
    composer.end_line()


def _add_words(composer: Composer, row: Row, number: int) -> None:
    start = composer.length
    composer.add(row.text)
    composer.place(start, number + 1, row.page_x * _MM, max(row.page_y, 0.0) * _MM)
    for first, end in row.doubtful:
        written = row.text[first:end]
        composer.doubt("figure-in-doubt", start + first, start + end, written=written)
    for first, end in row.lost:
        written = row.text[first:end]
        composer.doubt("text-character-lost", start + first, start + end, written=written)
    for code, first, end in row.marks:
        composer.doubt(code, start + first, start + end, written=row.text[first:end])


def _doubt_part(
    composer: Composer, part: Part, start: int, number: int, *, is_turned: bool
) -> None:
    end = composer.length - (composer.last == "\n")
    page = str(number + 1)
    if part.is_doubtful and end > start:
        composer.doubt("page-order-in-doubt", start, end, page=page)
    if is_turned and end > start:
        composer.doubt("page-text-turned", start, end, page=page)


def _doubt_page(composer: Composer, page: _Page, begin: int, number: int) -> None:
    end = max(composer.length - (composer.last == "\n"), begin)
    named = str(number + 1)
    if page.is_picture:
        composer.doubt("page-without-text", begin, begin, page=named)
    if page.is_recognised and end > begin:
        composer.doubt("page-text-recognised", begin, end, page=named)
    if page.is_annotated:
        composer.doubt("page-annotated", begin, end, page=named)
    if not page.is_whole:
        written = f"page {named} holds more lines and pictures than are looked at"
        composer.doubt("part-not-read", begin, begin, written=written)
    if page.hidden:
        composer.doubt("text-hidden", begin, begin, written=page.hidden)
