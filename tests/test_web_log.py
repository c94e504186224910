"""The log of the HTTP service: it tells of requests and failures, and never of what was sent."""

from __future__ import annotations

import logging

import httpx2
import pytest

from noticeparse.web import work
from noticeparse.web.problems import Problem
from tests.command import GOOD
from tests.service import PLAIN, refused, until


class TestLog:
    """What is said of a request, and what is not."""

    def test_nothing_of_a_request(
        self, client: httpx2.Client, caplog: pytest.LogCaptureFixture
    ) -> None:
        with caplog.at_level(logging.DEBUG, logger="noticeparse.web"):
            client.post("/v1/parse?name=secretname", content="secrettext", headers=PLAIN)
            client.post("/v1/parse?secretoption=1", content="secrettext", headers=PLAIN)
            client.post("/v1/depths", json={"text": "secrettext", "secretkey": 1})
            client.get("/secretpath")
            client.request("SECRETMETHOD", "/v1/parse")
            until(lambda: len(caplog.messages) >= 5)
        assert "secret" not in caplog.text.lower()
        assert "POST /v1/parse 200, 10 bytes in" in caplog.text
        assert "GET (another path) 404" in caplog.text

    def test_failure_tells_its_place_only(
        self,
        narrow: httpx2.Client,
        caplog: pytest.LogCaptureFixture,
        monkeypatch: pytest.MonkeyPatch,
    ) -> None:
        def failing(*_: object) -> None:
            raise RuntimeError("secrettext")

        monkeypatch.setattr("noticeparse.web.app.kind_of", failing)
        answer = narrow.post("/v1/parse", content="secrettext", headers=PLAIN)
        refused(answer, "internal")
        assert answer.headers["x-content-type-options"] == "nosniff"
        assert "secret" not in caplog.text
        assert "RuntimeError in" in caplog.text
        assert "failing" in caplog.text

    def test_failure_of_a_reader(self, monkeypatch: pytest.MonkeyPatch) -> None:
        def failing(*_: object, **__: object) -> None:
            raise RuntimeError("secrettext")

        monkeypatch.setattr(work, "read_intake", failing)
        found = work.perform(work.Job("notices", GOOD.encode(), False, None, {}))
        assert isinstance(found, Problem)
        assert found.kind == "internal"
        assert "RuntimeError in failing" in found.detail
        assert "secret" not in found.detail
