"""Small figures of a page: tenths, and those that stray from their line."""

from __future__ import annotations

import pytest
from reportlab.pdfgen.canvas import Canvas

import noticeparse
from noticeparse.intake import read
from tests.pdf_notices import (
    NOTICE,
    drawn,
    facts,
    head,
    item,
    page,
    told,
)
from tests.pdf_pages import MARGIN, VERA, draw

pytestmark = pytest.mark.usefixtures("in_this_process")


def depth_page(size: float, rise: float, words: str = "6") -> bytes:
    """A page on which `8` stands beside a figure of another size, or higher or lower."""

    def paint(canvas: Canvas) -> None:
        y = head(canvas, 780)
        x = draw(canvas, MARGIN, y, "Insert wreck, least depth 8", "Helvetica", 10)
        x = draw(canvas, x, y + rise, words, "Helvetica", size)
        draw(canvas, x, y, " m 47°13'.05S., 123°44'.20W.", "Helvetica", 10)

    return drawn(paint)


def stray_page(*figures: tuple[float, float, str], unit: str = "m") -> bytes:
    """A page on which small figures stand high above or low below the line, behind an `8`."""

    def paint(canvas: Canvas) -> None:
        y = head(canvas, 780)
        x = draw(canvas, MARGIN, y, "Insert wreck, least depth 8", "Helvetica", 10)
        for size, rise, words in figures:
            draw(canvas, x, y + rise, words, "Helvetica", size)
        draw(canvas, x + 4, y, f"{unit} 47°13'.05S., 123°44'.20W.", "Helvetica", 10)
        draw(canvas, MARGIN, y - 30, "Delete wreck 47°14'.05S., 123°44'.20W.", "Helvetica", 10)

    return drawn(paint)


class TestStrayFigures:
    """What stands above or below a figure is a part of it, and no page number."""

    @pytest.mark.parametrize(
        "figures",
        [
            [(5, -8, "6")], [(6, -7, "6")], [(6, -10, "6")], [(5, 8, "6")],
            [(5, 4, "1"), (5, -2, "4")], [(6, 6, "1"), (6, -3, "4")], [(4, 5, "1"), (4, -4, "4")],
        ],
    )  # fmt: skip
    def test_held_back(self, figures: list[tuple[float, float, str]]) -> None:
        data = stray_page(*figures)
        assert "figure-in-doubt" in told(read(data))
        first, second = noticeparse.read_file(data).notices[0].charts[0].actions
        assert not first.usable
        assert second.usable

    def test_a_page_number_is_none(self) -> None:
        data = page(
            *((MARGIN, 780 - 12.0 * row, line) for row, line in enumerate(NOTICE)),
            (MARGIN, 756, "Insert wreck, least depth 8 m 47°13'.05S., 123°44'.20W."),
            (300, 30, "8"),
        )
        assert told(read(data)) == []


class TestSmallFigures:
    """A printed 8 with a small low 6 is 8₆, and never 86."""

    @pytest.mark.parametrize(
        ("size", "rise", "expected_in_text"),
        [
            (10, 0, "86 m"), (10, 0.2, "86 m"), (9.7, 0, "86 m"),
            (6, -2, "8₆ m"), (7, -1, "8₆ m"), (5, -3, "8₆ m"), (6, 0, "8₆ m"), (8, 0, "8₆ m"),
            (10, -2, "8₆ m"), (6, 4, "8⁶ m"), (10, 4, "8⁶ m"),
            (8.8, 0, "8\ufffd6 m"), (9, -0.8, "8\ufffd6 m"), (10, -1, "8\ufffd6 m"),
            (6, 1.2, "8\ufffd6 m"), (10, 1.5, "8\ufffd6 m"), (6, -5.5, "8\ufffd6 m"),
        ],
    )  # fmt: skip
    def test_size_and_height(self, size: float, rise: float, expected_in_text: str) -> None:
        intake = read(depth_page(size, rise))
        assert f"least depth {expected_in_text} 47°" in intake.text
        in_doubt = "\ufffd" in expected_in_text
        assert told(intake) == (["figure-in-doubt"] if in_doubt else [])
        (action,) = noticeparse.read_file(depth_page(size, rise)).notices[0].charts[0].actions
        assert action.usable == ("86" in expected_in_text or "₆" in expected_in_text)
        if "₆" in expected_in_text:
            assert str(action.feature.depth and action.feature.depth.value_m) == "8.6"

    @pytest.mark.parametrize("name", ["Helvetica", "Times-Roman", "Courier", VERA])
    def test_fonts(self, name: str) -> None:
        words = "Delete depth 12‹4› 47^o^13'.05S., 123^0^44'.20W."
        strings = [(MARGIN, 780 - 12.0 * row, one) for row, one in enumerate((*NOTICE, words))]
        intake = read(page(*strings, font=name))
        assert "Delete depth 12₄ 47°13'.05S., 123°44'.20W." in intake.text
        assert told(intake) == []

    def test_a_raised_letter_is_a_degree_sign_and_a_raised_zero_too(self) -> None:
        data = item("Delete wreck 47^o^13'.05S., 123^0^ 44'.20W.")
        (fact,) = facts(noticeparse.read_file(data))
        assert fact[-2:] == (["-4713.05-12344.20/"], True)

    @pytest.mark.parametrize("stroke", ["l", "I", "1", "|"])
    def test_a_raised_stroke_is_no_figure(self, stroke: str) -> None:
        """A minute mark drawn as a raised stroke must not become a 1."""
        data = item(f"Delete wreck 47°13^{stroke}^.05S., 123°44^{stroke}^.20W.")
        assert not any(one[-1] for one in facts(noticeparse.read_file(data)))

    def test_a_fraction_is_kept(self) -> None:
        data = item("Delete depth 6^1^/‹4› fm 47°13'.05S., 123°44'.20W.")
        assert "depth 6¼ fm" in read(data).text
        data = item("Delete depth 6^1^/‹9› fm 47°13'.05S., 123°44'.20W.")
        assert told(read(data)) == ["figure-in-doubt"]

    def test_a_stacked_fraction_is_in_doubt(self) -> None:
        strings = [(MARGIN, 780.0, NOTICE[0]), (MARGIN, 768.0, NOTICE[1])]
        data = drawn(
            lambda canvas: [
                draw(canvas, x, y, words, "Helvetica", size)
                for x, y, words, size in (
                    *((x, y, words, 9) for x, y, words in strings),
                    (MARGIN, 756, "Delete depth 6", 9), (97, 759, "1", 5), (97, 754, "4", 5),
                    (103, 756, "fm 47°13'.05S., 123°44'.20W.", 9),
                )
            ]
        )  # fmt: skip
        assert not any(one[-1] for one in facts(noticeparse.read_file(data)))
        assert "figure-in-doubt" in told(read(data))

    def test_decimals_in_smaller_type_are_decimals(self) -> None:
        data = depth_page(7, 0, ".6")
        assert "least depth 8.6 m" in read(data).text

    def test_a_line_in_smaller_type_has_no_small_figures(self) -> None:
        assert "12/26 25 m" in read(page((MARGIN, 700, "12/26 25 m"), size=5)).text
