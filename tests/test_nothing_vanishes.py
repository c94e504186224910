"""Words behind heads, keys and numbers; cancellations, charts, notices before, and dates.

Each is read whole or told; none goes in silence.  Common practice, no published source, where no
standard is named.
"""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records import Bulletin, Notice
from noticeparse.records.chart import ChartSection

P = "47-12.34S 123-45.67W"
AT_P = "-4712.34-12345.67/"
HEAD = "2417/26 HALCYON - Works\nChart 802 [2310/26] WGS84\n"
RADIO = "TAVRENNE COASTAL WARNING 140/26\nWRECK 47-12.34S 123-45.67W.\n"


def codes(bulletin: Bulletin) -> set[str]:
    return {one.code for one in bulletin.findings if one.severity in ("error", "warning")}


def first(text: str) -> Notice:
    return parse(text).notices[0]


def charts(text: str) -> list[ChartSection]:
    return parse(f"{text}\nInsert wreck {P}\n").notices[0].charts


def cancelled(notice: Notice) -> list[str]:
    return [f"{ref.number}{ref.status[0]}/{ref.year}" for ref in notice.cancels]


@pytest.mark.parametrize(
    "words",
    [
        "Light-buoy No 4 withdrawn.",
        "Bridge clearance reduced to 16m.",
        "Divers working until 3 June 2026.",
    ],
)
@pytest.mark.parametrize("chart", ["Chart 802.", "Chart affected: 802.", "Charts: 802, 803."])
def test_words_behind_charts_are_kept(chart: str, words: str) -> None:
    notice = first(f"417/26 HALCYON - Works\n{chart} {words}\n")
    assert [one.text for one in notice.remarks] == [words]
    assert all(one.edition_date is None for one in notice.charts)


def test_a_sentence_behind_charts_is_an_action_of_both() -> None:
    notice = first(
        f"417/26 HALCYON\nCharts 802 and 803. A wreck, least depth 8.6m, has been found in {P}\n"
    )
    assert [one.actions[0].feature.kind for one in notice.charts] == ["wreck_least_depth"] * 2
    lost = parse(f"417/26 HALCYON\nChart 802. Dangerous wreck, depth 8.6m, at {P}\n")
    assert codes(lost) == {"item-without-verb"}


def test_the_subject_of_a_sentence_behind_a_chart_is_kept() -> None:
    notice = first(f"417/26 HALCYON\nChart 802. Quill Sound. Wreck to be inserted {P}\n")
    assert [one.feature.kind for one in notice.charts[0].actions] == ["wreck"]


@pytest.mark.parametrize(
    "head", ["Chart 802. Approaches to Port Ellory.", "Chart 802. Quill Sound. WGS84."]
)
def test_a_title_behind_a_chart_is_no_statement(head: str) -> None:
    assert first(f"417/26 HALCYON\n{head}\nInsert wreck {P}\n").remarks == []


def test_a_message_may_stand_on_the_line_of_its_number() -> None:
    told = "QUILL SOUND. CHART 802 [EDITION 4]. WRECK 8.6 METRES."
    notice = first(f"190600 UTC JUN 26\nTAVRENNE COASTAL WARNING 141/26 {told}\n")
    assert (notice.id, notice.status) == ("141/26", "radio_warning")
    assert [one.text for one in notice.remarks] == [told]
    two = parse(f"{RADIO}\nTAVRENNE COASTAL WARNING 141/26 QUILL SOUND. LIGHT UNLIT {P}.\n")
    assert [one.id for one in two.notices] == ["140/26", "141/26"]
    named = parse(f"{RADIO}\nCOASTAL WARNING 139/26 CANCELLED.\nWARNING 138/26 REFERS.\n")
    assert [one.id for one in named.notices] == ["140/26"]


def test_words_behind_a_period_of_validity_are_kept() -> None:
    head = "417(T)/26 HALCYON - Works\nChart 802\n\nValid: 1 Jun 26 - 31 Aug 26."
    notice = first(f"{head} Dangerous wreck, depth 8.6m, at {P}\n")
    assert notice.valid is not None
    assert [p.iso6709 for one in notice.remarks for p in one.positions] == [AT_P]


