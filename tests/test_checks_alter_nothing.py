"""A check reports and never alters: every record is the same behind all checks as before them."""

from __future__ import annotations

from pathlib import Path

import pytest

from noticeparse import parse, read_chart_list
from noticeparse.checks import CHECKS
from noticeparse.checks.given import Given, Whole
from noticeparse.checks.running import check_bulletin, check_notice, check_sheets, check_together
from noticeparse.sheets import Sheets
from tests.corpus_files import CORPUS

FILES = sorted(CORPUS.rglob("*.txt"))
SHEETS = Sheets(read_chart_list(CORPUS / "charts.csv"))


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_records_stay_as_they_were(path: Path) -> None:
    text = path.read_text("utf-8")
    bulletin = parse(text)
    notices, before = bulletin.notices, bulletin.model_dump()
    for notice in notices:
        for check in CHECKS:
            list(check(notice))
        for region in ("A", "B", None):
            check_notice(notice, "", notices, region=region)  # type: ignore[arg-type]
    check_sheets(notices, SHEETS)
    check_bulletin(bulletin, Given(text))
    check_together([Whole(bulletin, Given(text))] * 2)
    assert bulletin.model_dump() == before


def test_there_is_a_corpus() -> None:
    assert FILES
