"""The symbols of the plot: verbs, relations and kinds by their form, doubts, labels as words."""

from __future__ import annotations

import csv
from pathlib import Path
from typing import Any

import pytest

from noticeparse.vocabulary import __file__ as vocabulary
from tests.browser.plot.plotted import ALL, HEAD, actions_of, drawn, show

pytest.importorskip("playwright.sync_api", reason="playwright is not installed")


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