@pytest.mark.parametrize("key", ["Subject: wreck. ", "Title: Works. ", "Cancels: 402(T)/24. "])
def test_a_command_behind_a_key_is_an_action(key: str) -> None:
    action = first(f"{HEAD}{key}Delete wreck {P}\n").charts[0].actions[0]
    assert (action.verb, action.geometry.positions[0].iso6709) == ("delete", AT_P)


def test_a_position_in_a_title_is_kept() -> None:
    notice = first(f"{HEAD}Subject: Wreck in {P}\n")
    assert [p.iso6709 for one in notice.remarks for p in one.positions] == [AT_P]


HEADS = [
    "TEMPORARY NOTICE TO MARINERS 2417/26\nHALCYON",
    "NOTICE TO MARINERS No 2417 of 2026 (T)\nHALCYON",
    "NOTICE 2417 of 2026 (TEMPORARY) HALCYON",
    "NOTICE TO MARINERS 2417/26\n(TEMPORARY)\nHALCYON",
    "2417/26 HALCYON (T)",
]


@pytest.mark.parametrize("head", HEADS)
def test_a_temporary_notice_told_in_words(head: str) -> None:
    notice = first(f"{head}\nChart 802\nA wreck has been found in {P}.\n")
    assert (notice.id, notice.status) == ("2417(T)/26", "temporary")
    assert [len(one.actions) for one in notice.charts] == [0]
    assert [p.iso6709 for one in notice.remarks for p in one.positions] == [AT_P]


CANCELS = [
    ("Temporary Notice 402 of 2024 is cancelled.", ["402t/2024"]),
    ("Preliminary Notice 402 of 2024 is cancelled.", ["402p/2024"]),
    ("NM 402(T)/2024 cancelled", ["402t/2024"]),
    ("Notice No. 402(T)/24 of 3 June 2024 is cancelled.", ["402t/2024"]),
    ("Cancel Notices 402(T)/24 to 404(T)/24.", ["402t/2024", "403t/2024", "404t/2024"]),
    ("This notice supersedes 402(T)/24.", ["402t/2024"]),
    ("Works under notice 40(T)/26 have ended and that notice is cancelled.", ["40t/2026"]),
]


@pytest.mark.parametrize(("words", "refs"), CANCELS)
def test_cancelled(words: str, refs: list[str]) -> None:
    bulletin = parse(f"{HEAD}Delete wreck {P}\n\n{words}\n")
    assert [cancelled(one) for one in bulletin.notices] == [refs]
    assert [one.feature.name for one in bulletin.notices[0].charts[0].actions] == [None]
    assert codes(bulletin) == set()


MESSAGES = [
    ("CANCEL NAVAREA XV 120/25.", ["120r/2025"]),
    ("CANCEL 39 AND 40/26.", ["39p/2026", "40p/2026"]),
    ("CANCEL 39/25 TO 41/25.", ["39p/2025", "40p/2025", "41p/2025"]),
    ("WARNINGS CANCELLED: 13/26 14/26.", ["13p/2026", "14p/2026"]),
    ("CANCEL 39/26, 40 AND 41/26.", ["39p/2026", "40p/2026", "41p/2026"]),
    ("CANCEL 39/26 AND 40.", ["39p/2026", "40p/None"]),
    ("DO NOT CANCEL 39/26.", []),
]


