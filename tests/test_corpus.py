"""Every bulletin of the corpus gives its expected JSON and agrees with the truth by hand."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

import noticeparse
from tests import corpus_truth
from tests.corpus_files import CLEAN, FAULTY, TEXTS, name_of


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
