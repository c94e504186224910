"""Sentences beside commands that say how far they hold: `Void`, `Only if charted`.

Such a sentence goes into no command, or into the last one alone; it may be said of all that stand
above it under the same chart, and they are held back.  One that names what follows, or ends with a
colon, holds back what stands below; one that stands in below an item belongs to that item.
"""

from __future__ import annotations

import re
from bisect import bisect_left
from collections.abc import Iterable, Iterator, Sequence, Set
from operator import itemgetter
from typing import NamedTuple

from noticeparse.build.extents import item_extent, quoting
from noticeparse.build.pointers import Pointed, pointed
from noticeparse.build.sections import Section
from noticeparse.context import Context
from noticeparse.faults import Fault
from noticeparse.layout.body.pages_of_books import is_entry
from noticeparse.layout.drafts import Item, NoticeDraft, Piece
from noticeparse.layout.line.footnotes import is_footnote
from noticeparse.layout.opening.notice_kinds import is_temporary
from noticeparse.layout.sentence.lead_words import hangs, lead_faults
from noticeparse.readers.for_a_time import states_validity
from noticeparse.readers.heads import head_kinds
from noticeparse.readers.limiting_lines import limits_items, limits_last, tells_not_affected
from noticeparse.readers.taken_back import takes_back, tells_end
from noticeparse.readers.verbs import canonical_verb
from noticeparse.records.chart import ChartSection
from noticeparse.stretch import unquoted

_SENTENCE = re.compile(r"[^\s.;][^\n]*?(?:\n(?=[ \t]*[a-z])[^\n]*?)*(?:[.;](?=\s|\Z)|(?=\n|\Z))")
"""Up to a stop or the end of its line, where the next one does not go on in small letters."""
_LONGEST = 300
_OF_TURNS = frozenset({"item-of-book", "item-of-other-sheet", "item-below-figure"})
_QUOTES = re.compile(
    r"\b(?:reads?|stated?|ran|said|worded|wording|(?:earlier|previous|former|old|original|wrong"
    r"|incorrect) (?:text|notice|entry|version|correction|wording|one))\W*$",
    re.IGNORECASE,
)
"""At the end of a line above a command: it is only what stood elsewhere."""
_WORD = re.compile("[A-Za-z]+")
_LONGEST_PREFIX = 3
"""Letters in front of the number of a chart."""
_OF_CHART = re.compile(r"(?:on |for )?(?:charts?|sheets?) (?=[A-Z]{0,3} ?[0-9])", re.IGNORECASE)


class _Gap(NamedTuple):
    """What lies between two items, before the first or behind the last."""

    above: Item | None
    piece: Piece
    is_last: bool


def limits_beside(
    context: Context,
    draft: NoticeDraft,
    path: str,
    sections: Sequence[Section],
    charts: Sequence[ChartSection],
    *,
    until: int,
    told: Sequence[Fault],
) -> Iterator[tuple[Fault, list[str]]]:
    """A fault for each such sentence of a notice, with the actions it hits.

    The notice ends at `until`; what the faults `told` quote is told already.
    """
    named = {id(item): item for section in sections for item in section.items}
    # `The rock is not to be deleted.` is read as an item, without a place.
    items = [item for item in named.values() if item.has_place]
    if not items:
        return
    actions = list(pointed(path, charts))
    taken = [*_taken(draft, items), *((fault.start, fault.end) for fault in told)]
    refused = [(one.start, one.end) for item in named.values() for one in item.faults]
    # A line that turns to a book or another sheet is told with what stands below it.
    taken += [
        (one.start, one.end)
        for item in named.values()
        for one in item.faults
        if one.code in _OF_TURNS
    ]
    numbers = {chart.chart for chart in charts if chart.actions and chart.chart}
    before = {context.text[slice(*one.previous)] for one in draft.charts if one.previous}
    taken, refused = _apart(taken), _apart([*refused, *draft.clauses])
    first = draft.number.end if draft.number is not None else draft.start
    for gap in _gaps(items, first, until):
        sentences = list(_sentences(context, gap.piece))
        for at, piece in enumerate(sentences):
            words = context.text[slice(*piece)]
            if hit := _of_untouched_chart(words, actions):
                yield quoting(context, "verb-limited-beside", piece), hit
            # `Notice 12/26 showed it wrong. It is cancelled.` is said of that notice.
            above = sentences[at - 1] if at else piece
            is_told = _overlaps(piece, taken) or _is_aside(context, draft, piece)
            if is_told or _says_head(words, before) or _ends_another(context.text, above, piece):
                continue
            place = at == 0, not (gap.is_last or _below_it(words, sentences[at + 1 :], taken))
            sides = _sides(words, gap, numbers, *place)
            if "above" in sides and gap.above and _stands_in(context.text, gap.above, piece):
                sides = ("above",)
            hit = [one for side in sides for one in _hit(context, gap, piece, actions, side)]
            if hit:
                yield quoting(context, "verb-limited-beside", piece), list(dict.fromkeys(hit))
            elif place[1] and _may_lead(words) and not _overlaps(piece, refused):
                for fault in lead_faults(context.text, piece):
                    yield fault, _hit(context, gap, piece, actions, "below")


