"""The JSON Schema of the output, for programs that check or read it.

It is made from the records; the words for keys that explain themselves in code but not in JSON
stand in `schema_words`, examples in `schema_examples.json`.  Where a key is a figure with a unit,
`x-unit` names it: m, mm, s, nm (nautical miles) or deg.
"""

from __future__ import annotations

import hashlib
import json
from pathlib import Path
from typing import Any

from pydantic.json_schema import GenerateJsonSchema, JsonSchemaMode
from pydantic_core import core_schema

from noticeparse.catalogue import ENTRIES
from noticeparse.records.bulletin import Bulletin
from noticeparse.schema_words import describe, unit_of

Schema = dict[str, Any]

DIALECT = "https://json-schema.org/draft/2020-12/schema"
IDENTIFIER = "urn:noticeparse:schema:bulletin:1"
LINE_IDENTIFIER = "urn:noticeparse:schema:line:1"

VERSION = "1.1"
"""Raised with every change of the keys; the figure before the point is `schema_version`."""

_EXAMPLES = Path(__file__).with_name("schema_examples.json")
_WORDS_FOR_PEOPLE = frozenset({"$comment", "description", "examples", "title", "x-unit"})


class _AsWritten(GenerateJsonSchema):
    """Every key is required: keys are never left out, also those that have a default."""

    def field_is_required(
        self,
        field: core_schema.ModelField | core_schema.DataclassField | core_schema.TypedDictField,
        total: bool,
    ) -> bool:
        del field, total
        return True


def bulletin_schema() -> Schema:
    """The JSON Schema (2020-12) of what `parse` writes for one text."""
    mode: JsonSchemaMode = "serialization"
    schema = Bulletin.model_json_schema(mode=mode, schema_generator=_AsWritten)
    examples = json.loads(_EXAMPLES.read_text("utf-8"))
    models = {"Bulletin": schema, **schema["$defs"]}
    for model, definition in models.items():
        for key, described in definition.get("properties", {}).items():
            words = described.get("description") or describe(model, key)
            if words:
                described["description"] = words
            unit = unit_of(key)
            if unit:
                described["x-unit"] = unit
            described.setdefault("examples", examples.get(f"{model}.{key}", []))
    models["Finding"]["properties"]["code"]["enum"] = sorted(ENTRIES)
    return _headed(schema, IDENTIFIER, "Bulletin")


def line_schema() -> Schema:
    """The JSON Schema of a line of `--format jsonl`: a notice, or the rest of its bulletin."""
    whole = bulletin_schema()
    models = whole.pop("$defs")
    version = whole["properties"]["schema_version"]
    notice = models.pop("Notice")
    rest = {key: one for key, one in whole["properties"].items() if key != "notices"}
    models["NoticeLine"] = _object(
        f"{notice['description']} Paths of findings start at it.",
        {"record": _kind("notice"), **notice["properties"], "schema_version": version},
    )
    models["BulletinLine"] = _object(
        "What a bulletin has beside its notices; the last of its lines.",
        {"record": _kind("bulletin"), **rest},
    )
    lines = [{"$ref": "#/$defs/NoticeLine"}, {"$ref": "#/$defs/BulletinLine"}]
    words = "One line; the caution of the bulletin line holds for the notice lines before it."
    schema = {"description": words, "oneOf": lines, "$defs": models}
    return _headed(schema, LINE_IDENTIFIER, "Line")


def fingerprint() -> str:
    """Twelve figures that change with every key, type and choice of the output.

    Not with the words about them, nor with the codes of findings, which have a list of their own.
    """
    schemas = [bulletin_schema(), line_schema()]
    for schema in schemas:
        del schema["$defs"]["Finding"]["properties"]["code"]["enum"]
    bare = json.dumps([_without_words(schema) for schema in schemas], sort_keys=True)
    return hashlib.sha256(bare.encode()).hexdigest()[:12]


def _headed(schema: Schema, identifier: str, title: str) -> Schema:
    head = {
        "$schema": DIALECT,
        "$id": identifier,
        "$comment": f"version {VERSION}",
        "title": title,
    }
    return {**head, **{key: value for key, value in schema.items() if key not in head}}


def _object(words: str, properties: Schema) -> Schema:
    return {
        "type": "object",
        "description": words,
        "properties": properties,
        "required": [*properties],
        "additionalProperties": False,
    }


def _kind(record: str) -> Schema:
    return {"const": record, "description": "what the line is", "examples": [record]}


def _without_words(schema: Any, *, is_named: bool = False) -> Any:
    """A schema without what is there for people; `is_named` where its keys are those of data."""
    if isinstance(schema, list):
        return [_without_words(one) for one in schema]
    if not isinstance(schema, dict):
        return schema
    return {
        key: _without_words(one, is_named=not is_named and key in ("properties", "$defs"))
        for key, one in schema.items()
        if is_named or key not in _WORDS_FOR_PEOPLE
    }
