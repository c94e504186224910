"""What a page covers, hides, strikes through or underlines."""

from __future__ import annotations

from typing import Any

import pytest
from PIL import Image
from reportlab.pdfgen.canvas import Canvas

import noticeparse
from noticeparse.intake import read
from tests.pdf_notices import NOTICE, drawn, head, told
from tests.pdf_pages import MARGIN, WIDTH, draw

pytestmark = pytest.mark.usefixtures("in_this_process")


def action_page(paint: Any, words: str = "Delete wreck") -> bytes:
    """A page of one action with something painted round it, at the base line `y`."""

    def all_of_it(canvas: Canvas) -> None:
        y = head(canvas, 780)
        paint(canvas, y, f"{words} 47°13'.05S., 123°44'.20W.")

    return drawn(all_of_it)


def written(canvas: Canvas, y: float, words: str) -> None:
    draw(canvas, MARGIN, y, words, "Helvetica", 10)


def covered(canvas: Canvas, y: float, words: str) -> None:
    written(canvas, y, words)
    canvas.setFillColorRGB(1, 1, 1)
    canvas.rect(MARGIN - 5, y - 4, 400, 14, fill=1, stroke=0)


def white(canvas: Canvas, y: float, words: str) -> None:
    canvas.setFillColorRGB(1, 1, 1)
    written(canvas, y, words)


def clipped(canvas: Canvas, y: float, words: str) -> None:
    path = canvas.beginPath()
    path.rect(0, 0, 10, 10)
    canvas.clipPath(path, stroke=0)
    written(canvas, y, words)


def crossed(canvas: Canvas, y: float, words: str) -> None:
    written(canvas, y, words)
    canvas.line(MARGIN - 2, y + 3, MARGIN + 300, y + 3)


def barred(canvas: Canvas, y: float, words: str) -> None:
    written(canvas, y, words)
    canvas.rect(MARGIN - 2, y + 2.6, 300, 0.6, fill=1, stroke=0)


def unseen(canvas: Canvas, y: float, words: str) -> None:
    text = canvas.beginText(MARGIN, y)
    text.setTextRenderMode(3)
    text.textLine(words)
    canvas.drawText(text)


def on_layer_off() -> bytes:
    """A page whose last line stands on a layer that is off."""
    lines = [*NOTICE, "Insert depth 8.6m 47°13'.05S., 123°44'.20W."]
    shown = " ".join(f"({one}) Tj 0 -15 Td" for one in lines)
    body = f"BT /F1 10 Tf 50 780 Td {shown} ET /OC /MC0 BDC BT /F1 10 Tf 50 700 Td "
    stream = (body + "(Delete wreck) Tj ET EMC").encode("cp1252")
    return laid_out(
        b"<</Type/Catalog/Pages 2 0 R"
        b"/OCProperties<</OCGs[6 0 R]/D<</OFF[6 0 R]/Order[6 0 R]>>>>>>",
        b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
        b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]/Contents 4 0 R"
        b"/Resources<</Font<</F1 5 0 R>>/Properties<</MC0 6 0 R>>>>>>",
        b"<</Length %d>>stream\n%s\nendstream" % (len(stream), stream),
        b"<</Type/Font/Subtype/Type1/BaseFont/Helvetica/Encoding/WinAnsiEncoding>>",
        b"<</Type/OCG/Name(old)>>",
    )


def laid_out(*objects: bytes) -> bytes:
    """A file of these objects, the first of them its catalogue."""
    made, offsets = b"%PDF-1.5\n", []
    for number, one in enumerate(objects, 1):
        offsets.append(len(made))
        made += b"%d 0 obj\n%s\nendobj\n" % (number, one)
    table = b"".join(b"%010d 00000 n \n" % one for one in offsets)
    count = len(objects) + 1
    return (
        made
        + b"xref\n0 %d\n0000000000 65535 f \n%s" % (count, table)
        + b"trailer<</Size %d/Root 1 0 R>>\nstartxref\n%d\n%%%%EOF" % (count, len(made))
    )


