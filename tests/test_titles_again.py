"""The title of the paper, said again where a page ends."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, P, Q, actions_of, errors, told

TOP = "CORVANE LIGHTS OFFICE               sheet 18 of 2026\n\n"
FIRST_HEAD = "12/26 Quill Sound.\nChart 802 [3/26] WGS84\n"
FIRST = f"12/26 Quill Sound.\nChart 802 [3/26] WGS84\nINSERT   light, Fl.R.2s   {P}\n"
SECOND = f"13/26 Quill Sound.\nChart 802 [12/26] WGS84\nDELETE   wreck   {Q}\n"


@pytest.mark.parametrize("beside", ["18/2026, over", "sheet 18, continued", "2026"])
def test_the_title_below_a_list_is_no_item(beside: str) -> None:
    bulletin = parse(f"{TOP}{FIRST}\nCORVANE LIGHTS OFFICE          {beside}\n\n{SECOND}")
    assert told(bulletin) == [("insert", "light", [AT_P]), ("delete", "wreck", [AT_Q])]
    assert len(actions_of(bulletin)) == 2
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    "line",
    [
        "CORVANE LIGHTS OFFICE          Fl.R.2s",
        "CORVANE LIGHTS          18/2026, over",
    ],
)
def test_other_words_may_be_of_an_item(line: str) -> None:
    bulletin = parse(f"{TOP}{FIRST}\n{line}\n\n{SECOND}")
    assert errors(bulletin) == {"verb-unknown"}


def test_the_head_of_a_notice_is_no_title() -> None:
    heads = [f"QUILL SOUND WATERS     {number}/26\n" for number in (12, 13, 12)]
    chart = "Chart 802 [3/26] WGS84\nInsert wreck " + P
    bulletin = parse("".join(f"{head}{chart}\n\n" for head in heads))
    assert len(bulletin.notices) == 3


def test_the_number_of_a_page_far_from_the_title_of_the_paper() -> None:
    items = f"Insert wreck {P}\n\n{{}}\n\nDelete rock {Q}\n"
    for foot in ("- 3 -" + " " * 40 + "Southern Sector", "Southern Sector" + " " * 40 + "- 3 -"):
        bulletin = parse(f"SOUTHERN SECTOR     BULLETIN 21\n\n{FIRST_HEAD}{items.format(foot)}")
        assert [(a.verb, a.usable) for a in actions_of(bulletin)] == [
            ("insert", True),
            ("delete", True),
        ]
        assert errors(bulletin) == set()


def test_a_thing_far_from_a_number_between_dashes_is_no_foot() -> None:
    bulletin = parse(f"{FIRST_HEAD}Insert wreck {P}\n\n- 3 -{' ' * 40}Beacon\n")
    assert errors(bulletin)


BUREAU = "Survey Bureau, Port Ellory\n\nNOTICES FOR THE WEEK ENDING 12 JUNE 2026\n\n"
PAGE = "\n                    - page 1 -\n"


@pytest.mark.parametrize(
    "again",
    [
        "Survey Bureau, Port Ellory          Week ending 12 June 2026",
        "Notices for the week ending 12 June 2026",
        "SURVEY BUREAU - WEEK ENDING 12 JUNE 2026",
    ],
)
def test_a_page_may_say_again_on_one_line_what_the_title_says_on_several(again: str) -> None:
    area = f"Insert restricted area bounded by\n   {P}\n   {Q}\n   46-00.20S 122-00.30W\n"
    head = "12/26 Quill Sound.\nChart 802 [3/26] WGS84\n"
    for below in (f"\n{SECOND}", "Delete pile 46-00.10S 122-00.20W\n"):
        bulletin = parse(f"{BUREAU}{head}{area}{PAGE}{again}\n{below}")
        first, second = actions_of(bulletin)
        assert (first.feature.name, len(first.geometry.positions)) == (None, 3)
        assert second.usable
        assert errors(bulletin) == set()


@pytest.mark.parametrize("line", ["QUILL SOUND, WEEK 12", "Insert pile 12 June 2026"])
def test_other_words_beside_a_page_mark_are_read(line: str) -> None:
    bulletin = parse(f"{BUREAU}{FIRST}{PAGE}{line}\n\n{SECOND}")
    ignored = bulletin.coverage.ignored
    assert ignored < len("-page1-") + len("".join(line.split()))
