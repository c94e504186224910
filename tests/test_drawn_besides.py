"""What is named behind a legend, a depth or a danger and goes with it is not lost."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, actions_of, codes, errors, usable_of, words_unread


@pytest.mark.parametrize(
    "words",
    [
        f"Delete legend and depth 5m {P}",
        f"Delete legend, and wreck {P}",
        f"Delete legend with arrow {P}",
        f'Delete legend "Foul" and depth 5m {P}',
        f'Delete legend "Foul" and danger line {P}',
    ],
)
def test_a_second_thing_behind_a_legend_is_no_wording(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert usable_of(bulletin) == []
    assert errors(bulletin) == {"feature-kinds-several"}


@pytest.mark.parametrize(
    ("words", "legend"),
    [
        (f"Insert legend Rock and shoal {P}", "Rock and shoal"),
        (f'Insert legend "and depth 5m" {P}', "and depth 5m"),
        (f'Insert legend "Foul" and in magenta {P}', "Foul"),
    ],
)
def test_a_joint_within_a_wording(words: str, legend: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert usable_of(bulletin) == [("insert", "legend")]
    assert actions_of(bulletin)[0].feature.legend == legend


@pytest.mark.parametrize(
    ("words", "drawn"),
    [
        (f"Delete depth 5m and danger line {P}", "danger line"),
        (f"Delete depth 5m and surrounding danger circle {P}", "danger circle"),
        (f"Delete wreck, least depth 9m, and surrounding danger line {P}", "danger line"),
        (f"Insert rock with pecked line {P}", "pecked line"),
    ],
)
def test_a_line_around_a_danger_is_told(words: str, drawn: str) -> None:
    assert any(f"`{drawn}`" in one for one in words_unread(parse(f"{HEAD}{words}\n")))


@pytest.mark.parametrize(
    "words",
    [
        f"Delete 5m contour line {P}",
        f"Delete wreck symbol {P}",
        f"Insert rock {P}, limits of area",
    ],
)
def test_a_line_that_is_the_thing_is_not_told(words: str) -> None:
    assert "feature-words-unread" not in codes(parse(f"{HEAD}{words}\n"))


@pytest.mark.parametrize(
    "words",
    [
        "Delete legend, Foul, adjacent",
        'Delete legend "Foul" near',
        "Delete legend, Works in progress",
    ],
)
def test_a_legend_near_nothing_has_no_place(words: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{words}\n")
    assert usable_of(bulletin) == [("insert", "wreck")]
    assert errors(bulletin) == {"item-without-position"}


@pytest.mark.parametrize("where", ["in the NE corner", "below the title", "below title"])
def test_a_legend_on_the_sheet_needs_no_position(where: str) -> None:
    assert usable_of(parse(f"{HEAD}Delete legend, Foul, {where}\n")) == [("delete", "legend")]


@pytest.mark.parametrize("below", ["Wk", "Rk", "Obstn Rep", "Pipeline"])
def test_words_below_a_bare_legend_may_be_wordings(below: str) -> None:
    bulletin = parse(f"{HEAD}Delete legend, Foul  {P}\n               {below}  {Q}\n")
    assert usable_of(bulletin) == [("delete", "legend")]
    assert "feature-kinds-several" in errors(bulletin)


@pytest.mark.parametrize(
    "words",
    [
        f"Delete legend, Foul  {P}\n               wreck  {Q}",
        f'Delete legend "Foul"  {P}\n               Wk  {Q}',
        f"Delete legend, Foul  {P}\nDelete Wk  {Q}",
    ],
)
def test_a_thing_below_a_legend_is_read(words: str) -> None:
    bulletin = parse(f"{HEAD}{words}\n")
    assert usable_of(bulletin) == [("delete", "legend"), ("delete", "wreck")]


@pytest.mark.parametrize("doubt", ["approx", "approximate", "doubtful"])
def test_a_doubt_alone_in_brackets_is_told(doubt: str) -> None:
    assert any(
        f"`{doubt}`" in one for one in words_unread(parse(f"{HEAD}Insert wreck ({doubt}) {P}\n"))
    )


@pytest.mark.parametrize("doubt", ["(PA)", "(position approximate)", "approx"])
def test_a_doubt_that_says_what_it_is_of_is_read(doubt: str) -> None:
    assert words_unread(parse(f"{HEAD}Insert wreck {doubt} {P}\n")) == []
