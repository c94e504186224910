"""Lines below the head of a notice that only point to another one: `Ref: NM 12/26`."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, codes

HEAD = "17/26  TAVRENNE ISLANDS - Quill Sound - Works.\n"
REST = f"Chart 802 [9/26] WGS84\nInsert wreck {P}\n"

POINTERS = [
    "Ref: NM 12/26",
    "Reference NM 12/26",
    "Reference: NM 12(T)/26",
    "REF: NOTICE 12 OF 2026",
    "Our ref: NM 12/26",
    "Re NM 12/26",
    "Related Notice 12/26",
    "Original Notice 12/26",
    "Vide NM 12/26",
    "Also NM 12/26",
    "Our Ref. 12/26 dated 3 March 2026",
    "Updates NM 12/26",
    "Modifies Notice 12/26.",
    "Confirms NM 12/26",
    "Remarks: NM 12/26",
    "Apply NM 12/26 first.",
    "Source NM 12/26",
]
UNKNOWN = ["Local NM 12/26", "Foreign NM 12/26", "Tidied NM 12/26", "Adjoining Notice 12/26"]


@pytest.mark.parametrize("pointer", POINTERS)
@pytest.mark.parametrize("joint", ["\n", "\n\n"])
def test_opens_no_notice(pointer: str, joint: str) -> None:
    (notice,) = parse(f"{HEAD.rstrip()}{joint}{pointer}{joint}{REST}").notices
    assert notice.id == "17/26"
    (chart,) = notice.charts
    assert (chart.chart, len(chart.actions)) == ("802", 1)
    assert any("12" in one.text for one in notice.remarks)


@pytest.mark.parametrize("pointer", ["Ref: NM 12/26", "Related Notice 12/26"])
def test_opens_none_below_the_commands(pointer: str) -> None:
    (notice,) = parse(f"{HEAD}{REST}{pointer}\n").notices
    assert (notice.id, notice.charts[0].chart) == ("17/26", "802")


@pytest.mark.parametrize("pointer", UNKNOWN)
@pytest.mark.parametrize(
    "text",
    [
        f"{HEAD}@\n{REST}",
        f"17/26\nQuill Sound - Works.\n@\n{REST}",
        f"{HEAD}Chart 802 [9/26] WGS84\n@\nInsert wreck {P}\n",
        f"{HEAD}{REST}@\nDelete rock {P}\n",
        f"NM 17/26 Quill Sound\n@\n{REST}",
    ],
)
def test_word_that_is_not_known_opens_none_below_a_head(pointer: str, text: str) -> None:
    (notice,) = parse(text.replace("@", pointer)).notices
    assert (notice.id, notice.charts[0].chart) == ("17/26", "802")
    assert notice.charts[0].actions[0].usable


@pytest.mark.parametrize(
    "text",
    [
        f"Local NM 12/26\n{REST}Local NM 13/26\n{REST}",
        f"12/26  Quill Sound - Works.\n{REST}Local NM 13/26\n{REST}",
        f"12/26  Quill Sound - Works.\n{REST}\nLocal NM 13/26\nPORT ELLORY\n{REST}",
    ],
)
def test_series_may_open_one_all_the_same(text: str) -> None:
    assert [one.id for one in parse(text).notices] == ["12/26", "13/26"]


def test_points_from_a_notice_without_a_year() -> None:
    second = "18.  Port Ellory - Wreck.\nReference: NM 13/26\nChart 803\nDelete wreck"
    text = f"17.  Quill Sound - Works.\nReference: NM 12/26\n{REST}\n{second} {P}\n"
    assert [one.number for one in parse(text).notices] == [17, 18]


def test_an_office_may_number_its_own_so() -> None:
    text = (
        f"Ref: NM 12/26\nQUILL SOUND - Works.\n{REST}\nRef: NM 13/26\nPORT ELLORY - Works.\n{REST}"
    )
    assert [one.id for one in parse(text).notices] == ["12/26", "13/26"]


def test_series_of_a_place_opens_one() -> None:
    text = f"{HEAD}{REST}\nPort Notice 12/26\nPORT ELLORY - Works.\n{REST}"
    assert [one.id for one in parse(text).notices] == ["17/26", "12/26"]


@pytest.mark.parametrize(
    "pointer",
    [
        "Reference: NM 12(T)/26 (cancelled by this notice)",
        "Ref. Notice 12(T)/26, which is hereby cancelled",
        "NM 12(T)/26, which is withdrawn",
    ],
)
def test_cancels_what_it_points_to(pointer: str) -> None:
    (notice,) = parse(f"{HEAD}{pointer}\n{REST}").notices
    assert [(one.number, one.status) for one in notice.cancels] == [(12, "temporary")]


@pytest.mark.parametrize(
    "pointer", ["Ref: NM 12(P)/26. Former notice cancelled.", "Ref: NM 12(T)/26 (now cancelled)"]
)
def test_end_that_may_be_that_of_another_is_told(pointer: str) -> None:
    assert "cancellation-unread" in codes(parse(f"{HEAD}{pointer}\n{REST}"))


def test_end_in_the_head_of_a_notice_is_its_own() -> None:
    (notice,) = parse(f"12/26 (withdrawn)\n{REST}").notices
    assert (notice.id, notice.charts[0].actions[0].usable) == ("12/26", False)


def test_condition_cancels_nothing() -> None:
    bulletin = parse(f"{HEAD}Ref: NM 12(T)/26, which is cancelled when the works end.\n{REST}")
    assert bulletin.notices[0].cancels == []
