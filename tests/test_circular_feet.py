"""Circulars: charts in sentences below or above items, other stars, counts before a stroke."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import P, Q, actions_of, codes, errors, told

HEAD = "HARBOUR CIRCULAR 41 OF 2026\nNew marks in Quill Sound          12 May 2026\n\n"
ITEMS = (
    f"(i)   Insert a wreck at {P};\n(ii)  Amend the name of the beacon Ellory to Quill at {Q}.\n"
)


@pytest.mark.parametrize(
    "foot",
    [
        "To be entered on chart 802 (preceding circular 38 of 2026).",
        "To be applied to chart 802 (38/26).",
        "For entry on chart 802 (38/26).",
        "All on chart 802 (38/26).",
        "To be entered on chart 802 (preceding\ncircular 38 of 2026).",
    ],
)
def test_a_sentence_below_the_items_names_their_chart(foot: str) -> None:
    bulletin = parse(f"{HEAD}{ITEMS}{foot}\n")
    ((chart,),) = [notice.charts for notice in bulletin.notices]
    assert (chart.chart, chart.previous and chart.previous.number) == ("802", 38)
    named = chart.actions[1]
    assert [(one.property, one.new) for one in named.changes] == [("name", "Quill")]  # type: ignore[union-attr]
    assert errors(bulletin) == set()


def test_before_its_items_it_is_a_command() -> None:
    bulletin = parse(f"{HEAD}To be entered on chart 802:\n(i)  wreck {P}\n(ii)  rock {Q}\n")
    assert [(verb, kind) for verb, kind, _ in told(bulletin)] == [
        ("insert", "wreck"), ("insert", "rock"),
    ]  # fmt: skip


@pytest.mark.parametrize("star", ["*", "★", "☆", "✱", "＊"])
def test_the_star_of_original_information(star: str) -> None:
    text = f"{star} 1841/26.  QUILL SOUND - Wreck.\n\nChart 802 [12/26]\nInsert wreck {P}\n"
    (notice,) = parse(text).notices
    assert (notice.id, notice.original_information) == ("1841/26", True)


@pytest.mark.parametrize("verb", ["ADD", "REMOVE", "Insert", "Delete"])
def test_a_count_before_a_stroke_is_a_label(verb: str) -> None:
    bulletin = parse(
        f"NM 388/26 QUILL SOUND\nCHT 802 PREV 361/26\n1/ {verb} WRECK {P}\n2/ {verb} ROCK {Q}\n"
    )
    assert [(action.label, action.usable) for action in actions_of(bulletin)] == [
        ("1", True), ("2", True),
    ]  # fmt: skip
    assert "verb-within-words" not in codes(bulletin)


HEADINGS = [
    ("To be inserted on chart 802:", "insert"),
    ("To be deleted from chart 802 [12/26]:", "delete"),
    ("The following are to be inserted on chart 802:", "insert"),
    ("The following items have been deleted from the chart 802:", "delete"),
]


@pytest.mark.parametrize(("heading", "verb"), HEADINGS)
def test_a_sentence_that_names_the_chart_heads_the_items_below(heading: str, verb: str) -> None:
    bulletin = parse(f"17/26 Quill Sound\n\n{heading}\n(i)  wreck {P}\n(ii)  rock {Q}\n")
    assert [(one, kind) for one, kind, _ in told(bulletin)] == [(verb, "wreck"), (verb, "rock")]
    assert [chart.chart for chart in bulletin.notices[0].charts] == ["802"]
    assert errors(bulletin) == set()


@pytest.mark.parametrize("mark", ["(i)  ", "- ", "* ", ""])
@pytest.mark.parametrize(
    "heading",
    [
        "The following has been found on chart 802 of late.",
        "Marks have been laid in the following positions:",
        "Notice is hereby given that the following marks have been moved:",
    ],
)
def test_entries_of_a_list_whose_command_is_not_seen_are_told(heading: str, mark: str) -> None:
    bulletin = parse(f"17/26 Quill Sound\n\n{heading}\n{mark}wreck {P}\n{mark}rock {Q}\n")
    assert not any(action.usable for action in actions_of(bulletin))
    assert errors(bulletin)
