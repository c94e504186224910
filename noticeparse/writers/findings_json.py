"""Findings for a program: those of the bulletin, without its notices.

`json` is an object a text; `jsonl` a line for each finding and last one for the text.  The caution
stands in that one and holds for all: an aid to a qualified officer, the issuing authority's notice
governs, and every position must be checked against it.  Paths are those of the whole Bulletin.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from noticeparse.records.bulletin import Bulletin

_ABOUT = {"schema_version", "generator", "caution", "source"}


def write_object(bulletin: Bulletin) -> Iterator[str]:
    """One line: what the text is, and its findings."""
    yield bulletin.model_dump_json(include={*_ABOUT, "findings"}) + "\n"


def write_lines(bulletin: Bulletin) -> Iterator[str]:
    """A line for each finding, then one that says what text they are of."""
    for finding in bulletin.findings:
        yield _line("finding", finding.model_dump_json())
    yield _line("bulletin", bulletin.model_dump_json(include=_ABOUT))


def _line(record: str, body: str) -> str:
    return f'{{"record":"{record}",{body[1:]}\n'


WRITERS: dict[str, Callable[[Bulletin], Iterator[str]]] = {
    "json": write_object,
    "jsonl": write_lines,
}
"""By the name of the format."""
