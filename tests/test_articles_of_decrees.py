"""Decrees: counted articles and charts, the chart in the sentence that orders, the close."""

from __future__ import annotations

import pytest

from noticeparse import parse
from noticeparse.records.bulletin import Bulletin

P, Q = "47°21'.30S, 123°52'.90W", "47°28'.16S, 124°02'.95W"
HEAD = "NOTICE No. 89/2026\nQuill Sound. Works.\n\n"
CHART = "Chart 802, last amended by Notice No. 71/2026\n\n"


def told(bulletin: Bulletin) -> list[tuple[str | None, int | None, list[str]]]:
    """Each chart with its notice before and the verbs of what may be used."""
    return [
        (
            chart.chart,
            chart.previous and chart.previous.number,
            [one.verb for one in chart.actions if one.usable],
        )
        for one in bulletin.notices
        for chart in one.charts
    ]


def codes(bulletin: Bulletin) -> list[str]:
    return [one.code for one in bulletin.findings if one.severity != "info"]


@pytest.mark.parametrize(
    "count", ["Article 2. ", "Article IV - ", "Art. 2 ", "§ 2. ", "Clause 2: ", "  Paragraph 2. "]
)
def test_the_number_of_an_article_says_nothing_of_its_item(count: str) -> None:
    bulletin = parse(
        f"{HEAD}{CHART}{count}A rock, least depth 2.7 m, shall be inserted in {P}.\n\n"
        f"{count}Delete wreck in {Q}.\n\n"
        f"{count}The following shall be inserted:\n    a) a pile in {P};\n    b) a wreck in {Q}.\n"
    )
    assert told(bulletin) == [("802", 71, ["insert", "delete", "insert", "insert"])]
    assert [one.feature.name for one in bulletin.notices[0].charts[0].actions] == [None] * 4
    assert bulletin.notices[0].remarks == []


def test_an_article_that_tells_and_orders_nothing_is_a_remark() -> None:
    words = "Article 2. Masters will be told when the works are finished."
    bulletin = parse(f"{HEAD}{CHART}Article 1. Delete wreck in {P}.\n\n{words}\n")
    assert told(bulletin) == [("802", 71, ["delete"])]
    assert [one.text for one in bulletin.notices[0].remarks] == [words.removeprefix("Article 2. ")]


@pytest.mark.parametrize(
    "count",
    ["II. ", "II) ", "(II) ", "§ 2 ", "2.1 ", "2 - ", "B - ", "Second. ", "Part II. ", "Part B: ",
     "Section 2 - "],
)  # fmt: skip
def test_a_count_in_front_of_a_chart_leaves_it_the_head_of_what_follows(count: str) -> None:
    bulletin = parse(
        f"{HEAD}I. {CHART}Insert wreck in {P}.\n\n"
        f"{count}Chart 803, last amended by Notice No. 64/2026\n\nDelete rock in {Q}.\n"
    )
    assert told(bulletin) == [("802", 71, ["insert"]), ("803", 64, ["delete"])]
    assert codes(bulletin) == []


def test_a_head_of_a_known_chart_that_is_read_as_prose_is_told() -> None:
    bulletin = parse(
        f"{HEAD}Charts 802 and 803\n\n{CHART}Insert wreck in {P}.\n\n"
        f"Schedule Two. Chart 803, last amended by Notice No. 64/2026\n\nDelete rock in {Q}.\n"
    )
    assert "chart-in-passing" in codes(bulletin)


def test_what_prose_says_of_the_chart_that_it_stands_under_is_not_told() -> None:
    words = "Note. Chart 802, last amended by Notice No. 71/2026, shows the old limits."
    bulletin = parse(f"{HEAD}{CHART}Insert wreck in {P}.\n\n{words}\n\nDelete rock in {Q}.\n")
    assert "chart-in-passing" not in codes(bulletin)


def test_charts_listed_above_their_heads_open_no_further_sections() -> None:
    bulletin = parse(
        f"{HEAD}Charts 802 and 803 [64/26]\n\n{CHART}Insert wreck in {P}.\n\n"
        f"Chart 803 WGS84\n\nDelete rock in {Q}.\n"
    )
    assert told(bulletin) == [("802", 71, ["insert"]), ("803", 64, ["delete"])]


