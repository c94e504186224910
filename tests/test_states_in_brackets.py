"""Both states of a value side by side: read where the text says which of them the brackets hold.

Common practice, no published source.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Action, Amend
from tests.short_notices import HEAD, P, Q, R, actions_of, errors

ITEMS = (
    f"Change\n  light, Fl.W.8s, range 16M [19M]   {P}\n  light, Fl(2)R.6s [Fl.R.4s]   {Q}\n"
    f'  depth 5.8 m [6.4 m]   {R}\n  legend "Foul" ["Foul Ground"]   {P}\n'
    f"  special buoy, No 4 [No 2]   {Q}\n"
)
NEW_IN_FRONT = [
    ("light.ranges_nm", "[Decimal('19')]", "[Decimal('16')]"),
    ("light", "Fl.R.4s", "Fl(2)R.6s"),
    ("depth", "6.4 m", "5.8 m"),
    ("legend", "Foul Ground", "Foul"),
    ("name", "No 2", "No 4"),
]


def changes(said: str, items: str = ITEMS) -> list[tuple[str, str, str]]:
    return [
        (one.property, _shown(one.old), _shown(one.new))
        for action in _amendments(said, items)
        for one in action.changes
        if action.usable
    ]


def _amendments(said: str, items: str) -> list[Amend]:
    read: list[Action] = actions_of(parse(f"Corrections, list 8\n{said}\n\n{HEAD}{items}"))
    return [one for one in read if isinstance(one, Amend)]


def _shown(value: object) -> str:
    return str(getattr(value, "written", value))


@pytest.mark.parametrize(
    "said",
    [
        'Under "Change" the new value is written first and the old value follows it in square\n'
        "brackets.",
        "Former values are given in brackets behind the new ones.",
        "Square brackets enclose the previous value.",
        "Values in square brackets are those now charted.",
        "The superseded entry stands in square brackets, and the new one in front of it.",
        "The old value follows the new one in [brackets].",
    ],
)
def test_the_text_says_that_brackets_hold_the_old_value(said: str) -> None:
    assert changes(said) == NEW_IN_FRONT
    (named, *_) = _amendments(said, ITEMS)
    assert named.feature.light is not None
    assert named.feature.light.written == "Fl.W.8s"


def test_the_text_says_that_brackets_hold_the_new_value() -> None:
    said = "The new value is given in square brackets behind the old one."
    assert changes(said) == [(path, new, old) for path, old, new in NEW_IN_FRONT]


def test_round_brackets() -> None:
    items = f"Change depth 5.8 m (6.4 m)   {R}\nChange light, Iso.G.4s, range 7M (9M)   {Q}\n"
    said = "Old values follow in round brackets."
    assert [one[0] for one in changes(said, items)] == ["depth", "light.ranges_nm"]


def test_words_on_the_line_above() -> None:
    items = f'Change\n  name of special buoy:\n     "Ledge South" ["Sorley"]   {P}\n'
    said = "Old values follow in square brackets."
    assert changes(said, items) == [("name", "Sorley", "Ledge South")]


@pytest.mark.parametrize(
    "said",
    [
        "",
        "Positions in brackets are approximate.",
        "The previous notice for each chart stands in square brackets.",
        "New values precede the old ones in square brackets.",
        "Old values follow in square brackets. The new value is written in square brackets.",
        "Old values follow in round brackets.",
        "Values in square brackets are those to be charted.",
    ],
)
def test_nothing_is_taken_from_brackets_that_are_not_explained(said: str) -> None:
    assert changes(said) == []
    assert errors(parse(f"Corrections, list 8\n{said}\n\n{HEAD}{ITEMS}"))


def test_several_values_in_brackets_are_held_back() -> None:
    items = f"Change light, Fl.W.8s, range 16M [19M], elevation 7m [9m]   {P}\n"
    assert changes("Old values follow in square brackets.", items) == []
    items = f"Insert depth 5.8 m [6.4 m]   {P}\n"
    read = actions_of(parse(f"Old values follow in square brackets.\n\n{HEAD}{items}"))
    assert [one.usable for one in read] == [False]
