"""Pages that are turned, cut, hidden in part, or scanned."""

from __future__ import annotations

import pytest
from reportlab.pdfgen.canvas import Canvas

import noticeparse
from noticeparse.intake import Intake, NotReadable, read
from tests.file_specimens import picture
from tests.pdf_notices import (
    HEAD,
    NOTICE,
    bulletin,
    drawn,
    facts,
    head,
    page,
    table,
    told,
)
from tests.pdf_pages import (
    HEIGHT,
    MARGIN,
    VERA,
    Setting,
    draw,
    set_columns,
    wrapped,
)

pytestmark = pytest.mark.usefixtures("in_this_process")


def turned(data: bytes, degrees: int) -> bytes:
    """The same file with its pages turned in the way a viewer turns them."""
    rotated = data.replace(b"/Rotate 0", b"/Rotate %d" % degrees)
    assert rotated != data
    return rotated


class TestPages:
    """What a page may be besides text in its one direction."""

    @pytest.mark.parametrize("degrees", [90, 180, 270])
    def test_turned_pages_are_read_as_they_are_shown(self, degrees: int) -> None:
        setting = Setting(columns=2, order="rows")
        lines = wrapped(bulletin(4), setting)
        half = len(lines) // 2

        def paint(canvas: Canvas) -> None:
            set_columns(canvas, [lines[:half], lines[half:]], setting)

        data = drawn(paint)
        upright, other = read(data), read(turned(data, degrees))
        assert other.text == upright.text
        assert other.places[0] != upright.places[0]

    def test_text_in_another_direction_is_told(self) -> None:
        def paint(canvas: Canvas) -> None:
            set_columns(canvas, [wrapped(bulletin(2), Setting())], Setting())
            canvas.translate(570, 300)
            canvas.rotate(90)
            draw(canvas, 0, 0, "Cancelled on 3 March 2026", "Helvetica", 9)

        intake = read(drawn(paint))
        assert told(intake) == ["page-text-turned"]
        (doubt,) = intake.doubts
        assert intake.text[doubt.start : doubt.end] == "Cancelled on 3 March 2026"

    def test_a_whole_page_of_turned_text_is_the_page(self) -> None:
        def paint(canvas: Canvas) -> None:
            canvas.translate(500, 40)
            canvas.rotate(90)
            for row, line in enumerate((*NOTICE, "Delete wreck 47°13'.05S., 123°44'.20W.")):
                draw(canvas, 0, -12 * row, line, "Helvetica", 9)

        intake = read(drawn(paint))
        assert told(intake) == []
        assert intake.text.splitlines()[:2] == list(NOTICE)

    def test_words_cut_at_the_end_of_a_line_and_of_a_page(self) -> None:
        first = [*NOTICE, "Insert dan-", "gerous wreck 47°13'.05S., 123°44'.20W.", "Delete dan-"]
        second = ["gerous wreck 47°13'.02S., 123°44'.31W."]

        def paint(canvas: Canvas) -> None:
            for number, lines in enumerate((first, second)):
                draw(canvas, MARGIN, 815, HEAD, "Helvetica", 7)
                for row, line in enumerate(lines):
                    draw(canvas, MARGIN, 780 - 12 * row, line, "Helvetica", 9)
                draw(canvas, 290, 22, f"{number + 1}", "Helvetica", 7)
                canvas.showPage()

        found = facts(noticeparse.read_file(drawn(paint)))
        assert [one[3:5] for one in found] == [
            ("insert", "wreck_dangerous"), ("delete", "wreck_dangerous")
        ]  # fmt: skip
        assert all(one[-1] for one in found)

    def test_a_page_foot_within_an_action(self) -> None:
        lines = [*NOTICE, "Insert submarine cable, joining", "47°20'.15S., 123°30'.50W."]
        rest = ["47°20'.62S., 123°31'.74W.", "Delete wreck 47°13'.02S., 123°44'.31W."]

        def paint(canvas: Canvas) -> None:
            for number, part in enumerate((lines, rest)):
                for row, line in enumerate(part):
                    draw(canvas, MARGIN, 120 - 12 * row, line, "Helvetica", 9)
                draw(canvas, 290, 22, f"{number + 1}", "Helvetica", 7)
                canvas.showPage()

        data = drawn(paint)
        assert [one.strip() for one in pieces(read(data))] == ["1", "2"]
        text = noticeparse.parse("\n".join((*lines, *rest)))
        assert facts(noticeparse.read_file(data)) == facts(text)

    def test_lines_that_come_again_in_the_text_are_no_page_heads(self) -> None:
        """Both pages begin with the same kind of line at the same height."""
        lines = [*NOTICE, "Delete wreck 47°13'.05S., 123°44'.20W."] * 2

        def paint(canvas: Canvas) -> None:
            for _ in range(3):
                for row, line in enumerate(lines):
                    draw(canvas, MARGIN, 800 - 12 * row, line, "Helvetica", 9)
                canvas.showPage()

        data = drawn(paint)
        assert read(data).furniture == ()
        assert len(facts(noticeparse.read_file(data))) == 6

    def test_a_lone_figure_at_the_foot_may_be_a_depth(self) -> None:
        lines = [*NOTICE, "Delete wreck, least depth", "8"]
        data = page(*((MARGIN, 80 - 12.0 * row, line) for row, line in enumerate(lines)))
        assert read(data).furniture == ()

    def test_places(self) -> None:
        intake = read(page((72, 770, "first"), (144, 700, "second")))
        first, second = intake.places
        assert intake.text[first.start : first.end].strip() == "first"
        assert (first.page, first.x_mm) == (1, 25.4)
        assert first.y_mm == pytest.approx((HEIGHT - 770 - 9) * 25.4 / 72, abs=0.1)
        assert (second.x_mm, intake.text[second.start : second.end].strip()) == (50.8, "second")

    def test_ligatures_and_signs(self) -> None:
        data = page((MARGIN, 700, "ﬁsh haven ﬂoating 6½ “x” – é"), font=VERA)
        assert read(data).text.strip() in (
            "ﬁsh haven ﬂoating 6½ “x” – é",
            "fish haven floating 6½ “x” – é",
        )

    def test_characters_without_a_meaning_are_told(self) -> None:
        data = page(
            (MARGIN, 780, NOTICE[0]), (MARGIN, 768, NOTICE[1]),
            (MARGIN, 756, "Delete wreck, depth 8₆ m 47°13'.05S., 123°44'.20W."), font=VERA,
        )  # fmt: skip
        intake = read(data)
        assert "depth 8\ufffd m" in intake.text
        assert told(intake) == ["text-character-lost"]
        assert [one[-1] for one in facts(noticeparse.read_file(data))] == [False]

    def test_bold_that_is_drawn_twice_is_read_once(self) -> None:
        intake = read(page((72, 700, "Delete 88 wrecks"), (72.3, 700, "Delete 88 wrecks")))
        assert intake.text.strip() == "Delete 88 wrecks"

    def test_notes_over_a_page_are_told_and_links_are_not(self) -> None:
        def paint(canvas: Canvas) -> None:
            table(canvas, head(canvas, 780))
            canvas.linkURL("https://example.org", (0, 0, 9, 9))
            canvas.showPage()
            table(canvas, head(canvas, 780))
            canvas.textAnnotation("8.6 m", Rect=(40, 700, 200, 720))

        (doubt,) = read(drawn(paint)).doubts
        assert (doubt.code, doubt.values) == ("page-annotated", {"page": "2"})

    def test_text_off_the_page_is_told(self) -> None:
        intake = read(page((72, 700, "seen"), (72, 1700, "unseen")))
        assert intake.text.strip() == "seen"
        assert [(one.code, one.values["written"]) for one in intake.doubts] == [
            ("text-hidden", "unseen")
        ]


