"""Looks that a program can judge: access by axe, light and dark, the phone, the policy."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import pytest

pytest.importorskip("playwright", reason="playwright is not installed")
axe = pytest.importorskip("axe_playwright_python.sync_playwright", reason="axe is not installed")

from playwright.sync_api import expect

from noticeparse.caution import CAUTION
from noticeparse.web.guard import POLICY
from tests.browser.desk import CHARTS, DEMO, FAULTY, choose, drop, editor, paste

if TYPE_CHECKING:
    from playwright.sync_api import Page

    from tests.browser.conftest import Opener

PHONE = {"width": 390, "height": 844}


def violations(page: Page) -> list[str]:
    found: dict[str, Any] = axe.Axe().run(page).response
    return [
        f"{one['id']}: {node['html'][:120]}"
        for one in found["violations"]
        for node in one["nodes"]
    ]


@pytest.mark.parametrize("scheme", ["light", "dark"])
class TestAccess:
    """Nothing that axe finds fault with, by day and by night."""

    def test_empty(self, opened: Opener, scheme: str) -> None:
        assert violations(opened(color_scheme=scheme)) == []

    def test_with_a_bulletin(self, opened: Opener, scheme: str) -> None:
        page = opened(color_scheme=scheme)
        paste(page, FAULTY)
        choose(page, "depth 12.4m")
        page.locator(".finding summary").first.click()
        expect(page.locator(".meaning code").first).to_be_visible()
        assert violations(page) == []

    @pytest.mark.parametrize("button", ["take", "sheets", "position", "charts", "stay", "keys"])
    def test_windows(self, opened: Opener, scheme: str, button: str) -> None:
        page = opened(color_scheme=scheme)
        paste(page, DEMO)
        if button == "charts":
            drop(page, "charts.csv", CHARTS.encode())
        else:
            page.locator(f"#{button}").click()
        expect(page.locator("dialog[open]")).to_be_visible()
        assert violations(page) == []

    def test_search_panel_of_the_text(self, opened: Opener, scheme: str) -> None:
        page = opened(color_scheme=scheme)
        paste(page, DEMO)
        editor(page).press("ControlOrMeta+f")
        expect(page.locator("#editor .cm-search")).to_be_visible()
        assert violations(page) == []

    def test_on_a_phone(self, opened: Opener, scheme: str) -> None:
        page = opened(color_scheme=scheme, viewport=PHONE, has_touch=True)
        paste(page, FAULTY)
        for part in ("text", "findings", "actions"):
            page.locator(f"nav.parts [data-part={part}]").click()
            assert violations(page) == [], part


def test_dark_by_the_system_and_by_the_switch(opened: Opener) -> None:
    dark = "getComputedStyle(document.documentElement).colorScheme"
    paper = "getComputedStyle(document.body).backgroundColor"
    night = opened(color_scheme="dark")
    by_system = night.evaluate(paper)
    page = opened(color_scheme="light")
    by_day = page.evaluate(paper)
    assert by_day != by_system
    page.locator("#theme").click()
    assert (page.evaluate(dark), page.evaluate(paper)) == ("light", by_day)
    page.locator("#theme").click()
    assert (page.evaluate(dark), page.evaluate(paper)) == ("dark", by_system)
    page.reload()
    page.locator("body[data-ready]").wait_for()
    assert page.evaluate(paper) == by_system


@pytest.mark.parametrize("size", [(1280, 720), (1920, 1080), (390, 844)])
def test_nothing_is_cut_off_and_the_caution_is_in_view(
    opened: Opener, size: tuple[int, int]
) -> None:
    width, height = size
    page = opened(viewport={"width": width, "height": height})
    paste(page, FAULTY)
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    assert page.evaluate("document.documentElement.scrollHeight") <= height
    expect(page.locator("#caution")).to_contain_text(CAUTION)
    expect(page.locator("#caution")).to_be_in_viewport(ratio=1)


def test_one_part_at_a_time_on_a_phone(opened: Opener) -> None:
    page = opened(viewport=PHONE, has_touch=True)
    paste(page, DEMO)
    expect(page.locator("#slips")).to_be_hidden()
    page.locator("nav.parts [data-part=actions]").tap()
    wreck = choose(page, "dangerous wreck")
    wreck.get_by_role("button", name="In the text").click()
    expect(page.locator("#slips")).to_be_hidden()
    expect(page.locator("#editor .np-current").first).to_be_in_viewport()


def test_the_policy_is_as_strict_as_everywhere(page: Page, address: str) -> None:
    assert page.request.get(address).headers["content-security-policy"] == POLICY
    assert "unsafe" not in POLICY
    paste(page, DEMO)
    assert page.evaluate("[...document.querySelectorAll('style, script:not([src])')].length") == 0


def test_still_without_motion(opened: Opener) -> None:
    page = opened(reduced_motion="reduce")
    seconds = page.locator(".skips a").first.evaluate(
        "one => getComputedStyle(one).transitionDuration"
    )
    assert seconds == "0s"
