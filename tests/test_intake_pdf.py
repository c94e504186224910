"""PDF files in many settings: the text they were made from, and the same records."""

from __future__ import annotations

import io
import random
from collections.abc import Sequence
from typing import Any

import pytest
from PIL import Image
from reportlab.pdfgen.canvas import Canvas

import noticeparse
from noticeparse.intake import Intake, NotReadable, read
from noticeparse.records import Bulletin
from tests.corpus_files import CORPUS
from tests.file_specimens import picture
from tests.pdf_pages import (
    HEIGHT,
    MARGIN,
    VERA,
    WIDTH,
    Setting,
    document,
    draw,
    pages_of,
    plain,
    set_columns,
    wrapped,
)

pytestmark = pytest.mark.usefixtures("in_this_process")

DEMO = CORPUS / "demo.txt"
HEAD = "TAVRENNE ISLANDS NOTICES TO MARINERS (invented, not for navigation)"


def bulletin(notices: int, seed: int = 1) -> list[str]:
    """Lines of a bulletin with depths in small figures."""
    dice = random.Random(seed)

    def place() -> str:
        south, west = (f"{dice.randint(0, 59):02}'.{dice.randint(0, 99):02}" for _ in "ab")
        return f"47°{south}S., 123°{west}W."

    def depth() -> str:
        return f"{dice.randint(3, 30)}‹{dice.randint(1, 9)}›"

    lines: list[str] = []
    for number in range(notices):
        lines += [
            f"{2417 + number}/26 TAVRENNE ISLANDS - Quill Sound - Wreck. Buoyage.",
            "Source: Port Ellory Harbour Master",
            f"Chart {802 + number % 5} [{2310 + number}/26] WGS84",
            f"Insert dangerous wreck, least depth {depth()} m {place()}",
            f"Delete depth {depth()} {place()}",
            f"Move port-hand light-buoy, Fl.R.4s, from {place()} to {place()}",
            f"Amend light to Fl(3)WRG.15s21m15-11M {place()}",
            f"Insert submarine cable, joining {place()} {place()} {place()}",
            "",
        ]
    return lines


def facts(read_in: Bulletin) -> list[tuple[Any, ...]]:
    """What the actions of a bulletin say."""
    return [
        (
            notice.id,
            section.chart,
            section.previous,
            action.verb,
            action.feature.kind,
            action.feature.depth and action.feature.depth.value_m,
            action.feature.light and action.feature.light.written,
            [one.iso6709 for one in action.geometry.positions],
            action.usable,
        )
        for notice in read_in.notices
        for section in notice.charts
        for action in section.actions
    ]


def told(intake: Intake) -> list[str]:
    return [one.code for one in intake.doubts]


def body_lines(intake: Intake) -> list[str]:
    """The lines without page heads and feet, blanks as one, blank lines left out."""
    text = intake.text
    for start, end in reversed(intake.furniture):
        text = text[:start] + text[end:]
    return [" ".join(line.split()) for line in text.split("\n") if line.strip()]


def expected(lines: Sequence[str]) -> list[str]:
    return [" ".join(plain(line).split()) for line in lines if line.strip()]


SETTINGS = {
    "one column": Setting(),
    "one column, justified": Setting(is_justified=True),
    "one column, Courier": Setting(font="Courier", size=7),
    "two columns in order": Setting(columns=2),
    "two columns row by row": Setting(columns=2, order="rows"),
    "two columns, words shuffled": Setting(columns=2, order="shuffled"),
    "two columns, narrow gutter": Setting(columns=2, order="rows", gutter=8),
    "two columns, justified": Setting(columns=2, order="rows", is_justified=True, gutter=8),
    "two columns, embedded font": Setting(font=VERA, size=7, columns=2, order="rows"),
    "two columns, Times": Setting(font="Times-Roman", size=9, columns=2, order="shuffled"),
    "two columns, Courier": Setting(font="Courier", size=6.5, columns=2, order="rows"),
    "three columns in order": Setting(columns=3, size=6.5),
    "three columns row by row": Setting(columns=3, size=6.5, order="rows", gutter=12),
    "three columns, words shuffled": Setting(columns=3, size=6.5, order="shuffled"),
}


