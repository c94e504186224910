"""The limits of the HTTP service: size, time, how many at once, and who goes away meanwhile."""

from __future__ import annotations

import os
import signal
import threading
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from pathlib import Path

import anyio
import httpx2
import pytest
from starlette.types import Message, Receive, Scope, Send

from noticeparse.testing.generator import generate
from noticeparse.web import guard
from noticeparse.web.answers import PacedAnswer
from noticeparse.web.problems import Problem, Refused
from noticeparse.web.room import Room
from noticeparse.web.settings import LARGE, ServiceSettings
from noticeparse.web.work import Answer, Job
from noticeparse.web.workers import Workers
from tests.command import GOOD
from tests.service import PLAIN, SMALL, client_of, connected, refused, until


@pytest.fixture(scope="module")
def large() -> bytes:
    """A body that takes some time."""
    return generate(1, size_bytes=190_000, layouts=("notice_first",)).text.encode()[:195_000]


@pytest.fixture
def begun(monkeypatch: pytest.MonkeyPatch) -> threading.Event:
    """Set when a worker of any service begins with a job."""
    event = threading.Event()
    run = Workers._run

    async def told(self: Workers, job: Job) -> Answer | Problem:
        event.set()
        return await run(self, job)

    monkeypatch.setattr(Workers, "_run", told)
    return event


def head(length: str, *more: str) -> bytes:
    lines = (
        "POST /v1/parse HTTP/1.1",
        "Host: localhost",
        "Content-Type: text/plain",
        length,
        *more,
    )
    return "\r\n".join((*lines, "", "")).encode()


class TestSize:
    """Bodies that are too large."""

    def test_stated_length(self, narrow: httpx2.Client) -> None:
        answer = narrow.post("/v1/parse", content=b"x" * 200_001, headers=PLAIN)
        assert "200000" in refused(answer, "body-too-large")["detail"]
        assert narrow.post("/v1/depths", content=b"8m\n" * 100, headers=PLAIN).status_code == 200

    def test_no_stated_length(self, narrow: httpx2.Client) -> None:
        def pieces() -> Iterator[bytes]:
            for _ in range(30):
                yield b"x" * 10_000

        refused(narrow.post("/v1/parse", content=pieces(), headers=PLAIN), "body-too-large")

    @pytest.mark.parametrize("figures", ["99999999999", "9" * 400, "0" * 50 + "300000"])
    def test_refused_before_the_body_comes(self, narrow: httpx2.Client, figures: str) -> None:
        with connected(narrow) as raw:
            raw.sendall(head(f"Content-Length: {figures}", "Expect: 100-continue"))
            answer = raw.recv(999)
        # A length that no machine can hold is no HTTP at all.
        assert answer.startswith((b"HTTP/1.1 413 ", b"HTTP/1.1 400 "))

    def test_most_that_is_taken(self, narrow: httpx2.Client) -> None:
        body = GOOD.encode().ljust(200_000)
        assert narrow.post("/v1/parse", content=body, headers=PLAIN).status_code == 200


class TestTime:
    """What takes too long."""

    def test_body_that_does_not_come(self, narrow: httpx2.Client) -> None:
        with connected(narrow) as raw:
            raw.sendall(head("Content-Length: 100") + b"2417/26")
            assert raw.recv(999).startswith(b"HTTP/1.1 408 ")

    def test_reading(self, large: bytes) -> None:
        with client_of(ServiceSettings(read_seconds=0.5, workers=1)) as client:
            answer = client.post("/v1/parse", content=large * 10, headers=PLAIN)
        refused(answer, "took-too-long")
        assert "retry-after" not in answer.headers

    def test_answer_that_nobody_takes_in(self) -> None:
        left: list[bool] = []
        sent: list[Message] = []

        async def app(scope: Scope, receive: Receive, send: Send) -> None:
            answer = PacedAnswer(b"x" * 200_000, "text/plain", 0.05, lambda: left.append(True))
            await answer(scope, receive, send)

        async def send(message: Message) -> None:
            sent.append(message)
            if len(sent) == 3:
                await anyio.sleep_forever()

        async def receive() -> Message:
            return {"type": "http.request"}

        scope = {"type": "http", "method": "GET", "path": "/", "headers": []}
        passage = guard.Guard(app, settings=SMALL, paths=())
        # In a thread: the tests of the page leave a loop of their own in this one.
        with ThreadPoolExecutor(1) as threads:
            threads.submit(anyio.run, passage, scope, receive, send).result()
        assert left == [True]
        assert len(sent) == 3


