"""Heads of notices with a number and no year, and charts at the foot of each notice."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.references import read_number
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import P, Q, codes, errors, usable_of

FRONT = "SEIRAN BUREAU   Year 2026   Weekly No. 34   (21 August 2026)\n\n"
FIRST = f"  Add    Wreck    {P}\n  Charts   1086 [498/26]\n"
SECOND = f"  Delete Rock     {Q}\n  Charts   1090 [499/26]\n"


def _told(bulletin: Bulletin) -> list[tuple[str | None, str | None, list[str]]]:
    return [
        (notice.id, chart.chart, [a.verb for a in chart.actions if a.usable])
        for notice in bulletin.notices
        for chart in notice.charts
    ]


HEADS = (
    "No. #   TAVRENNE ISLANDS, NE PART -- MORIN BAY -- Buoys", "No. # TAVRENNE ISLANDS - Buoys",
    "No #. TAVRENNE ISLANDS - Buoys", "No. #: Tavrenne Islands - Buoys", "No. # - MORIN BAY",
    "No. #\nTAVRENNE ISLANDS - Morin Bay", "No. #   Tavrenne Islands, Morin Bay",
    "No. # Tavrenne Islands, Morin Bay", "No. #   Wrecks", "NO. #   MORIN BAY", "Nr #   MORIN BAY",
    "N° #   MORIN BAY", "No. #   LIGHT BUOYS - MORIN BAY",
)  # fmt: skip


@pytest.mark.parametrize("between", ["\n", "", f"\n{'-' * 40}\n"], ids=["blank", "none", "rule"])
@pytest.mark.parametrize("head", HEADS)
def test_number_without_year_opens_a_notice(head: str, between: str) -> None:
    first, second = head.replace("#", "511"), head.replace("#", "512")
    bulletin = parse(f"{FRONT}{first}\n{FIRST}{between}{second}\n{SECOND}")
    assert _told(bulletin) == [("511/26", "1086", ["insert"]), ("512/26", "1090", ["delete"])]
    assert not errors(bulletin)
    told = [one.code for one in bulletin.findings if one.code == "notice-year-not-written"]
    assert len(told) == 2


def test_mark_behind_the_number() -> None:
    text = f"{FRONT}No. 512 (T)   MORIN BAY -- Boring work\n  Charts   1090\n"
    (notice,) = parse(text).notices
    assert (notice.id, notice.status) == ("512(T)/26", "temporary")


@pytest.mark.parametrize(
    "body",
    [
        f"\nNo. 1   QUILL BASIN - Buoys\nInsert wreck {P}\n",
        f"Insert\n\nNo. 2   Port hand buoy\n   {P}\n\nNo. 4   Port hand buoy\n   {Q}\n",
        f"Insert wreck {P}\n\nNo. 40 Squadron - firing practice takes place.\n",
        f"Insert wreck {P}\n\nNo. 4 Buoy - Quill Sound\n",
    ],
)
def test_other_numbers_open_none(body: str) -> None:
    bulletin = parse(f"41/26 Quill Sound\nChart 802 [30/26]\n{body}")
    assert [notice.id for notice in bulletin.notices] == ["41/26"]


def test_edition_is_no_notice() -> None:
    front = "No. 34   WEEKLY NOTICES - 21 AUGUST 2026\n\n"
    bulletin = parse(f"{front}41/26 Quill Sound\nChart 802 [30/26]\nInsert wreck {P}\n")
    assert [notice.id for notice in bulletin.notices] == ["41/26"]


@pytest.mark.parametrize("head", ["{}   MORIN BAY -- Buoys", "({}) MORIN BAY", "§ {} Morin Bay"])
def test_heads_that_are_not_seen_hold_all_back(head: str) -> None:
    """Every item would go on the chart of the notice before."""
    text = f"{FRONT}{head.format(511)}\n{FIRST}\n{head.format(512)}\n{SECOND}"
    bulletin = parse(text)
    seen = [notice.id for notice in bulletin.notices] == ["511/26", "512/26"]
    assert seen or (usable_of(bulletin) == [] and "chart-above-or-below" in errors(bulletin))


def test_items_above_and_below_a_chart_are_held_back() -> None:
    items = f"Insert wreck {P}\nChart 802 [5/26] WGS84\nDelete rock {Q}\n"
    assert usable_of(parse(f"506/26 Quill Sound.\n{items}")) == []
    assert usable_of(parse(items)) == [("insert", "wreck"), ("delete", "rock")]


@pytest.mark.parametrize(
    ("charts", "wanted"),
    [
        ("Charts        W1086 [498/26] -- W1090 (INT 9533) [505/26]", ["W1086", "W1090"]),
        ("Charts: S1086 [498/26], W1090 [505/26],\n   E22 [3/26]", ["S1086", "W1090", "E22"]),
        ("Charts S1001 and W1090", ["S1001", "W1090"]),
        ("Chart N1001B [487/26]", ["N1001B"]),
    ],
)
def test_charts_with_the_letter_of_a_quarter(charts: str, wanted: list[str]) -> None:
    (notice,) = parse(f"511/26 Morin Bay\n{charts}\nInsert wreck {P}\n").notices
    assert [chart.chart for chart in notice.charts] == wanted
    assert all(len(chart.actions) == 1 for chart in notice.charts)


def test_coordinates_behind_a_chart_stay_coordinates() -> None:
    text = "511/26 Morin Bay\nChart 802 [12/26]  Insert wreck S4613 W12346\n"
    (action,) = parse(text).notices[0].charts[0].actions
    assert action.geometry.positions[0].iso6709 == "-4613-12346/"


def test_notice_of_this_year() -> None:
    text = f"{FRONT}No. 514   MORIN BAY -- Buoys\n{FIRST}"
    text += "  Remark   Notice No. 402 (T) of this year is hereby cancelled.\n"
    (ref,) = parse(text).notices[0].cancels
    assert (ref.number, ref.year, ref.status) == (402, 2026, "temporary")
    assert read_number("402 of last year", 2026).year == 2025  # type: ignore[union-attr]
    assert read_number("402 of this year", None) is None


KINDS = [
    ("Change  East cardinal buoy into east cardinal light buoy, Q(3) 10s", "replace"),
    ("Change  Light buoy, special, Fl Y 4s, into\n        west cardinal light buoy", "replace"),
    ("Alter  spar buoy to light buoy Fl.R.4s", "replace"),
    ("Change  wreck into dangerous wreck", "replace"),
    ("Amend  wreck to dangerous wreck", "replace"),
    ("AMEND  WRECK TO DANGEROUS WRECK", "replace"),
    ("Amend  the obstruction to read wreck, PA", "replace"),
    ("Change  light into Fl(3) 10s", "amend"),
    ("Change  light buoy, Q.R, into Q.G", "amend"),
    ("Amend  light buoy, Q.R, to read Q.G", "amend"),
    # Something of a thing, or its name, is no other thing.
    ("Amend  name of rock to Wreck Point", "amend"),
    ("Amend  depth over wreck to depth 5m", "amend"),
    ("Amend  light buoy, Fl.G.3s, to Fl.G.5s", "amend"),
    ("Change  depth 5.2 m into 4.8 m", "amend"),
]


@pytest.mark.parametrize(("item", "verb"), KINDS)
def test_one_thing_becomes_another(item: str, verb: str) -> None:
    bulletin = parse(f"511/26 Morin Bay\nChart 802 [12/26] depths in metres\n{item}   {P}\n")
    (action,) = bulletin.notices[0].charts[0].actions
    assert (action.verb, action.usable) == (verb, True)
    assert not codes(bulletin) - {"light-quick-period"}


def test_the_chart_may_stand_behind_the_heading() -> None:
    head = "No. 311  Brask Island, north side - Chart 805 (last correction 302/26)"
    bulletin = parse(f"NOTICES TO MARINERS OF THE YEAR 2026\n\n{head}\n\nInsert wreck {P}\n")
    assert [(one.id, one.charts[0].chart) for one in bulletin.notices] == [("311/26", "805")]


def test_a_head_right_above_its_chart_needs_no_blank_line() -> None:
    text = (
        f"{FRONT}No. 511  OSSEL BANK\nChart 45 [498/26]\nInsert wreck {P}\n"
        f"No. 512  FELL (T) (cancels 500/26)\nChart 47 [499/26]\nInsert pile {Q}\n"
    )
    first, second = parse(text).notices
    assert (first.id, [one.chart for one in first.charts]) == ("511/26", ["45"])
    assert [one.chart for one in second.charts] == ["47"]
    assert (second.number, [one.number for one in second.cancels]) == (512, [500])


@pytest.mark.parametrize("mark", ["*", "* ", "*  "])
def test_a_star_may_stand_before_the_number(mark: str) -> None:
    text = (
        f"{FRONT}{mark}No. 511  OSSEL BANK\nChart 45 [498/26]\nInsert wreck {P}\n\n"
        f"No. 512  FELL\nChart 47 [499/26]\nInsert pile {Q}\n"
    )
    first, second = parse(text).notices
    assert (first.id, first.heading, first.original_information) == ("511/26", "OSSEL BANK", True)
    assert (second.id, second.original_information) == ("512/26", False)
