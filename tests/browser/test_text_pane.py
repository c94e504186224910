"""The text: pasted, edited, undone, linked both ways with its actions, kept in this browser."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

pytest.importorskip("playwright", reason="playwright is not installed")

from playwright.sync_api import expect

from noticeparse.caution import CAUTION
from noticeparse.testing.generator import generate
from tests.browser.desk import (
    DEMO,
    EDITION,
    FAULTY,
    choose,
    clipboard,
    editor,
    eventually,
    paste,
    read,
    selected,
    slip,
    text_of,
)

if TYPE_CHECKING:
    from playwright.sync_api import Page

    from tests.browser.conftest import Opener


RANGE = "light, ranges is now"
"""What stands on the slip of `Amend range of light to 11M`."""

RANGE_WORDS = "Amend    range of light to 11M                     47°20'.07S., 123°30'.11W."

SLOW_TIMERS = """() => {
  const timer = window.setTimeout;
  window.setTimeout = (call, wait = 0, ...given) => timer(call, Math.max(wait, 400), ...given);
}"""


def kept_text(page: Page) -> str | None:
    """The text that the browser keeps for the next visit."""
    words: str | None = page.evaluate("localStorage.getItem('noticeparse.text')")
    return words


class TestReading:
    """Paste and edit: the records follow."""

    def test_a_pasted_bulletin_gives_its_actions(self, page: Page) -> None:
        paste(page, DEMO)
        expect(page.locator("#action-count")).to_have_text("all 11 actions in 2 notices")
        expect(page.locator(".notice h3 .number .cell-words")).to_have_text(["2417/26", "2418/26"])
        wreck = slip(page, "dangerous wreck")
        expect(wreck.locator(".slip-verb")).to_have_text("insert")
        expect(wreck.locator(".written .cell-words")).to_have_text("47°13'.05S., 123°44'.20W.")
        expect(wreck.locator(".position .code .cell-words")).to_have_text("-4713.05-12344.20/")
        expect(page.locator("#state-words")).to_contain_text("none held back")
        expect(page.locator(".caution").first).to_contain_text(CAUTION)

    def test_what_is_doubtful_or_not_to_be_used_is_marked(self, page: Page) -> None:
        paste(page, FAULTY)
        bad = slip(page, "depth 12.4m")
        expect(bad.locator(".stamp")).to_have_text("not to be used")
        expect(bad.locator(".finding-line")).to_contain_text("73.02 minutes")
        expect(page.locator("#state-words")).to_contain_text("1 not to be used")
        reference = slip(page, "Foul ground")
        expect(reference.locator("dd.doubt")).to_contain_text("not the feature's own")

    def test_records_follow_an_edit(self, page: Page) -> None:
        paste(page, FAULTY)
        page.locator(".finding", has_text="73.02").locator(".finding-go").click()
        page.keyboard.type("47°13'.02S.")
        expect(page.locator(".stamp")).to_have_count(0)
        expect(page.locator("#state-words")).to_contain_text("none held back")

    def test_typing_that_is_faster_than_the_timers_of_the_page(self, page: Page) -> None:
        paste(page, FAULTY)
        page.evaluate(SLOW_TIMERS)
        page.locator(".finding", has_text="73.02").locator(".finding-go").click()
        page.keyboard.type("47°13'.02S.", delay=60)
        page.wait_for_timeout(1000)
        eventually(page, text_of, FAULTY.replace("47°73'.02S.", "47°13'.02S."))

    def test_a_paste_over_a_file_is_no_longer_that_file(self, page: Page) -> None:
        page.locator("#example").click()
        expect(page.locator("#file-name")).to_have_text("example_edition.txt")
        paste(page, DEMO)
        expect(page.locator("#file-name")).to_have_text("not from a file")

    def test_an_empty_text_has_no_records(self, page: Page) -> None:
        paste(page, DEMO)
        editor(page).press("ControlOrMeta+a")
        page.keyboard.press("Delete")
        expect(page.locator(".welcome")).to_be_visible()
        expect(page.locator("#state-words")).to_have_text("Nothing read yet.")

    def test_undo_survives_reading_and_opening(self, page: Page) -> None:
        paste(page, FAULTY)
        page.locator("#example").click()
        expect(page.locator("#file-name")).to_have_text("example_edition.txt")
        read(page)
        editor(page).focus()
        page.keyboard.press("ControlOrMeta+z")
        expect(page.locator("#severities .error")).to_have_text("1 error")
        eventually(page, text_of, FAULTY)

    def test_characters_of_two_units(self, page: Page) -> None:
        paste(page, DEMO.replace("Quill Sound - Wreck", "Quill \U0001f6a2 Sound - Wreck"))
        choose(page, "obstruction, least depth 4.3m")
        eventually(page, selected, lambda words: words.endswith("123°31'.02W."))
        assert selected(page).startswith("Delete   obstruction, least depth 4.3m")


class TestLinks:
    """An action leads to its words, and words to their action."""

    def test_from_the_action_to_the_text(self, page: Page) -> None:
        paste(page, DEMO)
        choose(page, RANGE)
        eventually(page, selected, RANGE_WORDS)
        expect(page.locator("#editor .np-current").first).to_be_in_viewport()

    def test_the_selection_is_still_there_when_the_text_is_gone_to(self, page: Page) -> None:
        paste(page, DEMO)
        choose(page, RANGE)
        editor(page).focus()
        page.keyboard.press("ControlOrMeta+c")
        expect(page.locator(".slip[aria-current]")).to_contain_text(RANGE)
        eventually(page, clipboard, RANGE_WORDS)
        eventually(page, selected, RANGE_WORDS)

    def test_from_the_text_to_the_action(self, page: Page) -> None:
        paste(page, DEMO)
        page.locator("#editor .cm-line", has_text="range of light").click()
        expect(slip(page, RANGE)).to_have_attribute("aria-current", "true")
        expect(slip(page, RANGE)).to_be_in_viewport()
        expect(page.locator(".slip[aria-current]")).to_have_count(1)

    def test_from_the_sign_beside_the_text(self, page: Page) -> None:
        paste(page, DEMO)
        page.locator("#editor .np-sign").last.click()
        expect(page.locator(".slip[aria-current] .slip-verb")).to_have_text("replace")

    def test_a_stretch_is_followed_through_edits(self, page: Page) -> None:
        paste(page, DEMO)
        editor(page).press("ControlOrMeta+Home")
        page.keyboard.type("A line before.\n")
        expect(page.locator("#editor .cm-line").first).to_have_text("A line before.")
        choose(page, RANGE)
        eventually(page, selected, RANGE_WORDS)


class TestKeeping:
    """What this browser keeps, and nothing else does."""

    def test_the_text_is_there_after_a_reload(self, page: Page) -> None:
        page.locator("#example").click()
        read(page)
        page.reload()
        read(page)
        expect(page.locator("#file-name")).to_have_text("example_edition.txt")
        eventually(page, text_of, EDITION)

    def test_clear_takes_it_out_and_undo_brings_it_back(self, page: Page) -> None:
        paste(page, DEMO)
        page.locator("#clear").click()
        expect(page.locator(".welcome")).to_be_visible()
        eventually(page, kept_text, None)
        page.keyboard.press("ControlOrMeta+z")
        eventually(page, text_of, DEMO)
        read(page)

    def test_forget_leaves_nothing(self, page: Page) -> None:
        paste(page, DEMO)
        page.locator("#theme").click()
        page.locator("#stay").click()
        with page.expect_event("load"):  # the page opens itself anew
            page.locator("#forget").click()
        page.locator("body[data-ready]").wait_for()
        expect(page.locator(".welcome")).to_be_visible()
        assert page.evaluate("Object.keys(localStorage)") == []

    def test_another_visit_knows_nothing_of_it(self, opened: Opener) -> None:
        paste(opened(), DEMO)
        expect(opened().locator(".welcome")).to_be_visible()


def test_a_bulletin_of_a_megabyte(page: Page) -> None:
    text = generate(1, size_bytes=1_000_000).text
    page.evaluate(
        "new PerformanceObserver(list => { for (const one of list.getEntries())"
        " (window.longest ??= []).push(one.duration) }).observe({ type: 'longtask' })"
    )
    paste(page, text, timeout=900_000)
    expect(page.locator(".slip").first).to_be_visible()
    assert page.locator(".slip").count() < 500
    page.keyboard.press("ControlOrMeta+End")
    page.locator("#editor .np-sign").last.click()
    expect(page.locator(".slip[aria-current]")).to_be_in_viewport()
    page.locator("#seek").fill("wreck")
    expect(page.locator("#action-count")).to_contain_text(" of ")
    assert max(page.evaluate("window.longest ?? [0]")) < 1000