class TestMany:
    """More requests than there is room for."""

    def test_one_address_cannot_take_all(self) -> None:
        with client_of(SMALL._replace(workers=1, arrive_seconds=60.0)) as client:
            waiting = [connected(client) for _ in range(3)]
            for raw in waiting:
                raw.sendall(head("Content-Length: 100", "Expect: 100-continue"))
                # From here on it has a place, and its body is waited for.
                assert raw.recv(999).startswith(b"HTTP/1.1 100 ")
            answer = client.post("/v1/parse", content=GOOD, headers=PLAIN)
            refused(answer, "too-many-requests")
            assert answer.headers["retry-after"] == "2"
            assert client.get("/healthz").status_code == 200
            for raw in waiting:
                raw.close()
            until(lambda: client.post("/v1/depths", json={"text": "8m"}).status_code == 200)

    def test_all_places_taken(self) -> None:
        room = Room(SMALL)
        with room.place("a"), room.place("a"), room.place("b"), room.place("b"):
            with pytest.raises(Refused) as caught, room.place("c"):
                pass
            assert caught.value.problem.status == 503
            assert caught.value.problem.headers
        assert (room.taken, room.held) == (0, 0)

    def test_bytes_are_counted(self) -> None:
        room = Room(SMALL)
        with room.place("a") as first, room.place("b") as second:
            first.hold(400_000)
            assert room.held == 4_400_000  # with the answer that is to be expected
            first.hold_instead(9_000_000)
            assert room.held == 9_000_000
            with pytest.raises(Refused) as caught:
                second.hold(LARGE + 1)
            assert caught.value.problem.status == 503
            with room.place("c") as small:
                small.hold(LARGE)  # nobody's large answer keeps a small body out
        assert room.held == 0

    def test_large_body_stalls_no_small_one(
        self, client: httpx2.Client, large: bytes, begun: threading.Event
    ) -> None:
        body = large * 2
        with ThreadPoolExecutor(4) as pool:
            slow = [
                pool.submit(client.post, "/v1/parse", content=body, headers=PLAIN)
                for _ in range(2)
            ]
            assert begun.wait(60)
            for _ in range(10):
                assert client.post("/v1/depths", json={"text": "8m"}).status_code == 200
            assert not any(one.done() for one in slow)
        assert [one.result().status_code for one in slow] == [200, 200]

    def test_no_worker_is_free(self, large: bytes, begun: threading.Event) -> None:
        one = SMALL._replace(workers=1, wait_seconds=0.1, read_seconds=60)
        with client_of(one) as client, ThreadPoolExecutor(1) as pool:
            slow = pool.submit(client.post, "/v1/parse", content=large, headers=PLAIN)
            assert begun.wait(60)
            answer = client.post("/v1/depths", json={"text": "8m"})
            refused(answer, "busy")
            assert answer.headers["retry-after"] == "2"
            assert slow.result().status_code == 200


class TestGone:
    """Clients and workers that go away."""

    def test_cut_while_reading_frees_the_worker(
        self, client: httpx2.Client, large: bytes, begun: threading.Event
    ) -> None:
        body = large * 40
        for _ in range(2):
            begun.clear()
            with connected(client) as raw:
                raw.sendall(head(f"Content-Length: {len(body)}") + body)
                assert begun.wait(60)
                time.sleep(0.5)
        # Each of the two would have kept the lane of the large for a minute.
        answer = client.post("/v1/parse", content=large, headers=PLAIN)
        assert answer.status_code == 200

    def test_cut_in_the_body(self, narrow: httpx2.Client) -> None:
        for _ in range(8):
            with connected(narrow) as raw:
                raw.sendall(head("Content-Length: 100") + b"2417")
        until(lambda: narrow.post("/v1/depths", json={"text": "8m"}).status_code == 200)

    def test_worker_that_is_killed(self, large: bytes, begun: threading.Event) -> None:
        alone = ServiceSettings(workers=1)
        others = children()
        with client_of(alone) as client, ThreadPoolExecutor(1) as pool:
            (worker,) = children() - others
            slow = pool.submit(client.post, "/v1/parse", content=large * 5, headers=PLAIN)
            assert begun.wait(60)
            time.sleep(0.5)
            os.kill(worker, signal.SIGKILL)
            refused(slow.result(), "reader-lost")
            assert client.post("/v1/depths", json={"text": "8m"}).status_code == 200
            last = children() - others
            assert last
        until(lambda: not last & children())  # workers end with their service


def children() -> set[int]:
    """The processes that this one has begun."""
    if not Path("/proc/self/task").exists():
        pytest.skip("the system tells of its processes in another way")
    found: set[int] = set()
    for task in Path("/proc/self/task").iterdir():
        with suppress(FileNotFoundError):  # a thread may end meanwhile
            found |= {int(pid) for pid in (task / "children").read_text().split()}
    return found
