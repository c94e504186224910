"""The HTTP service under load: requests a second, waiting times, memory, and none lost.

    python -m tests.bench.bench_api [--requests 2000] [--at-once 32] [--huge 500kB]

One process serves; as many threads as there are requests at once send good texts, values, bad
requests, huge texts, and connections that are cut.  Every request must have the answer it should;
one that is told to try again (503) does so.
Memory is that of the server and its workers, looked at all the time; the first half of the
requests is compared with the second.  Needs /proc for the memory.
"""

from __future__ import annotations

import argparse
import os
import random
import re
import signal
import socket
import subprocess
import sys
import threading
import time
from collections import Counter
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from pathlib import Path
from statistics import quantiles
from typing import NamedTuple

import httpx2

from noticeparse.testing.generator import generate
from noticeparse.testing.generator.__main__ import read_size
from tests.bench.measure import machine, table

_PLAIN = {"Content-Type": "text/plain"}
_JSON = {"Content-Type": "application/json"}
_MEBIBYTE = 1024 * 1024
_MOST_TRIES = 50


class Shot(NamedTuple):
    """A request, and the status that it must have; 0 for one that is cut."""

    kind: str
    path: str
    headers: dict[str, str]
    body: bytes
    status: int


class Hit(NamedTuple):
    """What came of a request."""

    kind: str
    seconds: float
    is_right: bool
    tries: int


def shots(count: int, huge: int) -> list[Shot]:
    """A mixture, the same each time."""
    rng = random.Random(1)
    texts = [generate(seed, size_bytes=4_000).text.encode() for seed in range(20)]
    large = generate(1, size_bytes=huge, layouts=("notice_first",)).text.encode()
    values = b'{"texts": ["47 12.34S 123 45.67W", "47.3", "-4712.34-12345.67/"]}'
    found = []
    for number in range(count):
        text = rng.choice(texts)
        choice = number % 100
        if choice < 60:
            found.append(Shot("notices", "/v1/parse", _PLAIN, text, 200))
        elif choice < 85:
            found.append(Shot("values", "/v1/positions", _JSON, values, 200))
        elif choice < 97:
            found.append(rng.choice(_bad(text)))
        elif choice < 98:
            found.append(Shot("huge", "/v1/parse", _PLAIN, large, 200))
        else:
            found.append(Shot("cut", "/v1/parse", _PLAIN, large, 0))
    rng.shuffle(found)
    return found


def _bad(text: bytes) -> list[Shot]:
    plain = [
        ("/v1/nothing", _PLAIN, text, 404),
        ("/v1/parse", {"Content-Type": "text/html"}, text, 415),
        ("/v1/parse?regoin=A", _PLAIN, text, 422),
        ("/v1/parse", _JSON, b"[" * 100_000, 400),
        ("/v1/parse", _JSON, b'{"text": 9}', 422),
        ("/v1/parse", _PLAIN, b"\0" * 1000, 422),
        ("/v1/parse", {"Content-Type": "text/plain; charset=utf-8"}, b"47\xb0", 422),
        ("/v1/parse", _PLAIN, b"x" * (9 * _MEBIBYTE), 413),
    ]
    return [Shot("bad", *one) for one in plain]


@contextmanager
def service() -> Iterator[tuple[str, int]]:
    """The address of a service in a process of its own, and the number of that."""
    command = [sys.executable, "-m", "noticeparse", "serve", "--port", "0", "--no-open"]
    with subprocess.Popen(command, stderr=subprocess.PIPE, text=True) as ran:
        assert ran.stderr is not None
        said = re.search(r"http://\S+", ran.stderr.readline())
        assert said is not None
        # The log is read away, so that it never stands in the way.
        reader = threading.Thread(target=ran.stderr.read, daemon=True)
        reader.start()
        try:
            yield said[0].rstrip("/"), ran.pid
        finally:
            ran.send_signal(signal.SIGINT)
            ran.wait(30)


def fire(client: httpx2.Client, shot: Shot) -> Hit:
    """Send one request and judge the answer."""
    begin = time.perf_counter()
    if shot.status == 0:
        _cut(client, shot)
        return Hit(shot.kind, time.perf_counter() - begin, True, 1)
    tries = 1
    while True:
        answer = client.post(shot.path, content=shot.body, headers=shot.headers)
        if "retry-after" not in answer.headers or tries == _MOST_TRIES:
            break
        time.sleep(int(answer.headers["retry-after"]))
        tries += 1
    is_right = answer.status_code == shot.status
    if shot.status == 200:
        is_right = is_right and b"caution" in answer.content
    return Hit(shot.kind, time.perf_counter() - begin, is_right, tries)


