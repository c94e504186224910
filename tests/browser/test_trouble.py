"""What goes wrong, in plain words; the text is never lost."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

pytest.importorskip("playwright", reason="playwright is not installed")

from playwright.sync_api import expect

from noticeparse.web.settings import ServiceSettings
from tests.browser.desk import (
    DEMO,
    FAULTY,
    PARSE,
    drawn,
    editor,
    eventually,
    held,
    paste,
    read,
    text_of,
)
from tests.service import served

if TYPE_CHECKING:
    from playwright.sync_api import Page, Route

    from tests.browser.conftest import Opener

REFUSING = """() => {
  window.fetch = async () => ({ ok: false, status: 401, json: async () => ({}) });
}"""
"""A service that refuses the token faster than the browser draws."""


def problem(status: int, kind: str, title: str, detail: str) -> dict[str, object]:
    return {
        "status": status,
        "content_type": "application/problem+json",
        "headers": {"Retry-After": "1"},
        "json": {"type": f"urn:noticeparse:problem:{kind}", "title": title, "detail": detail},
    }


def type_into(page: Page, words: str) -> None:
    editor(page).click()
    page.keyboard.insert_text(words)


class TestService:
    """The service does not do what is wished."""

    def test_away_and_back(self, page: Page) -> None:
        paste(page, FAULTY)
        page.route(PARSE, lambda route: route.abort())
        type_into(page, "x")
        expect(page.locator("#trouble-words")).to_contain_text("does not answer")
        expect(page.locator("#state-words")).to_contain_text("Not read")
        eventually(page, text_of, lambda text: len(text) == len(FAULTY) + 1)
        expect(page.locator(".slip")).to_have_count(11)
        page.unroute(PARSE)
        page.locator("#again").click()
        read(page)
        expect(page.locator("#trouble")).to_be_hidden()

    def test_busy_is_tried_again(self, page: Page) -> None:
        answers = [503, 200]

        def busy_once(route: Route) -> None:
            if answers.pop(0) == 503:
                route.fulfill(**problem(503, "busy", "The service is busy", "try again"))
            else:
                route.continue_()

        page.route(PARSE, busy_once)
        paste(page, DEMO)
        assert answers == []
        expect(page.locator("#trouble")).to_be_hidden()

    def test_a_fault_of_the_program_is_told(self, page: Page) -> None:
        paste(page, DEMO)
        answer = problem(
            500, "internal", "The program failed", "the log of the service says where"
        )
        page.route(PARSE, lambda route: route.fulfill(**answer))
        type_into(page, "x")
        expect(page.locator("#trouble-words")).to_contain_text("The program failed")
        page.locator("#trouble-close").click()
        expect(page.locator("#trouble")).to_be_hidden()
        eventually(page, text_of, lambda text: len(text) == len(DEMO) + 1)

    def test_an_older_answer_is_dropped(self, page: Page) -> None:
        paste(page, FAULTY)
        routes = held(page, times=1)
        page.locator(".finding-go").first.click()
        page.keyboard.insert_text("47°13'.02S.")
        expect(page.locator("#state-words")).to_contain_text("Reading")
        page.keyboard.press("ControlOrMeta+z")
        read(page)
        assert routes
        expect(page.locator(".stamp")).to_have_count(1)
        expect(page.locator("#trouble")).to_be_hidden()


def test_too_large_a_text(opened: Opener) -> None:
    with served(ServiceSettings(workers=2, max_body=3000)) as address:
        page = opened(at=address)
        editor(page).click()
        page.keyboard.insert_text(DEMO * 2)
        expect(page.locator("#trouble-words")).to_contain_text("at most 3000 bytes")
        assert text_of(page) == DEMO * 2


def test_a_token(opened: Opener) -> None:
    with served(ServiceSettings(workers=2, token="tavrenne")) as address:
        page = opened(at=address)
        type_into(page, DEMO)
        page.locator("#token").fill("wrong")
        page.keyboard.press("Enter")
        expect(page.locator("#token-words")).to_contain_text("not the token")
        page.locator("#token").fill("tavrenne")
        page.keyboard.press("Enter")
        read(page)
        expect(page.locator("#token-dialog")).to_be_hidden()
        assert text_of(page) == DEMO


def test_a_second_question_for_the_token_outlasts_the_first(page: Page) -> None:
    page.evaluate(REFUSING)
    type_into(page, DEMO)
    page.locator("#token").fill("wrong")
    page.keyboard.press("Enter")
    expect(page.locator("#token-words")).to_contain_text("not the token")
    drawn(page)
    expect(page.locator("#token-dialog")).to_be_visible()
    expect(page.locator("#trouble")).to_be_hidden()


class TestBadInput:
    """Texts and files that are no bulletin."""

    @pytest.mark.parametrize(
        "text",
        [
            "\U0001f6a2 \U0001f6a2 no notice at all",
            "\x00\x01\x7f\ufffd binary",
            "Insert wreck",
            "\n\n\n ",
        ],
        ids=["emoji", "binary", "fragment", "blank"],
    )
    def test_any_text(self, page: Page, text: str) -> None:
        editor(page).click()
        page.keyboard.insert_text(text)
        expect(page.locator("#state-words")).to_contain_text(
            "Read in" if text.strip() else "Nothing read yet"
        )
        expect(page.locator("#trouble")).to_be_hidden()

    def test_several_files_at_once_are_refused(self, page: Page) -> None:
        paste(page, DEMO)
        page.locator("#file").evaluate("one => { one.multiple = true }")
        page.locator("#file").set_input_files(
            [
                {"name": f"{name}.txt", "mimeType": "text/plain", "buffer": b"x"}
                for name in ("one", "two")
            ]
        )
        expect(page.locator("#trouble-words")).to_contain_text("one bulletin at a time")
        assert text_of(page) == DEMO

    def test_markup_in_a_text_stays_text(self, page: Page) -> None:
        paste(page, DEMO.replace("Foul ground", "<img src=x><b>Foul</b>"))
        expect(page.locator("#slips img, #slips .what b")).to_have_count(0)
        page.locator("#seek").fill("<img")
        expect(page.locator(".slip")).to_contain_text("<img src=x><b>Foul</b>")
