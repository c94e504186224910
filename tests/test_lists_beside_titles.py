"""Lists of an edition whose first entry stands on the line of their title."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import P, codes, told

EDITION = "TAVRENNE CHART DEPOT   Week 37/26\n\n"
NOTICE = (
    "\n455(T)/26 Quill Sound.\nChart 802 [3/26] WGS84\n"
    f"Insert wreck {P}\nNotice 402(T)/26 is cancelled.\n"
)


def lists(bulletin: Bulletin) -> list[tuple[str, list[tuple[str | None, list[int]]]]]:
    return [
        (one.kind, [(entry.chart, [n.number for n in entry.notices]) for entry in one.entries])
        for one in bulletin.lists
    ]


def test_charts_and_notices_behind_the_title() -> None:
    text = (
        "In force:    Chart 801   380(T)/26\n             Chart 802   380(T)/26, 455(T)/26\n"
        "Cancelled:   402(T)/26\n"
    )
    bulletin = parse(EDITION + text + NOTICE)
    assert lists(bulletin) == [
        ("in_force", [("801", [380]), ("802", [380, 455])]),
        ("cancelled", [(None, [402])]),
    ]
    assert codes(bulletin) == set()


@pytest.mark.parametrize(
    ("title", "kind"),
    [
        ("Still in force:", "in_force"),
        ("In force (T) and (P):", "in_force"),
        ("Notices in force:", "in_force"),
        ("Notices cancelled:", "cancelled"),
        ("No longer in force:", "cancelled"),
    ],
)
def test_titles_of_such_lists(title: str, kind: str) -> None:
    bulletin = parse(f"{EDITION}{title} 380(T)/26, 402(T)/26\n{NOTICE}")
    assert lists(bulletin) == [(kind, [(None, [380, 402])])]


def test_a_list_is_held_against_the_notices() -> None:
    bulletin = parse(f"{EDITION}In force:    380(T)/26\n{NOTICE}")
    assert "in-force-missing" in codes(bulletin)


def test_within_a_notice_the_words_are_its_own() -> None:
    notice = NOTICE.replace("Notice 402(T)/26 is cancelled.", "Cancelled: 402(T)/26")
    bulletin = parse(EDITION + notice)
    assert bulletin.lists == []
    assert [ref.number for ref in bulletin.notices[0].cancels] == [402]


@pytest.mark.parametrize("line", ["In force: a wreck", "Cancelled: the wreck of 402(T)/26"])
def test_other_words_behind_are_no_entries(line: str) -> None:
    bulletin = parse(f"{EDITION}{line}\n{NOTICE}")
    assert bulletin.lists == []
    assert [verb for verb, _, _ in told(bulletin)] == ["insert"]
