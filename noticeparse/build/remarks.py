"""What remarks say beside their sense: changes that may be lost, and charts."""

from __future__ import annotations

import re
from bisect import bisect_left
from collections.abc import Iterator, Sequence
from operator import itemgetter

from noticeparse.build.done_elsewhere import without_done
from noticeparse.build.extents import item_extent
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.drafts import NoticeDraft, Prose
from noticeparse.layout.line.elements import Element
from noticeparse.readers.broken_verbs import broken_verb_end
from noticeparse.readers.features import has_kind, leads_feature
from noticeparse.readers.head_values import Head
from noticeparse.readers.heads import read_head
from noticeparse.readers.verbs import canonical_verb
from noticeparse.records.chart import ChartSection
from noticeparse.records.reference import NoticeRef

_AS_CHART = re.compile(r"^(?:as|same as|see)(?: (?:on|for|in))? charts?\b")
_COMMAND = re.compile(r"\b(?:insert|delete|amend|replace|substitute|expunge|move)\b")
# `Mariners should insert`: what is to be inserted stands behind a chart, or is lost.
_BREAKS_OFF = re.compile(
    r"\b(?:should|must|shall|to|please|requested to|asked to) (?:now |also |then )?(?:insert"
    r"|delete|amend|replace|substitute|expunge|move|add|remove|plot|erase|enter|shift)"
    r"(?: on| from| in)?$"
)
_ORDER = re.compile(
    r"(?<!will )(?<!would )(?<!to )\b(?:insert|delete|amend|expunge|substitute)\b"
    r"|^(?:replace|move|add|erase) "
)
"""What is to be done on charts, also by a temporary notice."""
_QUOTES = re.compile(r"(?<![0-9' ])\"|(?<![0-9]) \"(?! ?[nsew])")
"""What a book is to say stands in quotes, with its place; behind a figure they mark seconds."""
_FIGURES = re.compile(r"[0-9]+[.,][0-9]+")
"""With a stop that ends no sentence."""
_LONG_FIGURE = re.compile(r"[0-9]{4,7}[0-9.,'-]*[0-9]{2}|[0-9]{2,3}[°-] ?[0-9]{2}")
_ACTIVE = re.compile(
    r"\b(?:has|have) (?:(?:now|also|today|recently|since) )?"
    r"(laid|(?:establish|install|remov|replac|mov|shift|relocat|plac|delet|erect|lift)ed"
    r"|withdrawn|taken (?:up|away|down|out|off))(?= (?:an?|the|its|two|three|one|all|both)\b)"
)
"""What somebody has done: `The pilots of the firth have laid a buoy`."""
_ON_ANOTHER = re.compile(
    r"\bon charts? [0-9][0-9a-z, ]{0,40}[ ,:]+(?:also |please |now )?(?:insert|delete|amend"
    r"|replace|substitute|expunge|move|add|remove)\b"
    r"|\b(?:insert|delete|add|remove|amend) the same\b"
)
"""A command for the charts that words name: `On chart 803 insert the same depth`."""
_RENAMED = re.compile(
    r"(?P<subject>[^.;:]{3,120}?) (?:is |are |has been |have been )?(?:now )?"
    r"re-?(?:named|numbered) "
)

_TO_BE_DONE = re.compile(
    r"(?P<subject>[^.;]{3,160}?) (?:(?:is|are) to (?!be (?:avoided|expected|kept|left|regarded"
    r"|treated|given|passed|seen|noted|used|considered|read)\b)|must |now lies? |now stands? "
    r"|becomes? an? |is now an? "
    r"|(?:is|are) no longer |no longer )"
)
"""`The buoy in P is to be hauled out`: what is done with it is not read."""

