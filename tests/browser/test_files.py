"""Files over the page: a PDF, mail, text in another encoding, and what is none of these."""

from __future__ import annotations

import io
from typing import TYPE_CHECKING

import pytest

pytest.importorskip("playwright", reason="playwright is not installed")
canvas = pytest.importorskip("reportlab.pdfgen.canvas", reason="reportlab is not installed")

from playwright.sync_api import expect

from tests.browser.desk import DEMO, FAULTY, drop, editor, eventually, paste, read, slip, text_of

if TYPE_CHECKING:
    from playwright.sync_api import Page

PER_PAGE = 16


def pdf_of(text: str) -> bytes:
    """A PDF with so many lines on each page."""
    made = io.BytesIO()
    paper = canvas.Canvas(made, pagesize=(595, 842))
    lines = text.split("\n")
    for at in range(0, len(lines), PER_PAGE):
        paper.setFont("Courier", 9)
        for row, line in enumerate(lines[at : at + PER_PAGE]):
            paper.drawString(50, 780 - 14 * row, line)
        paper.showPage()
    paper.save()
    return made.getvalue()


def test_a_pdf_is_read_and_its_pages_are_told(page: Page) -> None:
    drop(page, "week26.pdf", pdf_of(FAULTY), "application/pdf")
    read(page)
    expect(page.locator("#file-name")).to_have_text("week26.pdf")
    expect(page.locator("#action-count")).to_have_text("all 11 actions in 2 notices")
    expect(page.locator(".finding", has_text="73.02")).to_contain_text("page 1")
    expect(page.locator(".finding", has_text="60 miles")).to_contain_text("page 2")
    expect(page.locator("#drop")).to_be_hidden()


def test_pages_are_still_right_after_an_edit(page: Page) -> None:
    drop(page, "week26.pdf", pdf_of(FAULTY), "application/pdf")
    read(page)
    editor(page).press("ControlOrMeta+Home")
    page.keyboard.insert_text("A line before.\n" * 40)
    expect(page.locator(".finding", has_text="60 miles")).to_contain_text("line 6")
    expect(page.locator(".finding", has_text="60 miles")).to_contain_text("page 2")


def test_a_text_brought_back_has_no_pages_of_the_file(page: Page) -> None:
    paste(page, FAULTY)
    drop(page, "week26.pdf", pdf_of(FAULTY), "application/pdf")
    expect(page.locator(".finding", has_text="60 miles")).to_contain_text("page 2")
    editor(page).focus()
    page.keyboard.press("ControlOrMeta+z")
    expect(page.locator("#file-name")).to_have_text("not from a file")
    expect(page.locator(".finding", has_text="60 miles")).not_to_contain_text("page")
    eventually(page, text_of, FAULTY)


def test_a_mail(page: Page) -> None:
    head = (
        "From: office@example.org\nSubject: Notices\nContent-Type: text/plain; charset=utf-8\n\n"
    )
    drop(page, "notices.eml", (head + DEMO).encode(), "message/rfc822")
    read(page)
    expect(slip(page, "dangerous wreck")).to_be_visible()


def test_a_text_in_another_encoding_says_so(page: Page) -> None:
    drop(page, "old.txt", DEMO.encode("latin-1"))
    read(page)
    expect(page.locator("#action-count")).to_have_text("all 11 actions in 2 notices")
    expect(page.locator(".finding", has_text="the file is not UTF-8")).to_be_visible()


def test_a_file_that_cannot_be_read_leaves_the_text_alone(page: Page) -> None:
    paste(page, DEMO)
    drop(page, "broken.pdf", b"%PDF-1.7\n" + bytes(range(256)) * 20, "application/pdf")
    expect(page.locator("#trouble-words")).to_contain_text("broken.pdf was not opened")
    assert text_of(page) == DEMO


def test_a_file_is_opened_by_button(page: Page) -> None:
    with page.expect_file_chooser() as chooser:
        page.locator("#open").click()
    chooser.value.set_files(
        {"name": "week.txt", "mimeType": "text/plain", "buffer": DEMO.encode()}
    )
    read(page)
    expect(page.locator("#file-name")).to_have_text("week.txt")
    editor(page).focus()
    page.keyboard.press("ControlOrMeta+z")
    eventually(page, text_of, "")
