"""What the HTTP service says to a request that is not right: its JSON, its query, its path."""

from __future__ import annotations

import httpx2
import pytest

from tests.command import GOOD
from tests.service import PLAIN, refused


class TestRefusals:
    """Requests that are not right."""

    @pytest.mark.parametrize(
        ("body", "kind"),
        [
            (b"", "malformed-json"),
            (b"{", "malformed-json"),
            (b'{"text": "\xe9"}', "malformed-json"),
            (b'{"text": "a", "text": "b"}', "malformed-json"),
            (b'{"text": NaN}', "malformed-json"),
            (b'{"text": ' + b"9" * 5000 + b"}", "malformed-json"),
            (b"[" * 200_000, "malformed-json"),
            (b'{"text": ' + b"[" * 100_000 + b"]" * 100_000 + b"}", "malformed-json"),
            (b'{"text": 1e999}', "request-invalid"),
            (b'{"text": 99999999999999999999999}', "request-invalid"),
            (b'{"text": null}', "request-invalid"),
            (b'{"text": " "}', "request-invalid"),
            (b'{"text": "a", "as_of": "2026-02-30"}', "request-invalid"),
            (b'{"text": "a", "as_of": 20260331}', "request-invalid"),
            (b'{"text": "a", "region": "C"}', "request-invalid"),
            (b'{"text": "a", "format": "pdf"}', "request-invalid"),
            (b'{"text": "a", "name": "\\ud800"}', "request-invalid"),
            (b'{"text": "a", "nmae": "b"}', "request-invalid"),
            (b"[]", "request-invalid"),
            (b"null", "request-invalid"),
        ],
        ids=lambda given: repr(given)[:40],
    )
    def test_json(self, client: httpx2.Client, body: bytes, kind: str) -> None:
        headers = {"Content-Type": "application/json"}
        refused(client.post("/v1/parse", content=body, headers=headers), kind)

    @pytest.mark.parametrize(
        "query", ["region=C", "regoin=A", "region=A&region=B", "as_of=20260331", "as_of=0",
        "as_of=2026-02-30", "format=pdf", "format=", "name=" + "x" * 201],
    )  # fmt: skip
    def test_query(self, client: httpx2.Client, query: str) -> None:
        answer = client.post(f"/v1/parse?{query}", content=GOOD, headers=PLAIN)
        problem = refused(answer, "request-invalid")
        assert problem["errors"][0]["pointer"] == query.partition("=")[0]

    @pytest.mark.parametrize("query", ["name=%ff", "name=%ed%a0%80", "&".join(["a=1"] * 9000)])
    def test_query_that_is_none(self, client: httpx2.Client, query: str) -> None:
        answer = client.post(f"/v1/parse?{query}", content=GOOD, headers=PLAIN)
        refused(answer, "request-invalid")
        assert answer.elapsed.total_seconds() < 1
        assert len(answer.content) < 1000

    def test_very_many_names(self, client: httpx2.Client) -> None:
        given = {f"name {number}": 1 for number in range(100_000)}
        for path in ("/v1/parse", "/v1/depths"):
            answer = client.post(path, json=given)
            refused(answer, "request-invalid")
            assert len(answer.content) < 1000

    def test_place_of_an_error_is_told(self, client: httpx2.Client) -> None:
        answer = client.post("/v1/depths", json={"texts": ["8m", 8], "a/b": 1})
        errors = refused(answer, "request-invalid")["errors"]
        assert {one["pointer"] for one in errors} == {"/texts/1", "/a~1b"}

    @pytest.mark.parametrize(
        "path", ["/v1/nothing", "/v1/parse/", "/static/../app.py", "/static/nothing", "//v1/parse"]
    )
    def test_no_such_path(self, client: httpx2.Client, path: str) -> None:
        refused(client.get(path), "not-found")

    def test_other_methods(self, client: httpx2.Client) -> None:
        for method in ("GET", "PUT", "DELETE", "OPTIONS"):
            answer = client.request(method, "/v1/parse")
            refused(answer, "method-not-allowed")
            assert answer.headers["allow"] == "POST"
        refused(client.post("/static/page.css", content=b"x"), "method-not-allowed")

    def test_parts_of_a_file_are_not_given(self, client: httpx2.Client) -> None:
        whole = client.get("/static/page.css").content
        for part in ("bytes=9999999-", "bytes=a-b", "bytes=0-1,3-4", "lines=1"):
            answer = client.get("/static/page.css", headers={"Range": part})
            assert (answer.status_code, answer.content) == (200, whole)
