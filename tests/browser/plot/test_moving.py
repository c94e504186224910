"""Moving about the plot: wheel, drag, keys and labels, a view that is kept, and how fast it is."""

from __future__ import annotations

import json
from typing import Any

import pytest

from tests.browser.plot.plotted import ALL, HEAD, actions_of, drawn, frames, places, show
from tests.browser.waiting import eventually

pytest.importorskip("playwright.sync_api", reason="playwright is not installed")


class TestMoving:
    """Wheel, drag, keys and buttons."""

    def test_wheel_keeps_the_place_below_the_pointer(self, opened: Any) -> None:
        page = opened()
        show(page, ALL)
        surface = page.locator(".plot-surface").bounding_box()
        before = places(page)
        x, y = before[0]
        page.mouse.move(surface["x"] + x, surface["y"] + y)
        page.mouse.wheel(0, -250)
        eventually(page, places, lambda now: now != before)
        drawn(page)
        assert places(page)[0] == pytest.approx((x, y), abs=2)
        assert places(page)[3] != pytest.approx((x, y), abs=80)

    def test_drag_moves_all_and_picks_nothing(self, opened: Any) -> None:
        page = opened()
        show(page, ALL)
        surface = page.locator(".plot-surface").bounding_box()
        before = places(page)[0]
        x, y = surface["x"] + before[0], surface["y"] + before[1]
        page.mouse.move(x, y)
        page.mouse.down()
        page.mouse.move(x + 30, y + 20, steps=4)
        page.mouse.move(x + 60, y + 40, steps=4)
        page.mouse.up()
        drawn(page)
        assert places(page)[0] == pytest.approx((before[0] + 60, before[1] + 40), abs=1)
        assert page.evaluate("() => window.picked") == []

    @pytest.mark.parametrize("way", ["keys", "buttons"])
    def test_keys_and_buttons(self, opened: Any, way: str) -> None:
        page = opened()
        show(page, ALL)
        page.locator(".plot-surface").focus()

        def press(key: str, name: str) -> list[float]:
            if way == "keys":
                page.keyboard.press(key)
            else:
                page.get_by_role("button", name=name).click()
            drawn(page)
            return [figure for place in places(page)[:3] for figure in place]

        first = press("0", "All")
        assert press("ArrowLeft", "Pan west")[0] == pytest.approx(first[0] + 80, abs=1)
        assert press("ArrowRight", "Pan east") == pytest.approx(first)
        assert press("ArrowUp", "Pan north")[1] == pytest.approx(first[1] + 80, abs=1)
        assert press("ArrowDown", "Pan south") == pytest.approx(first)
        assert press("+", "Zoom in") != pytest.approx(first)
        assert press("-", "Zoom out") == pytest.approx(first, abs=0.1)
        press("+", "Zoom in")
        assert press("0", "All") == pytest.approx(first)

    def test_labels_can_be_switched_off(self, opened: Any) -> None:
        page = opened()
        show(page, ALL)
        assert page.locator(".labels text").count() >= 6
        button = page.get_by_role("button", name="Labels")
        button.click()
        drawn(page)
        assert page.locator(".labels text").count() == 0
        assert button.get_attribute("aria-pressed") == "false"

    def test_labels_do_not_lie_on_each_other(self, opened: Any) -> None:
        page = opened()
        rows = "".join(
            f"Insert wreck, depth {n}m 47°1{n % 9}'.{n:02}S., 123°4{n % 7}'.{n:02}W.\n"
            for n in range(60)
        )
        show(page, HEAD + rows)
        boxes = page.eval_on_selector_all(
            ".labels text", "all => all.map((one) => { const b = one.getBBox(); "
            "return [b.x, b.y, b.x + b.width, b.y + b.height] })"
        )  # fmt: skip
        assert 10 < len(boxes) < 60
        for at, (x, y, x2, y2) in enumerate(boxes):
            for ox, oy, ox2, oy2 in boxes[at + 1 :]:
                across, down = min(x2, ox2) - max(x, ox), min(y2, oy2) - max(y, oy)
                assert across < 8 or down < 4, "labels may touch and not cover each other"


def test_show_again_keeps_the_view_of_a_person(opened: Any) -> None:
    page = opened()
    show(page, ALL)
    page.locator("[role=option]").nth(3).focus()
    page.get_by_role("button", name="Zoom in").click()
    page.locator("[role=option]").nth(3).focus()
    drawn(page)
    before = places(page)
    rock = "rock 47°12'.05S., 123°41'.20W.\n"
    show(page, ALL.replace("Amend light", f" {rock}Amend light"))
    assert places(page)[:5] == [pytest.approx(one, abs=0.1) for one in before[:5]]
    focused = page.evaluate("() => document.activeElement.getAttribute('aria-label')")
    assert "fish haven" in focused
    show(page, f"{HEAD}Insert wreck 48°53'.05S., 127°44'.20W.\n")
    surface = page.locator(".plot-surface").bounding_box()
    ((x, y),) = places(page)
    assert (0 < x < surface["width"], 0 < y < surface["height"]) == (True, True)


def test_fast_enough_for_three_thousand(opened: Any) -> None:
    page = opened()
    (model,) = actions_of(f"{HEAD}Insert wreck 47°13'.05S., 123°44'.20W.\n")
    actions = []
    for n in range(3000):
        action = json.loads(json.dumps(model))
        action["path"] = f"/notices/{n}/charts/0/actions/0"
        position = action["geometry"]["positions"][0]
        position["lat"] -= (n * 7919 % 3001) / 3001
        position["lon"] -= (n * 104729 % 2999) / 2999
        actions.append(action)
    code = """async (wish) => {
      const start = performance.now();
      window.plot.show(wish);
      const shown = performance.now() - start;
      const turn = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
      await turn();
      const again = performance.now();
      for (let n = 0; n < 10; n++) {
        document.querySelector(".plot-surface").dispatchEvent(
          new WheelEvent("wheel", { deltaY: -20, clientX: 400, clientY: 300, cancelable: true }));
        await turn();
      }
      return [shown, (performance.now() - again) / 10];
    }"""
    shown, frame = page.evaluate(code, {"actions": actions, "frames": frames()})
    assert page.locator("[role=option]").count() == 3000
    print(f"3,000 actions: {shown:.0f} ms to show, {frame:.0f} ms a step of the wheel")
    # Many times what it takes alone, since the machine may be busy.
    assert shown < 4000
    assert frame < 1000
