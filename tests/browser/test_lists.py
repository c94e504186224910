"""The findings and the actions that are shown: by key, by filter, counted, without a mouse."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

pytest.importorskip("playwright", reason="playwright is not installed")

from playwright.sync_api import expect

from tests.browser.desk import (
    CHARTS,
    DEMO,
    FAULTY,
    choose,
    clipboard,
    drop,
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


class TestFindings:
    """What needs a look."""

    def test_counts_message_hint_and_meaning(self, page: Page) -> None:
        paste(page, FAULTY)
        expect(page.locator("#severities button")).to_have_text(
            ["1 error", "2 warnings", "0 info"]
        )
        first = page.locator(".finding").first
        expect(first).to_contain_text("73.02 minutes; 59 is the last")
        expect(first).to_contain_text("line 11 · notice 2417/26 · chart 802")
        expect(first.locator(".hint")).to_contain_text("digit slip")
        first.locator("summary").click()
        expect(first.locator(".meaning p")).to_contain_text("never carried over into the degrees")
        expect(first.locator("code")).to_have_text("position-minutes-out-of-range")

    def test_marked_in_the_text_by_more_than_colour(self, page: Page) -> None:
        paste(page, FAULTY)
        page.keyboard.press("ControlOrMeta+Home")
        style = "one => getComputedStyle(one).textDecorationStyle"
        error = page.locator("#editor .np-error")
        expect(error).to_have_text("47°73'.02S.")
        assert error.evaluate(style) == "wavy"
        page.keyboard.press("ControlOrMeta+End")
        assert page.locator("#editor .np-warning").last.evaluate(style) == "dashed"

    def test_next_and_previous_by_key(self, page: Page) -> None:
        paste(page, FAULTY)
        page.keyboard.press("ControlOrMeta+Home")
        page.keyboard.press("F8")
        eventually(page, selected, "47°73'.02S.")
        expect(slip(page, "depth 12.4m")).to_have_attribute("aria-current", "true")
        expect(page.locator("#said")).to_contain_text("Finding 1 of 3: error")
        page.keyboard.press("F8")
        eventually(page, selected, "48°20'.44S., 123°31'.02W.")
        page.keyboard.press("F8")
        expect(page.locator(".finding[aria-current]")).to_contain_text("VQ(9)10s")
        page.keyboard.press("F8")
        eventually(page, selected, "47°73'.02S.")
        page.keyboard.press("Shift+F8")
        expect(page.locator(".finding[aria-current]")).to_contain_text("VQ(9)10s")
        page.locator("#next-finding").click()
        eventually(page, selected, "47°73'.02S.")

    def test_severities_that_are_not_shown_are_counted(self, page: Page) -> None:
        paste(page, FAULTY)
        page.locator("#severities .warning").click()
        expect(page.locator(".finding")).to_have_count(1)
        expect(page.locator("#finding-count")).to_have_text("1 of 3 shown")
        expect(page.locator("#severities .warning")).to_be_focused()

    def test_a_clean_text_is_not_called_free_of_error(self, page: Page) -> None:
        paste(page, DEMO)
        expect(page.locator("#finding-count")).to_contain_text("no proof")


class TestFilters:
    """Nothing is held back without being counted."""

    @pytest.mark.parametrize(
        ("field", "value", "count"),
        [
            ("#by-chart", "802", 6),
            ("#by-verb", "move", 2),
            ("#by-kind", "wreck_dangerous", 1),
            ("#by-severity", "unusable", 1),
            ("#by-severity", "none", 8),
            ("#by-severity", "warning", 2),
        ],
    )
    def test_each_filter(self, page: Page, field: str, value: str, count: int) -> None:
        paste(page, FAULTY)
        page.locator(field).select_option(value)
        expect(page.locator(".slip")).to_have_count(count)
        expect(page.locator("#action-count")).to_have_text(
            f"{count} of 11 actions in 2 notices shown"
        )
        page.locator("#show-all").click()
        expect(page.locator(".slip")).to_have_count(11)

    @pytest.mark.parametrize(
        ("sought", "count"),
        [
            ("submarine cable", 1),
            ("2418/26", 5),
            ("4711.90", 1),
            ("47°12'.34S", 1),
            ("buoy 803 move", 2),
        ],
    )
    def test_search(self, page: Page, sought: str, count: int) -> None:
        paste(page, DEMO)
        page.locator("#seek").fill(sought)
        expect(page.locator(".slip")).to_have_count(count)

    def test_nothing_found_is_said(self, page: Page) -> None:
        paste(page, DEMO)
        page.locator("#seek").fill("lighthouse keeper")
        expect(page.locator("#slips")).to_have_text("No action is like that.")
        expect(page.locator("#action-count")).to_have_text("0 of 11 actions in 2 notices shown")

    def test_a_filter_holds_while_the_text_is_edited(self, page: Page) -> None:
        paste(page, FAULTY)
        page.locator("#by-severity").select_option("unusable")
        page.locator(".finding-go").first.click()
        page.keyboard.type("47°13'.02S.")
        expect(page.locator("#action-count")).to_have_text("0 of 11 actions in 2 notices shown")


class TestChartList:
    """With the charts on board."""

    def test_a_list_puts_positions_on_their_sheets(self, page: Page) -> None:
        paste(page, DEMO)
        drop(page, "charts.csv", CHARTS.encode())
        expect(page.locator("#charts-answer")).to_contain_text("charts.csv is in use: 9 rows")
        page.keyboard.press("Escape")
        expect(slip(page, "dangerous wreck")).to_contain_text("265.793 mm right")
        page.reload()
        read(page)
        expect(slip(page, "dangerous wreck")).to_contain_text("265.793 mm right")
        page.locator("#charts").click()
        page.locator("#charts-drop").click()
        page.keyboard.press("Escape")
        expect(slip(page, "dangerous wreck")).not_to_contain_text("mm right")

    def test_a_list_with_a_fault_is_not_used(self, page: Page) -> None:
        paste(page, DEMO)
        drop(page, "charts.csv", CHARTS.replace("75000", "many").encode())
        expect(page.locator("#charts-answer .refused")).to_contain_text("charts.csv is not used")
        expect(page.locator("#charts-answer li").first).to_contain_text("line 3")


class TestByKeyAlone:
    """The clerk's way without a mouse."""

    def test_from_the_top_of_the_page_to_the_mended_text(self, page: Page) -> None:
        page.evaluate("text => navigator.clipboard.writeText(text)", FAULTY)
        page.keyboard.press("Tab")
        expect(page.locator(".skips a").first).to_be_focused()
        page.keyboard.press("Enter")
        page.keyboard.press("ControlOrMeta+v")
        read(page)
        page.keyboard.press("F8")
        page.keyboard.type("47°13'.02S.")
        expect(page.locator("#state-words")).to_contain_text("none held back")
        page.keyboard.press("ControlOrMeta+Enter")
        expect(page.locator(".slip:focus")).to_contain_text("depth 12.4m")
        page.keyboard.press("ArrowDown")
        expect(page.locator(".slip:focus")).to_contain_text("port-hand light-buoy, Fl.R.4s")
        page.keyboard.press("End")
        expect(page.locator(".slip:focus")).to_contain_text("Marina")
        page.keyboard.press("Enter")
        eventually(page, selected, lambda words: words.startswith("Replace  legend"))
        page.keyboard.type("x")
        eventually(page, text_of, lambda text: "Marina" not in text)

    def test_tab_leaves_the_text_and_comes_round(self, page: Page) -> None:
        paste(page, DEMO)
        editor(page).focus()
        seen = set()
        for _ in range(80):
            page.keyboard.press("Tab")
            seen.add(
                page.evaluate(
                    "document.activeElement.id || document.activeElement.className"
                    " || document.activeElement.tagName"
                )
            )
        wanted = {"previous-finding", "next-finding", "seek", "by-chart", "open", "take", "keys"}
        assert wanted <= seen
        assert any("slip" in one for one in seen)

    def test_parts_by_key(self, page: Page) -> None:
        paste(page, DEMO)
        page.keyboard.press("F9")
        expect(page.locator("#next-finding")).to_be_focused()
        page.keyboard.press("F9")
        expect(page.locator(".slip").first).to_be_focused()
        page.keyboard.press("Escape")
        page.keyboard.type("~")
        eventually(page, text_of, lambda text: text.replace("~", "", 1) == DEMO != text)

    def test_the_keys_are_told(self, page: Page) -> None:
        page.locator("#keys").click()
        expect(page.locator("#key-list")).to_contain_text("next finding")
        page.keyboard.press("Escape")
        expect(page.locator("#keys-dialog")).to_be_hidden()
        expect(page.locator("#keys")).to_be_focused()


def test_every_cell_can_be_copied(page: Page) -> None:
    paste(page, DEMO)
    wreck = choose(page, "dangerous wreck")
    for name, words in (
        ("Copy feature", "(a) dangerous wreck, least depth 8.6m"),
        ("Copy kind", "wreck_dangerous"),
        ("Copy position as written", "47°13'.05S., 123°44'.20W."),
        ("Copy position, ISO 6709", "-4713.05-12344.20/"),
    ):
        wreck.get_by_role("button", name=name, exact=True).click()
        expect(page.locator("#said")).to_contain_text(words)
        eventually(page, clipboard, words)
    wreck.get_by_role("button", name="Copy action").click()
    expect(page.locator("#said")).to_contain_text("Notice 2417/26, chart 802")
    eventually(page, clipboard, lambda words: "ISO 6709: -4713.05-12344.20/" in words)
