"""What a file shows goes along with its text, to records and sheets; and who may ask for them."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import httpx2
import pytest

from tests.service import client_of, refused

TEXT = """\
2430/26  TAVRENNE ISLANDS - Quill Sound - Wreck.
Chart 802 [last correction 2429/26] WGS84
Insert wreck 47°18'.05S., 123°44'.20W.
Insert rock 47°18'.15S., 123°44'.20W.
"""


@pytest.fixture(scope="module")
def client() -> Iterator[httpx2.Client]:
    with client_of() as found:
        yield found


def finding(word: str | None) -> dict[str, Any]:
    start = TEXT.index(word) if word else 0
    line = TEXT.count("\n", 0, start) + 1
    span = {"start": start, "end": start + len(word or ""), "line": line, "column": 1}
    return {
        "code": "file-struck-out", "severity": "error", "message": "struck out in the file",
        "hint": None, "span": span if word else None, "notice": None, "chart": None, "paths": [],
    }  # fmt: skip


def test_error_of_the_file_holds_its_action_back(client: httpx2.Client) -> None:
    body = {"text": TEXT, "file_findings": [finding("Insert rock"), finding(None)]}
    bulletin = client.post("/v1/parse", json=body).json()
    actions = bulletin["notices"][0]["charts"][0]["actions"]
    assert [one["usable"] for one in actions] == [True, False]
    told = [one for one in bulletin["findings"] if one["code"] == "file-struck-out"]
    assert [one["paths"] for one in told] == [[], ["/notices/0/charts/0/actions/1"]]


def test_sheet_tells_the_findings_of_the_file(client: httpx2.Client) -> None:
    plain = client.post("/v1/sheet", json={"text": TEXT, "chart": "802"}).text
    body = {"text": TEXT, "chart": "802", "file_findings": [finding("Insert rock"), finding(None)]}
    sheet = client.post("/v1/sheet", json=body).text
    assert "struck out in the file" not in plain
    assert sheet.count("struck out in the file") == 2
    assert "line 4: struck out in the file" in sheet
    assert sheet.count('type="checkbox"') == plain.count('type="checkbox"') - 2


def test_edited_text_is_told_at_the_head(client: httpx2.Client) -> None:
    words = "compare every action with the original notice"
    for edited in (True, False):
        body = {"text": TEXT, "chart": "802", "edited": edited}
        head = client.post("/v1/sheet", json=body).text.partition("</header>")[0]
        assert (words in head) is edited


def test_other_names_of_this_machine_are_refused(client: httpx2.Client) -> None:
    for host in ("evil.com", "evil.com:8000", "127.0.0.1.evil.com", "[::2]"):
        refused(client.get("/", headers={"Host": host}), "forbidden")
    for host in ("localhost", "localhost:99", "127.0.0.1", "[::1]:8000"):
        assert client.get("/healthz", headers={"Host": host}).status_code == 200


def test_posts_from_other_origins_are_refused(client: httpx2.Client) -> None:
    own = str(client.base_url).rstrip("/")
    for origin in ("http://evil.com", "null", f"{own}1"):
        answer = client.post("/v1/depths", json={"text": "3"}, headers={"Origin": origin})
        refused(answer, "forbidden")
    answer = client.post("/v1/depths", json={"text": "3"}, headers={"Origin": own})
    assert answer.status_code == 200
