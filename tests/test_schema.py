"""The JSON Schema: complete, described, true of what is written, and the same until it is said."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

import jsonschema_rs
import pytest

from noticeparse import parse
from noticeparse.catalogue import ENTRIES
from noticeparse.schema import (
    DIALECT,
    VERSION,
    bulletin_schema,
    fingerprint,
    line_schema,
)
from noticeparse.schema_words import all_words, unit_of
from noticeparse.writers import new_writer, write
from tests.corpus_files import CORPUS, TEXTS, name_of
from tests.documents import DEVELOPERS
from tests.test_contract import SPECIMENS
from tests.week import LINE, WEEK

_UNIT_WORDS = {
    "m": "metres",
    "mm": "millimetres",
    "s": "seconds",
    "nm": "nautical miles",
    "deg": "degrees",
}
ALL = [*TEXTS, CORPUS / "demo.txt", CORPUS / "demo_faulty.txt"]


class TestSchema:
    """The schema of a bulletin."""

    def test_head(self) -> None:
        schema = bulletin_schema()
        assert [*schema][:4] == ["$schema", "$id", "$comment", "title"]
        assert schema["$schema"] == DIALECT
        assert schema["$id"].startswith("urn:")
        assert schema["description"]
        assert VERSION.partition(".")[0] == schema["properties"]["schema_version"]["const"]

    def test_codes_are_those_of_the_catalogue(self) -> None:
        code = bulletin_schema()["$defs"]["Finding"]["properties"]["code"]
        assert code["enum"] == sorted(ENTRIES)

    def test_every_key_is_described_and_required(self) -> None:
        for model, definition in models().items():
            keys = definition["properties"]
            assert definition["required"] == [*keys], model
            assert definition["description"], model
            for key, described in keys.items():
                assert described["description"], f"{model}.{key}"

    def test_every_figure_with_a_unit_says_it_twice(self) -> None:
        seen = set()
        for model, definition in models().items():
            for key, described in definition["properties"].items():
                unit = unit_of(key)
                assert described.get("x-unit") == unit, f"{model}.{key}"
                if unit is not None:
                    seen.add(unit)
                    assert _UNIT_WORDS[unit] in described["description"], f"{model}.{key}"
        assert seen == {*_UNIT_WORDS}

    def test_every_key_has_an_example_that_fits(self) -> None:
        for model, definition in models().items():
            for key, described in definition["properties"].items():
                assert described["examples"], f"{model}.{key}: see tests/schema_examples.py"
                whole = {"$defs": bulletin_schema()["$defs"], **described}
                validator = jsonschema_rs.validator_for(whole)
                for example in described["examples"]:
                    assert validator.is_valid(example), f"{model}.{key}"

    def test_no_words_for_keys_that_are_not_there(self) -> None:
        keys = {key for one in models().values() for key in one["properties"]}
        full = {f"{model}.{key}" for model, one in models().items() for key in one["properties"]}
        assert set(all_words()) <= keys | full

    def test_lines_have_what_a_notice_and_a_bulletin_have(self) -> None:
        lines, whole = line_schema()["$defs"], models()
        notice = [*lines["NoticeLine"]["properties"]]
        assert notice == ["record", *whole["Notice"]["properties"], "schema_version"]
        rest = [key for key in whole["Bulletin"]["properties"] if key != "notices"]
        assert [*lines["BulletinLine"]["properties"]] == ["record", *rest]


class TestChange:
    """A change of the output is a new version, with a note."""

    def test_is_noted_in_the_documents(self) -> None:
        rows = re.findall(
            r"^\| ([0-9]+\.[0-9]+) \| (?:`([0-9a-f]{12})`)? ?\| (.+) \|$",
            DEVELOPERS.read_text("utf-8"),
            re.MULTILINE,
        )
        versions = [tuple(map(int, version.split("."))) for version, _, _ in rows]
        marks = [mark for _, mark, _ in rows if mark]
        assert versions == sorted(set(versions))
        assert len(marks) == len(set(marks))
        assert rows[-1][:2] == (VERSION, fingerprint()), (
            "the output has changed: raise VERSION in schema.py and add a row to `Schema version` "
            f"in DEVELOPERS.md, with `{fingerprint()}` and what has changed"
        )

    def test_words_for_people_may_change(self, monkeypatch: pytest.MonkeyPatch) -> None:
        before = fingerprint()
        monkeypatch.setattr("noticeparse.schema.describe", lambda *_: "other words")
        monkeypatch.setattr("noticeparse.schema.ENTRIES", {"a-new-code": None})
        assert fingerprint() == before

    @pytest.mark.parametrize("key", ["description", "title", "examples", "feature"])
    def test_keys_may_not(self, key: str, monkeypatch: pytest.MonkeyPatch) -> None:
        # Also a key of the data that is called like a word of the schema for people.
        before, whole = fingerprint(), bulletin_schema()

        def changed() -> dict[str, Any]:
            schema: dict[str, Any] = json.loads(json.dumps(whole))
            schema["$defs"]["Feature"]["properties"][key] = {"type": "boolean"}
            return schema

        monkeypatch.setattr("noticeparse.schema.bulletin_schema", changed)
        assert fingerprint() != before


class TestOutputs:
    """What is written is valid."""

    @pytest.mark.parametrize("path", ALL, ids=name_of)
    def test_of_the_corpus(self, path: Path) -> None:
        assert [*faults(path.read_text("utf-8"))] == []

    @pytest.mark.parametrize("text", [*SPECIMENS.values(), WEEK, f"Chart 802\n{LINE}\njunk at 9m"])
    def test_of_specimens(self, text: str) -> None:
        assert [*faults(text)] == []

    def test_what_is_wrong_is_seen(self) -> None:
        record = json.loads("".join(write(new_writer("json"), [parse(WEEK)])))
        validator = validators()["json"]
        for key, value in (
            ("findings", [{"code": "no-such-code"}]), ("further", 1), ("caution", None),
        ):  # fmt: skip
            assert not validator.is_valid({**record, key: value})
        del record["coverage"]
        assert not validator.is_valid(record)
        (line, *_) = write(new_writer("jsonl"), [parse(WEEK)])
        notice = json.loads(line.splitlines()[0])
        assert validators()["jsonl"].is_valid(notice)
        del notice["schema_version"]
        assert not validators()["jsonl"].is_valid(notice)


@cache
def validators() -> dict[str, Any]:
    schemas = {"json": bulletin_schema(), "jsonl": line_schema()}
    for schema in schemas.values():
        jsonschema_rs.meta.validate(schema)
    return {form: jsonschema_rs.validator_for(schema) for form, schema in schemas.items()}


def faults(text: str) -> Iterator[str]:
    """What is wrong in the outputs of a text."""
    bulletin = parse(text, name="w.txt")
    for form, validator in validators().items():
        for line in "".join(write(new_writer(form), [bulletin])).splitlines():
            yield from (str(error) for error in validator.iter_errors(json.loads(line)))


@cache
def models() -> dict[str, Any]:
    schema = bulletin_schema()
    return {"Bulletin": schema, **schema["$defs"]}
