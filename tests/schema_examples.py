"""Writes the examples of the JSON Schema: for each key a value seen in real output.

The first that is not empty, of lists the shortest.

    python -m tests.schema_examples

The clean corpus and a few texts for what it has not are read.  To be run when a key has come, or
when an example no longer fits; `tests/test_schema.py` says so.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import noticeparse
from noticeparse.records.chart_list import ChartList
from noticeparse.schema import bulletin_schema
from tests.corpus_files import CLEAN, CORPUS
from tests.test_contract import SPECIMENS

PLACE = Path(noticeparse.__file__).with_name("schema_examples.json")

_MORE = """\
2417/26 TAVRENNE ISLANDS (invented, not for navigation) - Quill Sound - Limits.
Chart 802 (INT 9871) plan B, Edition 3, 2 May 2026 [last correction 2310/26] WGS84
Amend period of light from 4s to 5s 47°12'.34S., 123°45'.67W.
Insert wreck 47°12'.34S., 123°45'.67W.
Insert harbour limit, arc of a circle of radius 1.2 miles, between the bearings 195° and 280° \
clockwise from seaward, centred on 47°12'.34S., 123°45'.67W.
Insert light, Fl.WR.15s12m9M, W 010°-090° 9M, obscured 090°-120° 47°12'.34S., 123°45'.67W.
Insert lights, 2F.R(hor)4m3M 47°12'.34S., 123°45'.67W.
Insert special buoy 47°12'.34S., 123°45'.60W. (PA)
Insert chimney, height 42m (rep 2025) 47°12'.34S., 123°45'.60W.
Chart 803 Panel A [last correction 2288/26] WGS84
Insert light, Fl.5s9M (occas) 47°12'.34S., 123°45'.67W.
"""
_EMPTY = (None, [], {}, "")


def bulletins() -> Iterator[dict[str, Any]]:
    """What is read, as JSON."""
    charts: ChartList = noticeparse.read_chart_list(CORPUS / "charts.csv")
    demo = (CORPUS / "demo.txt").read_text("utf-8")
    for text in (_MORE, demo):
        yield noticeparse.parse(text, name="week26.txt", charts=charts).model_dump(mode="json")
    for text in (*(path.read_text("utf-8") for path in CLEAN), *SPECIMENS.values()):
        yield noticeparse.parse(text, name="week26.txt").model_dump(mode="json")


def values(record: Any, schema: Any, models: dict[str, Any]) -> Iterator[tuple[str, Any]]:
    """Each `Model.key` of a record with its value, and those of the records in it."""
    if isinstance(record, list):
        for one in record:
            yield from values(one, schema.get("items", {}), models)
        return
    if not isinstance(record, dict):
        return
    model = _model(record, schema, models)
    if model is None:
        return
    for key, value in record.items():
        yield f"{model}.{key}", value
        yield from values(value, models[model]["properties"][key], models)


def _model(record: dict[str, Any], schema: Any, models: dict[str, Any]) -> str | None:
    """The name of the model that has the keys of a record."""
    names = {name.rpartition("/")[2] for name in _references(schema)} or {"Bulletin"}
    fitting = [
        name for name in sorted(names)
        if set(models[name]["properties"]) == set(record)
        and record.get("verb") in (None, models[name]["properties"].get("verb", {}).get("const"))
    ]  # fmt: skip
    return fitting[0] if fitting else None


def _references(schema: Any) -> Iterator[str]:
    if isinstance(schema, dict):
        if "$ref" in schema:
            yield schema["$ref"]
        for key, one in schema.items():
            if key in ("anyOf", "oneOf", "items"):
                yield from _references(one)
    elif isinstance(schema, list):
        for one in schema:
            yield from _references(one)


def examples() -> dict[str, list[Any]]:
    """An example of each key."""
    schema = bulletin_schema()
    models = {"Bulletin": schema, **schema["$defs"]}
    found: dict[str, Any] = {}
    for bulletin in bulletins():
        for key, value in values(bulletin, {"$ref": "Bulletin"}, models):
            if key not in found or _is_better(value, found[key]):
                found[key] = value
    keys = [f"{name}.{key}" for name, one in models.items() for key in one["properties"]]
    return {key: [found[key]] for key in keys if key in found}


def _is_better(value: Any, other: Any) -> bool:
    """Whether a value says more of its key than another that came before it."""
    if value in _EMPTY or other in _EMPTY:
        return value not in _EMPTY
    are_lists = isinstance(value, list) and isinstance(other, list)
    return are_lists and len(json.dumps(value)) < len(json.dumps(other))


def main() -> None:
    """Write the file."""
    lines = [
        f"{json.dumps(key)}: {json.dumps(one, ensure_ascii=False)}"
        for key, one in examples().items()
    ]
    PLACE.write_text("{\n" + ",\n".join(lines) + "\n}\n", "utf-8")


if __name__ == "__main__":
    main()
