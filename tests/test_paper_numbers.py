"""Papers that have a number of their own, with another word than the notices in them."""

from __future__ import annotations

from itertools import islice

import pytest

from noticeparse import iter_notices, parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import P, Q, R, codes

TITLES = [
    "Circular No. 5 of 2026",
    "Circular No. 5 of 2026 on alterations to lights and marks",
    "Circular 5/2026 - alterations",
    "Gazette No. 5 of 2026: corrections to charts",
    "Memorandum 5/2026",
    "Order No. 5 of 2026",
    "Lights Circular No. 5 of 2026",
]
FEET = ["{number}, sheet 1", "{number}", "{number} - page 2", "{number} (continued)"]


def paper(title: str, foot: str) -> str:
    number = title.partition(" on ")[0].partition(" - ")[0].partition(":")[0]
    foot = "                    " + foot.format(number=number)
    return (
        f"BOARD OF LIGHTS\n{title}\nIssued 22 May 2026\n\n"
        f"NOTICE 61/2026 - QUILL SOUND - WRECK\nChart 802 [44/2026]\nInsert wreck {P}\n\n"
        f"{foot}\n\nDelete rock {Q}\n\n"
        f"NOTICE 62/2026 - QUILL SOUND - PILE\nChart 802 [61/2026]\nInsert pile {R}\n\n{foot}\n"
    )


def found(bulletin: Bulletin) -> list[tuple[str | None, list[str]]]:
    return [
        (notice.id, [action.feature.kind for chart in notice.charts for action in chart.actions])
        for notice in bulletin.notices
    ]


@pytest.mark.parametrize("foot", FEET)
@pytest.mark.parametrize("title", TITLES)
def test_the_number_of_a_paper_opens_no_notice(title: str, foot: str) -> None:
    bulletin = parse(paper(title, foot))
    assert found(bulletin) == [("61/26", ["wreck", "rock"]), ("62/26", ["pile"])]
    assert not codes(bulletin)
    assert bulletin.edition is not None
    assert bulletin.edition.issued == "2026-05-22"


def test_a_foot_far_behind_is_known_too() -> None:
    notices = "".join(
        f"NOTICE {number}/2026 - QUILL SOUND - WRECK\nChart 802 [{number - 1}/2026]\n"
        f"Insert wreck {P}\n\n        Circular No. 5 of 2026, next sheet\n\nDelete rock {Q}\n\n"
        for number in range(61, 400)
    )
    text = f"BOARD OF LIGHTS\nCircular No. 5 of 2026\n\n{notices}"
    read = [
        (one.number, sum(len(chart.actions) for chart in one.charts))
        for one in islice(iter_notices(text.splitlines(keepends=True)), 400)
    ]
    assert read == [(number, 2) for number in range(61, 400)]


@pytest.mark.parametrize(
    "first",
    [
        f"Chart 803 [3/2026]\nInsert wreck {P}\n",
        "Pilots are informed that the office is closed.\n",
    ],
)
def test_a_circular_that_says_something_is_a_notice(first: str) -> None:
    bulletin = parse(
        f"Circular No. 5 of 2026\n{first}\nNOTICE 61/2026\nChart 802 [44/2026]\nInsert wreck {P}\n"
    )
    assert [notice.id for notice in bulletin.notices] == ["5/26", "61/26"]


def test_another_circular_in_the_paper_is_a_notice() -> None:
    bulletin = parse(
        f"Circular No. 5 of 2026 on lights\n\nNOTICE 61/2026\nChart 802 [44/2026]\n"
        f"Insert wreck {P}\n\nCircular No. 6 of 2026\nChart 802 [61/2026]\nInsert pile {R}\n"
    )
    assert found(bulletin)[-2:] == [("61/26", ["wreck"]), ("6/26", ["pile"])]


def test_a_paper_of_circulars_alone_is_one_of_notices() -> None:
    text = "".join(
        f"Circular No. {number} of 2026\nChart 802 [{number - 1}/2026]\nInsert wreck {P}\n\n"
        for number in (5, 6)
    )
    assert found(parse(text)) == [("5/26", ["wreck"]), ("6/26", ["wreck"])]