@pytest.mark.parametrize(("words", "refs"), MESSAGES)
def test_cancelled_by_message(words: str, refs: list[str]) -> None:
    assert cancelled(first(f"{RADIO}{words}\n")) == refs


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("Notice 402(T)/24 is not cancelled.", set()),
        ("Notice 402(T)/24 has expired.", {"cancellation-unread"}),
        ("Notice 402(T)/24 is no longer in force.", {"cancellation-unread"}),
        ("Cancels 38, 39 and 40.", {"cancellation-unread"}),
        ("Notices 38 and 39 are cancelled.", {"cancellation-unread"}),
        ("Notices 38/26 and 39-26 are cancelled.", {"cancellation-unread"}),
    ],
)
def test_a_sentence_about_a_notice_is_a_remark(words: str, told: set[str]) -> None:
    bulletin = parse(f"{HEAD}{words}\nDelete wreck {P}\n")
    assert [one.id for one in bulletin.notices] == ["2417/26"]
    assert [one.text for one in bulletin.notices[0].remarks] == [words]
    assert bulletin.notices[0].charts[0].actions[0].usable
    assert codes(bulletin) == told


@pytest.mark.parametrize(
    ("words", "read", "told"),
    [
        ("Cancels 38/26, 39-26 and 40", ["38p/2026"], {"cancellation-unread"}),
        ("Notices 39-26 and 38/26 are cancelled.", ["38p/2026"], {"cancellation-unread"}),
        ("Cancels 38/26, 3 June 2026.", ["38p/2026"], set()),
        ("Cancels 38/26.", ["38p/2026"], set()),
    ],
)
def test_numbers_beside_those_cancelled_are_told(
    words: str, read: list[str], told: set[str]
) -> None:
    bulletin = parse(f"{HEAD}{words}\nDelete wreck {P}\n")
    assert cancelled(bulletin.notices[0]) == read
    assert codes(bulletin) == told


# head, (chart, international, edition, notice before) of each chart, codes
Charts = list[tuple[str | None, str | None, str | None, str | None]]
CHARTS: list[tuple[str, Charts, set[str]]] = [
    ("Charts 802 to 804 WGS84", [("802", None, None, None), ("804", None, None, None)],
     {"chart-range"}),
    ("Charts 802-804 WGS84", [("802", None, None, None), ("804", None, None, None)],
     {"chart-range"}),
    ("Chart 802, 4th edition 2025, last correction 2310/26", [
        ("802", None, "4th", "last correction 2310/26")], set()),
    ("Chart 802, edition 4, 2025, last correction 2310/26", [
        ("802", None, "4", "last correction 2310/26")], set()),
    ("Charts 802 803 WGS84", [("802", None, None, None), ("803", None, None, None)], set()),
    ("Chart 8 02 WGS84", [(None, None, None, None)], {"chart-unread"}),
    ("Chart 802.1 WGS84", [(None, None, None, None)], {"chart-unread"}),
    ("Chart INT 1503 (802)", [("802", "INT 1503", None, None)], set()),
    ("Chart 802 (INT 1503, INT 1504)", [("802", "INT 1503", None, None)], {"chart-head-unread"}),
    ("Charts 802, 803 (INT 1503, INT 1504)", [
        ("802", "INT 1503", None, None), ("803", "INT 1504", None, None)], set()),
    ("Chart 802 [2310]", [("802", None, None, "2310")], set()),
    ("Chart 802 previous notice 2310", [("802", None, None, "previous notice 2310")], set()),
    ("Chart 802 [NE 3/6/26]", [("802", None, None, "NE 3/6/26")], set()),
    ("Chart 802 [nil]", [("802", None, None, "nil")], set()),
    ("Chart 802 [2310/26, 2311/26]", [("802", None, None, "2310/26")], {"chart-head-unread"}),
    ("Chart 802 [2310/26] [2311/26]", [("802", None, None, "2310/26")], {"chart-head-unread"}),
    ("Chart 802 (A) [2310/26]", [("802", None, None, "2310/26")], {"chart-head-unread"}),
]  # fmt: skip


@pytest.mark.parametrize(("head", "expected", "told"), CHARTS, ids=[one[0] for one in CHARTS])
def test_heads_of_charts(head: str, expected: Charts, told: set[str]) -> None:
    bulletin = parse(f"2417/26 HALCYON\n{head}\nInsert wreck {P}\n")
    found = [
        (one.chart, one.international, one.edition, one.previous_written)
        for one in bulletin.notices[0].charts
    ]
    assert found == expected
    assert all(len(one.actions) == 1 for one in bulletin.notices[0].charts)
    assert codes(bulletin) == told


