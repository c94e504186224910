"""Notices printed as one paragraph: charts and their heads wherever a line is broken."""

from __future__ import annotations

import textwrap

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, AT_Q, P, Q, errors, told

PARAGRAPH = (
    "CHART CORRECTION NOTICE 12/26 (QUILL SOUND). Chart 802, last correction 3/26: establish "
    f"light-buoy, Fl.R.3s, at {P}; disestablish wreck at {Q}. Chart 803, {{}}: establish "
    f"rock at {P}; shift special buoy from {P} to {Q}."
)
BEFORE = ["last correction 4/26", "earlier notice 4/26", "foregoing notice 4/26", "after 4/26"]


@pytest.mark.parametrize("before", BEFORE)
def test_a_paragraph_reads_the_same_at_every_width(before: str) -> None:
    for width in (500, *range(40, 110, 3)):
        lines = textwrap.wrap(PARAGRAPH.format(before), width, break_on_hyphens=False)
        bulletin = parse("\n".join(lines) + "\n")
        (notice,) = bulletin.notices
        heads = [(one.chart, one.previous and one.previous.number) for one in notice.charts]
        assert heads == [("802", 3), ("803", 4)], width
        assert [(verb, at) for verb, _, at in told(bulletin)] == [
            ("insert", [AT_P]), ("delete", [AT_Q]), ("insert", [AT_P]), ("move", [AT_P]),
        ]  # fmt: skip


@pytest.mark.parametrize(
    "second",
    [
        "Chart 803:\ndelete rock in",
        "On chart 803\ndelete rock in",
        "Chart 803, panel A,\nlast correction 4/26: delete rock in",
        "Chart 803 (INT 1503), last\ncorrection 4/26: delete rock in",
    ],
)
def test_a_chart_behind_a_sentence_has_what_follows(second: str) -> None:
    first = f"12/26 Quill Sound.\nChart 802 [3/26]\nInsert wreck in {P}. "
    charts = parse(f"{first}{second} {Q}.\n").notices[0].charts
    assert [(one.chart, [a.verb for a in one.actions]) for one in charts] == [
        ("802", ["insert"]), ("803", ["delete"]),
    ]  # fmt: skip


def test_notices_before_in_a_list_with_their_charts() -> None:
    foot = "Charts 802 and 803; notices before this 3/26 (802) and 4/26 (803)."
    bulletin = parse(f"NOTICE 12/26: QUILL SOUND\nThe wreck in {P} is to be deleted.\n{foot}\n")
    charts = bulletin.notices[0].charts
    heads = [(one.chart, one.previous and one.previous.number) for one in charts]
    assert heads == [("802", 3), ("803", 4)]
    assert [f.code for f in bulletin.findings if f.severity != "info"] == []


OLD_PRINT = [
    (f"Position. - {P}.\nAlteration. - A rock is to be inserted.", "insert"),
    (f"Position.—{P}.\nAlteration.—The rock is to be deleted.", "delete"),
    (f"Alteration. - The rock is to be deleted.\nPosition. - {P}.", "delete"),
    (f"Position. - {P}.\nDetails. - Delete rock.", "delete"),
    (f"The rock is to be deleted. Position. - {P}.", "delete"),
]


@pytest.mark.parametrize(("body", "verb"), OLD_PRINT)
def test_keys_in_the_old_print(body: str, verb: str) -> None:
    text = f"No. 12 of 2026. - QUILL SOUND.\n{body}\nCharts affected. - 802 (previous notice 3/26)"
    bulletin = parse(f"{text} and 803.\n")
    assert told(bulletin) == [(verb, "rock", [AT_P])] * 2
    assert [one.chart for one in bulletin.notices[0].charts] == ["802", "803"]
    assert errors(bulletin) == set()


def test_a_key_with_words_of_another_thing_leads_to_no_place_of_the_change() -> None:
    text = f"12/26 Quill Sound\nThe rock is to be deleted. Position. - of the wreck {P}.\n"
    bulletin = parse(text)
    assert (told(bulletin), errors(bulletin)) == ([], {"change-without-place"})


def test_words_that_speak_of_a_warning_open_none() -> None:
    said = "See coastal warning 41/26 for other lights."
    bulletin = parse(f"12/26 Quill Sound\nChart 802\nInsert wreck {P}\n{said}\nDelete rock {Q}\n")
    assert [one.id for one in bulletin.notices] == ["12/26"]
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


RADIO_HEADS = [
    "Tavrenne Coastal Warning 31/26 (issued 021510 UTC FEB 26) Chart 210\n",
    "Coastal Warning 31/26 of 2 February 2026, 1510 UTC\n",
    "Coastal Warning No. 31/26 - 040730 UTC FEB 26 - Charts 210 and 211\n",
    "Local Navigational Warning 31/26 (Sorley Approach)\n",
    "Coastal Warning 31/26: Sorley Approach. ",
]


@pytest.mark.parametrize("head", RADIO_HEADS)
def test_radio_warnings_in_small_letters(head: str) -> None:
    said = f"Light buoy in {P} unlit. (Cancels Coastal Warning 29/26.)"
    bulletin = parse(f"Warnings in force on 9 February 2026\n\n{head}{said}\n")
    (notice,) = bulletin.notices
    assert (notice.number, notice.status) == (31, "radio_warning")
    assert [ref.number for ref in notice.cancels] == [29]
    assert [one.iso6709 for one in notice.remarks[0].positions] == [AT_P]
    assert errors(bulletin) == set()