def pieces(intake: Intake) -> list[str]:
    return [intake.text[start:end] for start, end in intake.furniture]


class TestScans:
    """Pages without text say so."""

    def test_a_scan_is_refused(self) -> None:
        data = drawn(lambda canvas: canvas.drawImage(picture(), 0, 0, 500, 700))
        with pytest.raises(NotReadable, match="is a scan: there is no text on its 1 page"):
            read(data)

    def test_a_scanned_page_among_others(self) -> None:
        def paint(canvas: Canvas) -> None:
            table(canvas, head(canvas, 780))
            canvas.showPage()
            canvas.drawImage(picture(), 0, 0, 500, 700)
            canvas.showPage()
            draw(canvas, MARGIN, 780, "The end.", "Helvetica", 9)

        data = drawn(paint)
        (doubt,) = read(data).doubts
        assert (doubt.code, doubt.values) == ("page-without-text", {"page": "2"})
        found = noticeparse.read_file(data)
        assert "page 2 holds no text" in [one.message[:20] for one in found.findings]
        assert all(one[-1] for one in facts(found))

    def test_text_of_a_scanner_is_told(self) -> None:
        def paint(canvas: Canvas) -> None:
            canvas.drawImage(picture(), 0, 0, 500, 700)
            words = canvas.beginText(72, 700)
            words.setTextRenderMode(3)
            words.setFont("Helvetica", 10)
            words.textOut("Delete wreck 47°13'.05S., 123°44'.20W.")
            canvas.drawText(words)

        assert told(read(drawn(paint))) == ["page-text-recognised"]