@pytest.mark.parametrize(
    ("panels", "kept", "is_told"),
    [
        ("(main chart, plan A)", None, True),
        ("(plans A, B)", "plans A, B", False),
        ("plan A [2310/26] plan B", "plan A", True),
        ("(plan A)", "plan A", False),
    ],
)
def test_panels(panels: str, kept: str | None, is_told: bool) -> None:
    bulletin = parse(f"2417/26 HALCYON\nChart 802 {panels} WGS84\nInsert wreck {P}\n")
    assert [one.panel for one in bulletin.notices[0].charts] == [kept]
    assert ("chart-head-unread" in codes(bulletin)) == is_told


def test_an_international_number_in_a_message() -> None:
    notice = first(f"{RADIO}CHART INT 99.\n")
    assert [(one.chart, one.international) for one in notice.charts] == [(None, "INT 99")]


# words, first and last day, days named, told
Dates = tuple[str, str | None, str | None, list[str], set[str]]
DATES: list[Dates] = [
    ("Dredging postponed from 1 June 2026 to 31 August 2026.", None, None,
     ["2026-06-01", "2026-08-31"], {"validity-unread"}),
    ("Dredging has been extended from 1 June 2026 to 31 August 2026.", None, None,
     ["2026-06-01", "2026-08-31"], {"validity-unread"}),
    ("Dredging during the period 1-14 June 2026.", "2026-06-01", "2026-06-14",
     ["2026-06-01", "2026-06-14"], set()),
    ("In force from 1 October 2026 until 31 January 2027.", "2026-10-01", "2027-01-31",
     ["2026-10-01", "2027-01-31"], set()),
    ("In effect as from 1 October 2026 to 31 January 2027.", "2026-10-01", "2027-01-31",
     ["2026-10-01", "2027-01-31"], set()),
    ("In force from 1 October 2026.", None, None, ["2026-10-01"], {"validity-unread"}),
    ("In force from 1 October 2026, to be cancelled later.", None, None, ["2026-10-01"],
     {"validity-unread"}),
    ("Dredging on 1, 3 and 5 June 2026.", None, None,
     ["2026-06-01", "2026-06-03", "2026-06-05"], set()),
    ("Firing 201000Z TO 211600Z JUN 26.", "2026-06-20T10:00Z", "2026-06-21T16:00Z",
     ["2026-06-20", "2026-06-21"], set()),
    ("This notice expires on 31 August 2026.", None, "2026-08-31", ["2026-08-31"], set()),
    ("This notice will be cancelled on 31 August 2026.", None, "2026-08-31",
     ["2026-08-31"], set()),
]  # fmt: skip


@pytest.mark.parametrize(("words", "since", "until", "days", "told"), DATES)
def test_dates(
    words: str, since: str | None, until: str | None, days: list[str], told: set[str]
) -> None:
    bulletin = parse(f"417(T)/26 Works\n{words}\n")
    notice = bulletin.notices[0]
    valid = (notice.valid.from_, notice.valid.until) if notice.valid else (None, None)
    assert valid == (since, until)
    assert notice.remarks[0].dates == days
    assert codes(bulletin) == told


def test_the_rest_of_an_item_that_stands_twice_beside_rules_is_no_page_head() -> None:
    rule = "-" * 60 + "\n"
    item = "INSERT\n  46-00.00S 122-00.00W\n  special buoy, lit\n  and foul ground\n"
    heads = [f"{n}/26 Quill Sound.\nChart 802 [{n - 1}/26] WGS84\n" for n in (12, 13)]
    bulletin = parse("".join(f"{head}{item}{rule}" for head in heads))
    texts = [a.text for notice in bulletin.notices for c in notice.charts for a in c.actions]
    assert ["foul ground" in text for text in texts] == [True, True]
