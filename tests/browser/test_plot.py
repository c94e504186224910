"""The plot of the page in a real browser, under the service's own security policy.

The page is answered by the test itself, from the files of the package; a wish for any other host,
an error of a script and a breach of the policy fail the test.
"""

from __future__ import annotations

import csv
import json
import mimetypes
import re
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

import noticeparse
from noticeparse.vocabulary import __file__ as vocabulary
from noticeparse.web.guard import POLICY
from noticeparse.web.pages import STATIC

playwright = pytest.importorskip("playwright.sync_api", reason="playwright is not installed")
CORPUS = Path(__file__).resolve().parents[2] / "corpus_synthetic"
PAGE = Path(__file__).with_name("plot_page.html").read_text("utf-8")
ADDRESS = "http://plot.test"
STYLE = """
:root { color-scheme: light dark; background: Canvas; color: CanvasText }
main { margin: 8px }
"""
START = """async () => {
  const { createPlot } = await import("/static/plot.js");
  window.picked = [];
  const place = document.getElementById("plot");
  window.plot = createPlot(place, { onSelect: (path) => window.picked.push(path) });
}"""
BOX = "one => { const { x, y, width, height } = one.getBBox(); return { x, y, width, height } }"
Json = dict[str, Any]


@pytest.fixture
def opened(browser: Any) -> Iterator[Callable[..., Any]]:
    """Opens the page with the plot in it; what went wrong in it fails the test at its end."""
    contexts, wrong = [], []

    def answer(route: Any) -> None:
        path = route.request.url.removeprefix(ADDRESS)
        if path == "/":
            policy = {"Content-Security-Policy": POLICY}
            route.fulfill(body=PAGE, content_type="text/html", headers=policy)
        elif path == "/page.css":
            route.fulfill(body=STYLE, content_type="text/css")
        elif path.startswith("/static/") and (STATIC / path[8:]).is_file():
            kind = mimetypes.guess_type(path)[0]
            route.fulfill(body=(STATIC / path[8:]).read_bytes(), content_type=kind)
        else:
            wrong.append(f"asked for {route.request.url}")
            route.abort()

    def opener(**options: Any) -> Any:
        options.setdefault("viewport", {"width": 900, "height": 800})
        context = browser.new_context(**options)
        contexts.append(context)
        context.route("**/*", answer)
        page = context.new_page()
        page.on("console", lambda told: wrong.append(told.text) if told.type != "log" else None)
        page.on("pageerror", lambda error: wrong.append(str(error)))
        page.goto(f"{ADDRESS}/")
        page.evaluate(START)
        return page

    yield opener
    for context in contexts:
        context.close()
    assert wrong == []


def actions_of(text: str) -> list[Json]:
    """The actions of a text as the page hands them to the plot."""
    found = []
    bulletin = json.loads(noticeparse.parse(text).model_dump_json())
    for row, notice in enumerate(bulletin["notices"]):
        for at, chart in enumerate(notice["charts"]):
            found += [
                {
                    "path": f"/notices/{row}/charts/{at}/actions/{number}",
                    "notice": notice["id"],
                    "chart": chart["chart"],
                    "verb": action["verb"],
                    "kind": action["feature"]["kind"],
                    "label": action["feature"]["text"],
                    "usable": action["usable"],
                    "geometry": action["geometry"],
                    "destination": action.get("destination"),
                }
                for number, action in enumerate(chart["actions"])
            ]
    return found


def frames() -> list[Json]:
    charts = noticeparse.read_chart_list(CORPUS / "charts.csv").charts
    return [json.loads(chart.model_dump_json()) for chart in charts]


HEAD = "2417/26\nQuill Sound - Various.\nChart 802 [12/26] WGS84\n"


def show(page: Any, text: str, *, has_frames: bool = False) -> list[Json]:
    actions = actions_of(text)
    wish = {"actions": actions, "frames": frames() if has_frames else []}
    page.evaluate("wish => window.plot.show(wish)", wish)
    drawn(page)
    return actions


def drawn(page: Any) -> None:
    """Wait for the drawing that has been asked for."""
    page.evaluate("() => new Promise((done) => requestAnimationFrame(() => setTimeout(done)))")


