"""The service: its paths, and the document that describes them."""

from __future__ import annotations

from collections.abc import AsyncIterator
from contextlib import ExitStack, asynccontextmanager
from functools import cache
from typing import Any

from fastapi import FastAPI, Request
from pydantic import BaseModel
from starlette.exceptions import HTTPException
from starlette.requests import ClientDisconnect
from starlette.responses import JSONResponse, Response

from noticeparse.schema import bulletin_schema
from noticeparse.version import VERSION
from noticeparse.web.answers import PacedAnswer, problem_answer
from noticeparse.web.bodies import Kind as Stated
from noticeparse.web.bodies import kind_of, read_body, require_uncompressed
from noticeparse.web.document import (
    catalogue,
    chart_list_operation,
    document_of,
    file_operation,
    notices_operation,
    plain_operation,
    sheet_operation,
    values_operation,
)
from noticeparse.web.files import FILE_TYPES
from noticeparse.web.guard import Guard
from noticeparse.web.pages import page_routes
from noticeparse.web.problems import STATUS_KINDS, Problem, Refused
from noticeparse.web.requests import FileOptions, ParseOptions, query_options
from noticeparse.web.room import Room
from noticeparse.web.settings import ServiceSettings
from noticeparse.web.work import Job, Kind
from noticeparse.web.workers import Workers

_SCHEMA = "application/schema+json"
_OPTIONS: dict[Kind, type[BaseModel]] = {"notices": ParseOptions, "file": FileOptions}
_HINTS = {404: "see /docs for the paths", 405: "see the header Allow, and /docs"}


def create_app(settings: ServiceSettings | None = None) -> FastAPI:
    """The service as an ASGI application; its workers begin with its lifespan."""
    settings = settings or ServiceSettings()
    desk = _Desk(settings)
    app = FastAPI(
        title="noticeparse",
        version=VERSION,
        lifespan=desk.lifespan,
        docs_url=None,
        redoc_url=None,
        redirect_slashes=False,
    )
    _add_paths(app, desk)
    app.router.routes.extend(page_routes())
    app.add_exception_handler(Refused, _refused)
    app.add_exception_handler(HTTPException, _not_served)
    paths = frozenset(getattr(route, "path", "") for route in app.routes)
    app.add_middleware(Guard, settings=settings, paths=paths)

    @cache
    def openapi() -> dict[str, Any]:
        return document_of(app, settings)

    app.openapi = openapi  # type: ignore[method-assign]
    return app


class _Desk:
    """Takes requests in, has them worked on, and answers."""

    def __init__(self, settings: ServiceSettings) -> None:
        self._settings = settings
        self._room = Room(settings)
        self._workers = Workers(settings)

    @asynccontextmanager
    async def lifespan(self, app: FastAPI) -> AsyncIterator[None]:
        """The time in which the service answers, from when all workers are ready."""
        del app
        await self._workers.start()
        yield

    async def answer(self, kind: Kind, request: Request) -> Response:
        """The answer to a request with a body.

        Raises Refused, and ClientDisconnect where nobody waits for it any more.
        """
        model = _OPTIONS.get(kind)
        options = query_options(request.scope["query_string"], model) if model else {}
        if model is None and request.query_params:
            raise Refused("request-invalid", "this path has no options in its query")
        if kind == "file":
            require_uncompressed(request)
            stated = Stated(False, None, is_file=True)
        else:
            stated = kind_of(request, FILE_TYPES if kind == "notices" else ())
        with ExitStack() as stack:
            client = request.client.host if request.client else ""
            place = stack.enter_context(self._room.place(client))
            body = await read_body(request, place, self._settings)
            job = Job(kind, body, *stated[:2], options, stated.is_file)
            found = await self._workers.perform(job, request.receive)
            if found is None:
                raise ClientDisconnect
            if isinstance(found, Problem):
                return problem_answer(found)
            place.hold_instead(len(found.body))
            # The place is given back when the answer has been sent.
            leave = stack.pop_all().close
            seconds = self._settings.send_seconds
            return PacedAnswer(found.body, found.media_type, seconds, leave)


