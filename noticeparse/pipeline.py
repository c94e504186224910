"""The whole way from text to bulletin, in order: repair, lines, layout, records, findings.

Reads as the table of contents of the program.  Nothing is read from the clock or the machine: the
same text gives the same bulletin.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterable

from noticeparse.build.coverage import count_coverage, unread_blocks, unread_fault, untold
from noticeparse.build.editions import read_edition, read_list, said_of_all
from noticeparse.build.notices import NoticeBuilder
from noticeparse.caution import CAUTION
from noticeparse.checks import check_notice
from noticeparse.collector import patient_collector
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.findings import Located, in_text_order, merged, to_finding
from noticeparse.layout.bulletin import lay_out
from noticeparse.layout.claims import apart_from, unclaimed, unclaimed_heads, unclaimed_words
from noticeparse.layout.drafts import Piece
from noticeparse.layout.lines import Line, read_lines
from noticeparse.layout.markup import without_marks
from noticeparse.records.bulletin import Bulletin, Generator, Source
from noticeparse.records.finding import Finding
from noticeparse.records.notice import Notice
from noticeparse.text import SURROGATE, hidden_in, repair, without_surrogates
from noticeparse.version import VERSION

# How many notices on either side are the surroundings of a notice.
_BESIDE = 4


@patient_collector()
def read_bulletin(
    text: str,
    *,
    name: str | None = None,
    media_type: str = "text/plain",
    sha256: str | None = None,
    faults: Iterable[Fault] = (),
) -> Bulletin:
    """Read one text; `faults` are those found while its bytes were decoded."""
    repaired = repair(without_surrogates(text))
    words, marks = without_marks(repaired.text)
    lines = list(read_lines(words))
    layout = lay_out(words, lines)
    ignored = layout.ignored + marks
    context = Context(repaired, words, ignored)
    edition, left = read_edition(context, layout.front)
    context.year = edition.year if edition else None
    context.datum, context.depth_unit = said_of_all(context, layout.front)

    located = [Located(fault) for fault in faults]
    located += _character_faults(context, text)
    notices: list[Notice] = []
    lost = unclaimed(layout, lines, ignored)
    for index, draft in enumerate(layout.notices):
        reading = NoticeBuilder(context, draft, f"/notices/{index}").build()
        notices.append(reading.notice)
        located += reading.located
        lost += reading.lost

    for index, notice in enumerate(notices):
        beside = notices[max(0, index - _BESIDE) : index + _BESIDE + 1]
        located += check_notice(notice, f"/notices/{index}", beside)

    unread = unread_blocks(context, _unread_lines(left, ignored))
    heads = unclaimed_heads(layout, lines, ignored)
    loose = [piece for prose in layout.loose for piece in prose.pieces]
    unread += heads
    unread += [one for one in loose if not any(a <= one[0] < b for a, b in heads)]
    loose_words = unclaimed_words(words, layout, lines, ignored)
    unread += apart_from(loose_words, [*unread, *lost], lines)
    located += [unread_fault(context, piece, is_action=False) for piece in untold(unread, located)]
    located += [unread_fault(context, piece, is_action=True) for piece in untold(lost, located)]
    findings = in_text_order([to_finding(context, one) for one in merged(located)])
    own = _by_notice(findings)
    return Bulletin(
        generator=Generator(name="noticeparse", version=VERSION),
        caution=CAUTION,
        source=Source(
            name=name,
            media_type=media_type,
            sha256=sha256 or hashlib.sha256(text.encode("utf-8", "replace")).hexdigest(),
            characters=len(text),
        ),
        edition=edition,
        notices=[_with_findings(n, i, own.get(i, [])) for i, n in enumerate(notices)],
        lists=[read_list(context, draft) for draft in layout.lists],
        findings=findings,
        coverage=count_coverage(context, ignored, unread + lost),
    )


def _unread_lines(left: list[Line], ignored: list[Piece]) -> list[Line]:
    hidden = set(ignored)
    return [line for line in left if (line.start, line.end) not in hidden]


def _character_faults(context: Context, text: str) -> list[Located]:
    """Half characters, and invisible characters that were left out."""
    found: list[Located] = []
    surrogate = SURROGATE.search(text)
    if surrogate is not None:
        found.append(Located(Fault("text-surrogate", *_here(context, surrogate.start()))))
    return found + hidden_characters(context)


def hidden_characters(context: Context) -> list[Located]:
    """Each place between two figures, where a person sees another figure, and the first other."""
    found: list[Located] = []
    is_told = False
    for one in hidden_in(context.repaired):
        fault = Fault("text-control-character", *_here(context, one.start))
        if one.splits_figures:
            span = context.lines.span(one.start - 1, one.end + 1)
            found.append(Located(fault, severity="warning", span=span))
        elif not is_told:
            is_told = True
            found.append(Located(fault, span=context.lines.span(one.start, one.end)))
    return found


def _here(context: Context, offset: int) -> tuple[int, int]:
    """The stretch of the repaired text that stands nearest to an offset of the original."""
    low, high = 0, len(context.text)
    while low < high:
        middle = (low + high) // 2
        if context.repaired.original(middle) < offset:
            low = middle + 1
        else:
            high = middle
    return low, min(low + 1, len(context.text))


def _by_notice(findings: list[Finding]) -> dict[int, list[Finding]]:
    """The findings that point into each notice, by its index."""
    found: dict[int, list[Finding]] = {}
    for finding in findings:
        for index in {int(path.split("/")[2]) for path in finding.paths}:
            found.setdefault(index, []).append(finding)
    return found


def _with_findings(notice: Notice, index: int, own: list[Finding]) -> Notice:
    """The notice with its own findings; an action that an error points at is not usable."""
    if not own:
        return notice
    prefix = f"/notices/{index}"
    return notice.model_copy(update={"findings": own, "charts": _usable(notice, prefix, own)})


def _usable(notice: Notice, prefix: str, findings: list[Finding]) -> list[object]:
    paths = {path for one in findings if one.severity == "error" for path in one.paths}
    if not paths:
        return list(notice.charts)
    # An error within an action, at whatever depth, makes the action unusable.
    bad_actions = {"/".join(path.split("/")[:7]) for path in paths}
    charts: list[object] = []
    for number, chart in enumerate(notice.charts):
        actions = []
        for index, action in enumerate(chart.actions):
            bad = f"{prefix}/charts/{number}/actions/{index}" in bad_actions
            actions.append(action.model_copy(update={"usable": False}) if bad else action)
        charts.append(chart.model_copy(update={"actions": actions}))
    return charts