class TestSettings:
    """Every line whole and in order, heads and feet marked, records as from the text."""

    @pytest.mark.parametrize("setting", SETTINGS.values(), ids=list(SETTINGS))
    def test_setting(self, setting: Setting) -> None:
        lines = wrapped(bulletin({1: 12, 2: 18, 3: 24}[setting.columns]), setting)
        count = len(pages_of(lines, setting))
        assert count > 1
        data = document(lines, setting, head=HEAD, foot="- {page} -")
        intake = read(data)
        assert told(intake) == []
        assert body_lines(intake) == expected(lines)
        marked = [intake.text[start:end].strip() for start, end in intake.furniture]
        assert sorted(marked) == sorted([HEAD] * count + [f"- {n + 1} -" for n in range(count)])
        from_text = noticeparse.parse("\n".join(map(plain, lines)))
        from_file = noticeparse.read_file(data, name="week.pdf")
        assert facts(from_file) == facts(from_text)
        assert all(one[-1] for one in facts(from_file))
        assert from_file.coverage.unread == 0
        assert from_file.source.media_type == "application/pdf"

    def test_a_text_in_one_width_comes_back_letter_for_letter(self) -> None:
        with open(DEMO, encoding="utf-8") as file:
            text = file.read()
        data = document(text.split("\n"), Setting(font="Courier", size=8))
        # Words are drawn one by one; the blanks between cells are told from the white.
        assert read(data).text == text


def page(*strings: tuple[float, float, str], font: str = "Helvetica", size: float = 9) -> bytes:
    """A page with strings at their places, points from the lower left corner."""
    made = io.BytesIO()
    canvas = Canvas(made, pagesize=(WIDTH, HEIGHT), invariant=True)
    for x, y, words in strings:
        draw(canvas, x, y, words, font, size)
    canvas.save()
    return made.getvalue()


def drawn(paint: Any) -> bytes:
    """A file of what `paint` draws on a canvas."""
    made = io.BytesIO()
    canvas = Canvas(made, pagesize=(WIDTH, HEIGHT), invariant=True)
    paint(canvas)
    canvas.save()
    return made.getvalue()


NOTICE = ("2417/26 TAVRENNE ISLANDS - Quill Sound - Wreck.", "Chart 802 [2310/26] WGS84")
ROWS = [
    ("Insert", "dangerous wreck, least depth 8‹6› m", "47°13'.05S., 123°44'.20W."),
    ("Delete", "depth 12‹4›", "47°13'.02S., 123°44'.31W."),
    ("Insert", "submarine cable, joining", "47°20'.15S., 123°30'.50W."),
    ("", "", "47°20'.62S., 123°31'.74W."),
    ("Amend", "range of light to 11M", "47°20'.07S., 123°30'.11W."),
    ("Delete", "obstruction, least depth 4‹3› m", "47°20'.44S., 123°31'.02W."),
]


def table(canvas: Canvas, top: float, *, by_column: bool = False, x: float = MARGIN) -> float:
    """Draw `ROWS` as a table of three columns; where it ends."""
    cells = [
        (x + left, top - 12 * row, words)
        for row, line in enumerate(ROWS)
        for left, words in zip((0, 60, 330), line, strict=True)
        if words
    ]
    for left, y, words in sorted(cells, key=lambda one: one[0]) if by_column else cells:
        draw(canvas, left, y, words, "Helvetica", 9)
    return top - 12 * len(ROWS)


def head(canvas: Canvas, top: float) -> float:
    for row, words in enumerate(NOTICE):
        draw(canvas, MARGIN, top - 12 * row, words, "Helvetica", 9)
    return top - 12 * len(NOTICE)


def table_text() -> str:
    return "\n".join(NOTICE) + "\n" + "\n".join("   ".join(map(plain, row)) for row in ROWS)


