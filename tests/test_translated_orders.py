"""Orders as a translator writes them, and corners with capital letters."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import (
    AT_P,
    AT_Q,
    AT_R,
    HEAD,
    P,
    Q,
    R,
    actions_of,
    errors,
    told,
    usable_of,
)

A, B, C = (
    "47° 20',00 S – 124° 02',00 W",
    "47° 20',00 S – 124° 00',50 W",
    "47° 21',30 S – 124° 00',50 W",
)
RING = ["-4720.00-12402.00/", "-4720.00-12400.50/", "-4721.30-12400.50/"]


@pytest.mark.parametrize(
    ("order", "verb"),
    [
        ("It is to be inscribed:", "insert"),
        ("To be inscribed:", "insert"),
        ("To be inscribed", "insert"),
        ("Inscribe:", "insert"),
        ("The following are to be inscribed:", "insert"),
        ("It is to be suppressed:", "delete"),
        ("To be effaced:", "delete"),
        ("The following marks are to be effaced:", "delete"),
    ],
)
def test_an_order_above_a_list(order: str, verb: str) -> None:
    text = f"{HEAD}{order}\n– a wreck, in {P}\n– the rock, in {Q}\n"
    assert told(parse(text)) == [(verb, "wreck", [AT_P]), (verb, "rock", [AT_Q])]


@pytest.mark.parametrize(
    "sentence",
    [
        f"A wreck is to be inscribed in {P}.",
        f"A wreck in {P} has been inscribed.",
        f"Inscribe a wreck in {P}.",
    ],
)
def test_an_order_in_a_sentence(sentence: str) -> None:
    assert told(parse(f"{HEAD}{sentence}\n")) == [("insert", "wreck", [AT_P])]


def test_inscribed_words_are_no_order() -> None:
    bulletin = parse(f'{HEAD}Insert beacon inscribed "PELL"  {P}\n')
    assert [action.verb for action in actions_of(bulletin)] == ["insert"]


@pytest.mark.parametrize("mark", ["{})", "{}.", "{}:", "{} -", "({})"])
@pytest.mark.parametrize(
    "lead", ["delimited by the points:", "limited by the following points", "bounded by"]
)
def test_corners_with_capital_letters(lead: str, mark: str) -> None:
    rows = "".join(f"   {mark.format(c)} {p}\n" for c, p in zip("ABC", (A, B, C), strict=True))
    bulletin = parse(f"{HEAD}Insert restricted area, {lead}\n{rows}Delete wreck  {P}\n")
    assert told(bulletin) == [
        ("insert", "restricted_area", RING),
        ("delete", "wreck", [AT_P]),
    ]


@pytest.mark.parametrize("mark", ["{})", "{}.", "{}:", "{} -"])
def test_no_corner_is_lost_at_a_letter_that_is_a_hemisphere_too(mark: str) -> None:
    places = [A, B, C, A, C]
    rows = "".join(f"   {mark.format(c)} {p}\n" for c, p in zip("ABCDE", places, strict=True))
    bulletin = parse(f"{HEAD}Insert restricted area, bounded by\n{rows}")
    assert [len(action.geometry.positions) for action in actions_of(bulletin)] == [len(places)]


@pytest.mark.parametrize(
    "words",
    [
        f"restricted area, delimited by the points: A) {P}; B) {Q}; C) {R}",
        f"restricted area, delimited by the points A ({P}), B ({Q}) and C ({R})",
        f"submarine cable, joining the points A ({P}), B ({Q})",
    ],
)
def test_a_line_or_area_whose_letters_are_not_read_is_no_point(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert {words}\n")
    whole = told(bulletin)
    assert whole in ([], [("insert", "restricted_area", [AT_P, AT_Q, AT_R])])
    assert whole or errors(bulletin)


@pytest.mark.parametrize(
    "order", ["To put", "To bear", "To mark", "To trace", "To put:", "TO PUT"]
)
def test_an_order_that_is_no_known_verb_does_not_take_the_verb_above(order: str) -> None:
    bulletin = parse(f"{HEAD}Delete rock {P}\n{order} wreck {Q}\n")
    assert usable_of(bulletin) == [("delete", "rock")]
    assert errors(bulletin) == {"verb-unknown"}


def test_to_leads_on_where_no_order_stands_behind_it() -> None:
    bulletin = parse(f"{HEAD}Move buoy from {P}\nTo position {Q}\n")
    assert usable_of(bulletin) == [("move", "buoy_generic")]
    (action,) = actions_of(parse(f"{HEAD}Amend light {P}\nTo read Fl.R.5s\n"))
    assert (action.verb, action.usable) == ("amend", True)


@pytest.mark.parametrize("order", ["To be deleted:", "Is deleted:", "To be deleted :"])
def test_an_order_in_the_passive_is_of_what_stands_behind_its_colon(order: str) -> None:
    for head in (f"Insert\n  wreck {P}\n  ", f"Insert wreck {P}\n"):
        bulletin = parse(f"{HEAD}{head}{order} rock {Q}\n")
        assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]
        assert not errors(bulletin)


@pytest.mark.parametrize(
    ("order", "verb"),
    [("Carry", "insert"), ("Carry in", "insert"), ("Bring in", "insert"), ("Abolish", "delete")],
)
@pytest.mark.parametrize(
    "layout",
    [
        "1. {0} wreck {1}\n2. Delete rock {2}\n",
        "{0}: wreck {1}\nDelete: rock {2}\n",
        "{0}   wreck {1}\nDelete    rock {2}\n",
        " {0}   wreck\n              {1}\n Delete     rock\n              {2}\n",
        "- To {3}: wreck, {1}\n- To delete: rock, {2}\n",
        "{0}:\n  wreck {1}\nDelete:\n  rock {2}\n",
        "{0} a wreck in {1}.\nDelete the rock in {2}.\n",
    ],
)
def test_a_verb_out_of_another_tongue(order: str, verb: str, layout: str) -> None:
    bulletin = parse(HEAD + layout.format(order, P, Q, order.lower()))
    assert told(bulletin) == [(verb, "wreck", [AT_P]), ("delete", "rock", [AT_Q])]
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    "words",
    [
        f"Carry out the works in {P}.",
        f"Carry a light when in {P}.",
        f"Vessels have to\ncarry a pilot in {P}.",
        f"The light-buoy in {P} was carried away.",
    ],
)
def test_what_ships_carry_goes_on_no_chart(words: str) -> None:
    assert usable_of(parse(f"{HEAD}Delete rock {Q}\n{words}\n")) == [("delete", "rock")]


@pytest.mark.parametrize("last", ["Delete rock", "Suppress     rock"])
def test_a_strange_verb_does_not_turn_the_list_round(last: str) -> None:
    # Its first thing stands above the first place, and nothing below the last.
    text = (
        f"{HEAD} Fetch      wreck, least depth 14.5 m\n                {P}\n"
        f"            islet\n                {Q}\n {last}\n                {R}\n"
    )
    bulletin = parse(text)
    assert told(bulletin) == [("delete", "rock", [AT_R])]
    assert "verb-unknown" in errors(bulletin)


@pytest.mark.parametrize("mark", ["", "- ", "* ", "• ", "(a) "])
@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("To be inserted:", "To be deleted:"),
        ("To be put:", "To be suppressed:"),
        ("To be carried :", "To be abolished :"),
        ("TO BE ADDED:", "TO BE STRUCK OUT:"),
        ("Is to be placed:", "Is to be removed:"),
    ],
)
def test_an_order_before_each_thing(mark: str, first: str, second: str) -> None:
    bulletin = parse(f"{HEAD}{mark}{first} wreck, {P}\n{mark}{second} the rock in {Q}.\n")
    assert [one for one in told(bulletin) if one[0] == "insert"] == [("insert", "wreck", [AT_P])]
    assert told(bulletin)[1:] == [("delete", "rock", [AT_Q])]
    assert errors(bulletin) == set()


@pytest.mark.parametrize("above", ["To be placed: wreck,", "Insert wreck", "- To add: wreck,"])
@pytest.mark.parametrize("order", ["To be struck:", "To be frobnicated:", "- To be sworn in:"])
def test_an_order_that_nobody_knows_has_not_the_verb_above(above: str, order: str) -> None:
    bulletin = parse(f"{HEAD}{above} {P}\n{order} rock, {Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin) != set()


def test_what_is_to_be_noted_is_no_order() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n\nTo be noted: the rock is not marked.\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin) == set()
