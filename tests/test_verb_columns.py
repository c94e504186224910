"""Tables whose columns are headed by verbs."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, P, Q, errors, told

HEAD = "88/26 Quill\nChart 21\n"
RULED = (
    "+----------------------+----------+----------+-----------------------------+\n"
    "| POSITION             | INSERT   | DELETE   | AMEND                       |\n"
    "+----------------------+----------+----------+-----------------------------+\n"
    f"| {P} | rock     |          |                             |\n"
    f"| {Q} |          | pile     |                             |\n"
    f"| {P} |          |          | light Fl.R.2s: range to 5M  |\n"
    "+----------------------+----------+----------+-----------------------------+\n"
)
SPACED = (
    "Position               Insert     Delete     Amend\n"
    f"{P}   rock\n"
    f"{Q}              pile\n"
    f"{P}                         light Fl.R.2s: range to 5M\n"
)
BEHIND = (
    "Insert     Delete     Amend                        Position\n"
    f"rock                                               {P}\n"
    f"           pile                                    {Q}\n"
    f"                      light Fl.R.2s: range to 5M   {P}\n"
)


@pytest.mark.parametrize("table", [RULED, SPACED, BEHIND])
def test_the_column_of_a_thing_tells_what_is_done(table: str) -> None:
    bulletin = parse(HEAD + table)
    assert told(bulletin) == [
        ("insert", "rock", [AT_P]),
        ("delete", "pile", [AT_Q]),
        ("amend", "light", [AT_P]),
    ]
    assert not errors(bulletin)
    spans = [one.span.line for one in bulletin.notices[0].charts[0].actions]
    assert len(set(spans)) == len(spans)


def test_thing_between_two_columns_is_held_back() -> None:
    table = f"Position               Insert     Delete\n{P}       rock with kelp\n"
    assert not [one for one in told(parse(HEAD + table)) if one[2]]


def test_two_things_in_one_row_are_held_back() -> None:
    table = f"| Position | Insert | Delete |\n| {P} | rock | pile |\n"
    assert told(parse(HEAD + table)) == []
