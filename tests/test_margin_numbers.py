"""Notices that are counted in the margin, without a word for a notice and without a year."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, actions_of
from tests.stream_parts import in_parts, same

TITLE = "Quill Sound Conservancy. Corrections to charts, list 11 of 2026\n\n"
FIRST = f"Chart 21, Prev. 126/26.\nInsert a wreck in {P}.\n"
SECOND = f"Chart 22, Prev. 90/26.\nDelete the rock in {Q}.\n"


def ids(text: str) -> list[str | None]:
    return [notice.id for notice in parse(text).notices]


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("131. OSSEL BANK. Wreck.", "132. CASK COVE. Rock."),
        ("131.  Ossel Bank, inner part.", "132.  Cask Cove."),
        ("131. LAMB ROCKS. Block.", "133. WRECK BAY."),
    ],
)
def test_numbers_that_go_up_open_notices(first: str, second: str) -> None:
    text = f"{TITLE}{first}\n{FIRST}\n{second}\n{SECOND}"
    bulletin = parse(text)
    assert [one.number for one in bulletin.notices] == [int(first[:3]), int(second[:3])]
    assert {one.year for one in bulletin.notices} == {2026}
    assert [len(one.charts[0].actions) for one in bulletin.notices] == [1, 1]
    told = [one for one in bulletin.findings if one.code == "notice-year-not-written"]
    assert len(told) == 2


def test_the_chart_may_stand_in_the_heading() -> None:
    heads = ("131. OSSEL BANK. Source: pilots. Chart 21.", "132. CASK COVE. Chart 22.")
    bulletin = parse(
        f"{TITLE}{heads[0]}\n  Insert a wreck in {P}.\n\n{heads[1]}\n  Delete rock {Q}\n"
    )
    assert [one.charts[0].chart for one in bulletin.notices] == ["21", "22"]
    assert [len(one.charts[0].actions) for one in bulletin.notices] == [1, 1]


def test_marks_stand_before_or_behind_the_stop() -> None:
    text = f"{TITLE}131(T). OSSEL BANK\n{FIRST}\n132. (P) CASK COVE\n{SECOND}"
    assert ids(text) == ["131(T)/26", "132(P)/26"]


def test_the_year_is_the_only_one_named_above() -> None:
    text = f"Corrections to charts, May 2026\n\n71. OSSEL BANK\n{FIRST}\n72. CASK COVE\n{SECOND}"
    assert ids(text) == ["71/26", "72/26"]


def test_of_two_years_none_is_taken() -> None:
    title = "Corrections to charts of 2025 and 2026\n\n"
    assert ids(f"{title}71. OSSEL BANK\n{FIRST}\n72. CASK COVE\n{SECOND}") == ["71", "72"]


@pytest.mark.parametrize(
    "body",
    [
        f"11. Insert a wreck in {P}.\n\n12. Delete the rock in {Q}.\n",
        f"11. Port-hand buoy\n{P}\n\n12. Rock\n{Q}\n",
        f"20. OSSEL BANK\nInsert a wreck in {P}.\n\n11. CASK COVE\nDelete the rock in {Q}.\n",
        f"1. OSSEL BANK\nInsert a wreck in {P}.\n\n2. CASK COVE\nDelete the rock in {Q}.\n",
        f"802  OSSEL BANK\nInsert a wreck in {P}.\n\n803  CASK COVE\nDelete the rock in {Q}.\n",
    ],
    ids=["commands", "features", "down again", "paragraphs", "charts"],
)
def test_other_counts_open_none(body: str) -> None:
    assert ids(f"12/26 Quill Sound\nChart 802 [3/26]\n\n{body}") == ["12/26"]


def test_a_count_among_notices_with_years_opens_none() -> None:
    text = f"12/26 Quill Sound\n{FIRST}\n41. OSSEL BANK\n\n42. CASK COVE\n{SECOND}"
    assert ids(text) == ["12/26"]


def test_they_go_on_over_the_parts_of_a_text() -> None:
    text = TITLE + "".join(
        f"{number}. OSSEL BANK\nChart 21, Prev. {number - 1}/26.\nInsert a wreck in {P}.\n\n"
        for number in range(131, 171)
    )
    parts = in_parts(text, 400)
    assert len(parts) > 3
    same(text, parts)
    assert len(actions_of(parse(text))) == 40


@pytest.mark.parametrize(
    ("heads", "numbers"),
    [
        (("88     KELM ROADS, wreck", "89(P)  Vidmar Bight, rock"), ["88/26", "89(P)/26"]),
        ((" 88   Kelm Roads - Wreck", " 89   VIDMAR BIGHT"), ["88/26", "89/26"]),
        (("88 - KELM ROADS", "89 - VIDMAR BIGHT"), ["88/26", "89/26"]),
        (("88: Kelm Roads", "90: Vidmar Bight"), ["88/26", "90/26"]),
        (("88     Kelm Roads", "89(T) Vidmar Bight"), ["88/26", "89(T)/26"]),
    ],
)
def test_numbers_without_a_stop_open_notices_with_their_charts(
    heads: tuple[str, str], numbers: list[str]
) -> None:
    rule = "-" * 60
    for between in ("", rule):
        text = f"{TITLE}{between}\n{heads[0]}\n{FIRST}{between}\n{heads[1]}\n{SECOND}"
        assert ids(text) == numbers
        charts = [one.chart for notice in parse(text).notices for one in notice.charts]
        assert charts == ["21", "22"]


def test_the_chart_may_stand_behind_a_heading_without_a_stop() -> None:
    heads = ("141    Ossel Bank, ferry - Chart 21 (Prev. 126)", "142    Cask Cove - Chart 22")
    bulletin = parse(f"{TITLE}{heads[0]}\nINSERT\nwreck {P}\n\n{heads[1]}\nDELETE\nrock {Q}\n")
    assert [one.id for one in bulletin.notices] == ["141/26", "142/26"]
    assert [one.heading for one in bulletin.notices] == ["Ossel Bank, ferry", "Cask Cove"]
    assert [one.charts[0].chart for one in bulletin.notices] == ["21", "22"]


def test_a_table_of_contents_counts_no_notices() -> None:
    contents = "In this list\n\n131   Ossel Bank\n132   Cask Cove\n\n"
    text = f"{TITLE}{contents}131   OSSEL BANK\n{FIRST}\n132   CASK COVE\n{SECOND}"
    assert ids(text) == ["131/26", "132/26"]


@pytest.mark.parametrize(
    "body",
    [
        f"802   OSSEL BANK\nInsert a wreck in {P}.\n\n803   CASK COVE\nDelete the rock in {Q}.\n",
        f"11   Port-hand buoy\n{P}\n\n12   Rock\n{Q}\n",
        f"11   OSSEL BANK\n{FIRST}\n19   CASK COVE\n{SECOND}",
        "12   June 2026\nfrom the office\n\n13   June 2026\n",
    ],
    ids=["charts", "features", "far apart", "days"],
)
def test_numbers_without_a_stop_that_open_none(body: str) -> None:
    assert {one for one in ids(f"{TITLE}{body}") if one} == set()


BODY = f"Chart 21 [126/26] WGS84\nInsert wreck {P}\n"
SINGLE = {
    "2417   TAVRENNE ISLANDS - Ossel Bank - Wreck.": "2417/26",
    "2417. OSSEL BANK - Wreck.": "2417/26",
    "2417 - OSSEL BANK": "2417/26",
    "2417 OSSEL BANK - Wreck.": "2417/26",
    "2417(T)  OSSEL BANK - Wreck.": "2417(T)/26",
    "2417(P) OSSEL BANK - Wreck.": "2417(P)/26",
    "2417 (2026)  OSSEL BANK - Wreck.": "2417/26",
    "2417-26  OSSEL BANK - Wreck.": "2417/26",
    "2417  OSSEL BANK - Wreck.\nSource: Quill Sound Conservancy": "2417/26",
}


@pytest.mark.parametrize(("head", "number"), SINGLE.items())
def test_chart_right_below_tells_a_single_one(head: str, number: str) -> None:
    (notice,) = parse(f"{TITLE}{head}\n{BODY}").notices
    assert (notice.id, notice.original_information) == (number, False)
    assert [one.usable for one in notice.charts[0].actions] == [True]


@pytest.mark.parametrize(
    "head", ["2417*  OSSEL BANK", "*2417  OSSEL BANK", "2417* OSSEL BANK - W"]
)
def test_star_may_stand_on_either_side_of_it(head: str) -> None:
    (notice,) = parse(f"{TITLE}{head}\n{BODY}").notices
    assert (notice.id, notice.original_information) == ("2417/26", True)


@pytest.mark.parametrize("joint", ["", "\n"])
def test_numbers_above_charts_may_be_far_apart(joint: str) -> None:
    text = f"{TITLE}2417  OSSEL BANK - Wreck.\n{BODY}{joint}2480(T)  CASK COVE - Light.\n{BODY}"
    assert ids(text) == ["2417/26", "2480(T)/26"]


@pytest.mark.parametrize(
    "head",
    [
        "21   OSSEL BANK",
        "802   OSSEL BANK\nChart 802 [9/26]",
        "2417   Wreck",
        "2417  OSSEL BANK\n",
    ],
)
def test_other_figures_in_front_of_words_open_none(head: str) -> None:
    text = f"{TITLE}{head}\n{BODY}".replace("]\nChart 21 [126/26] WGS84", "]")
    assert not {"21/26", "802/26", "2417/26", "2418/26"} & set(ids(text))


def test_head_with_two_numbers_is_told_as_lost() -> None:
    for head in ("2417/26 replaces 2317/26", "2417/26 and 2418/26 Wreck"):
        bulletin = parse(f"{TITLE}{head}\n{BODY}")
        assert "text-action-lost" in {one.code for one in bulletin.findings}
