"""Several bulletins seen together: what one says of a chart, against what the others say.

Each was read by itself before; here only findings are added, each to the bulletin it belongs to.
"""

from __future__ import annotations

from collections.abc import Sequence

from noticeparse.checks.given import Given, Whole
from noticeparse.checks.running import check_together
from noticeparse.findings import Located, finding_at, merged, with_findings
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.finding import Finding


def seen_together(read: Sequence[tuple[str, Bulletin]]) -> list[Bulletin]:
    """The bulletins, each with its text, with the findings that only all of them give."""
    if len(read) < 2:
        return [bulletin for _, bulletin in read]
    found = check_together([Whole(bulletin, Given(text)) for text, bulletin in read])
    return [_with_more(bulletin, more) for (_, bulletin), more in zip(read, found, strict=True)]


def _with_more(bulletin: Bulletin, more: list[Located]) -> Bulletin:
    """The bulletin with what is not told yet; of a chain it is told once for each head."""
    told = {_place(finding) for finding in bulletin.findings}
    new = [finding_at(one, one.span) for one in merged(more)]
    new = [one for one in new if _place(one) not in told and not _is_told_by_list(one, bulletin)]
    return with_findings(bulletin, [*bulletin.findings, *new]) if new else bulletin


def _is_told_by_list(finding: Finding, bulletin: Bulletin) -> bool:
    """Whether a chart list has shown that the notice before was not applied last."""
    return finding.code == "previous-gap" and any(
        one.code == "previous-not-last-applied" and set(finding.paths) <= set(one.paths)
        for one in bulletin.findings
    )


def _place(finding: Finding) -> tuple[object, ...]:
    """What is wrong and where; a notice before that is wrong in one way may be so in others."""
    is_of_chain = finding.code.startswith("previous-")
    return "previous" if is_of_chain else finding.code, finding.span, *finding.paths
