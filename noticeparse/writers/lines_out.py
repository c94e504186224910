"""Bulletins as JSON Lines: a line for each notice, then one for the rest of its bulletin.

Every line tells by its first key what it is, and holds the version of the schema; a notice line
has it behind the keys of the Notice.  In a notice line the paths of findings start at the notice;
in a bulletin line they are those of the whole Bulletin.  The caution stands in the bulletin line
only and holds for the notice lines before it: an aid to a qualified officer, the issuing
authority's notice governs, and every position must be checked against it before use.
"""

from __future__ import annotations

from collections.abc import Iterator

from noticeparse.records.bulletin import Bulletin
from noticeparse.records.notice import Notice
from noticeparse.writers import Part, Writer

_VERSION = Bulletin.model_fields["schema_version"].default


class LinesWriter(Writer):
    """The lines of each bulletin, its notices first."""

    def part(self, bulletin: Bulletin) -> Part:
        """All its lines."""
        return Part("".join(write_lines(bulletin)))


def write_lines(bulletin: Bulletin) -> Iterator[str]:
    """The lines of a bulletin, one by one."""
    for index, notice in enumerate(bulletin.notices):
        yield write_notice(notice, index)
    yield _line("bulletin", bulletin.model_dump_json(exclude={"notices"}))


def write_notice(notice: Notice, index: int) -> str:
    """The line of the notice at `index` of its bulletin."""
    root = f"/notices/{index}"
    findings = [
        one.model_copy(update={"paths": [*_below(root, one.paths)]}) for one in notice.findings
    ]
    body = notice.model_copy(update={"findings": findings}).model_dump_json()
    return _line("notice", f'{body[:-1]},"schema_version":"{_VERSION}"}}')


def _below(root: str, paths: list[str]) -> Iterator[str]:
    """Paths within a record, counted from it; those to other notices have no meaning there."""
    for path in paths:
        if path == root or path.startswith(root + "/"):
            yield path[len(root) :]


def _line(record: str, body: str) -> str:
    return f'{{"record":"{record}",{body[1:]}\n'
