"""The layouts by name, and the loop that fills a bulletin."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from random import Random
from typing import NamedTuple

from noticeparse.testing.generator import columns, prose, tables
from noticeparse.testing.generator.jobs import Draw
from noticeparse.testing.generator.truth import Truth
from noticeparse.testing.generator.writing import Writing


class Layout(NamedTuple):
    """A layout: what stands at the top of the bulletin, and what writes one notice."""

    name: str
    head: Callable[[Writing], None]
    notice: Callable[[Writing], None]


ALL: tuple[Layout, ...] = (
    Layout("notice_first", columns.edition_head, columns.notice_first),
    Layout("chart_first", tables.chart_first_head, tables.chart_first),
    Layout("tab_table", tables.tab_table_head, tables.tab_table),
    Layout("wide_table", tables.wide_table_head, tables.wide_table),
    Layout("lettered_list", columns.edition_head, columns.lettered_list),
    Layout("sentences", prose.sentences_head, prose.sentences),
    Layout("run_on", prose.run_on_head, prose.run_on),
    Layout("position_first", columns.edition_head, columns.position_first),
)
NAMES: tuple[str, ...] = tuple(layout.name for layout in ALL)


class Bulletin(NamedTuple):
    """A generated text and what it says."""

    text: str
    truth: Truth


def generate(
    seed: int,
    *,
    size_bytes: int | None = None,
    notices: int | None = None,
    layouts: Sequence[str] = NAMES,
    plan: Sequence[Draw] = (),
) -> Bulletin:
    """A bulletin in one of the layouts, of so many notices or of at least so many UTF-8 bytes.

    Its first actions are those of `plan`; every notice takes two or more.

    The same arguments give the same text.  Raises ValueError for a layout that does not exist.
    """
    if (size_bytes is None) == (notices is None):
        raise ValueError("give size_bytes or notices, not both")
    rng = Random(seed)
    return write_bulletin(rng, size_bytes=size_bytes, notices=notices, layouts=layouts, plan=plan)


def write_bulletin(
    rng: Random,
    *,
    size_bytes: int | None = None,
    notices: int | None = None,
    layouts: Sequence[str] = NAMES,
    plan: Sequence[Draw] = (),
) -> Bulletin:
    """The same, with the draws of `rng`."""
    layout = _named(rng.choice(list(layouts)))
    writing = Writing(rng, layout.name, plan)
    layout.head(writing)
    while not _is_full(writing, size_bytes, notices):
        layout.notice(writing)
    return Bulletin(writing.text(), writing.truth)


def _named(name: str) -> Layout:
    for layout in ALL:
        if layout.name == name:
            return layout
    raise ValueError(f"no layout `{name}`; there are {', '.join(NAMES)}")


def _is_full(writing: Writing, size_bytes: int | None, notices: int | None) -> bool:
    if notices is not None:
        return len(writing.truth.notices) >= notices
    return size_bytes is not None and writing.size >= size_bytes
