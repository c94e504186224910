"""Verbs that stand behind the place of one item, and are those of the next: `P).REMOVE`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, AT_R, HEAD, P, Q, R, codes, errors, told


@pytest.mark.parametrize(
    "body",
    [
        f"ADD\n  1) wreck ({P}).REMOVE\n  2) rock ({Q}),\n  3) pile ({R}).",
        f"Ins wreck {P}.Del rock {Q}.\nDel pile {R}.",
        f"To be inserted :\nWreck . . . {P}   To be expunged :\nRock . . . {Q}\nPile . . . {R}",
        f"Insert wreck {P}.Delete rock {Q}. Delete pile {R}.",
    ],
)
def test_a_verb_close_behind_a_place_is_that_of_the_next(body: str) -> None:
    bulletin = parse(f"{HEAD}{body}\n")
    assert told(bulletin) == [
        ("insert", "wreck", [AT_P]),
        ("delete", "rock", [AT_Q]),
        ("delete", "pile", [AT_R]),
    ]  # fmt: skip
    assert not codes(bulletin)
    assert bulletin.coverage.unread == 0


def test_a_participle_behind_a_whole_command_holds_both_back() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}. deleted\nrock {Q}\nInsert pile {R}\n")
    assert told(bulletin) == [("insert", "pile", [AT_R])]
    assert "sentence-under-verb" in errors(bulletin)


@pytest.mark.parametrize(
    "body",
    [
        f"Insert wreck {P}.\nDelete rock {Q}.",
        f"Wreck {P} inserted.\nRock {Q} deleted.",
        f"INSERT\nwreck {P}\nDELETE\nrock {Q}",
    ],
)
def test_verbs_that_stand_apart_are_read_as_before(body: str) -> None:
    bulletin = parse(f"{HEAD}{body}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]
