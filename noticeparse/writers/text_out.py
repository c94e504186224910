"""A bulletin as a reading copy for the chart corrector: complete, a box to tick by each action.

Under each notice its charts, under each chart its actions with their positions in the digits
written, under each action what was found amiss with it.  An action that must not be used has no
box.  Prose, the edition's own lists and what could not be read follow in their places.  The last
line is the caution.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterator

from noticeparse.caution import CAUTION
from noticeparse.findings import is_outside
from noticeparse.readers.references import notice_id
from noticeparse.records.bulletin import Bulletin, EditionList
from noticeparse.records.chart import ChartSection
from noticeparse.records.finding import Finding
from noticeparse.records.notice import Notice, Remark
from noticeparse.writers import Part, Wishes, Writer
from noticeparse.writers.findings_out import counted
from noticeparse.writers.paragraphs import NO_BREAK, filled, hanging
from noticeparse.writers.quoting import visible
from noticeparse.writers.rows import findings_of_actions
from noticeparse.writers.text_actions import action_lines, finding_lines

_RULE = "-" * 79
_DOUBLE_RULE = "=" * 79
_STATUSES = {
    "permanent": "",
    "temporary": "temporary",
    "preliminary": "preliminary",
    "radio_warning": "radio warning",
}
_OF_NOTICE = re.compile(r"/notices/([0-9]+)")


class TextWriter(Writer):
    """The copies of all bulletins, one below the other."""

    def __init__(self, wishes: Wishes) -> None:
        super().__init__(wishes)
        self._is_begun = False

    def part(self, bulletin: Bulletin) -> Part:
        """The copy of a bulletin."""
        return Part("".join(f"{line}\n" for line in _lines(bulletin)))

    def add(self, part: Part) -> str:
        """The copy, below a blank line where one stands above."""
        lead = "\n" if self._is_begun else ""
        self._is_begun = True
        return lead + part.body

    def end(self) -> str:
        """The caution."""
        return f"\n{_DOUBLE_RULE}\n{CAUTION}\n"


def _lines(bulletin: Bulletin) -> Iterator[str]:
    yield _DOUBLE_RULE
    yield from _head(bulletin)
    yield _DOUBLE_RULE
    of_actions = findings_of_actions(bulletin.findings)
    of_notices = _of_notices(bulletin)
    for index, notice in enumerate(bulletin.notices):
        yield ""
        yield from _notice(notice, f"/notices/{index}", of_actions, of_notices[index])
    for one in bulletin.lists:
        yield ""
        yield from _list(one)
    outside = [finding for finding in bulletin.findings if is_outside(finding)]
    if outside:
        yield ""
        yield "OF NO NOTICE"
        yield _RULE
        yield from finding_lines(outside, "  ")


def _head(bulletin: Bulletin) -> Iterator[str]:
    edition = bulletin.edition
    if edition is not None:
        number = f"edition {edition.number}" if edition.number else ""
        if edition.number and edition.year:
            number += f" of {edition.year}"
        parts = [edition.title, number, f"issued {edition.issued}" if edition.issued else ""]
        yield from filled(", ".join(part for part in parts if part), "", "  ")
    actions = [a for n in bulletin.notices for section in n.charts for a in section.actions]
    counts = [counted(len(bulletin.notices), "notice"), counted(len(actions), "action")]
    unusable = sum(not action.usable for action in actions)
    if unusable:
        counts.append(f"{unusable} NOT to be used")
    name = f"{bulletin.source.name}: " if bulletin.source.name else ""
    yield from filled(f"{name}{', '.join(counts)}", "", "  ")
    yield "Reading copy by a program; the notice itself governs."


def _of_notices(bulletin: Bulletin) -> dict[int, list[Finding]]:
    """The findings of each notice that point at none of its actions."""
    found: dict[int, list[Finding]] = defaultdict(list)
    for finding in bulletin.findings:
        numbers = {int(m[1]) for path in finding.paths if (m := _OF_NOTICE.match(path))}
        if any("/actions/" in path for path in finding.paths):
            continue
        for number in numbers:
            found[number].append(finding)
    return found


def _notice(
    notice: Notice, path: str, of_actions: dict[str, list[Finding]], own: list[Finding]
) -> Iterator[str]:
    yield from _notice_head(notice)
    yield _RULE
    for row, section in enumerate(notice.charts):
        if row:
            yield ""
        yield from _section(section)
        for index, action in enumerate(section.actions):
            found = of_actions.get(f"{path}/charts/{row}/actions/{index}", [])
            yield from action_lines(action, found)
    for remark in notice.remarks:
        yield ""
        yield from filled(_prose(remark), "  ", "  ")
    if own:
        yield ""
        yield from finding_lines(own, "  ")


def _prose(remark: Remark) -> str:
    """The words of a remark, each position in them on one line."""
    words = remark.text
    for position in remark.positions:
        written = " ".join(position.written.split())
        words = words.replace(written, written.replace(" ", NO_BREAK))
    return words


def _notice_head(notice: Notice) -> Iterator[str]:
    name = " ".join(part for part in (notice.series, notice.id) if part) or "No number"
    marks = [name, _STATUSES[notice.status]]
    if notice.original_information:
        marks.append("original information")
    yield visible(", ".join(mark for mark in marks if mark))
    if notice.heading:
        yield from filled(notice.heading, "", "")
    if notice.authority:
        yield from hanging("Source: ", notice.authority)
    if notice.valid:
        yield from hanging("Valid:  ", notice.valid.written)
    if notice.cancels:
        yield from hanging("Cancels ", ", ".join(map(notice_id, notice.cancels)))


def _section(section: ChartSection) -> Iterator[str]:
    number = f"Chart {section.chart}" if section.chart else "No chart named"
    parts = [number, section.international, section.panel]
    if section.edition or section.edition_date:
        edition = " of ".join(part for part in (section.edition, section.edition_date) if part)
        parts.append(f"edition {edition}")
    if section.datum:
        parts.append(section.datum.name)
    if section.depth_unit:
        units = {"m": "metres", "fm_ft": "fathoms and feet", "ft": "feet"}
        parts.append(f"depths in {units[section.depth_unit]}")
    if section.previous:
        parts.append(f"after {notice_id(section.previous)}")
    elif section.previous_written:
        parts.append(section.previous_written)
    yield from filled(", ".join(part for part in parts if part), "", "  ")


def _list(one: EditionList) -> Iterator[str]:
    yield from filled(one.title, "", "  ")
    yield _RULE
    for entry in one.entries:
        yield from filled(entry.text, "  ", "    ")
