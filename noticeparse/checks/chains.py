"""The chain of previous notices on each chart, within one bulletin and across several.

The head of a chart names the last notice that must already be on it, so that a corrector sees
whether one was missed.  Of two notices for one chart the later therefore names the earlier.
Temporary and preliminary notices are no part of the chain, nor is a number without its year
compared with others.  A notice for another plan or panel of the chart may be passed over.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import NamedTuple

from noticeparse.checks.given import Given, Whole
from noticeparse.checks.trouble import Trouble
from noticeparse.readers.references import notice_id
from noticeparse.records.bulletin import Bulletin
from noticeparse.records.chart import ChartSection
from noticeparse.records.finding import Severity
from noticeparse.records.notice import Notice
from noticeparse.records.reference import NoticeRef

Key = tuple[int, int]
"""Year and number: later notices have greater keys, whatever year they are of."""


_LONG_AGO = 20
"""Years; no chart in print today was last corrected so long before."""
_APART = 200
"""Numbers; a local series of its own lies farther than this from that of the charts."""


class Link(NamedTuple):
    """A section of a permanent notice: one link of the chain of its chart."""

    of: int
    """Which of the bulletins."""
    key: Key
    notice: Notice
    section: ChartSection
    pointer: str

    @property
    def head(self) -> tuple[int, int, NoticeRef | None]:
        """The head that the section stands under, which several notices may share.

        Rows under the head of one chart may each name the notice before: then it is none.
        """
        return self.of, self.section.span.start, self.section.previous

    def trouble(self, fault: Fault, given: Given) -> Trouble:
        """What is wrong with this link, where its head names the notice before."""
        assert self.section.previous is not None
        values = {"written": notice_id(self.section.previous), **fault.values}
        span = given.previous_of(self.section)
        chart, severity = self.section.chart, fault.severity
        return Trouble(fault.code, span, [self.pointer], values, chart, severity)


class Fault(NamedTuple):
    """A code, the values that its message names, and whether the case is a lighter one."""

    code: str
    values: dict[str, str]
    severity: Severity | None = None


def check_chain(bulletin: Bulletin, given: Given) -> Iterator[Trouble]:
    """Previous notices that do not follow one another within the bulletin."""
    for _, trouble in check_chains([Whole(bulletin, given)]):
        yield trouble


def check_chains(wholes: Sequence[Whole]) -> Iterator[tuple[int, Trouble]]:
    """Previous notices that do not follow one another, each with the bulletin it stands in."""
    ranges = [_range(whole.bulletin) for whole in wholes]
    for links in _by_chart(wholes).values():
        links.sort(key=lambda link: link.key)
        trail = Trail()
        for _, same in groupby(links, key=lambda link: link.key):
            here = list(same)
            for link in here:
                fault = _judged(link, trail, ranges[link.of])
                if fault is not None:
                    yield link.of, link.trouble(fault, wholes[link.of].given)
            for link in here:
                trail.add(link)


def _by_chart(wholes: Sequence[Whole]) -> dict[tuple[str, str], list[Link]]:
    """The links of each chart; a notice printed again is the same link."""
    found: dict[tuple[str, str], list[Link]] = defaultdict(list)
    known: set[tuple[object, ...]] = set()
    for of, whole in enumerate(wholes):
        for number, notice in enumerate(whole.bulletin.notices):
            if notice.status != "permanent" or notice.number is None or notice.year is None:
                continue
            key = notice.year, notice.number
            for row, section in enumerate(notice.charts):
                chart = notice.series or "", chart_key(section)
                same = (*chart, key, section.previous, section.panel)
                if not chart[1] or same in known:
                    continue
                known.add(same)
                pointer = f"/notices/{number}/charts/{row}"
                found[chart].append(Link(of, key, notice, section, pointer))
    return found


def chart_key(section: ChartSection) -> str:
    """The number of a chart without blanks and hyphens, whatever a list makes of them."""
    return plain_chart(section.chart or section.international or "")


def plain_chart(words: str) -> str:
    """`TV-802 a` and `TV 802A` are one chart."""
    return "".join(char for char in words.upper() if char.isalnum())


class Trail:
    """The links of one chart so far, in the order of their keys."""

    def __init__(self) -> None:
        self._heads: set[tuple[int, int, NoticeRef | None]] = set()
        self._by_number: dict[int, Key] = {}
        self._last: dict[str | None, Key] = {}
        self._naming: dict[Key, list[Link]] = {}

    def add(self, link: Link) -> None:
        """Go on by one link."""
        before = self.key(link.section.previous)
        if before is not None:
            self._naming.setdefault(before, []).append(link)
        self._heads.add(link.head)
        self._by_number[link.key[1]] = link.key
        self._last[link.section.panel] = link.key

    def key(self, ref: NoticeRef | None) -> Key | None:
        """The key of a previous notice; a number without a year is that of a link so far."""
        if ref is None or ref.status != "permanent":
            return None
        return self._by_number.get(ref.number) if ref.year is None else (ref.year, ref.number)

    def has(self, key: Key) -> bool:
        """Whether a notice so far has this key."""
        return self._by_number.get(key[1]) == key

    def shares_head(self, link: Link) -> bool:
        """Whether a link so far stands under the same head."""
        return link.head in self._heads

    def last(self, section: ChartSection) -> Key | None:
        """The last notice on the same sheet."""
        panels = self._last if section.panel is None else (None, section.panel)
        return max((self._last[one] for one in panels if one in self._last), default=None)

    def rival(self, before: Key, section: ChartSection) -> Link | None:
        """A link so far, on the same sheet, that names the same notice before."""
        named = self._naming.get(before, ())
        return next((one for one in named if _is_one_sheet(one.section, section)), None)


def _range(bulletin: Bulletin) -> tuple[Key, Key] | None:
    """From the lowest to the highest notice of an edition; a mere excerpt has no such range."""
    keys = [
        (one.year, one.number)
        for one in bulletin.notices
        if one.status == "permanent" and one.number is not None and one.year is not None
    ]
    return (min(keys), max(keys)) if keys and bulletin.edition is not None else None


def _is_of_other_series(before: Key, link: Link) -> bool:
    """Whether a local notice names one of the chart's own, whose numbers are far from its own."""
    (year, number), (own_year, own_number) = before, link.key
    return link.notice.series is not None and year == own_year and number - own_number > _APART


