"""Every bulletin of the corpus gives its expected JSON and agrees with the truth by hand."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

import noticeparse
from tests import corpus_truth
from tests.corpus_files import CLEAN, CORPUS, EDITION, FAULTY, TEXTS, name_of


def read(path: Path) -> dict[str, object]:
    text = path.read_bytes().decode("utf-8")
    return noticeparse.parse(text, name=path.name).model_dump(mode="json")


def test_the_corpus_is_as_large_as_promised() -> None:
    layouts = {path.stem for path in TEXTS}
    truths = [corpus_truth.load(path) for path in TEXTS]
    actions = sum(
        len(chart["actions"])
        for t in truths
        for notice in t["notices"]
        for chart in notice["charts"]
    )
    assert len(TEXTS) >= 24
    assert len(layouts) >= 14
    assert actions >= 350
    assert CLEAN
    assert FAULTY


@pytest.mark.parametrize("path", TEXTS, ids=name_of)
def test_expected_json(path: Path, request: pytest.FixtureRequest) -> None:
    expected = path.with_suffix(".json")
    found = json.dumps(read(path), ensure_ascii=False, indent=1) + "\n"
    if request.config.getoption("--update-golden"):
        expected.write_text(found, "utf-8")
    assert json.loads(found) == json.loads(expected.read_text("utf-8"))


@pytest.mark.parametrize("path", TEXTS, ids=name_of)
def test_truth_by_hand(path: Path) -> None:
    assert list(corpus_truth.differences(read(path), corpus_truth.load(path))) == []


@pytest.mark.parametrize("path", FAULTY, ids=name_of)
def test_planted_faults_are_found(path: Path) -> None:
    assert list(corpus_truth.unreported(read(path), corpus_truth.load(path))) == []


SLIPS = {"48°73'.44S.": "48°15'.44S.", "124°51'.32\n": "124°51'.32W.\n"}
"""The two slips of the demo edition, and what stands there when they are mended."""


def edition(*, is_mended: bool = False) -> noticeparse.Bulletin:
    text = EDITION.read_text("utf-8")
    for slip, mended in SLIPS.items():
        assert text.count(slip) == 1
        text = text.replace(slip, mended) if is_mended else text
    return noticeparse.parse(text, charts=noticeparse.read_chart_list(CORPUS / "charts.csv"))


def test_the_demo_edition_has_two_errors_and_none_when_mended() -> None:
    bulletin = edition()
    errors = [one for one in bulletin.findings if one.severity == "error"]
    planted = corpus_truth.load(EDITION)["findings"]
    assert [one.span.line for one in errors if one.span] == [one["line"] for one in planted]
    assert [one.code for one in errors] == [
        "position-minutes-out-of-range",
        "position-hemisphere-missing",
    ]
    mended = edition(is_mended=True)
    assert [one for one in mended.findings if one.severity == "error"] == []
    actions = [action for n in mended.notices for c in n.charts for action in c.actions]
    assert len(actions) == 79
    assert all(action.usable for action in actions)
    assert all(action.sheet for action in actions), "every chart is in the chart list"
    permanent = [one for one in mended.notices if one.status != "radio_warning"]
    assert (len(permanent), len(mended.notices)) == (40, 43)
    assert {one.status for one in permanent} == {"permanent", "temporary", "preliminary"}


def test_the_demo_edition_is_quiet_when_mended() -> None:
    assert [one for one in edition(is_mended=True).findings if one.severity != "info"] == []


@pytest.mark.parametrize("path", CLEAN, ids=name_of)
def test_clean_text_is_quiet(path: Path) -> None:
    bulletin = read(path)
    findings = bulletin["findings"]
    assert isinstance(findings, list)
    actions = sum(len(c["actions"]) for n in bulletin["notices"] for c in n["charts"])  # type: ignore[attr-defined]
    errors = [finding for finding in findings if finding["severity"] == "error"]
    warnings = [finding for finding in findings if finding["severity"] == "warning"]
    assert errors == []
    assert len(warnings) <= 1 + actions / 50


@pytest.mark.parametrize("path", TEXTS, ids=name_of)
def test_marked_as_invented(path: Path) -> None:
    words = path.read_text("utf-8").lower()
    marks = (
        "invent",
        "imagin",
        "not exist",
        "fictitious",
        "made up",
        "made-up",
        "does not exist",
        "on paper only",
    )
    assert any(mark in words for mark in marks)
    assert "navigat" in words
