"""Sentences that say who did it: `We have laid a buoy in P`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, errors, told

BUOY, ROCK = ("insert", "buoy_special", [AT_P]), ("delete", "rock", [AT_Q])
TOLD = [
    f"We have laid a special buoy in {P}.\nWe have taken up the rock in {Q}.",
    f"1.1  We have laid a special buoy in {P}.\n1.2  The rock in {Q} is to be deleted.",
    f"We have now laid a special buoy in {P} and we have removed the rock in {Q}.",
    f"The port authority has established a special buoy in {P} and has removed\nthe rock in {Q}.",
    f"The tender FOULSHIEL has laid a special buoy in {P}. We removed the rock in {Q}.",
    f"We have laid a special buoy in {P}; it is to be inserted.\nWe have cleared the rock in {Q};"
    " it is to be deleted.",
]


@pytest.mark.parametrize("text", TOLD)
def test_who_did_it_is_no_part_of_the_feature(text: str) -> None:
    bulletin = parse(f"{HEAD}{text}\n")
    assert told(bulletin) == [BUOY, ROCK]
    assert errors(bulletin) == set()


def test_found_and_to_be_deleted_is_held_back() -> None:
    bulletin = parse(f"{HEAD}We have found a rock in {P}. It is to be deleted.\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"sentence-told-twice"}


@pytest.mark.parametrize(
    "untold",
    [
        f"Firth Pilots have laid a special buoy in {P}.",
        f"When the ice had gone we have laid a special buoy in {P}.",
    ],
)
def test_what_is_told_otherwise_is_not_passed_over(untold: str) -> None:
    bulletin = parse(f"{HEAD}{untold}\nThe rock in {Q} has been removed.\n")
    assert ROCK in told(bulletin)
    assert BUOY not in told(bulletin)
    assert errors(bulletin)


def test_a_temporary_notice_stays_prose() -> None:
    bulletin = parse(f"12(T)/26 Quill Sound.\nWe have laid a special buoy in {P} for the works.\n")
    assert told(bulletin) == []
    assert errors(bulletin) == set()
    assert [one.iso6709 for one in bulletin.notices[0].remarks[0].positions] == [AT_P]
