"""Where things are plotted: true to the border and to scale, across 180 degrees, within frames."""

from __future__ import annotations

import re
from typing import Any

import pytest

from tests.browser.plot.plotted import ALL, HEAD, Json, actions_of, drawn, frames, places, show

pytest.importorskip("playwright.sync_api", reason="playwright is not installed")
BOX = "one => { const { x, y, width, height } = one.getBBox(); return { x, y, width, height } }"


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