def _below_it(words: str, rest: Sequence[Piece], taken: Sequence[Piece]) -> Sequence[Piece]:
    """The sentences below one; `…, which read:` and `Cancelled.` may stand above a chart head."""
    quotes = _QUOTES.search(words) and words.rstrip().endswith(":")
    if not (quotes or takes_back(words)):
        return rest
    return [one for one in rest if not _overlaps(one, taken)]


def _says_head(words: str, before: Set[str]) -> bool:
    """Whether a row says its head again, `514/26  306  NEW EDITION`, with the notice before."""
    said = words.rstrip(" \t\n|")
    head = next((said[: -len(one)] for one in before if said.endswith(one)), None)
    if head is None or not any(char.isdigit() for char in head):
        return False
    return all(len(one) <= _LONGEST_PREFIX for one in _WORD.findall(head))


def _ends_another(text: str, above: Piece, piece: Piece) -> bool:
    """Whether a sentence, with the one above it, tells the end of the notice named there."""
    words = text[above[0] : piece[1]]
    if not tells_end(words) or "CANCELS" not in head_kinds(words):
        return False
    return "CANCELS" not in head_kinds(text[slice(*above)])


def _is_aside(context: Context, draft: NoticeDraft, piece: Piece) -> bool:
    """Whether words are a footnote, or a change of a book that commands for itself.

    Heads and feet of pages stand in the text, too, and are no words of it.  A temporary notice
    may state for how long it holds.
    """
    is_time = states_validity(context.text[slice(*piece)].rstrip(".; "))
    if is_time and is_temporary(context.text, draft):
        return True
    if is_footnote(context.text, *piece) or not context.written(*piece):
        return True
    return is_entry(context.text[slice(*piece)])


def _apart(pieces: Iterable[Piece]) -> list[Piece]:
    """The pieces in order, those that overlap as one."""
    found: list[Piece] = []
    for start, end in sorted(pieces):
        if found and start < found[-1][1]:
            found[-1] = found[-1][0], max(end, found[-1][1])
        else:
            found.append((start, end))
    return found


def _overlaps(piece: Piece, others: Sequence[Piece]) -> bool:
    """Whether a piece overlaps one of others that lie apart and in order."""
    at = bisect_left(others, piece[1], key=itemgetter(0)) - 1
    return at >= 0 and piece[0] < others[at][1]


def _may_lead(words: str) -> bool:
    """Whether a line above a command is none of those that are told, or read, otherwise."""
    told = words.strip(" :").lower().split()
    is_of_paper = any(word.startswith(("chart", "sheet")) for word in told)
    return len(told) > 1 and not is_of_paper and not any(map(canonical_verb, told))


