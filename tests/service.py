"""The HTTP service of a test: a real server on this machine, in a thread, and a client of it."""

from __future__ import annotations

import socket
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any

import httpx2

from noticeparse.web.problems import KINDS
from noticeparse.web.server import address_of, listen, make_server
from noticeparse.web.settings import ServiceSettings

PLAIN = {"Content-Type": "text/plain"}
SMALL = ServiceSettings(
    max_body=200_000,
    max_held=5_000_000,
    read_seconds=2.0,
    arrive_seconds=1.0,
    wait_seconds=5.0,
    send_seconds=1.0,
    workers=2,
    places=4,
    places_of_one=3,
)


@contextmanager
def served(settings: ServiceSettings | None = None) -> Iterator[str]:
    """The address of a service, which ends with the block."""
    listener = listen("127.0.0.1", 0)
    is_ready = threading.Event()
    server = make_server(settings or ServiceSettings(workers=2), is_ready.set)
    thread = threading.Thread(target=server.run, kwargs={"sockets": [listener]})
    thread.start()
    try:
        assert is_ready.wait(60)
        yield address_of(listener).rstrip("/")
    finally:
        server.should_exit = True
        thread.join(60)
        listener.close()
    assert not thread.is_alive()


@contextmanager
def client_of(settings: ServiceSettings | None = None) -> Iterator[httpx2.Client]:
    """A client of a service of its own."""
    with served(settings) as address, httpx2.Client(base_url=address, timeout=60) as client:
        yield client


def connected(client: httpx2.Client) -> socket.socket:
    """A connection of one's own to the service of a client."""
    host, port = client.base_url.host, client.base_url.port
    assert port is not None
    return socket.create_connection((host, port), timeout=20)


def refused(answer: httpx2.Response, kind: str) -> dict[str, Any]:
    """The problem of an answer, which must be of this kind."""
    assert answer.headers["content-type"] == "application/problem+json", answer.text
    problem: dict[str, Any] = answer.json()
    status, title = KINDS[kind]
    assert problem["type"] == f"urn:noticeparse:problem:{kind}"
    assert (problem["status"], problem["title"]) == (status, title)
    assert answer.status_code == status
    assert problem["detail"]
    return problem


def until(holds: Callable[[], bool], seconds: float = 60.0) -> None:
    end = time.monotonic() + seconds
    while not holds():
        assert time.monotonic() < end
        time.sleep(0.02)
