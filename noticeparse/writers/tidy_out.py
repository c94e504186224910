"""A bulletin in the canonical layout, for a person: one action a line.

Nothing is dropped in silence.  What is not usable, cannot be written, or was not read stands
behind `#|` where it belongs, with the reason; such a line is read again as a loss, never as an
action.  The doubts about what is written, and the caution, stand at the end behind `--`, as a
signature does, so that the output can be read again.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from textwrap import wrap

from noticeparse.canonical import Refused, written_notice
from noticeparse.caution import CAUTION
from noticeparse.layout.copied.furniture import LEFT_OUT
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.finding import Finding
from noticeparse.records.notice import Notice
from noticeparse.spans import Span
from noticeparse.writers.findings_out import counted
from noticeparse.writers.quoting import visible

_WIDTH = 72


class Tidying:
    """Writes bulletins and counts what it wrote and what it left out."""

    def __init__(self) -> None:
        self._counts: Counter[str] = Counter()

    @property
    def is_whole(self) -> bool:
        """Whether every action and every notice was written."""
        return not (self._counts["left out"] or self._counts["notice"])

    def line(self) -> str:
        """`12 actions written, 1 action left out, 0 stretches not read`."""
        done, out = self._counts["written"], self._counts["left out"]
        words = f"{counted(done, 'action')} written, {counted(out, 'action')} left out"
        if self._counts["notice"]:
            words += f", {counted(self._counts['notice'], 'notice')} not written anew"
        unread = self._counts["stretch"]
        return f"{words}, {unread} stretch{'' if unread == 1 else 'es'} of text not read"

    def pieces(self, bulletin: Bulletin, text: str) -> Iterator[str]:
        """The bulletin that was read from `text`, piece by piece."""
        head = _head(bulletin)
        if head:
            yield head + "\n"
        grave, slight = _unread(bulletin)
        self._counts["stretch"] += len(grave) + len(slight)
        for index, notice in enumerate(bulletin.notices):
            yield self._notice(notice, f"/notices/{index}", text)
            own = [one for one in grave if notice.span.start <= one.start < notice.span.end]
            grave = [one for one in grave if one not in own]
            yield "".join(_behind_mark(f" Not read, {_quoted(text, one)}") for one in own) + "\n"
        if grave:
            yield "".join(_behind_mark(f" Not read, {_quoted(text, one)}") for one in grave) + "\n"
        yield "--\n"
        yield from (f"Not read, {_quoted(text, one)}\n" for one in slight)
        yield from _foot(bulletin)

    def _notice(self, notice: Notice, path: str, text: str) -> str:
        def tell(refused: Refused) -> str:
            action = notice.charts[refused.section].actions[refused.action]
            own = f"{path}/charts/{refused.section}/actions/{refused.action}"
            reason = _errors(notice.findings, own) or refused.reason
            told = _behind_mark(f" Left out: {reason}") + _behind_mark(
                f"   {visible(action.text)}"
            )
            return told.rstrip("\n")

        written = written_notice(notice, tell)
        if written.differs is not None:
            self._counts["notice"] += 1
            lines = text[notice.span.start : notice.span.end].split("\n")
            quoted = "".join(_behind_mark(f"   {visible(line)}") for line in lines if line.strip())
            return _behind_mark(f" Not written anew: {written.differs}") + quoted
        self._counts["left out"] += len(written.refused)
        self._counts["written"] += sum(len(chart.actions) for chart in notice.charts)
        self._counts["written"] -= len(written.refused)
        return written.text


def _unread(bulletin: Bulletin) -> tuple[list[Span], list[Span]]:
    """The stretches not read: those that may bear on a chart, and those that do not."""
    slight = {
        (one.span.start, one.span.end)
        for one in bulletin.findings
        if one.span is not None and one.severity == "info"
    }
    spans = bulletin.coverage.unread_spans
    return (
        [_told(bulletin, one) for one in spans if (one.start, one.end) not in slight],
        [one for one in spans if (one.start, one.end) in slight],
    )


def _told(bulletin: Bulletin, span: Span) -> Span:
    """The stretch that the finding over it quotes: the verb of a lost item stands before it."""
    over = [
        one.span
        for one in bulletin.findings
        if one.span is not None and one.span.start <= span.start and span.end <= one.span.end
    ]
    return min(over, key=lambda one: one.end - one.start, default=span)


def _behind_mark(words: str) -> str:
    """Words that are left out, in lines so short that mail wraps none of them."""
    indent = " " * (len(words) - len(words.lstrip()))
    lines = wrap(words, _WIDTH, subsequent_indent=indent, break_on_hyphens=False)
    return "".join(f"{LEFT_OUT}{line}\n" for line in lines)


def _quoted(text: str, span: Span) -> str:
    """A stretch with its line: `line 3: Invented waters.`."""
    return f"line {span.line}: {visible(' '.join(text[span.start : span.end].split()))}"


def _head(bulletin: Bulletin) -> str:
    edition = bulletin.edition
    if edition is None:
        return ""
    number = f"{edition.number}/{edition.year}" if edition.year else edition.number
    stated = [f"Edition {number}" if edition.number else "", edition.issued or ""]
    lines = [visible(edition.title or ""), ", ".join(one for one in stated if one)]
    return "".join(f"{line}\n" for line in lines if line)


def _errors(findings: Iterable[Finding], path: str) -> str:
    """The errors that point at a record or below it, in the words of `check`."""
    found = [
        f"{one.code}: {visible(one.message)}"
        for one in findings
        if one.severity == "error" and any(_is_below(at, path) for at in one.paths)
    ]
    return "; ".join(dict.fromkeys(found))


def _is_below(at: str, path: str) -> bool:
    return at == path or at.startswith(path + "/")


def _foot(bulletin: Bulletin) -> Iterator[str]:
    """Lists that are not repeated, doubts, and the caution."""
    for one in bulletin.lists:
        yield f"Not repeated: `{visible(one.title)}`, {counted(len(one.entries), 'line')}\n"
    for finding in bulletin.findings:
        if finding.severity == "info":
            continue
        where = f"line {finding.span.line}: " if finding.span is not None else ""
        notice = f"{visible(finding.notice)}, " if finding.notice else ""
        told = f"{finding.severity} {finding.code}: {visible(finding.message)}"
        yield f"{notice}{where}{told}\n"
    yield f"{CAUTION}\n"
