"""Heads of notices that no word for a notice opens, told by the heading and chart below them."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, errors

ABOVE = f"{HEAD}Insert wreck {P}\n"
BELOW = f"Chart 803 [2/26] WGS84\nDelete rock {Q}\n"
HEADING = "Dunmarrow Point\n"


def _charts(text: str) -> list[tuple[str | None, list[str | None]]]:
    return [(one.id, [chart.chart for chart in one.charts]) for one in parse(text).notices]


@pytest.mark.parametrize(
    "line",
    [
        "Number 18, 2026",
        "No 18, 2026",
        "A. 18/26",
        "(b) 18/26",
        "2) 18/26",
        "Ref: 18/26",
        "Our ref. 18/2026",
        "Reference 18 of 2026",
    ],
)
@pytest.mark.parametrize("heading", [HEADING, "Dunmarrow Point -\nWreck.\n"])
def test_a_number_above_a_heading_and_a_chart_opens_a_notice(line: str, heading: str) -> None:
    text = f"{ABOVE}\n{line}\n{heading}{BELOW}"
    assert _charts(text) == [("12/26", ["802"]), ("18/26", ["803"])]
    (_, notice) = parse(text).notices
    assert notice.heading == " ".join(heading.split()).rstrip(".")
    assert not errors(parse(text))


@pytest.mark.parametrize(
    "line", ["NEXT NOTICE", "Next notice:", "Another notice", "No. 318", "18(T)26", "18-26"]
)
@pytest.mark.parametrize("heading", [HEADING, ""], ids=["heading", "chart"])
def test_a_notice_whose_number_is_lost_is_not_that_above(line: str, heading: str) -> None:
    text = f"{ABOVE}\n{line}\n{heading}{BELOW}"
    assert _charts(text) == [("12/26", ["802"]), (None, ["803"])]
    assert "text-action-lost" in errors(parse(text))


def test_a_reference_right_above_a_chart_is_told() -> None:
    assert "text-action-lost" in errors(parse(f"{ABOVE}\nRef: 18/26\n{BELOW}"))


@pytest.mark.parametrize(
    "between",
    [
        f"\n{HEADING}",
        "Ref: 18/26\nDunmarrow Point\n",
        "\nRef: 18/26\n\n",
        f"\nRef: 18/26\nInsert rock {Q}\n",
    ],
    ids=["a heading alone", "no blank line", "a blank line below", "an item below"],
)
def test_what_opens_no_notice(between: str) -> None:
    assert _charts(f"{ABOVE}{between}{BELOW}") == [("12/26", ["802", "803"])]
    assert not errors(parse(f"{ABOVE}{between}{BELOW}"))
