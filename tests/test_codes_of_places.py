"""Codes that a list gives to places, and how the items below it name them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.letters import read_letters
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, errors, told

ALL = [("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q]), ("delete", "pile", [AT_R])]
CAPITALS, COUNTED, SMALL = ("A", "B", "C"), ("P1", "P2", "P3"), ("(a)", "(b)", "(c)")


def listed(codes: tuple[str, str, str], form: str, title: str = "Positions:\n") -> str:
    """A list of three places, and an item at each; in `form` stand `thing` and `code`."""
    places = "".join(f"  {c}  {p}\n" for c, p in zip(codes, (P, Q, R), strict=True))
    things = ("wreck", "rock", "pile")
    one, two, three = (
        form.format(thing=thing, code=code) for thing, code in zip(things, codes, strict=True)
    )
    return f"{HEAD}{title}{places}Insert:\n  {one}\n  {two}\nDelete:\n  {three}\n"


READ = [
    (CAPITALS, "{thing} ({code})"),
    (CAPITALS, "{thing} [{code}]"),
    (CAPITALS, "{thing} at {code}"),
    (CAPITALS, "{thing}          {code}"),
    (COUNTED, "{thing} ({code})"),
    (COUNTED, "{thing} [{code}]"),
    (COUNTED, "{thing} at {code}"),
    (COUNTED, "{thing}          {code}"),
    (SMALL, "{thing} {code}"),
    (SMALL, "{thing}, at {code}"),
]


@pytest.mark.parametrize("title", ["Positions:\n", "POSITIONS\n", ""])
@pytest.mark.parametrize(("codes", "form"), READ)
def test_each_item_is_at_its_code(codes: tuple[str, str, str], form: str, title: str) -> None:
    bulletin = parse(listed(codes, form, title))
    assert told(bulletin) == ALL
    assert errors(bulletin) == set()


HELD = [
    (CAPITALS, "{thing}, {code}"),
    (CAPITALS, "{thing} - {code}"),
    (CAPITALS, "{thing} {code}"),
    (CAPITALS, "{code}: {thing}"),
    (COUNTED, "{thing}, {code}"),
    (COUNTED, "{thing} {code}"),
    (COUNTED, "{code}: {thing}"),
    (("1.", "2.", "3."), "{thing} ({code})"),
    (("No 1", "No 2", "No 3"), "{thing} at {code}"),
]


@pytest.mark.parametrize("title", ["Positions:\n", ""])
@pytest.mark.parametrize(("codes", "form"), HELD)
def test_no_item_is_at_the_places_of_others(
    codes: tuple[str, str, str], form: str, title: str
) -> None:
    bulletin = parse(listed(codes, form, title))
    assert all(one in ALL for one in told(bulletin))
    assert told(bulletin) == ALL or errors(bulletin)


def test_several_codes_in_brackets() -> None:
    body = f"Positions:\n  P1  {P}\n  P2  {Q}\n  P3  {R}\nInsert:\n  mooring buoys ("
    for joint in (", ", " and ", " & "):
        bulletin = parse(f"{HEAD}{body}P1{joint}P3)\n  rock (P2)\n")
        assert told(bulletin) == [
            ("insert", "buoy_mooring", [AT_P, AT_R]),
            ("insert", "rock", [AT_Q]),
        ]


def test_the_letter_of_a_racon_is_none_of_a_place() -> None:
    body = (
        f"Positions:\n  B  {P}\n  K  {Q}\nInsert:\n  light-buoy with racon (K), at B\n  rock (K)\n"
    )
    (first, _) = parse(HEAD + body).notices[0].charts[0].actions
    assert first.feature.racon is not None
    assert [one.iso6709 for one in first.geometry.positions] == [AT_P]


@pytest.mark.parametrize(
    ("text", "letters"),
    [
        ("(P1)", ("P1",)),
        ("P1 and P2", ("P1", "P2")),
        ("(A1), (A2)", ("A1", "A2")),
        ("P1-P3", ("P1", "P2", "P3")),
        ("(A, B)", ("A", "B")),
    ],
)
def test_codes_of_a_reference(text: str, letters: tuple[str, ...]) -> None:
    assert read_letters(text) == letters


@pytest.mark.parametrize(
    "letters",
    ["A, B\n      and C", "A, B,\n      and C", "A, B and\n      C", "A,\n      B and C"],
)
def test_letters_go_on_below(letters: str) -> None:
    places = f"  A  {P}\n  B  {Q}\n  C  {R}\n"
    bulletin = parse(f"{HEAD}Positions:\n{places}Insert submarine cable, joining {letters}\n")
    assert told(bulletin) == [("insert", "cable_submarine", [AT_P, AT_Q, AT_R])]
    assert errors(bulletin) == set()


def test_a_letter_that_opens_a_line_below_others_is_an_article() -> None:
    places = f"  A  {P}\n  B  {Q}\n"
    bulletin = parse(f"{HEAD}Positions:\n{places}Insert wrecks at A and B\nA buoy lies there.\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P, AT_Q])]


@pytest.mark.parametrize(
    ("reference", "at"), [("a above", AT_P), ("(a) above", AT_P), ("b above", AT_Q)]
)
def test_a_small_letter_alone_in_the_column_of_places(reference: str, at: str) -> None:
    text = (
        f"{HEAD}INS a  depth 8.1 m            {P}\n    b  depth 7.1 m            {Q}\n"
        f"DEL c  pile, close S of       {reference}\n"
    )
    bulletin = parse(text)
    assert told(bulletin)[-1] == ("delete", "pile", [at])
    assert errors(bulletin) == set()


def test_an_article_before_above_is_no_letter() -> None:
    bulletin = parse(f"{HEAD}Insert wreck  a above the rock  {P}\n")
    assert "letter-unknown" not in errors(bulletin)
