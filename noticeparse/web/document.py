"""The OpenAPI document: what each path takes and answers, with examples.

The records are those of the JSON Schema of a bulletin; problems are those of `problems`.
"""

from __future__ import annotations

from typing import Any

from fastapi import FastAPI
from fastapi.openapi.utils import get_openapi
from pydantic import BaseModel

from noticeparse.catalogue import ENTRIES
from noticeparse.caution import CAUTION
from noticeparse.intake import Place, as_text
from noticeparse.records.chart_list import ChartList
from noticeparse.schema import bulletin_schema
from noticeparse.web import examples, problems
from noticeparse.web.requests import (
    FileOptions,
    ParseOptions,
    ParseRequest,
    SheetRequest,
    ValuesRequest,
)
from noticeparse.web.settings import ServiceSettings
from noticeparse.web.work import MEDIA_TYPES, SHEET_MEDIA_TYPES
from noticeparse.writers import FORMATS
from noticeparse.writers.position_forms import PositionForms

_COMPONENTS = "#/components/schemas/"

_ABOUT = f"""\
Reads the plain text of notices to mariners into typed chart-correction records.

**Caution.** {CAUTION}

Every answer that is no success is a problem (RFC 9457) that says what to do. What could not be
read for certain in a text is no problem of the request: it stands in the findings of the answer,
and an action with an error finding has `usable` false and must not be used. No text is logged or
kept.
"""

_BODY_PROBLEMS = (400, 408, 413, 415, 422, 429, 500, 503)


def document_of(app: FastAPI, settings: ServiceSettings) -> dict[str, Any]:
    """The document of a service with these settings."""
    document = get_openapi(
        title=app.title, version=app.version, description=_ABOUT, routes=app.routes
    )
    schemas = _records()
    schemas["Problem"] = problems.problem_schema()
    for model in (ParseRequest, SheetRequest, ValuesRequest):
        schemas[model.__name__] = model.model_json_schema()
    for one in schemas["ValuesRequest"]["properties"].values():
        del one["default"]
    schemas["ValuesRequest"]["oneOf"] = [{"required": ["text"]}, {"required": ["texts"]}]
    document["components"] = {"schemas": schemas}
    if settings.token is not None:
        document["components"]["securitySchemes"] = {"token": {"type": "http", "scheme": "bearer"}}
        for path, operations in document["paths"].items():
            if path.startswith("/v1/"):
                for operation in operations.values():
                    operation["security"] = [{"token": []}]
                    operation["responses"]["401"] = _problem(401)
    return document


def _records() -> dict[str, Any]:
    """The records as components, by their names in the schema of a bulletin."""
    schema = bulletin_schema()
    records: dict[str, Any] = {**schema.pop("$defs")}
    records["Bulletin"] = {key: schema[key] for key in schema if not key.startswith("$")}
    charts = ChartList.model_json_schema(mode="serialization")
    for name, record in charts.pop("$defs").items():
        records.setdefault(name, record)
    records["ChartList"] = charts
    forms = PositionForms.model_json_schema(mode="serialization")
    records["PositionForm"] = forms["$defs"]["PositionForm"]
    records["PositionForm"]["required"] = [*records["PositionForm"]["properties"]]
    records["PositionForms"] = {key: forms[key] for key in forms if not key.startswith("$")}
    moved: dict[str, Any] = _moved(records)
    return moved


def _moved(value: Any) -> Any:
    """A piece of a schema, its references led to the components."""
    if isinstance(value, dict):
        return {
            key: inner.replace("#/$defs/", _COMPONENTS)
            if key == "$ref" and isinstance(inner, str)
            else _moved(inner)
            for key, inner in value.items()
        }
    return [_moved(one) for one in value] if isinstance(value, list) else value


def notices_operation() -> dict[str, Any]:
    """What a path takes and answers that reads notices."""
    answers: dict[str, Any] = {}
    for form in FORMATS:
        media_type = MEDIA_TYPES[form].partition(";")[0]
        kind = "object" if media_type.endswith("+json") else "string"
        answers[media_type] = {"schema": {"type": kind}}
    answers["application/json"] = {"schema": _reference("Bulletin")}
    return {
        "openapi_extra": {
            "parameters": [*_parameters(ParseOptions)],
            "requestBody": _body("ParseRequest", examples.NOTICE, examples.PARSE),
        },
        "responses": {
            200: {"description": "The records, in the format asked for", "content": answers},
            **_problems(),
        },
    }


