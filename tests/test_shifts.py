"""How far a thing is moved, told besides its two places."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.action import Move
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, codes

# Q lies half a mile south of P.
RIGHT = [
    ", five cables southward", ", 5 cables S", " (0.5 miles south)", " (0.5 miles 180°)",
    ", half a mile to the south", ", a distance of 926 metres", ", that is 0.5M S",
    ", a distance of about 5 cables to the southward", ", 926 metres in a southerly direction",
]  # fmt: skip
WRONG = [
    ", two miles southward", ", 5 cables N", " (1.5 miles south)", " (0.5 miles 090°)",
    ", half a mile to the north", ", a distance of 2926 metres", ", that is 0.5M E",
    ", five cables eastward", ", 926 metres in a northerly direction",
]  # fmt: skip
BODIES = [
    "Move special buoy from {P} to {Q}{shift}.",
    "MOVE SPECIAL BUOY FROM {P} TO\n  {Q}{shift}",
]


def moved(body: str, shift: str) -> tuple[Move, set[str]]:
    bulletin = parse(f"{HEAD}{body.format(P=P, Q=Q, shift=shift)}\n")
    (action,) = actions_of(bulletin)
    assert isinstance(action, Move)
    return action, codes(bulletin)


@pytest.mark.parametrize("body", BODIES)
@pytest.mark.parametrize("shift", RIGHT)
def test_words_that_agree_say_no_more(body: str, shift: str) -> None:
    action, told = moved(body, shift)
    assert action.usable
    assert action.feature.text.lower() == "special buoy"
    assert [one.iso6709 for one in action.geometry.positions] == [AT_P]
    assert [one.iso6709 for one in action.destination.positions] == [AT_Q]
    assert not told


@pytest.mark.parametrize("body", BODIES)
@pytest.mark.parametrize("shift", WRONG)
def test_words_that_do_not_are_told(body: str, shift: str) -> None:
    assert moved(body, shift)[1] == {"offset-disagrees"}


@pytest.mark.parametrize("words", [", 5M", ", southward", ", 3 cables from the pier"])
def test_other_words_behind_a_move_stay_as_they_are(words: str) -> None:
    action, told = moved(BODIES[0], words)
    assert told
    assert "offset-disagrees" not in told
    assert action.feature.text != "special buoy"


def test_of_several_places_nothing_is_told() -> None:
    bulletin = parse(f"{HEAD}Insert special buoy {P}, 5 cables N of the beacon in {Q}\n")
    assert "offset-disagrees" not in codes(bulletin)
