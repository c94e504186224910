"""Connections as they come in: how many, how long one may say nothing, and what is no HTTP at all.

What happens here never reaches the application, so the answers that it would give are given here.
"""

from __future__ import annotations

import asyncio

import h11
from uvicorn.protocols.http.h11_impl import H11Protocol

from noticeparse.web.guard import SAFETY, log
from noticeparse.web.problems import MEDIA_TYPE, Problem, try_again
from noticeparse.web.settings import ServiceSettings

_CLOSING = object()


class Connection(H11Protocol):
    """One connection; nobody holds it for long without asking for something."""

    limits = ServiceSettings()

    _timer: asyncio.TimerHandle | None = None

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        """Take it in, or refuse it where there are too many."""
        super().connection_made(transport)
        of_client = sum(one._host == self._host for one in self.connections)  # type: ignore[union-attr]
        if of_client > self.limits.connections_of_one:
            words = f"at most {self.limits.connections_of_one} connections from one address"
            self._refuse(try_again("too-many-requests", words).problem)
        elif len(self.connections) > self.limits.connections:
            self._refuse(try_again("busy", "too many connections; try again").problem)
        self._watch(None)

    @property
    def _host(self) -> str:
        return self.client[0] if self.client else ""

    def _watch(self, before: object) -> None:
        self._timer = self.loop.call_later(self.limits.head_seconds, self._look, before)

    def _look(self, before: object) -> None:
        """End it where nothing was under way at the last look, and nothing has begun since."""
        now: object = object()
        if self.transport.is_closing():
            now = _CLOSING
        elif self.cycle is None or self.cycle.response_complete:
            now = self.cycle
        self._watch(now)
        if now is not before:
            return
        if now is _CLOSING:
            # What is still to be sent, nobody takes in.
            self.transport.abort()
        elif self.conn.trailing_data[0]:
            words = f"the head must arrive within {self.limits.head_seconds:g} seconds"
            self._refuse(Problem("head-too-slow", words))
        else:
            self.transport.close()

    def connection_lost(self, exc: Exception | None) -> None:
        """Forget it."""
        if self._timer is not None:
            self._timer.cancel()
        super().connection_lost(exc)

    def send_400_response(self, msg: str) -> None:
        """Answer to what cannot be read as HTTP."""
        del msg
        words = "this cannot be read as an HTTP/1.1 request; a head has at most 64 KiB"
        self._refuse(Problem("bad-request", words))

    def _refuse(self, problem: Problem) -> None:
        """Answer in place of the application, if no answer has begun, and close."""
        if self.cycle is not None:
            self.cycle.disconnected = True
        if self.conn.our_state in (h11.IDLE, h11.SEND_RESPONSE):
            body = problem.body()
            headers = [
                ("Content-Type", MEDIA_TYPE),
                ("Content-Length", str(len(body))),
                ("Connection", "close"),
                *problem.headers,
                *SAFETY.items(),
            ]
            answer = (
                h11.Response(status_code=problem.status, headers=headers),
                h11.Data(data=body),
                h11.EndOfMessage(),
            )
            self.transport.write(b"".join(self.conn.send(event) or b"" for event in answer))
        log.info("%s no request, %d", self._host or "-", problem.status)
        self.transport.close()


def connections_of(settings: ServiceSettings) -> type[Connection]:
    """The kind of connection that a service with these settings has."""

    class Limited(Connection):
        limits = settings

    return Limited
