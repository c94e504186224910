"""Places that a brace holds together, and degrees that are told once for all places below."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, errors, told

BEHIND = (
    f"Insert\n {P}  }}\n {Q}  }}  submarine cable, joining these three positions\n {R}  }}\n"
    f" {P}     wreck\n"
)
BEFORE = (
    f"Insert\n                    {{ {P}\n submarine cable    {{ {Q}\n                    {{ {R}\n"
    f" wreck                {P}\n"
)


@pytest.mark.parametrize("body", [BEHIND, BEFORE], ids=["words behind", "words before"])
def test_the_places_of_a_brace_are_those_of_the_thing_beside_it(body: str) -> None:
    bulletin = parse(HEAD + body)
    assert told(bulletin) == [
        ("insert", "cable_submarine", [AT_P, AT_Q, AT_R]), ("insert", "wreck", [AT_P]),
    ]  # fmt: skip
    assert errors(bulletin) == set()


def test_words_on_several_lines_of_a_brace_are_told() -> None:
    bulletin = parse(f"{HEAD}Insert\n {P}  }}  wreck\n {Q}  }}  rock\n {R}  }}\n")
    assert errors(bulletin)


ROWS = "  00'.00S  00'.00W     wreck\n  00'.50S  00'.00W     rock\n"


@pytest.mark.parametrize(
    "degrees",
    ["All positions in 46° S, 122° W\n", "46° S, 122° W\n", "All positions 46°S 122°W.\n"],
)
def test_degrees_told_once_are_no_place(degrees: str) -> None:
    bulletin = parse(f"{HEAD}{degrees}Insert\n{ROWS}")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]
    assert errors(bulletin) == set()


def test_degrees_behind_the_chart_are_no_place() -> None:
    head = HEAD.rstrip() + "     all positions 46° S, 122° W\n"
    bulletin = parse(f"{head}  ======== INSERT ========\n{ROWS}")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("insert", "rock", [AT_Q])]


def test_degrees_that_may_be_a_place_are_held_back() -> None:
    bulletin = parse(f"{HEAD}Insert wreck 46° S 122° W\nInsert rock 00'.50S 00'.00W\n")
    assert told(bulletin) == [("insert", "rock", [AT_Q])]
    assert errors(bulletin) == {"position-degrees-lent"}
