"""The HTML sheet in a browser: no fault of accessibility, and whole actions on printed pages."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pypdfium2
import pytest

from noticeparse.worksheet.documents import sheet_document
from tests.worksheet.week import WEEK, chart_list, sheets_of

axe = pytest.importorskip("axe_playwright_python.sync_playwright", reason="axe is not installed")


@pytest.fixture(scope="module")
def page(browser: Any) -> Iterator[Any]:
    page = browser.new_page(color_scheme="dark")
    page.set_content(sheet_document(sheets_of(WEEK, charts=chart_list()), "html").decode())
    yield page
    page.close()


@pytest.mark.parametrize("width", [375, 1280])
def test_axe_finds_nothing(page: Any, width: int) -> None:
    page.set_viewport_size({"width": width, "height": 900})
    found = axe.Axe().run(page)
    assert found.violations_count == 0, found.generate_report()
    assert page.evaluate("document.documentElement.scrollWidth") <= width


def test_printed_pages(page: Any) -> None:
    document = pypdfium2.PdfDocument(page.pdf(prefer_css_page_size=True))
    texts = [" ".join(one.get_textpage().get_text_range().split()) for one in document]
    assert [round(side) for side in document[0].get_size()] == [595, 842]
    assert all("Chart 803" in text and "An aid to a qualified officer" in text for text in texts)
    (sheet,) = sheets_of(WEEK, charts=chart_list())
    for line in sheet.lines():
        words = " ".join(line.written.split())
        (text,) = [text for text in texts if words in text]
        assert all(one.words in text for one in line.told)


def test_boxes_are_ticked_by_key(page: Any) -> None:
    box = page.get_by_role("checkbox", name="action 1: applied")
    box.focus()
    page.keyboard.press("Space")
    assert box.is_checked()
