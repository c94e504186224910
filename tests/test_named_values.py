"""Things named one by one, with what is said of each behind its place."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, R, actions_of, errors


def read(item: str) -> list[str]:
    """The words of every action that may be used."""
    actions = actions_of(parse(f"{HEAD}{item}\n"))
    return [action.feature.text for action in actions if action.usable]


@pytest.mark.parametrize(
    ("item", "words"),
    [
        (
            f"light-buoy in {P}, Q.R; light-buoy in {Q}, Q.G",
            ["light-buoy, Q.R", "light-buoy, Q.G"],
        ),
        (f"light, {P}, Fl.G.3s, and light, {Q}, Fl.R.3s", ["light, Fl.G.3s", "light, Fl.R.3s"]),
        (f"light-buoy {P}, Q.R, light-buoy {Q}, Q.G", ["light-buoy, Q.R", "light-buoy, Q.G"]),
        (
            f"light-buoy No 3, in {P}, Q.G, and beacon in {Q}, red.",
            ["light-buoy No 3, Q.G", "beacon, red"],
        ),
        (
            f"light-vessel Corvane {P} Fl(3)20s, racon (K); buoy {Q}",
            ["light-vessel Corvane, Fl(3)20s, racon (K)", "buoy"],
        ),
        (f"tower {P}, 85m; chimney {Q}, 90m; mast {R}", ["tower, 85m", "chimney, 90m", "mast"]),
        (f"wreck {P}, depth unknown; obstruction {Q}", ["wreck, depth unknown", "obstruction"]),
        (
            f"fish farm {P}, temporary; wreck {Q}, rep 2020",
            ["fish farm, temporary", "wreck, rep 2020"],
        ),
        (f'buoy {P}, "Brack"; buoy {Q}, "Ellory"', ['buoy, "Brack"', 'buoy, "Ellory"']),
        (f"virtual AIS {P}, Brack East; buoy {Q}", ["virtual AIS, Brack East", "buoy"]),
        (
            f"beacon {P}, red can topmark; buoy {Q}, green",
            ["beacon, red can topmark", "buoy, green"],
        ),
        (
            f"buoy {P}, red\n  and white; beacon {Q}, green",
            ["buoy, red and white", "beacon, green"],
        ),
    ],
)
@pytest.mark.parametrize("verb", ["Insert", "Delete"])
def test_what_stands_behind_a_place_is_said_of_the_thing_there(
    verb: str, item: str, words: list[str]
) -> None:
    assert read(f"{verb} {item}") == words
    assert errors(parse(f"{HEAD}{verb} {item}")) == set()


@pytest.mark.parametrize(
    ("rows", "words"),
    [
        (
            f"light-buoys:\nNo 1  {P}   Fl.G.3s\nNo 2  {Q}   Fl.R.3s",
            ["light-buoys No 1, Fl.G.3s", "light-buoys No 2, Fl.R.3s"],
        ),
        (
            f"beacons:\nBrack   {P}   red\nEllory   {Q}\nQuill   {R}   green",
            ["beacons Brack, red", "beacons Ellory", "beacons Quill, green"],
        ),
        (
            f"beacons\nBrack Head, {P}, topmark red can\nEllory Head, {Q}, topmark green can",
            ["beacons Brack Head, topmark red can", "beacons Ellory Head, topmark green can"],
        ),
    ],
)
def test_rows_of_names_keep_what_stands_on_their_own_line(rows: str, words: list[str]) -> None:
    assert read(f"Insert {rows}") == words


def test_a_row_that_may_not_be_used_takes_its_light_with_it() -> None:
    rows = f"Quill Pier   {P}   Fl.R.5s   12m   8M\nBrack Head   {Q}   Q.G   10m   5M"
    assert read(f"Insert lights:\n{rows}") == ["lights Brack Head, Q.G 10m 5M"]


def test_rows_of_moves_keep_their_lights() -> None:
    rows = f"No 1  {P} to {Q}  Fl.G.3s\nNo 2  {Q} to {R}  Fl.R.3s"
    found = read(f"Move light-buoys:\n{rows}")
    assert found == ["light-buoys No 1, Fl.G.3s", "light-buoys No 2, Fl.R.3s"]


def test_the_lights_of_a_leading_line_are_parted() -> None:
    found = read(f"Insert leading lights, front {P} Q.R, rear {Q} Iso.R.4s")
    assert found == ["leading lights, front, Q.R", "rear, Iso.R.4s"]


@pytest.mark.parametrize(
    "item",
    [
        f"Insert wreck {P} 12₄ rock {Q} 3₂ pile {R}",
        f"Insert light {P} Fl.G.3s light {Q}",
        f"Insert wreck {P}; Q.R; light-buoy {Q}",
        f"Delete light-buoy {P}, Q.R, light-buoy {Q}",
        f"Insert wreck, {P}, 9m, rock, {Q}",
    ],
)
def test_a_value_between_two_things_is_of_neither_for_sure(item: str) -> None:
    assert read(item) == []
    assert "place-of-neighbour" in errors(parse(HEAD + item))


@pytest.mark.parametrize(
    ("item", "words"),
    [
        (f"Insert Fl.R.3s light {P} Fl.G.3s light {Q}", ["Fl.R.3s light", "Fl.G.3s light"]),
        (f"Insert red buoy {P}, green buoy {Q}", ["red buoy", "green buoy"]),
        (f"Insert buoy {P}, red beacon {Q}", ["buoy", "red beacon"]),
        (
            f"Insert wreck {P}; dangerous rock {Q}; 12m rock {R}",
            ["wreck", "dangerous rock", "12m rock"],
        ),
        (f"Insert wreck, 12m, {P}; rock, 9m, {Q}", ["wreck, 12m", "rock, 9m"]),
        (f"Insert buoy {P} (red), beacon {Q} (green)", ["buoy, (red)", "beacon, (green)"]),
        (f"Insert light-buoy {P} Q.R\nlight-buoy {Q} Q.G", ["light-buoy, Q.R", "light-buoy, Q.G"]),
    ],
)
def test_what_stands_in_front_stays_with_the_thing_behind_it(item: str, words: list[str]) -> None:
    assert read(item) == words
    assert errors(parse(HEAD + item)) == set()
