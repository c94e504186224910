"""The JSON Schema of a bulletin, for programs that check or read the output.

It is made from the records; the words for keys that explain themselves in code but not in JSON
stand in `schema_words`.
"""

from __future__ import annotations

from typing import Any

from pydantic.json_schema import GenerateJsonSchema, JsonSchemaMode
from pydantic_core import core_schema

from noticeparse.catalogue import ENTRIES
from noticeparse.records.bulletin import Bulletin
from noticeparse.schema_words import describe

DIALECT = "https://json-schema.org/draft/2020-12/schema"
IDENTIFIER = "urn:noticeparse:schema:bulletin:1"


class _AsWritten(GenerateJsonSchema):
    """Every key is required: keys are never left out, also those that have a default."""

    def field_is_required(
        self,
        field: core_schema.ModelField | core_schema.DataclassField | core_schema.TypedDictField,
        total: bool,
    ) -> bool:
        del field, total
        return True


def bulletin_schema() -> dict[str, Any]:
    """The JSON Schema (2020-12) of what `parse` writes for one text."""
    mode: JsonSchemaMode = "serialization"
    schema = Bulletin.model_json_schema(mode=mode, schema_generator=_AsWritten)
    models = {"Bulletin": schema, **schema["$defs"]}
    for model, definition in models.items():
        for key, described in definition.get("properties", {}).items():
            words = described.get("description") or describe(model, key)
            if words:
                described["description"] = words
    models["Finding"]["properties"]["code"]["enum"] = sorted(ENTRIES)
    head = {"$schema": DIALECT, "$id": IDENTIFIER, "title": "Bulletin"}
    return {**head, **{key: value for key, value in schema.items() if key not in head}}
