"""When a thing was seen or surveyed: no depth and no name of it."""

from __future__ import annotations

import pytest

from noticeparse.readers.features import read_feature


@pytest.mark.parametrize(
    "words", ["wreck, found by the survey of April 2024", "rock, surveyed in 2024"]
)
def test_the_date_of_a_survey_is_no_depth_and_no_name(words: str) -> None:
    feature = read_feature(words, None).feature
    assert (feature.kind, feature.name, feature.depth) == (words.split(",")[0], None, None)


def test_the_year_of_a_report_is_read() -> None:
    feature = read_feature("wreck, reported in April 2024", None).feature
    assert (feature.kind, feature.s57) == ("wreck", ["WRECKS"])
    assert (feature.status, feature.reported_year) == (["reported"], 2024)


@pytest.mark.parametrize(("words", "figure"), [("wreck, April 12", "12"), ("wreck 2024", "2024")])
def test_a_bare_figure_beside_a_thing_is_told(words: str, figure: str) -> None:
    (fault,) = read_feature(words, None).faults
    assert (fault.code, words[fault.start : fault.end]) == ("feature-figure-unclear", figure)