CHARTS_OF_WARNINGS = [
    ("CHARTS 802 803", ["802", "803"]),
    ("CHARTS AFFECTED: 802 803 811.", ["802", "803", "811"]),
    ("Charts Nos: 1420 1421", ["1420", "1421"]),
    ("CHARTS 802 & 803", ["802", "803"]),
]


@pytest.mark.parametrize(("said", "charts"), CHARTS_OF_WARNINGS)
def test_charts_of_a_warning(said: str, charts: list[str]) -> None:
    (notice,) = parse(f"COASTAL WARNING 31/26\n{said}\nWRECK IN {P}.\n").notices
    assert [one.chart for one in notice.charts] == charts


@pytest.mark.parametrize("said", ["CHART 802 803", "CHART 802 803.", "Chart 802 803\n"])
def test_a_figure_behind_the_one_chart_of_a_warning_is_told(said: str) -> None:
    bulletin = parse(f"COASTAL WARNING 31/26\n{said}\nWRECK IN {P}.\n")
    assert [one.chart for one in bulletin.notices[0].charts] == ["802"]
    assert errors(bulletin) == {"chart-unread"}


@pytest.mark.parametrize(
    "head", ["COASTAL WARNING 31", "Coastal Warning No. 31", "NAVAREA XX 31", "Local Warning 31:"]
)
def test_a_warning_without_its_year_is_not_merged_into_the_one_above(head: str) -> None:
    above = f"Coastal Warning 30/26\nLight-buoy in {P} unlit.\n"
    bulletin = parse(f"{above}\n{head}\nWreck in {Q}.\nCancel 12/26.\n")
    found = [(one.number, one.year, len(one.cancels)) for one in bulletin.notices]
    assert found == [(30, 2026, 0), (31, None, 1)]
    assert [one.code for one in bulletin.findings] == ["notice-year-not-written"]


@pytest.mark.parametrize("said", ["CANCEL COASTAL WARNING 31", "See Coastal Warning 31"])
def test_a_warning_without_its_year_that_is_only_spoken_of(said: str) -> None:
    text = f"Coastal Warning 30/26\nLight-buoy in {P} unlit.\n\n{said}\n"
    assert [one.number for one in parse(text).notices] == [30]


CANCELLED_BESIDE_OTHERS = [
    ("CANCEL COASTAL WARNING 29/26 AND NAVAREA XX 12/26.", [29], ["cancellation-unread"]),
    ("Cancels Coastal Warning 29/26 (wreck) and Notice 12/26.", [29], ["cancellation-unread"]),
    ("Cancels 29/26, 12/26 and 11/26.", [29, 12, 11], []),
    ("Cancels 29/26. See 12/26.", [29], []),
]


@pytest.mark.parametrize(("said", "cancelled", "told_of"), CANCELLED_BESIDE_OTHERS)
def test_a_second_warning_that_is_cancelled(
    said: str, cancelled: list[int], told_of: list[str]
) -> None:
    bulletin = parse(f"COASTAL WARNING 31/26\nWRECK IN {P}.\n{said}\n")
    assert [one.number for one in bulletin.notices[0].cancels] == cancelled
    assert [one.code for one in bulletin.findings] == told_of


def test_a_warning_that_is_only_spoken_of_opens_nothing() -> None:
    text = f"Coastal Warning 31/26\nBuoy in {P} adrift.\nCoastal Warning 29/26 remains in force.\n"
    assert [one.number for one in parse(text).notices] == [31]


@pytest.mark.parametrize("said", ["All panels are on WGS84.", "All plans are referred to WGS84."])
def test_a_datum_said_of_all_panels(said: str) -> None:
    text = f"{said}\n\n12/26 Quill Sound.\nChart 802, panel A [3/26]\nInsert wreck {P}\n"
    (chart,) = parse(text).notices[0].charts
    assert chart.datum is not None
    assert (chart.panel, chart.datum.name) == ("panel A", "WGS84")


@pytest.mark.parametrize("longitude", ["122° 00'.00 W", "122-00.00 W"])
def test_letters_that_are_hemispheres_too(longitude: str) -> None:
    rows = "".join(f"  {letter}  46° 0{i}'.00 S  {longitude}\n" for i, letter in enumerate("NSEW"))
    items = "".join(f"Insert rock at {letter}\n" for letter in "NSEW")
    bulletin = parse(f"12/26 Quill Sound.\nChart 802 [3/26]\n{items}Positions:\n{rows}")
    assert [at for _, _, (at,) in told(bulletin)] == [f"-460{i}.00-12200.00/" for i in range(4)]


@pytest.mark.parametrize("comes", ["by a\nrock, depth 2.2 m", "by\na rock, depth 2.2 m"])
def test_a_line_may_end_within_what_comes(comes: str) -> None:
    text = (
        f"12/26 Quill Sound.\nChart 802 [3/26]\nReplace the wreck in {P} {comes}, insert a\n"
        f"rock in {Q}, delete the pile in {P}.\n"
    )
    bulletin = parse(text)
    assert [one[0] for one in told(bulletin)] == ["replace", "insert", "delete"]
    assert errors(bulletin) == set()


def test_words_that_open_a_line_before_a_verb_may_be_those_of_the_next_item() -> None:
    head = "12/26 Quill Sound.\nChart 802 [3/26]\n"
    bulletin = parse(f"{head}Delete the wreck in {P},\npile, insert rock in {Q}.\n")
    actions = bulletin.notices[0].charts[0].actions
    assert [(one.feature.text, one.usable) for one in actions] == [
        ("the wreck", True),
        ("pile", False),
        ("rock", True),
    ]
    assert errors(bulletin) == {"item-without-position"}
