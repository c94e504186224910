"""A check reports and never alters: every record is the same behind all checks as before them."""

from __future__ import annotations

from pathlib import Path

import pytest

from noticeparse import parse
from noticeparse.checks import CHECKS, check_notice

CORPUS = Path(__file__).parents[1] / "corpus_synthetic"
FILES = sorted(CORPUS.rglob("*.txt"))


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_records_stay_as_they_were(path: Path) -> None:
    notices = parse(path.read_text("utf-8")).notices
    before = [notice.model_dump() for notice in notices]
    for notice in notices:
        for check in CHECKS:
            list(check(notice))
        for region in ("A", "B", None):
            check_notice(notice, "", notices, region=region)  # type: ignore[arg-type]
    assert [notice.model_dump() for notice in notices] == before


def test_there_is_a_corpus() -> None:
    assert FILES