def _taken(draft: NoticeDraft, items: Sequence[Item]) -> list[Piece]:
    """What is read otherwise: headings, heads of charts, headings of classes, verbs."""
    heads = [piece for chart in draft.charts for piece in chart.head]
    heads += [chart.panel for chart in draft.charts if chart.panel is not None]
    verbs = [item.verb_piece for item in items if item.verb_piece is not None]
    return [*heads, *draft.heading, *draft.class_headings, *verbs]


def _gaps(items: Sequence[Item], first: int, until: int) -> Iterator[_Gap]:
    """The gaps between `first` and `until`."""
    ordered = sorted((item_extent(item), at) for at, item in enumerate(items))
    yield _Gap(None, (first, max(first, ordered[0][0][0])), is_last=False)
    for (extent, at), (following, _) in zip(ordered, [*ordered[1:], ((until, 0), 0)], strict=True):
        verb = items[at].verb_piece
        # The verb of a sentence may stand behind its place: `The wreck in P has been raised.`
        start = max(extent[1], verb[1]) if verb is not None else extent[1]
        if start < following[0]:
            yield _Gap(items[at], (start, following[0]), is_last=following[0] == until)


def _sentences(context: Context, gap: Piece) -> Iterator[Piece]:
    """The sentences that lie within a gap; the rest of a line that is told already is none."""
    text = unquoted(context.text[slice(*gap)])
    for found in _SENTENCE.finditer(text):
        before = text[: found.start()].rstrip(" \t")
        if before.endswith(("\n", ".", ";")) and len(found.group()) <= _LONGEST:
            yield gap[0] + found.start(), gap[0] + found.end()


def _sides(
    words: str, gap: _Gap, charts: Set[str], is_first: bool, is_next: bool
) -> tuple[str, ...]:
    """On which sides of a sentence the commands lie that it limits."""
    side = limits_items(words, charts)
    if side is not None:
        return ("below",) if gap.above is None else (side,)
    if is_next and words.rstrip().endswith((":", ",")):
        # A word alone may be a key: `WHERE:`.
        leads = _may_lead(words) and hangs(words)
        leads = leads or (" " in words.strip() and _QUOTES.search(words) is not None)
        # `If charted, delete …` is said of that command alone.
        reach = "next" if words.rstrip().endswith(",") else "below"
        return (reach,) if leads or limits_last(words, charts) else ()
    if not (is_first or is_next) or not limits_last(words, charts):
        return ()
    # Without a stop it may head what follows as well; `Cancelled.` above all of it does.
    is_head = is_next and (
        not words.rstrip().endswith(".") or (gap.above is None and takes_back(words))
    )
    return ("above",) * (gap.above is not None and is_first) + ("below",) * is_head


def _hit(
    context: Context, gap: _Gap, piece: Piece, actions: Sequence[Pointed], side: str
) -> list[str]:
    """The actions that a sentence limits."""
    at = context.repaired.original(piece[0])
    if side != "above":
        near = [one for one in actions if one.action.span.start >= at]
        edge = min((one.action.span.start for one in near), default=None)
    else:
        near = [one for one in actions if one.action.span.start < at]
        edge = max((one.action.span.start for one in near), default=None)
    stands_in = gap.above is not None and _stands_in(context.text, gap.above, piece)
    if side == "next" or (side == "above" and stands_in):
        return [one.pointer for one in near if one.action.span.start == edge]
    beside = {id(one.section) for one in near if one.action.span.start == edge}
    return [one.pointer for one in near if id(one.section) in beside]


def _stands_in(text: str, item: Item, piece: Piece) -> bool:
    """Whether a sentence stands further in than the item above it."""
    own, start = item_extent(item)[0], piece[0]
    return start - text.rfind("\n", 0, start) > own - text.rfind("\n", 0, own)


def _of_untouched_chart(words: str, actions: Sequence[Pointed]) -> list[str]:
    """`Chart 803 is not affected.`: the actions for a chart of which that is said."""
    if not (_OF_CHART.match(words) and tells_not_affected(words)):
        return []
    named = set(re.findall(r"\w+", words))
    return [one.pointer for one in actions if one.section.chart in named]