def file_operation() -> dict[str, Any]:
    """What the path takes and answers that turns a file into text."""
    place = {
        "type": "object",
        "required": list(Place._fields),
        "properties": {
            name: {"type": "number" if name.endswith("_mm") else "integer"}
            for name in Place._fields
        },
    }
    answer = {
        "type": "object",
        "required": ["caution", "name", "media_type", "sha256", "text", "findings", "places"],
        "properties": {
            "caution": {"type": "string"},
            "name": {"type": ["string", "null"]},
            "media_type": {"type": "string"},
            "sha256": {"type": "string"},
            "text": {"type": "string"},
            "findings": {"type": "array", "items": _reference("Finding")},
            "places": {"type": "array", "items": place},
        },
    }
    binary = {"type": "string", "format": "binary"}
    body = {"*/*": {"schema": binary, "example": examples.NOTICE}}
    return {
        "openapi_extra": {
            "parameters": [*_parameters(FileOptions)],
            "requestBody": {"required": True, "content": body},
        },
        "responses": {
            200: {
                "description": "The text, what is to be said of it, and where its lines stand",
                "content": {"application/json": {"schema": answer}},
            },
            **_problems(),
        },
    }


def values_operation(record: str) -> dict[str, Any]:
    """What a path takes and answers that reads values, each into a `record`."""
    plain, texts = examples.VALUES[record]
    refusal = {
        "type": "object",
        "required": ["error", "text"],
        "properties": {"error": _reference("Finding"), "text": {"type": "string"}},
    }
    results = {"type": "array", "items": {"anyOf": [_reference(record), refusal]}}
    answer = {
        "type": "object",
        "required": ["caution", "results"],
        "properties": {"caution": {"type": "string"}, "results": results},
    }
    return {
        "openapi_extra": {"requestBody": _body("ValuesRequest", plain, {"texts": texts})},
        "responses": {
            200: {
                "description": "For each text, in order: its record, or why there is none",
                "content": {"application/json": {"schema": answer}},
            },
            **_problems(),
        },
    }


def chart_list_operation() -> dict[str, Any]:
    """What a path takes and answers that reads a chart list."""
    content = {"text/plain": {"schema": {"type": "string"}, "example": examples.CHART_LIST}}
    answer = {"application/json": {"schema": _reference("ChartList")}}
    return {
        "openapi_extra": {"requestBody": {"required": True, "content": content}},
        "responses": {200: {"description": "The charts", "content": answer}, **_problems()},
    }


def sheet_operation() -> dict[str, Any]:
    """What the path takes and answers that makes work sheets and plots."""
    body = {"schema": _reference("SheetRequest"), "example": examples.SHEET}
    answers = {
        media_type.partition(";")[0]: {"schema": {"type": "string"}}
        for media_type in SHEET_MEDIA_TYPES.values()
    }
    return {
        "openapi_extra": {
            "requestBody": {"required": True, "content": {"application/json": body}}
        },
        "responses": {
            200: {"description": "The work sheet, or the plot", "content": answers},
            **_problems(),
            404: _problem(404),
            501: _problem(501),
        },
    }


def plain_operation(media_type: str, description: str) -> dict[str, Any]:
    """What a path answers that takes nothing."""
    content = {media_type: {"schema": {"type": "object"}}}
    return {"responses": {200: {"description": description, "content": content}}}


def catalogue() -> dict[str, Any]:
    """The catalogue of findings, as `/v1/findings` answers it; half characters are U+FFFD."""
    findings = [
        {key: as_text(words) for key, words in entry._asdict().items()}
        for _, entry in sorted(ENTRIES.items())
    ]
    return {"caution": CAUTION, "findings": findings}


def _reference(name: str) -> dict[str, str]:
    return {"$ref": _COMPONENTS + name}


def _parameters(model: type[BaseModel]) -> list[dict[str, Any]]:
    """The fields of a model as parameters of a query, where null cannot be said."""
    found = []
    for name, field in model.model_json_schema()["properties"].items():
        schema = next((one for one in field.get("anyOf", []) if one["type"] != "null"), field)
        schema = {key: schema[key] for key in schema if key not in ("description", "title")}
        parameter = {"name": name, "in": "query", "required": False, "schema": schema}
        found.append({**parameter, "description": field["description"]})
    return found


def _body(model: str, plain: str, whole: object) -> dict[str, Any]:
    return {
        "required": True,
        "content": {
            "text/plain": {"schema": {"type": "string", "pattern": r"\S"}, "example": plain},
            "application/json": {"schema": _reference(model), "example": whole},
        },
    }


def _problems() -> dict[int | str, dict[str, Any]]:
    return {status: _problem(status) for status in _BODY_PROBLEMS}


def _problem(status: int) -> dict[str, Any]:
    titles = [title for known, title in problems.KINDS.values() if known == status]
    content = {problems.MEDIA_TYPE: {"schema": _reference("Problem")}}
    return {"description": "; ".join(titles), "content": content}
