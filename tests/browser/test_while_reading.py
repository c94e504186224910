"""What a person picks while the text is being read anew: it leads to its words all the same."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

pytest.importorskip("playwright", reason="playwright is not installed")

from playwright.sync_api import expect

from tests.browser.desk import (
    DEMO,
    FAULTY,
    PARSE,
    choose,
    drawn,
    editor,
    eventually,
    held,
    paste,
    read,
    selected,
    slip,
)

if TYPE_CHECKING:
    from playwright.sync_api import Locator, Page, Route

WRECK = "dangerous wreck"
WRECK_WORDS = "Insert   (a) dangerous wreck, least depth 8.6m     47°13'.05S., 123°44'.20W."

PRESS = {"isPrimary": True, "button": 0}

STEP_BY_STEP = """() => {
    scheduler.yield = () => new Promise((done) => { window.goOn = done; });
}"""
GO_ON = """() => {
    const goOn = window.goOn;
    window.goOn = null;
    goOn?.();
}"""


def with_a_line_before(page: Page) -> Route:
    """Put a line before the whole text; gives the wish to read it, which is not answered."""
    routes = held(page, times=1)
    editor(page).press("ControlOrMeta+Home")
    page.keyboard.insert_text("A line before.\n")
    eventually(page, lambda _: len(routes), 1)
    return routes[0]


def answer(page: Page, route: Route) -> None:
    """Let the answer come, and give the page time for what it does with it."""
    with page.expect_response(PARSE) as response:
        route.continue_()
    response.value.finished()
    page.wait_for_timeout(300)


def press(page: Page, pressed: Locator) -> None:
    """Press on the middle of something, and keep the button down."""
    pressed.hover()
    page.mouse.down()


def test_a_slip_that_is_picked_before_the_answer(page: Page) -> None:
    paste(page, DEMO)
    route = with_a_line_before(page)
    choose(page, WRECK)
    eventually(page, selected, WRECK_WORDS)
    answer(page, route)
    read(page)
    eventually(page, selected, WRECK_WORDS)
    expect(page.locator(".slip[aria-current]")).to_contain_text(WRECK)


def test_a_slip_that_is_pressed_when_the_answer_comes(page: Page) -> None:
    paste(page, DEMO)
    route = with_a_line_before(page)
    press(page, slip(page, WRECK).locator(".slip-verb"))
    answer(page, route)
    page.mouse.up()
    eventually(page, selected, WRECK_WORDS)
    read(page)
    eventually(page, selected, WRECK_WORDS)
    expect(page.locator(".slip[aria-current]")).to_contain_text(WRECK)


def test_the_slip_that_was_picked_of_those_of_one_action(page: Page) -> None:
    paste(page, DEMO.replace("\nChart 802 ", "\nCharts 802 [last correction 2310/26] 803 ", 1))
    route = with_a_line_before(page)
    wrecks = page.locator(".slip", has_text=WRECK)
    expect(wrecks).to_have_count(2)
    wrecks.last.locator(".slip-verb").click()
    expect(wrecks.last).to_have_attribute("aria-current", "true")
    answer(page, route)
    read(page)
    expect(wrecks.last).to_have_attribute("aria-current", "true")
    expect(page.locator(".slip[aria-current]")).to_have_count(1)
    eventually(page, selected, WRECK_WORDS)


def test_a_finding_that_is_pressed_when_the_answer_comes(page: Page) -> None:
    paste(page, FAULTY)
    route = with_a_line_before(page)
    press(page, page.locator(".finding-go", has_text="73.02"))
    answer(page, route)
    page.mouse.up()
    eventually(page, selected, "47°73'.02S.")
    read(page)
    eventually(page, selected, "47°73'.02S.")


@pytest.mark.parametrize("sign", ["a move without a button", "a key"])
def test_a_press_whose_end_is_not_told_holds_up_nothing(page: Page, sign: str) -> None:
    paste(page, DEMO)
    route = with_a_line_before(page)
    page.mouse.move(640, 360)
    page.locator("#slips").dispatch_event("pointerdown", PRESS)
    answer(page, route)
    expect(page.locator("#state-words")).to_contain_text("what stands below is from before")
    if sign == "a key":
        page.keyboard.press("Shift")
    else:
        page.mouse.move(650, 370)
    read(page)


def test_the_list_of_a_select_holds_up_nothing(page: Page) -> None:
    paste(page, DEMO)
    route = with_a_line_before(page)
    page.locator("#by-verb").dispatch_event("pointerdown", PRESS)
    answer(page, route)
    read(page)


def test_a_text_that_is_emptied_and_brought_back_under_a_press(page: Page) -> None:
    paste(page, DEMO)
    page.mouse.move(640, 360)
    editor(page).press("ControlOrMeta+a")
    page.locator("#slips").dispatch_event("pointerdown", PRESS)
    page.keyboard.insert_text(" ")
    page.wait_for_timeout(300)
    page.keyboard.insert_text(DEMO)
    page.wait_for_timeout(300)
    expect(page.locator("#state-words")).not_to_contain_text("Read in")
    page.mouse.move(650, 370)
    read(page)
    expect(page.locator(".slip")).to_have_count(11)


def test_a_slip_of_a_long_bulletin_between_the_steps_of_laying_out(page: Page) -> None:
    paste(page, DEMO * 100)
    expect(page.locator("#action-count")).to_contain_text("all 1100 actions")
    page.evaluate(STEP_BY_STEP)
    editor(page).press("ControlOrMeta+Home")
    page.keyboard.insert_text("A line before.\n")
    steps = 0
    while "Read in" not in page.locator("#state-words").inner_text():
        eventually(page, lambda page: page.evaluate("Boolean(window.goOn)"), True)
        steps += 1
        for words, wanted in ((WRECK, WRECK_WORDS), ("Marina", "Replace  legend")):
            choose(page, words)
            assert selected(page).startswith(wanted), steps
        page.evaluate(GO_ON)
        drawn(page)
    assert steps >= 5
