"""A whole notice in the canonical layout, read again before it is handed out.

What is written must say what the record says, to the last figure.  So the text is parsed and held
against the record; where an action reads otherwise its next wording is tried, and where none is
left the action is told as not written.  Nothing goes out that says something else.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from noticeparse.canonical import heads
from noticeparse.canonical.actions import Line, Wording, in_columns, line, wordings
from noticeparse.canonical.places import Letters, NotWritable
from noticeparse.canonical.remarks import prose, told_by
from noticeparse.canonical.sameness import is_same, said_by
from noticeparse.pipeline import read_bulletin
from noticeparse.records.chart import ChartSection
from noticeparse.records.notice import Notice

_ROUNDS = 40


class Refused(NamedTuple):
    """An action that was not written: which, and why."""

    section: int
    action: int
    reason: str


class Written(NamedTuple):
    """A notice as text, what of it could not be written, and whether the rest reads as it did."""

    text: str
    refused: list[Refused]
    differs: str | None


_NOT_USABLE = "it is not usable: an error finding points at it"
_NO_WORDING = "no wording of it reads back as the record says"


def written_notice(notice: Notice) -> Written:
    """The notice in the canonical layout, without the actions that cannot be written."""
    return _Writing(notice).written()


class _Writing:
    """One notice being written; lives for one call."""

    def __init__(self, notice: Notice) -> None:
        self.notice = notice
        self.refused: dict[tuple[int, int], str] = {}
        self.wordings: dict[tuple[int, int], list[Wording]] = {}
        for at, section in enumerate(notice.charts):
            for row, action in enumerate(section.actions):
                if not action.usable:
                    self.refused[at, row] = _NOT_USABLE
                    continue
                try:
                    self.wordings[at, row] = wordings(action, section)
                except NotWritable as reason:
                    self.refused[at, row] = f"{_NO_WORDING}: {reason}"

    def written(self) -> Written:
        for _ in range(_ROUNDS):
            text = self.text()
            kept = self.kept()
            read = read_bulletin(text).notices
            if len(read) == 1 and is_same(read[0], kept):
                return Written(text, self.reasons(), None)
            row = self.first_unlike(read, kept)
            if row is None:
                return Written(text, self.reasons(), _difference(read, kept))
            if len(self.wordings[row]) > 1:
                self.wordings[row].pop(0)
            else:
                self.refused[row] = _NO_WORDING
        return Written(text, self.reasons(), _difference(read, kept))

    def reasons(self) -> list[Refused]:
        return [Refused(*at, reason) for at, reason in sorted(self.refused.items())]

    def kept(self) -> Notice:
        """The notice without the actions that are not written."""
        charts = [
            section.model_copy(
                update={
                    "actions": [
                        action
                        for row, action in enumerate(section.actions)
                        if (at, row) not in self.refused
                    ]
                }
            )
            for at, section in enumerate(self.notice.charts)
        ]
        return self.notice.model_copy(update={"charts": charts})

    def first_unlike(self, read: Sequence[Notice], kept: Notice) -> tuple[int, int] | None:
        """The first action that reads otherwise, None where the fault lies elsewhere."""
        if not read:
            return None
        for at, section in enumerate(kept.charts):
            rows = [row for one, row in self.wordings if one == at and (at, row) not in self.refused]
            if at >= len(read[0].charts):
                return None
            found = read[0].charts[at].actions
            for index, (row, action) in enumerate(zip(rows, section.actions, strict=True)):
                if index >= len(found) or not is_same(found[index], action):
                    return at, row
            if len(found) > len(rows) and rows:
                return at, rows[-1]
        return None

    def text(self) -> str:
        notice = self.notice
        paragraphs = [prose(remark) for remark in notice.remarks]
        clauses = [told_by(words) for words in paragraphs]
        valid = next((one.valid for one in clauses if one.valid is not None), None)
        is_told = valid is not None and notice.valid is not None and is_same(valid, notice.valid)
        cancelled = [ref for one in clauses for ref in one.cancels]
        lines = [heads.opening(notice)]
        lines += heads.clauses(notice, cancelled, is_valid_told=is_told)
        blocks = ["\n".join(one for one in lines if one)]
        blocks += self.remarks(paragraphs)
        blocks += [self.section(at, section) for at, section in enumerate(notice.charts)]
        return "\n\n".join(block for block in blocks if block) + "\n"

    def remarks(self, paragraphs: Sequence[str]) -> list[str]:
        if self.notice.status == "radio_warning":
            return list(paragraphs)
        return [f"Remark: {words}" for words in paragraphs]

    def section(self, at: int, section: ChartSection) -> str:
        if self.notice.status == "radio_warning":
            return ""
        letters = Letters()
        lines: list[Line] = []
        for row, action in enumerate(section.actions):
            if (at, row) in self.refused:
                continue
            try:
                lines.append(line(action, self.wordings[at, row][0], letters))
            except NotWritable as reason:
                self.refused[at, row] = f"{_NO_WORDING}: {reason}"
        has_head = section.chart is not None or section.international is not None
        head = [heads.chart_head(section)] if has_head else []
        return "\n".join([*head, *in_columns(lines)])


def _difference(read: Sequence[Notice], kept: Notice) -> str:
    """Where the notice as read differs from the record, in the names of its keys."""
    if len(read) != 1:
        return f"it reads back as {len(read)} notices"
    found, wanted = said_by(read[0]), said_by(kept)
    keys = [key for key in wanted if found[key] != wanted[key]]
    return f"it reads back with another {', '.join(keys)}"
