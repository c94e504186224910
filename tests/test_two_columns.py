"""Two columns of a page side by side, and places above what is told at them."""

from __future__ import annotations

from noticeparse import parse
from tests.short_notices import AT_P, HEAD, P, Q, actions_of, errors, told


def test_two_verbs_that_head_two_columns() -> None:
    for mark in ("", ":"):
        text = (
            f"{HEAD}Delete{mark}                         Insert{mark}\n wreck {P}      rock {Q}\n"
        )
        bulletin = parse(text)
        assert told(bulletin) == []
        assert "verb-unknown" in errors(bulletin)


def test_two_charts_that_head_two_columns() -> None:
    text = (
        "Chart 14                         Chart 15\n"
        f"22/26 Insert wreck {P}     22/26 Delete rock {Q}\n"
    )
    bulletin = parse(text)
    assert actions_of(bulletin)
    assert told(bulletin) == []
    assert errors(bulletin) == {"item-of-one-chart"}


def test_a_place_below_statements_may_be_that_of_the_last() -> None:
    text = f"{HEAD}At {P}\n   a wreck is inserted\n   the rock is deleted\n   in {Q}.\n"
    bulletin = parse(text)
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert errors(bulletin) == {"place-of-another"}


def test_as_many_places_as_statements() -> None:
    bulletin = parse(f"{HEAD}{P}\n{Q}\nInsert wreck\nDelete rock\n")
    assert told(bulletin) == []
    assert errors(bulletin) == {"place-of-another"}


def test_places_that_are_joined_are_those_of_each() -> None:
    text = f"{HEAD}At {P} and {Q}\n   a wreck is inserted\n   the rock is deleted\n"
    assert len(told(parse(text))) == 2
    text = f"{HEAD}{P}\n{Q}\nInsert wrecks\nDelete rocks\n"
    assert len(told(parse(text))) == 2


def test_the_number_of_one_chart_in_brackets_or_words() -> None:
    head = "41/26 Quill Sound\nCharts 802 [30/26] and 803 [31/26] WGS84, depths in metres\n"
    for words in (f"Insert wreck {P} (802)", f"A buoy in {P} has been inserted on chart 802."):
        bulletin = parse(f"{head}{words}\n")
        assert told(bulletin) == []
        assert errors(bulletin) == {"item-of-one-chart"}