class TestPaint:
    """What a page does not show, or strikes through, is not acted on."""

    @pytest.mark.parametrize(
        ("paint", "code"),
        [
            (covered, "text-not-shown"), (white, "text-not-shown"), (clipped, "text-not-shown"),
            (crossed, "text-struck-through"), (barred, "text-struck-through"),
        ],
    )  # fmt: skip
    def test_held_back(self, paint: Any, code: str) -> None:
        data = action_page(paint)
        assert set(told(read(data))) == {code}
        (action,) = noticeparse.read_file(data).notices[0].charts[0].actions
        assert not action.usable

    def test_what_the_file_hides_is_left_out(self) -> None:
        for data in (action_page(unseen), on_layer_off()):
            (doubt,) = read(data).doubts
            assert doubt.code == "text-hidden"
            assert doubt.values["written"].startswith("Delete wreck")
            assert "Delete" not in read(data).text

    def test_a_picture_among_figures_is_a_lost_character(self) -> None:
        def paint(canvas: Canvas, y: float, words: str) -> None:
            x = draw(canvas, MARGIN, y, "Insert depth 8", "Helvetica", 10)
            canvas.drawInlineImage(Image.new("RGB", (10, 10)), x, y - 2, 4, 6)
            draw(canvas, x + 5, y, f"m {words}", "Helvetica", 10)

        data = action_page(paint, "")
        assert told(read(data)) == ["text-character-lost"]
        (action,) = noticeparse.read_file(data).notices[0].charts[0].actions
        assert not action.usable

    def test_an_underlined_figure_is_told(self) -> None:
        def paint(canvas: Canvas, y: float, words: str) -> None:
            x = draw(canvas, MARGIN, y, "Insert depth ", "Helvetica", 10)
            end = draw(canvas, x, y, "1.2", "Helvetica", 10)
            draw(canvas, end, y, f"m {words}", "Helvetica", 10)
            canvas.line(x, y - 2, end, y - 2)
            canvas.line(MARGIN, y - 20, MARGIN + 400, y - 20)

        assert told(read(action_page(paint, ""))) == ["figure-underlined"]

    def test_the_rules_of_a_table_are_not_told(self) -> None:
        def paint(canvas: Canvas, y: float, words: str) -> None:
            written(canvas, y, words)
            canvas.grid([MARGIN - 4, MARGIN + 300], [y - 4, y + 10])

        assert told(read(action_page(paint))) == []

    @pytest.mark.parametrize("paint", [crossed, barred])
    def test_held_back_on_a_page_that_is_set_sideways(self, paint: Any) -> None:
        def sideways(canvas: Canvas) -> None:
            canvas.translate(WIDTH - 20, 40)
            canvas.rotate(90)
            paint(canvas, head(canvas, 500), "Delete wreck 47°13'.05S., 123°44'.20W.")

        data = drawn(sideways)
        assert set(told(read(data))) == {"text-struck-through"}
        (action,) = noticeparse.read_file(data).notices[0].charts[0].actions
        assert not action.usable


class TestMoreThanIsLookedAt:
    """What lies behind a bound is told, never passed over."""

    @pytest.mark.parametrize(
        ("operators", "count"),
        [("0 0 m 1 1 l S", 20_001), ("0 0 m 9 0 l" + " 9 0 l" * 50_000 + " S", 1)],
    )
    def test_very_many_lines(self, operators: str, count: int) -> None:
        def paint(canvas: Canvas) -> None:
            written(canvas, 700, "Delete wreck")
            for _ in range(count):
                canvas._code.append(operators)

        assert told(read(drawn(paint))) == ["part-not-read"]

    def test_very_many_pictures(self) -> None:
        def paint(canvas: Canvas) -> None:
            written(canvas, 700, "Delete wreck")
            for _ in range(201):
                canvas.drawInlineImage(Image.new("RGB", (1, 1)), 300, 300, 1, 1)

        assert told(read(drawn(paint))) == ["part-not-read"]

    def test_very_many_marks(self) -> None:
        def paint(canvas: Canvas) -> None:
            written(canvas, 700, "Delete wreck")
            for _ in range(1001):
                canvas.linkURL("https://example.org", (0, 0, 9, 9))

        assert told(read(drawn(paint))) == ["page-annotated"]

    def test_the_last_of_very_many_struck_lines_is_held_back(self) -> None:
        def paint(canvas: Canvas) -> None:
            for _ in range(12):
                for row in range(50):
                    crossed(canvas, 780 - 15 * row, f"Seen in daylight, row {row}")
                canvas.showPage()
            crossed(canvas, head(canvas, 780), "Delete wreck 47°13'.05S., 123°44'.20W.")

        (action,) = noticeparse.read_file(drawn(paint)).notices[0].charts[0].actions
        assert not action.usable
