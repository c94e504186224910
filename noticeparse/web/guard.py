"""What holds for every request: token, headers of safety, unread bodies, failures, the log.

The log has the path of the service that was asked, never the path, query or text of a request.
"""

from __future__ import annotations

import asyncio
import hmac
import logging
from collections.abc import Container

from anyio import move_on_after
from starlette.datastructures import Headers, MutableHeaders
from starlette.requests import ClientDisconnect
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from noticeparse.web.answers import problem_answer
from noticeparse.web.origins import foreign
from noticeparse.web.problems import Problem, try_again
from noticeparse.web.settings import TOKEN_VARIABLE, ServiceSettings

log = logging.getLogger("noticeparse.web")

GUARDED = "/v1/"
"""What lies below needs the token; pages, document and health do not."""

POLICY = "; ".join(
    (
        "default-src 'none'",
        "script-src 'self'",
        "style-src 'self'",
        "img-src 'self' data:",
        "connect-src 'self'",
        "form-action 'none'",
        "base-uri 'none'",
        "frame-ancestors 'none'",
    )
)
SAFETY = {
    "Content-Security-Policy": POLICY,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Resource-Policy": "same-origin",
}

_METHODS = {"GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS", "TRACE", "CONNECT"}

# An ordinary client sends its whole body before it looks at the answer, and sees none if the
# connection is closed before.
_DRAIN_SECONDS = 5.0
_DRAIN_BODIES = 4
_TOO_SLOW = 408


class Guard:
    """Stands round the whole service."""

    def __init__(self, app: ASGIApp, *, settings: ServiceSettings, paths: Container[str]) -> None:
        self._app = app
        self._settings = settings
        self._paths = paths

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer one request."""
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return
        passage = _Passage(scope, receive, send, self._settings)
        clock = asyncio.get_running_loop().time
        begin = clock()
        try:
            await passage.go(self._app)
        finally:
            path = scope["path"] if scope["path"] in self._paths else "(another path)"
            passage.note(path, clock() - begin)


class _Passage:
    """One request on its way through the guard."""

    def __init__(
        self, scope: Scope, receive: Receive, send: Send, settings: ServiceSettings
    ) -> None:
        self._scope = scope
        self._receive = receive
        self._send = send
        self._settings = settings
        self._is_read = False
        self._taken = 0
        self._given = 0
        self._status = 0

    async def go(self, app: ASGIApp) -> None:
        """Answer it, or let `app` do so."""
        try:
            problem = self._refusal()
            if problem is None:
                await app(self._scope, self.receive, self.send)
            else:
                await self._answer(problem)
        except ClientDisconnect:
            pass
        except asyncio.CancelledError:
            # Nothing but the end of the service cancels a request.
            if not self._status:
                await self._answer(try_again("busy", "the service is ending").problem)
        except Exception as error:
            await self._failed(error)

    def _refusal(self) -> Problem | None:
        problem = foreign(self._scope)
        if problem is not None:
            return problem
        token = self._settings.token
        if token is None or not self._scope["path"].startswith(GUARDED):
            return None
        given = Headers(scope=self._scope).get("authorization", "")
        scheme, _, word = given.partition(" ")
        if scheme.lower() == "bearer":
            # Both as bytes, since what is not ASCII cannot be compared otherwise.
            if hmac.compare_digest(word.strip().encode(), token.encode()):
                return None
            challenge = 'Bearer realm="noticeparse", error="invalid_token"'
            words = "the token is not the one of this service"
        else:
            challenge = 'Bearer realm="noticeparse"'
            words = f"send `Authorization: Bearer …` with the token in {TOKEN_VARIABLE}"
        return Problem("unauthorized", words, headers=(("WWW-Authenticate", challenge),))

    async def _answer(self, problem: Problem) -> None:
        await problem_answer(problem)(self._scope, self.receive, self.send)

    async def _failed(self, error: Exception) -> None:
        """Only kind and place are told: the words of an exception may quote the text."""
        if self._status and isinstance(error, TimeoutError):
            return  # the client does not take its answer in
        place = error.__traceback__
        while place is not None and place.tb_next is not None:
            place = place.tb_next
        where = f"{place.tb_frame.f_code.co_qualname}:{place.tb_lineno}" if place else "?"
        log.error("%s in %s", type(error).__name__, where)
        if self._status:
            # The server closes the connection of an answer that is left unfinished, so that nobody
            # takes the piece for the whole.
            return
        await self._answer(Problem("internal", "the log of the service says where"))

    async def receive(self) -> Message:
        """A message of the request, its bytes counted."""
        message = await self._receive()
        if message["type"] == "http.request":
            self._taken += len(message.get("body", b""))
            self._is_read = not message.get("more_body", False)
        else:
            self._is_read = True
        return message

    async def send(self, message: Message) -> None:
        """Send a message of the answer, with the headers that every answer has."""
        if message["type"] == "http.response.start":
            self._status = message["status"]
            headers = MutableHeaders(scope=message)
            headers.update(SAFETY)
            headers.setdefault("Cache-Control", "no-store")
            if self._status >= 400 and not await self._drained():
                headers["Connection"] = "close"
        else:
            self._given += len(message.get("body", b""))
        async with asyncio.timeout(self._settings.send_seconds):
            await self._send(message)

    async def _drained(self) -> bool:
        """Whether nothing of the body is left, after a little of it has been thrown away."""
        if self._is_read or self._status == _TOO_SLOW:
            return self._is_read
        if "expect" in Headers(scope=self._scope) and not self._taken:
            return False
        most = self._taken + _DRAIN_BODIES * self._settings.max_body
        with move_on_after(_DRAIN_SECONDS):
            while not self._is_read and self._taken <= most:
                await self.receive()
        return self._is_read

    def note(self, path: str, seconds: float) -> None:
        """A line for the log."""
        method = self._scope["method"]
        client = self._scope.get("client")
        log.info(
            "%s %s %s %s, %d bytes in, %d out, %.0f ms",
            client[0] if client else "-",
            method if method in _METHODS else "?",
            path,
            self._status or "client gone",
            self._taken,
            self._given,
            seconds * 1000,
        )
