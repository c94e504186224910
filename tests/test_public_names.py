"""Every public name says what goes in and out, the units, the source of a rule, what it raises."""

from __future__ import annotations

import ast
import importlib
import inspect
import re
from collections.abc import Callable, Iterator
from itertools import pairwise
from pathlib import Path
from typing import Any, get_type_hints

import pytest
from hypothesis import given
from hypothesis import strategies as st

import noticeparse
from noticeparse import records
from noticeparse import testing as kit
from noticeparse.schema_words import describe
from noticeparse.spans import Record

PUBLIC = (noticeparse, records, kit)
NAMES = [
    (module, name) for module in PUBLIC for name in module.__all__ if not name.startswith("__")
]
FUNCTIONS = [
    (name, getattr(module, name))
    for module, name in NAMES
    if inspect.isfunction(getattr(module, name))
]
RECORDS = [
    getattr(records, name)
    for name in records.__all__
    if inspect.isclass(getattr(records, name)) and issubclass(getattr(records, name), Record)
]

UNITS = {
    "m": "metres?", "mm": "millimetres", "s": "seconds", "nm": "nautical miles", "deg": "degrees",
}  # fmt: skip
"""By the ending of a key: the unit that its description must name."""
DEGREES = ("lat", "lon", "south", "west", "north", "east", "scale_latitude")

SOURCES = {
    "parse": ("ISO 6709", "INT 1", "IALA"),
    "parse_position": ("ISO 6709",),
    "parse_light": ("INT 1", "S-57"),
    "parse_depth": ("INT 1",),
    "find_positions": ("ISO 6709",),
    "read_chart_list": ("RFC 7946",),
    "Bulletin": (),
    "Position": ("ISO 6709",),
    "Light": ("INT 1", "S-57"),
    "Feature": ("S-57",),
    "Depth": ("S-57",),
    "Sound": ("S-57",),
    "Validity": ("ISO 8601",),
    "Finding": ("RFC 6901",),
    "Datum": ("EPSG",),
    "lights": ("INT 1",),
}
"""By the name: the standards that its rules come from, as its words must say."""

UNUSABLE = noticeparse.parse("12/26 Quill.\nChart 802\nInsert wreck 47-72S 123-45W\n").notices[0]
NO_TEXT: Any = b"47-12.34S 123-45.67W"
RAISES: list[tuple[Callable[..., object], tuple[Any, ...], dict[str, Any], type[Exception]]] = [
    (noticeparse.parse, (NO_TEXT,), {}, TypeError),
    (noticeparse.parse, ("",), {"charts": []}, TypeError),
    (noticeparse.parse, ("",), {"region": "C"}, ValueError),
    (noticeparse.parse_position, (NO_TEXT,), {}, TypeError),
    (noticeparse.parse_position, ("47-72S 123-45W",), {}, noticeparse.NoticeParseError),
    (noticeparse.parse_light, (NO_TEXT,), {}, TypeError),
    (noticeparse.parse_light, ("Xl.5s",), {}, noticeparse.NoticeParseError),
    (noticeparse.parse_depth, (NO_TEXT,), {}, TypeError),
    (noticeparse.parse_depth, ("deep",), {}, noticeparse.NoticeParseError),
    (noticeparse.find_positions, (NO_TEXT,), {}, TypeError),
    (noticeparse.read_chart_list, ("no/such/list.csv",), {}, OSError),
    (noticeparse.read_chart_list, (__file__,), {}, noticeparse.NoticeParseError),
    (noticeparse.read_file, ("no/such/file.pdf",), {}, OSError),
    (noticeparse.read_file, (b"%PDF-1.7 damaged",), {}, noticeparse.NotReadable),
    (noticeparse.read_file, (b"",), {}, ValueError),
    (noticeparse.iter_notices, ("47-12.34S 123-45.67W",), {}, TypeError),
    (noticeparse.iter_notices, ([],), {"charts": []}, TypeError),
    (noticeparse.iter_notices, ([],), {"region": "C"}, ValueError),
    (noticeparse.render, (NO_TEXT,), {}, TypeError),
    (noticeparse.render, (UNUSABLE,), {}, ValueError),
    (kit.read_reply, ("{",), {}, ValueError),
    (kit.read_reply, ("[]",), {}, ValueError),
]
"""A function, what it is given, and what it raises then."""


