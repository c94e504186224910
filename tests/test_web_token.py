"""An HTTP service that asks for a token: who is let in, and what is open to everybody."""

from __future__ import annotations

import inspect
from collections.abc import Iterator

import httpx2
import pytest

from noticeparse.web import guard
from noticeparse.web.settings import ServiceSettings
from tests.service import PLAIN, client_of, refused

TOKEN = "a-token-of-the-tests"


@pytest.fixture(scope="module")
def guarded() -> Iterator[httpx2.Client]:
    """A client of a service that asks for a token; it sends none by itself."""
    with client_of(ServiceSettings(token=TOKEN, workers=1)) as client:
        yield client


class TestToken:
    """A service that asks for a token."""

    def test_right(self, guarded: httpx2.Client) -> None:
        for scheme in ("Bearer", "bearer"):
            headers = {"Authorization": f"{scheme} {TOKEN}"}
            answer = guarded.post("/v1/depths", json={"text": "8m"}, headers=headers)
            assert answer.status_code == 200

    @pytest.mark.parametrize(
        "given", ["", "Bearer", "Bearer x", f"Bearer {TOKEN}x", f"Bearer {TOKEN[:-1]}",
        f"Basic {TOKEN}", TOKEN, "Bearer \u00fc"],
    )  # fmt: skip
    def test_wrong(self, guarded: httpx2.Client, given: str) -> None:
        headers = {"Authorization": given.encode("latin-1"), **PLAIN}
        answer = guarded.post("/v1/parse", content=b"x" * 300_000, headers=headers)
        refused(answer, "unauthorized")
        assert answer.headers["www-authenticate"].startswith('Bearer realm="noticeparse"')
        assert ("invalid_token" in answer.headers["www-authenticate"]) == (
            given.startswith("Bearer")
        )

    @pytest.mark.parametrize("path", ["/v1/schema", "/v1/findings", "/v1/nothing", "/v1/parse"])
    def test_all_below_v1(self, guarded: httpx2.Client, path: str) -> None:
        refused(guarded.get(path), "unauthorized")

    @pytest.mark.parametrize("path", ["/", "/docs", "/healthz", "/openapi.json"])
    def test_pages_and_health_are_open(self, guarded: httpx2.Client, path: str) -> None:
        assert guarded.get(path).status_code == 200

    def test_document_says_so(self, guarded: httpx2.Client, client: httpx2.Client) -> None:
        document = guarded.get("/openapi.json").json()
        assert document["paths"]["/v1/parse"]["post"]["security"] == [{"token": []}]
        assert "401" in document["paths"]["/v1/schema"]["get"]["responses"]
        assert "security" not in document["paths"]["/healthz"]["get"]
        assert "securitySchemes" not in client.get("/openapi.json").json()["components"]

    def test_compared_in_constant_time(self) -> None:
        source = inspect.getsource(guard)
        assert "hmac.compare_digest(" in source
        assert "== token" not in source