def _add_paths(app: FastAPI, desk: _Desk) -> None:
    async def parse(request: Request) -> Response:
        """Read notices: a text, with the options in the query, or JSON with both.

        The answer is what `noticeparse parse` writes. With JSON an option may stand in the query
        as well; the one in the body holds. A plain text without a charset is read as a file is:
        UTF-8, unless its head declares another encoding, with a finding where it was doubtful.
        A file of another kind (PDF, HTML, mail, .docx) goes in with its own media type.
        """
        return await desk.answer("notices", request)

    async def intake(request: Request) -> Response:
        """Turn a file of any kind into text: plain text, PDF, HTML, mail, .docx.

        The kind is told by the bytes, then by `name`; the media type does not count. `places` say
        where each line stands on its page, `findings` what the file shows and the text does not.
        """
        return await desk.answer("file", request)

    async def positions(request: Request) -> Response:
        """Read positions, one in each line or text; what is in any doubt is refused."""
        return await desk.answer("positions", request)

    async def position_forms(request: Request) -> Response:
        """Read positions as `/v1/positions` does, and write each in all forms of the trade.

        `exact` is false where a form cannot hold the exact value: `rounded_to` is its last digit.
        """
        return await desk.answer("position-forms", request)

    async def lights(request: Request) -> Response:
        """Read light characters, one in each line or text; what is in any doubt is refused."""
        return await desk.answer("lights", request)

    async def depths(request: Request) -> Response:
        """Read depths, one in each line or text; without a unit they are metres."""
        return await desk.answer("depths", request)

    kept: dict[str, Any] = {"response_class": Response, "tags": ["reading"]}
    app.post("/v1/parse", summary="Read notices", **kept, **notices_operation())(parse)
    app.post("/v1/intake", summary="Turn a file into text", **kept, **file_operation())(intake)
    for path, record, read in (
        ("/v1/positions", "Position", positions),
        ("/v1/position-forms", "PositionForms", position_forms),
        ("/v1/lights", "Light", lights),
        ("/v1/depths", "Depth", depths),
    ):
        summary = f"Read {path.rpartition('/')[2].replace('-', ' ')}"
        app.post(path, summary=summary, **kept, **values_operation(record))(read)
    _add_charts(app, desk)
    _add_tables(app)


def _add_charts(app: FastAPI, desk: _Desk) -> None:
    async def chart_list(request: Request) -> Response:
        """Read a chart list, CSV or GeoJSON, as it stands in `charts` of `/v1/parse`.

        A list with an error or a warning is refused there, and so it is here.
        """
        return await desk.answer("charts", request)

    async def sheet(request: Request) -> Response:
        """Make a work sheet of one chart, or of each, or a plot at the scale of the chart.

        All actions for the chart stand on it in the order of their application; those that must
        not be applied are marked. The plot is for laying over the chart, in millimetres.
        """
        return await desk.answer("sheet", request)

    kept: dict[str, Any] = {"response_class": Response, "tags": ["reading"]}
    summary = "Read a chart list"
    app.post("/v1/chart-list", summary=summary, **kept, **chart_list_operation())(chart_list)
    app.post("/v1/sheet", summary="Make a work sheet", **kept, **sheet_operation())(sheet)


def _add_tables(app: FastAPI) -> None:
    schema, codes = bulletin_schema(), catalogue()

    async def schema_answer() -> Response:
        """The JSON Schema (2020-12) of a bulletin."""
        return JSONResponse(schema, media_type=_SCHEMA)

    async def codes_answer() -> Response:
        """The catalogue of findings: every code with its severity, meaning and hint."""
        return JSONResponse(codes)

    async def health() -> Response:
        """Whether the service answers."""
        return JSONResponse({"status": "ok", "version": VERSION})

    kept: dict[str, Any] = {"response_class": Response, "tags": ["about the service"]}
    for path, summary, media_type, table in (
        ("/v1/schema", "The schema of the records", _SCHEMA, schema_answer),
        ("/v1/findings", "What findings mean", "application/json", codes_answer),
        ("/healthz", "Health", "application/json", health),
    ):
        app.get(path, summary=summary, **kept, **plain_operation(media_type, summary))(table)
        app.head(path, include_in_schema=False)(table)


async def _refused(request: Request, error: Exception) -> Response:
    del request
    assert isinstance(error, Refused)
    return problem_answer(error.problem)


async def _not_served(request: Request, error: Exception) -> Response:
    """What the framework itself refuses: an unknown path, a method that a path has not."""
    del request
    assert isinstance(error, HTTPException)
    kind = STATUS_KINDS.get(error.status_code, "bad-request")
    words = _HINTS.get(error.status_code, "see /docs")
    return problem_answer(Problem(kind, words, headers=tuple((error.headers or {}).items())))
