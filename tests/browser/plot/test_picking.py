"""Picking an action on the plot: by pointer, by the page, by keys alone, with aids of access."""

from __future__ import annotations

from typing import Any

import pytest

from tests.browser.plot.plotted import ALL, HEAD, drawn, show

pytest.importorskip("playwright.sync_api", reason="playwright is not installed")


class TestPicking:
    """Links between the plot and the page."""

    def test_click_tells_the_path(self, opened: Any) -> None:
        page = opened()
        actions = show(page, ALL)
        page.locator("[role=option] .symbol").nth(3).click()
        assert page.evaluate("() => window.picked") == [actions[2]["path"]]
        page.locator(".shapes path.is-closed").last.click(position={"x": 3, "y": 1})
        assert page.evaluate("() => window.picked")[1:] == [actions[5]["path"]]

    def test_a_place_of_two_gives_one_after_the_other(self, opened: Any) -> None:
        page = opened()
        actions = show(page, f"{HEAD}Insert wreck 47°13'.05S., 123°44'.20W.\n"
                             "Delete rock 47°13'.05S., 123°44'.20W.\n")  # fmt: skip
        assert page.locator(".count").text_content() == "2"
        for _ in range(3):
            page.locator("[role=option] .symbol").last.click(position={"x": 12, "y": 14})
        one, other = (action["path"] for action in actions)
        assert page.evaluate("() => window.picked") == [other, one, other]

    def test_select_marks_and_brings_into_sight(self, opened: Any) -> None:
        page = opened()
        actions = show(page, ALL)
        for _ in range(9):
            page.get_by_role("button", name="Zoom in").click()
        drawn(page)
        assert page.evaluate("path => window.plot.select(path)", actions[3]["path"])
        drawn(page)
        chosen = page.locator("[role=option][aria-selected=true]")
        assert chosen.count() == 1
        assert "fish haven" in chosen.get_attribute("aria-label")
        surface = page.locator(".plot-surface").bounding_box()
        box = chosen.locator(".body").bounding_box()
        assert surface["x"] < box["x"] < surface["x"] + surface["width"]
        assert "fish haven" in page.locator(".labels text.is-selected").text_content()
        assert page.evaluate("() => window.picked") == [], "the page chose it itself"
        assert not page.evaluate("() => window.plot.select('/notices/9')")
        assert page.locator("[role=option][aria-selected=true]").count() == 0

    def test_keyboard_alone(self, opened: Any) -> None:
        page = opened()
        actions = show(page, ALL)
        page.locator(".plot-surface").focus()
        page.keyboard.press("Tab")
        for key in ("ArrowRight", "ArrowDown", "ArrowLeft", "Enter", "End", "Enter", "Home", " "):
            page.keyboard.press(key)
        wanted = [actions[1]["path"], actions[-1]["path"], actions[0]["path"]]
        assert page.evaluate("() => window.picked") == wanted
        page.keyboard.press("Escape")
        assert page.evaluate("() => document.activeElement.classList[0]") == "plot-surface"
        page.keyboard.press("Tab")
        page.keyboard.press("Tab")
        inside = "() => Boolean(document.activeElement.closest('.plot-surface'))"
        assert not page.evaluate(inside), "Tab leaves the plot after one symbol"


def test_show_again_keeps_what_is_selected_and_destroy_leaves_nothing(opened: Any) -> None:
    page = opened()
    actions = show(page, ALL)
    page.evaluate("path => window.plot.select(path)", actions[3]["path"])
    show(page, ALL)
    assert "fish haven" in page.locator("[aria-selected=true]").get_attribute("aria-label")
    page.evaluate("() => window.plot.destroy()")
    assert page.locator("#plot").inner_html() == ""


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("width", [900, 400])
def test_accessible_and_within_the_width(opened: Any, scheme: str, width: int) -> None:
    axe = pytest.importorskip("axe_playwright_python.sync_playwright")
    page = opened(viewport={"width": width, "height": 800}, color_scheme=scheme)
    show(page, ALL, has_frames=True)
    page.locator(".plot-legend summary").click()
    result = axe.Axe().run(page)
    assert result.response["violations"] == []
    assert len(result.response["passes"]) > 15
    assert page.evaluate("() => document.documentElement.scrollWidth") <= width
