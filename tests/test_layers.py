"""The import arrows of the package, the sizes of its modules and functions, and no import cycle.

An arrow may only point up the table: a module imports from layers above its own, or from its own
package.  The names of a `TYPE_CHECKING` block count too, since a type is knowledge as well.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator
from functools import cache
from graphlib import CycleError, TopologicalSorter
from pathlib import Path

import pytest

import noticeparse

ROOT = Path(noticeparse.__file__).parent

LAYERS = (
    (
        "version",
        "numbers",
        "spans",
        "store",
        "caution",
        "schema_words",
        "collector",
        "chart_math",
        "globe",
        "packaged",
        "signs",
        "telegrams",
    ),
    ("patterns", "rare"),
    ("text", "grammar"),
    ("records", "stretch"),
    ("faults", "errors"),
    ("catalogue", "vocabulary", "intake", "chart_order"),
    ("readers", "schema", "sheets"),
    ("layout", "chart_list"),
    ("context",),
    ("findings", "moving"),
    ("characters",),
    ("build", "checks"),
    ("pipeline", "together"),
    ("parts", "canonical", "files"),
    ("writers", "api"),
    ("worksheet",),
    ("testing", "web"),
    ("console",),
    ("archive",),
    ("", "cli"),
    ("__main__",),
)
"""From the ground up; `""` is the front door, `noticeparse/__init__.py`."""

RANK = {name: rank for rank, layer in enumerate(LAYERS) for name in layer}

STAGES = (
    ("line",),
    ("column",),
    ("handed_on",),
    ("drafts",),
    ("evidence",),
    ("opening", "place"),
    ("copied", "sentence"),
    ("item",),
    ("row",),
    ("body",),
    ("assembly", "claims"),
    ("table",),
    ("head",),
    ("bulletin",),
)
"""The packages and modules of `layout`, likewise from the ground up."""

STAGE = {f"layout.{name}": stage for stage, names in enumerate(STAGES) for name in names}

LONGEST_MODULE = 300
LONGEST_FUNCTION = 60


def module_name(path: Path) -> str:
    """`readers.lights` for noticeparse/readers/lights.py; a package for its `__init__`."""
    parts = path.relative_to(ROOT).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


MODULES = {module_name(path): path for path in sorted(ROOT.rglob("*.py"))}
NAMES = sorted(MODULES)


@cache
def tree_of(name: str) -> ast.Module:
    return ast.parse(MODULES[name].read_text("utf-8"))


@cache
def imports_of(name: str) -> frozenset[str]:
    """The modules of the package that a module imports, wherever in it the import stands."""
    found = set()
    for node in ast.walk(tree_of(name)):
        if isinstance(node, ast.Import):
            found |= {_own(alias.name, None) for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{name}: relative import"
            found |= {_own(node.module or "", alias.name) for alias in node.names}
    return frozenset(one for one in found if one is not None)


def _own(module: str, name: str | None) -> str | None:
    package, _, inner = module.partition(".")
    if package != "noticeparse":
        return None
    whole = f"{inner}.{name}".lstrip(".")
    return whole if name and whole in MODULES else inner


def package_of(name: str) -> str:
    return name.partition(".")[0]


def stage_of(name: str) -> str:
    """`layout.item` for `layout.item.cutter`."""
    return ".".join(name.split(".")[:2])


def functions_of(name: str) -> Iterator[tuple[str, int]]:
    for node in ast.walk(tree_of(name)):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef) and node.end_lineno:
            yield node.name, node.end_lineno - node.lineno + 1


def test_the_walk_sees_the_package() -> None:
    assert "layout.line.lines" in imports_of("pipeline")
    assert "grammar" in imports_of("readers.places")
    assert len(NAMES) > 80


@pytest.mark.parametrize("name", NAMES)
def test_every_module_has_a_layer(name: str) -> None:
    assert package_of(name) in RANK


@pytest.mark.parametrize("name", NAMES)
def test_arrows_point_up_the_table(name: str) -> None:
    own = package_of(name)
    backwards = [
        other
        for other in imports_of(name)
        if package_of(other) != own and RANK[package_of(other)] >= RANK[own]
    ]
    assert not backwards, f"{name} imports from its own layer or a later one: {backwards}"


@pytest.mark.parametrize("name", [n for n in NAMES if n.startswith("layout.")])
def test_arrows_of_the_layout_point_up_its_stages(name: str) -> None:
    own = stage_of(name)
    backwards = [
        other
        for other in imports_of(name)
        if other.startswith("layout.") and stage_of(other) != own
        if STAGE[stage_of(other)] >= STAGE[own]
    ]
    assert not backwards, f"{name} imports from its own stage or a later one: {backwards}"


def test_no_import_cycle() -> None:
    graph = {name: imports_of(name) for name in NAMES}
    try:
        TopologicalSorter(graph).prepare()
    except CycleError as error:
        pytest.fail(f"import cycle: {' <- '.join(error.args[1])}")


@pytest.mark.parametrize("name", NAMES)
def test_module_is_of_a_size_to_read(name: str) -> None:
    assert len(MODULES[name].read_text("utf-8").splitlines()) <= LONGEST_MODULE


@pytest.mark.parametrize("name", NAMES)
def test_functions_are_of_a_size_to_read(name: str) -> None:
    long = [f"{what}: {lines}" for what, lines in functions_of(name) if lines > LONGEST_FUNCTION]
    assert not long


@pytest.mark.parametrize("name", NAMES)
def test_module_says_what_it_is(name: str) -> None:
    assert ast.get_docstring(tree_of(name))


# It opens the socket that the service listens on, and reads no text.
LISTENS = "web.server"


@pytest.mark.parametrize(
    "name", [name for name in NAMES if package_of(name) != "cli" and name != LISTENS]
)
def test_nothing_is_read_from_the_clock(name: str) -> None:
    outside = {"time", "random", "locale", "socket", "uuid", "platform"}
    if package_of(name) == "testing":
        outside -= {"random"}  # dice that are given a seed
    assert not outside_imports(name) & outside
    assert not {"now", "today", "utcnow"} & attributes_of(name)


def attributes_of(name: str) -> set[str]:
    return {node.attr for node in ast.walk(tree_of(name)) if isinstance(node, ast.Attribute)}


def outside_imports(name: str) -> set[str]:
    found = set()
    for node in ast.walk(tree_of(name)):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.level == 0:
            found.add(node.module or "")
    return found


# Where the grammar may be built: the one place that finds the files, and the readers that use it.
LARK_IN = ("grammar", "readers", "layout.line.lines")


@pytest.mark.parametrize("name", [name for name in NAMES if "lark" in outside_imports(name)])
def test_only_readers_know_the_parser(name: str) -> None:
    assert name.startswith(LARK_IN)


def test_records_know_no_reading() -> None:
    for name in NAMES:
        if package_of(name) == "records":
            assert {package_of(other) for other in imports_of(name)} <= {
                "records", "spans", "numbers",
            }  # fmt: skip
