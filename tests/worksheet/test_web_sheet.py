"""`POST /v1/sheet`: the documents over HTTP, and the problems."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

import httpx2
import pytest

from noticeparse.web.work import Answer, Job, perform
from noticeparse.worksheet.documents import plot_document, sheet_document
from tests.command import BAD
from tests.service import PLAIN, refused
from tests.worksheet.week import LIST, WEEK, chart_list, sheets_of

CHARTS = Path(LIST).read_text("utf-8")
ASKED: dict[str, Any] = {"text": WEEK, "name": "week.txt", "charts": CHARTS, "chart": "803"}


@pytest.mark.parametrize(
    ("form", "is_plot", "media_type"),
    [
        ("html", False, "text/html; charset=utf-8"),
        ("html", True, "text/html; charset=utf-8"),
        ("pdf", False, "application/pdf"),
        ("pdf", True, "application/pdf"),
        ("svg", False, "image/svg+xml"),
    ],
)
def test_documents(client: httpx2.Client, form: str, is_plot: bool, media_type: str) -> None:
    answer = client.post("/v1/sheet", json={**ASKED, "format": form, "plot": is_plot})
    assert answer.status_code == 200, answer.text
    assert answer.headers["content-type"] == media_type
    sheets = sheets_of(WEEK, "803", charts=chart_list())
    write = plot_document if form == "svg" or (form == "pdf" and is_plot) else sheet_document
    assert answer.content == write(sheets, form)


def test_without_a_chart_list_and_without_a_chart(client: httpx2.Client) -> None:
    answer = client.post("/v1/sheet", json={"text": WEEK, "name": None, "charts": None})
    assert answer.content == sheet_document(sheets_of_text(), "html")


def sheets_of_text() -> list[Any]:
    import noticeparse
    from noticeparse.worksheet.collecting import chart_sheets

    return chart_sheets([("text", noticeparse.parse(WEEK))], None)


def test_unusable_action_is_no_failure(client: httpx2.Client) -> None:
    answer = client.post("/v1/sheet", json={"text": BAD, "chart": "802"})
    assert answer.status_code == 200
    assert "Must not be applied" in answer.text


@pytest.mark.parametrize(
    ("changes", "kind", "words"),
    [
        ({"chart": "999"}, "chart-not-touched", "those touched are 803"),
        ({"text": "No chart here."}, "chart-not-touched", "no notice touches"),
        ({"charts": None, "format": "svg"}, "chart-not-plotted", "needs a chart list"),
        ({"charts": None, "format": "pdf", "plot": True}, "chart-not-plotted", "chart list"),
        ({"charts": CHARTS.replace("803", "899"), "format": "svg"}, "chart-not-plotted", "not in"),
        ({"charts": ""}, "chart-list-unusable", ""),
        ({"format": "png"}, "request-invalid", "/format"),
        ({"text": " "}, "request-invalid", "/text"),
        ({"surplus": 1}, "request-invalid", "/surplus"),
    ],
)
def test_problems(client: httpx2.Client, changes: dict[str, Any], kind: str, words: str) -> None:
    problem = refused(client.post("/v1/sheet", json={**ASKED, **changes}), kind)
    assert words in problem["detail"]


def test_plain_text_is_refused(client: httpx2.Client) -> None:
    refused(client.post("/v1/sheet", content=WEEK, headers=PLAIN), "media-type-unsupported")


def test_query_is_refused(client: httpx2.Client) -> None:
    refused(client.post("/v1/sheet?chart=803", json=ASKED), "request-invalid")


def test_missing_package(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "reportlab", None)
    body = b'{"text": "Chart 802 [1/26]\\nInsert rock 46-00.00S 122-00.00W", "format": "pdf"}'
    found = perform(Job("sheet", body, True, None, {}))
    assert not isinstance(found, Answer)
    assert (found.kind, found.status) == ("package-missing", 501)
    assert "noticeparse[sheet]" in found.detail
