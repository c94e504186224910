"""Tables copied with one cell a line: the count of a row stands alone above its verb."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, actions_of, codes, errors, told

P, Q = "46-00.00S\n122-00.00W", "46-00.50S\n122-00.00W"
TITLES = "Item\nAction\nObject\nLatitude\nLongitude\n"
AMENDED = "Light, Fl(3)10s18m14M: range to 11M"


@pytest.mark.parametrize("titles", ["", TITLES])
@pytest.mark.parametrize("counts", [("1", "2"), ("1.", "2."), ("(1)", "(2)")])
def test_the_count_of_the_next_row_is_not_of_the_row_above(
    titles: str, counts: tuple[str, str]
) -> None:
    rows = f"{counts[0]}\nInsert\nDepth 3.2 m\n{P}\n{counts[1]}\nAmend\n{AMENDED}\n{Q}\n"
    bulletin = parse(HEAD + titles + rows)
    assert told(bulletin) == [("insert", "sounding", [AT_P]), ("amend", "light", [AT_Q])]
    assert [action.label for action in actions_of(bulletin)] == ["1", "2"]
    assert codes(bulletin) == set()


def test_a_figure_of_the_object_is_no_count() -> None:
    buoy = "Port-hand light-buoy, Fl.R.3s, No\n8"
    bulletin = parse(f"{HEAD}1\nInsert\n{buoy}\n{P}\n2\nInsert\nDepth\n3\n{Q}\n")
    first, second = actions_of(bulletin)
    assert first.feature.name == "No 8"
    assert second.feature.depth is not None
    assert str(second.feature.depth.value_m) == "3"
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "rows",
    [
        # A row without its count, and counts that do not count on.
        f"Insert\nWreck\n{P}\n1\nDelete\nRock\n{Q}\n",
        f"1\nInsert\nWreck\n{P}\n7\nDelete\nRock\n{Q}\n",
        # The figure behind the place above may be its depth.
        f"Insert\nWreck\n{P}\n2\nDelete\nRock\n{Q}\n",
    ],
)
def test_figures_that_count_nothing_are_told(rows: str) -> None:
    assert "feature-figure-unclear" in errors(parse(HEAD + rows))


def test_a_depth_above_a_verb_behind_its_thing_is_no_count() -> None:
    bulletin = parse(f"{HEAD}Depth\n1\nDelete\n{P}\nDepth\n2\nDelete\n{Q}\n")
    assert [action.label for action in actions_of(bulletin)] == [None, None]
    assert told(bulletin) == []
