"""`noticeparse fuzz` against an endpoint over HTTP."""

from __future__ import annotations

import json
import threading
from collections.abc import Iterator
from http.server import BaseHTTPRequestHandler, HTTPServer

import pytest

from noticeparse.testing.answering import answer
from noticeparse.testing.targets import TOKEN, HttpTarget
from tests.command import invoke


class Endpoint(BaseHTTPRequestHandler):
    """A small service in the form of ours: `results`, a token, and a path that is out of order."""

    token: str | None = None

    def do_POST(self) -> None:
        body = json.loads(self.rfile.read(int(self.headers["Content-Length"])))
        if self.token and self.headers.get("Authorization") != f"Bearer {self.token}":
            return self._send(401, '{"title": "a token is needed"}')
        kind = self.path.removeprefix("/v1/")
        if kind == "parse":
            return self._send(200, answer("notices", body["text"]))
        if kind not in ("positions", "lights", "depths"):
            return self._send(503, "out of order")
        return self._send(200, f'{{"results": [{answer(kind, body["text"])}]}}')  # type: ignore[arg-type]

    def _send(self, status: int, words: str) -> None:
        self.send_response(status)
        self.end_headers()
        self.wfile.write(words.encode())

    def log_message(self, format: str, *args: object) -> None:
        del format, args


@pytest.fixture
def service() -> Iterator[str]:
    server = HTTPServer(("127.0.0.1", 0), Endpoint)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    yield f"http://127.0.0.1:{server.server_address[1]}"
    server.shutdown()
    server.server_close()


class TestEndpoint:
    """An endpoint over HTTP."""

    @pytest.mark.parametrize("kind", ["positions", "notices"])
    def test_a_good_one(self, service: str, kind: str) -> None:
        given = ("--only", "as-it-is", "--examples", "4", "--target", service)
        result = invoke("fuzz", kind, *given)
        assert result.exit_code == 0, result.stdout
        assert f"{service}/v1/" in result.stderr

    def test_a_token_is_sent(self, service: str, monkeypatch: pytest.MonkeyPatch) -> None:
        monkeypatch.setattr(Endpoint, "token", "kelp")
        given = ("fuzz", "lights", "--only", "as-it-is", "--examples", "2", "--target", service)
        result = invoke(*given)
        assert result.exit_code == 2
        assert "HTTP status 401" in result.stderr
        monkeypatch.setenv(TOKEN, "kelp")
        assert invoke(*given).exit_code == 0
        shown = HttpTarget("lights", service, 5).reproduction("Fl.R.5s")
        assert "kelp" not in shown
        assert f"Bearer ${TOKEN}" in shown

    def test_one_out_of_order(self, service: str) -> None:
        result = invoke("fuzz", "depths", "--target", f"{service}/v2/depths")
        assert result.exit_code == 2
        assert "HTTP status 503: out of order" in result.stderr

    @pytest.mark.parametrize("url", ["http://127.0.0.1:1", "http://127.0.0.1:x/", "http://["])
    def test_no_one_there(self, url: str) -> None:
        result = invoke("fuzz", "depths", "--target", url)
        assert result.exit_code == 2
        assert "the target does not answer" in result.stderr