_TO_READ = re.compile(r"\b(?:should|must|shall|to|now) (?:now )?(?:read|show)\b[^.;]{0,40}[0-9]")
"""`The depth in Q should read 4.1m.`"""
_PASSIVE = re.compile(
    r"\b(?:is|are|be|been) (?:now |also |hereby )?(?=(?P<done>[a-z]{1,20})(?![a-z]))"
)
_WITHOUT_AUXILIARY = re.compile(
    r"(?:(?<!to )(?<!will )(?<!shall )\bbe|(?<!has )(?<!have )(?<!had )\bbeen)"
    r" (?P<done>[a-z]{4,20})(?![a-z-])"
)
"""`will / [page 12] / be established`: a verb that is parted from its auxiliary is no passive."""
_BEGINS = re.compile(r"(?:^|[,.;:-] )(?=[a-z])")
"""Where a command may begin: `In P, in5ert a depth`."""
_LONGEST_VERB = 40
_GLUED = re.compile(r"(?P<done>[a-z]{3,14}(?:ed|wn|id|ut))(?:at|in|on|joining|from|to|by)")
_PUT = re.compile(r"pu{1,2}t{1,2}")
"""`put`, and a letter of it written twice."""


def _tells_with_a_slip(words: str) -> bool:
    """Whether a verb of a sentence is misspelt, or glued to what follows: `is inseted at`."""
    for told in _PASSIVE.finditer(words):
        glued = _GLUED.fullmatch(told["done"])
        is_glued = glued is not None and canonical_verb(glued["done"]) is not None
        behind = words[told.end() : told.end() + _LONGEST_VERB]
        if is_glued or broken_verb_end(behind) is not None or _PUT.fullmatch(told["done"]):
            return True
    return False


def _commands_with_a_slip(words: str) -> bool:
    """Whether a broken verb stands where a command may: `(1) In P, in5ert a depth`."""
    begins = (one.end() for one in _BEGINS.finditer(words))
    return any(broken_verb_end(words[at : at + _LONGEST_VERB]) is not None for at in begins)


def _is_parted(words: str) -> bool:
    """Whether a verb stands apart from its auxiliary, and tells what is done with a thing."""
    parted = (one["done"] for one in _WITHOUT_AUXILIARY.finditer(words))
    return any(canonical_verb(done) is not None for done in parted) and has_kind(words)


_ERRATUM = re.compile(
    r"(?:corrigend(?:um|a)|errat(?:um|a))\b.{0,80}?\bfor\b.{1,80}?\bread\b|in (?:the )?"
    r"(?:notice|nm|ntm)(?: no\.?)? [0-9]{1,5}(?: ?\([tp]\))?/[0-9]{2,4},? for\b.{1,80}?\bread\b"
)
"""What another notice should have said: `Corrigendum: in Notice 12/26 for wreck read rock`."""


def loses_change(
    context: Context, prose: Prose, own: NoticeRef | None, *, is_for_charts: bool
) -> bool:
    """Whether a remark may tell of an action; one of a notice for no chart must command it."""
    if not is_for_charts:
        return _commands_at_place(context, prose)
    return _tells_of_change(context, prose, without_done(context, prose, own))


def _tells_of_change(context: Context, prose: Prose, left: Sequence[Element]) -> bool:
    """Whether a remark says that something at a position was changed.

    `left` are its elements without what another notice has done.
    """
    done = [element.start for element in prose.elements if element not in left]
    start, end = prose.pieces[0][0], min([prose.pieces[-1][1], *done])
    words = " ".join(context.text[start:end].lower().split())
    if _ERRATUM.match(words) is not None:
        return True
    placed = any(element.kind in ("point", "reference", "same") for element in prose.elements)
    passives = [e for e in left if e.kind == "passive"]
    # What will be done is not yet to be charted.
    told = any(not context.text[e.start : e.end].lower().startswith("will") for e in passives)
    if _is_entry(context, prose):
        return True
    if _AS_CHART.search(words) or _BREAKS_OFF.search(words) or _ON_ANOTHER.search(words):
        return True
    if (renamed := _RENAMED.search(words)) is not None and has_kind(renamed["subject"]):
        return True
    if _COMMAND.search(words) and _LONG_FIGURE.search(words) and has_kind(words):
        # A command with a figure as long as a position's, read as prose: a row that broke off.
        return True
    if _commands_with_a_slip(words) and has_kind(words):
        # Also `in5ert light-buoy` below the place of both.
        return True
    is_quoting = _QUOTES.search(words) is not None
    if placed and not is_quoting and _TO_READ.search(words):
        return True
    if placed and not is_quoting and (_ORDER.search(words) or _is_parted(words)):
        return True
    told = told or _ACTIVE.search(words) is not None or _tells_with_a_slip(words)
    if placed and (announced := _TO_BE_DONE.search(_FIGURES.sub(" ", words))) is not None:
        # `At P the beacon …`: the thing stands behind its place.
        subject = announced["subject"]
        told = told or has_kind(subject) or has_kind(subject.rpartition(" the ")[2])
    return placed and (told or " has been " in words or " have been " in words)


