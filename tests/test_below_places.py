"""What stands below a place: circles as heads, things beside it, notices cancelled above it."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, codes, errors, places, told


@pytest.mark.parametrize(
    "head",
    [
        "In the circle of radius 0.4 M centred on",
        "Within a circle of radius 0.4 miles centred on",
        "In the circle, radius 4 cables, centred on",
        "Circle of radius 0.4M, centre",
        "Within 0.4 miles of",
    ],
)
def test_a_circle_heads_what_lies_in_it(head: str) -> None:
    area = f'{head} {P}\n   - insert a restricted area\n   - insert legend "Keep clear"\n'
    bulletin = parse(f"{HEAD}\n{area}At {Q}\n   - insert a platform\n")
    shapes = [(one.geometry.shape, str(one.geometry.radius_nm)) for one in actions_of(bulletin)]
    assert shapes == [("circle", "0.4"), ("circle", "0.4"), ("point", "None")]
    assert places(bulletin) == [[AT_P], [AT_P], [AT_Q]]
    assert codes(bulletin) == set()


def test_other_words_in_front_of_a_place_are_no_head() -> None:
    text = f"In the dredged basin near {P}\n   - insert a wreck\n   - delete a pile\n"
    assert told(parse(f"{HEAD}\n{text}")) == []


BUOY = "   - delete the special light-buoy, Fl.Y.5s\n"


@pytest.mark.parametrize(
    ("words", "direction"),
    [
        ("close E of this place", "E"),
        ("close NE of this position.", "NE"),
        ("close south of the same point", "S"),
        ("close to that place", None),
    ],
)
def test_a_thing_lies_beside_the_place_above_it(words: str, direction: str | None) -> None:
    bulletin = parse(f"{HEAD}\nAt {P}\n{BUOY}   - delete depth 8.4 m, {words}\n")
    beside = actions_of(bulletin)[1]
    assert (beside.geometry.relation, beside.geometry.direction) == ("close", direction)
    assert places(bulletin) == [[AT_P], [AT_P]]
    assert beside.text.endswith(words.split(" of ")[0].rpartition(" ")[2] + " of") or (
        direction is None and beside.text.endswith("close to")
    )
    assert codes(bulletin) == set()


def test_a_distance_leads_from_the_place_above() -> None:
    row = "   - delete depth 8.4 m, 0.2 miles 090° from this position\n"
    (_, beside) = actions_of(parse(f"{HEAD}\nAt {P}\n{BUOY}{row}"))
    assert beside.geometry.relation == "from_reference"
    assert beside.geometry.offset is not None
    assert beside.usable


@pytest.mark.parametrize(
    ("head", "words"),
    [
        (f"At {P}", "close NE of it"),
        (f"At {P}", "close NE of the old buoy"),
        (f"Within 0.4 miles of {P}", "close E of this place"),
        (f"At {P} and {Q}", "close E of this place"),
        (f"At {P}", "close W of the pier, close E of this place"),
    ],
)
def test_what_is_not_certain_is_held_back(head: str, words: str) -> None:
    bulletin = parse(f"{HEAD}\n{head}\n{BUOY}   - delete depth 8.4 m, {words}\n")
    assert not actions_of(bulletin)[1].usable
    assert "relation-unclear" in errors(bulletin)


@pytest.mark.parametrize("noun", ["Slip", "Card", "Note", "Leaf", "Notice", "Instruction"])
@pytest.mark.parametrize("gap", ["", "\n"])
def test_a_notice_is_cancelled_above_a_place(noun: str, gap: str) -> None:
    body = f"At {P}\n   - insert a platform\n"
    bulletin = parse(f"{HEAD}{noun} 6(P)/26 is cancelled.\n{gap}{body}")
    (notice,) = bulletin.notices
    assert [(one.number, one.status) for one in notice.cancels] == [(6, "preliminary")]
    assert told(bulletin) == [("insert", "platform", [AT_P])]
    assert "cancelled" not in actions_of(bulletin)[0].text


@pytest.mark.parametrize("noun", ["slip", "note", "card", "advisory"])
def test_words_for_notices_that_are_cancelled(noun: str) -> None:
    bulletin = parse(f"{HEAD}This cancels {noun} 6(T)/26.\n\nInsert platform {P}\n")
    (notice,) = bulletin.notices
    assert [one.number for one in notice.cancels] == [6]
    assert codes(bulletin) == set()


def test_a_thing_that_is_removed_is_no_notice() -> None:
    bulletin = parse(f"{HEAD}Buoy 6 is removed.\n\nAt {P}\n   - insert a platform\n")
    assert [one.cancels for one in bulletin.notices] == [[]]