def _judged(link: Link, trail: Trail, own: tuple[Key, Key] | None) -> Fault | None:
    """What is wrong with the previous notice of a link; `own` is the range of its edition."""
    before = trail.key(link.section.previous)
    if before is None:
        return None
    chart = {"chart": link.section.chart or link.section.international or ""}
    if before >= link.key and not _is_of_other_series(before, link):
        return Fault("previous-later", {"notice": notice_id(_ref(link.key))})
    if before[0] < link.key[0] - _LONG_AGO:
        return Fault("previous-long-ago", {"notice": notice_id(_ref(link.key))})
    last = trail.last(link.section)
    if trail.shares_head(link) or before == last:
        return None
    if last is None:
        # Its number is of this edition, which has no such notice for the chart; but the edition
        # may be an excerpt.
        is_lost = own is not None and own[0] <= before <= own[1] and not trail.has(before)
        return Fault("previous-gap", chart, "info") if is_lost else None
    if before > last:
        return None if trail.has(before) else Fault("previous-gap", chart)
    fork = trail.rival(before, link.section)
    if fork is not None:
        return Fault("previous-fork", {"other": notice_id(_ref(fork.key))})
    return Fault("previous-goes-back", {"other": notice_id(_ref(last)), **chart})


def _is_one_sheet(one: ChartSection, other: ChartSection) -> bool:
    """Whether two sections are for one panel, or one of them for the whole chart."""
    return one.panel is None or other.panel is None or one.panel == other.panel


def _ref(key: Key) -> NoticeRef:
    return NoticeRef(number=key[1], year=key[0], status="permanent")