def places(page: Any) -> list[tuple[float, float]]:
    """The screen positions of all symbols, in order."""
    moved = page.eval_on_selector_all(
        ".symbol:not(.sample *)", "all => all.map((one) => one.getAttribute('transform'))"
    )
    pattern = re.compile(r"translate\((\S+) (\S+)\)")
    return [(float(x), float(y)) for one in moved for x, y in pattern.findall(one or "")]


def figures(page: Any, letters: str) -> dict[float, float]:
    """What stands at the border, in minutes of arc, by its place on the screen."""
    found = {}
    for one in page.locator(".border text").all():
        degrees, minutes, letter = re.fullmatch(
            r"(\d+)°([\d.]+)'(\w?)", one.text_content()
        ).groups()
        if letter in letters:
            sign = -1 if letter in "SW" else 1
            at = one.get_attribute("x" if letter in "EW" else "y")
            found[float(at)] = sign * (int(degrees) * 60 + float(minutes))
    return found


def test_a_symbol_stands_where_the_border_says(opened: Any) -> None:
    """The position read off the border, as a person would, is that of the record."""
    page = opened()
    show(page, f"{HEAD}Insert wreck 47°13'.05S., 123°44'.20W.\n"
               "rock 47°09'.05S., 123°51'.20W.\nrock 47°19'.05S., 123°36'.20W.\n")  # fmt: skip
    (x, y), *_ = places(page)
    (west, west_minutes), *_, (east, east_minutes) = sorted(figures(page, "EW").items())
    lon = west_minutes + (x - west) / (east - west) * (east_minutes - west_minutes)
    assert lon == pytest.approx(-(123 * 60 + 44.20), abs=0.05)
    above, below = [
        pick(one for one in figures(page, "NS") if is_beyond(one - 3.5))
        for pick, is_beyond in ((max, lambda at: at <= y), (min, lambda at: at >= y))
    ]
    rows = figures(page, "NS")
    lat = rows[above] + (y - above + 3.5) / (below - above) * (rows[below] - rows[above])
    assert lat == pytest.approx(-(47 * 60 + 13.05), abs=0.05)


ALL = f"""{HEAD}Insert (a) dangerous wreck 47°13'.05S., 123°44'.20W.
 legend, "Foul", close NE of (a) above
 obstruction, between 47°15'.05S., 123°41'.20W. and 47°15'.55S., 123°40'.20W.
 fish haven, centred on 47°18'.15S., 123°36'.50W., radius 0.8M
 submarine cable, joining 47°20'.15S., 123°30'.50W. 47°20'.62S., 123°31'.74W.
 restricted area, bounded by 47°08'.15S., 123°50'.50W. 47°08'.15S., 123°45'.50W. 47°10'.15S., 123°45'.50W.
Amend light to Fl(3)WRG.15s21m15-11M 47°11'.90S., 123°46'.20W.
Delete depth 12.4m 47°13'.02S., 123°44'.31W.
Move port-hand light-buoy, from 47°12'.34S., 123°51'.67W. to 47°13'.91S., 123°53'.58W.
Replace port-hand buoy by light-beacon, Q.R 47°14'.10S., 123°43'.80W.
"""  # noqa: E501


def test_verbs_and_relations_are_told_by_form(opened: Any) -> None:
    page = opened()
    actions = show(page, ALL)
    assert [action["verb"] for action in actions].count("insert") == 6
    options = page.locator("[role=option]")
    assert options.count() == len(actions)
    (wreck, legend, between, haven, cable, area, light, depth, buoy, beacon) = options.all()
    assert wreck.locator(".body").count() == 1
    for reference, number in ((legend, 1), (between, 2)):
        assert reference.locator(".ring").count() == number
        assert reference.locator(".body").count() == 0
        assert "reference only" in reference.get_attribute("aria-label")
    assert legend.locator(".pointer").get_attribute("transform") == "rotate(45)"
    assert depth.locator(".strike").count() == 1
    assert light.locator(".dot").count() == 1
    assert beacon.locator(".inner").count() == 1
    assert buoy.locator(".is-from .body").count() == buoy.locator(".is-to .body").count() == 1
    assert buoy.locator(".is-from .badge").count() == 0
    for one in (haven, cable, area):
        assert one.locator(".body").count() == 1
    outlines = {
        one.locator(".body").first.get_attribute("d")
        for one in (wreck, cable, area, light, depth, buoy)
    }
    assert len(outlines) == 6, "every group has a shape of its own"
    badges = {
        one.locator(".sign").first.get_attribute("d")
        for one in (wreck, light, depth, buoy, beacon)
    }
    assert len(badges) == 5, "every verb has a badge of its own"
    roles = page.eval_on_selector_all(".shapes path", "all => all.map((one) => one.classList[2])")
    assert roles == ["is-between", "is-feature", "is-feature", "is-feature", "is-arrow"]


