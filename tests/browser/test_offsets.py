"""The one place where code points and the units of the editor are turned into each other."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

pytest.importorskip("playwright", reason="playwright is not installed")

if TYPE_CHECKING:
    from playwright.sync_api import Page

SHIP = "\U0001f6a2"
TURN = """async ([text, points]) => {
    const { offsetsOf } = await import("/static/page/offsets.js");
    const { toUnits, toPoints } = offsetsOf(text);
    const units = points.map(toUnits);
    return [units, units.map(toPoints)];
}"""


@pytest.mark.parametrize(
    "text",
    ["", "no ship", SHIP, f"{SHIP}47", f"a{SHIP}{SHIP}b{SHIP}", f"°{SHIP}\n" * 50],
    ids=["empty", "none", "one", "before", "several", "many"],
)
def test_every_place_of_a_text(page: Page, text: str) -> None:
    points = list(range(len(text) + 1))
    expected = [len(text[:point].encode("utf-16-le")) // 2 for point in points]
    assert page.evaluate(TURN, [text, points]) == [expected, points]


def test_half_a_pair_is_one_of_each(page: Page) -> None:
    turned = page.evaluate(
        """async () => {
            const { offsetsOf } = await import("/static/page/offsets.js");
            const { toUnits, toPoints } = offsetsOf("a\\ud83d\\ud83d\\udea2\\ude00d");
            return [[0, 1, 2, 3, 4, 5].map(toUnits), [0, 1, 2, 4, 5, 6].map(toPoints)];
        }"""
    )
    assert turned == [[0, 1, 2, 4, 5, 6], [0, 1, 2, 3, 4, 5]]


def test_a_megabyte_is_turned_at_once(page: Page) -> None:
    milliseconds = page.evaluate(
        """async (ship) => {
            const { offsetsOf } = await import("/static/page/offsets.js");
            const text = `${"47°12'.34S., 123°45'.67W. ".repeat(20)}${ship}`.repeat(2000);
            const begin = performance.now();
            const { toUnits } = offsetsOf(text);
            for (let point = 0; point < 100000; point += 1) toUnits(point * 10);
            return performance.now() - begin;
        }""",
        SHIP,
    )
    assert milliseconds < 1000
