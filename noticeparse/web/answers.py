"""Answers as the server framework sends them: problems, and bodies sent piece by piece."""

from __future__ import annotations

import asyncio
from collections.abc import Callable

from starlette.responses import Response
from starlette.types import Receive, Scope, Send

from noticeparse.web.problems import MEDIA_TYPE, Problem

_PIECE = 64 * 1024
_SLOWEST = 128 * 1024
"""Bytes a second that a client must take in of a long answer."""


def problem_answer(problem: Problem) -> Response:
    """A problem as an answer."""
    headers = dict(problem.headers)
    return Response(problem.body(), problem.status, headers, media_type=MEDIA_TYPE)


class PacedAnswer(Response):
    """A body sent in pieces, and within a time: a client that reads too slowly is let go."""

    def __init__(
        self, body: bytes, media_type: str, seconds: float, leave: Callable[[], None]
    ) -> None:
        super().__init__(body, headers={"Content-Type": media_type})
        self._seconds = seconds
        self._leave = leave

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Send it; raises TimeoutError where the client takes too long."""
        del scope, receive
        try:
            async with asyncio.timeout(self._seconds + len(self.body) / _SLOWEST):
                await self._send_pieces(send)
        finally:
            self._leave()

    async def _send_pieces(self, send: Send) -> None:
        start = {"type": "http.response.start", "status": 200, "headers": self.raw_headers}
        await send(start)
        whole = memoryview(self.body)
        for at in range(0, max(1, len(whole)), _PIECE):
            is_more = at + _PIECE < len(whole)
            piece = bytes(whole[at : at + _PIECE])
            await send({"type": "http.response.body", "body": piece, "more_body": is_more})
