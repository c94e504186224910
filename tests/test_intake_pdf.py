"""PDF files in many settings: the text they were made from, and the same records."""

from __future__ import annotations

import random
from typing import Any

import pytest
from reportlab.pdfgen.canvas import Canvas

import noticeparse
from noticeparse.intake import read
from tests.corpus_files import CORPUS
from tests.pdf_notices import (
    HEAD,
    NOTICE,
    body_lines,
    bulletin,
    drawn,
    expected,
    facts,
    head,
    page,
    table,
    table_text,
    told,
)
from tests.pdf_pages import (
    MARGIN,
    VERA,
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
