"""Numbers of notices where offices put them, and parts of an edition that correct books."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin
from tests.short_notices import AT_P, AT_Q, HEAD, P, Q, actions_of, errors, told


def charts_of(bulletin: Bulletin) -> list[tuple[str | None, list[str | None]]]:
    return [(one.id, [chart.chart for chart in one.charts]) for one in bulletin.notices]


@pytest.mark.parametrize("noun", ["Gazette", "Notice"])
def test_the_number_of_a_notice_may_stand_among_the_details_of_its_chart(noun: str) -> None:
    text = "".join(
        f"CHART {chart}   QUILL SOUND\nEdition 6   Datum WGS84   {noun} No. {number}/2026"
        f"   Preceding change {number - 9}/2026\nInsert wreck {P}\n\n"
        for chart, number in ((802, 619), (803, 620))
    )
    bulletin = parse(text)
    assert charts_of(bulletin) == [("619/26", ["802"]), ("620/26", ["803"])]
    assert bulletin.notices[1].charts[0].previous.number == 611


def test_the_chart_says_which_notice_it_is_now_at() -> None:
    heads = "previous [688/26]   now 741/26", "previous [New Edition 4 Sept 2026]   now 742/26"
    text = "".join(
        f"CHART {802 + at}  {head}\n  insert wreck {P}\n\n" for at, head in enumerate(heads)
    )
    first, second = parse(text).notices
    assert (first.id, first.charts[0].previous.number) == ("741/26", 688)
    assert (second.id, second.charts[0].previous) == ("742/26", None)


@pytest.mark.parametrize(
    ("number", "status"), [("58-2026", "permanent"), ("58(T)-2026", "temporary"),
                           ("58-2026 (T)", "temporary")]
)  # fmt: skip
def test_a_number_with_a_hyphen_stands_before_the_name_of_a_place(
    number: str, status: str
) -> None:
    text = f"{number} - THOLE CHANNEL - DEPTHS\nChart 802 | previous 51-2026\nInsert wreck {P}\n"
    (notice,) = parse(text).notices
    assert (notice.number, notice.year, notice.status) == (58, 2026, status)


def test_orders_have_schedules_of_things_to_be_done() -> None:
    text = (
        "ORDER No. 41 OF 2026\nQUILL SOUND\nChart 802, last amended by Order No. 36 of 2026.\n"
        "Order No. 38(T) of 2026 is cancelled.\n\n"
        f"  Schedule of Additions\n    (i)  Wreck in {P};\n  Schedule of Removals\n"
        f"    (i)  Rock in {Q}.\n\nORDER No. 43(T) OF 2026\nQUILL SOUND\nChart 802.\n"
        "A barge is working there.\n"
    )
    bulletin = parse(text)
    first, second = bulletin.notices
    assert (first.id, [one.number for one in first.cancels]) == ("41/26", [38])
    assert first.charts[0].previous.number == 36
    assert (second.number, second.status) == (43, "temporary")
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


def test_the_parts_of_a_head_stand_between_strokes() -> None:
    text = (
        "/ Notice 7-2026 / Quill Sound / Chart 802 / previous notice 5-2026 /\nADD\n"
        "   1) wreck (46S00.00 122W00.00).\nREMOVE\n   2) rock (46S00.50 122W00.00).\n\n"
        "/ Notice 8-2026 / Quill Sound / Chart 803 / previous notice 2-2026 /\nADD\n"
        "   1) wreck (46S00.00 122W00.00).\n"
    )
    bulletin = parse(text)
    assert charts_of(bulletin) == [("7/26", ["802"]), ("8/26", ["803"])]
    assert [one.charts[0].previous.number for one in bulletin.notices] == [5, 2]
    assert told(bulletin) == [
        ("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q]), ("insert", "wreck", [AT_P]),
    ]  # fmt: skip


@pytest.mark.parametrize("title", ["12-2026 - CORRECTIONS TO CHARTS", "12-2026 - NOTICES"])
def test_the_number_of_an_edition_is_not_that_of_a_notice(title: str) -> None:
    (notice,) = parse(f"{title}\n\n{HEAD}Insert wreck {P}\n").notices
    assert notice.heading == "Quill Sound"


@pytest.mark.parametrize(
    "page", ["Page 2          LNM 12/26          25 AUG 2026", "Page 2   LNM 34/26   25 AUG 2026"]
)
def test_the_head_of_a_page_may_have_the_number_of_the_sheet(page: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{page}\nDelete rock {Q}\n")
    assert charts_of(bulletin) == [("12/26", ["802"])]
    assert len(told(bulletin)) == 2


def test_one_number_stands_above_the_parts_of_a_sheet() -> None:
    text = (
        "LOCAL NOTICE TO MARINERS 34/26          25 AUG 2026\nInvented waters.\n\n"
        "SECTION I - DISCREPANCIES\nLight List   Aid name   Status\n1020   Buoy 4   LIGHT OUT\n\n"
        f"SECTION II - CHART CORRECTIONS\n\nCHART 802   QUILL SOUND   Last LNM 31/26\n"
        f"  ADD   Wreck\n        at   {P}\n"
    )
    bulletin = parse(text)
    assert charts_of(bulletin) == [("34/26", ["802"])]
    assert told(bulletin) == [("insert", "wreck", [AT_P])]


TITLES = [
    "VI. CORRECTIONS TO THE LIST OF LIGHTS",
    "SECTION IV  AMENDMENTS TO SAILING DIRECTIONS",
    "PART 3 - CORRECTIONS TO THE LIST OF LIGHTS",
]


@pytest.mark.parametrize("title", TITLES)
@pytest.mark.parametrize("gap", ["", "\n"])
def test_a_part_that_corrects_a_book_holds_no_action(title: str, gap: str) -> None:
    bulletin = parse(
        f"{HEAD}Insert wreck {P}\n{gap}{title}\n"
        "  No       Name        Position               Remarks\n"
        f"  T1430    Brae Sewer  {Q}   Delete\n"
    )
    assert [(one.verb, one.feature.kind) for one in actions_of(bulletin)] == [("insert", "wreck")]
    assert "Brae Sewer" in " ".join(e.text for one in bulletin.lists for e in one.entries)


def test_notices_go_on_behind_a_part_that_corrects_a_book() -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n\n{TITLES[0]}\nT1430  {Q}  Delete\n\n"
                     f"13/26 Brae Sound.\nChart 803 [4/26]\nDelete rock {Q}\n")  # fmt: skip
    assert told(bulletin) == [("insert", "wreck", [AT_P]), ("delete", "rock", [AT_Q])]


@pytest.mark.parametrize(
    "entry",
    [
        f"List of Lights, Volume K: delete light {Q}",
        f"3. Sailing directions: delete beacon {Q}",
        f"Publication: Pilot Book Vol 2, Chapter 3\nDelete\nbeacon in {Q}",
    ],
)
def test_a_command_behind_the_name_of_a_book_is_for_no_chart(entry: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{entry}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]


@pytest.mark.parametrize("line", ["ELECTRONIC CHARTS", "ENC", "BOOKS", "Publications"])
def test_what_stands_below_other_charts_or_books_is_held_back(line: str) -> None:
    bulletin = parse(f"{HEAD}Insert wreck {P}\n{line}\nDelete rock {Q}\n")
    assert told(bulletin) == [("insert", "wreck", [AT_P])]
    assert "item-of-book" in errors(bulletin)


class TestCancelled:
    """Notices that a head says are cancelled."""

    @pytest.mark.parametrize(
        "head",
        [
            "215/26 QUILL SOUND STOP NOTICE 90(T)/26\nCANCELLED STOP",
            "215/26 Quill Sound - Notice 90(T)/26\nis cancelled.",
            "No. 215 of 2026.   QUILL SOUND.   Notice No. 90 (Temporary) of 2026 is cancelled.",
            "Sheet 9 of 2026\n====\n2026/215\nQuill Sound, reef. Notice 2026/90(T) is annulled.",
        ],
    )
    def test_in_every_form(self, head: str) -> None:
        notices = parse(f"{head}\nChart 802 [3/26]\nInsert wreck {P}\n").notices
        cancelled = notices[-1].cancels
        assert [(one.number, one.year, one.status) for one in cancelled] == [
            (90, 2026, "temporary")
        ]

    def test_a_sentence_further_down_is_not_taken_into_the_heading(self) -> None:
        text = f"{HEAD}Insert wreck {P}\nNotice 3(T)/26 is cancelled.\nDelete rock {Q}\n"
        (notice,) = parse(text).notices
        assert notice.heading == "Quill Sound"
        assert [one.number for one in notice.cancels] == [3]


@pytest.mark.parametrize(
    ("chart", "panel", "line", "told_below"),
    [
        ("Chart 802 (Plan A: Port Ellory) [3/26]", "Plan A", "Main chart", None),
        ("Chart 802 (INT 9802), plan B [3/26] WGS84", "plan B", "Plan C", "Plan C"),
    ],
)
def test_another_panel_is_of_the_same_chart(
    chart: str, panel: str, line: str, told_below: str | None
) -> None:
    text = f"12/26 Quill Sound.\n{chart}\nInsert wreck {P}\n{line}\nDelete rock {Q}\n"
    sections = parse(text).notices[0].charts
    assert [(one.chart, one.panel) for one in sections] == [("802", panel), ("802", told_below)]
    assert [one.previous.number for one in sections] == [3, 3]
