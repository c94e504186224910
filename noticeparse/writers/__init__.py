"""From records to text: one module per output, no reading and no judging.

A format of `parse` is a function that takes bulletins and yields pieces of text, so that a long
run is written while it is read.  Adding one: its module, and one line in `FORMATS`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from importlib import import_module
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from noticeparse.records.bulletin import Bulletin

    Writer = Callable[[Iterable[Bulletin]], Iterator[str]]

FORMATS: dict[str, str] = {
    "json": "noticeparse.writers.json_out:write_json",
    "jsonl": "noticeparse.writers.lines_out:write_lines",
}
"""Formats by name; named by their place, so that help is shown without importing them."""


def find_writer(form: str) -> Writer:
    """The writer of a format."""
    module, _, name = FORMATS[form].partition(":")
    writer: Writer = getattr(import_module(module), name)
    return writer
