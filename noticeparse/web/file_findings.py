"""The findings of a file whose text a page sends on: put among those of its text.

What a file shows and its text cannot (struck-out words, say) would else be lost with the file.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from noticeparse.findings import with_findings
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.finding import Finding


def with_file_findings(bulletin: Bulletin, findings: Sequence[Finding]) -> Bulletin:
    """The bulletin with the findings of its file; an action within an error is not usable.

    Findings that reading has told already are not told twice.
    """
    known = {_key(one) for one in bulletin.findings}
    own = [_in_place(bulletin, one) for one in findings if _key(one) not in known]
    return with_findings(bulletin, [*bulletin.findings, *own]) if own else bulletin


def _key(finding: Finding) -> tuple[object, ...]:
    return finding.code, finding.message, finding.span


def _in_place(bulletin: Bulletin, finding: Finding) -> Finding:
    """The finding with the paths of what it stands in, whatever was said before the reading."""
    paths = list(_paths(bulletin, finding))
    return finding.model_copy(update={"paths": paths})


def _paths(bulletin: Bulletin, finding: Finding) -> Iterator[str]:
    span = finding.span
    if span is None:
        return

    def meets(start: int, end: int) -> bool:
        return start < max(span.end, span.start + 1) and span.start < end

    for index, notice in enumerate(bulletin.notices):
        if not meets(notice.span.start, notice.span.end):
            continue
        is_in_action = False
        for number, section in enumerate(notice.charts):
            for row, action in enumerate(section.actions):
                if meets(action.span.start, action.span.end):
                    is_in_action = True
                    yield f"/notices/{index}/charts/{number}/actions/{row}"
        if not is_in_action:
            yield f"/notices/{index}"
