"""Legends that share a sentence, and words that may or may not be of their wording."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, actions_of, errors


def read(items: str) -> list[tuple[str, str | None, bool]]:
    found = actions_of(parse(HEAD + items))
    return [(one.verb, one.feature.legend, one.usable) for one in found]


@pytest.mark.parametrize(
    "item",
    [
        f"Insert legend, Dredged to 9.5m (2026), and delete legend, Dredged to 8.0m, {P}",
        f"Insert legend, Works in progress, delete legend, Dredging, {P}",
        f"Insert legend Works in progress {P} and delete legend Dredging",
    ],
)
def test_a_legend_without_a_place_beside_one_with_a_place_is_held_back(item: str) -> None:
    assert [usable for *_, usable in read(item)].count(True) == 1
    assert errors(parse(HEAD + item)) == {"item-without-position"}


@pytest.mark.parametrize(
    "items",
    [
        f'Insert note, "Cables"; delete wreck {P}',
        f'Insert legend, "Foul", below the title.\nDelete wreck {P}',
        f'Delete wreck {P}\nInsert legend, "Foul", below the title',
    ],
)
def test_a_legend_that_says_where_on_the_sheet_needs_no_place(items: str) -> None:
    assert all(usable for *_, usable in read(items))


@pytest.mark.parametrize("words", ["Works and legend Foul", "Works, legend Foul", "X and note Y"])
def test_two_legends_are_not_one(words: str) -> None:
    assert read(f"Insert legend {words} {P}") == [("insert", None, False)]


@pytest.mark.parametrize("words", ["Fl.5s at the beacon in", "Foul beside the pier,"])
def test_where_a_legend_stands_is_not_of_its_wording(words: str) -> None:
    assert read(f"Delete legend {words} {P}") == [("delete", None, False)]


@pytest.mark.parametrize(
    "words", ["Cables and Pipelines", "Works at north end", "Restricted area (see Note 3)"]
)
def test_the_wording_of_a_legend_stays_whole(words: str) -> None:
    assert read(f"Insert legend, {words}, {P}") == [("insert", words, True)]


@pytest.mark.parametrize("lead", ["in magenta ", "in magenta, ", "in pencil the "])
def test_the_ink_may_be_told_before_the_legend(lead: str) -> None:
    assert read(f"Insert {lead}legend Works {P}") == [("insert", "Works", True)]


def test_a_bracket_alone_is_no_new_legend() -> None:
    held = f"Amend legend, Under construction (2024), to (2026) {P}"
    assert errors(parse(HEAD + held)) == {"change-value-unread"}
    held = f"Amend legend, Dredged to 8m (2024), to 8.5m (2026) {P}"
    assert errors(parse(HEAD + held)) == {"change-value-unread"}
    whole = f"Amend legend, Under construction (2024), to Under construction (2026) {P}"
    assert errors(parse(HEAD + whole)) == set()
    assert errors(parse(f"{HEAD}Amend legend (2024) to (2026) {P}")) == set()
    quoted = f'Amend legend from "Works (2024)" to "(2026)" {P}'
    assert errors(parse(HEAD + quoted)) == set()


def test_the_wording_of_a_legend_is_no_thing() -> None:
    held = f"Insert circle, radius 2 cables, centre {P}, legend Anchorage"
    assert errors(parse(HEAD + held)) == {"feature-kinds-several"}