def words_of(module: Any, name: str) -> str:
    """The documentation of a name: its own docstring, or the one below its assignment."""
    value = getattr(module, name)
    if inspect.isclass(value) or inspect.isfunction(value):
        return vars(value).get("__doc__") or "" if inspect.isclass(value) else value.__doc__ or ""
    return dict(_assigned(module)).get(name, "")


def _assigned(module: Any) -> Iterator[tuple[str, str]]:
    """The names assigned in the modules of a package, each with the docstring below it."""
    for path in Path(module.__file__).parent.glob("*.py"):
        body = ast.parse(path.read_text("utf-8")).body
        for one, below in pairwise(body):
            target = getattr(one, "target", None)
            targets = one.targets if isinstance(one, ast.Assign) else [target]
            if isinstance(targets[0], ast.Name) and isinstance(below, ast.Expr):
                yield targets[0].id, str(getattr(below.value, "value", ""))


@pytest.mark.parametrize(("module", "name"), NAMES, ids=lambda one: getattr(one, "__name__", one))
def test_name_is_documented_and_to_be_had(module: Any, name: str) -> None:
    assert words_of(module, name).strip(), name
    assert name in dir(importlib.import_module(module.__name__)) or hasattr(module, name)


@pytest.mark.parametrize(("name", "function"), FUNCTIONS, ids=[name for name, _ in FUNCTIONS])
def test_types_are_complete(name: str, function: Callable[..., object]) -> None:
    signature = inspect.signature(function)
    assert signature.return_annotation is not inspect.Signature.empty
    assert all(one.annotation is not one.empty for one in signature.parameters.values()), name
    if function.__module__ == "noticeparse.api":
        gives = str(signature.return_annotation).rpartition("[")[2].rstrip("]")
        assert f"`{gives}`" in (function.__doc__ or ""), f"{name} says not what it gives"
        assert get_type_hints(function)


@pytest.mark.parametrize("record", RECORDS, ids=lambda one: one.__name__)
def test_every_key_of_a_record_says_what_it_is_and_in_which_unit(record: type[Record]) -> None:
    for key, field in record.model_fields.items():
        written = field.serialization_alias or key
        words = field.description or describe(record.__name__, written)
        assert words, f"{record.__name__}.{key}"
        ending = "deg" if key in DEGREES else key.rpartition("_")[2] if "_" in key else ""
        if ending in UNITS:
            assert re.search(UNITS[ending], words), f"{record.__name__}.{key}: {words}"


def test_units_are_looked_for() -> None:
    keys = {key for record in RECORDS for key in record.model_fields}
    assert {key.rpartition("_")[2] for key in keys if "_" in key} >= set(UNITS)
    assert keys >= set(DEGREES)


@pytest.mark.parametrize("name", SOURCES)
def test_source_is_named(name: str) -> None:
    (module,) = [module for module, public in NAMES if public == name]
    words = words_of(module, name)
    if inspect.isclass(value := getattr(module, name)) and issubclass(value, Record):
        words += str([one.description for one in value.model_fields.values()])
    for source in SOURCES[name]:
        assert source in words, f"{name} says nothing of {source}"


@pytest.mark.parametrize(("function", "arguments", "options", "error"), RAISES)
def test_what_is_raised_is_told(
    function: Callable[..., object],
    arguments: tuple[Any, ...],
    options: dict[str, Any],
    error: type[Exception],
) -> None:
    with pytest.raises(error):
        function(*arguments, **options)
    assert re.search(rf"[Rr]aises[^.]*\b{error.__name__}\b", function.__doc__ or "")


def test_every_reader_is_tried_with_what_it_refuses() -> None:
    tried = {function.__name__ for function, *_ in RAISES}
    told = {name for name, function in FUNCTIONS if re.search("[Rr]aises [A-Z]", function.__doc__)}
    assert told <= tried | {"bulletins"}


def test_a_strategy_raises_for_a_layout_that_does_not_exist() -> None:
    @given(kit.bulletins(layouts=("no-such-layout",)))
    def draws(_: kit.WrittenBulletin) -> None:
        pytest.fail("something was drawn")

    with pytest.raises(ValueError, match="no-such-layout"):
        draws()
    assert "Raises ValueError" in (kit.bulletins.__doc__ or "")


def test_strategies_are_strategies() -> None:
    for name in ("positions", "lights", "depths", "notices", "bulletins"):
        assert isinstance(getattr(kit, name)(), st.SearchStrategy), name
