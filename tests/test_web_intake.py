"""Files sent to the HTTP service: their text, findings and places, and their records."""

from __future__ import annotations

from typing import Any

import httpx2
import pytest

from noticeparse.caution import CAUTION
from noticeparse.intake import read
from tests.pdf_notices import item
from tests.sent_notices import WHERE
from tests.service import client_of, refused

pytestmark = pytest.mark.usefixtures("in_this_process")


@pytest.fixture(scope="module")
def client() -> Any:
    with client_of() as one:
        yield one


class TestService:
    """The same over HTTP."""

    def test_intake(self, client: httpx2.Client) -> None:
        data = item(f"Delete depth 12‹4› {WHERE}")
        answer = client.post("/v1/intake?name=week.pdf", content=data)
        found = answer.json()
        assert answer.status_code == 200
        assert list(found) == [
            "caution", "name", "media_type", "sha256", "text", "findings", "places"
        ]  # fmt: skip
        assert (found["caution"], found["name"]) == (CAUTION, "week.pdf")
        assert found["media_type"] == "application/pdf"
        assert found["text"] == read(data).text
        assert list(found["places"][0]) == ["start", "end", "page", "x_mm", "y_mm"]
        again = client.post("/v1/parse", json={"text": found["text"]}).json()
        assert (
            again["notices"][0]["charts"][0]["actions"][0]["feature"]["depth"]["value_m"] == 12.4
        )

    def test_findings_and_plain_text(self, client: httpx2.Client) -> None:
        found = client.post("/v1/intake", content=b"<html><p>a<s>b</s>").json()
        assert [one["code"] for one in found["findings"]] == ["text-struck-out"]
        head = {"Content-Type": "application/octet-stream"}
        data = b"charset=cp1252\n47\xb0"
        plain = client.post("/v1/intake", content=data, headers=head).json()
        assert (plain["text"], plain["places"]) == ("charset=cp1252\n47°", [])
        assert [one["code"] for one in plain["findings"]] == ["text-other-encoding"]

    def test_refusals(self, client: httpx2.Client) -> None:
        for data in (b"", b"%PDF-1.7\n", b"\x00" * 99):
            refused(client.post("/v1/intake", content=data), "file-unreadable")
        refused(client.post("/v1/intake?pages=3", content=b"x"), "request-invalid")
        headers = {"Content-Encoding": "gzip"}
        refused(client.post("/v1/intake", content=b"x", headers=headers), "media-type-unsupported")

    def test_parse_takes_a_file_by_its_type(self, client: httpx2.Client) -> None:
        data = item(f"Delete depth 12‹4› {WHERE}")
        headers = {"Content-Type": "application/pdf"}
        found = client.post("/v1/parse?name=week.pdf", content=data, headers=headers).json()
        assert found["source"]["media_type"] == "application/pdf"
        assert found["notices"][0]["charts"][0]["actions"][0]["usable"]
        bad = {"Content-Type": "text/html; charset=iso-8859-1"}
        refused(client.post("/v1/parse", content=b"<p>", headers=bad), "charset-unsupported")
