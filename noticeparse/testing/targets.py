"""What is tested: this reader, a command that is asked line by line, or an HTTP endpoint.

A command is started once.  It is given one text a line, as a JSON string, and answers each at once
with one line of JSON.  An endpoint is sent `{"text": …}` and answers with the same JSON, or with
it as the one entry of `results`.  The JSON is what `noticeparse parse`, or `position`, `light` and
`depth` with `--format json`, write; `null`, or an object with the key `error`, is a refusal.
"""

from __future__ import annotations

import http.client
import json
import os
import queue
import shlex
import subprocess
import sys
import threading
import urllib.error
import urllib.request
from typing import IO, Any, Protocol
from urllib.parse import urlsplit

from noticeparse.testing.answering import READERS, answer
from noticeparse.testing.cases import Kind

SPECIMENS: dict[Kind, str] = {
    "positions": "47-12.34S 123-45.67W",
    "lights": "Fl.R.5s",
    "depths": "8.6m",
    "notices": "2417/26 Quill Sound - Wreck.\nChart 802 [12/26] WGS84\n"
    "Insert wreck 47-12.34S 123-45.67W\n",
}
"""What every target must answer before it is tested."""

TOKEN = "NOTICEPARSE_TOKEN"
"""The environment variable with the bearer token for an endpoint that wants one."""

_PATHS: dict[Kind, str] = {
    "positions": "/v1/positions", "lights": "/v1/lights", "depths": "/v1/depths",
    "notices": "/v1/parse",
}  # fmt: skip
_LONGEST_ANSWER = 64 * 1024 * 1024


class NoAnswer(Exception):
    """A target gave no answer to a text; its words say why."""


class Target(Protocol):
    """Something that reads texts of one kind."""

    @property
    def name(self) -> str:
        """How it is named to a person."""

    @property
    def address(self) -> str | None:
        """What `--target` must say to come to it, None where that is left out."""

    def ask(self, text: str) -> str:
        """Its answer, one JSON document.

        Raises NoAnswer.
        """

    def reproduction(self, text: str) -> str:
        """A shell command that puts one text to it."""

    def close(self) -> None:
        """End it."""


def open_target(kind: Kind, target: str | None, seconds: float) -> Target:
    """The target by its name on the command line; an answer must come within so many seconds.

    Raises NoAnswer where it does not answer a plain specimen.
    """
    found: Target
    if target is None:
        found = ThisReader(kind)
    elif target.startswith(("http://", "https://")):
        found = HttpTarget(kind, target, seconds)
    else:
        found = CommandTarget(target, seconds)
    try:
        json.loads(found.ask(SPECIMENS[kind]))
    except (ValueError, RecursionError):
        found.close()
        raise NoAnswer(f"{found.name}: what it answers is no JSON") from None
    except NoAnswer as error:
        found.close()
        raise NoAnswer(f"{found.name}: {error}") from None
    return found


class ThisReader:
    """The reader of this package."""

    name = "this reader"
    address = None

    def __init__(self, kind: Kind) -> None:
        self._kind = kind

    def ask(self, text: str) -> str:
        """Its answer; a reader that raises anything else than it should gives none."""
        try:
            return answer(self._kind, text)
        except Exception as error:
            raise NoAnswer(f"raises {type(error).__name__}: {error}") from error

    def reproduction(self, text: str) -> str:
        """A Python command in plain ASCII."""
        reader = READERS[self._kind].__name__
        code = f"import noticeparse; print(noticeparse.{reader}({text!a}))"
        return f"python -c {shlex.quote(code)}"

    def close(self) -> None:
        """Nothing is to be ended."""


