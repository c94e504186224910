"""What stands around items: notices for no chart, signatures, signs explained above."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, HEAD, P, actions_of, codes, errors, told


def _named(number: str) -> str:
    return number if number.startswith("N.T.M.") else f"Notice {number}"


NEWS = f"The port signal station, {P}, keeps watch on channel 14 in place of channel 12.\n"


@pytest.mark.parametrize(
    "line",
    [
        "Charts: none",
        "Charts affected: none.",
        "Charts concerned: nil",
        "Chart: -",
        "No charts are affected.",
    ],
)
@pytest.mark.parametrize("is_above", [True, False])
def test_a_notice_for_no_chart_tells_news(line: str, *, is_above: bool) -> None:
    body = f"{line}\n{NEWS}" if is_above else f"{NEWS}{line}\n"
    bulletin = parse(f"NM 115/2026\nQUILL SOUND - Signal station\n{body}")
    (notice,) = bulletin.notices
    assert (notice.charts, errors(bulletin)) == ([], set())
    assert [[p.iso6709 for p in one.positions] for one in notice.remarks] == [[AT_P]]


def test_a_command_is_no_news() -> None:
    bulletin = parse(f"NM 115/2026\nQUILL SOUND\nCharts: none\nInsert wreck {P}\n")
    assert [one.verb for one in actions_of(bulletin)] == ["insert"]
    assert "chart-not-named" in {one.code for one in bulletin.findings}


@pytest.mark.parametrize(
    "day",
    ["29 May 2026", "29 December 2026", "1 Sept. 2026", "29/05/2026", "MAY 2026"],
)
@pytest.mark.parametrize("name", ["E. VARROW", "S. Varrow", "N VARROW", "W. Varrow"])
def test_a_year_above_the_letter_of_a_name_is_no_position(day: str, name: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n\nPort Ormley, {day}\n{name}\nHarbour Master\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert len(actions_of(bulletin)) == 1
    assert not codes(bulletin)


def test_figures_like_a_year_are_a_position_behind_its_word() -> None:
    bulletin = parse(f"{HEAD}Insert wreck in position 2026 S 12200 W\n")
    assert told(bulletin) == [("insert", "wreck", ["-2026-12200/"])]


def test_letters_of_a_list_are_explained_above_all_notices() -> None:
    signs = (
        "Signs used in this list\n  (1)   number of a corner; the degrees are written at (1)\n\n"
    )
    bulletin = parse(f"{signs}{HEAD}Insert wreck {P}\n")
    assert "text-action-lost" not in errors(bulletin)


@pytest.mark.parametrize("number", ["19(T)/26", "OH 19(T)/26", "N.T.M. 19(T)-26"])
def test_a_cancelled_notice_may_bear_the_letters_of_its_office(number: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{_named(number)} is cancelled.\n")
    (notice,) = bulletin.notices
    assert [(one.number, one.status) for one in notice.cancels] == [(19, "temporary")]
    assert not codes(bulletin)


@pytest.mark.parametrize("heading", ["QUILL SOUND: pilots - no charts", "QUILL SOUND - No chart"])
def test_a_heading_may_say_that_no_chart_is_meant(heading: str) -> None:
    bulletin = parse(f"NM 115/2026. {heading}\n{NEWS}\n{HEAD}Insert wreck {P}\n")
    first, second = bulletin.notices
    assert (first.id, first.charts, len(first.remarks)) == ("115/26", [], 1)
    assert (second.id, len(second.charts)) == ("12/26", 1)
    assert not errors(bulletin)


@pytest.mark.parametrize("title", ["Rules of signs", "Signs used in this list", "ABBREVIATIONS:"])
def test_signs_explained_below_the_notices_are_no_items(title: str) -> None:
    signs = (
        f"\n{title}\n (T) and (P) behind a number mark temporary and preliminary notices; these\n"
        " are pencilled in. A legend is written as it stands.\n"
    )
    bulletin = parse(f"{HEAD}Delete:\n Wreck {P}\n{signs}\n13/26 Quill Sound\n{HEAD[19:]}")
    assert told(bulletin) == [("delete", "wreck", [AT_P])]
    assert [one.id for one in bulletin.notices] == ["12/26", "13/26"]
    assert not errors(bulletin)


def test_a_vertical_clearance_is_no_command() -> None:
    bulletin = parse(f"{HEAD}Change: vertical clearance of bridge to 16.5 m - {P}\n")
    assert told(bulletin) == [("amend", "bridge", [AT_P])]
    assert not codes(bulletin)


@pytest.mark.parametrize("signs", [",", ",,, ,", " ;", "& ,"])
def test_a_line_of_signs_alone_below_a_place_says_nothing(signs: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{signs}\n")
    assert told(bulletin)[:1] == [("insert", "wreck", [AT_P])]


def test_keys_without_a_chart_have_no_head_to_go_on_with() -> None:
    text = (
        "12/26 Done:            Shifted\nTo:              47°42'.033 S, 125°21'.377 W\n\nItem 4\n"
        "Mark:            Wreck, least depth 5.2 m\n\nIssued:          5 August 2026"
    )
    assert parse(text).notices[0].id == "12/26"


def test_title_above_all_notices_is_no_command() -> None:
    title = "Chart Depot - change records\nBatch: 2026-17\n\n"
    bulletin = parse(f"{title}12/26 Quill\nChart 904\nInsert wreck {P}\n")
    assert [one.id for one in bulletin.notices] == ["12/26"]
    assert not [one for one in bulletin.findings if one.severity != "info"]


def test_command_for_a_thing_above_all_notices_is_kept() -> None:
    bulletin = parse(f"Insert wreck\n\n12/26 Quill\nChart 904\nInsert wreck {P}\n")
    assert "item-without-position" in {one.code for one in bulletin.findings}


def test_names_of_parts_of_the_sheet_between_marks() -> None:
    body = (
        f"** Western approach **\n   1) wreck, {P} [add]\n\n"
        f"** Tarn Channel **\n   2) rock, {P} [take out]\n"
    )
    bulletin = parse(f"{HEAD}\n{body}")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_P])]
    assert errors(bulletin) == set()


@pytest.mark.parametrize(
    ("title", "code"),
    [
        ("** Chart 904 only **", "item-of-one-chart"),
        ("** Not for chart 5 **", "item-without-verb"),
    ],
)
def test_what_limits_between_marks_is_no_name(title: str, code: str) -> None:
    bulletin = parse(f"{HEAD}\nInsert\n{title}\n   wreck {P}\n")
    assert told(bulletin) == []
    assert code in errors(bulletin)


def test_subject_of_a_letter_names_the_notice_that_it_holds() -> None:
    text = f"Subject: Notice 17/26 for chart 5\n\nNOTICE 17/26\nChart 5\nInsert wreck {P}\n"
    assert [one.id for one in parse(text).notices] == ["17/26"]


def test_named_places_above_commands_without_one() -> None:
    body = (
        f"1. Head of the west pier, {P}\n      - delete light, F.G\n      - insert wreck\n"
        f"2. The Cat, a shoal, {P}\n      - insert depth 3.5 m\n"
    )
    bulletin = parse(f"{HEAD}\n{body}")
    assert [one[:2] for one in told(bulletin)] == [
        ("delete", "light"),
        ("insert", "wreck"),
        ("insert", "sounding"),
    ]
    assert errors(bulletin) == set()
