"""Areas in which one word forbids several things."""

from __future__ import annotations

import pytest

from noticeparse.readers.features import read_feature


@pytest.mark.parametrize(
    ("phrase", "codes"),
    [
        ("restricted area, anchoring and fishing prohibited", {1, 3}),
        ("anchoring and fishing prohibited area", {1, 3}),
        ("restricted area, anchoring and trawling prohibited", {1, 5}),
        ("area, anchoring, fishing and diving prohibited", {1, 3, 11}),
        ("entry and anchoring prohibited area", {1, 7}),
        ("restricted area (anchoring and fishing prohibited)", {1, 3}),
        ("restricted area, no anchoring or fishing", {1, 3}),
        ("no anchoring or trawling area", {1, 5}),
        ("fishing/anchoring prohibited area", {1, 3}),
        ("restricted area, diving prohibited", {11}),
    ],
)
def test_all_that_is_forbidden_is_read(phrase: str, codes: set[int]) -> None:
    feature, faults = read_feature(phrase)
    assert (feature.kind, feature.s57) == ("restricted_area", ["RESARE"])
    assert set(feature.attributes["RESTRN"]) == codes  # type: ignore[arg-type]
    assert not faults


@pytest.mark.parametrize(
    ("phrase", "codes"),
    [
        ("swimming and fishing prohibited area", [3]),
        ("restricted area, swimming or fishing prohibited", [3]),
        ("restricted area, anchoring, fishing and mooring prohibited", None),
        ("restricted area, anchoring and fishing restricted", None),
    ],
)
def test_what_has_no_code_is_told(phrase: str, codes: list[int] | None) -> None:
    feature, faults = read_feature(phrase)
    assert feature.attributes.get("RESTRN") == codes
    assert {fault.code for fault in faults} == {"feature-words-unread"}


def test_one_restriction_keeps_its_kind() -> None:
    assert read_feature("area, anchoring prohibited").feature.kind == "anchoring_prohibited"
    assert read_feature("anchorage and fishing harbour").feature.attributes.get("RESTRN") is None
