"""Items whose words turn their verb into another, or give its place in another way."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Amend, Replace
from tests.short_notices import AT_P, HEAD, P, actions_of, codes, errors, told


@pytest.mark.parametrize("joint", ["in place of", "instead of", "in lieu of"])
@pytest.mark.parametrize("verb", ["Put", "Insert", "Add"])
def test_a_thing_put_in_the_place_of_another(verb: str, joint: str) -> None:
    bulletin = parse(f"{HEAD}{verb} depth 4.9m {joint} depth 5.8m, {P}\n")
    (action,) = actions_of(bulletin)
    assert isinstance(action, Replace)
    assert action.feature.depth is not None
    assert action.replacement.depth is not None
    depths = (str(action.feature.depth.value_m), str(action.replacement.depth.value_m))
    assert depths == ("5.8", "4.9")
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    "words",
    [
        f"The light-buoy No 4, Fl.R.2s, in {P} is to be renamed No 6",
        f"The light-buoy No 4, Fl.R.2s, in {P} has been renumbered No 6",
        f"Rename light-buoy No 4, Fl.R.2s, to No 6 {P}",
        f"Rename light-buoy No 4, Fl.R.2s, as No 6 {P}",
    ],
)
def test_another_name(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    (action,) = actions_of(bulletin)
    assert isinstance(action, Amend)
    assert [(c.property, c.old, c.new) for c in action.changes] == [("name", "No 4", "No 6")]
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    "words",
    [
        f"The rock is to be deleted from {P}.",
        f"The north cardinal beacon is to be deleted from {P}.",
        f"Remove buoy No 4 from {P}",
    ],
)
def test_what_is_deleted_from_a_place_lay_there(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert [(verb, places) for verb, _, places in told(bulletin)] == [("delete", [AT_P])]


@pytest.mark.parametrize(
    "words",
    [f"Delete rock 2 cables from {P}", f"Delete buoy N from {P}", f"Delete light 12m 5M from {P}"],
)
def test_what_is_measured_from_a_place_does_not_lie_there(words: str) -> None:
    assert told(parse(f"{HEAD}{words}\n")) == []


@pytest.mark.parametrize("link", ["via", "through"])
def test_a_place_on_the_way_is_not_its_end(link: str) -> None:
    words = f"Insert cable from {P} to 46-00.50S 122-00.00W {link} 46-00.20S 122-00.10W"
    bulletin = parse(f"{HEAD}{words}\n")
    assert told(bulletin) == []
    assert "relation-unclear" in errors(bulletin)


@pytest.mark.parametrize(
    ("words", "is_told"),
    [
        (f"Replace rock, depth 2 m, with depth 1.8 m, {P}", True),
        (f"Replace obstruction least depth 5 m by least depth 4 m, {P}", False),
        (f"Replace rock, depth 2 m, with rock, depth 1.8 m, {P}", False),
        (f"Replace depth 2 m with depth 1.8 m, {P}", False),
    ],
)
def test_a_depth_in_the_place_of_a_danger_may_be_its_own(words: str, is_told: bool) -> None:
    assert ("replace-by-depth-alone" in codes(parse(f"{HEAD}{words}\n"))) is is_told


@pytest.mark.parametrize("words", ["on chart the", "on the chart a", "on the chart:", "on charts"])
def test_where_it_is_drawn_is_no_word_of_a_thing(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words} wreck {P}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert codes(bulletin) == set()
