"""Words in brackets in the head of a chart that limit or shift what stands below, and others."""

from __future__ import annotations

import pytest

from noticeparse import parse
from tests.short_notices import HEAD, P, Q, codes, usable_of

NUMBER = "12/26 Quill Sound.\n"
ITEM = f"Insert wreck {P}\n"


@pytest.mark.parametrize(
    "said",
    [
        "(positions to be adjusted by -0.1' lat, +0.2' long)", "(not before 1 October 2026)",
        "(some positions approximate)", "(all depths to be reduced by 1m)", "(longitudes East)",
        "(2nd edition only)", "(if the buoy is charted)",
    ],
)  # fmt: skip
def test_a_limit_in_the_head_holds_the_commands_below_back(said: str) -> None:
    bulletin = parse(f"{NUMBER}Chart 802 [3/26] WGS84 {said}\n{ITEM}")
    assert usable_of(bulletin) == []
    assert "verb-limited-above" in codes(bulletin)


@pytest.mark.parametrize("said", ["not before 1 October 2026", "provisional", "after 3 May 2026"])
def test_a_limit_without_a_bracket_is_told(said: str) -> None:
    bulletin = parse(f"{NUMBER}Chart 802 [3/26] WGS84, {said}\n{ITEM}")
    assert codes(bulletin) & {"verb-limited-above", "verb-dated"}


def test_a_limit_of_one_chart_is_none_of_the_next() -> None:
    heads = f"Chart 802 [3/26] WGS84 (old copies only)\n{ITEM}Chart 803 [4/26] WGS84\n"
    assert usable_of(parse(f"{NUMBER}{heads}Insert rock {Q}\n")) == [("insert", "rock")]


@pytest.mark.parametrize(
    ("said", "code"),
    [
        ("(with effect from 1 September 2026)", "verb-dated"),
        ("(ask the pilots)", "chart-head-unread"),
    ],
)
def test_other_words_in_the_head_are_told(said: str, code: str) -> None:
    bulletin = parse(f"{NUMBER}Chart 802 [3/26] WGS84 {said}\n{ITEM}")
    assert usable_of(bulletin) == [("insert", "wreck")]
    assert code in codes(bulletin)


@pytest.mark.parametrize(
    "said", ["(depths in metres)", "(Port Ellory)", "(INT 9802)", "(plan A)", "(edition 2)"]
)
def test_what_is_read_or_a_name_is_not_told(said: str) -> None:
    bulletin = parse(f"{NUMBER}Chart 802 [3/26] WGS84 {said}\n{ITEM}")
    assert usable_of(bulletin) == [("insert", "wreck")]
    assert not codes(bulletin)


@pytest.mark.parametrize(
    "said",
    [
        "Positions should be moved 0.05 minutes northward to agree with this chart.",
        "All longitudes must be increased by 0.2'.",
        "Add 0.1' to all latitudes.",
        "Depths are to be reduced by 1 m.",
    ],
)
@pytest.mark.parametrize("gap", ["", "\n"], ids=["below", "apart"])
def test_a_sentence_that_shifts_what_is_written_holds_it_back(said: str, gap: str) -> None:
    assert usable_of(parse(f"{HEAD}{ITEM}{gap}{said}\n")) == []


@pytest.mark.parametrize(
    "said",
    [
        "Positions obtained by satellite should be moved 0.05 minutes northward.",
        "Soundings must be corrected for the tide.",
        "The position of the buoy has been moved 0.1 miles north.",
    ],
)
def test_a_sentence_on_other_positions_holds_nothing_back(said: str) -> None:
    assert usable_of(parse(f"{HEAD}{ITEM}\n{said}\n")) == [("insert", "wreck")]