class CommandTarget:
    """A command that is asked line by line; it is started again where it ends or hangs."""

    def __init__(self, command: str, seconds: float) -> None:
        self.name = self.address = command
        self._seconds = seconds
        self._process: subprocess.Popen[bytes] | None = None
        self._lines: queue.SimpleQueue[bytes | None] = queue.SimpleQueue()

    def ask(self, text: str) -> str:
        """Give it a line and wait for one."""
        process = self._started()
        assert process.stdin is not None
        if not self._lines.empty() and self._lines.get() is not None:
            self.close()
            raise NoAnswer("it gave more than one line for the text before this one")
        try:
            process.stdin.write(json.dumps(text).encode() + b"\n")
            process.stdin.flush()
        except OSError:
            raise self._ended(process) from None
        try:
            line = self._lines.get(timeout=self._seconds)
        except queue.Empty:
            self.close()
            words = f"no answer within {self._seconds:g} seconds"
            raise NoAnswer(f"{words}; does it flush its output after each line?") from None
        if line is None:
            raise self._ended(process)
        return line.decode("utf-8", "replace")

    def _started(self) -> subprocess.Popen[bytes]:
        if self._process is not None:
            return self._process
        words = self.name if sys.platform == "win32" else shlex.split(self.name)
        if not words:
            raise NoAnswer("the command is empty")
        try:
            process = subprocess.Popen(words, stdin=subprocess.PIPE, stdout=subprocess.PIPE)
        except (OSError, ValueError) as error:
            raise NoAnswer(f"cannot be started: {error}") from None
        # A queue of its own: an answer of a process that was ended must not come in late.
        self._lines = queue.SimpleQueue()
        threading.Thread(target=_drain, args=(process.stdout, self._lines), daemon=True).start()
        self._process = process
        return process

    def _ended(self, process: subprocess.Popen[bytes]) -> NoAnswer:
        try:
            status: int | str = process.wait(self._seconds)
        except subprocess.TimeoutExpired:
            status = "none yet"
        self.close()
        return NoAnswer(f"it closed its output without an answer (exit status {status})")

    def reproduction(self, text: str) -> str:
        """The line it was given, piped into it."""
        return f"printf '%s\\n' {shlex.quote(json.dumps(text))} | {self.name}"

    def close(self) -> None:
        """End the process, kindly at first."""
        process, self._process = self._process, None
        if process is None:
            return
        if process.stdin is not None:
            _close(process.stdin)
        try:
            process.wait(1)
        except subprocess.TimeoutExpired:
            process.kill()
            process.wait()


def _close(stream: IO[bytes]) -> None:
    try:
        stream.close()
    except OSError:
        return  # what it had not read is of no use any more


def _drain(stream: IO[bytes], lines: queue.SimpleQueue[bytes | None]) -> None:
    with stream:
        for line in stream:
            lines.put(line)
    lines.put(None)


class HttpTarget:
    """An endpoint that is sent JSON; a bare host stands for that of `noticeparse serve`.

    Raises NoAnswer for what is no address.
    """

    def __init__(self, kind: Kind, url: str, seconds: float) -> None:
        try:
            parts = urlsplit(url)
        except ValueError as error:
            raise NoAnswer(f"{url}: {error}") from None
        self.name = url.rstrip("/") + _PATHS[kind] if parts.path in ("", "/") else url
        self.address = self.name
        self._seconds = seconds
        is_here = parts.hostname in ("localhost", "127.0.0.1", "::1")
        handlers = [urllib.request.ProxyHandler({})] if is_here else []
        self._opener = urllib.request.build_opener(*handlers)

    def ask(self, text: str) -> str:
        """Send it a text."""
        headers = {"Content-Type": "application/json", "Accept": "application/json"}
        if token := os.environ.get(TOKEN):
            headers["Authorization"] = f"Bearer {token}"
        body = json.dumps({"text": text}).encode()
        try:
            request = urllib.request.Request(self.name, body, headers, method="POST")
            with self._opener.open(request, timeout=self._seconds) as reply:
                return _unwrapped(reply.read(_LONGEST_ANSWER).decode("utf-8", "replace"))
        except urllib.error.HTTPError as error:
            with error:
                words = error.read(200).decode("utf-8", "replace").strip()
            raise NoAnswer(f"HTTP status {error.code}: {words}") from None
        except (OSError, ValueError, http.client.HTTPException) as error:
            raise NoAnswer(str(getattr(error, "reason", error) or error)) from None

    def reproduction(self, text: str) -> str:
        """The same request with curl."""
        body = shlex.quote(json.dumps({"text": text}))
        token = f' -H "Authorization: Bearer ${TOKEN}"' if os.environ.get(TOKEN) else ""
        head = f"curl -sS -H 'Content-Type: application/json'{token}"
        return f"{head} --data {body} {shlex.quote(self.name)}"

    def close(self) -> None:
        """Nothing is to be ended."""


def _unwrapped(reply: str) -> str:
    """The one answer in a list of results."""
    try:
        document: Any = json.loads(reply)
    except (ValueError, RecursionError):
        return reply
    if not isinstance(document, dict) or "results" not in document:
        return reply
    results = document["results"]
    if not isinstance(results, list) or len(results) != 1:
        raise NoAnswer("`results` has not one entry for one text")
    return json.dumps(results[0])
