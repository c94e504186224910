"""Changes told by two figures, or by the depth over a thing: `Change 7m to 5m`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Amend
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.depth import Depth
from tests.short_notices import HEAD, P, Q, actions_of, codes


def changes(bulletin: Bulletin) -> list[tuple[str, list[tuple[str, str, str]]]]:
    """Kind, and what changes, of each amendment that may be used."""
    return [
        (
            one.feature.kind,
            [(it.property, shown(it.old), shown(it.new)) for it in one.changes],
        )
        for one in actions_of(bulletin)
        if isinstance(one, Amend) and one.usable
    ]


def shown(value: object) -> str:
    return str(value.value_m if isinstance(value, Depth) else value)


@pytest.mark.parametrize(
    ("words", "kind", "old"),
    [
        ("depth over wreck from 9.1m to 8.6m", "wreck", "9.1"),
        ("depth over the dangerous wreck from 9.1m to 8.6m", "wreck_dangerous", "9.1"),
        ("least depth over wreck from 9.1m to 8.6m", "wreck", "9.1"),
        ("depth above rock from 9.1m to 8.6m", "rock", "9.1"),
        ("depth over obstruction to 8.6m", "obstruction", "None"),
        ("9.1m to 8.6m", "sounding", "9.1"),
        ("from 9.1m to 8.6m", "sounding", "9.1"),
        ("9₁ to 8₆", "sounding", "9.1"),
    ],
)
def test_the_depth_of_a_thing_or_alone(words: str, kind: str, old: str) -> None:
    bulletin = parse(f"{HEAD}Change {words} {P}\n")
    assert changes(bulletin) == [(kind, [("depth", old, "8.6")])]
    assert codes(bulletin) == set()


@pytest.mark.parametrize("words", ["mast, 30m, to 45m", "mast (30m) to (45m)", "mast 30m to 45m"])
def test_a_thing_of_stated_height_changes_its_height(words: str) -> None:
    bulletin = parse(f"{HEAD}Amend {words} {P}\n")
    assert changes(bulletin) == [("radio_mast", [("height_m", "30", "45")])]


@pytest.mark.parametrize("word", ["depths:", "depths", "depth", "soundings:"])
def test_a_list_of_depths_that_change(word: str) -> None:
    bulletin = parse(f"{HEAD}Amend {word} 7m to 6m, {P}; 8m to 7m, {Q}\n")
    new = [("7", "6"), ("8", "7")]
    assert changes(bulletin) == [("sounding", [("depth", *one)]) for one in new]
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    "words",
    [
        # Of the wreck, or of another thing.
        f"wreck, 7m to 6m, {P}; 8m to 7m, {Q}",
        f"depths: 7m to 6m, {P}\n\n8m to 7m, {Q}",
        # Of one figure alone nobody says what it becomes.
        f"depths: 7m to 6m, {P}; 8m, {Q}",
        # Two things.
        f"depth over wreck and rock from 9m to 8m {P}",
        # No unit, or miles.
        f"7 to 5 {P}",
        f"7M to 5M {P}",
    ],
)
def test_where_it_is_not_sure_what_changes_it_is_held(words: str) -> None:
    bulletin = parse(f"{HEAD}Amend {words}\n")
    assert not actions_of(bulletin)[-1].usable


def test_figures_below_a_verb_alone_are_held() -> None:
    bulletin = parse(f"{HEAD}Amend\n7m to 6m {P}\n8m to 7m {Q}\n")
    assert changes(bulletin) == []
