"""From records to text: one module per output, no reading and no judging.

A format of `parse` is a `Writer`.  What takes time, one bulletin to its part, needs nothing of the
others and may be done elsewhere; parts are then added in order, so that a long run is written
while it is read.  Adding one: its module, and one line in `FORMATS` and `ENDINGS`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from importlib import import_module
from pathlib import PurePath
from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from noticeparse.records.bulletin import Bulletin

FORMATS: dict[str, str] = {
    "json": "noticeparse.writers.json_out:JsonWriter",
    "jsonl": "noticeparse.writers.lines_out:LinesWriter",
    "geojson": "noticeparse.writers.geojson_out:GeoJsonWriter",
    "csv": "noticeparse.writers.csv_out:CsvWriter",
    "text": "noticeparse.writers.text_out:TextWriter",
}
"""Formats by name; named by their place, so that help is shown without importing them."""

ENDINGS = {
    ".json": "json",
    ".jsonl": "jsonl",
    ".geojson": "geojson",
    ".csv": "csv",
    ".txt": "text",
}
"""What the ending of a file's name tells."""


class Wishes(NamedTuple):
    """What is asked of the formats beside their names."""

    is_indented: bool = False
    """JSON over many lines, for the eye."""
    has_mark: bool = False
    """CSV with a byte order mark, without which some spreadsheets damage symbols."""
    with_unusable: bool = False
    """GeoJSON with the actions that must not be used, without geometry."""


AS_USUAL = Wishes()
"""Nothing in particular is asked."""


class Part(NamedTuple):
    """What one bulletin gives to an output."""

    body: str
    note: str = ""
    """What the end of the output says of it."""


class Writer:
    """One output: a part for each bulletin, and what stands before, between and behind them."""

    def __init__(self, wishes: Wishes) -> None:
        self.wishes = wishes

    def part(self, bulletin: Bulletin) -> Part:
        """What a bulletin gives; depends on nothing that was written before."""
        raise NotImplementedError

    def add(self, part: Part) -> str:
        """The text to be written for the next part."""
        return part.body

    def end(self) -> str:
        """The text to be written behind the last part, if there was one."""
        return ""


def new_writer(form: str, wishes: Wishes = AS_USUAL) -> Writer:
    """The writer for one output in a format."""
    module, _, name = FORMATS[form].partition(":")
    kind: Callable[[Wishes], Writer] = getattr(import_module(module), name)
    return kind(wishes)


def write(writer: Writer, bulletins: Iterable[Bulletin]) -> Iterator[str]:
    """The pieces of a whole output; none where there is no bulletin."""
    is_empty = True
    for bulletin in bulletins:
        is_empty = False
        yield writer.add(writer.part(bulletin))
    if not is_empty:
        yield writer.end()


def may_stream(forms: Iterable[str]) -> bool:
    """Whether outputs in these formats can be written of a text that is never held as a whole.

    Where one of them needs all of it, all get the records of the whole: they must not differ.
    """
    return all(form == "jsonl" for form in forms)


def form_of(path: str) -> str | None:
    """The format that the ending of a file's name tells, or None."""
    return ENDINGS.get(PurePath(path).suffix.lower())


def ending_of(form: str) -> str:
    """The ending of the name of a file in a format: `.csv`."""
    return next(ending for ending, one in ENDINGS.items() if one == form)
