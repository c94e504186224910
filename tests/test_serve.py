"""`noticeparse serve`: how it begins, what it warns of, how it ends."""

from __future__ import annotations

import os
import re
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager

import httpx2
import pytest

from noticeparse.caution import CAUTION
from noticeparse.testing.generator import generate
from noticeparse.web.server import Unbound, address_of, is_loopback, listen
from noticeparse.web.settings import TOKEN_VARIABLE, BadToken, token_of_environment
from tests.command import GOOD, invoke, process
from tests.service import PLAIN, refused


@contextmanager
def running(
    *arguments: str, **variables: str
) -> Iterator[tuple[subprocess.Popen[str], list[str]]]:
    """The command as a process, and what it has said up to the caution."""
    command = [sys.executable, "-m", "noticeparse", "serve", "--port", "0", "--workers", "1"]
    with subprocess.Popen(
        [*command, *arguments],
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        env={**os.environ, **variables},
    ) as ran:
        try:
            assert ran.stderr is not None
            said = [line.rstrip("\n") for line in iter(ran.stderr.readline, f"{CAUTION}\n")]
            yield ran, said
        finally:
            ran.kill()


def test_serves_until_interrupted() -> None:
    with running() as (ran, said):
        (line,) = said
        address = re.fullmatch(r"noticeparse serves on (http://127\.0\.0\.1:\d+/) .*", line)
        assert address is not None
        answer = httpx2.post(address[1] + "v1/parse", content=GOOD, headers=PLAIN, timeout=60)
        assert answer.json()["notices"][0]["id"] == "2417/26"
        ran.send_signal(signal.SIGINT)
        out, err = ran.communicate(timeout=60)
    assert ran.returncode == 0
    assert out == ""
    assert "POST /v1/parse 200" in err
    assert err.endswith("noticeparse: the service has ended\n")
    assert "Traceback" not in err
    assert "2417" not in err


def test_end_with_a_request_under_way() -> None:
    text = generate(1, size_bytes=60_000, layouts=("notice_first",)).text
    with running("--workers", "2") as (ran, said), ThreadPoolExecutor(1) as pool:
        address = said[0].split()[3]
        body = text * 80
        slow = pool.submit(
            httpx2.post, address + "v1/parse", content=body, headers=PLAIN, timeout=60
        )
        time.sleep(3)
        ran.send_signal(signal.SIGTERM)
        refused(slow.result(), "busy")
        _, err = ran.communicate(timeout=60)
    assert ran.returncode == 0
    assert "Traceback" not in err
    assert err.endswith("noticeparse: the service has ended\n")


def test_other_machines_without_a_token() -> None:
    with running("--host", "0.0.0.0", "--no-open") as (_, said):
        assert said[0].startswith("noticeparse: warning: 0.0.0.0 may be reached")
        assert TOKEN_VARIABLE in said[0]
    with running("--host", "0.0.0.0", NOTICEPARSE_TOKEN="secret-token") as (_, said):
        assert len(said) == 1
        address = said[0].split()[3]
        assert address.startswith("http://127.0.0.1:")
        assert httpx2.get(f"{address}v1/schema", timeout=60).status_code == 401
        headers = {"Authorization": "Bearer secret-token"}
        answer = httpx2.get(f"{address}v1/schema", headers=headers, timeout=60)
        assert answer.status_code == 200
        assert not any("secret-token" in line for line in said)


def test_address_that_is_taken() -> None:
    with listen("127.0.0.1", 0) as taken:
        taken.listen()
        port = str(taken.getsockname()[1])
        ran = process("serve", "--port", port)
    assert ran.returncode == 2
    assert ran.stderr.decode().startswith(f"noticeparse: cannot listen on 127.0.0.1, port {port}:")
    assert ran.stderr.count(b"\n") == 1


def test_host_that_is_none() -> None:
    ran = process("serve", "--host", "no.such.host.invalid")
    assert ran.returncode == 2
    assert ran.stderr.count(b"\n") == 1


@pytest.mark.parametrize("token", ["", "two words", "tökén", "line\n"])
def test_token_that_is_none(token: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv(TOKEN_VARIABLE, token)
    with pytest.raises(BadToken):
        token_of_environment()
    result = invoke("serve", "--port", "0")
    assert result.exit_code == 2
    assert TOKEN_VARIABLE in result.stderr


@pytest.mark.parametrize("package", ["fastapi", "uvicorn", "anyio"])
def test_without_the_extra(package: str) -> None:
    code = (
        f"import sys; sys.modules[{package!r}] = None\n"
        "from noticeparse.cli import main\n"
        "main(['serve', '--port', '0'])"
    )
    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, check=False)
    assert ran.returncode == 2
    told = "noticeparse: `serve` needs more packages: pip install 'noticeparse[web]'\n"
    assert ran.stderr.decode() == told


@pytest.mark.parametrize(
    ("host", "expected"), [("127.0.0.1", True), ("127.9.9.9", True), ("0.0.0.0", False)]
)
def test_loopback(host: str, expected: bool) -> None:
    with listen(host, 0) as listener:
        assert is_loopback(listener) is expected


@pytest.mark.parametrize("host", ["", "a..b", "x" * 300, "[::1]", "1.2.3.4.5"])
def test_names_that_no_machine_has(host: str) -> None:
    with pytest.raises(Unbound):
        listen(host, 0)


def test_addresses() -> None:
    with listen("127.0.0.1", 0) as listener:
        assert address_of(listener) == f"http://127.0.0.1:{listener.getsockname()[1]}/"
    if not socket.has_ipv6:
        pytest.skip("no IPv6 here")
    try:
        listener = listen("::1", 0)
    except Unbound:
        pytest.skip("no IPv6 here")
    with listener:
        assert is_loopback(listener)
        assert address_of(listener) == f"http://[::1]:{listener.getsockname()[1]}/"
