"""A digest sorted by chart, where each chart's line names its notice and the one before."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, actions_of, codes, errors

PREAMBLE = (
    "FLEET CIRCULAR 9 / 2026\n1 June 2026\n\n"
    "Digest of the corrections received. Correct the charts you hold and sign the log.\n\n"
)
HEADS = [
    ">> CHART 77, MORRANE INLET. Notice 1340/26, to follow 1298/26.",
    ">> CHART 77 - MORRANE INLET - Notice 1340/26 (follows 1298/26)",
    "Chart 77: Notice 1340/26, following 1298/26",
    "CHART 77. NOTICE 1340 of 2026. PREVIOUS 1298 of 2026",
    "CHART 77 | NM 1340/26 | prev 1298/26",
    "=== CHART 77, MORRANE INLET === correction 1340/26, next after 1298/26",
    "CHART 77. To follow 1298/26. Notice 1340/26.",
    "** CHART 77 QUILL SOUND ** Notice 1340/26, to be entered after 1298/26",
    ">> CHART 77, MORRANE INLET. Notice 1340/26, to be applied after NM 1298/26.",
]


@pytest.mark.parametrize("head", HEADS)
def test_the_line_of_a_chart_opens_its_notice(head: str) -> None:
    other = head.replace("77", "79").replace("1298", "1297")
    bulletin = parse(
        f"{PREAMBLE}{head}\n   Put in: wreck at {P}; rock at {Q}.\n\n"
        f"{other}\n   Put in: wreck at {P}.\n\n"
        ">> NO CHART. Notice 1360(P)/26.\n   Dredging is planned.\n"
    )
    first, last = bulletin.notices
    assert [first.id, last.id] == ["1340/26", "1360(P)/26"]
    assert [(one.chart, one.previous and one.previous.number) for one in first.charts] == [
        ("77", 1298),
        ("79", 1297),
    ]
    assert [len(one.actions) for one in first.charts] == [2, 1]
    assert not last.charts
    assert not errors(bulletin)


def test_what_is_to_be_done_with_all_charts_is_no_action() -> None:
    for said in ("Correct the charts you hold.", "Amend all charts on board by hand."):
        bulletin = parse(f"FLEET CIRCULAR\n{said}\n\n{HEADS[0]}\n   Put in: wreck at {P}.\n")
        assert len(actions_of(bulletin)) == 1
        assert not codes(bulletin)


def test_a_correction_beside_a_chart_is_the_notice_before() -> None:
    (notice,) = parse(
        f"40/26 Quill Sound.\nChart 77, correction 30/26\nInsert wreck {P}\n"
    ).notices
    assert notice.id == "40/26"
    assert notice.charts[0].previous is not None
    assert notice.charts[0].previous.number == 30


BY_CHART = (
    "CHART 21 - PORT LISMER\n\n73/26 Outer Bar\nInsert wreck {P}\n\n{second} Lismer Roads\n"
    "{said}\n\nCHART 22 - SELVANE SOUND\n\n76/26 Narrows\n"
    "Insert rock {P}\n"
)


def test_a_temporary_notice_in_prose_is_of_the_chart_it_stands_under() -> None:
    bulletin = parse(
        BY_CHART.format(P=P, second="75(T)/26", said=f"The buoy in {Q} is off station.")
    )
    read = [(one.id, [chart.chart for chart in one.charts]) for one in bulletin.notices]
    assert read == [("73/26", ["21"]), ("75(T)/26", ["21"]), ("76/26", ["22"])]


def test_a_chart_behind_a_blank_line_is_not_that_of_the_prose_above() -> None:
    bulletin = parse(BY_CHART.format(P=P, second="75/26", said="The pilots work on VHF 12."))
    read = [(one.id, [chart.chart for chart in one.charts]) for one in bulletin.notices]
    assert read[1:] == [("75/26", []), ("76/26", ["22"])]


CONTENTS = "CONTENTS\n   Chart 77     KV 140\n   Chart 79     KV 141, KV 142(P)\n\n"
LISTED = (
    "KELVANE BRANCH, notices of May 2026\n\n{contents}"
    "CHART 77     MORRANE INLET\n\n"
    f"KV 140/26 (Prev. 98)     Entrance, buoys\nInsert wreck {P}\n\n"
    "CHART 79     DUNMAR SOUND\n\n"
    f"KV 141/26 (Prev. 97)     Ledge\nDelete rock {Q}\n\n"
    f"KV 142(P)/26     New light\nA light will be shown in {P} from about August 2026.\n\n"
    "KV 143/26     Office\nNo chart is affected. The office is closed.\n\n"
    "RADIO WARNING IN FORCE ON 31 MAY 2026\n\n"
    f"KELVANE RADIO WARNING 12/26\nDRIFTING LOGS SEEN IN {P}.\n"
)


@pytest.mark.parametrize("contents", ["", CONTENTS])
def test_charts_above_their_notices_stand_behind_a_table_of_contents(contents: str) -> None:
    bulletin = parse(LISTED.format(contents=contents))
    read = {
        one.id: [(chart.chart, chart.previous and chart.previous.number) for chart in one.charts]
        for one in bulletin.notices
    }
    assert read == {
        "140/26": [("77", 98)],
        "141/26": [("79", 97)],
        "142(P)/26": [("79", None)],
        "143/26": [],
        "12/26": [],
    }
    assert [(one.verb, one.feature.kind) for one in actions_of(bulletin)] == [
        ("insert", "wreck"),
        ("delete", "rock"),
    ]
    assert errors(bulletin) == set()
    assert all("IN FORCE" not in r.text for one in bulletin.notices for r in one.remarks)


def test_charts_and_notices_of_a_list_are_no_heads() -> None:
    contents = (
        "CONTENTS\n\nChart 77     Morrane Inlet\n   140/26     Entrance     page 2\n"
        "   141/26     Ledge     page 3\n\n"
    )
    text = f"{contents}140/26 Morrane Inlet\nChart 78 [98/26]\nInsert wreck {P}\n"
    bulletin = parse(text)
    assert [chart.chart for one in bulletin.notices for chart in one.charts] == ["78"]


UNDER_CHARTS = "CHART 802\n{}\nCHART 804\n2430/26 Delete rock {Q}\n"


@pytest.mark.parametrize(
    "rows",
    [
        f"2417/26 Insert wreck {P} (see 2218(T)/26)",
        f"2417/26 Insert wreck {P} Cancels 2219(T)/26",
        f"2417/26 Insert wreck {P} Follows 2310/26",
        f"2417/26 Insert wreck {P}\n        See also 2418/26",
        f"2417/26 Insert: rock {Q}\n        wreck {P} - 2418(T)/26",
    ],
)
def test_a_notice_named_behind_an_item_does_not_take_it_from_that_of_its_line(rows: str) -> None:
    bulletin = parse(UNDER_CHARTS.format(rows, Q=Q))
    assert [one.id for one in bulletin.notices] == ["2417/26", "2430/26"]
    (chart,) = bulletin.notices[0].charts
    assert chart.actions[-1].feature.kind == "wreck"
    assert "item-of-other-notice" in codes(bulletin)


def test_what_follows_the_number_of_another_notice_is_under_no_verb() -> None:
    rows = f"2417/26 Delete buoy {P}\nTemporary notices: 2418(T)/26 Light unlit {Q}"
    bulletin = parse(UNDER_CHARTS.format(rows, Q=Q))
    assert [one.id for one in bulletin.notices] == ["2417/26", "2430/26"]
    assert [one.feature.kind for one in actions_of(bulletin)] == ["buoy_generic", "rock"]
    assert errors(bulletin) == {"verb-unknown"}


def test_rows_that_end_in_their_notices_are_of_these() -> None:
    rows = f"Insert wreck {P} 2417/26\nDelete rock {Q} 2419/26"
    bulletin = parse(f"CHART 802\n{rows}\nCHART 804\nDelete rock {Q} 2420/26\n")
    read = [(one.id, [c.chart for c in one.charts]) for one in bulletin.notices]
    assert read == [("2417/26", ["802"]), ("2419/26", ["802"]), ("2420/26", ["804"])]
    assert all(len(chart.actions) == 1 for one in bulletin.notices for chart in one.charts)
    assert not codes(bulletin) - {"datum-not-stated"}
