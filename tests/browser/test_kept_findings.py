"""What was found in a file, and that its text was changed: over a reload, and on what leaves."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING, Any

import pytest

pytest.importorskip("playwright", reason="playwright is not installed")

from playwright.sync_api import expect

from tests.browser.desk import FAULTY, drawn, drop, editor, eventually, held, paste, read, selected

if TYPE_CHECKING:
    from playwright.sync_api import Page

LATIN = FAULTY.encode("latin-1", "replace") + b"\nRemark: the H\xf6rn light.\n"


def sheet_request(page: Page) -> dict[str, Any]:
    """What the page sends for a work sheet."""
    page.keyboard.press("Alt+W")
    with page.expect_request("**/v1/sheet") as asked:
        page.locator("[data-sheet=pdf]").click()
    page.locator("#sheet-dialog").press("Escape")
    body: dict[str, Any] = json.loads(asked.value.post_data or "")
    return body


def test_findings_of_a_file_outlast_a_reload_and_go_along(page: Page) -> None:
    drop(page, "week26.txt", LATIN)
    read(page)
    first = sheet_request(page)
    assert first["file_findings"]
    assert first["edited"] is False
    message = first["file_findings"][0]["message"]
    expect(page.locator(".finding", has_text=message)).to_have_count(1)
    page.reload()
    read(page)
    expect(page.locator(".finding", has_text=message)).to_have_count(1)
    again = sheet_request(page)
    assert again["file_findings"] == first["file_findings"]
    editor(page).press("ControlOrMeta+Home")
    page.keyboard.insert_text("A line before.\n")
    read(page)
    moved = sheet_request(page)
    assert moved["edited"] is True
    for old, new in zip(first["file_findings"], moved["file_findings"], strict=True):
        if old["span"]:
            assert new["span"]["start"] == old["span"]["start"] + 15
            assert new["span"]["line"] == old["span"]["line"] + 1
    page.reload()
    read(page)
    assert sheet_request(page)["edited"] is True


def test_a_pasted_text_is_edited_from_its_first_change(page: Page) -> None:
    paste(page, FAULTY)
    assert sheet_request(page)["edited"] is False
    editor(page).press("ControlOrMeta+End")
    page.keyboard.insert_text("x")
    expect(page.locator("#state-words")).to_contain_text("Read in")
    assert sheet_request(page)["edited"] is True


def test_the_page_says_at_the_first_key_that_it_is_behind(page: Page) -> None:
    paste(page, FAULTY * 40)
    routes = held(page)  # so that no answer is faster than this test
    editor(page).press("ControlOrMeta+Home")
    page.keyboard.press("x")
    assert "what stands below is from before" in page.locator("#state-words").inner_text()
    eventually(page, lambda _: len(routes), 1)
    assert "what stands below is from before" in page.locator("#state-words").inner_text()


def test_errors_come_first_at_f8(page: Page) -> None:
    paste(page, FAULTY)
    editor(page).press("ControlOrMeta+Home")
    ranks = []
    for _ in range(page.locator(".finding").count()):
        page.keyboard.press("F8")
        shown = page.locator(".finding[aria-current=true] b").inner_text()
        ranks.append(["error", "warning", "info"].index(shown.lower()))
    assert ranks == sorted(ranks)
    assert len(set(ranks)) > 1
    eventually(page, selected, bool)


def test_f8_shows_the_head_of_its_line(page: Page) -> None:
    page.set_viewport_size({"width": 1280, "height": 800})
    wide = "2430/26  Wreck.\nChart 802 WGS84\nInsert wreck 47°73'.05S., 123°44'.20W." + " " * 300
    paste(page, wide + ".\n")
    scroller = page.locator("#editor .cm-scroller")
    scroller.evaluate("one => { one.scrollLeft = 900; }")
    editor(page).focus()
    page.keyboard.press("F8")
    eventually(page, lambda _: scroller.evaluate("one => one.scrollLeft"), 0)
    drawn(page)
    assert scroller.evaluate("one => one.scrollLeft") == 0


def test_all_tools_are_on_the_screen_of_a_phone(page: Page) -> None:
    page.set_viewport_size({"width": 390, "height": 844})
    for name in ("#open", "#sheets", "#take"):
        box = page.locator(name).bounding_box()
        assert box is not None
        assert box["x"] >= 0
        assert box["x"] + box["width"] <= 390
