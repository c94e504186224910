"""The pages for a person: the clerk's page, and the documentation with the files that lie beside.

They are files of the package; nothing is fetched from outside, and no script stands in a page.
"""

from __future__ import annotations

import html
from collections.abc import Awaitable, Callable
from importlib.resources import files
from pathlib import Path

from starlette.requests import Request
from starlette.responses import HTMLResponse, Response
from starlette.routing import BaseRoute, Mount, Route
from starlette.staticfiles import StaticFiles
from starlette.types import Receive, Scope, Send

from noticeparse.caution import CAUTION
from noticeparse.version import VERSION

STATIC = Path(str(files("noticeparse.web") / "static"))


def page_routes() -> list[BaseRoute]:
    """The routes of the pages."""
    return [
        Route("/", _page("page.html"), name="page"),
        Route("/docs", _page("docs.html"), name="docs"),
        Mount("/static", _Files(directory=STATIC), name="static"),
    ]


class _Files(StaticFiles):
    """Whole files, that a browser asks for anew after a change."""

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        # A wish for a part of a file need not be met (RFC 9110, 14.2), and can be malformed.
        headers = [one for one in scope["headers"] if one[0] != b"range"]
        await super().__call__({**scope, "headers": headers}, receive, send)

    async def get_response(self, path: str, scope: Scope) -> Response:
        response = await super().get_response(path, scope)
        response.headers["Cache-Control"] = "no-cache"
        return response


def _page(name: str) -> Callable[[Request], Awaitable[Response]]:
    words = (STATIC / name).read_text("utf-8")
    words = words.replace("{caution}", html.escape(CAUTION)).replace("{version}", VERSION)

    async def answer(request: Request) -> Response:
        del request
        return HTMLResponse(words)

    return answer
