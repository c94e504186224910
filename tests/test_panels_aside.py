"""Items that speak of a panel, or of one of several charts, for which their section is not."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, errors

HEAD = "2601/26  TAVRENNE ISLANDS - Quill Sound - Wreck.\nChart 802{0} [2310/26] WGS84\n"


@pytest.mark.parametrize(
    "words", ["(plan B)", "(inset)", ", plan A,", "on inset B", "(both main chart and plan)"]
)
def test_an_item_that_names_a_panel_is_held_back(words: str) -> None:
    bulletin = parse(f"{HEAD.format('')}Insert depth 8m {words} {P}\nDelete wreck {Q}\n")
    assert [a.usable for a in bulletin.notices[0].charts[0].actions] == [False, True]
    assert errors(bulletin) == {"item-of-one-panel"}


@pytest.mark.parametrize(
    "line",
    ["Ellory Harbour (Panel B)", "In the inset", "On the plan", "Side B of the sheet"],
)
def test_what_stands_below_a_line_that_names_a_panel_is_held_back(line: str) -> None:
    bulletin = parse(f"{HEAD.format('')}Insert wreck {P}\n{line}\nDelete rock {Q}\n")
    rock = bulletin.notices[0].charts[0].actions[-1]
    assert (rock.verb, rock.usable) == ("delete", False)


def test_the_panel_of_the_section_may_be_named_again() -> None:
    bulletin = parse(f"{HEAD.format(', plan B')}Insert depth 8m (plan B) {P}\n")
    assert errors(bulletin) == set()


@pytest.mark.parametrize("words", ["(the latter only)", "(first chart)", "(second chart only)"])
def test_an_item_of_one_of_several_charts_is_held_back(words: str) -> None:
    text = f"41/26 Quill Sound\nCharts 802 [30/26], 803 [31/26]\nInsert depth 6m {words} {P}\n"
    assert errors(parse(text)) == {"item-of-one-chart"}


def test_an_international_number_may_stand_in_front_of_the_chart() -> None:
    text = (
        "Notice 3121/26 -- Port Ellory -- Depths\n\n"
        f"INT 9512 -- Chart 512 -- previous notice 2954/26 -- WGS 84\nInsert:\n * wreck ... {P}\n"
        "INT 9500 -- Chart 500 -- previous notice 3008/26 -- WGS 84\nDelete:\n"
        f" * rock ... {Q}\n"
    )
    bulletin = parse(text)
    read = [
        (c.international, c.chart, [a.verb for a in c.actions]) for c in bulletin.notices[0].charts
    ]
    assert read == [("INT 9512", "512", ["insert"]), ("INT 9500", "500", ["delete"])]
    assert errors(bulletin) == set()


def test_what_stands_below_a_head_that_was_not_taken_for_one_is_held_back() -> None:
    text = (
        f"{HEAD.format('')}Insert wreck {P}\nthe same area, map 803, previous notice 31/26\n"
        f"Delete rock {Q}\n"
    )
    rock = parse(text).notices[0].charts[0].actions[-1]
    assert (rock.verb, rock.usable) == ("delete", False)