def test_a_circle_is_true_to_scale(opened: Any) -> None:
    page = opened()
    show(page, f"{HEAD}Insert fish haven, centred on 47°18'.15S., 123°36'.50W., radius 2M\n")
    box = page.locator(".shapes path").evaluate(BOX)
    rows = sorted(figures(page, "NS").items())
    per_minute = (rows[-1][0] - rows[0][0]) / (rows[0][1] - rows[-1][1])
    assert box["height"] / per_minute == pytest.approx(4, rel=0.01)
    assert box["width"] == pytest.approx(box["height"], rel=0.01)
    bar = page.locator(".half-bar").evaluate(BOX)["width"] * 2
    miles = float(page.locator(".scale text").first.text_content().split()[0])
    assert bar / miles == pytest.approx(per_minute, rel=0.01)


def arc(sense: str | None, bearings: str) -> Json:
    (action,) = actions_of(
        f"{HEAD}Insert fish haven, centred on 47°18'.00S., 123°36'.00W., radius 2M\n"
    )
    limits = {"from_deg": 0, "to_deg": 90, "sense": sense, "bearings": bearings}
    action["geometry"] |= {"shape": "arc", "arc": limits}
    return action


@pytest.mark.parametrize(
    ("sense", "bearings", "role", "quarter"),
    [
        ("clockwise", "from_centre", "is-feature", (1, -1)),
        ("clockwise", "from_seaward", "is-feature", (-1, 1)),
        (None, "from_centre", "is-unsure", None),
        ("clockwise", "not_stated", "is-unsure", None),
    ],
)
def test_an_arc_is_drawn_only_where_its_limits_are_certain(
    opened: Any, sense: str | None, bearings: str, role: str, quarter: tuple[int, int] | None
) -> None:
    page = opened()
    wish = {"actions": [arc(sense, bearings)], "frames": []}
    page.evaluate("wish => window.plot.show(wish)", wish)
    drawn(page)
    ((x, y),) = places(page)
    shape = page.locator(".shapes path")
    assert role in shape.get_attribute("class")
    box = shape.evaluate(BOX)
    middle = (box["x"] + box["width"] / 2 - x, box["y"] + box["height"] / 2 - y)
    if quarter is None:
        assert middle == pytest.approx((0, 0), abs=1)
    else:
        assert (middle[0] * quarter[0] > 10, middle[1] * quarter[1] > 10) == (True, True)


def test_across_the_antimeridian(opened: Any) -> None:
    page = opened()
    show(page, f"{HEAD}Insert submarine cable, joining 47°20'.00S., 179°50'.00E. 47°21'.00S., "
               "179°40'.00W.\nrock 47°25'.00S., 179°55'.00E.\n")  # fmt: skip
    box = page.locator(".shapes path").evaluate(BOX)
    surface = page.locator(".plot-surface").bounding_box()
    assert 200 < box["width"] < surface["width"]
    letters = [one.text_content()[-1] for one in page.locator(".border text").all()]
    assert {"E", "W", "'"} <= set(letters), "179 E, 180 without a letter, 179 W"
    (_, _), (rock, _) = places(page)
    assert box["x"] < rock < box["x"] + box["width"]