_ENTRY = frozenset(("label", "words", "point", "reference", "bar", "semicolon"))
_ARTICLE = re.compile(r"(?:the|an?|this|that|these|those)\b", re.IGNORECASE)
_FINITE = re.compile(
    r"\b(?:is|are|was|were|has|have|had|will|shall|may|should|lies?|lay|stands?|stood|remains?"
    r"|exists?)\b",
    re.IGNORECASE,
)


def _is_entry(context: Context, prose: Prose) -> bool:
    """Whether a remark is an entry of a list, `(i) wreck P`, whose command was not seen."""
    kinds = [element.kind for element in prose.elements]
    if kinds[-1:] != ["point"] or not _ENTRY.issuperset(kinds):
        return False
    told = [context.text[e.start : e.end] for e in prose.elements if e.kind == "words"]
    if not told or _ARTICLE.match(told[0]) is not None:
        return False
    return leads_feature(told[0]) and not any(map(_FINITE.search, told))


def _commands_at_place(context: Context, prose: Prose) -> bool:
    """Whether a remark of a temporary notice commands what goes on the chart at a position."""
    if not any(element.kind in ("point", "reference", "same") for element in prose.elements):
        return False
    start, end = prose.pieces[0][0], prose.pieces[-1][1]
    words = " ".join(context.text[start:end].lower().split())
    return _ORDER.search(words) is not None and has_kind(words)


_CHART_AND_NOTICE = re.compile(r"[ |\t]*[0-9]{2,5}[ |\t]+[0-9]{1,5}/[0-9]{2,4}[ |\t]*")


def charts_in_passing(
    context: Context, draft: NoticeDraft, sections: Sequence[Section]
) -> Iterator[Fault]:
    """Prose between the items that names a chart which is no section of the notice."""
    if not draft.prose:
        return
    own = {section.head.chart for section in sections}
    begins = [(item_extent(i)[0], one.head.chart) for one in sections for i in one.items]
    begins.sort(key=itemgetter(0))
    last = begins[-1][0] if begins else 0
    for prose in draft.prose:
        start, end = prose.pieces[0][0], prose.pieces[-1][1]
        if end > last:
            continue
        head = read_head(context.text[start:end], context.year)
        names = any(chart.chart not in {*own, None} for chart in head.charts)
        names = names or _heads_others(begins, head, end)
        if names or _CHART_AND_NOTICE.fullmatch(context.text[start:end]):
            written = {"written": context.written(start, end)}
            yield Fault("chart-in-passing", start, end, written)
        columns = re.split(r" {3,}", context.text[start:end].strip())
        if len(columns) > 1 and own.issuperset(columns):
            written = {"written": context.written(start, end)}
            yield Fault("chart-marks-unread", start, end, written)


def _heads_others(begins: Sequence[tuple[int, str | None]], head: Head, end: int) -> bool:
    """Whether prose with a chart and its notice before stands above items of another section.

    `begins` are where the items begin, in order, with their charts.
    """
    told = {chart.chart for chart in head.charts if chart.chart and chart.previous_written}
    at = bisect_left(begins, end, key=itemgetter(0))
    chart = begins[at][1] if at < len(begins) else None
    return bool(told) and chart is not None and chart not in told


def named_charts(context: Context, named: Sequence[tuple[str, int, int]]) -> list[ChartSection]:
    """A section without actions for each chart that prose names, in the order of naming."""
    found: list[ChartSection] = []
    for number, start, end in named:
        if any(number in (chart.chart, chart.international) for chart in found):
            continue
        international = number if number.startswith("INT ") else None
        found.append(
            ChartSection(
                chart=None if international else number, international=international,
                panel=None, edition=None, edition_date=None, previous=None, previous_written=None,
                datum=None, depth_unit=None, actions=[], span=context.span(start, end),
            )
        )  # fmt: skip
    return found