@pytest.mark.parametrize(
    "listed", ["804 [3/26]", "803 [63/26]", "803 (plan A)"],
    ids=["another chart", "another notice before", "a plan"],
)  # fmt: skip
def test_a_listed_chart_of_which_other_things_are_said_is_kept(listed: str) -> None:
    bulletin = parse(
        f"{HEAD}Charts 802 and {listed}\n\n{CHART}Insert wreck in {P}.\n\n"
        f"Chart 803 [64/26] WGS84\n\nDelete rock in {Q}.\n"
    )
    assert "chart-without-actions" in codes(bulletin)


@pytest.mark.parametrize(
    "order",
    [
        "The Harbour Master gives notice that chart 802, last amended by Notice No. 71/2026, is\n"
        "corrected as follows:",
        "Chart No. 802 (last corrected by Notice 71/2026) shall be amended as set out below.",
        "Notice is hereby given that chart 802 (previous notice 71/26) is hereby altered as "
        "follows:",
        "Masters are told that chart 802, last updated by 71/2026, is to be amended in this way.",
        "It is ordered that chart 802, the previous correction to which is 71/2026, be amended.",
        "Chart 802, last amended by Notice 71/26, is hereby amended as follows:",
    ],
)
def test_the_sentence_that_orders_the_correction_tells_the_notice_before(order: str) -> None:
    for heading in ("", "concerning works at Quill, chart 802\n\n"):
        bulletin = parse(f"NOTICE No. 89/2026\n{heading}{order}\n\nInsert wreck in {P}.\n")
        assert told(bulletin) == [("802", 71, ["insert"])]
        assert codes(bulletin) == []


@pytest.mark.parametrize(
    "words",
    [
        "The rock was taken from chart 802, last amended by Notice No. 71/2026.",
        "Chart 802, last amended by Notice No. 71/2026, is not corrected here.",
    ],
)
def test_a_sentence_that_orders_nothing_tells_no_notice_before(words: str) -> None:
    bulletin = parse(f"{HEAD}Chart 802\n\nInsert wreck in {P}.\n\n{words}\n")
    assert bulletin.notices[0].charts[0].previous is None


def test_a_thing_on_a_chart_is_not_its_correction() -> None:
    words = "Chart 802 [71/26], the light in Quill Sound is amended as follows:"
    bulletin = parse(f"NOTICE 89/26 Quill\n{words}\n\nInsert wreck in {P}.\n")
    assert "text-action-lost" in codes(bulletin)


@pytest.mark.parametrize(
    "close",
    [
        "Done at Port Ellory on 5 March 2026.",
        "DONE AT PORT ELLORY ON 5 MARCH 2026",
        "Given at Port Ellory, 5 March 2026.",
        "Given under my hand at Port Ellory this 5th day of March 2026.",
        "Signed at Port Ellory on 5 March 2026",
        "Issued in Port Ellory, the 5th of March 2026.",
    ],
)
def test_place_and_day_of_the_signature_limit_nothing(close: str) -> None:
    bulletin = parse(f"{HEAD}{CHART}Insert wreck in {P}.\n\n{close}\n")
    assert told(bulletin) == [("802", 71, ["insert"])]
    assert codes(bulletin) == []


@pytest.mark.parametrize("words", ["Done on 5 March 2026.", "Done already."])
def test_words_without_the_place_of_a_signature_are_of_the_commands(words: str) -> None:
    bulletin = parse(f"{HEAD}{CHART}Insert wreck in {P}.\n\n{words}\n")
    assert told(bulletin) == [("802", 71, [])]


@pytest.mark.parametrize(
    ("words", "cancelled"),
    [
        ("This notice replaces what was told in Notice No. 29(P)/2026, which is cancelled.", 1),
        ("Notice 29(P)/26, which is hereby cancelled, told of the works.", 1),
        ("The works of Notice 29(P)/26, which is not cancelled, go on.", 0),
        ("Of Notice 29(P)/26, which will be cancelled later, nothing is said.", 0),
    ],
)
def test_a_notice_may_be_named_and_cancelled_in_a_clause_of_its_own(
    words: str, cancelled: int
) -> None:
    bulletin = parse(f"{HEAD}{CHART}Insert wreck in {P}.\n\n{words}\n")
    assert len(bulletin.notices[0].cancels) == cancelled
