"""The JSON Schema: complete, described, and true of what is written."""

from __future__ import annotations

import json
from typing import Any

import pytest

from noticeparse import parse
from noticeparse.catalogue import ENTRIES
from noticeparse.records.bulletin import Bulletin
from noticeparse.schema import DIALECT, bulletin_schema
from noticeparse.schema_words import all_words
from noticeparse.writers.json_out import write_json
from tests.week import LINE, WEEK


@pytest.fixture(scope="module")
def week() -> Bulletin:
    return parse(WEEK, name="w.txt")


class TestSchema:
    """The schema of a bulletin."""

    def test_head(self) -> None:
        schema = bulletin_schema()
        assert [*schema][:3] == ["$schema", "$id", "title"]
        assert schema["$schema"] == DIALECT
        assert schema["$id"].startswith("urn:")
        assert schema["description"]

    def test_codes_are_those_of_the_catalogue(self) -> None:
        code = bulletin_schema()["$defs"]["Finding"]["properties"]["code"]
        assert code["enum"] == sorted(ENTRIES)

    def test_every_key_is_described_titled_and_required(self) -> None:
        for model, definition in models().items():
            keys = definition["properties"]
            assert definition["required"] == [*keys], model
            assert definition["description"], model
            for key, described in keys.items():
                assert described["description"], f"{model}.{key}"

    def test_no_words_for_keys_that_are_not_there(self) -> None:
        keys = {key for one in models().values() for key in one["properties"]}
        full = {f"{model}.{key}" for model, one in models().items() for key in one["properties"]}
        assert set(all_words()) <= keys | full

    def test_bulletins_are_valid(self, week: Bulletin) -> None:
        jsonschema_rs = pytest.importorskip("jsonschema_rs")
        schema = bulletin_schema()
        jsonschema_rs.meta.validate(schema)
        validator = jsonschema_rs.validator_for(schema)
        for bulletin in (week, parse(""), parse(f"Chart 802\n{LINE}\njunk at 9m\n")):
            record = json.loads("".join(write_json([bulletin])))
            assert not [str(error) for error in validator.iter_errors(record)]
            record["findings"] = [{"code": "no-such-code"}]
            assert not validator.is_valid(record)


def models() -> dict[str, Any]:
    schema = bulletin_schema()
    return {"Bulletin": schema, **schema["$defs"]}
