"""A whole notice in the canonical layout, read again before it is handed out.

What is written must say what the record says, to the last figure.  So the text is parsed and held
against the record; where an action reads otherwise its next wording is tried, and where none is
left the action is told as not written.  Nothing goes out that says something else.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
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

Tell = Callable[[Refused], str]


def written_notice(notice: Notice, tell: Tell | None = None) -> Written:
    """The notice in the canonical layout, without the actions that cannot be written.

    What `tell` says of each of these stands in its place.
    """
    return _Writing(notice).written(tell)


class _Writing:
    """One notice being written; lives for one call."""

    def __init__(self, notice: Notice) -> None:
        self.notice = notice
        self.refused: dict[tuple[int, int], str] = {}
        self._wordings: dict[tuple[int, int], Iterator[Wording]] = {}
        self.wording: dict[tuple[int, int], Wording] = {}
        for at, section in enumerate(notice.charts):
            for row, action in enumerate(section.actions):
                if not action.usable:
                    self.refused[at, row] = _NOT_USABLE
                    continue
                self._wordings[at, row] = wordings(action, section)
                self.next_wording((at, row))

    def next_wording(self, row: tuple[int, int]) -> None:
        """Take the next wording of an action; where none is left, refuse it."""
        wording = next(self._wordings[row], None)
        if wording is None:
            self.refused[row] = _NO_WORDING
        else:
            self.wording[row] = wording

    def written(self, tell: Tell | None) -> Written:
        """The text, once it reads back or nothing is left to try."""
        for _ in range(_ROUNDS + len(self.wording)):
            text = self.text()
            kept = self.kept()
            read = read_bulletin(text).notices
            if _comes_back(read, kept):
                told = self.text(tell) if tell is not None and self.refused else text
                return Written(told, self.reasons(), None)
            row = self.first_unlike(read)
            if row is None:
                break
            self.next_wording(row)
        return Written(text, self.reasons(), _difference(read, kept))

    def reasons(self) -> list[Refused]:
        return [Refused(*at, reason) for at, reason in sorted(self.refused.items())]

    def kept(self) -> Notice:
        """The notice without the actions that are not written."""
        return self.notice.model_copy(update={"charts": [one for _, one in self.sections()]})

    def sections(self) -> Iterator[tuple[list[tuple[int, int]], ChartSection]]:
        """Each section with its actions that are written, and which these are.

        One without a head is none any more when none of its actions is left.
        """
        for at, section in enumerate(self.notice.charts):
            rows = [(at, row) for row in range(len(section.actions))]
            left = [row for row in rows if row not in self.refused]
            if left or not rows or _has_head(section):
                actions = [section.actions[row] for _, row in left]
                yield left, section.model_copy(update={"actions": actions})

    def first_unlike(self, read: Sequence[Notice]) -> tuple[int, int] | None:
        """The first action that reads otherwise, None where the fault lies elsewhere."""
        if not read:
            return None
        for index, (rows, section) in enumerate(self.sections()):
            if index >= len(read[0].charts):
                return None
            found = read[0].charts[index].actions
            for at, (row, action) in enumerate(zip(rows, section.actions, strict=True)):
                if at >= len(found) or not is_same(found[at], action):
                    return row
            if len(found) > len(rows) and rows:
                return rows[-1]
        return None

    def text(self, tell: Tell | None = None) -> str:
        """The notice with the wordings chosen so far."""
        notice = self.notice
        paragraphs = [prose(remark) for remark in notice.remarks]
        clauses = [told_by(words) for words in paragraphs]
        valid = next((one.valid for one in clauses if one.valid is not None), None)
        is_told = valid is not None and notice.valid is not None and is_same(valid, notice.valid)
        cancelled = [ref for one in clauses for ref in one.cancels]
        lines = [heads.opening(notice)]
        lines += heads.clauses(notice, cancelled, is_valid_told=is_told)
        blocks = ["\n".join(one for one in lines if one)]
        if notice.status == "radio_warning":
            # A radio warning has no chart sections but those that its words name.
            blocks += paragraphs
        else:
            blocks += [f"Remark: {words}" for words in paragraphs]
            blocks += [self.section(at, one, tell) for at, one in enumerate(notice.charts)]
        return "\n\n".join(block for block in blocks if block) + "\n"

    def section(self, at: int, section: ChartSection, tell: Tell | None) -> str:
        """A chart and its actions, one a line."""
        letters = Letters()
        lines: list[Line] = []
        for row, action in enumerate(section.actions):
            if (at, row) not in self.refused:
                try:
                    lines.append(line(action, self.wording[at, row], letters))
                except NotWritable as reason:
                    self.refused[at, row] = f"{_NO_WORDING}: {reason}"
            if (at, row) in self.refused and tell is not None:
                lines.append(Line(tell(Refused(at, row, self.refused[at, row])), ""))
        head = [heads.chart_head(section)] if _has_head(section) else []
        return "\n".join([*head, *in_columns(lines)])


def _has_head(section: ChartSection) -> bool:
    return section.chart is not None or section.international is not None


def _comes_back(read: Sequence[Notice], kept: Notice) -> bool:
    """Whether the notice is read again; of a fragment with nothing left nothing is."""
    if not read:
        return not (kept.charts or kept.remarks or kept.number is not None)
    return len(read) == 1 and is_same(read[0], kept)


def _difference(read: Sequence[Notice], kept: Notice) -> str:
    """Where the notice as read differs from the record, in the names of its keys."""
    if not read:
        return "it has no number, and no action that can be written"
    if len(read) != 1:
        return f"it reads back as {len(read)} notices"
    found, wanted = said_by(read[0]), said_by(kept)
    keys = [key for key in wanted if found[key] != wanted[key]]
    return f"read again it differs in its {' and '.join(keys)}"