def test_what_is_not_usable_is_hollow_and_has_a_query(opened: Any) -> None:
    page = opened()
    show(page, f"{HEAD}Insert rock, depth 4..6m 47°13'.05S., 123°44'.20W.\n"
               "Insert wreck 47°73'.05S., 123°44'.20W.\n")  # fmt: skip
    actions = actions_of(f"{HEAD}Insert wreck 47°13'.05S., 123°44'.20W.\n")
    actions[0]["usable"] = False
    wish = {"actions": [*actions, *actions_of(f"{HEAD}Insert wreck 47°73'.05S., 123°44'.20W.\n")]}
    page.evaluate("wish => window.plot.show(wish)", wish)
    drawn(page)
    option = page.locator("[role=option]")
    assert option.count() == 1
    assert option.locator(".question").count() == 1
    assert "not to be used" in option.get_attribute("aria-label")
    paper = page.evaluate(
        "() => getComputedStyle(document.querySelector('.plot-surface')).backgroundColor"
    )
    assert option.locator(".body").evaluate("one => getComputedStyle(one).fill") == paper
    assert page.locator(".plot-told").text_content() == (
        "1 of 2 actions on the plot; 1 without a position to plot."
    )


class TestMoving:
    """Wheel, drag, keys and buttons."""

    def test_wheel_keeps_the_place_below_the_pointer(self, opened: Any) -> None:
        page = opened()
        show(page, ALL)
        surface = page.locator(".plot-surface").bounding_box()
        x, y = places(page)[0]
        page.mouse.move(surface["x"] + x, surface["y"] + y)
        page.mouse.wheel(0, -250)
        page.wait_for_timeout(100)
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


def test_frames_have_their_numbers(opened: Any) -> None:
    page = opened()
    show(page, ALL, has_frames=True)
    numbers = page.locator(".numbers text").all_text_contents()
    assert numbers == ["802", "803", "803 Panel A"]
    assert page.locator(".frame").count() == 3, "804 lies elsewhere"
    dashes = page.eval_on_selector_all(
        ".frame", "all => all.map((one) => getComputedStyle(one).strokeDasharray)"
    )
    assert [one == "none" for one in dashes] == [True, True, False]


def test_frames_alone_and_nothing_at_all(opened: Any) -> None:
    page = opened()
    show(page, "")
    assert page.locator(".plot-told").text_content() == "0 of 0 actions on the plot."
    assert page.locator(".border text").count() > 3
    show(page, "", has_frames=True)
    assert page.locator(".frame").count() == len(frames()) == 9


def test_show_again_keeps_what_is_selected_and_destroy_leaves_nothing(opened: Any) -> None:
    page = opened()
    actions = show(page, ALL)
    page.evaluate("path => window.plot.select(path)", actions[3]["path"])
    show(page, ALL)
    assert "fish haven" in page.locator("[aria-selected=true]").get_attribute("aria-label")
    page.evaluate("() => window.plot.destroy()")
    assert page.locator("#plot").inner_html() == ""


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


def test_hostile_words_stay_words(opened: Any) -> None:
    page = opened()
    actions = actions_of(f"{HEAD}Insert wreck 47°13'.05S., 123°44'.20W.\n")
    actions[0]["label"] = "<img src=x onerror=alert(1)>"
    page.evaluate("wish => window.plot.show(wish)", {"actions": actions, "frames": []})
    drawn(page)
    assert page.locator(".plot img").count() == 0
    assert page.locator(".labels text").text_content() == actions[0]["label"]


def expected_group(row: dict[str, str]) -> str | None:
    """The group of a kind by its S-57 class; None where the class does not settle it."""
    word = (row["s57"] or " ").split(" ")[0]
    if word in ("WRECKS", "OBSTRN", "UWTROC"):
        return "danger"
    if word[:3] in ("BOY", "BCN") or word in ("DAYMAR", "TOPMAR"):
        return "mark"
    if word in ("LIGHTS", "LITFLT", "LITVES"):
        return "light"
    if word in ("SOUNDG", "DEPARE", "DEPCNT", "DRGARE", "SWPARE"):
        return "depth"
    return "line" if row["primitives"] == "L" else None


def test_every_kind_has_the_group_of_its_s57_class(opened: Any) -> None:
    page = opened()
    with Path(vocabulary).with_name("features.csv").open(encoding="utf-8") as file:
        rows = [row for row in csv.DictReader(file) if not row["kind"].startswith("#")]
    wanted = {row["kind"]: group for row in rows if (group := expected_group(row))}
    code = """async (kinds) => {
      const { groupOf } = await import("/static/plot/symbols.js");
      return Object.fromEntries(kinds.map((kind) => [kind, groupOf(kind, "point")]));
    }"""
    assert len(wanted) > 90
    assert page.evaluate(code, [*wanted]) == wanted


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
