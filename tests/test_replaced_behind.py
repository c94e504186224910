"""A deletion or an insertion that tells behind its place what is replaced by what."""

from __future__ import annotations

import pytest

from noticeparse import parse, render
from noticeparse.records.action import Replace
from tests.short_notices import AT_P, HEAD, P, Q, actions_of, errors, told

WRECK_FOR_ROCK = [
    f"Delete rock {P} (insert wreck)",
    f"Delete rock {P} (and insert wreck)",
    f"Delete rock {P} [insert a wreck]",
    f"Delete\n rock {P} (insert wreck)",
    f"Delete rock {P} (substitute wreck)",
    f"Delete rock {P} (replaced by wreck)",
    f"Delete rock {P}, replaced by a wreck",
    f"Delete rock {P}, being replaced with a wreck.",
    f"Delete rock {P}, wreck inserted",
    f"Delete rock {P}; wreck inserted",
    f"Delete rock {P} (wreck inserted)",
    f"Insert wreck {P} (replaces rock)",
    f"Insert wreck (replaces rock) {P}",
    f"Insert wreck, replacing the rock, {P}",
    f"Insert wreck {P}, replacing rock",
    f"Insert wreck {P} in place of rock",
    f"Insert wreck (in lieu of rock) {P}",
    f"Insert wreck {P} (rock deleted)",
]


@pytest.mark.parametrize("words", WRECK_FOR_ROCK)
def test_one_thing_replaces_another(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    (action,) = actions_of(bulletin)
    assert isinstance(action, Replace)
    assert (action.feature.kind, action.replacement.kind) == ("rock", "wreck")
    assert (action.feature.text, action.replacement.text) == ("rock", "wreck")
    assert [one.iso6709 for one in action.geometry.positions] == [AT_P]
    assert errors(bulletin) == set()
    (again,) = actions_of(parse(render(bulletin.notices[0])))
    assert isinstance(again, Replace)
    assert (again.feature.kind, again.replacement.kind) == ("rock", "wreck")


@pytest.mark.parametrize(
    ("words", "old", "new"),
    [
        (f"Delete depth 7₂ {P} (insert 6₁)", "7.2", "6.1"),
        (f"Delete\n 7₂ {P} (insert 6₁)", "7.2", "6.1"),
        (f"Delete 7.2m {P}, 6.1m inserted", "7.2", "6.1"),
        (f"Insert depth 6.1m {P} (replaces depth 7.2m)", "7.2", "6.1"),
    ],
)
def test_one_depth_replaces_another(words: str, old: str, new: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    (action,) = actions_of(bulletin)
    assert isinstance(action, Replace)
    depths = action.feature.depth, action.replacement.depth
    assert [str(one.value_m) for one in depths if one is not None] == [old, new]
    assert errors(bulletin) == set()


def test_lights_and_names_stay_with_their_marks() -> None:
    bulletin = parse(
        f"{HEAD}Delete buoy {P}, replaced by a light-buoy, Q.R\n"
        f"Insert beacon (replaces buoy No 4) {Q}\n"
    )
    first, second = actions_of(bulletin)
    assert isinstance(first, Replace)
    assert isinstance(second, Replace)
    assert (first.feature.kind, first.replacement.kind) == ("buoy_generic", "light_buoy_generic")
    assert first.feature.light is None
    assert first.replacement.light is not None
    assert first.replacement.light.written == "Q.R"
    assert (second.feature.name, second.replacement.name) == ("No 4", None)


@pytest.mark.parametrize(
    "words",
    [
        f"Delete rock {P} and {Q} (insert wreck)",
        f"Delete rock {P} (insert wreck close N)",
        f"Delete rock {P}, replaced by wreck in old position",
        f"Delete rock {P} (insert wreck; delete depth)",
        f"Insert wreck {P}, replacing rock and pile",
        f"Insert wreck {P}, replacing something",
        f"Insert light, Fl.R.4s, {P} (replaces F.R)",
    ],
)
def test_more_is_said_than_that(words: str) -> None:
    assert all(verb != "replace" for verb, _, _ in told(parse(f"{HEAD}{words}\n")))
