"""Old characters, wordings that are quoted, and words of the next record or of the line before."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, R, codes, errors, usable_of

NUMBER = "12/26 Quill Sound.\n"


@pytest.mark.parametrize("words", ["Q.R for Fl.R.3s", "Fl.R.4s for F.R", "Fl.R.4s vice Fl.R.3s"])
def test_an_insertion_for_an_old_character_is_not_made_as_it_stands(words: str) -> None:
    assert usable_of(parse(f"{HEAD}Insert {words} {P}\n")) == []


def test_a_verb_that_is_none_below_another_gives_no_light_of_two_characters() -> None:
    bulletin = parse(f"{HEAD}ADD: wreck   {P}\nSUB: Fl.R.4s for Fl.R.3s    {Q}\n")
    assert ("insert", "light") not in usable_of(bulletin)


@pytest.mark.parametrize("words", ["light Fl.R.4s for small craft", "Fl.R.4s for ferries"])
def test_whom_a_light_is_for_is_no_old_light(words: str) -> None:
    assert "feature-instead" not in codes(parse(f"{HEAD}Insert {words} {P}\n"))


@pytest.mark.parametrize(
    "lead",
    ["This notice replaces Notice 8/26, which read:", "The former text was as it reads:"],
)
def test_what_a_notice_quotes_above_the_head_of_its_chart_is_held(lead: str) -> None:
    bulletin = parse(f"{NUMBER}{lead}\nChart 802 [3/26] WGS84\nInsert rock {P}\n")
    assert usable_of(bulletin) == []


def test_words_that_quote_nothing_above_the_head_hold_nothing_back() -> None:
    lead = "This notice replaces Notice 8/26. Correct as follows:"
    bulletin = parse(f"{NUMBER}{lead}\nChart 802 [3/26] WGS84\nInsert rock {P}\n")
    assert usable_of(bulletin) == [("insert", "rock")]


def test_the_thing_of_the_next_record_is_not_at_the_place_above_it() -> None:
    records = f"Type: Wreck\nAction: Insert\nPosition: {P}\nType: Buoy\nAction: Delete\n"
    assert usable_of(parse(f"{HEAD}{records}Position: {Q}\n")) == []


def test_what_should_read_otherwise_at_its_place_is_told() -> None:
    said = f"The wreck in {P} should be deleted. The depth in {Q} should read 4.1m.\n"
    bulletin = parse(HEAD + said)
    assert usable_of(bulletin) == [("delete", "wreck")]
    assert "sentence-unread" in errors(bulletin)


def test_a_line_goes_on_to_an_existing_one() -> None:
    lines = f"Insert submarine cable, joining {P}\n{Q}\nand existing cable in {R}\n"
    assert usable_of(parse(HEAD + lines)) == []


def test_an_existing_thing_of_a_list_is_its_own_item() -> None:
    lines = f"Delete\n  wreck {P}\n  existing rock {Q}\n"
    assert ("delete", "wreck") in usable_of(parse(HEAD + lines))
