"""Notices and charts that words in a text name: cancelled, spoken of, at the end of an item."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import AT_P, HEAD, WRECK_AND_ROCK, P, Q, R, errors, told


def test_charts_parted_by_a_dash() -> None:
    text = f"12/26 Quill Sound.\nInsert wreck {P}\nCharts: 802 [3/26] - 803 (plan A) [4/26]\n"
    charts = parse(text).notices[0].charts
    assert [(one.chart, one.panel) for one in charts] == [("802", None), ("803", "plan A")]


@pytest.mark.parametrize("order", ["CANCEL NTM", "Cancel notice", "Cancels NM", "CNL NTM"])
def test_cancelled_behind_the_heading(order: str) -> None:
    bulletin = parse(
        f"12/26 - Quill Sound. {order} 9(T)/26.\nChart 802 [3/26]\nInsert wreck {P}\n"
    )
    assert [(ref.number, ref.status) for ref in bulletin.notices[0].cancels] == [(9, "temporary")]
    assert told(bulletin) == [("insert", "wreck", [AT_P])]


def test_charts_within_a_paragraph() -> None:
    first = f"12/26 Quill Sound. Chart 802 [3/26]: insert wreck in {P}. "
    text = f"{first}Chart 803 [4/26]: delete rock in {Q}.\n"
    charts = parse(text).notices[0].charts
    assert [(one.chart, len(one.actions)) for one in charts] == [("802", 1), ("803", 1)]


def test_chart_numbers_at_the_margin() -> None:
    text = (
        "12/26 Quill Sound.\n\n"
        f"802    Last corr. 3/26. WGS84.\n       Add       wreck {P}\n"
        f"803    Last corr. 4/26. WGS84.\n       Take out  rock {Q}\n"
    )
    bulletin = parse(text)
    charts = bulletin.notices[0].charts
    assert [chart.chart for chart in charts] == ["802", "803"]
    assert told(bulletin) == WRECK_AND_ROCK


def test_panels_on_lines_of_their_own() -> None:
    text = f"PLAN A, PORT ELLORY.\nInsert wreck {P}\nPLAN B, QUILL BASIN.\nDelete rock {Q}\n"
    charts = parse(HEAD + text).notices[0].charts
    assert [(one.chart, one.panel, len(one.actions)) for one in charts] == [
        ("802", "PLAN A", 1), ("802", "PLAN B", 1),
    ]  # fmt: skip


def test_main_chart_behind_a_panel_is_no_panel() -> None:
    text = (
        f"{HEAD}Plan A, Port Ellory\nInsert wreck {P}\nMain chart:\nDelete rock {Q}\n"
        f"Inset B, Dunmarrow\nInsert wreck {R}\nOn the main chart\nDelete wreck {P}\n"
    )
    bulletin = parse(text)
    sections = [
        (chart.chart, chart.panel, [(a.verb, a.feature.text) for a in chart.actions])
        for chart in bulletin.notices[0].charts
    ]
    assert sections == [
        ("802", "Plan A", [("insert", "wreck")]),
        ("802", None, [("delete", "rock")]),
        ("802", "Inset B", [("insert", "wreck")]),
        ("802", None, [("delete", "wreck")]),
    ]
    assert not bulletin.findings


@pytest.mark.parametrize(
    ("words", "cancels"),
    [
        ("Notice 10/26 refers. That notice is cancelled.", [10]),
        ("Notice 10/26 remains in force.", []),
        ("10/26 refers.", []),
    ],
)
def test_notice_that_a_sentence_speaks_of_opens_nothing(words: str, cancels: list[int]) -> None:
    bulletin = parse(f"{HEAD}{words}\nDelete wreck {P}\n")
    assert [notice.id for notice in bulletin.notices] == ["12/26"]
    assert [ref.number for ref in bulletin.notices[0].cancels] == cancels
    assert told(bulletin) == [("delete", "wreck", [AT_P])]
    assert bulletin.notices[0].charts[0].chart == "802"
    assert cancels or words in [one.text for one in bulletin.notices[0].remarks]


def test_charts_behind_each_other_share_the_items_below() -> None:
    head = "12/26 Quill Sound. Ch. 41 (prev. 3/26), Ch. 42 (prev. 4/26)\n"
    charts = parse(f"{head}Ins wreck, {P}\n").notices[0].charts
    assert [(chart.chart, len(chart.actions)) for chart in charts] == [("41", 1), ("42", 1)]


def test_cancelled_notice_of_a_message_opens_none() -> None:
    text = (
        "1. NOTICE 12/26 / QUILL SOUND / CHART 802 / LAST 3/26 / DATUM WGS84\n"
        f"   DELETE / WRECK / {P}\n   NOTICE 9(T)/26 CANCELLED\n"
    )
    notice, *others = parse(text).notices
    assert not others
    assert (notice.id, notice.heading, notice.charts[0].chart) == ("12/26", "QUILL SOUND", "802")
    assert [ref.number for ref in notice.cancels] == [9]


def test_charts_at_the_end_of_an_item() -> None:
    head = "12/26 Quill Sound.\nCharts: 611 (previous notice 3/26), 612 (previous notice 4/26)\n"
    items = f"Insert wreck - {P} [611, 612]\nDelete rock - {Q} [612]\nInsert wreck - {R} [99]\n"
    bulletin = parse(head + items)
    assert [
        (chart.chart, [(a.verb, a.feature.kind) for a in chart.actions if a.usable])
        for chart in bulletin.notices[0].charts
    ] == [
        ("611", [("insert", "wreck")]),
        ("612", [("insert", "wreck"), ("delete", "rock")]),
    ]
    # A number that is none of the charts named is no chart.
    assert "feature-figure-unclear" in errors(bulletin)


def test_index_set_in_two_columns() -> None:
    text = (
        "WEEKLY EDITION No. 27 - 3 July 2026\n\nINDEX OF CHARTS AFFECTED\n"
        "   Chart      Notices            Chart      Notices\n"
        "   802        12                 803        12, 13\n\n"
        f"12/26 Quill Sound.\nChart 802 [3/26]\nInsert wreck {P}\n"
    )
    (index,) = parse(text).lists
    found = {one.chart: [ref.number for ref in one.notices] for one in index.entries if one.chart}
    assert found == {"802": [12], "803": [12, 13]}


@pytest.mark.parametrize("end", ["Charts affected:", "Charts\naffected:", "Charts concerned:"])
def test_charts_at_the_end_of_a_run_of_commands(end: str) -> None:
    text = (
        f"12/26 - QUILL SOUND. Add a wreck in {P}; replace the special buoy in {Q} by a special\n"
        f"light-buoy, Fl.Y.3s. {end} 802 (last notice 3/26), 803 (last notice 4/26).\n"
    )
    bulletin = parse(text)
    charts = bulletin.notices[0].charts
    assert [(one.chart, [a.verb for a in one.actions]) for one in charts] == [
        ("802", ["insert", "replace"]), ("803", ["insert", "replace"]),
    ]  # fmt: skip
    assert not errors(bulletin)


def test_keys_with_the_letters_of_an_office() -> None:
    head = "Ref:             HM {}/2026\nChart:           802\nLast corrected:  HM {}/2026\n\n"
    item = "Mark:            Wreck\nDone:            {}\nAt:              {}\n\n"
    text = (
        head.format(14, 11) + item.format("Charted", P) + item.format("Taken away", Q)
        + head.format("15(T)", 14) + "Cancels:         HM 8(T)/2026\n"
    )  # fmt: skip
    first, second = parse(text).notices
    assert (first.id, second.id) == ("14/26", "15(T)/26")
    assert [one.verb for one in first.charts[0].actions] == ["insert", "delete"]
    assert first.charts[0].previous is not None
    assert first.charts[0].previous.number == 11
    assert [(ref.number, ref.status) for ref in second.cancels] == [(8, "temporary")]


def test_paragraphs_that_open_notices_of_a_signal() -> None:
    text = (
        f"1. NOTICE 61/26. QUILL SOUND. CHART 802, LAST NOTICE 55/26.\n2. INSERTED: WRECK {P}.\n"
        f"3. NOTICE 62/26. QUILL SOUND. CHART 803, LAST NOTICE 48/26.\n4. DELETED: ROCK {Q}.\n"
    )
    notices = parse(text).notices
    assert [(one.id, one.charts[0].actions[0].verb) for one in notices] == [
        ("61/26", "insert"), ("62/26", "delete"),
    ]  # fmt: skip


def test_charts_in_the_margin_each_in_front_of_its_items() -> None:
    text = (
        f"41/26 Quill Sound\n802  Insert wreck   {P}\n803  Insert rock   {Q}\n"
        f"     Delete pile   {R}\n12  Delete wreck   {Q}\n"
    )
    charts = parse(text).notices[0].charts
    assert [(one.chart, [a.feature.kind for a in one.actions]) for one in charts] == [
        ("802", ["wreck"]), ("803", ["rock", "pile"]), ("12", ["wreck"]),
    ]  # fmt: skip


@pytest.mark.parametrize(
    "said",
    [
        "On Chart 802 (INT 9802), whose preceding notice is 31/2026, insert a",
        "On Chart 802, whose last correction was No. 31 of 2026, insert a",
        "On Chart 802, last corrected by 31/2026, insert a",
        "On chart 802 (preceding notice 31/2026) insert a",
        "On Chart 802 [31/2026] insert a",
    ],
)
@pytest.mark.parametrize("at", [0, 2, 4, 6, 8])
def test_a_head_within_a_sentence_wherever_its_lines_are_broken(said: str, at: int) -> None:
    words = said.split()
    broken = " ".join(words[:at]) + "\n" + " ".join(words[at:])
    text = f"46/2026. Quill Sound. {broken.strip()} wreck in {P}, and delete the rock in {Q}.\n"
    (notice,) = parse(text).notices
    (chart,) = notice.charts
    assert (chart.chart, chart.previous and chart.previous.number) == ("802", 31)
    assert [(a.verb, a.feature.kind, a.usable) for a in chart.actions] == [
        ("insert", "wreck", True), ("delete", "rock", True),
    ]  # fmt: skip
    assert text[chart.actions[0].span.start :].startswith("insert")
