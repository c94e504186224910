"""The number of a notice and of the notice before, in the forms in which offices write them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.readers.references import read_number
from tests.short_notices import P

EDITION = "TAVRENNE ISLANDS (INVENTED)\nWeekly Edition 12/2026, 20 March 2026\n\n"
BODY = f"Chart 802 [30/26] WGS84\nInsert wreck {P}\n"

PERMANENT = (
    "41/26", "0041/2026", "#41/26", "N° 41/2026", "No41/26", "NM41/2026", "N.M. 41/26",
    "N. to M. 41/26", "Ntm nr. 41/26", "NTM/41/26", "NTM 41-2026", "A41/26", "PE 41/26",
    "PE-41/26", "Serial 41/26", "Notice No.41/26", "Notice Number: 41/26", "Notice 41 / 2026",
    "Notice 41 - 2026", "Notice 41, 2026", "Notice 41 (2026)", "Notice: 41 of 2026",
    "Notice to Mariners No 41 of the year 2026", "Notice number 41 year 2026",
    "2026/41", "Notice 2026-41", "NM 2026/041", "Notice 41", "Notice No 41",
)  # fmt: skip
TEMPORARY = (
    "T 41/26", "41T/26", "41/T/26", "41/26 T", "41/2026/T", "(T) 41/26", "NM(T) 41/26",
    "41 (T)/26", "41(T)-26", "Notice 41 T", "T-41/26", "Notice (T) 41/26", "41 (T) of 2026",
    "Notice 41 (T) (2026)",
)  # fmt: skip


@pytest.mark.parametrize("title", ["\n", "\nQuill Sound - Wreck\n"], ids=["bare", "titled"])
@pytest.mark.parametrize("head", PERMANENT)
def test_permanent(head: str, title: str) -> None:
    (notice,) = parse(EDITION + head + title + BODY).notices
    assert (notice.id, notice.year) == ("41/26", 2026)
    assert [one.chart for one in notice.charts] == ["802"]


@pytest.mark.parametrize("head", TEMPORARY)
def test_temporary(head: str) -> None:
    (notice,) = parse(f"{EDITION}{head}\n{BODY}").notices
    assert (notice.id, notice.status) == ("41(T)/26", "temporary")
    assert [one.verb for one in notice.charts[0].actions] == ["insert"]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("2026/41", (41, 2026)),  # of 2041 no notice is known yet
        ("2026/24", (2026, 2024)),
        ("2417/26", (2417, 2026)),
        ("2026/26", (2026, 2026)),
        ("2026/041", (41, 2026)),
    ],
)
def test_number_behind_its_year(text: str, told: tuple[int, int]) -> None:
    ref = read_number(text, 2026)
    assert ref is not None
    assert (ref.number, ref.year) == told


@pytest.mark.parametrize(
    "words", ["see Notice 41", "Item 41", "Page 41", "Section 41", "Chart 41"]
)
def test_other_numbers_open_no_notice(words: str) -> None:
    ids = [notice.id for notice in parse(f"{EDITION}40/26 Quill Sound\n{BODY}{words}\n").notices]
    assert ids == ["40/26"]


BEFORE = (
    "Chart 802 [30/26]", "Chart 802 (last notice 30 of 2026)", "Chart 802 - last correction 30-26",
    "Chart 802 (NM 30/26)", "Chart 802. Last: 30/26.", "Chart 802 Prev. 30/26",
    "Chart 802 after 30/26", "Chart 802 [previous NM: 30/26]", "Chart 802 (last: No. 30 (2026))",
    "Chart 802 previous notice 2026-30", "Chart 802/INT 9802 [30/26]", "802 [30/26]",
    "802 (INT 9802) [30/26]", "Chart 802 (Last Ntm 30/26)", "Chart 802 amended up to 30/26",
)  # fmt: skip


@pytest.mark.parametrize("head", BEFORE)
def test_notice_before(head: str) -> None:
    (notice,) = parse(f"{EDITION}41/26 Quill Sound\n{head}\nInsert wreck {P}\n").notices
    (chart,) = notice.charts
    assert chart.previous is not None
    assert (chart.chart, chart.previous.number, chart.previous.year) == ("802", 30, 2026)


@pytest.mark.parametrize(
    ("head", "number", "written"),
    [
        ("Chart 802 [Notice 30]", 30, "Notice 30"),
        ("Chart 802 (last correction: Notice 30)", 30, "last correction: Notice 30"),
        ("Chart 802 (last notice Week 9, No. 3)", None, "last notice Week 9, No. 3"),
    ],
)
def test_notice_before_without_its_year(head: str, number: int | None, written: str) -> None:
    (notice,) = parse(f"{EDITION}41/26 Quill Sound\n{head}\nInsert wreck {P}\n").notices
    (chart,) = notice.charts
    assert (chart.previous and chart.previous.number, chart.previous_written) == (number, written)


def test_figure_in_a_head_that_stands_for_nothing_is_told() -> None:
    bulletin = parse(f"{EDITION}41/26 Quill Sound\nChart 802 (30)\nInsert wreck {P}\n")
    assert "chart-head-unread" in [one.code for one in bulletin.findings]


@pytest.mark.parametrize(
    "lines",
    [
        "Source: Port Ellory Notice 57/26\n",
        "Source: Port Ellory Local Warning 57/26\n",
        "Authority: Harbour Master, NtM 57/26.\n",
        "The former position was given in\nNotice 40\nand this is now amended.\n",
        "Source: Harbour Master,\nNotice No. 7\n",
    ],
)
def test_numbers_within_sentences_and_sources_open_no_notice(lines: str) -> None:
    (notice,) = parse(f"{EDITION}41/26 Quill Sound\n{lines}{BODY}").notices
    assert notice.id == "41/26"
    assert [a.verb for one in notice.charts for a in one.actions] == ["insert"]


def test_a_sentence_about_two_notices_opens_none() -> None:
    text = f"{EDITION}41/26 Quill Sound\n{BODY}43/26 amends 39/26\n{BODY.replace('802', '803')}"
    bulletin = parse(text)
    assert [one.id for one in bulletin.notices] == ["41/26"]
    assert [one for one in bulletin.findings if one.severity == "warning"]


LOST = (
    "42(T)26 Port Ellory", "42-2026 Port Ellory", "42.26 Port Ellory", "[42.26] Port Ellory",
    "42 & 43/26 Port Ellory", "T&P 42/26 Port Ellory", "42(T) Port Ellory", "42 Port Ellory",
    "Temp 45/26", "42/ 26 Port Ellory", "4 2/26 Port Ellory", "l42/26 Port Ellory",
    "42(T/26 Port Ellory", "42(7)/26 Port Ellory", "Notice to Mariners 42 for 2026",
)  # fmt: skip


@pytest.mark.parametrize("head", LOST)
def test_what_stands_below_a_head_that_cannot_be_read_is_not_of_the_notice_above(
    head: str,
) -> None:
    text = f"{EDITION}41/26 Quill Sound\n{BODY}\n{head}\n{BODY.replace('802', '803')}"
    bulletin = parse(text)
    above, below = bulletin.notices
    assert (above.id, [one.chart for one in above.charts]) == ("41/26", ["802"])
    assert (below.id, [one.chart for one in below.charts]) == (None, ["803"])
    assert [one.span.line for one in bulletin.findings if one.severity == "error"] == [8]


@pytest.mark.parametrize(
    ("head", "notice_id"),
    [
        ("[ 42/26 ]   PORT ELLORY, Inner Basin.   Buoys", "42/26"),
        ("[42/26] Port Ellory", "42/26"),
        ("( 42/26 ) Port Ellory", "42/26"),
        ("[ NM 42/2026 ] Port Ellory", "42/26"),
        ("[ 42(T)/26 ] Port Ellory", "42(T)/26"),
        ("[42/26]\nPort Ellory - Wreck", "42/26"),
        ("[42/26]", "42/26"),
    ],
)
def test_a_number_in_brackets_opens_a_notice_behind_a_blank_line(
    head: str, notice_id: str
) -> None:
    text = f"{EDITION}[ 41/26 ] Quill Sound\n{BODY}\n{head}\n{BODY.replace('802', '803')}"
    bulletin = parse(text)
    assert [one.id for one in bulletin.notices] == ["41/26", notice_id]
    assert [one.severity for one in bulletin.findings if one.severity != "info"] == []


@pytest.mark.parametrize("blank", ["", "\n"])
def test_a_number_in_brackets_below_a_chart_is_the_notice_before(blank: str) -> None:
    text = f"{EDITION}41/26 Quill Sound\nChart 802\n{blank}[30/26]\nInsert wreck {P}\n"
    (notice,) = parse(text).notices
    (chart,) = notice.charts
    assert chart.previous is not None
    assert chart.previous.number == 30


@pytest.mark.parametrize("words", ["Port Ellory", "2. Port Ellory", "Approaches to Quill 2"])
def test_a_heading_above_another_chart_is_of_the_same_notice(words: str) -> None:
    text = f"{EDITION}41/26 Quill Sound\n{BODY}\n{words}\n{BODY.replace('802', '803')}"
    (notice,) = parse(text).notices
    assert [one.chart for one in notice.charts] == ["802", "803"]


@pytest.mark.parametrize(
    "head",
    [
        "42/26-T Port Ellory", "49/26 T. Quill Sound", "48/26 Quill Sound - Wreck [T]",
        "43/26 Quill Sound (T) - Wreck.", "44/26 Temporary. Quill Sound",
        "45/26 Quill Sound - Wreck - Temporary notice.",
    ],
)  # fmt: skip
def test_a_mark_in_the_heading_is_that_of_the_notice(head: str) -> None:
    (notice,) = parse(f"{EDITION}{head}\n{BODY}").notices
    assert notice.status == "temporary"


def test_titles_of_parts_tell_of_the_notices_below() -> None:
    text = f"41/26 Quill Sound\n{BODY}"
    other = f"42/26 Quill Sound\n{BODY}"
    last = f"43/26 Quill Sound. Notice 30(P)/26 is cancelled.\n{BODY}"
    bulletin = parse(
        f"{EDITION}TEMPORARY NOTICES\n\n{text}\nII. PRELIMINARY NOTICES\n\n{other}\n"
        f"III. NOTICES TO MARINERS\n\n{last}"
    )
    assert [one.id for one in bulletin.notices] == ["41(T)/26", "42(P)/26", "43/26"]


@pytest.mark.parametrize("before", ["30/28", "2026/25", "2026/24"])
def test_a_notice_before_with_a_doubtful_year_is_told(before: str) -> None:
    bulletin = parse(f"{EDITION}41/26 Quill Sound\nChart 802 [{before}]\nInsert wreck {P}\n")
    assert "notice-year-doubtful" in [one.code for one in bulletin.findings]


@pytest.mark.parametrize("before", ["30/26", "30/27", "2026/30", "2026/2025"])
def test_a_notice_before_with_its_year_is_in_no_doubt(before: str) -> None:
    bulletin = parse(f"{EDITION}41/26 Quill Sound\nChart 802 [{before}]\nInsert wreck {P}\n")
    assert "notice-year-doubtful" not in [one.code for one in bulletin.findings]


@pytest.mark.parametrize("number", ["41/28", "2026/25"])
def test_a_notice_with_a_doubtful_year_is_told(number: str) -> None:
    bulletin = parse(f"{EDITION}{number} Quill Sound\n{BODY}")
    assert "notice-year-doubtful" in [one.code for one in bulletin.findings]


def test_a_radio_warning_with_a_hyphen_in_its_number() -> None:
    text = "RADIO WARNING 34-26\nQUILL SOUND.\nPONTOON ADRIFT.\nCANCEL RADIO WARNING 31-26.\n"
    (notice,) = parse(text).notices
    assert (notice.number, notice.year, notice.status) == (34, 2026, "radio_warning")
    assert [one.number for one in notice.cancels] == [31]