class TestTables:
    """Rows of a table stay rows; what crosses columns is read between them."""

    def test_a_table_is_read_in_rows(self) -> None:
        data = drawn(lambda canvas: table(canvas, head(canvas, 780)))
        assert told(read(data)) == []
        assert facts(noticeparse.read_file(data)) == facts(noticeparse.parse(table_text()))
        assert len(facts(noticeparse.read_file(data))) == 5

    def test_a_table_that_is_drawn_by_columns_is_in_doubt(self) -> None:
        data = drawn(lambda canvas: table(canvas, head(canvas, 780), by_column=True))
        assert told(read(data)) == ["page-order-in-doubt"]
        found = facts(noticeparse.read_file(data))
        assert not any(one[-1] for one in found)

    @pytest.mark.parametrize("order", ["columns", "rows", "shuffled"])
    def test_a_table_between_columns(self, order: Any) -> None:
        setting = Setting(columns=2, order=order)
        above = wrapped(bulletin(4, seed=2), setting)
        below = wrapped(bulletin(4, seed=3), setting)
        half, other = len(above) // 2, len(below) // 2

        def paint(canvas: Canvas) -> None:
            set_columns(canvas, [above[:half], above[half:]], setting)
            top = 780 - 10 * (len(above) - half) - 25
            draw(canvas, MARGIN, top, "Notices that change no chart are told elsewhere in full, "
                 "and this line crosses both columns of the page.", "Helvetica", 8)  # fmt: skip
            end = table(canvas, head(canvas, top - 14))
            set_columns(canvas, [below[:other], below[other:]], setting, top=end - 25)

        intake = read(drawn(paint))
        assert told(intake) == []
        lines = body_lines(intake)
        assert lines[: len(expected(above))] == expected(above)
        assert lines[-len(expected(below)) :] == expected(below)
        middle = lines[len(expected(above)) + 1 : -len(expected(below))]
        assert middle == [" ".join(line.split()) for line in table_text().split("\n")]

    @pytest.mark.parametrize("order", ["columns", "rows", "shuffled"])
    def test_tables_within_columns(self, order: Any) -> None:
        """Each column has its own table: the white within it is no gutter."""
        rows = [
            (f"Delete depth {n}‹{n % 9 + 1}›", f"47°{n:02}'.05S., 123°44'.20W.")
            for n in range(10, 30)
        ]
        words = []
        for column, part in enumerate((rows[:10], rows[10:])):
            left = MARGIN + column * 270
            words.append([(left, 756.0, NOTICE[0]), (left, 744.0, NOTICE[1])])
            for row, (what, where) in enumerate(part):
                y = 732 - 12.0 * row
                words[-1] += [(left, y, what), (left + 110, y, where)]
        flat = [one for column in words for one in column]
        if order == "rows":
            flat.sort(key=lambda one: (-one[1], one[0]))
        if order == "shuffled":
            random.Random(3).shuffle(flat)
        intake = read(page(*flat, size=8))
        assert told(intake) == []
        text = [
            *NOTICE,
            *(" ".join(one) for one in rows[:10]),
            *NOTICE,
            *(" ".join(one) for one in rows[10:]),
        ]
        assert body_lines(intake) == expected(text)

    def test_latitude_and_longitude_in_columns_of_their_own(self) -> None:
        rows = [("Delete wreck", f"47°{n}'.05S", f"123°{n}'.20W") for n in range(10, 22)]
        strings = [(MARGIN, 780.0, NOTICE[0]), (MARGIN, 768.0, NOTICE[1])]
        for row, cells in enumerate(rows):
            strings += [
                (x, 756 - 12.0 * row, one) for x, one in zip((40, 200, 320), cells, strict=True)
            ]
        intake = read(page(*strings))
        assert told(intake) == []
        assert body_lines(intake) == expected([*NOTICE, *map(" ".join, rows)])

    def test_columns_that_cannot_be_told_are_an_error(self) -> None:
        """Corners in two columns, drawn by rows: either order is an outline."""
        places = [f"47°{n}'.05S., 123°{n}'.20W." for n in range(10, 22)]
        strings = [(MARGIN, 780.0, NOTICE[0]), (MARGIN, 768.0, NOTICE[1]),
                   (MARGIN, 756.0, "Insert submarine cable, joining")]  # fmt: skip
        for row in range(6):
            y = 744 - 12.0 * row
            strings += [(MARGIN, y, places[row]), (320, y, places[row + 6])]
        data = page(*strings)
        assert told(read(data)) == ["page-order-in-doubt"]
        assert not any(one[-1] for one in facts(noticeparse.read_file(data)))


def item(words: str) -> bytes:
    """A page of one notice with one action line."""
    lines = [*NOTICE, words]
    return page(*((MARGIN, 780 - 12.0 * row, line) for row, line in enumerate(lines)))


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
