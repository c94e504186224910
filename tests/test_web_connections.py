"""Connections to the HTTP service that say nothing, too little, too much, or no HTTP."""

from __future__ import annotations

import json
import socket
import time
from collections.abc import Iterator

import httpx2
import pytest

from noticeparse.web.guard import SAFETY
from noticeparse.web.problems import KINDS
from noticeparse.web.settings import ServiceSettings
from tests.service import client_of, connected, until

TIGHT = ServiceSettings(head_seconds=0.5, workers=1, connections=6, connections_of_one=5)
LINE = b"POST /v1/depths HTTP/1.1\r\nHost: localhost\r\nContent-Type: text/plain\r\n"
WHOLE = LINE + b"Content-Length: 2\r\n\r\n8m"


@pytest.fixture(scope="module")
def tight() -> Iterator[httpx2.Client]:
    """A client of a service that is soon tired of a connection."""
    with client_of(TIGHT) as client:
        yield client


def all_of(raw: socket.socket) -> bytes:
    """What comes until the other side closes."""
    found = b""
    while piece := raw.recv(65536):
        found += piece
    return found


def is_problem(answer: bytes, kind: str) -> bool:
    """Whether the answer, to its end, is a problem of the kind."""
    head, _, body = answer.partition(b"\r\n\r\n")
    lines = head.decode().split("\r\n")
    headers = {name.lower(): value for name, _, value in (line.partition(": ") for line in lines)}
    status = KINDS[kind][0]
    return (
        lines[0].startswith(f"HTTP/1.1 {status} ")
        and headers["content-type"] == "application/problem+json"
        and all(headers[name.lower()] == value for name, value in SAFETY.items())
        and json.loads(body)["type"] == f"urn:noticeparse:problem:{kind}"
    )


class TestNoHttp:
    """What cannot be read as a request."""

    @pytest.mark.parametrize(
        "sent",
        [
            b"\0\0\0 nonsense\r\n\r\n",
            b"GET /healthz HTTP/1.1\r\n\r\n",
            b"GET /\xff HTTP/1.1\r\nHost: localhost\r\n\r\n",
            LINE + b"Content-Length: 2\r\nContent-Length: 3\r\n\r\n8m",
            LINE + b"Content-Length: -2\r\n\r\n8m",
            LINE + b"Transfer-Encoding: gzip\r\n\r\n8m",
            LINE + b"Transfer-Encoding: chunked\r\n\r\nZZ\r\n8m\r\n0\r\n\r\n",
        ],
    )
    def test_refused(self, client: httpx2.Client, sent: bytes) -> None:
        with connected(client) as raw:
            raw.sendall(sent)
            assert is_problem(all_of(raw), "bad-request")

    def test_head_without_end(self, client: httpx2.Client) -> None:
        with connected(client) as raw:
            raw.sendall(b"GET / HTTP/1.1\r\nX: " + b"a" * 66_000)
            assert is_problem(raw.recv(65536), "bad-request")

    def test_behind_a_good_request(self, client: httpx2.Client) -> None:
        with connected(client) as raw:
            raw.sendall(WHOLE + b"\0\0 nonsense\r\n\r\n")
            answer = all_of(raw)
        assert answer.startswith(b"HTTP/1.1 200 ")
        good, bad = answer.split(b"HTTP/1.1 400 ")
        assert b'"value_m":8' in good
        assert is_problem(b"HTTP/1.1 400 " + bad, "bad-request")

    def test_behind_a_request_under_way(self, client: httpx2.Client) -> None:
        with connected(client) as raw:
            raw.sendall(LINE + b"Transfer-Encoding: chunked\r\n\r\n2\r\n8m\r\n")
            time.sleep(0.2)
            raw.sendall(b"no chunk\r\n")
            assert is_problem(all_of(raw), "bad-request")


class TestIdle:
    """Connections that hold a place without asking for something."""

    def test_nothing_said(self, tight: httpx2.Client) -> None:
        with connected(tight) as raw:
            assert all_of(raw) == b""

    def test_head_in_drops(self, tight: httpx2.Client) -> None:
        with connected(tight) as raw:
            begin = time.monotonic()
            raw.settimeout(0.05)
            answer = b""
            while not answer and time.monotonic() < begin + 60:
                raw.sendall(b"G")
                try:
                    answer = raw.recv(65536)
                except TimeoutError:
                    continue
        assert is_problem(answer, "head-too-slow")

    def test_body_in_drops_behind_its_answer(self, tight: httpx2.Client) -> None:
        with connected(tight) as raw:
            raw.sendall(b"GET /healthz HTTP/1.1\r\nHost: localhost\r\nContent-Length: 999\r\n\r\n")
            end = time.monotonic() + 60
            is_open = True
            while is_open and time.monotonic() < end:
                time.sleep(0.05)
                try:
                    raw.sendall(b"x")
                except OSError:
                    is_open = False
        assert not is_open

    def test_request_under_way_is_left_alone(self, tight: httpx2.Client) -> None:
        with connected(tight) as raw:
            raw.sendall(LINE + b"Content-Length: 2\r\n\r\n")
            time.sleep(1.5)
            raw.sendall(b"8m")
            assert raw.recv(65536).startswith(b"HTTP/1.1 200 ")


class TestMany:
    """More connections than a service takes."""

    def test_from_one_address(self) -> None:
        with client_of(TIGHT._replace(head_seconds=60.0)) as client:
            held = [connected(client) for _ in range(TIGHT.connections_of_one)]
            with connected(client) as raw:
                answer = all_of(raw)
            assert is_problem(answer, "too-many-requests")
            assert b"\r\nRetry-After: 2\r\n" in answer
            for one in held:
                one.close()

    def test_in_all(self) -> None:
        few = TIGHT._replace(connections=2, head_seconds=60.0)
        with client_of(few) as client:
            held = [connected(client) for _ in range(2)]
            with connected(client) as raw:
                assert is_problem(all_of(raw), "busy")
            for one in held:
                one.close()
            until(lambda: client.get("/healthz").status_code == 200)