def _cut(client: httpx2.Client, shot: Shot) -> None:
    host, port = client.base_url.host, client.base_url.port
    head = f"POST {shot.path} HTTP/1.1\r\nHost: x\r\nContent-Type: text/plain\r\n"
    head += f"Content-Length: {len(shot.body)}\r\n\r\n"
    with socket.create_connection((host, port or 80)) as raw:
        raw.sendall(head.encode() + shot.body[: random.Random(len(shot.body)).randrange(10**6)])
        time.sleep(0.05)


class Memory:
    """Looks at the resident memory of a process and its children until it is told to stop."""

    def __init__(self, pid: int) -> None:
        self._pid = pid
        self._is_over = threading.Event()
        self.seen: list[int] = []
        self._thread = threading.Thread(target=self._look)
        self._thread.start()

    def stop(self) -> None:
        """Look no more."""
        self._is_over.set()
        self._thread.join()

    def _look(self) -> None:
        while not self._is_over.wait(0.1):
            self.seen.append(sum(map(_resident, [self._pid, *_children(self._pid)])))


def _children(pid: int) -> list[int]:
    found = []
    for task in Path(f"/proc/{pid}/task").iterdir():
        found += [int(one) for one in (task / "children").read_text().split()]
    return found


def _resident(pid: int) -> int:
    try:
        return int(Path(f"/proc/{pid}/statm").read_text().split()[1]) * os.sysconf("SC_PAGE_SIZE")
    except (FileNotFoundError, ProcessLookupError):
        return 0


def _processor_seconds(pid: int) -> float:
    """Of a process, the children it has left behind, and those that are there."""
    ticks = 0
    for one in (pid, *_children(pid)):
        figures = Path(f"/proc/{one}/stat").read_text().rpartition(")")[2].split()
        ticks += sum(map(int, figures[11:15]))
    return ticks / os.sysconf("SC_CLK_TCK")


def main() -> None:
    """Fire, measure, print; ends with 1 where a request was lost or answered wrongly."""
    options = argparse.ArgumentParser(prog="python -m tests.bench.bench_api", description=__doc__)
    options.add_argument("--requests", type=int, default=2000)
    options.add_argument("--at-once", type=int, default=32)
    options.add_argument("--huge", type=read_size, default=500_000)
    given = options.parse_args()
    wanted = shots(given.requests, given.huge)
    with service() as (address, pid), ThreadPoolExecutor(given.at_once) as pool:
        memory = Memory(pid)
        time.sleep(0.5)
        limits = httpx2.Limits(max_connections=given.at_once + 8)
        with httpx2.Client(base_url=address, timeout=600, limits=limits) as client:
            before = _processor_seconds(pid)
            begin = time.perf_counter()
            hits = list(pool.map(lambda shot: fire(client, shot), wanted))
            seconds = time.perf_counter() - begin
            spent = _processor_seconds(pid) - before
            is_well = client.get("/healthz").status_code == 200
        memory.stop()
    wrong = Counter(hit.kind for hit in hits if not hit.is_right)
    print(f"{machine()}, {given.at_once} at once, {os.cpu_count()} processors")
    print(_told(hits))
    print(f"{len(hits) / seconds:.0f} requests a second, {seconds:.1f} s in all")
    print(f"{spent / len(hits) * 1000:.0f} ms of a processor for each, which others disturb least")
    half = len(memory.seen) // 2
    peaks = [max(part) / _MEBIBYTE for part in (memory.seen[:half], memory.seen[half:])]
    print(f"peak memory {peaks[0]:.0f} MiB in the first half, {peaks[1]:.0f} MiB in the second")
    ends = [memory.seen[at] / _MEBIBYTE for at in (0, -1)]
    print(f"{ends[0]:.0f} MiB before the first request, {ends[1]:.0f} MiB behind the last")
    print(f"{sum(hit.tries - 1 for hit in hits)} told to try again, which they did")
    print(f"{len(wanted) - len(hits)} lost, wrong answers: {dict(wrong) or 'none'}")
    sys.exit(0 if is_well and not wrong and len(hits) == len(wanted) else 1)


def _told(hits: list[Hit]) -> str:
    rows = []
    for kind in [*sorted({hit.kind for hit in hits}), "all"]:
        times = [hit.seconds * 1000 for hit in hits if kind in (hit.kind, "all")]
        cuts = quantiles(times, n=100)
        rows.append(
            (kind, str(len(times)), f"{cuts[49]:.0f}", f"{cuts[98]:.0f}", f"{max(times):.0f}")
        )
    return table(("kind", "requests", "p50 ms", "p99 ms", "longest ms"), rows)


if __name__ == "__main__":
    main()
